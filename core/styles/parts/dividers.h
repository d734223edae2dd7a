#pragma once

#include <vector>

#include "net/piece.h"
#include "styles/parameter_spec.h"

namespace creasewright {

/// An insert is 1 mm smaller than the inside of its box (common practice, no published source).
inline constexpr double kInsertEase = 1;

/// `columns` and `rows`, how many cells there are, before what else there is to choose.
std::vector<ParameterSpec> withCellCounts(std::vector<ParameterSpec> others);

/// Dividers that slot into one another; mm. Cells are measured from the middle of one divider to
/// the middle of the next, those at the walls from where the next divider would be.
struct Divider {
  int cells;
  double pitch, height, caliper;

  [[nodiscard]] double length() const { return cells * pitch - caliper - kInsertEase; }
  /// The middle of the k-th slot.
  [[nodiscard]] double slot(int k) const { return k * pitch - (caliper + kInsertEase) / 2; }
};

/// One of a length that parts it into so many cells.
Divider dividerOf(double length, int cells, double height, double caliper);

/// Those along the length with their slots above, one less than `across` has cells, and those
/// across them with their slots below, which are held in the first slot of these.
std::vector<Piece> slottedDividers(const Divider& along, const Divider& across);

}  // namespace creasewright
