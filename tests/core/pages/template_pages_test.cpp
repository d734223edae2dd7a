#include "pages/template_pages.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "drawing/arrange.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

ScoreReading fullAt(Length at) {
  ScoreReading reading;
  reading.at = at;
  return reading;
}

/// Codes stand for words; long enough to be like them.
std::string codeAndWords(const Label& label) {
  if (label.code.empty()) return label.literal;
  std::string out = label.code;
  for (const ProblemValue& value : label.values) {
    if (const auto* text = std::get_if<std::string>(&value)) out += ' ' + *text;
    if (std::holds_alternative<Length>(value)) out += " 10 3/16 in";
  }
  return out;
}

struct Printed {
  std::string name;
  std::vector<FlatNet> flats;
  std::vector<Drawing> pages;
};

/// Every style on `paper`, `factor` times its standard size, all its pieces in one template.
std::vector<Printed> printAll(const char* paper, std::int64_t factor) {
  std::vector<Printed> all;
  for (const Style& style : styles()) {
    const Workbench bench{Length::mm(0.3), ToolGrid::none()};
    Parameters parameters = standardParameters(style);
    for (const ParameterSpec& spec : style.parameters) {
      if (spec.kind == ParameterKind::Length) {
        parameters.set(spec.key, parameters.length(spec.key) * factor);
      }
    }
    const std::vector<Piece> pieces = style.build(parameters, bench);
    Printed printed{std::string(style.id), {}, {}};
    for (const Piece& piece : pieces) printed.flats.push_back(flatten(piece.net));
    ScorePlan plan;
    plan.setups.push_back({{SheetSide::Left, SheetSide::Right}, {fullAt(Length::mm(10))}});
    const std::vector<GlueArea> glue;
    std::vector<TemplatePiece> parts;
    for (std::size_t i = 0; i < pieces.size(); ++i)
      parts.push_back({pieces[i].name, &pieces[i].net, &printed.flats[i], &plan, &glue});
    const TemplateText text{"A design with a rather long name for the Tuesday class",
                            "2 Jan 2026",
                            {{"Length", "10 mm"}}};
    const Result<std::vector<Drawing>> pages =
        drawTemplate(parts, {.paper = *findPaper(paper)}, text, codeAndWords);
    EXPECT_TRUE(pages.ok()) << style.id;
    if (!pages.ok()) continue;
    printed.pages = *pages;
    all.push_back(std::move(printed));
  }
  return all;
}

double lengthOf(const Drawing& page, Role role) {
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

/// Texts stand at right angles, so their boxes are their bounds.
bool overlap(const Bounds& a, const Bounds& b) {
  constexpr double kTouch = 1e-6;
  return a.low.x < b.high.x - kTouch && b.low.x < a.high.x - kTouch &&
         a.low.y < b.high.y - kTouch && b.low.y < a.high.y - kTouch;
}

/// Whether the page has a straight line of exactly this length along x or y among its legend lines.
bool hasBar(const Drawing& page, double size, bool upright) {
  for (const PathItem& item : page.paths) {
    if (item.role != Role::Legend) continue;
    for (const Polygon& ring : item.rings) {
      const Point run = ring.back() - ring.front();
      if (std::abs((upright ? run.y : run.x)) > size - 1e-9 && std::abs(norm(run) - size) < 1e-9) {
        return true;
      }
    }
  }
  return false;
}

/// Texts overlap neither each other nor the cuts and scores.
void expectTextsApart(const std::vector<Printed>& all) {
  for (const Printed& printed : all) {
    for (const Drawing& page : printed.pages) {
      std::vector<Polygon> boxes;
      for (const TextItem& text : page.texts)
        boxes.push_back(textBox(text, codeAndWords(text.label)));
      for (std::size_t i = 0; i < boxes.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
          EXPECT_FALSE(overlap(bounds(boxes[i]), bounds(boxes[k])))
              << printed.name << ": " << codeAndWords(page.texts[i].label) << " | "
              << codeAndWords(page.texts[k].label);
        }
        for (const PathItem& item : page.paths) {
          if (item.role != Role::Cut && item.role != Role::Valley) continue;
          for (const Polygon& ring : item.rings) {
            Polyline line = ring;
            if (item.closed) line.push_back(ring.front());
            EXPECT_TRUE(clippedLine(line, bounds(boxes[i])).empty())
                << printed.name << ": " << codeAndWords(page.texts[i].label);
          }
        }
      }
    }
  }
}

/// Every page has the four check bars.
void expectFourBars(const std::vector<Printed>& all) {
  for (const Printed& printed : all) {
    ASSERT_GE(printed.pages.size(), 1U);
    for (const Drawing& page : printed.pages) {
      for (const bool upright : {false, true}) {
        EXPECT_TRUE(hasBar(page, 100, upright)) << printed.name;
        EXPECT_TRUE(hasBar(page, 101.6, upright)) << printed.name;
      }
    }
  }
}

/// Nothing leaves the printable area.
void expectInsideTheMargins(const std::vector<Printed>& all) {
  for (const Printed& printed : all) {
    for (const Drawing& page : printed.pages) {
      for (const PathItem& item : page.paths) {
        for (const Polygon& ring : item.rings) {
          const Bounds box = bounds(ring);
          EXPECT_GE(box.low.x, 5 - 1e-6);
          EXPECT_GE(box.low.y, 5 - 1e-6);
          EXPECT_LE(box.high.x, page.width - 5 + 1e-6);
          EXPECT_LE(box.high.y, page.height - 5 + 1e-6);
        }
      }
      for (const TextItem& text : page.texts) {
        const Bounds box = bounds(textBox(text, codeAndWords(text.label)));
        EXPECT_GE(box.low.x, 5 - 1e-6) << codeAndWords(text.label);
        EXPECT_LE(box.high.x, page.width - 5 + 1e-6) << codeAndWords(text.label);
      }
    }
  }
}

/// All cuts are printed at least once.
void expectAllCuts(const std::vector<Printed>& all) {
  for (const Printed& printed : all) {
    double cuts = 0;
    for (const FlatNet& flat : printed.flats)
      for (const Polyline& line : cutLines(flat))
        for (std::size_t i = 0; i + 1 < line.size(); ++i) cuts += distance(line[i], line[i + 1]);
    double drawn = 0;
    for (const Drawing& page : printed.pages) drawn += lengthOf(page, Role::Cut);
    EXPECT_GE(drawn, cuts - 1e-6) << printed.name;
  }
}

class PrintedOn : public ::testing::TestWithParam<std::tuple<const char*, int>> {};

/// In one test: to print all styles takes longer than to look at them.
TEST_P(PrintedOn, EveryPageHasItsBarsAndNothingOverlapsOrLeavesIt) {
  const std::vector<Printed> all = printAll(std::get<0>(GetParam()), std::get<1>(GetParam()));
  ASSERT_GT(all.size(), 20U);
  expectTextsApart(all);
  expectFourBars(all);
  expectInsideTheMargins(all);
  expectAllCuts(all);
}

INSTANTIATE_TEST_SUITE_P(Papers, PrintedOn,
                         ::testing::Combine(::testing::Values("a4", "letter"),
                                            ::testing::Values(1, 2, 3)));

}  // namespace
}  // namespace creasewright
