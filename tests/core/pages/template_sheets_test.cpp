#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "drawing/arrange.h"
#include "pages/template_pages.h"
#include "support/trade_tray.h"

// What a printed sheet says and shows about itself.
namespace creasewright {
namespace {

std::string bracketed(const Label& label) {
  if (label.code.empty()) return label.literal;
  std::string out = "<" + label.code;
  for (const ProblemValue& value : label.values) {
    if (const auto* text = std::get_if<std::string>(&value)) out += ' ' + *text;
    if (const auto* number = std::get_if<std::int64_t>(&value))
      out += ' ' + std::to_string(*number);
  }
  // A reading is a short number.
  return label.code == "reading" ? "10 3/16" : out + ">";
}

std::vector<Drawing> sheetsOf(const BuiltPiece& piece, int count, const char* paper = "a4") {
  const TemplatePiece printed{.name = piece.name,
                              .net = &piece.net,
                              .flat = &piece.flat,
                              .scorePlan = &piece.scorePlan,
                              .gluePlan = &piece.gluePlan,
                              .count = count};
  const auto pages = drawTemplate({printed}, {.paper = *findPaper(paper)}, {"", "", {}}, bracketed);
  EXPECT_TRUE(pages.ok());
  return pages.ok() ? *pages : std::vector<Drawing>{};
}

bool says(const Drawing& page, const std::string& wanted) {
  return std::ranges::any_of(page.texts, [&](const TextItem& text) {
    return bracketed(text.label).find(wanted) != std::string::npos;
  });
}

double inkLength(const Drawing& page, Role role) {
  double sum = 0;
  for (const PathItem& item : page.paths) {
    if (item.role != role) continue;
    for (const Polygon& ring : item.rings) {
      for (std::size_t i = 0; i + 1 < ring.size(); ++i) sum += distance(ring[i], ring[i + 1]);
      if (item.closed) sum += distance(ring.back(), ring.front());
    }
  }
  return sum;
}

/// On a large sheet, so that nothing is printed twice.
TEST(TemplateSheets, OnlyTheNetIsInTheLayersOfCutsAndScores) {
  testing::Random random(1802);
  int judged = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 6; ++round) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      ASSERT_TRUE(built);
      for (const BuiltPiece& piece : built->pieces) {
        if (piece.flat.width > 250 || piece.flat.height > 380) continue;
        const std::vector<Drawing> pages = sheetsOf(piece, 1, "a3");
        double cuts = 0;
        for (const Polyline& line : cutLines(piece.flat))
          for (std::size_t i = 0; i + 1 < line.size(); ++i) cuts += distance(line[i], line[i + 1]);
        double scores = 0;
        for (std::size_t i = 0; i < piece.flat.creases.size(); ++i)
          if (piece.net.creases[i].kind == CreaseKind::Score)
            scores += length(piece.flat.creases[i]);
        double drawnCuts = 0;
        double drawnScores = 0;
        for (const Drawing& page : pages) {
          drawnCuts += inkLength(page, Role::Cut);
          drawnScores += inkLength(page, Role::Valley) + inkLength(page, Role::Mountain);
        }
        EXPECT_NEAR(drawnCuts, cuts, 1e-6 * (1 + cuts)) << style.id;
        EXPECT_NEAR(drawnScores, scores, 1e-6 * (1 + scores)) << style.id;
        ++judged;
      }
    }
  EXPECT_GT(judged, 50);
}

