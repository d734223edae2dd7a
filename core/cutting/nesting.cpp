#include "cutting/nesting.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

#include "cutting/bitmap.h"

namespace creasewright {
namespace {

/// Turned left by a quarter inside its bounds.
Polygon turned(const Polygon& outline, double height) {
  Polygon out;
  for (const Point& p : outline) out.push_back({height - p.y, p.x});
  return out;
}

/// A part in one of its quarter turns, with half its gap all round.
struct Stamp {
  int quarters = 0;
  Bitmap cells{1, 1};
};

Stamp stampOf(const NestPart& part, int quarters, const NestOptions& options) {
  const Polygon outline = nestedOutline(part, {0, quarters, {}});
  const Region wide = offset(region(outline), options.gap / 2);
  Polygon ring = wide.empty() ? outline : wide.front().outer;
  // Mitred corners reach farther than the gap: what lies beyond it is cut off.
  const Bounds box = bounds(outline);
  const double half = options.gap / 2;
  for (Point& p : ring) {
    p.x = std::clamp(p.x, box.low.x - half, box.high.x + half) + half;
    p.y = std::clamp(p.y, box.low.y - half, box.high.y + half) + half;
  }
  return {quarters, rasterized(ring, options.cell)};
}

std::vector<Stamp> stampsOf(const NestPart& part, const NestOptions& options) {
  std::vector<Stamp> stamps;
  for (int q = 0; q < (part.mayTurn ? 4 : 1); ++q) stamps.push_back(stampOf(part, q, options));
  return stamps;
}

struct Spot {
  int x = 0;
  int y = 0;
  std::size_t stamp = 0;
};

/// The lowest, then leftmost place of a stamp.
std::optional<Spot> placeFor(const Bitmap& mat, const Bitmap& cells, int above) {
  for (int y = 0; y + cells.height() <= mat.height() && y + cells.height() <= above; ++y)
    for (int x = 0; x + cells.width() <= mat.width(); ++x)
      if (!mat.meets(cells, x, y)) return Spot{x, y};
  return std::nullopt;
}

/// The place nearest to the lower left corner, over all turns, counting both ways alike: parts grow
/// from the corner and touch what lies there.
std::optional<Spot> cornerSpot(const Bitmap& mat, const std::vector<Stamp>& stamps) {
  std::optional<Spot> best;
  int nearest = mat.width() + mat.height() + 1;
  for (std::size_t s = 0; s < stamps.size(); ++s) {
    const Bitmap& cells = stamps[s].cells;
    for (int y = 0; y + cells.height() <= mat.height(); ++y) {
      const int last =
          std::min(mat.width() - cells.width(), nearest - 1 - y - cells.height() - cells.width());
      for (int x = 0; x <= last; ++x) {
        if (mat.meets(cells, x, y)) continue;
        nearest = x + y + cells.width() + cells.height();
        best = Spot{x, y, s};
        break;
      }
    }
  }
  return best;
}

/// Of all turns the one whose top stays lowest.
std::optional<Spot> bestSpot(const Bitmap& mat, const std::vector<Stamp>& stamps) {
  std::optional<Spot> best;
  int top = mat.height() + 1;
  for (std::size_t s = 0; s < stamps.size(); ++s) {
    const auto spot = placeFor(mat, stamps[s].cells, top - 1);
    if (!spot) continue;
    best = Spot{spot->x, spot->y, s};
    top = spot->y + stamps[s].cells.height();
  }
  return best;
}

class Nester {
 public:
  Nester(const std::vector<NestPart>& parts, double width, double height,
         const NestOptions& options)
      : parts_(parts), options_(options), order_(parts.size()) {
    // Half a gap lies round every part, the other half along the mat's edge.
    width_ = static_cast<int>((width - options.gap) / options.cell + 1e-9);
    height_ = static_cast<int>((height - options.gap) / options.cell + 1e-9);
    for (const NestPart& part : parts) {
      stamps_.push_back(stampsOf(part, options));
    }
    std::iota(order_.begin(), order_.end(), std::size_t{0});
  }

