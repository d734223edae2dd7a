#pragma once

#include <QWidget>

#include "session/kit_session.h"

class QComboBox;
class QListWidget;
class QSpinBox;

namespace creasewright {

/// What everybody makes: the kit's designs and plain blanks in a list, and for the chosen one how
/// many each person gets and whether only one piece of it is cut.
class KitContents : public QWidget {
  Q_OBJECT

 public:
  explicit KitContents(KitSession& session, QWidget* parent = nullptr);

  /// What is added is the chosen row.
  void addItem(KitItem item);
  void addBlank(PlainBlank blank);
  /// Takes the chosen row away; false when none is chosen or it is the last of all.
  bool removeCurrent();

 private:
  void showKit();
  void showCurrent();
  void showPieces(const KitItem& item);
  void setCount(int count);
  void setPiece(int index);
  [[nodiscard]] int rows() const;
  [[nodiscard]] const KitItem* currentItem() const;
  [[nodiscard]] const PlainBlank* currentBlank() const;
  [[nodiscard]] QString rowTitle(int row) const;

  KitSession& session_;
  QListWidget* list_;
  QSpinBox* count_;
  QComboBox* piece_;
};

}  // namespace creasewright
