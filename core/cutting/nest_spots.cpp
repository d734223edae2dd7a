#include "cutting/nest_spots.h"

#include <algorithm>

namespace creasewright {

Bitmap haloOf(const Bitmap& cells) {
  Bitmap halo(cells.width() + 2, cells.height() + 2);
  const auto taken = [&](int x, int y) {
    return x >= 0 && y >= 0 && x < cells.width() && y < cells.height() && cells.taken(x, y);
  };
  for (int y = -1; y <= cells.height(); ++y)
    for (int x = -1; x <= cells.width(); ++x)
      if (!taken(x, y) &&
          (taken(x - 1, y) || taken(x + 1, y) || taken(x, y - 1) || taken(x, y + 1)))
        halo.take(x + 1, y + 1);
  return halo;
}

bool NestMat::isFree(const Bitmap& cells, int x, int y) {
  work_ += cells.height();
  return !cells_.meets(cells, x + 1, y + 1);
}

std::optional<Spot> NestMat::spotFor(const std::vector<Stamp>& stamps, SpotRule rule) {
  switch (rule) {
    case SpotRule::Lowest:
      return lowest(stamps);
    case SpotRule::Corner:
      return nearCorner(stamps);
    case SpotRule::Touching:
      return touching(stamps);
  }
  return std::nullopt;
}

std::optional<Spot> NestMat::lowest(const std::vector<Stamp>& stamps) {
  std::optional<Spot> best;
  int top = height_ + 1;
  for (std::size_t s = 0; s < stamps.size(); ++s) {
    const Bitmap& cells = stamps[s].cells;
    bool found = false;
    for (int y = 0; y + cells.height() < top && !found; ++y)
      for (int x = 0; x + cells.width() <= width_ && !found; ++x) {
        found = isFree(cells, x, y);
        if (found) best = Spot{x, y, s};
      }
    if (found) top = best->y + cells.height();
  }
  return best;
}

std::optional<Spot> NestMat::nearCorner(const std::vector<Stamp>& stamps) {
  std::optional<Spot> best;
  int nearest = width_ + height_ + 1;
  for (std::size_t s = 0; s < stamps.size(); ++s) {
    const Bitmap& cells = stamps[s].cells;
    for (int y = 0; y + cells.height() <= height_; ++y) {
      const int last =
          std::min(width_ - cells.width(), nearest - 1 - y - cells.height() - cells.width());
      for (int x = 0; x <= last; ++x) {
        if (!isFree(cells, x, y)) continue;
        nearest = x + y + cells.width() + cells.height();
        best = Spot{x, y, s};
        break;
      }
    }
  }
  return best;
}

std::optional<Spot> NestMat::touching(const std::vector<Stamp>& stamps) {
  std::optional<Spot> best;
  double most = 0;
  for (std::size_t s = 0; s < stamps.size(); ++s) {
    const Stamp& stamp = stamps[s];
    const Bitmap& cells = stamp.cells;
    const double rim = stamp.halo.count();
    std::vector<bool> below(static_cast<std::size_t>(std::max(0, width_)), false);
    for (int y = 0; y + cells.height() <= height_; ++y) {
      bool left = false;
      for (int x = 0; x + cells.width() <= width_; ++x) {
        const auto column = static_cast<std::size_t>(x);
        const bool free = isFree(cells, x, y);
        // Free, and neither farther left nor lower: in a corner.
        if (free && !left && !below[column]) {
          work_ += 2 * stamp.halo.height();
          const double touches = cells_.common(stamp.halo, x, y) / rim;
          if (touches > most) {
            most = touches;
            best = Spot{x, y, s};
          }
        }
        left = free;
        below[column] = free;
      }
    }
  }
  return best;
}

}  // namespace creasewright
