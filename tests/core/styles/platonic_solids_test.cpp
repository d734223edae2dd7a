#include <cmath>
#include <numbers>
#include <string>

#include <gtest/gtest.h>

#include "document/build.h"

namespace creasewright {
namespace {

struct Known {
  const char* id;
  int faces, edges;
  double dihedral;  ///< degrees
  double inradius;  ///< for an edge of 1
};

// Dihedral angles: Coxeter, Regular Polytopes, table I; they also match
// sites.google.com/site/regularconvexpolyhedrons. Inradii: half the face-to-face spans derived from
// coordinates (octahedron 0.816497, dodecahedron 2.227033, icosahedron 1.511523), and a quarter of
// the tetrahedron's height 0.816497.
const Known kSolids[] = {{"tetrahedron", 4, 6, 70.528779, 0.204124},
                         {"cube", 6, 12, 90, 0.5},
                         {"octahedron", 8, 12, 109.471221, 0.408248},
                         {"dodecahedron", 12, 30, 116.565051, 1.113516},
                         {"icosahedron", 20, 30, 138.189685, 0.755761}};

BuiltDesign builtSolid(const Known& solid) {
  const auto design = newDesign(solid.id, std::nullopt, {"test", "", Length::mm(0.3), 0},
                                Ease::Easy, ToolGrid::none());
  return std::move(build(*design)).value();
}

bool isFace(const Panel& panel) { return panel.id.find('/') == std::string::npos; }

class PlatonicSolid : public ::testing::TestWithParam<Known> {};

TEST_P(PlatonicSolid, EveryCreaseHasTheDihedralAngle) {
  const BuiltDesign built = builtSolid(GetParam());
  const Net& net = built.pieces[0].net;
  for (const Crease& crease : net.creases)
    EXPECT_NEAR(180 - crease.angle.degrees(), GetParam().dihedral, 1e-6);
}

/// Every edge of a folded face lies on an edge of exactly one other face, to 1e-6 mm.
TEST_P(PlatonicSolid, FacesCloseAllTheWayRound) {
  const BuiltDesign built = builtSolid(GetParam());
  const Net& net = built.pieces[0].net;
  std::vector<std::pair<Point3, Point3>> edges;
  int faces = 0;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    if (!isFace(net.panels[i])) continue;
    ++faces;
    const Polygon& outline = net.panels[i].outline;
    for (std::size_t k = 0; k < outline.size(); ++k)
      edges.emplace_back(built.pieces[0].folded[i].apply(outline[k]),
                         built.pieces[0].folded[i].apply(outline[(k + 1) % outline.size()]));
  }
  EXPECT_EQ(faces, GetParam().faces);
  EXPECT_EQ(static_cast<int>(edges.size()), 2 * GetParam().edges);
  for (const auto& [a, b] : edges) {
    int partners = 0;
    for (const auto& [c, d] : edges)
      if (norm(a - d) < 1e-6 && norm(b - c) < 1e-6) ++partners;
    EXPECT_EQ(partners, 1);
  }
}

/// One tab for every edge that is no crease.
TEST_P(PlatonicSolid, EveryOpenEdgeHasOneTab) {
  const BuiltDesign built = builtSolid(GetParam());
  const int creasesBetweenFaces = GetParam().faces - 1;
  EXPECT_EQ(static_cast<int>(built.pieces[0].net.mates.size()),
            GetParam().edges - creasesBetweenFaces);
}

TEST_P(PlatonicSolid, TheMiddleIsOneInradiusFromEveryFace) {
  const BuiltDesign built = builtSolid(GetParam());
  const BuiltPiece& piece = built.pieces[0];
  const double edge = built.design.parameters.mm("edge");
  const Point3 middle = piece.cavity->seed;  // the first face's frame is the net's
  for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
    if (!isFace(piece.net.panels[i])) continue;
    const Transform& place = piece.folded[i];
    EXPECT_NEAR(dot(place.normal(), middle - place.apply(Point{0, 0})), GetParam().inradius * edge,
                1e-6 * edge + 1e-6 * edge);
  }
}

INSTANTIATE_TEST_SUITE_P(Solids, PlatonicSolid, ::testing::ValuesIn(kSolids),
                         [](const auto& test) { return std::string(test.param.id); });

}  // namespace
}  // namespace creasewright
