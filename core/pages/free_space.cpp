#include "pages/free_space.h"

#include <algorithm>
#include <cmath>

namespace creasewright {

FreeSpace::FreeSpace(double width, double height)
    : columns_(std::max(1, static_cast<int>(std::ceil(width)))),
      rows_(std::max(1, static_cast<int>(std::ceil(height)))),
      taken_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), 0) {}

void FreeSpace::mark(int column, int row) {
  if (column < 0 || row < 0 || column >= columns_ || row >= rows_) return;
  taken_[static_cast<std::size_t>(row * columns_ + column)] = 1;
  stale_ = true;
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

void FreeSpace::block(const Bounds& box) {
  for (int row = static_cast<int>(std::floor(box.low.y)); row < std::ceil(box.high.y); ++row)
    for (int column = static_cast<int>(std::floor(box.low.x)); column < std::ceil(box.high.x);
         ++column)
      mark(column, row);
}

void FreeSpace::sum() const {
  const auto stride = static_cast<std::size_t>(columns_) + 1;
  sums_.assign(stride * (static_cast<std::size_t>(rows_) + 1), 0);
  for (std::size_t row = 0; row < static_cast<std::size_t>(rows_); ++row) {
    for (std::size_t column = 0; column < static_cast<std::size_t>(columns_); ++column) {
      sums_[(row + 1) * stride + column + 1] =
          taken_[row * static_cast<std::size_t>(columns_) + column] +
          sums_[row * stride + column + 1] + sums_[(row + 1) * stride + column] -
          sums_[row * stride + column];
    }
  }
  stale_ = false;
}

bool FreeSpace::isFree(const Bounds& box) const {
  if (stale_) sum();
  const int left = static_cast<int>(std::floor(box.low.x));
  const int bottom = static_cast<int>(std::floor(box.low.y));
  const int right = static_cast<int>(std::ceil(box.high.x));
  const int top = static_cast<int>(std::ceil(box.high.y));
  if (left < 0 || bottom < 0 || right > columns_ || top > rows_) return false;
  const auto at = [this](int column, int row) {
    return sums_[static_cast<std::size_t>(row) * (static_cast<std::size_t>(columns_) + 1) +
                 static_cast<std::size_t>(column)];
  };
  return at(right, top) - at(left, top) - at(right, bottom) + at(left, bottom) == 0;
}

std::optional<Point> FreeSpace::find(double width, double height, const Bounds& within,
                                     Point wish) const {
  std::optional<Point> best;
  for (double y = within.low.y; y + height <= within.high.y; y += 1) {
    for (double x = within.low.x; x + width <= within.high.x; x += 1) {
      const Point low{x, y};
      if (best && distance(low, wish) >= distance(*best, wish)) continue;
      if (isFree({low, low + Point{width, height}})) best = low;
    }
  }
  return best;
}

}  // namespace creasewright
