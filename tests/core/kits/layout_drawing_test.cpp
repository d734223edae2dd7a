#include "kits/layout_drawing.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "core/cutting/random_cuts.h"
#include "cutting/cut_tree.h"
#include "cutting/plan_cutting.h"
#include "cutting/trim_steps.h"
#include "drawing/arrange.h"
#include "drawing/contrast.h"
#include "fit/card_pattern.h"
#include "lettering/type_width.h"
#include "patterns/pattern.h"
#include "support/code_or_text.h"
#include "support/random.h"
#include "units/length_text.h"

// The law of the pictures beside the steps at the trimmer: every word stands inside the picture, on
// no other word and on no line, every blank has its letter in it, every setting stands at its cut.

namespace creasewright {
namespace {

constexpr double kHair = 1e-6;  // mm

std::string words(const Label& label) {
  if (label.code == "trim-setting")
    return std::to_string(std::get<std::int64_t>(label.values.at(0))) + ": " +
           formatLength(std::get<Length>(label.values.at(1)), {.withUnit = false});
  return testing::codeOrText(label);
}

/// The room of a word as its letters are wide, and as high as textBox says.
Bounds roomOf(const TextItem& text) {
  const double wide = typeWidth(words(text.label), text.height);
  const double from = text.anchor == Anchor::Centre ? -wide / 2 : 0;
  const double low = -0.25 * text.height;
  const double high = 0.95 * text.height;
  if (text.turnDegrees == 90)
    return {text.at + Point{-high, from}, text.at + Point{-low, from + wide}};
  return {text.at + Point{from, low}, text.at + Point{from + wide, high}};
}

bool meets(const Bounds& box, Point a, Point b) {
  return !clippedLine({a, b}, {box.low + Point{kHair, kHair}, box.high - Point{kHair, kHair}})
              .empty();
}

std::string told(const Bounds& box) {
  return std::to_string(box.low.x) + " " + std::to_string(box.low.y) + " .. " +
         std::to_string(box.high.x) + " " + std::to_string(box.high.y);
}

/// Words lie inside, apart, and on no line.
void expectNothingOverprinted(const Drawing& drawing, const std::string& of) {
  std::vector<Bounds> rooms;
  for (const TextItem& text : drawing.texts) {
    const Bounds room = roomOf(text);
    EXPECT_GE(std::min(room.low.x, room.low.y), -kHair) << of << words(text.label);
    EXPECT_LE(room.high.x, drawing.width + kHair) << of << words(text.label);
    EXPECT_LE(room.high.y, drawing.height + kHair) << of << words(text.label);
    for (const Bounds& other : rooms)
      EXPECT_FALSE(room.low.x < other.high.x - kHair && other.low.x < room.high.x - kHair &&
                   room.low.y < other.high.y - kHair && other.low.y < room.high.y - kHair)
          << of << words(text.label) << " at " << told(room) << " on " << told(other);
    rooms.push_back(room);
    for (const PathItem& path : drawing.paths) {
      if (path.role == Role::Face) continue;  // the card that it stands on
      for (const Polygon& ring : path.rings)
        for (std::size_t i = 0; i + 1 < ring.size() + (path.closed ? 1 : 0); ++i)
          EXPECT_FALSE(meets(room, ring[i], ring[(i + 1) % ring.size()]))
              << of << words(text.label) << " at " << told(room);
    }
  }
}

/// Each blank as it lies on the picture has a letter of its own inside, where one could be read.
void expectALetterInEveryBlank(const Drawing& drawing, const Layout& layout, double scale,
                               const std::string& of) {
  const bool turned = liesTurned(layout);
  const double left =
      drawing.width - (turned ? layout.sheet.height : layout.sheet.width).mm() * scale;
  eachNode(layout.sheet, [&](const CutNode& node) {
    if (node.kind != CutNode::Kind::Blank) return;
    Point low{node.x.mm(), node.y.mm()};
    Point size{node.width.mm(), node.height.mm()};
    if (turned) {
      std::swap(low.x, low.y);
      std::swap(size.x, size.y);
    }
    low = low * scale + Point{left, 0};
    const Point high = low + size * scale;
    const auto letters = std::ranges::count_if(drawing.texts, [&](const TextItem& text) {
      const Bounds room = roomOf(text);
      return text.role == Role::Legend && words(text.label) == demandLetter(node.demand) &&
             room.low.x >= low.x && room.high.x <= high.x && room.low.y >= low.y &&
             room.high.y <= high.y;
    });
    const double least = std::min(size.x, size.y) * scale;
    if (least > 2) {
      EXPECT_EQ(letters, 1) << of << "a blank " << least << " mm on paper";
    }
  });
}

struct Told {
  int steps = 0;
  int settings = 0;
};

/// A setting stands beside a line of its step, and along or across it. Counts those that are told.
void judgeSettings(const Drawing& drawing, const Layout& layout, double scale,
                   const std::string& of, Told& count) {
  const bool turned = liesTurned(layout);
  const double left =
      drawing.width - (turned ? layout.sheet.height : layout.sheet.width).mm() * scale;
  for (const TrimStep& step : trimSteps(layout)) {
    ++count.steps;
    const Label label{"trim-setting", {std::int64_t{step.number}, step.setting}, {}};
    const auto text = std::ranges::find_if(drawing.texts, [&](const TextItem& item) {
      return item.label.code == label.code && words(item.label) == words(label);
    });
    if (text == drawing.texts.end()) continue;
    ++count.settings;
    const Bounds room = roomOf(*text);
    const bool beside = std::ranges::any_of(step.lines, [&](const CutLine& line) {
      Point from{line.x.mm(), line.y.mm()};
      if (turned) std::swap(from.x, from.y);
      from = from * scale + Point{left, 0};
      const bool upright = step.upright != turned;
      const Point to = from + (upright ? Point{0, line.length.mm() * scale}
                                       : Point{line.length.mm() * scale, 0});
      const Bounds near{room.low - Point{0.5, 0.5}, room.high + Point{0.5, 0.5}};
      return meets(near, from, to);
    });
    EXPECT_TRUE(beside) << of << words(label) << " stands at no cut of its step";
  }
}

/// The first cut runs up the page, and its fence stands at the left.
void expectItLiesForTheFirstCut(const Drawing& drawing, const Layout& layout,
                                const std::string& of) {
  if (trimSteps(layout).empty()) return;
  const auto fence = std::ranges::find_if(
      drawing.paths, [](const PathItem& path) { return path.role == Role::Legend && path.filled; });
  ASSERT_NE(fence, drawing.paths.end()) << of;
  const Bounds bar = bounds(fence->rings.front());
  EXPECT_NEAR(bar.height(), drawing.height, kHair) << of;
  EXPECT_LT(bar.high.x, 6) << of;
  const bool through = std::ranges::any_of(drawing.paths, [&](const PathItem& path) {
    return path.role == Role::Cut && path.rings[0][0].x == path.rings[0][1].x &&
           std::abs(path.rings[0][1].y - path.rings[0][0].y - drawing.height) < kHair;
  });
  EXPECT_TRUE(through) << of << "no cut runs up through the sheet";
}

void judge(const Layout& layout, const std::string& of, Told& count) {
  const Drawing drawing = drawLayout(layout, 88, 105, 0, words);
  EXPECT_LE(drawing.width, 88 + kHair) << of;
  EXPECT_LE(drawing.height, 105 + kHair) << of;
  const double high = (liesTurned(layout) ? layout.sheet.width : layout.sheet.height).mm();
  const double scale = drawing.height / high;
  expectNothingOverprinted(drawing, of);
  expectALetterInEveryBlank(drawing, layout, scale, of);
  judgeSettings(drawing, layout, scale, of, count);
  expectItLiesForTheFirstCut(drawing, layout, of);
}

TEST(LayoutDrawing, NothingIsOverprintedOnPlansOfRandomKits) {
  testing::Random random(1603);
  Told count;
  for (int round = 0; round < 60; ++round) {
    const std::vector<CutSheet> stock{
        {Length::mm(random.whole(200, 510)), Length::mm(random.whole(280, 760))}};
    std::vector<BlankDemand> demands;
    for (int d = random.whole(1, 6); d > 0; --d)
      demands.push_back({"B", Length::mm(random.whole(15, 190)), Length::mm(random.whole(15, 190)),
                         random.whole(1, 30)});
    PlanOptions options;
    options.seconds = 0.2;
    const auto plan = planCutting(stock, demands, options);
    if (!plan) continue;
    for (const Layout& layout : plan->layouts)
      judge(layout, "round " + std::to_string(round) + ": ", count);
  }
  std::cout << count.settings << " of " << count.steps << " settings stand on their cuts\n";
  EXPECT_GT(count.steps, 200);
  EXPECT_GE(count.settings, 0.9 * count.steps);
}

TEST(LayoutDrawing, NothingIsOverprintedOnSheetsCutAtRandom) {
  testing::Random random(1604);
  Told count;
  for (int round = 0; round < 300; ++round) {
    const CutNode sheet = testing::sheetOf(random.whole(150, 500), random.whole(150, 500));
    judge({0, 1, tidied(testing::cutAtRandom(sheet, 6, random))},
          "round " + std::to_string(round) + ": ", count);
  }
  EXPECT_GT(count.steps, 500);
}

TEST(LayoutDrawing, ASheetThatIsFirstCutAcrossLiesTurned) {
  const CutNode sheet = testing::sheetOf(300, 200);
  EXPECT_FALSE(liesTurned({0, 1, cutAt(sheet, true, Length::mm(100))}));
  const Layout across{0, 1, cutAt(sheet, false, Length::mm(50))};
  EXPECT_TRUE(liesTurned(across));
  const Drawing drawing = drawLayout(across, 100, 90, 0, words);
  EXPECT_NEAR(drawing.height, 90, kHair);  // 300 mm high now
}

/// An arrow on every blank of directed paper, to the top of the sheet as it lies; on no word.
TEST(LayoutDrawing, AnArrowOnEveryBlankShowsThePatternsTop) {
  testing::Random random(1605);
  int turned = 0;
  for (int round = 0; round < 60; ++round) {
    const CutNode sheet = testing::sheetOf(random.whole(150, 500), random.whole(150, 500));
    const Layout layout{0, 1, tidied(testing::cutAtRandom(sheet, 5, random))};
    std::size_t blanks = 0;
    bool tiny = false;
    const Drawing drawing = drawLayout(layout, 88, 105, 0, words, {.up = true});
    expectNothingOverprinted(drawing, "round " + std::to_string(round) + ": ");
    for (const PathItem& path : drawing.paths)
      if (path.role == Role::Face) {
        ++blanks;
        const Bounds box = bounds(path.rings.front());
        tiny = tiny || std::min(box.width(), box.height()) < 6;
      }
    std::size_t arrows = 0;
    for (const PathItem& path : drawing.paths) {
      if (path.role != Role::Legend || path.closed || path.rings.front().size() != 2) continue;
      ++arrows;
      const Point way = path.rings[0][1] - path.rings[0][0];
      EXPECT_GT(liesTurned(layout) ? way.x : way.y, 0.5);
      EXPECT_NEAR(liesTurned(layout) ? way.y : way.x, 0, 1e-9);
    }
    EXPECT_LE(arrows, blanks);
    if (!tiny) {
      EXPECT_EQ(arrows, blanks) << round;
    }
    turned += liesTurned(layout) ? 1 : 0;
  }
  EXPECT_GT(turned, 10);
}

/// Every colour and pattern tints the blanks, and letters, settings and cuts stand out from it.
TEST(LayoutDrawing, BlanksShowTheirCardAndWhatStandsOnThemIsRead) {
  const Layout layout{0, 1, cutAt(testing::sheetOf(300, 200), true, Length::mm(100))};
  std::vector<CardColours> all;
  for (const NamedColour& named : namedColours()) all.push_back({.face = named.colour});
  for (const PatternKind& kind : patterns()) all.push_back({.pattern = usualPaper(kind)});
  for (const CardColours& colours : all) {
    const LayoutLook look = lookOf(colours);
    ASSERT_TRUE(look.tint) << cardColourText(colours);
    const Drawing drawing = drawLayout(layout, 100, 90, 0, words, look);
    for (const PathItem& path : drawing.paths)
      if (path.role == Role::Face) {
        for (const Role role : {Role::Cut, Role::Dimension})
          EXPECT_GE(contrast(roleStyle(role).colour, fillColour(path)), 3)
              << cardColourText(colours) << patternText(colours);
        EXPECT_GE(contrast(roleStyle(Role::Legend).colour, fillColour(path)), 4.5)
            << cardColourText(colours) << patternText(colours);
      }
  }
  EXPECT_NE(lookOf(all[0]).tint, lookOf(all[13]).tint);
  EXPECT_EQ(lookOf({.back = all[5].face}).tint, lookOf(all[5]).tint);
  EXPECT_FALSE(lookOf({}).tint);
}

}  // namespace
}  // namespace creasewright
