#pragma once

#include <QWidget>

#include "kits/class_kit.h"

class QComboBox;
class QListWidget;
class QSpinBox;

namespace creasewright {

/// What everybody makes: the kit's designs and plain blanks in a list, and for the chosen one how
/// many each person gets and whether only one piece of it is cut.
class KitContents : public QWidget {
  Q_OBJECT

 public:
  explicit KitContents(QWidget* parent = nullptr);

  void setContents(std::vector<KitItem> items, std::vector<PlainBlank> blanks);
  [[nodiscard]] const std::vector<KitItem>& items() const { return items_; }
  [[nodiscard]] const std::vector<PlainBlank>& blanks() const { return blanks_; }
  void addItem(KitItem item);
  void addBlank(PlainBlank blank);
  /// Takes the chosen row away; false when none is chosen or it is the last of all.
  bool removeCurrent();

 signals:
  void changed();

 private:
  void fill(int current);
  void showCurrent();
  void setCount(int count);
  void setPiece(int index);
  [[nodiscard]] KitItem* currentItem();
  [[nodiscard]] PlainBlank* currentBlank();
  [[nodiscard]] QString rowTitle(int row) const;

  std::vector<KitItem> items_;
  std::vector<PlainBlank> blanks_;
  QListWidget* list_;
  QSpinBox* count_;
  QComboBox* piece_;
};

}  // namespace creasewright
