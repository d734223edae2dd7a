#include "pages/print_correction.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "document/build.h"
#include "pages/calibration_page.h"
#include "pages/template_pages.h"
#include "styles/registry.h"
#include "support/code_or_text.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// What a printer does: every length across and down by a factor of its own, about no matter what.
struct Printer {
  Point factor;
  Point shift;

  [[nodiscard]] Drawing print(Drawing page) const {
    // The sheet goes in upright: a page that lies sideways is printed turned.
    const bool sideways = page.width > page.height;
    const Point by = sideways ? Point{factor.y, factor.x} : factor;
    for (PathItem& path : page.paths)
      for (Polygon& ring : path.rings)
        for (Point& p : ring) p = {p.x * by.x + shift.x, p.y * by.y + shift.y};
    return page;
  }
};

Printer anyPrinter(testing::Random& random) {
  return {{random.between(0.975, 1.025), random.between(0.975, 1.025)},
          {random.between(-2, 2), random.between(-2, 2)}};
}

/// Lengths of the lines along one direction in a role.
std::vector<double> lengthsOf(const Drawing& page, Role role, bool across) {
  std::vector<double> lengths;
  for (const PathItem& path : page.paths)
    if (path.role == role)
      for (const Polygon& ring : path.rings)
        for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
          const Point way = ring[i + 1] - ring[i];
          if (std::abs(across ? way.y : way.x) < 1e-9) lengths.push_back(norm(way));
        }
  return lengths;
}

/// Whether a line of `wanted` mm came out, to a hundredth.
bool hasLine(const Drawing& page, Role role, bool across, double wanted) {
  return std::ranges::any_of(lengthsOf(page, role, across),
                             [&](double length) { return std::abs(length - wanted) < 0.01; });
}

/// A person measures the bars of the calibration page with a rule that shows hundredths.
PrintCorrection calibrated(const Printer& printer, const PageSetup& setup) {
  const CalibrationPage bars = calibrationPage(setup, Unit::Millimetre, testing::codeOrText);
  const auto measured = [](Length drawn, double factor) {
    return Length::mm(std::round(drawn.mm() * factor * 100) / 100);
  };
  const auto correction = correctionFor({bars.across, measured(bars.across, printer.factor.x)},
                                        {bars.down, measured(bars.down, printer.factor.y)});
  EXPECT_TRUE(correction.ok());
  return correction ? *correction : PrintCorrection{};
}

/// The pages of a design in a kind.
std::vector<Drawing> pagesOf(const BuiltDesign& built, const PageSetup& setup, TemplateKind kind) {
  std::vector<TemplatePiece> pieces;
  for (const BuiltPiece& piece : built.pieces)
    pieces.push_back({piece.name, &piece.net, &piece.flat, &piece.scorePlan, &piece.gluePlan});
  TemplateText text{"Box", "2 Jan 2026", {}};
  text.corrected = "corrected for the printer: across +1.00 %, down +1.00 %";
  const auto pages = drawTemplate(pieces, setup, text, testing::codeOrText, kind);
  EXPECT_TRUE(pages.ok());
  return pages ? *pages : std::vector<Drawing>{};
}

// The blank's sides and the check bars, measured on the printed page.
TEST(PrintCorrection, WhatAnyPrinterPrintsIsInTrueSizeOnceItIsCalibrated) {
  testing::Random random(1601);
  for (const char* paper : {"a4", "letter", "a3"})
    for (const Orientation way : {Orientation::Upright, Orientation::Sideways})
      for (int round = 0; round < 4; ++round) {
        const Printer printer = anyPrinter(random);
        PageSetup setup{.paper = *findPaper(paper), .orientation = way};
        setup.correction = calibrated(printer, setup);
        const auto built =
            build(*newDesign("straight-tuck-box", *parseProduct("box:30x20x50mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre()));
        const FlatNet& flat = built->pieces.front().flat;
        for (const Drawing& page : pagesOf(*built, setup, TemplateKind::CutAndScore)) {
          const Drawing printed = printer.print(page);
          for (const bool across : {false, true})
            EXPECT_TRUE(hasLine(printed, Role::Legend, across, 100)) << paper << across;
          double low = 1e9;
          double high = -1e9;
          for (const PathItem& path : printed.paths)
            if (path.role == Role::Cut)
              for (const Polygon& ring : path.rings)
                for (const Point& p : ring) low = std::min(low, p.x), high = std::max(high, p.x);
          EXPECT_TRUE(std::abs(high - low - flat.width) < 0.03 ||
                      std::abs(high - low - flat.height) < 0.03)
              << paper << ' ' << high - low << " of " << flat.width << " x " << flat.height;
        }
      }
}

TEST(PrintCorrection, NothingIsStretchedIntoTheMargin) {
  testing::Random random(1602);
  for (const Style& style : styles())
    for (const TemplateKind kind : {TemplateKind::CutAndScore, TemplateKind::ScoreStrips}) {
      PageSetup setup{.paper = *findPaper(random.between(0, 1) < 0.5 ? "a4" : "letter")};
      setup.correction = {random.between(0.97, 1.03), random.between(0.97, 1.03)};
      const auto built = build(*newDesign(style.id, std::nullopt, *findCard("300gsm"), Ease::Easy,
                                          ToolGrid::millimetre()));
      for (const Drawing& page : pagesOf(*built, setup, kind))
        for (const PathItem& path : page.paths)
          for (const Polygon& ring : path.rings)
            for (const Point& p : ring)
              ASSERT_TRUE(p.x > setup.margin - 0.01 && p.y > setup.margin - 0.01 &&
                          p.x < page.width - setup.margin + 0.01 &&
                          p.y < page.height - setup.margin + 0.01)
                  << style.id << ' ' << p.x << ' ' << p.y;
    }
}

TEST(PrintCorrection, AScaledPageIsRefusedWithLimitsThatHold) {
  const Length bar = Length::mm(100);
  const auto refused = correctionFor({bar, Length::mm(94.1)}, {bar, bar});
  ASSERT_FALSE(refused.ok());
  EXPECT_EQ(refused.problem().code, ProblemCode::PrintScaleOff);
  EXPECT_EQ(refused.problem().where, "across");
  EXPECT_EQ(correctionFor({bar, bar}, {bar, Length::mm(103.2)}).problem().where, "down");
  for (const std::size_t limit : {2U, 3U}) {
    const Length told = std::get<Length>(refused.problem().values.at(limit));
    EXPECT_TRUE(correctionFor({bar, told}, {bar, told}).ok()) << told.mm();
    const Length beyond = told + Length::mm(limit == 2 ? -0.02 : 0.02);
    EXPECT_FALSE(correctionFor({bar, beyond}, {bar, bar}).ok()) << beyond.mm();
  }
}

// Both bars, in both units, on every paper: inside the margin and as long as they are said to be.
TEST(PrintCorrection, TheCalibrationPageHasBothItsBars) {
  for (const Paper& paper : papers())
    for (const Unit unit : {Unit::Millimetre, Unit::Inch}) {
      const PageSetup setup{.paper = paper};
      const CalibrationPage bars = calibrationPage(setup, unit, testing::codeOrText);
      EXPECT_TRUE(hasLine(bars.page, Role::Legend, true, bars.across.mm())) << paper.id;
      EXPECT_TRUE(hasLine(bars.page, Role::Legend, false, bars.down.mm())) << paper.id;
      EXPECT_GT(bars.across.mm(), 0.45 * paper.width.mm()) << paper.id;
      EXPECT_GT(bars.down.mm(), 0.6 * paper.height.mm()) << paper.id;
    }
}

}  // namespace
}  // namespace creasewright
