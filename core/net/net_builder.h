#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "net/net.h"

namespace creasewright {

/// Shape of a flap standing on the x axis from (0, 0) to (width, 0), with names for its edges.
struct Shape {
  Polygon outline;
  std::vector<std::string> edges;
  std::vector<Polygon> openings = {};
};

/// `width` along the crease, `height` away from it; edges `inner`, `right`, `outer`, `left`.
Shape rectangle(double width, double height);
/// Like a rectangle whose outer edge is shortened by `leftInset` and `rightInset`.
Shape trapezoid(double width, double height, double leftInset, double rightInset);
/// A rectangle whose two outer corners are rounded; all arc edges belong to `outer`.
Shape roundedFlap(double width, double height, double radius);

/// Where a child hinges: on an edge of a panel already there, from `start` mm along the edge (in
/// its counter-clockwise direction) over `length` mm; a length of 0 means the rest of the edge.
struct HingeAt {
  std::string_view panel;
  std::string_view edge;
  double start = 0;
  double length = 0;
};

/// An edge of a panel by its names.
struct EdgeOf {
  std::string_view panel;
  std::string_view edge;
};

/// Fold of a hinge: final angle in degrees (positive = valley on the drawn face) and its stage.
struct HingeFold {
  double degrees = 0;
  int stage = 1;
  CreaseKind kind = CreaseKind::Score;
  bool driven = true;              ///< false: on the way the angle follows from closed loops
  Sense sense = Sense::Valley;     ///< of a fold of 0 degrees
  std::vector<Waypoint> way = {};  ///< as Crease::way
};

/// Puts a net together panel by panel. Names that do not exist are programming errors (assert).
class NetBuilder {
 public:
  explicit NetBuilder(std::vector<std::string> stages);

  NetBuilder& root(std::string id, Shape shape);
  NetBuilder& hinge(HingeAt at, std::string id, Shape shape, HingeFold fold);
  /// Joins two panels already there along an edge of `at.panel`; flat, the other panel lies beyond
  /// it.
  NetBuilder& loop(HingeAt at, std::string_view other, HingeFold fold);
  /// Declares that the card bends during a stage.
  NetBuilder& bends(int stage, BendCode why);
  NetBuilder& mate(std::string_view panel, std::string_view onto, Face face, Method method,
                   bool rim, Polygon patch = {});
  /// Declares that two cut edges meet and are held by nothing (OpenEdges).
  NetBuilder& open(EdgeOf one, EdgeOf other, std::string why);
  /// The mate added last meets its target in this stage, before all folds between them are done.
  NetBuilder& meetsIn(int stage);
  NetBuilder& slit(std::string_view panel, Polyline line);
  /// Marks panels whose outside face shows on the finished piece.
  NetBuilder& showing(const std::vector<std::string_view>& ids);

  /// Length in mm of a named straight edge.
  [[nodiscard]] double edgeLength(std::string_view panel, std::string_view edge) const;
  [[nodiscard]] Net take() { return std::move(net_); }

 private:
  [[nodiscard]] int index(std::string_view id) const;
  [[nodiscard]] Segment edge(std::string_view panel, std::string_view name) const;
  [[nodiscard]] Segment part(const HingeAt& at) const;
  Net net_;
};

}  // namespace creasewright
