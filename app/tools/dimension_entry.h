#pragma once

#include <QFrame>
#include <QPointF>
#include <functional>

#include "scene/net_pull.h"

class QComboBox;
class QLabel;

namespace creasewright {

class LengthEdit;
class SheetView;

/// A field over a dimension of the sheet: the length that is typed becomes the distance, by the
/// measure that changes it most or another one that is chosen beside it. Enter takes it and closes;
/// where a limit stops it the field stays and says so; Esc closes.
class DimensionEntry : public QFrame {
  Q_OBJECT

 public:
  /// `now` is the distance as it is. Deletes itself when it is closed.
  DimensionEntry(SheetView& sheet, Length now, NetPull pull);
  /// Shows it with its middle at a pixel of the sheet, within the bench.
  void showAt(QPointF middle);

 private:
  void take(Length length);
  void chooseMeasure(int index);
  void change(const std::function<void()>& how);

  SheetView& sheet_;
  Length now_;
  NetPull pull_;
  LengthEdit* field_;
  QComboBox* measure_;
  QLabel* sentence_;
};

}  // namespace creasewright
