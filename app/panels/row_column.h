#pragma once

#include <QWidget>
#include <functional>
#include <string>
#include <vector>

class QLabel;
class QMenu;
class QToolButton;
class QVBoxLayout;

namespace creasewright {

/// A row of a list of the design's things.
class DesignRow : public QWidget {
  Q_OBJECT

 public:
  using QWidget::QWidget;
  virtual void showDesign() = 0;
};

/// A column of rows, one for each of some things of a design, with a button below that offers what
/// can be added, and words for when there is nothing yet.
class RowColumn : public QWidget {
  Q_OBJECT

 public:
  /// `addName` names the button for screen readers.
  RowColumn(const QString& none, const QString& addName, QWidget* parent = nullptr);

  void offer(const QString& title, const QString& summary, const std::function<void()>& add);
  /// A row for each of the kinds; they are made anew only when the kinds are others.
  void showRows(const std::vector<std::string>& kinds,
                const std::function<DesignRow*(int index)>& make);

 private:
  QVBoxLayout* layout_;
  QToolButton* add_;
  QMenu* menu_;
  QLabel* none_;
  std::vector<std::string> kinds_;
  std::vector<DesignRow*> rows_;
};

}  // namespace creasewright
