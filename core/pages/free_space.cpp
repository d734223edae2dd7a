#include "pages/free_space.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

constexpr int kBits = 64;

}  // namespace

/// The cells that a box touches, the last ones excluded.
struct FreeSpace::Cells {
  int left = 0;
  int right = 0;
  int bottom = 0;
  int top = 0;
};

FreeSpace::FreeSpace(double width, double height)
    : columns_(std::max(1, static_cast<int>(std::ceil(width)))),
      rows_(std::max(1, static_cast<int>(std::ceil(height)))),
      stride_(static_cast<std::size_t>((columns_ + kBits - 1) / kBits)),
      taken_(stride_ * static_cast<std::size_t>(rows_), 0) {}

void FreeSpace::mark(int column, int row) {
  if (column < 0 || row < 0 || column >= columns_ || row >= rows_) return;
  taken_[static_cast<std::size_t>(row) * stride_ + static_cast<std::size_t>(column / kBits)] |=
      Word{1} << (column % kBits);
}

void FreeSpace::blockLine(const Polyline& line) {
  constexpr double kStep = 0.25;  // a quarter of a cell: no cell on the way is missed by much
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const int steps = static_cast<int>(std::ceil(distance(line[i], line[i + 1]) / kStep));
    for (int k = 0; k <= steps; ++k) {
      const Point p = line[i] + (line[i + 1] - line[i]) * (steps == 0 ? 0.0 : double(k) / steps);
      mark(static_cast<int>(std::floor(p.x)), static_cast<int>(std::floor(p.y)));
    }
  }
}

FreeSpace::Cells FreeSpace::cellsOf(const Bounds& box) const {
  return {static_cast<int>(std::floor(box.low.x)), static_cast<int>(std::ceil(box.high.x)),
          static_cast<int>(std::floor(box.low.y)), static_cast<int>(std::ceil(box.high.y))};
}

void FreeSpace::block(const Bounds& box) {
  const Cells cells = cellsOf(box);
  for (int row = std::max(0, cells.bottom); row < std::min(rows_, cells.top); ++row)
    for (int column = std::max(0, cells.left); column < std::min(columns_, cells.right); ++column)
      mark(column, row);
}

void FreeSpace::blockArea(const Polygon& ring) {
  const Bounds box = bounds(ring);
  for (double low = std::floor(box.low.y); low < box.high.y; low += 1) {
    std::vector<double> crossings;
    const double y = low + 0.5001;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i];
      const Point b = ring[(i + 1) % ring.size()];
      if ((a.y > y) != (b.y > y)) crossings.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
    std::ranges::sort(crossings);
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
      block({{crossings[i], low}, {crossings[i + 1], low + 1}});
  }
}

std::vector<FreeSpace::Word> FreeSpace::rowsTaken(int bottom, int top) const {
  std::vector<Word> all(stride_, 0);
  for (int row = bottom; row < top; ++row)
    for (std::size_t i = 0; i < stride_; ++i)
      all[i] |= taken_[static_cast<std::size_t>(row) * stride_ + i];
  return all;
}

bool FreeSpace::isFree(const Bounds& box) const {
  const Cells cells = cellsOf(box);
  if (cells.left < 0 || cells.bottom < 0 || cells.right > columns_ || cells.top > rows_)
    return false;
  const std::vector<Word> all = rowsTaken(cells.bottom, cells.top);
  for (int column = cells.left; column < cells.right; ++column)
    if ((all[static_cast<std::size_t>(column / kBits)] >> (column % kBits) & 1) != 0) return false;
  return true;
}

std::optional<Point> FreeSpace::find(double width, double height, const Bounds& within,
                                     Point wish) const {
  std::optional<Point> best;
  double nearest = 0;  // squared distance of the best
  const auto judge = [&](Point low) {
    const Point away = low - wish;
    const double far = dot(away, away);
    if (best && far >= nearest) return;
    best = low;
    nearest = far;
  };
  for (double y = within.low.y; y + height <= within.high.y; y += 1) {
    if (best && (y - wish.y) * (y - wish.y) >= nearest) continue;
    const Cells cells = cellsOf({{within.low.x, y}, {within.low.x + width, y + height}});
    if (cells.bottom < 0 || cells.top > rows_) continue;
    const std::vector<Word> all = rowsTaken(cells.bottom, cells.top);
    const int wide = cells.right - cells.left;
    int run = 0;  // free cells up to this one
    for (int column = std::max(0, cells.left); column < columns_; ++column) {
      const bool taken =
          (all[static_cast<std::size_t>(column / kBits)] >> (column % kBits) & 1) != 0;
      run = taken ? 0 : run + 1;
      const double x = within.low.x + (column + 1 - wide - cells.left);
      if (x + width > within.high.x) break;
      if (run >= wide && x >= within.low.x) judge({x, y});
    }
  }
  return best;
}

}  // namespace creasewright
