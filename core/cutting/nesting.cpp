#include "cutting/nesting.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <optional>
#include <set>

#include "cutting/nest_spots.h"

namespace creasewright {
namespace {

constexpr double kMostRowsCompared = 5e8;  // rows of cells; no further way is begun after so many

/// Turned left by a quarter inside its bounds.
Polygon turned(const Polygon& outline, double height) {
  Polygon out;
  for (const Point& p : outline) out.push_back({height - p.y, p.x});
  return out;
}

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
  Stamp stamp{quarters, rasterized(ring, options.cell)};
  stamp.halo = haloOf(stamp.cells);
  return stamp;
}

std::vector<Stamp> stampsOf(const NestPart& part, const NestOptions& options) {
  std::vector<Stamp> stamps;
  if (part.ways.empty())
    for (int q = 0; q < (part.mayTurn ? 4 : 1); ++q) stamps.push_back(stampOf(part, q, options));
  for (const int q : part.ways) stamps.push_back(stampOf(part, q, options));
  return stamps;
}

/// Which parts come first: those of which this is largest.
enum class Order { Area, Longest, Shortest, Perimeter, Height, Width };
constexpr std::array kOrders{Order::Area,      Order::Longest, Order::Shortest,
                             Order::Perimeter, Order::Height,  Order::Width};

double measureOf(const NestPart& part, Order order) {
  switch (order) {
    case Order::Area:
      return std::abs(signedArea(part.outline));
    case Order::Longest:
      return std::max(part.width, part.height);
    case Order::Shortest:
      return std::min(part.width, part.height);
    case Order::Perimeter:
      return part.width + part.height;
    case Order::Height:
      return part.height;
    case Order::Width:
      return part.width;
  }
  return 0;
}

class Nester {
 public:
  Nester(const std::vector<NestPart>& parts, double width, double height,
         const NestOptions& options)
      : parts_(parts), options_(options), order_(parts.size()) {
    // Half a gap lies round every part, the other half along the mat's edge.
    width_ = static_cast<int>((width - options.gap) / options.cell + 1e-9);
    height_ = static_cast<int>((height - options.gap) / options.cell + 1e-9);
    for (const NestPart& part : parts) stamps_.push_back(stampsOf(part, options));
    std::iota(order_.begin(), order_.end(), std::size_t{0});
  }

  Result<std::vector<MatLayout>> run(int least) {
    for (std::size_t i = 0; i < parts_.size(); ++i)
      if (!NestMat(std::max(1, width_), std::max(1, height_)).spotFor(stamps_[i], SpotRule::Lowest))
        return Problem{ProblemCode::BlankTooLarge,
                       parts_[i].name,
                       {Length::mm(parts_[i].width), Length::mm(parts_[i].height), std::string()}};
    std::optional<std::vector<MatLayout>> best;
    std::set<std::vector<std::size_t>> orders;
    for (const Order order : kOrders) {
      sort(order);
      if (!orders.insert(order_).second) continue;  // sorted alike already
      for (const SpotRule rule : {SpotRule::Lowest, SpotRule::Corner, SpotRule::Touching}) {
        if (best && (matsOf(*best) <= least || work_ >= kMostRowsCompared)) return *std::move(best);
        std::vector<MatLayout> layouts = fillMats(rule);
        if (!best || matsOf(layouts) < matsOf(*best)) best = std::move(layouts);
      }
    }
    return *std::move(best);
  }

 private:
  void sort(Order order) {
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::ranges::stable_sort(order_, std::ranges::greater(),
                             [&](std::size_t i) { return measureOf(parts_[i], order); });
  }

  static int matsOf(const std::vector<MatLayout>& layouts) {
    int mats = 0;
    for (const MatLayout& layout : layouts) mats += layout.count;
    return mats;
  }

  std::vector<MatLayout> fillMats(SpotRule rule) {
    left_.clear();
    for (const NestPart& part : parts_) left_.push_back(part.quantity);
    std::vector<MatLayout> layouts;
    while (std::ranges::any_of(left_, [](int n) { return n > 0; })) {
      MatLayout layout = fillMat(rule);
      layout.count = timesOf(layout);
      for (const NestedPart& part : layout.parts)
        left_[static_cast<std::size_t>(part.part)] -= layout.count;
      layouts.push_back(std::move(layout));
    }
    return layouts;
  }

  MatLayout fillMat(SpotRule rule) {
    NestMat mat(width_, height_);
    MatLayout layout;
    for (const std::size_t i : order_)
      for (int n = 0; n < left_[i]; ++n) {
        const auto spot = mat.spotFor(stamps_[i], rule);
        if (!spot) break;
        const Stamp& stamp = stamps_[i][spot->stamp];
        mat.put(stamp, *spot);
        layout.parts.push_back({static_cast<int>(i), stamp.quarters,
                                Point{spot->x * options_.cell, spot->y * options_.cell} +
                                    Point{options_.gap, options_.gap}});
      }
    work_ += mat.work();
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
  double work_ = 0;
};

}  // namespace

Polygon nestedOutline(const NestPart& part, const NestedPart& nested) {
  Polygon outline = part.outline;
  for (int q = 0; q < nested.quarters; ++q)
    outline = turned(outline, q % 2 == 0 ? part.height : part.width);
  for (Point& p : outline) p = p + nested.at;
  return outline;
}

int leastMats(const std::vector<NestPart>& parts, Length matWidth, Length matHeight,
              const NestOptions& options) {
  double area = 0;
  for (const NestPart& part : parts) area += std::abs(signedArea(part.outline)) * part.quantity;
  const double mat = (matWidth.mm() - 2 * options.gap) * (matHeight.mm() - 2 * options.gap);
  return static_cast<int>(std::ceil(area / mat - 1e-9));
}

Result<std::vector<MatLayout>> nest(const std::vector<NestPart>& parts, Length matWidth,
                                    Length matHeight, const NestOptions& options) {
  if (parts.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  return Nester(parts, matWidth.mm(), matHeight.mm(), options)
      .run(leastMats(parts, matWidth, matHeight, options));
}

}  // namespace creasewright
