#include "folding/surfaces/ground_shadow.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

namespace creasewright {
namespace {

constexpr int kLongest = 96;      // cells of the longer side
constexpr double kSoft = 0.024;   // of the longer side: how far the edge is blurred
constexpr double kDarkest = 76;   // of 255
constexpr double kAlong = 0.035;  // sine of the least tilt

/// The ground as the eye sees it: x as in the picture, its y by `rise`.
class Ground {
 public:
  Ground(const Camera& eye, Point3 up, Point3 lamp, double level)
      : eye_(eye), up_(up), slant_(lamp / dot(lamp, up)), level_(level) {}

  /// Where the light that a point stops would fall, in picture coordinates.
  [[nodiscard]] Point under(Point3 p) const {
    return eye_.project(p - slant_ * (dot(p, up_) - level_));
  }

 private:
  const Camera& eye_;
  Point3 up_;
  Point3 slant_;
  double level_;
};

/// Cells that are dark or not.
class Mask {
 public:
  Mask(const Bounds& extent, double cell)
      : low_(extent.low),
        cell_(cell),
        columns_(std::max(1, static_cast<int>(std::ceil(extent.width() / cell)))),
        rows_(std::max(1, static_cast<int>(std::ceil(extent.height() / cell)))),
        cells_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_)) {}

  /// Rings by the even-odd rule.
  void fill(const std::vector<Polygon>& rings) {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const Point& p : rings.front()) {
      low = std::min(low, p.y);
      high = std::max(high, p.y);
    }
    const int first = std::max(0, static_cast<int>(std::ceil((low - low_.y) / cell_ - 0.5)));
    const int last =
        std::min(rows_ - 1, static_cast<int>(std::floor((high - low_.y) / cell_ - 0.5)));
    for (int row = first; row <= last; ++row) fillRow(rings, row);
  }

  [[nodiscard]] int columns() const { return columns_; }
  [[nodiscard]] int rows() const { return rows_; }
  [[nodiscard]] Bounds extent() const {
    return {low_, low_ + Point{columns_ * cell_, rows_ * cell_}};
  }
  std::vector<float>& cells() { return cells_; }

 private:
  void fillRow(const std::vector<Polygon>& rings, int row) {
    const double y = low_.y + (row + 0.5) * cell_;
    crossings_.clear();
    for (const Polygon& ring : rings)
      for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point& a = ring[i];
        const Point& b = ring[i + 1 < ring.size() ? i + 1 : 0];
        if ((a.y > y) != (b.y > y))
          crossings_.push_back(((a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y)) - low_.x) / cell_);
      }
    std::ranges::sort(crossings_);
    float* cells = cells_.data() + static_cast<std::ptrdiff_t>(row) * columns_;
    for (std::size_t i = 0; i + 1 < crossings_.size(); i += 2) {
      const int from = std::max(0, static_cast<int>(std::ceil(crossings_[i] - 0.5)));
      const int to = std::min(columns_, static_cast<int>(std::floor(crossings_[i + 1] + 0.5)));
      if (to > from) std::fill(cells + from, cells + to, 1.0F);
    }
  }

  Point low_;
  double cell_;
  int columns_;
  int rows_;
  std::vector<float> cells_;
  std::vector<double> crossings_;
};

/// The mean of `radius` cells before and after each one of a line, beyond which all is clear.
void blurLine(float* line, int count, std::ptrdiff_t step, int radius, std::vector<float>& kept) {
  const float share = 1.0F / static_cast<float>(2 * radius + 1);
  for (int i = 0; i < count; ++i) kept[static_cast<std::size_t>(i)] = line[i * step];
  float sum = 0;
  for (int i = 0; i < std::min(radius, count); ++i) sum += kept[static_cast<std::size_t>(i)];
  for (int i = 0; i < count; ++i) {
    if (i + radius < count) sum += kept[static_cast<std::size_t>(i + radius)];
    if (i - radius - 1 >= 0) sum -= kept[static_cast<std::size_t>(i - radius - 1)];
    line[i * step] = sum * share;
  }
}

