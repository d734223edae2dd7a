#include "making/waste.h"

#include <algorithm>
#include <iterator>

namespace creasewright {
namespace {

constexpr double kSliver = 1e-4;  // mm2, left by rounding
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
    const auto next = std::find_if(row, pieces.end(),
                                   [&](const Area& area) { return top(area) < rowTop - kRow; });
    std::stable_sort(row, next, [](const Area& a, const Area& b) { return left(a) < left(b); });
    row = next;
  }
}

}  // namespace

std::vector<WastePiece> findWaste(const FlatNet& flat) {
  Region pieces;
  for (const Area& piece : flat.waste)
    if (area({piece}) > kSliver) pieces.push_back(piece);
  sortByRows(pieces);
  std::vector<WastePiece> waste;
  for (std::size_t i = 0; i < pieces.size(); ++i)
    waste.push_back({letterFor(i), std::move(pieces[i])});
  return waste;
}

}  // namespace creasewright
