#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/pages/template_parts.h"
#include "drawing/arrange.h"
#include "drawing/role.h"
#include "pages/printed_part.h"
#include "patterns/pattern.h"
#include "support/code_or_text.h"
#include "support/random.h"
#include "units/millimetres.h"
#include "units/paper.h"

// Printed papers against distances and insides of the outlines of the net itself, taken point by
// point: none of it knows how areas are grown or cut.
namespace creasewright {
namespace {

using testing::codeOrText;
using testing::Random;

constexpr double kSlack = 0.02;  // mm

std::vector<Drawing> printed(const BuiltDesign& built, const PrintedForm& form,
                             const Paper& paper = *findPaper("a3")) {
  const auto pages = drawTemplate(testing::templateParts(built), {.paper = paper},
                                  {"A box", "", {}}, codeOrText, TemplateKind::Printed, form);
  EXPECT_TRUE(pages.ok());
  return pages ? *pages : std::vector<Drawing>();
}

bool inside(const std::vector<Polygon>& rings, Point p) {
  int count = 0;
  for (const Polygon& ring : rings) count += locate(p, ring) == Side::Outside ? 0 : 1;
  return count % 2 == 1;
}

double distanceTo(const std::vector<Polygon>& rings, Point p) {
  double nearest = 1e9;
  for (const Polygon& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i)
      nearest = std::min(nearest, distanceToSegment(p, {ring[i], ring[(i + 1) % ring.size()]}));
  return nearest;
}

/// A printed part on its page: its fill and its cuts.
struct OnPage {
  std::vector<Polygon> fill;
  std::vector<Polygon> cuts;  // closed ones, outline and openings
};

Bounds boundsOf(const std::vector<Polygon>& rings) {
  Polygon all;
  for (const Polygon& ring : rings) all.insert(all.end(), ring.begin(), ring.end());
  return bounds(all);
}

bool holds(const Bounds& box, const Bounds& part) {
  return part.low.x > box.low.x - kSlack && part.low.y > box.low.y - kSlack &&
         part.high.x < box.high.x + kSlack && part.high.y < box.high.y + kSlack;
}

/// Whether a piece itself says so.
bool isWritten(const BuiltDesign& built, const TextItem& text) {
  return std::ranges::any_of(built.pieces, [&](const BuiltPiece& piece) {
    return std::ranges::any_of(piece.net.inscriptions, [&](const Inscription& line) {
      return line.text == text.label.literal;
    });
  });
}

/// Plain colours: a fill for each part, and behind it the part's own lines.
std::vector<OnPage> partsOn(const Drawing& page) {
  std::vector<OnPage> parts;
  for (const PathItem& item : page.paths) {
    if (item.role == Role::Face) parts.push_back({item.rings, {}});
    if (item.role != Role::Cut || item.like || !item.closed || parts.empty()) continue;
    std::vector<Polygon>& cuts = parts.back().cuts;
    cuts.insert(cuts.end(), item.rings.begin(), item.rings.end());
  }
  return parts;
}

/// No colour beyond the bleed of its own cuts (sqrt 2 of it at a right angle), none on or within
/// the outline of another part, none on what a printer leaves white, and none on words.
TEST(PrintedPapers, BleedStaysOffNeighboursInAllStyles) {
  Random random(1717);
  int judged = 0;
  int tiled = 0;
  for (const Style& style : styles()) {
    const auto built = testing::colouredDesign(style, "sage/cream");
    if (!built) continue;
    const PrintedForm form{random.between(0.5, 6), true,
                           random.whole(0, 1) == 0 ? PrintedSides::Face : PrintedSides::Both};
    // Large enough that hardly anything is tiled.
    for (const Drawing& page : printed(*built, form, ownPaper(mm(1000), mm(800)))) {
      const std::vector<OnPage> parts = partsOn(page);
      for (const OnPage& part : parts) {
        if (part.cuts.empty()) {  // of a band of some metres, which is tiled all the same
          ++tiled;
          continue;
        }
        EXPECT_TRUE(holds({{5, 5}, {page.width - 5, page.height - 5}}, boundsOf(part.fill)))
            << style.id;
        for (const Polygon& ring : part.fill)
          for (const Point& p : ring) {
            ++judged;
            EXPECT_TRUE(inside(part.cuts, p) ||
                        distanceTo(part.cuts, p) < form.bleed * std::sqrt(2.0) + kSlack)
                << style.id << ' ' << form.bleed << ": " << distanceTo(part.cuts, p) << " at "
                << p.x << ' ' << p.y << ", " << part.cuts.size() << " of " << parts.size();
            for (const OnPage& other : parts) {
              if (&other == &part) continue;
              EXPECT_FALSE(inside(other.cuts, p)) << style.id;
              EXPECT_FALSE(inside(other.fill, p)) << style.id;
            }
          }
        for (const TextItem& text : page.texts)
          for (const Point& p : textBox(text, codeOrText(text.label)))
            EXPECT_TRUE(isWritten(*built, text) || !inside(part.fill, p))
                << style.id << ": " << codeOrText(text.label);
      }
    }
  }
  EXPECT_GT(judged, 2000);
  EXPECT_LT(tiled, 60);
}

/// Every place of the card is printed, but for flaps that take glue on that face: those only so far
/// as colour runs into them.
TEST(PrintedPapers, AllThatShowsIsPrintedInAllStyles) {
  Random random(99);
  int points = 0;
  int flaps = 0;
  for (const Style& style : styles()) {
    const auto built = testing::colouredDesign(style, "sage/cream");
    if (!built) continue;
    for (const TemplatePiece& piece : testing::templateParts(*built))
      for (const Face face : {Face::Outside, Face::Inside}) {
        const Region area = printedArea(piece, face, 3);
        const std::vector<bool> glued = gluedPanels(piece, face);
        const FlatNet& flat = *piece.flat;
        for (int i = 0; i < 60; ++i) {
          const Point p{random.between(0, flat.width), random.between(0, flat.height)};
          bool shows = false;
          bool flap = false;
          double toShown = 1e9;
          for (std::size_t k = 0; k < flat.panels.size(); ++k) {
            std::vector<Polygon> rings{flat.panels[k]};
            rings.insert(rings.end(), flat.openings[k].begin(), flat.openings[k].end());
            (glued[k] ? flap : shows) |= inside(rings, p);
            if (!glued[k]) toShown = std::min(toShown, distanceTo(rings, p));
          }
          bool covered = false;
          for (const Area& each : area) {
            std::vector<Polygon> rings{each.outer};
            rings.insert(rings.end(), each.holes.begin(), each.holes.end());
            covered |= inside(rings, p);
          }
          if (shows && toShown > kSlack) {
            ++points;
            EXPECT_TRUE(covered) << style.id << ' ' << piece.name;
          } else if (flap && toShown > 3 * kIntoFlap) {
            ++flaps;
            EXPECT_FALSE(covered) << style.id << ' ' << piece.name;
          }
        }
      }
  }
  EXPECT_GT(points, 2000);
  EXPECT_GT(flaps, 50);
}

std::vector<Point> cornersOf(const Drawing& page, bool over) {
  std::vector<Point> corners;
  for (const PathItem& item : page.paths)
    if (item.role == Role::Cut)
      for (const Polygon& ring : item.rings)
        for (const Point& p : ring)
          corners.push_back(
              {std::round((over ? page.width - p.x : p.x) * 1000), std::round(p.y * 1000)});
  std::ranges::sort(corners,
                    [](Point a, Point b) { return std::pair(a.x, a.y) < std::pair(b.x, b.y); });
  return corners;
}

/// Turned over sideways, every cut of a back page lies on one of its front page: x' = W - x.
TEST(PrintedPapers, BacksLieBehindTheirFronts) {
  int pairs = 0;
  for (const Style& style : styles()) {
    const auto built = testing::colouredDesign(style, "sage/cream");
    if (!built) continue;
    const Paper paper = *findPaper(pairs % 2 == 0 ? "a4" : "a3");  // tiles too
    const auto pages = printed(*built, {3, true, PrintedSides::Both}, paper);
    ASSERT_EQ(pages.size() % 2, 0U);
    const auto backs = printed(*built, {3, true, PrintedSides::Back}, paper);
    EXPECT_EQ(backs.size() * 2, pages.size());
    for (std::size_t i = 0; i < pages.size(); i += 2) {
      const auto front = cornersOf(pages[i], false);
      const auto back = cornersOf(pages[i + 1], true);
      ASSERT_EQ(front.size(), back.size()) << style.id << ' ' << i;
      for (const Point p : front)  // thousandths of a mm
        ASSERT_TRUE(std::ranges::any_of(back, [p](Point q) { return distance(p, q) < 3; }))
            << style.id;
      ++pairs;
    }
  }
  EXPECT_GT(pairs, 30);
}

TEST(PrintedPapers, HoldEachPieceAsOftenAsItIsMade) {
  Design design =
      newDesign("framed-tray", std::nullopt, cards().front(), Ease::Easy, ToolGrid::sixteenthInch())
          .value();
  design.extras.push_back(standardExtra(**findExtraKind("mats"), design.card));
  design.extras.back().card.colours.face = parseColour("plum").value();
  const auto built = build(design);
  ASSERT_TRUE(built);
  int made = 0;
  for (const BuiltPiece& piece : built->pieces) made += piece.role ? piece.count : 0;
  int fills = 0;
  for (const Drawing& page : printed(*built, {}))
    for (const PathItem& item : page.paths) {
      if (item.role != Role::Face) continue;
      ++fills;
      EXPECT_EQ(item.colour, parseColour("plum").value());
    }
  EXPECT_GT(made, 3);
  EXPECT_EQ(fills, made);
}

TEST(PrintedPapers, CutLinesComeAndGo) {
  const auto built = testing::colouredDesign(**findStyle("straight-tuck-box"), "sage");
  ASSERT_TRUE(built);
  for (const bool cuts : {true, false}) {
    int lines = 0;
    int marks = 0;
    for (const Drawing& page : printed(*built, {3, cuts, PrintedSides::Face}))
      for (const PathItem& item : page.paths) {
        lines += item.role == Role::Cut && !item.like ? 1 : 0;
        marks += item.role == Role::Positions ? 1 : 0;
        EXPECT_NE(item.role, Role::Valley);
        EXPECT_NE(item.role, Role::Waste);
      }
    EXPECT_EQ(lines > 0, cuts);
    EXPECT_GT(marks, 0);
  }
}

TEST(PrintedPapers, PlainCardHasNothingToPrint) {
  const auto built = testing::colouredDesign(**findStyle("framed-tray"), "plain");
  ASSERT_TRUE(built);
  BuiltDesign plain = *built;
  for (BuiltPiece& piece : plain.pieces) piece.card.colours = {};
  const auto pages = drawTemplate(testing::templateParts(plain), {.paper = *findPaper("a4")},
                                  {"A box", "", {}}, codeOrText, TemplateKind::Printed);
  ASSERT_FALSE(pages);
  EXPECT_EQ(pages.problem().code, ProblemCode::NothingPrinted);
}

/// A template that saves ink draws no fills.
TEST(PrintedPapers, InkSavingTemplatesHaveNoFills) {
  const auto built = testing::colouredDesign(**findStyle("straight-tuck-box"), "sage");
  ASSERT_TRUE(built);
  const auto pages = drawTemplate(testing::templateParts(*built), {.paper = *findPaper("a4")},
                                  {"A box", "", {}}, codeOrText, TemplateKind::InkSaving);
  ASSERT_TRUE(pages);
  for (const Drawing& page : *pages)
    for (const PathItem& item : page.paths)
      EXPECT_FALSE(item.filled && item.role != Role::Legend && item.role != Role::CutMark &&
                   item.role != Role::Positions)
          << static_cast<int>(item.role);
}

/// Words on dark paper are white, on light paper in ink; on a plate in ink, with the plate under
/// all of them.
TEST(PrintedPapers, WordsStandOutFromTheirPaper) {
  for (const auto& [colours, plate, white] :
       {std::tuple{"cream", false, false}, {"plum", false, true}, {"plum", true, false}}) {
    Design design = newDesign("framed-tray", std::nullopt, cards().front(), Ease::Easy,
                              ToolGrid::sixteenthInch())
                        .value();
    Extra label = standardExtra(**findExtraKind("label"), design.card);
    label.lines = {"Soap"};
    label.card.colours = parseCardColours(colours).value();
    if (plate) {
      label.card.colours.pattern = PaperPattern{"dots", Length::mm(8), 0, {}};
      label.card.colours.pattern->colours = {*label.card.colours.face, *parseColour("cream")};
      label.card.colours.pattern->plate = true;
    }
    design.extras.push_back(label);
    const auto built = build(design);
    ASSERT_TRUE(built);
    int told = 0;
    for (const Drawing& page : printed(*built, {}))
      for (const TextItem& text : page.texts) {
        if (text.label.literal != "Soap") continue;
        ++told;
        EXPECT_EQ(text.reversed, white) << colours;
        const bool under = std::ranges::any_of(page.paths, [&](const PathItem& item) {
          return item.role == Role::Face && item.colour == Colour{0xFF, 0xFF, 0xFF} &&
                 inside(item.rings, text.at);
        });
        EXPECT_EQ(under, plate);
      }
    EXPECT_EQ(told, 1);
  }
}

/// A plate stays where words are stamped onto it.
TEST(PrintedPapers, AStampedBlankKeepsItsPlate) {
  Design design =
      newDesign("framed-tray", std::nullopt, cards().front(), Ease::Easy, ToolGrid::sixteenthInch())
          .value();
  Extra label = standardExtra(**findExtraKind("label"), design.card);
  label.lines = {"Soap"};
  label.card.colours.pattern = PaperPattern{"dots", Length::mm(8), 0, {}};
  label.card.colours.pattern->colours = {*parseColour("plum"), *parseColour("cream")};
  label.card.colours.pattern->plate = true;
  design.extras.push_back(label);
  const auto built = build(design);
  ASSERT_TRUE(built);
  std::vector<TemplatePiece> parts = testing::templateParts(*built);
  for (TemplatePiece& part : parts) part.stamped = true;
  const auto pages = drawTemplate(parts, {.paper = *findPaper("a4")}, {"A box", "", {}}, codeOrText,
                                  TemplateKind::Printed);
  ASSERT_TRUE(pages);
  int plates = 0;
  for (const Drawing& page : *pages) {
    for (const TextItem& text : page.texts) EXPECT_NE(text.label.literal, "Soap");
    plates += static_cast<int>(std::ranges::count_if(page.paths, [](const PathItem& item) {
      return item.role == Role::Face && item.colour == Colour{0xFF, 0xFF, 0xFF};
    }));
  }
  EXPECT_EQ(plates, 1);
}

/// Ratio of two colours by its definition (WCAG 2.1), apart from the library's.
double ratioOf(Colour a, Colour b) {
  const auto light = [](Colour c) {
    const auto linear = [](int part) {
      const double value = part / 255.0;
      return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue) + 0.05;
  };
  const auto [dark, bright] = std::minmax({light(a), light(b)});
  return bright / dark;
}

/// What is seen at a place of a page but for the lines themselves: the last fill there, then what
/// is laid under lines.
Colour seenAt(const Drawing& page, Point at) {
  Colour seen{0xFF, 0xFF, 0xFF};
  for (const PathItem& item : page.paths)
    if (item.role == Role::Face && item.filled && inside(item.rings, at)) seen = fillColour(item);
  for (const PathItem& item : page.paths) {
    if (item.role != Role::Edge) continue;
    const double reach = roleStyle(Role::Edge).width * item.width / 2;
    for (const Polygon& ring : item.rings) {
      bool covered = item.filled && inside({ring}, at);
      for (std::size_t i = 0; i + (item.closed ? 0 : 1) < ring.size(); ++i)
        covered =
            covered ||
            (!item.filled && distanceToSegment(at, {ring[i], ring[(i + 1) % ring.size()]}) < reach);
      if (covered) seen = item.colour.value_or(roleStyle(Role::Edge).colour);
    }
  }
  return seen;
}

/// Places beside a page's lines where they are hard to see, of `judged` that are looked at.
int hardToSee(const Drawing& page, int& judged) {
  int hard = 0;
  for (const PathItem& item : page.paths) {
    if (item.filled || item.role == Role::Face || item.role == Role::Edge ||
        item.role == Role::Legend)
      continue;
    const Colour line = item.colour.value_or(styleOf(item).colour);
    const double beside = styleOf(item).width * item.width / 2 + 0.05;
    for (const Polygon& ring : item.rings)
      for (std::size_t i = 0; i + (item.closed ? 0 : 1) < ring.size(); ++i) {
        const Point a = ring[i];
        const Point b = ring[(i + 1) % ring.size()];
        if (distance(a, b) < 0.5) continue;
        const Point out = turnLeft(unit(b - a)) * beside;
        for (const double share : {0.31, 0.77})
          for (const Point side : {out, out * -1.0}) {
            ++judged;
            hard += ratioOf(line, seenAt(page, a + (b - a) * share + side)) < 3 ? 1 : 0;
          }
      }
  }
  return hard;
}

/// Law: on card of every own colour, and on every pattern, cuts, folds, marks and the circles of
/// tiles stand out from what lies beside them by 3 to 1 (WCAG 2.1, 1.4.11), in colour and in greys.
TEST(PrintedPapers, LinesAreReadableOnEveryColourAndPattern) {
  Design design = newDesign("two-piece-box", parseProduct("box:150x120x60mm").value(),
                            cards().front(), Ease::Easy, ToolGrid::millimetre())
                      .value();
  int judged = 0;
  const auto judge = [&](const std::string& name) {
    const BuiltDesign built = build(design).value();
    for (const bool black : {false, true})
      for (const Drawing& page :
           printed(built, {.sides = PrintedSides::Both, .black = black}, *findPaper("a4")))
        EXPECT_EQ(hardToSee(page, judged), 0) << name << (black ? " in greys" : "");
  };
  for (const NamedColour& own : namedColours()) {
    design.card.colours = {};
    design.card.colours.face = design.card.colours.back = own.colour;
    judge(std::string(own.id));
  }
  for (const PatternKind& kind : patterns()) {
    design.card.colours = {};
    design.card.colours.pattern = usualPaper(kind);
    judge(std::string(kind.id));
  }
  EXPECT_GT(judged, 20'000);
}

TEST(PrintedPapers, ForAPrinterWithoutColoursAllIsGrey) {
  const auto built = testing::colouredDesign(**findStyle("two-piece-box"), "sage/plum");
  ASSERT_TRUE(built);
  const auto isGrey = [](Colour c) { return c.red == c.green && c.green == c.blue; };
  for (const Drawing& page : printed(*built, {.black = true})) {
    for (const PathItem& item : page.paths) {
      EXPECT_TRUE(item.colour.has_value());
      EXPECT_TRUE(!item.filled || isGrey(fillColour(item)));
      EXPECT_TRUE(isGrey(item.colour.value_or(Colour{1, 0, 0})));
    }
    for (const TextItem& text : page.texts) EXPECT_TRUE(isGrey(textColour(text)));
  }
}

}  // namespace
}  // namespace creasewright