/// Adhesive goes onto the face its flap meets the target with: the framed tray's ends are glued on
/// the drawn face, its strips and tabs on the other.
TEST(TemplateSheets, AdhesiveOnTheOtherFaceIsHatchedTheOtherWay) {
  Design design;
  design.styleId = "framed-tray";
  design.parameters = testing::tradeTray();
  const auto built = build(design);
  ASSERT_TRUE(built);
  const BuiltPiece& piece = built->pieces[0];
  const Drawing page = sheetsOf(piece, 1, "a3").front();
  EXPECT_TRUE(says(page, "<legend-glue>"));
  EXPECT_TRUE(says(page, "<legend-glue-behind>"));
  double rising = 0;
  double falling = 0;
  double wantedRising = 0;
  double wantedFalling = 0;
  for (const PathItem& item : page.paths)
    if (item.role == Role::Glue && !item.closed)
      for (const Polygon& line : item.rings) {
        const Point run = line[1] - line[0];
        (run.x * run.y > 0 ? rising : falling) += norm(run);
      }
  for (const GlueArea& area : piece.gluePlan)
    (area.flapFace == Face::Inside ? wantedRising : wantedFalling) += signedArea(area.area) / 2;
  EXPECT_NEAR(rising, wantedRising, 0.1 * wantedRising);
  EXPECT_NEAR(falling, wantedFalling, 0.1 * wantedFalling);
}

/// On every page that shows a part of the net, and on no other.
TEST(TemplateSheets, TheSheetItselfSaysWhichFaceItIsAndHowOftenItIsMade) {
  testing::Random random(1803);
  int tiled = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 4; ++round) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      ASSERT_TRUE(built);
      for (const BuiltPiece& piece : built->pieces) {
        if (piece.net.creases.empty()) continue;
        if (piece.flat.width > 600 || piece.flat.height > 600) continue;
        const std::vector<Drawing> pages = sheetsOf(piece, 2);
        int sheets = 0;
        for (const Drawing& page : pages) {
          const bool sheet = says(page, "<tile") || inkLength(page, Role::Cut) > 0;
          sheets += sheet ? 1 : 0;
          EXPECT_EQ(says(page, "<drawn-face>"), sheet) << style.id;
          EXPECT_EQ(says(page, "<make-short 2>"), sheet) << style.id;
        }
        tiled += sheets > 1 ? 1 : 0;
        for (const Drawing& page : sheetsOf(piece, 1)) EXPECT_FALSE(says(page, "<make-short"));
      }
    }
  EXPECT_GT(tiled, 10);
}

/// A style as it comes, smaller and larger, where its limits allow.
std::vector<BuiltDesign> threeSizes(const Style& style) {
  std::vector<BuiltDesign> sizes;
  for (const double share : {1.0, 0.7, 1.4}) {
    Design design;
    design.styleId = style.id;
    design.parameters = standardParameters(style);
    for (const ParameterSpec& row : style.parameters)
      if (row.kind == ParameterKind::Length)
        design.parameters.set(row.key, Length::mm(design.parameters.mm(row.key) * share));
    auto built = build(design);
    if (built && built->problems.empty()) sizes.push_back(std::move(*built));
  }
  return sizes;
}

/// A reading as it must stand on the page: its value, and where its line meets the edge.
struct WantedReading {
  Length value;
  Point at;
};

/// From the definition of a score plan: a full score reaches both edges, a short one its own.
std::vector<WantedReading> wantedReadings(const ScorePlan& plan, double width, double height) {
  std::vector<WantedReading> out;
  for (const ScoreSetup& setup : plan.setups)
    for (const SheetSide side : setup.sides)
      for (const ScoreReading& reading : setup.readings) {
        const bool full = reading.run == ScoreRun::Full;
        const double at = reading.at.mm();
        const SheetSide from = full ? side : reading.measuredFrom;
        const double x = from == SheetSide::Right ? width - at : at;
        const double y = from == SheetSide::Top ? height - at : at;
        const bool upright = from == SheetSide::Left || from == SheetSide::Right;
        if (full && upright) {
          out.push_back({reading.at, {x, 0}});
          out.push_back({reading.at, {x, height}});
        } else if (full) {
          out.push_back({reading.at, {0, y}});
          out.push_back({reading.at, {width, y}});
        } else if (upright) {
          out.push_back({reading.at, {x, side == SheetSide::Top ? height : 0}});
        } else {
          out.push_back({reading.at, {side == SheetSide::Right ? width : 0, y}});
        }
      }
  return out;
}

/// Where the blank lies on its page, by the border that is printed with it; nothing where it lies
/// turned.
std::optional<Bounds> blankOn(const Drawing& page, const FlatNet& flat) {
  for (const PathItem& item : page.paths) {
    if (item.role != Role::Positions || !item.closed || item.like) continue;
    const Bounds box = bounds(item.rings.front());
    if (std::abs(box.width() - flat.width) < 1e-6 && std::abs(box.height() - flat.height) < 1e-6)
      return box;
  }
  return std::nullopt;
}

