#include "pages/tiling.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace creasewright {
namespace {

constexpr int kMostTiles = 100;
constexpr double kTolerance = 1e-6;

int tilesNeeded(double blank, double cell, double overlap) {
  if (blank <= cell + kTolerance) return 1;
  const double count = std::ceil((blank - overlap - kTolerance) / (cell - overlap));
  return static_cast<int>(std::min(count, 1e6));
}

std::vector<Tile> tilesOf(const Tiling& tiling, double width, double height) {
  const Bounds& cell = tiling.frame.cell;
  const double stepX = cell.width() - tiling.overlap;
  const double stepY = cell.height() - tiling.overlap;
  const double left = (width - tiling.columns * stepX - tiling.overlap) / 2;
  const double top = (height + tiling.rows * stepY + tiling.overlap) / 2;
  std::vector<Tile> tiles;
  for (int row = 0; row < tiling.rows; ++row) {
    for (int column = 0; column < tiling.columns; ++column) {
      const Point low{left + column * stepX, top - row * stepY - cell.height()};
      tiles.push_back({columnName(column) + std::to_string(row + 1),
                       column,
                       row,
                       {low, low + Point{cell.width(), cell.height()}}});
    }
  }
  return tiles;
}

}  // namespace

std::string columnName(int column) {
  std::string name;
  for (int rest = column; rest >= 0; rest = rest / 26 - 1)
    name.insert(name.begin(), static_cast<char>('A' + rest % 26));
  return name;
}

Result<Tiling> planTiles(double blankWidth, double blankHeight, const PageSetup& setup,
                         double footHeight) {
  std::optional<Tiling> best;
  int fewest = 0;
  for (const bool turned : {false, true}) {
    const double width = turned ? blankHeight : blankWidth;
    const double height = turned ? blankWidth : blankHeight;
    for (const bool sideways : {false, true}) {
      if (sideways ? setup.orientation == Orientation::Upright
                   : setup.orientation == Orientation::Sideways)
        continue;
      const PageFrame frame = pageFrame(setup, sideways, footHeight);
      if (frame.cell.width() <= 2 * setup.overlap || frame.cell.height() <= 2 * setup.overlap)
        continue;
      Tiling tiling{.frame = frame, .turned = turned, .overlap = setup.overlap, .tiles = {}};
      tiling.columns = tilesNeeded(width, frame.cell.width(), setup.overlap);
      tiling.rows = tilesNeeded(height, frame.cell.height(), setup.overlap);
      const double count = static_cast<double>(tiling.columns) * tiling.rows;
      if (best && count >= fewest) continue;
      fewest = static_cast<int>(std::min(count, 1e9));
      best = std::move(tiling);
    }
  }
  if (!best) {
    return Problem{ProblemCode::MarginTooLarge,
                   "margin",
                   {Length::mm(setup.margin), std::string(setup.paper.name)}};
  }
  if (fewest > kMostTiles) {
    return Problem{ProblemCode::TooManyTiles,
                   std::string(setup.paper.id),
                   {std::int64_t{fewest}, std::int64_t{kMostTiles}}};
  }
  best->tiles = best->turned ? tilesOf(*best, blankHeight, blankWidth)
                             : tilesOf(*best, blankWidth, blankHeight);
  return *std::move(best);
}

}  // namespace creasewright
