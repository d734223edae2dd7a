#include "core/laws/law_book.h"

#include <algorithm>
#include <ctime>
#include <limits>
#include <map>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

constexpr int kJudged = 300;
constexpr int kFewestJudged = 200;

/// Of the processor: other work on the machine is no fault.
double secondsSince(std::clock_t start) {
  return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

class LawBook : public ::testing::TestWithParam<Style> {};

/// Judges random designs of a style by every law; a style that yields too few fails.
TEST_P(LawBook, HoldsForEveryStyle) {
  const Style& style = GetParam();
  testing::Random random(81);
  int valid = 0;
  std::map<std::string_view, int> broken;
  for (int i = 0; i < kJudged; ++i) {
    const auto design = testing::randomInsideLimits(random, style);
    if (!design) continue;
    const Result<BuiltDesign> built = build(*design);
    ASSERT_TRUE(built.ok()) << style.id << ' ' << built.problem().where;
    ++valid;
    for (const testing::Law& law : testing::lawBook()) {
      const testing::Verdict verdict = law.judge(*built);
      if (!verdict.empty() && broken[law.name]++ == 0)
        ADD_FAILURE() << law.name << ": " << verdict << " in " << testing::describe(*built);
    }
  }
  for (const auto& [name, times] : broken)
    ADD_FAILURE() << name << ": broken by " << times << " of " << valid << " sets";
  EXPECT_GE(valid, kFewestJudged) << style.id;
}

INSTANTIATE_TEST_SUITE_P(Styles, LawBook, ::testing::ValuesIn(styles().begin(), styles().end()),
                         [](const auto& tested) {
                           std::string name(tested.param.id);
                           std::ranges::replace(name, '-', '_');
                           return name;
                         });

/// Without one of their joints most boxes have a corner that the law notices; a flap that is held
/// as well as tucked in, or whose panel is held on both sides of it, does not show.
TEST(Laws, AMissingJointIsNoticed) {
  int tried = 0;
  int noticed = 0;
  for (const Style& style : styles()) {
    Design design;
    design.styleId = style.id;
    design.parameters = standardParameters(style);
    const Result<BuiltDesign> built = build(design);
    ASSERT_TRUE(built.ok()) << style.id;
    for (std::size_t p = 0; p < built->pieces.size(); ++p)
      for (std::size_t i = 0; i < built->pieces[p].net.mates.size(); ++i) {
        BuiltDesign broken = *built;
        std::vector<Mate>& mates = broken.pieces[p].net.mates;
        if (mates[i].method == Method::Rest || !mates[i].patch.empty()) continue;
        const std::string flap =
            broken.pieces[p].net.panels[static_cast<std::size_t>(mates[i].panel)].id;
        mates.erase(mates.begin() + static_cast<std::ptrdiff_t>(i));
        ++tried;
        const bool seen = !testing::meetingEdgesAreHeldOrDeclaredOpen(broken).empty();
        if (seen) ++noticed;
        const bool seam = flap.ends_with("seam");
        EXPECT_TRUE(seen || !seam) << style.id << ' ' << flap;
      }
  }
  EXPECT_GE(noticed, tried * 8 / 10) << "of " << tried;
}

/// Crosses that lie in one another by chance are no box: the law notices a glue left out.
TEST(Laws, APieceJoinedToNothingIsNoticed) {
  Design design;
  design.styleId = "exploding-box";
  design.parameters = standardParameters(**findStyle("exploding-box"));
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  EXPECT_EQ(testing::everyPieceIsHeldOrLoose(*built), "");
  BuiltDesign loose = *built;
  loose.pieces[0].held.reset();
  EXPECT_NE(testing::everyPieceIsHeldOrLoose(loose), "");
}

/// A lid a little aside, or a sleeve too low, goes through the tray.
TEST(Laws, APieceBesideItsPlaceIsNoticed) {
  const std::vector<std::pair<const char*, Point3>> waysOff{{"two-piece-box", {0, 0, 1}},
                                                            {"drawer-box", {1, 0, 0}},
                                                            {"prism-box-with-lid", {0, 1, 0}},
                                                            {"exploding-box", {0, 0, 1}},
                                                            {"partition-insert", {0, 1, 0}}};
  for (const auto& [style, off] : waysOff) {
    Design design;
    design.styleId = style;
    design.parameters = standardParameters(**findStyle(style));
    const Result<BuiltDesign> built = build(design);
    ASSERT_TRUE(built.ok());
    EXPECT_EQ(testing::standingPiecesStayClear(*built), "") << style;
    for (const Point3 by : {Point3{3, 0, 0}, Point3{0, 3, 0}, Point3{0, 0, 3}}) {
      BuiltDesign moved = *built;
      for (BuiltPiece& piece : moved.pieces)
        if (piece.held && piece.held->by != Hold::Glue)
          piece.held->place = Transform::translation(by).after(*piece.held->place);
      const bool alongItsWay = dot(by, off) != 0;
      EXPECT_TRUE(alongItsWay || !testing::standingPiecesStayClear(moved).empty())
          << style << ' ' << by.x << by.y << by.z;
    }
  }
}

/// Laws that judge some styles only must judge enough of them.
TEST(Laws, LawsOfSomeStylesJudgeEnough) {
  const auto count = [](bool (*judges)(std::string_view)) {
    return std::ranges::count_if(styles(), [judges](const Style& s) { return judges(s.id); });
  };
  EXPECT_GE(count(testing::foldsToMirrorImages), 5);
}

/// At twice the size enough designs of every style are inside the limits.
TEST(Laws, DoublingHasEnoughToJudge) {
  testing::Random random(85);
  for (const Style& style : styles()) {
    int judged = 0;
    for (int i = 0; i < kJudged / 3; ++i) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      const Result<BuiltDesign> built = build(*design);
      if (built && testing::canBeDoubled(*built)) ++judged;
    }
    EXPECT_GE(judged, kJudged / 10) << style.id;
  }
}

