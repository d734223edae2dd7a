#include "making/waste.h"

#include <algorithm>
#include <iterator>

namespace creasewright {
namespace {

constexpr double kSliver = 1e-4;  // mm2, left by rounding
constexpr double kNeck = 1e-3;    // mm; parts joined by less come off one by one
constexpr double kRow = 1;        // mm between the tops of pieces in one row

/// A .. Z, AA, AB ..
std::string letterFor(std::size_t index) {
  std::string letter;
  for (std::size_t rest = index + 1; rest > 0; rest = (rest - 1) / 26)
    letter.insert(letter.begin(), static_cast<char>('A' + (rest - 1) % 26));
  return letter;
}

double top(const Area& area) { return bounds(area.outer).high.y; }
double left(const Area& area) { return bounds(area.outer).low.x; }

void sortByRows(Region& pieces) {
  std::ranges::stable_sort(pieces, std::ranges::greater{}, top);
  for (auto row = pieces.begin(); row != pieces.end();) {
    const double rowTop = top(*row);
    const auto next = std::find_if(
        row, pieces.end(), [&](const Area& area) { return top(area) < rowTop - kRow; });
    std::stable_sort(row, next, [](const Area& a, const Area& b) { return left(a) < left(b); });
    row = next;
  }
}

/// The parts of an area that only a hair joins, as rounding leaves along the blank's border.
Region separated(const Area& piece) {
  // Convex pieces have no neck.
  if (piece.holes.empty() && liesWellInside(piece.outer, piece.outer, 0)) return {piece};
  const Region cores = offset({piece}, -kNeck);
  if (cores.size() <= 1) return {piece};
  Region parts;
  for (const Area& core : cores)
    for (Area& part : intersect(offset({core}, 2 * kNeck), {piece}))
      parts.push_back(std::move(part));
  return parts;
}

}  // namespace

std::vector<WastePiece> findWaste(const FlatNet& flat) {
  Region pieces;
  for (const Area& piece : flat.waste)
    for (Area& part : separated(piece))
      if (area({part}) > kSliver) pieces.push_back(std::move(part));
  sortByRows(pieces);
  std::vector<WastePiece> waste;
  for (std::size_t i = 0; i < pieces.size(); ++i)
    waste.push_back({letterFor(i), std::move(pieces[i])});
  return waste;
}

}  // namespace creasewright
