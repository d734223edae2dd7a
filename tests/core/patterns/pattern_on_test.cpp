#include "patterns/pattern_on.h"

#include <numbers>

#include <gtest/gtest.h>

#include "seen_colours.h"

namespace creasewright {
namespace {

/// An L with a window in it.
Region nook() {
  return {{{{0, 0}, {50, 0}, {50, 20}, {20, 20}, {20, 45}, {0, 45}},
           {{{5, 5}, {5, 12}, {14, 12}, {14, 5}}}}};
}

bool within(Point p, double slack) {
  const Area area = nook().front();
  return locate(p, area.outer, slack) != Side::Outside &&
         locate(p, area.holes.front(), slack) != Side::Inside;
}

TEST(PatternOn, StaysInItsOutlineAndFillsIt) {
  for (const PatternKind& pattern : patterns()) {
    const std::vector<Inked> inks = patternOn(nook(), paperOf(pattern, mm(14), 20));
    ASSERT_GE(inks.size(), 2U) << pattern.id;
    double whole = 0;
    for (const Inked& ink : inks)
      for (const Area& area : ink.shape) {
        for (const Point& p : area.outer) EXPECT_TRUE(within(p, 1e-5)) << pattern.id;
        whole += signedArea(area.outer);
      }
    EXPECT_GT(whole, 0);
    // Inside, it is as on a sheet of which this is cut.
    const SeenColours cut(inks);
    const SeenColours sheet(patternOn(square(60), paperOf(pattern, mm(14), 20)));
    int judged = 0;
    for (const Point p : somePoints(600, 50)) {
      const bool inside = locate(p, nook().front().outer) == Side::Inside &&
                          locate(p, nook().front().holes.front()) == Side::Outside;
      EXPECT_EQ(cut.at(p), inside ? sheet.at(p) : (Colour{1, 2, 3})) << pattern.id;
      judged += inside;
    }
    EXPECT_GT(judged, 50);
  }
}

TEST(PatternOn, FollowsScaleTurnAndPlane) {
  // Twice as large, turned by 30 degrees, in a mirror and drawn narrow.
  const double turn = std::numbers::pi / 6;
  const Point x{std::cos(turn), std::sin(turn)};
  const PlaneMap plane{{3, -4}, {-0.7, 0.2}, {0.1, 0.9}};
  for (const PatternKind& pattern : patterns()) {
    const SeenColours plain(patternOn(square(40), paperOf(pattern, mm(10))));
    const SeenColours other(patternOn(square(70), paperOf(pattern, mm(20), 30), plane));
    for (const Point p : somePoints(300, 16)) {
      const Point turned = (x * p.x + turnLeft(x) * p.y) * 2;
      EXPECT_EQ(other.at(plane.apply(turned)), plain.at(p)) << pattern.id;
    }
  }
}

// Whatever is finer than the eye can part takes no time either.
TEST(PatternOn, TooManyRepeatsAreOneColour) {
  const PaperPattern paper = paperOf(*patternCalled("snow"), kSmallestPattern);
  const std::vector<Inked> inks = patternOn(square(1000), paper);
  ASSERT_EQ(inks.size(), 1U);
  EXPECT_EQ(inks.front().colour, meanColour(paper));
}

TEST(PatternOn, SeenFromItsEdgeOrUnknownItIsNoPattern) {
  const PatternKind& dots = *patternCalled("dots");
  EXPECT_EQ(patternOn(square(9), usualPaper(dots), {{}, {1, 0}, {1, 1e-6}}).size(), 1U);
  EXPECT_TRUE(patternOn(square(9), {"none", mm(9), 0, {}}).empty());
  EXPECT_TRUE(patternOn({}, usualPaper(dots)).empty());
}

}  // namespace
}  // namespace creasewright