/// Settings stand where the hand sets them: every score of the plan has its number at the edges it
/// meets, no farther from its line than its own length.
TEST(TemplateSheets, EveryScoreHasItsReadingAtTheEdgesOfTheBlank) {
  int judged = 0;
  int missing = 0;
  for (const Style& style : styles())
    for (const BuiltDesign& built : threeSizes(style))
      for (const BuiltPiece& piece : built.pieces) {
        const std::vector<Drawing> pages = sheetsOf(piece, 1, "a3");
        if (pages.size() != 1) continue;
        const auto blank = blankOn(pages.front(), piece.flat);
        if (!blank) continue;
        for (const WantedReading& wanted :
             wantedReadings(piece.scorePlan, piece.flat.width, piece.flat.height)) {
          ++judged;
          const Point at = wanted.at + blank->low;
          const bool told = std::ranges::any_of(pages.front().texts, [&](const TextItem& text) {
            if (text.label.code != "reading") return false;
            if (std::get<Length>(text.label.values[0]) != wanted.value) return false;
            const Bounds ink = bounds(textBox(text, bracketed(text.label)));
            return distance((ink.low + ink.high) / 2, at) < 22;
          });
          if (!told) ++missing;
        }
      }
  EXPECT_GT(judged, 800);
  // Where several scores meet at one place, one may find no room.
  EXPECT_LE(missing, judged / 400);
}

/// No word of the notes lies on card that stays, nor across an edge of waste.
TEST(TemplateSheets, NotesKeepOffTheNet) {
  int judged = 0;
  int noted = 0;
  const auto ofNotes = [](const std::string& said) {
    return said.starts_with("<score") || said.starts_with("<mark") || said.starts_with("<measures");
  };
  for (const Style& style : styles())
    for (const BuiltDesign& built : threeSizes(style))
      for (const BuiltPiece& piece : built.pieces) {
        // One page, the net in one part: where its panels lie is found from a line of their own.
        const std::vector<Drawing> pages = sheetsOf(piece, 1, "a3");
        if (pages.size() != 1) continue;
        const Drawing& page = pages.front();
        const auto sheet = std::ranges::find_if(page.paths, [&](const PathItem& item) {
          if (item.role != Role::Positions || !item.closed) return false;
          const Bounds box = bounds(item.rings.front());
          return (std::abs(box.width() - piece.flat.width) < 1e-6 &&
                  std::abs(box.height() - piece.flat.height) < 1e-6) ||
                 (std::abs(box.height() - piece.flat.width) < 1e-6 &&
                  std::abs(box.width() - piece.flat.height) < 1e-6);
        });
        ASSERT_NE(sheet, page.paths.end()) << style.id;
        const Bounds box = bounds(sheet->rings.front());
        if (std::abs(box.width() - piece.flat.width) > 1e-6) continue;  // lies turned
        ++judged;
        for (const TextItem& text : page.texts) {
          if (!ofNotes(bracketed(text.label))) continue;
          ++noted;
          const Bounds ink = bounds(textBox(text, bracketed(text.label)));
          for (const Polygon& panel : piece.flat.panels) {
            Polygon placed;
            for (const Point& p : panel) placed.push_back(p + box.low);
            for (const Point corner : {ink.low, ink.high, (ink.low + ink.high) / 2})
              EXPECT_NE(locate(corner, placed, 1e-3), Side::Inside)
                  << style.id << ' ' << bracketed(text.label);
          }
          for (const PathItem& item : page.paths) {
            if (item.role != Role::Waste || item.like) continue;
            for (const Polygon& line : item.rings)
              EXPECT_TRUE(clippedLine(line, ink).empty())
                  << style.id << ' ' << bracketed(text.label);
          }
        }
      }
  EXPECT_GT(judged, 20);
  EXPECT_GT(noted, 100);
}

}  // namespace
}  // namespace creasewright
