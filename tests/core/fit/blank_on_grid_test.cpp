#include "fit/blank_on_grid.h"

#include <iostream>
#include <set>

#include <gtest/gtest.h>

#include "document/build.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

struct Sample {
  Design design;
  std::vector<Piece> before;  ///< as the style alone makes it
  std::vector<Piece> after;
};

/// Every style on every grid, as it comes and for a few products.
std::vector<Sample> samples() {
  std::vector<Sample> all;
  for (const Style& style : styles())
    for (const char* product :
         {"", "box:60x35x120mm", "box:2x1x3in", "cylinder:50x60mm", "box:105x74x20mm"})
      for (const ToolGrid grid :
           {ToolGrid::millimetre(), ToolGrid::sixteenthInch(), ToolGrid::eighthInch()}) {
        const Card card{"test", "test card", Length::mm(0.33), 0};
        std::optional<Product> given;
        if (*product != '\0') given = *parseProduct(product);
        const Design design = *newDesign(style.id, given, card, Ease::Easy, grid);
        if (!limitProblems(design).empty()) continue;
        const Workbench bench{card.caliper, grid};
        const Parameters taken = blanksOnGrid(style, design.parameters, bench);
        EXPECT_TRUE(checkLimits(style, taken, bench).empty()) << style.id;
        all.push_back({design, style.build(design.parameters, bench), style.build(taken, bench)});
      }
  return all;
}

int sidesOffGrid(const std::vector<Piece>& pieces, ToolGrid grid) {
  int off = 0;
  for (const Piece& piece : pieces) {
    const FlatNet flat = flatten(piece.net);
    for (const double side : {flat.width, flat.height})
      if (!grid.holds(Length::mm(side))) ++off;
  }
  return off;
}

// 210.76 x 229 mm just misses A4, which is 210 mm wide (ISO 216).
TEST(BlankOnGrid, ATallTuckBoxComesOutOfOneSheetOfA4) {
  const Design design = *newDesign("straight-tuck-box", *parseProduct("box:60x35x120mm"),
                                   cards()[0], Ease::Easy, ToolGrid::millimetre());
  const BuiltDesign box = *build(design);
  EXPECT_NEAR(box.pieces.front().flat.width, 210, 1e-6);
  EXPECT_NEAR(box.pieces.front().flat.height, 227, 1e-6);
  EXPECT_TRUE(box.problems.empty());
}

TEST(BlankOnGrid, FarFewerSidesAreOffTheGridAndNoneGoesOffIt) {
  int before = 0;
  int after = 0;
  for (const Sample& sample : samples()) {
    const int was = sidesOffGrid(sample.before, sample.design.grid);
    const int is = sidesOffGrid(sample.after, sample.design.grid);
    EXPECT_LE(is, was) << sample.design.styleId;
    before += was;
    after += is;
  }
  std::cout << "sides off the grid: " << before << " as the styles make them, " << after
            << " as designs are built\n";
  EXPECT_LT(after, 0.75 * before);
}

// What shows on the box is no flap, and where it is scored depends on nothing but its own size.
TEST(BlankOnGrid, WallsStayAsTheyAre) {
  int taken = 0;
  for (const Sample& sample : samples())
    for (std::size_t p = 0; p < sample.after.size(); ++p) {
      const std::vector<Panel>& before = sample.before[p].net.panels;
      const std::vector<Panel>& after = sample.after[p].net.panels;
      ASSERT_EQ(before.size(), after.size());
      for (std::size_t i = 0; i < before.size(); ++i) {
        bool same = before[i].outline.size() == after[i].outline.size();
        for (std::size_t k = 0; same && k < before[i].outline.size(); ++k)
          same = distance(before[i].outline[k], after[i].outline[k]) < 1e-6;
        taken += same ? 0 : 1;
        const bool ofFlaps = before[i].id.find("/bottom-") != std::string::npos;  // snap-lock
        EXPECT_TRUE(same || !before[i].shows || ofFlaps)
            << sample.design.styleId << ' ' << before[i].id;
      }
    }
  EXPECT_GT(taken, 100);
}

// Each such style has a glue seam or a tuck whose width is free.
TEST(BlankOnGrid, StylesWithASeamHaveTheirWidthOnTheGrid) {
  const std::set<std::string> seamed{
      "straight-tuck-box",     "reverse-tuck-box", "hang-tab-tuck-box", "snap-lock-bottom-box",
      "crash-lock-bottom-box", "open-sleeve",      "pitched-roof-box"};
  for (const Sample& sample : samples()) {
    if (!seamed.contains(sample.design.styleId)) continue;
    const double width = flatten(sample.after.front().net).width;
    EXPECT_TRUE(sample.design.grid.holds(Length::mm(width))) << sample.design.styleId;
  }
}

}  // namespace
}  // namespace creasewright