  Result<std::vector<MatLayout>> run() {
    for (std::size_t i = 0; i < parts_.size(); ++i)
      if (!bestSpot(Bitmap(std::max(1, width_), std::max(1, height_)), stamps_[i]))
        return Problem{ProblemCode::BlankTooLarge,
                       parts_[i].name,
                       {Length::mm(parts_[i].width), Length::mm(parts_[i].height), std::string()}};
    std::optional<std::vector<MatLayout>> best;
    for (const Order order : {Order::Area, Order::Longest, Order::Shortest})
      for (const bool corner : {false, true}) {
        corner_ = corner;
        sort(order);
        std::vector<MatLayout> layouts = fillMats();
        if (!best || matsOf(layouts) < matsOf(*best)) best = std::move(layouts);
      }
    return *std::move(best);
  }

 private:
  /// Which parts come first: the largest, those whose longer or whose shorter side is longest.
  enum class Order { Area, Longest, Shortest };

  void sort(Order order) {
    std::ranges::stable_sort(order_, std::ranges::greater(), [&](std::size_t i) {
      const NestPart& part = parts_[i];
      switch (order) {
        case Order::Longest:
          return std::max(part.width, part.height);
        case Order::Shortest:
          return std::min(part.width, part.height);
        case Order::Area:
          break;
      }
      return std::abs(signedArea(part.outline));
    });
  }

  static int matsOf(const std::vector<MatLayout>& layouts) {
    int mats = 0;
    for (const MatLayout& layout : layouts) mats += layout.count;
    return mats;
  }

  std::vector<MatLayout> fillMats() {
    left_.clear();
    for (const NestPart& part : parts_) left_.push_back(part.quantity);
    std::vector<MatLayout> layouts;
    while (std::ranges::any_of(left_, [](int n) { return n > 0; })) {
      MatLayout layout = fillMat();
      layout.count = timesOf(layout);
      for (const NestedPart& part : layout.parts)
        left_[static_cast<std::size_t>(part.part)] -= layout.count;
      layouts.push_back(std::move(layout));
    }
    return layouts;
  }

  MatLayout fillMat() const {
    Bitmap mat(width_, height_);
    MatLayout layout;
    for (const std::size_t i : order_)
      for (int n = 0; n < left_[i]; ++n) {
        const auto spot = corner_ ? cornerSpot(mat, stamps_[i]) : bestSpot(mat, stamps_[i]);
        if (!spot) break;
        const Stamp& stamp = stamps_[i][spot->stamp];
        mat.add(stamp.cells, spot->x, spot->y);
        layout.parts.push_back({static_cast<int>(i), stamp.quarters,
                                Point{spot->x * options_.cell, spot->y * options_.cell} +
                                    Point{options_.gap, options_.gap}});
      }
    return layout;
  }

  /// How often a layout can be cut before one of its parts is no longer needed.
  int timesOf(const MatLayout& layout) const {
    std::vector<int> used(parts_.size(), 0);
    for (const NestedPart& part : layout.parts) ++used[static_cast<std::size_t>(part.part)];
    int times = 1 << 20;
    for (std::size_t i = 0; i < used.size(); ++i)
      if (used[i] > 0) times = std::min(times, left_[i] / used[i]);
    return std::max(1, times);
  }

  const std::vector<NestPart>& parts_;
  const NestOptions& options_;
  int width_ = 0;
  int height_ = 0;
  std::vector<std::vector<Stamp>> stamps_;
  std::vector<int> left_;
  std::vector<std::size_t> order_;
  bool corner_ = false;  // parts go to the corner, else as low as they can
};

}  // namespace

Polygon nestedOutline(const NestPart& part, const NestedPart& nested) {
  Polygon outline = part.outline;
  for (int q = 0; q < nested.quarters; ++q)
    outline = turned(outline, q % 2 == 0 ? part.height : part.width);
  for (Point& p : outline) p = p + nested.at;
  return outline;
}

Result<std::vector<MatLayout>> nest(const std::vector<NestPart>& parts, Length matWidth,
                                    Length matHeight, const NestOptions& options) {
  if (parts.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  return Nester(parts, matWidth.mm(), matHeight.mm(), options).run();
}

}  // namespace creasewright
