#include "styles/platonic_solids.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include "net/pose.h"
#include "styles/parameter_rows.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

/// One solid {p, q}: p edges to a face, q faces at a corner.
struct Solid {
  int p, q;
  double taper;  ///< degrees at a tab's ends, less than the narrowest gap between faces of the net
  std::vector<std::pair<int, int>> tree;  ///< face k + 2 hangs on (face, edge), counted from 1

  /// sin(dihedral / 2) = cos(pi / q) / sin(pi / p) (Coxeter, Regular Polytopes, 2.44; derived in
  /// the tests from coordinates too).
  [[nodiscard]] double dihedral() const {
    return 2 * std::asin(std::cos(std::numbers::pi / q) / std::sin(std::numbers::pi / p));
  }
  /// From the middle of the solid to a face, for an edge of 1: the face's apothem times the tangent
  /// of half the dihedral angle.
  [[nodiscard]] double inradius() const { return apothemOf(p, 1) * std::tan(dihedral() / 2); }
};

std::string face(int number) { return "face-" + std::to_string(number); }

struct Edge {
  std::string panel;
  std::string name;
  Point3 a, b;  // folded
};

/// Edges of the folded faces on which nothing hangs yet.
std::vector<Edge> freeEdges(const Net& net) {
  const Pose folded = pose(net, 1.0);
  std::vector<Edge> edges;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Panel& panel = net.panels[i];
    for (std::size_t k = 0; k < panel.outline.size(); ++k) {
      const Point a = panel.outline[k];
      const Point b = panel.outline[(k + 1) % panel.outline.size()];
      bool taken = k == 0 && i > 0;  // hangs on its parent
      for (const Crease& crease : net.creases)
        taken = taken ||
                (crease.parent == static_cast<int>(i) && distance(crease.onParent.a, a) < 1e-6);
      if (!taken)
        edges.push_back({panel.id, panel.edges[k], folded[i].apply(a), folded[i].apply(b)});
    }
  }
  return edges;
}

/// Two free edges that meet when folded run in opposite directions: the first gets a tab, glued
/// inside the face of the second.
void addTabs(NetBuilder& net, const Solid& solid, const Net& faces, double side, double depth) {
  const double inset = depth / std::tan(Angle::degrees(solid.taper).radians());
  const std::vector<Edge> edges = freeEdges(faces);
  int number = 0;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    for (std::size_t k = i + 1; k < edges.size(); ++k) {
      if (norm(edges[i].a - edges[k].b) > side * 1e-3 ||
          norm(edges[i].b - edges[k].a) > side * 1e-3)
        continue;
      const std::string tab = edges[i].panel + "/tab-" + std::to_string(++number);
      const double fold = 180 - Angle::radians(solid.dihedral()).degrees();
      net.hinge({edges[i].panel, edges[i].name}, tab, trapezoid(side, depth, inset, inset),
                {fold, 1})
          .mate(tab, edges[k].panel, Face::Inside, Method::Glue, true);
    }
  }
}

std::vector<Piece> buildSolid(const Solid& solid, const Parameters& parameters) {
  const double side = parameters.mm("edge");
  const double fold = 180 - Angle::radians(solid.dihedral()).degrees();
  NetBuilder net({"tabs", "faces"});
  net.root(face(1), regularPolygon(solid.p, side));
  for (std::size_t k = 0; k < solid.tree.size(); ++k) {
    const auto [parent, edge] = solid.tree[k];
    net.hinge({face(parent), "edge-" + std::to_string(edge)}, face(static_cast<int>(k) + 2),
              regularPolygon(solid.p, side), {fold, 2});
  }
  addTabs(net, solid, NetBuilder(net).take(), side, parameters.mm("tab"));
  if (solid.p == 3) net.bends(2, BendCode::TuckSlidesIn);  // the last tabs give on their way in
  for (std::size_t k = 0; k <= solid.tree.size(); ++k) net.showing({face(static_cast<int>(k) + 1)});
  return {{"solid", net.take(),
           Cavity{face(1), {side / 2, apothemOf(solid.p, side), solid.inradius() * side}}}};
}

