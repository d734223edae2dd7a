#include <set>

#include "core/extras/built_extras.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::fitted;
using testing::Random;

/// Whether other card of the same piece lies on a wall's inside at a place of it.
bool cardLiesOn(const BuiltPiece& host, int panel, Point there) {
  const double close = host.card.caliper.mm() * 1.3;
  const Transform& own = host.folded[static_cast<std::size_t>(panel)];
  for (std::size_t i = 0; i < host.net.panels.size(); ++i) {
    if (static_cast<int>(i) == panel) continue;
    const Transform back = host.folded[i].inverse();
    const Point3 from = back.apply(own.apply(there));
    const Point3 way = back.turn(own.normal());
    if (std::abs(way.z) < 0.7) continue;
    const double far = -from.z / way.z;
    const Point hit{from.x + way.x * far, from.y + way.y * far};
    if (far > 0 && far < close && locate(hit, host.net.panels[i].outline) == Side::Inside)
      return true;
  }
  return false;
}

// Law: a photo mat lies on the inside of its wall, its front towards the room, within the wall by
// its inset, and on no tab or flap.
TEST(PhotoMats, LieOnTheBareInsideOfWalls) {
  Random random(171);
  int mats = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 3; ++round) {
      SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(round));
      Design design = fitted(random, style);
      design.extras = {extraOf("photo-mats", design)};
      const double inset = random.between(1, 6);
      design.extras[0].parameters.set("inset", Length::mm(inset));
      const BuiltDesign whole = built(design);
      for (const BuiltPiece* mat : testing::piecesOf(whole, 0)) {
        EXPECT_EQ(mat->role->placing, Placing::OnInside);
        EXPECT_EQ(mat->count, static_cast<int>(mat->role->faces.size()));
        for (const FacePlace& face : mat->role->faces) {
          const BuiltPiece& host = testing::hostOf(whole, face);
          const Polygon& wall = host.net.panels[static_cast<std::size_t>(face.panel)].outline;
          EXPECT_GT(face.place.turn({0, 0, -1}).z, 0.99);
          EXPECT_GT(face.place.apply(Point{}).z, host.card.caliper.mm() / 2);
          const Polygon there = testing::onFace(*mat, face);
          const Bounds box = bounds(there);
          for (const Point& p : there) {
            EXPECT_NE(locate(p, wall), Side::Outside);
            EXPECT_GT(testing::clearOf(wall, p), inset - 0.01);
          }
          for (int i = 0; i < 40; ++i) {
            const Point p{random.between(box.low.x, box.high.x),
                          random.between(box.low.y, box.high.y)};
            if (locate(p, there) == Side::Inside) {
              EXPECT_FALSE(cardLiesOn(host, face.panel, p)) << p.x << ' ' << p.y;
            }
          }
          ++mats;
        }
      }
    }
  EXPECT_GT(mats, 100);
}

Design explodingBox(double side) {
  Design design;
  design.styleId = "exploding-box";
  design.grid = ToolGrid::millimetre();
  design.product = Product{ProductShape::Box, Length::mm(side), Length::mm(side), Length::mm(side)};
  design.parameters = fit(**findStyle(design.styleId), *design.product, design.ease,
                          {design.card.caliper, design.grid})
                          .parameters;
  design.extras = {extraOf("photo-mats", design)};
  return design;
}

/// Four walls and the floor of the cross that is seen when the lid is off; none in the lid.
TEST(PhotoMats, AnExplodingBoxHasOneOnEachWallAndOnTheFloor) {
  const BuiltDesign whole = built(explodingBox(70));
  std::set<std::string> walls;
  for (const BuiltPiece* mat : testing::piecesOf(whole, 0))
    for (const FacePlace& face : mat->role->faces) {
      const BuiltPiece& host = testing::hostOf(whole, face);
      EXPECT_NE(host.name, "lid");
      if (host.name == "inner-cross")
        walls.insert(std::string(host.net.panels[static_cast<std::size_t>(face.panel)].id));
    }
  EXPECT_EQ(walls.size(), 5U);
}

/// Two thick mats leave no room for a product that the walls just hold.
TEST(PhotoMats, TooThickForTheProductIsRefused) {
  Design design = explodingBox(70);
  design.extras[0].card.caliper = Length::mm(4);
  const BuiltDesign whole = built(design);
  EXPECT_TRUE(testing::piecesOf(whole, 0).empty());
  EXPECT_TRUE(std::ranges::any_of(
      whole.problems, [](const Problem& each) { return each.code == ProblemCode::ExtraTooLarge; }));
}

}  // namespace
}  // namespace creasewright
