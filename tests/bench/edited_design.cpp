#include "bench/edited_design.h"

#include <algorithm>
#include <string>

#include "bench/wanted.h"
#include "document/build.h"
#include "styles/registry.h"

namespace creasewright::bench {
namespace {

Design plainDesign(const Style& style) {
  const Product product{ProductShape::Box, Length::mm(89), Length::mm(64), Length::mm(25)};
  const Design blank;
  return wanted(newDesign(style.id, product, blank.card, blank.ease, ToolGrid::none()));
}

std::size_t panelCount(const Style& style) {
  std::size_t count = 0;
  for (const BuiltPiece& piece : wanted(build(plainDesign(style))).pieces)
    count += piece.net.panels.size();
  return count;
}

}  // namespace

Design editedDesign() {
  const Style& style = *std::ranges::max_element(styles(), {}, panelCount);
  Design design = plainDesign(style);
  const BuiltDesign plain = wanted(build(design));
  constexpr std::string_view kKinds[] = {"holes", "slit", "opening"};
  for (int round = 0; design.edits.size() < kEdits && round < 9; ++round) {
    for (const BuiltPiece& piece : plain.pieces) {
      for (const Panel& panel : piece.net.panels) {
        if (design.edits.size() == kEdits) break;
        Design more = design;
        Edit edit{std::string(kKinds[round % 3]), piece.name, panel.id, {}, {}, true};
        if (round % 3 == 0) edit.measures = {{"across", "2 mm"}};
        if (round % 3 == 1) edit.measures = {{"length", "4 mm"}};
        if (round % 3 == 2) edit.measures = {{"width", "4 mm"}, {"height", "4 mm"}};
        if (round % 2 == 1) edit.measures["x"] = "panel-width / 4";
        if (round > 2) edit.measures["y"] = "panel-height / 4";
        more.edits.push_back(std::move(edit));
        if (wanted(build(more)).brokenEdits.empty()) design = std::move(more);
      }
    }
  }
  wanted(design.edits.size() == kEdits, "fewer changes by hand than are timed");
  return design;
}

}  // namespace creasewright::bench