/// The product fits into the ball inside the faces; half a caliper of the faces and a caliper of
/// the tabs count.
std::vector<Need> solidNeeds(const Solid& solid, const Room& room, const Workbench& bench) {
  const double l = room.eased(Axis::Length).mm();
  const double w = room.eased(Axis::Width).mm();
  const double h = room.eased(Axis::Height).mm();
  // From the middle to what is farthest from it.
  const double reach = room.ball    ? std::max({l, w, h}) / 2
                       : room.round ? std::hypot(std::max(l, w), h) / 2
                                    : std::hypot(l, w, h) / 2;
  const double ball = reach + bench.caliper.mm() * 1.5;
  return {{"edge", Axis::Length, Length::mm(ball / solid.inradius() + 1e-6)}};
}

/// Deeper tabs would run to a point.
std::int64_t deepestTab(const Solid& solid, const Parameters& p) {
  const double slope = std::tan(Angle::degrees(solid.taper).radians());
  return Length::mm(p.mm("edge") * 0.4 * slope).nm();
}

Style solidStyle(std::string_view id, Worded title, Worded summary, int difficulty,
                 const Solid& solid) {
  const double slope = std::tan(Angle::degrees(solid.taper).radians());
  return {
      .id = id,
      .title = title,
      .summary = summary,
      .traits = {.suitsRound = true,
                 .difficulty = difficulty,
                 .suits = worded("styles", "Small surprises, a ball, or hung up empty.")},
      .words =
          {.stages = {{"faces", worded("stages", "fold and close the faces"),
                       worded("stages",
                              "Fold all faces round, one after the other, and press their tabs.")}},
           .panels = {{"face", worded("panels", "face")}},
           .pieces = {{"solid", worded("pieces", "solid")}}},
      .parameters =
          {measure("edge", worded("styles", "Edge"),
                   worded("styles", "Of every face. The tabs must fit."))
               .standard(mm(60))
               .from([slope](const Parameters& p, const Workbench& m) {
                 return Length::mm(Length::nanometres(smallestFlap()(p, m)).mm() / 0.4 / slope +
                                   0.01)
                     .nm();
               })
               .to(kLargestSide),
           measure("tab", worded("styles", "Tabs"),
                   worded("styles",
                          "Glued inside the face beside them; deeper ones would run to a point."))
               .standard(mm(8))
               .from(smallestFlap())
               .to([solid](const Parameters& p, const Workbench&) { return deepestTab(solid, p); })
               .givesWay()},
      .needs = [solid](const Room& room, const Parameters&,
                       const Workbench& bench) { return solidNeeds(solid, room, bench); },
      .build = [solid](const Parameters& parameters,
                       const Workbench&) { return buildSolid(solid, parameters); },
  };
}

}  // namespace

Style tetrahedron() {
  return solidStyle("tetrahedron", worded("styles", "Tetrahedron"),
                    worded("styles", "Four triangles."), 1, {3, 3, 45, {{1, 1}, {1, 2}, {1, 3}}});
}

Style cube() {
  return solidStyle("cube", worded("styles", "Cube"), worded("styles", "Six squares."), 1,
                    {4, 3, 40, {{1, 1}, {1, 2}, {1, 3}, {1, 4}, {2, 3}}});
}

Style octahedron() {
  return solidStyle("octahedron", worded("styles", "Octahedron"),
                    worded("styles", "Eight triangles."), 2,
                    {3, 4, 45, {{1, 1}, {1, 2}, {1, 3}, {2, 2}, {3, 2}, {4, 2}, {5, 3}}});
}

/// A flower of six; from one petal a face to the second flower.
Style dodecahedron() {
  return solidStyle(
      "dodecahedron", worded("styles", "Dodecahedron"), worded("styles", "Twelve pentagons."), 3,
      {5,
       3,
       30,
       {{1, 1}, {1, 2}, {1, 3}, {1, 4}, {1, 5}, {2, 3}, {7, 4}, {8, 2}, {8, 3}, {8, 4}, {8, 5}}});
}

/// A strip of ten with five triangles on either side.
Style icosahedron() {
  return solidStyle("icosahedron", worded("styles", "Icosahedron"),
                    worded("styles", "Twenty triangles."), 3,
                    {3,
                     5,
                     45,
                     {{1, 2},
                      {2, 2},
                      {3, 3},
                      {4, 2},
                      {5, 3},
                      {6, 2},
                      {7, 3},
                      {8, 2},
                      {9, 3},
                      {1, 1},
                      {3, 2},
                      {5, 2},
                      {7, 2},
                      {9, 2},
                      {2, 3},
                      {4, 3},
                      {6, 3},
                      {8, 3},
                      {10, 3}}});
}

}  // namespace creasewright
