#include "kits/nesting.h"

#include <gtest/gtest.h>

#include "kits/bitmap.h"
#include "kits/machine_layouts.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// A cell is taken exactly when the polygon's part in it has an area, or an edge touches it.
TEST(Bitmap, TakesEveryCellThatAPolygonCovers) {
  testing::Random random(81);
  for (int i = 0; i < 100; ++i) {
    std::vector<Point> points;
    for (int k = 0; k < 8; ++k) points.push_back({random.between(0, 20), random.between(0, 20)});
    const Polygon hull = convexHull(points);
    const Bitmap map = rasterized(hull, 1);
    for (int y = 0; y < map.height(); ++y)
      for (int x = 0; x < map.width(); ++x) {
        const Polygon cell{
            {x + 0.0, y + 0.0}, {x + 1.0, y + 0.0}, {x + 1.0, y + 1.0}, {x + 0.0, y + 1.0}};
        const double shared = area(intersect(region(hull), region(cell)));
        if (shared > 1e-6) {
          EXPECT_TRUE(map.taken(x, y)) << i << ": " << x << ' ' << y;
        }
        if (map.taken(x, y)) {
          const Region near = offset(region(cell), 1e-3);
          EXPECT_GT(area(intersect(region(hull), near)), 0) << i << ": " << x << ' ' << y;
        }
      }
  }
}

TEST(Bitmap, MeetsIsTheCommonCell) {
  testing::Random random(82);
  for (int i = 0; i < 200; ++i) {
    Bitmap mat(150, 20);
    Bitmap part(random.whole(1, 90), random.whole(1, 10));
    for (int k = 0; k < 30; ++k) mat.take(random.whole(0, 149), random.whole(0, 19));
    for (int k = 0; k < 30; ++k)
      part.take(random.whole(0, part.width() - 1), random.whole(0, part.height() - 1));
    const int x = random.whole(0, 150 - part.width());
    const int y = random.whole(0, 20 - part.height());
    bool common = false;
    for (int r = 0; r < part.height(); ++r)
      for (int c = 0; c < part.width(); ++c)
        common = common || (part.taken(c, r) && mat.taken(x + c, y + r));
    EXPECT_EQ(mat.meets(part, x, y), common);
  }
}

/// Nothing overlaps or comes closer than the gap, all lies on the mat, every part is there.
void expectSound(const std::vector<NestPart>& parts, const std::vector<MatLayout>& layouts,
                 double width, double height, double gap) {
  std::vector<int> made(parts.size(), 0);
  for (const MatLayout& layout : layouts) {
    std::vector<Region> wide;
    for (const NestedPart& nested : layout.parts) {
      const NestPart& part = parts[static_cast<std::size_t>(nested.part)];
      made[static_cast<std::size_t>(nested.part)] += layout.count;
      if (!part.mayTurn) {
        EXPECT_EQ(nested.quarters, 0);
      }
      const Polygon outline = nestedOutline(part, nested);
      const Bounds box = bounds(outline);
      EXPECT_GE(std::min(box.low.x, box.low.y), gap - 1e-6);
      EXPECT_LE(box.high.x, width - gap + 1e-6);
      EXPECT_LE(box.high.y, height - gap + 1e-6);
      // Half the gap all round, a little less for rounding at mitred corners.
      wide.push_back(offset(region(outline), gap / 2 * 0.7));
      for (std::size_t k = 0; k + 1 < wide.size(); ++k)
        EXPECT_LT(area(intersect(wide[k], wide.back())), 1e-3);
    }
  }
  for (std::size_t i = 0; i < parts.size(); ++i) EXPECT_EQ(made[i], parts[i].quantity);
}

TEST(Nesting, PacksWithoutOverlapAndMakesEveryPart) {
  testing::Random random(83);
  for (int i = 0; i < 10; ++i) {
    std::vector<NestPart> parts;
    for (int k = 0; k < 4; ++k) {
      const double w = random.between(20, 120);
      const double h = random.between(20, 90);
      const double notch = random.between(5, std::min(w, h) / 2);
      parts.push_back({"l" + std::to_string(k),
                       {{0, 0}, {w, 0}, {w, notch}, {notch, notch}, {notch, h}, {0, h}},
                       w,
                       h,
                       random.whole(1, 9),
                       k != 2});
    }
    const auto layouts = nest(parts, Length::mm(305), Length::mm(305));
    ASSERT_TRUE(layouts.ok());
    expectSound(parts, *layouts, 305, 305, 2);
  }
}

/// Two L shapes whose rectangles could not share a mat reach into one another.
TEST(Nesting, ConcavePartsReachIntoOneAnother) {
  const NestPart part{"l", {{0, 0}, {90, 0}, {90, 30}, {30, 30}, {30, 90}, {0, 90}}, 90, 90, 2,
                      true};
  const auto layouts = nest({part}, Length::mm(140), Length::mm(140));
  ASSERT_TRUE(layouts.ok());
  ASSERT_EQ(layouts->size(), 1U);
  EXPECT_EQ(layouts->front().count, 1);
  EXPECT_EQ(layouts->front().parts.size(), 2U);
}

TEST(Nesting, APartLargerThanTheMatIsNamed) {
  const NestPart part{"big", {{0, 0}, {90, 0}, {90, 30}, {0, 30}}, 90, 30, 1, false};
  const auto layouts = nest({part}, Length::mm(80), Length::mm(100));
  ASSERT_FALSE(layouts.ok());
  EXPECT_EQ(layouts.problem().code, ProblemCode::BlankTooLarge);
  EXPECT_EQ(layouts.problem().where, "big");
  NestPart turned = part;
  turned.mayTurn = true;
  EXPECT_TRUE(nest({turned}, Length::mm(80), Length::mm(100)).ok());
}

TEST(MachineLayouts, AKitsNetsLieOnTheirMatsAsNested) {
  ClassKit kit;
  kit.takers = 5;
  for (const char* style : {"straight-tuck-box", "two-piece-box"}) {
    const auto design = newDesign(style, *parseProduct("box:60x35x50mm"), cards()[0], Ease::Easy,
                                  ToolGrid::millimetre());
    kit.items.push_back({*design, 1});
  }
  const auto plans = planMachine(kit, Length::inches(12), Length::inches(12));
  ASSERT_TRUE(plans.ok());
  ASSERT_EQ(plans->size(), 1U);
  const MachinePlan& plan = plans->front();
  expectSound(plan.parts, plan.layouts, 304.8, 304.8, 2);
  ASSERT_EQ(plan.drawings.size(), plan.layouts.size());
  double cut = 0;
  for (const PathItem& item : plan.drawings[0].paths)
    for (const Polygon& ring : item.rings)
      for (const Point& p : ring) {
        EXPECT_GE(std::min(p.x, p.y), 2 - 1e-6);
        EXPECT_LE(std::max(p.x, p.y), 302.8 + 1e-6);
        cut += 1;
      }
  EXPECT_GT(cut, 100);
  int mats = 0;
  for (const MatLayout& layout : plan.layouts) mats += layout.count;
  EXPECT_EQ(plan.mats, mats);
}

}  // namespace
}  // namespace creasewright
