#include "folding/cavity/round_room.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <vector>

#include "folding/cavity/cavity_card.h"

namespace creasewright {
namespace {

constexpr double kFar = 1e5;  // mm, beyond any card

double distanceToSegment(Point3 p, Point3 a, Point3 b) {
  const Point3 along = b - a;
  const double square = dot(along, along);
  const double t = square > 0 ? std::clamp(dot(p - a, along) / square, 0.0, 1.0) : 0;
  return norm(p - (a + along * t));
}

/// From a point to a convex plane part, which may have shrunk to a line.
double distanceTo(Point3 p, const std::vector<Point3>& part) {
  double nearest = kFar;
  Point3 normal{};
  for (std::size_t i = 0; i < part.size(); ++i) {
    const Point3 a = part[i];
    const Point3 b = part[(i + 1) % part.size()];
    nearest = std::min(nearest, distanceToSegment(p, a, b));
    normal = normal + cross(a - part[0], b - part[0]);
  }
  if (norm(normal) < 1e-9) return nearest;
  normal = unit(normal);
  for (std::size_t i = 0; i < part.size(); ++i)
    if (dot(cross(part[(i + 1) % part.size()] - part[i], p - part[i]), normal) < 0) return nearest;
  return std::abs(dot(p - part[0], normal));
}

class RoundSearch {
 public:
  RoundSearch(const Net& net, const Pose& folded, const Cavity& cavity, double caliper)
      : card_(cardAround(net, folded, cavity, caliper)),
        low_(coordinates(cavity.low)),
        high_(coordinates(cavity.high)),
        up_(static_cast<std::size_t>(cavity.axes[2])),
        half_(caliper / 2) {}

  /// Whether a cylinder on its foot meets neither card nor the ends of the space.
  [[nodiscard]] bool holdsCylinder(const Coordinates& foot, const RoundSize& size) const {
    const double from = foot.at(up_);
    const double to = from + size.height;
    if (from < low_.at(up_) - kTouch || to > high_.at(up_) + kTouch) return false;
    Box slab{{-kFar, -kFar, -kFar}, {kFar, kFar, kFar}};
    slab.low.at(up_) = from;
    slab.high.at(up_) = to;
    return std::ranges::all_of(card_, [&](const Piece3& piece) {
      std::vector<Point3> seen;  // from above
      for (Coordinates corner : within(piece, slab, half_)) {
        corner.at(up_) = from;
        seen.push_back(point(corner));
      }
      return seen.empty() || distanceTo(point(foot), seen) >= size.across / 2 + half_ - kTouch;
    });
  }

  [[nodiscard]] bool holdsBall(const Coordinates& middle, double across) const {
    if (middle.at(up_) - across / 2 < low_.at(up_) - kTouch ||
        middle.at(up_) + across / 2 > high_.at(up_) + kTouch)
      return false;
    return std::ranges::all_of(card_, [&](const Piece3& piece) {
      std::vector<Point3> corners;
      for (const Coordinates& corner : piece) corners.push_back(point(corner));
      return distanceTo(point(middle), corners) >= across / 2 + half_ - kTouch;
    });
  }

  /// Heights at which a foot may stand: on every card below `most`.
  [[nodiscard]] std::vector<double> floorsBelow(double most) const {
    std::vector<double> floors;
    for (const Piece3& piece : card_) {
      double top = -kFar;
      for (const Coordinates& corner : piece) top = std::max(top, corner.at(up_) + half_);
      if (top < most) floors.push_back(top);
    }
    std::ranges::sort(floors);
    const auto same =
        std::ranges::unique(floors, [](double a, double b) { return std::abs(a - b) < kTouch; });
    floors.erase(same.begin(), same.end());
    return floors;
  }

  [[nodiscard]] std::size_t up() const { return up_; }

 private:
  std::vector<Piece3> card_;
  Coordinates low_;
  Coordinates high_;
  std::size_t up_;
  double half_;
};

}  // namespace

std::optional<RoundRoom> roundRoom(const Net& net, const Pose& folded, const Cavity& cavity,
                                   double caliper, const RoundSize& size, const CavityBox& free) {
  const RoundSearch search(net, folded, cavity, caliper);
  const std::size_t up = search.up();
  const Coordinates seed = coordinates(cavity.seed);
  Coordinates along{};
  along.at(up) = size.height;
  std::vector<double> feet{coordinates(free.low).at(up), seed.at(up) - size.height / 2};
  std::ranges::copy(search.floorsBelow(seed.at(up)), std::back_inserter(feet));
  for (const Coordinates& middle : {seed, coordinates((free.low + free.high) / 2)})
    for (const double from : feet) {
      Coordinates foot = middle;
      foot.at(up) = from;
      Coordinates centre = foot;
      centre.at(up) += size.height / 2;
      if (search.holdsCylinder(foot, size) || (size.ball && search.holdsBall(centre, size.across)))
        return RoundRoom{size, point(foot), point(along)};
    }
  return std::nullopt;
}

}  // namespace creasewright
