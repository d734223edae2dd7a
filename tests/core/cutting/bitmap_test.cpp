#include "cutting/bitmap.h"

#include <gtest/gtest.h>

#include "geometry/region.h"
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

}  // namespace
}  // namespace creasewright
