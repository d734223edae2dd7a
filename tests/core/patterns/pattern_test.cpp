#include "patterns/pattern.h"

#include <numbers>
#include <set>

#include <gtest/gtest.h>

#include "seen_colours.h"

namespace creasewright {
namespace {

TEST(Pattern, AllSixteenAreThere) {
  std::set<std::string_view> ids;
  for (const PatternKind& pattern : patterns()) {
    EXPECT_TRUE(ids.insert(pattern.id).second) << pattern.id;
    EXPECT_FALSE(pattern.title.empty());
    EXPECT_GE(pattern.colours.size(), 2U) << pattern.id;
    EXPECT_LE(pattern.colours.size(), 4U) << pattern.id;
    EXPECT_TRUE(checkedPaper(usualPaper(pattern))) << pattern.id;
  }
  for (const char* id :
       {"stripes", "pin-dots", "dots", "gingham", "tartan", "chevron", "herringbone", "lattice",
        "scallops", "waves", "confetti", "stars", "leaves", "sprigs", "snow", "terrazzo"})
    EXPECT_TRUE(ids.contains(id)) << id;
}

TEST(Pattern, IsTheSameAgainAfterEachRepeat) {
  constexpr double kScale = 20;
  for (const PatternKind& pattern : patterns()) {
    const SeenColours seen(patternOn(square(60), paperOf(pattern, mm(kScale))));
    int inked = 0;
    for (const Point p : somePoints(500, 25)) {
      const int here = seen.layerAt(p);
      inked += here > 0;
      for (const Point by : {Point{kScale, 0}, Point{0, kScale * pattern.height},
                             Point{-kScale, kScale * pattern.height}})
        EXPECT_EQ(seen.layerAt(p + by), here) << pattern.id << ' ' << p.x << ' ' << p.y;
    }
    EXPECT_GT(inked, 10) << pattern.id;
    EXPECT_LT(inked, 500) << pattern.id;
  }
}

/// Whether the paper looks the same once it is turned about a point.
bool sameTurned(const SeenColours& seen, Point centre, double degrees) {
  const double turn = degrees * std::numbers::pi / 180;
  const Point x{std::cos(turn), std::sin(turn)};
  int wrong = 0;
  for (const Point p : somePoints(400, 10)) {
    const Point there = centre + x * p.x + turnLeft(x) * p.y;
    if (!(seen.at(centre + p) == seen.at(there)) && ++wrong > 2) return false;
  }
  return true;
}

/// Whether there is a point about which it may be turned so: one is looked for in steps of a
/// twenty-fourth of the repeat.
bool maybeTurned(const PatternKind& pattern, double degrees) {
  constexpr double kScale = 10;
  constexpr int kSteps = 24;
  const SeenColours seen(patternOn(square(26), paperOf(pattern, mm(kScale))));
  for (int i = 0; i < kSteps; ++i)
    for (int k = 0; k < kSteps; ++k)
      if (sameTurned(seen, Point{i * kScale, k * kScale * pattern.height} / kSteps, degrees))
        return true;
  return false;
}

TEST(Pattern, LooksRightInTheTurnsOfItsClassAndInNoOthers) {
  for (const PatternKind& pattern : patterns()) {
    if (pattern.turns == Turns::Any) continue;
    EXPECT_EQ(maybeTurned(pattern, 180), pattern.turns != Turns::None) << pattern.id;
    EXPECT_EQ(maybeTurned(pattern, 90), pattern.turns == Turns::Quarter) << pattern.id;
    EXPECT_EQ(pattern.hasUp(), pattern.turns == Turns::None) << pattern.id;
    PaperPattern paper = usualPaper(pattern);
    EXPECT_EQ(mayTurnByQuarter(paper), pattern.turns == Turns::Quarter) << pattern.id;
  }
}

/// How often the colour changes over a short way, in the direction of most and of fewest changes.
double unevenness(const PatternKind& pattern) {
  constexpr int kDirections = 12;
  const SeenColours seen(patternOn(square(34), paperOf(pattern, mm(20))));
  int most = 0;
  int fewest = 1'000'000;
  for (int d = 0; d < kDirections; ++d) {
    const double turn = std::numbers::pi * d / kDirections;
    const Point by = Point{std::cos(turn), std::sin(turn)} * 0.5;
    int changes = 0;
    for (const Point p : somePoints(4000, 30)) changes += !(seen.at(p) == seen.at(p + by));
    most = std::max(most, changes);
    fewest = std::min(fewest, changes);
  }
  return static_cast<double>(most) / std::max(1, fewest);
}

// What may be turned by any angle has no direction: its colours change as often along every one.
TEST(Pattern, WhatMayBeTurnedAnyhowHasNoDirection) {
  int any = 0;
  for (const PatternKind& pattern : patterns()) {
    if (pattern.turns != Turns::Any) continue;
    ++any;
    EXPECT_LT(unevenness(pattern), 1.35) << pattern.id;
    EXPECT_TRUE(mayTurnByQuarter(usualPaper(pattern)));
  }
  EXPECT_GE(any, 6);
  EXPECT_GT(unevenness(*patternCalled("stripes")), 3);
  EXPECT_GT(unevenness(*patternCalled("waves")), 2);
}

TEST(Pattern, EveryColourIsSeen) {
  const std::vector<Colour> own{{9, 0, 0}, {0, 9, 0}, {0, 0, 9}, {9, 9, 0}};
  for (const PatternKind& pattern : patterns()) {
    PaperPattern paper = paperOf(pattern, mm(20));
    paper.colours.assign(own.begin(),
                         own.begin() + static_cast<std::ptrdiff_t>(pattern.colours.size()));
    const SeenColours seen(patternOn(square(30), paper));
    std::set<std::string> found;
    for (const Point p : somePoints(8000, 29)) found.insert(hexText(seen.at(p)));
    for (const Colour& colour : paper.colours)
      EXPECT_TRUE(found.contains(hexText(colour))) << pattern.id << ' ' << hexText(colour);
  }
}

TEST(Pattern, ColoursThatAreNotToldAreItsOwn) {
  const PatternKind& tartan = *patternCalled("tartan");
  PaperPattern paper = usualPaper(tartan);
  EXPECT_EQ(coloursOf(paper), tartan.colours);
  paper.colours = {{1, 2, 3}};
  const std::vector<Colour> colours = coloursOf(paper);
  ASSERT_EQ(colours.size(), 4U);
  EXPECT_EQ(colours[0], (Colour{1, 2, 3}));
  EXPECT_EQ(colours[1], tartan.colours[1]);
}

TEST(Pattern, MeanColourIsThatOfManyPoints) {
  for (const PatternKind& pattern : patterns()) {
    const SeenColours seen(patternOn(square(40), paperOf(pattern, mm(20))));
    double red = 0;
    double blue = 0;
    constexpr int kCount = 4000;
    for (const Point p : somePoints(kCount, 40)) {
      red += seen.at(p).red;
      blue += seen.at(p).blue;
    }
    const Colour mean = meanColour(usualPaper(pattern));
    EXPECT_NEAR(mean.red, red / kCount, 5) << pattern.id;
    EXPECT_NEAR(mean.blue, blue / kCount, 5) << pattern.id;
  }
}

TEST(Pattern, ScaleOutsideReasonIsRefused) {
  for (const char* text : {"0", "0mm", "-5mm", "2.9mm", "501mm", "10km", "10000m", "wide", ""}) {
    const Result<Length> scale = patternScale(text);
    ASSERT_FALSE(scale) << text;
    EXPECT_EQ(scale.problem().code, ProblemCode::PatternScaleOff) << text;
  }
  EXPECT_EQ(*patternScale("12"), mm(12));
  EXPECT_EQ(*patternScale("1/2in"), Length::inches(1, 2));
  EXPECT_EQ(*patternScale("3mm"), kSmallestPattern);
  EXPECT_EQ(*patternScale("500mm"), kLargestPattern);
}

TEST(Pattern, PaperThatCannotBeIsRefused) {
  EXPECT_EQ(checkedPaper({"dotz", mm(5), 0, {}}).problem().code, ProblemCode::PatternUnknown);
  EXPECT_EQ(checkedPaper({"dots", mm(0), 0, {}}).problem().code, ProblemCode::PatternScaleOff);
  const std::vector<Colour> many(3);
  const Problem problem = checkedPaper({"gingham", mm(5), 0, many}).problem();
  EXPECT_EQ(problem.code, ProblemCode::PatternColours);
  EXPECT_EQ(std::get<std::int64_t>(problem.values.at(1)), 2);
  EXPECT_EQ(checkedPaper({"dots", mm(5), -90, {}})->turn, 270);
}

}  // namespace
}  // namespace creasewright
