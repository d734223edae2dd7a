#include "pages/score_map.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "drawing/contrast.h"
#include "guide/make_guide.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

std::string inMm(const Label& label) {
  if (label.code.empty()) return label.literal;
  return std::to_string(std::lround(std::get<Length>(label.values.at(0)).mm()));
}

struct Mapped {
  BuiltDesign built;
  Drawing map;
  std::size_t lines = 0;         // that the steps score
  std::multiset<long> readings;  // of the steps, micrometres, one for each setup
};

/// The maps of all pieces of a style as it comes.
std::vector<Mapped> mapsOf(const Style& style) {
  Design design;
  design.styleId = style.id;
  design.parameters = standardParameters(style);
  const Result<BuiltDesign> built = build(design);
  EXPECT_TRUE(built.ok());
  const Guide guide = makeGuide(*built);
  std::vector<Mapped> maps;
  for (std::size_t piece = 0; piece < built->pieces.size(); ++piece) {
    Mapped mapped{*built, {}, 0, {}};
    std::vector<const Step*> steps;
    for (const Step& step : guide.steps) {
      if (step.piece != static_cast<int>(piece)) continue;
      if (step.settings.empty() && step.freeScores.empty()) continue;
      steps.push_back(&step);
      mapped.lines += step.freeScores.size();
      for (const ScoreSetup& setup : step.settings) {
        mapped.lines += setup.sides.size() * setup.readings.size();
        for (const ScoreReading& reading : setup.readings)
          mapped.readings.insert(std::lround(reading.at.mm() * 1000));
      }
    }
    if (steps.empty()) continue;
    mapped.map = scoreMap(built->pieces[piece], steps, {122, 118}, inMm);
    maps.push_back(std::move(mapped));
  }
  return maps;
}

/// Every line that is scored is drawn, every setting is written, and all within the room.
TEST(ScoreMap, DrawsEveryLineAndWritesEveryReading) {
  int seen = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    for (const Mapped& each : mapsOf(style)) {
      ++seen;
      const auto lines = std::ranges::count_if(each.map.paths, [](const PathItem& item) {
        return item.role == Role::Valley || item.role == Role::Mountain ||
               item.role == Role::CutMark;
      });
      EXPECT_EQ(static_cast<std::size_t>(lines), each.lines);
      std::set<long> written;
      for (const TextItem& text : each.map.texts)
        if (text.label.code == "reading") {
          EXPECT_TRUE(text.bold);
          written.insert(std::lround(std::get<Length>(text.label.values.at(0)).mm() * 1000));
        }
      EXPECT_EQ(written, std::set<long>(each.readings.begin(), each.readings.end()));
      EXPECT_LE(each.map.width, 122 + 1e-6);
      EXPECT_LE(each.map.height, 118 + 1e-6);
    }
  }
  EXPECT_GT(seen, 30);
}

/// The trade's framed tray: four settings from all sides, numbered 1 to 4 from the fence, once.
TEST(ScoreMap, NumbersLinesFromTheFence) {
  const Drawing map = mapsOf(**findStyle("framed-tray")).front().map;
  std::vector<std::pair<double, std::string>> rings;
  std::vector<std::pair<double, double>> readings;
  const double top = std::ranges::max(map.texts, {}, [](const TextItem& t) { return t.at.y; }).at.y;
  for (const TextItem& text : map.texts) {
    if (text.label.code.empty()) rings.emplace_back(text.at.x, text.label.literal);
    if (text.label.code == "reading" && text.at.y > top - 12)
      readings.emplace_back(text.at.x, std::get<Length>(text.label.values.at(0)).mm());
  }
  std::ranges::sort(rings);
  std::ranges::sort(readings);
  ASSERT_EQ(rings.size(), 4U);
  ASSERT_EQ(readings.size(), 4U);
  for (std::size_t i = 0; i < rings.size(); ++i) {
    EXPECT_EQ(rings[i].second, std::to_string(i + 1));
    EXPECT_NEAR(rings[i].first, readings[i].first, 1e-6);
    EXPECT_GT(readings[i].second, i > 0 ? readings[i - 1].second : 0);
  }
}

/// The sheet is in the colour of the side that is up, as pale as its lines need.
TEST(ScoreMap, TheSheetIsInTheColourOfTheCard) {
  Design design;
  design.styleId = "framed-tray";
  design.parameters = standardParameters(**findStyle("framed-tray"));
  for (const char* name : {"plum", "black", "cream", "teal"}) {
    const Colour card = parseColour(name).value();
    design.card.colours.face = design.card.colours.back = card;
    const BuiltDesign built = build(design).value();
    const Guide guide = makeGuide(built);
    std::vector<const Step*> steps;
    for (const Step& step : guide.steps)
      if (!step.settings.empty()) steps.push_back(&step);
    const Drawing map = scoreMap(built.pieces.front(), steps, {120, 120}, inMm);
    const auto sheet = std::ranges::find(map.paths, Role::Face, &PathItem::role);
    ASSERT_NE(sheet, map.paths.end());
    ASSERT_TRUE(sheet->colour) << name;
    // White mixed in equally: what is missing to white stays in proportion.
    const double share = (255.0 - sheet->colour->red) / (255 - card.red);
    EXPECT_LE(share, 1.01) << name;
    EXPECT_NEAR(255.0 - sheet->colour->green, (255 - card.green) * share, 1.5) << name;
    EXPECT_NEAR(255.0 - sheet->colour->blue, (255 - card.blue) * share, 1.5) << name;
    for (const Role role : {Role::Valley, Role::Mountain})
      EXPECT_GE(contrast(roleStyle(role).colour, *sheet->colour), 2.95) << name;
  }
}

}  // namespace
}  // namespace creasewright