/// The same for designs made for a product, where the ease is promised by name.
TEST(Laws, OuterPiecesGoOverInnerOnesOfAnyProduct) {
  testing::Random random(88);
  int judged = 0;
  for (const Style& style : styles()) {
    for (int i = 0; i < kJudged; ++i) {
      const Product product{ProductShape::Box, Length::mm(random.between(15, 250)),
                            Length::mm(random.between(15, 200)),
                            Length::mm(random.between(8, 150))};
      const Card card{"test", "test card", Length::mm(random.between(0.15, 0.6)), 0};
      const auto ease = static_cast<Ease>(random.whole(0, 2));
      const auto design = newDesign(style.id, product, card, ease, testing::randomGrid(random));
      ASSERT_TRUE(design.ok()) << style.id;
      const Result<BuiltDesign> built = build(*design);
      if (!built) continue;
      if (std::ranges::none_of(built->pieces,
                               [](const BuiltPiece& p) { return p.over.has_value(); }))
        break;
      ++judged;
      EXPECT_EQ(testing::outerPiecesGoOverInnerOnes(*built), "") << testing::describe(*built);
      if (HasFailure()) return;
    }
  }
  EXPECT_GE(judged, kFewestJudged);
}

/// Values just outside and far outside the limits of every parameter.
std::vector<std::int64_t> valuesOutside(std::int64_t low, std::int64_t high) {
  constexpr std::int64_t kFar = std::numeric_limits<std::int64_t>::max() / 8;
  return {low - 1, high + 1, -1, -kFar, kFar, low - 1'000'000, high + 1'000'000};
}

/// The design with every value that the problems tell.
Design carriedOut(Design design, const Problems& problems) {
  for (const Problem& problem : problems) {
    if (problem.values.size() < 2) continue;
    if (const auto* length = std::get_if<Length>(&problem.values[1]))
      design.parameters.set(problem.where, *length);
    else if (const auto* count = std::get_if<std::int64_t>(&problem.values[1]))
      design.parameters.setCount(problem.where, *count);
  }
  return design;
}

/// Outside a limit, build says at once which parameters must change (limits are linked: not always
/// the one that was changed last), and with these values all is well.
TEST(Laws, OutsideItsLimitsWhatMustChangeIsNamed) {
  testing::Random random(89);
  for (const Style& style : styles()) {
    int tried = 0;
    for (int round = 0; round < kJudged / 30; ++round) {
      const auto inside = testing::randomInsideLimits(random, style);
      if (!inside) continue;
      const Workbench bench{inside->card.caliper, inside->grid};
      for (const ParameterSpec& spec : style.parameters) {
        const std::int64_t low = spec.minimum(inside->parameters, bench);
        const std::int64_t high = spec.maximum(inside->parameters, bench);
        for (const std::int64_t value : valuesOutside(low, high)) {
          if (value >= low && value <= high) continue;
          Design design = *inside;
          design.parameters.setCount(spec.key, value);
          const std::clock_t start = std::clock();
          const Result<BuiltDesign> built = build(design);
          EXPECT_LT(secondsSince(start), 1) << style.id << ' ' << spec.key << ' ' << value;
          ASSERT_FALSE(built.ok()) << style.id << ' ' << spec.key << ' ' << value;
          const Problems problems = limitProblems(design);
          EXPECT_TRUE(limitProblems(carriedOut(design, problems)).empty())
              << style.id << ' ' << spec.key << ' ' << value;
          EXPECT_EQ(built.problem(), problems.front()) << style.id;
          ++tried;
        }
      }
    }
    EXPECT_GE(tried, 100) << style.id;
  }
}

/// Any numbers at all give a design or the name of a parameter, within a second.
TEST(Laws, AnyNumbersBuildOrAreRefused) {
  testing::Random random(90);
  for (const Style& style : styles()) {
    for (int i = 0; i < kJudged; ++i) {
      Design design;
      design.styleId = style.id;
      design.card = {"test", "test card", Length::mm(random.between(0.01, 3)), 0};
      design.grid = testing::randomGrid(random);
      design.parameters = standardParameters(style);
      for (const ParameterSpec& spec : style.parameters)
        if (random.whole(0, 1) == 0)
          design.parameters.setCount(
              spec.key, static_cast<std::int64_t>(std::exp(random.between(0, 21.5))) - 1000);
      const std::clock_t start = std::clock();
      const Result<BuiltDesign> built = build(design);
      EXPECT_LT(secondsSince(start), 1) << style.id;
      EXPECT_TRUE(built.ok() || !built.problem().where.empty()) << style.id;
    }
  }
}

}  // namespace
}  // namespace creasewright
