#include <algorithm>
#include <string>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "document/build.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr std::size_t kEdits = 20;

Design plainDesign(const Style& style) {
  const Product product{ProductShape::Box, Length::mm(89), Length::mm(64), Length::mm(25)};
  const Design blank;
  return bench::wanted(newDesign(style.id, product, blank.card, blank.ease, ToolGrid::none()));
}

std::size_t panelCount(const Style& style) {
  std::size_t count = 0;
  for (const BuiltPiece& piece : bench::wanted(build(plainDesign(style))).pieces)
    count += piece.net.panels.size();
  return count;
}

/// The style of the most panels with twenty changes by hand that can all be made: holes, slits and
/// openings by turns, on whichever panels take them.
Design editedDesign() {
  const Style& style = *std::ranges::max_element(styles(), {}, panelCount);
  Design design = plainDesign(style);
  const BuiltDesign plain = bench::wanted(build(design));
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
        if (bench::wanted(build(more)).brokenEdits.empty()) design = std::move(more);
      }
    }
  }
  bench::wanted(design.edits.size() == kEdits, "fewer changes by hand than are timed");
  return design;
}

/// The same without the changes, to compare.
void rebuildLargest(benchmark::State& state) {
  Design design = editedDesign();
  if (state.range(0) == 0) design.edits.clear();
  for ([[maybe_unused]] auto _ : state) {
    const BuiltDesign built = bench::wanted(build(design));
    bench::wanted(built.brokenEdits.empty(), "a change that is not made");
  }
  state.SetLabel(design.styleId);
}
BENCHMARK(rebuildLargest)->Arg(0)->Arg(kEdits)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
