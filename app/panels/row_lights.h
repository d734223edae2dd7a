#pragma once

#include <QVariant>
#include <Qt>

#include "session/place.h"

class QAbstractItemView;

namespace creasewright {

class Selection;

/// Where a row keeps what it stands for.
inline constexpr int kPlaceRole = Qt::UserRole;
/// A fold that lights the row too: a panel's row tells the one it hangs on.
inline constexpr int kAlsoLitRole = Qt::UserRole + 1;

inline QVariant rowPlace(const Place& place) { return QVariant::fromValue(place); }

/// Ties the rows of a list (their kPlaceRole) to what is lit: the row under the mouse lights its
/// place everywhere, a click or the keyboard keeps it, and rows of what is lit elsewhere are
/// tinted. Call `tint` too whenever the rows have been made anew.
class RowLights {
 public:
  RowLights(QAbstractItemView& list, Selection& selection);
  void tint();

 private:
  QAbstractItemView& list_;
  Selection& selection_;
};

}  // namespace creasewright
