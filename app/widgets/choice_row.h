#pragma once

#include <QIcon>
#include <QWidget>

class QButtonGroup;
class QGridLayout;

namespace creasewright {

/// A few buttons of which one is chosen, side by side.
class ChoiceRow : public QWidget {
  Q_OBJECT

 public:
  /// At most `columns` buttons stand in one row.
  explicit ChoiceRow(int columns, QWidget* parent = nullptr);

  /// Adds a button; `id` is given back when it is chosen.
  void add(int id, const QString& label, const QIcon& icon = {}, const QString& hint = {});
  /// Shows `id` as chosen without a signal; an unknown id shows none.
  void choose(int id);
  [[nodiscard]] int chosen() const;

 signals:
  void picked(int id);

 private:
  QButtonGroup* group_;
  QGridLayout* grid_;
  int columns_;
};

}  // namespace creasewright
