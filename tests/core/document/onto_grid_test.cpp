#include <algorithm>

#include <gtest/gtest.h>

#include "document/build.h"
#include "extras/extra_kind.h"
#include "styles/registry.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

const ToolGrid kTools[] = {ToolGrid::eighthInch(), ToolGrid::sixteenthInch(),
                           ToolGrid::millimetre()};

/// Walls or faces stand on regular polygons or slant: their corners have irrational places.
bool isRegular(const Style& style) {
  constexpr std::string_view kSlanting[] = {"prism-box-with-lid", "petal-prism-box", "tapered-cup",
                                            "pyramid-box",        "tetrahedron",     "octahedron",
                                            "dodecahedron",       "icosahedron"};
  return std::ranges::find(kSlanting, style.id) == std::end(kSlanting);
}

bool hasSlantedCrease(const FlatNet& flat) {
  return std::ranges::any_of(flat.creases, [](const Segment& s) {
    return std::abs(s.a.x - s.b.x) > 1e-3 && std::abs(s.a.y - s.b.y) > 1e-3;
  });
}

/// Settings of the board that are no place of the grid, as they are told.
std::vector<std::string> oddReadings(const BuiltPiece& piece, ToolGrid grid) {
  std::vector<std::string> odd;
  for (const ScoreSetup& setup : piece.scorePlan.setups)
    for (const ScoreReading& reading : setup.readings)
      if (reading.purpose == ScorePurpose::Fold && reading.run == ScoreRun::Full &&
          !grid.holds(reading.at))
        odd.push_back(formatLength(reading.at, {}));
  return odd;
}

/// Every length of every style's defaults lies on the grid, inside its limits, on every listed
/// card.
TEST(OntoGrid, DefaultsOfEveryStyleLieOnEveryGrid) {
  for (const Style& style : styles())
    for (const ToolGrid grid : kTools)
      for (const Card& card : cards()) {
        if (card.caliper > Length::mm(0.6)) continue;  // only with a warning
        const Design design = newDesign(style.id, {}, card, Ease::Easy, grid).value();
        EXPECT_TRUE(limitProblems(design).empty()) << style.id << ' ' << card.id;
        for (const ParameterSpec& spec : style.parameters)
          if (spec.kind == ParameterKind::Length) {
            EXPECT_TRUE(grid.holds(design.parameters.length(spec.key), {}))
                << style.id << ' ' << spec.key << ' ' << card.id << ' ' << toolGridText(grid);
          }
      }
}

/// And no setting of the board at the defaults is rounded in print. Left out are nets over regular
/// polygons and with slanting folds, whose corners have irrational places.
TEST(OntoGrid, DefaultsGiveNoRoundedReadings) {
  int judged = 0;
  for (const Style& style : styles())
    for (const ToolGrid grid : kTools) {
      const auto built = build(newDesign(style.id, {}, cards()[0], Ease::Easy, grid).value());
      ASSERT_TRUE(built.ok()) << style.id;
      EXPECT_TRUE(onlyWarnings(built->problems)) << style.id << ' ' << toolGridText(grid);
      for (const BuiltPiece& piece : built->pieces) {
        if (!isRegular(style) || hasSlantedCrease(piece.flat)) continue;
        ++judged;
        const auto odd = oddReadings(piece, grid);
        EXPECT_TRUE(odd.empty()) << style.id << ' ' << piece.name << ' ' << toolGridText(grid)
                                 << ' ' << odd.front();
      }
    }
  EXPECT_GE(judged, 60);
}