/// Three means come near to a bell.
void blur(Mask& mask, int across, int up) {
  std::vector<float> kept(static_cast<std::size_t>(std::max(mask.columns(), mask.rows())));
  float* cells = mask.cells().data();
  for (int pass = 0; pass < 3; ++pass) {
    for (int row = 0; row < mask.rows(); ++row)
      blurLine(cells + static_cast<std::ptrdiff_t>(row) * mask.columns(), mask.columns(), 1, across,
               kept);
    for (int column = 0; column < mask.columns(); ++column)
      blurLine(cells + column, mask.rows(), mask.columns(), up, kept);
  }
}

/// All that stops light, each as its rings on the ground.
std::vector<std::vector<Polygon>> shapesOn(const Ground& ground, const Net& net, const Pose& pose,
                                           const std::vector<Solid>& solids, Point3 lamp) {
  std::vector<std::vector<Polygon>> shapes;
  const auto ringOf = [&](const Polygon& ring, const Transform& frame) {
    Polygon out;
    for (const Point& p : ring) out.push_back(ground.under(frame.apply(p)));
    return out;
  };
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    std::vector<Polygon> rings{ringOf(net.panels[i].outline, pose[i])};
    for (const Polygon& opening : net.panels[i].openings) rings.push_back(ringOf(opening, pose[i]));
    shapes.push_back(std::move(rings));
  }
  for (const Solid& solid : solids)
    for (const std::vector<Point3>& face : solid.faces) {
      const Point3 normal = cross(face[1] - face[0], face[2] - face[0]);
      if (dot(normal, lamp) <= 0) continue;  // the lit faces cover the same ground
      Polygon ring;
      for (const Point3& p : face) ring.push_back(ground.under(p));
      shapes.push_back({std::move(ring)});
    }
  return shapes;
}

double lowestOf(const Net& net, const Pose& pose, const std::vector<Solid>& solids, Point3 up) {
  double low = std::numeric_limits<double>::max();
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    for (const Point& p : net.panels[i].outline) low = std::min(low, dot(pose[i].apply(p), up));
  for (const Solid& solid : solids)
    for (const std::vector<Point3>& face : solid.faces)
      for (const Point3& p : face) low = std::min(low, dot(p, up));
  return low;
}

}  // namespace

GroundShadow groundShadow(const Net& net, const Pose& pose, const View& view, Point3 up,
                          const std::vector<Solid>& solids) {
  if (net.panels.empty() || pose.size() < net.panels.size() || norm(up) <= 0) return {};
  const Camera eye = camera(view, up);
  const Point3 upright = unit(up);
  const double rise = dot(upright, eye.towardsEye);  // of the ground's depth in the picture
  const Point3 lamp = lampOf(eye);
  if (rise < kAlong || dot(lamp, upright) <= 0) return {};
  const Ground ground(eye, upright, lamp, lowestOf(net, pose, solids, upright));
  const auto shapes = shapesOn(ground, net, pose, solids, lamp);
  Bounds extent;
  bool first = true;
  for (const std::vector<Polygon>& rings : shapes)
    for (const Point& p : rings.front()) include(extent, p, std::exchange(first, false));
  const double longer = std::max({extent.width(), extent.height(), 1.0});
  const double cell = longer / kLongest;
  const int across = std::max(1, static_cast<int>(std::lround(kSoft * kLongest)));
  const int along = std::max(1, static_cast<int>(std::lround(kSoft * kLongest * rise)));
  const Point room{3.5 * across * cell, 3.5 * along * cell};
  Mask mask({extent.low - room, extent.high + room}, cell);
  for (const std::vector<Polygon>& rings : shapes) mask.fill(rings);
  blur(mask, across, along);
  GroundShadow shadow{mask.extent(), extent, mask.columns(), mask.rows(), {}};
  shadow.dark.reserve(mask.cells().size());
  for (int row = mask.rows(); row-- > 0;)
    for (int column = 0; column < mask.columns(); ++column) {
      const float cover = mask.cells()[static_cast<std::size_t>(row) * mask.columns() + column];
      shadow.dark.push_back(static_cast<std::uint8_t>(std::lround(kDarkest * cover)));
    }
  return shadow;
}

}  // namespace creasewright
