#pragma once

#include <QWidget>

class QToolButton;
class QVBoxLayout;

namespace creasewright {

/// A titled part of a column whose content folds away.
class Section : public QWidget {
  Q_OBJECT

 public:
  Section(const QString& title, QWidget* content, QWidget* parent = nullptr);

  void setOpen(bool open);
  [[nodiscard]] bool isOpen() const;

 signals:
  void toggled(bool open);

 private:
  QToolButton* heading_;
  QWidget* content_;
};

}  // namespace creasewright