/// A change of grid moves every measure, with a product and without, and there is no way back to
/// off it.
TEST(OntoGrid, MovesEveryMeasureAndKeepsTheProductsRoom) {
  for (const Style& style : styles())
    for (const bool full : {false, true})
      for (const ToolGrid from : kTools)
        for (const ToolGrid to : kTools) {
          std::optional<Product> product;
          if (full) product = parseProduct("box:61.3x42.7x33.1mm").value();
          const Design before = newDesign(style.id, product, cards()[0], Ease::Easy, from).value();
          const Design after = ontoGrid(before, to);
          EXPECT_EQ(after.grid, to);
          for (const ParameterSpec& spec : style.parameters)
            if (spec.kind == ParameterKind::Length) {
              EXPECT_TRUE(to.holds(after.parameters.length(spec.key), {}))
                  << style.id << ' ' << spec.key << ' ' << toolGridText(to);
            }
          const auto built = build(after);
          ASSERT_TRUE(built.ok()) << style.id << ' ' << built.problem().where;
          EXPECT_TRUE(onlyWarnings(built->problems)) << style.id;
        }
}

TEST(OntoGrid, HandSetMeasuresAndExtrasMoveToo) {
  Design design = newDesign("framed-tray", parseProduct("box:60x40x20mm").value(), cards()[0],
                            Ease::Easy, ToolGrid::millimetre())
                      .value();
  design.parameters.set("opening-length", Length::mm(80));  // by hand, larger than asked for
  design.parameters.set("frame", Length::mm(11));
  for (const ExtraKind& kind : extraKinds())
    design.extras.push_back(standardExtra(kind, design.card));
  const ToolGrid eighths = ToolGrid::eighthInch();
  const Design after = ontoGrid(design, eighths);
  EXPECT_EQ(after.parameters.length("opening-length"), Length::inches(25, 8));  // 79.4 mm
  EXPECT_EQ(after.parameters.length("frame"), Length::inches(3, 8));            // 9.5 mm, 11.1 is
  ASSERT_EQ(after.extras.size(), design.extras.size());
  for (std::size_t i = 0; i < after.extras.size(); ++i) {
    const ExtraKind& kind = **findExtraKind(after.extras[i].kind);
    for (const ParameterSpec& spec : kind.parameters) {
      if (spec.kind != ParameterKind::Length) continue;
      EXPECT_TRUE(eighths.holds(after.extras[i].parameters.length(spec.key), {}))
          << kind.id << ' ' << spec.key;
      EXPECT_EQ(after.extras[i].parameters.raw(spec.key) == 0,
                design.extras[i].parameters.raw(spec.key) == 0)
          << kind.id << ' ' << spec.key;
    }
  }
}

// A hole "across 6" on a millimetre grid is 6 mm wide on a grid of inches too, and what names its
// unit, or follows the panel, stays as it is written.
TEST(OntoGrid, ChangesByHandMeanTheSameLengths) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:60x35x90mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  const auto add = [&](std::map<std::string, std::string, std::less<>> measures) {
    design.edits.push_back({.kind = "opening",
                            .piece = {},
                            .panel = "front",
                            .edge = {},
                            .measures = std::move(measures),
                            .on = true});
  };
  add({{"width", "6"}, {"height", "2 x 4"}, {"y", "20"}});
  add({{"width", "0.5 in"}, {"height", "panel-height / 9"}, {"y", "-20"}});
  const auto openings = [](const Design& of) {
    const BuiltDesign built = *build(of);
    EXPECT_TRUE(built.brokenEdits.empty());
    const Net& net = built.pieces.front().net;
    return net.panels[static_cast<std::size_t>(*net.find("front"))].openings;
  };
  const auto before = openings(design);
  const Design inches = ontoGrid(design, ToolGrid::sixteenthInch());
  EXPECT_EQ(inches.edits[0].measures.at("width"), "6 mm");
  EXPECT_EQ(inches.edits[1].measures.at("width"), "0.5 in");
  EXPECT_EQ(inches.edits[1].measures.at("height"), "panel-height / 9");
  const auto after = openings(inches);
  ASSERT_EQ(before.size(), 2U);
  ASSERT_EQ(after.size(), 2U);
  EXPECT_NEAR(bounds(after[0]).width(), 6, 1e-6);
  EXPECT_NEAR(bounds(after[0]).height(), 8, 1e-6);
  EXPECT_NEAR(bounds(after[1]).width(), 12.7, 1e-6);
  EXPECT_EQ(ontoGrid(design, ToolGrid::none()).edits, design.edits) << "the same unit";
}

}  // namespace
}  // namespace creasewright
