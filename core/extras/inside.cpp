#include <algorithm>
#include <tuple>

#include "extras/flat_piece.h"
#include "extras/inside_room.h"
#include "extras/kinds.h"
#include "fit/round_product.h"
#include "styles/parameter_rows.h"
#include "styles/platform_insert.h"

namespace creasewright {
namespace {

/// Half of what the box leaves beside the opening, never more.
Length marginFor(double inside, Length opening, ToolGrid grid) {
  const Length whole = grid.roundDown(Length::mm(std::max(0.0, inside - kClearInside)));
  return std::max(Length(), whole - opening) / 2;
}

Result<ExtraParts> buildPlatform(const Extra& extra, const Host& host) {
  const std::optional<CavitySize> inside = insideOf(host);
  if (!inside || !host.product) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const Workbench bench = host.benchOf(extra);
  const Style style = platformInsert();
  Parameters chosen = standardParameters(style);
  chosen.setCount("round", isRound(*host.product) ? 1 : 0);
  chosen = fit(style, *host.product, host.ease, bench, chosen).parameters;
  const Length least = mm(10);
  const Length ends = marginFor(inside->length, chosen.length("opening-length"), bench.grid);
  const Length sides = marginFor(inside->width, chosen.length("opening-width"), bench.grid);
  const Length height = extra.parameters.length("height");
  if (height > Length()) chosen.set("height", height);
  for (const auto& [rim, needed, opening, room, side] :
       {std::tuple{ends, least / 2, chosen.length("opening-length"), inside->length, "length"},
        std::tuple{sides, least, chosen.length("opening-width"), inside->width, "width"}})
    if (rim < needed)
      return Problem{
          ProblemCode::ExtraInsideSmall,
          extra.kind,
          {Length::mm(room), opening + needed * 2 + Length::mm(kClearInside), std::string(side)}};
  if (chosen.mm("height") > inside->height)
    return Problem{ProblemCode::ExtraTooLarge,
                   extra.kind,
                   {chosen.length("height"), onGridBelow(inside->height, bench.grid)}};
  chosen.set("margin", ends);
  chosen.set("side-margin", sides);
  const Length leastFoot = mm(8);
  const Length widestFoot = sides - mm(4);
  chosen.set("foot", std::max(leastFoot, bench.grid.roundDown(widestFoot)));
  if (const Problems limits = checkLimits(style, chosen, bench); !limits.empty())
    return limits.front();
  ExtraParts parts;
  parts.pieces.push_back({std::move(style.build(chosen, bench).front()), Placing::Inside});
  return parts;
}

Result<ExtraParts> buildSlip(const Extra& extra, const Host& host) {
  const std::optional<CavitySize> inside = insideOf(host);
  if (!inside) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const ToolGrid grid = host.bench.grid;
  const auto side = [&](std::string_view key, double room) {
    const Length chosen = extra.parameters.length(key);
    return chosen > Length() ? chosen : onGridBelow(room - kClearInside, grid);
  };
  const Length width = side("width", inside->length);
  const Length height = side("height", inside->width);
  if (std::min(width, height) <= Length())
    return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  for (const auto& [have, room] : {std::pair{width, inside->length}, {height, inside->width}})
    if (have.mm() > room)
      return Problem{ProblemCode::ExtraTooLarge, extra.kind, {have, onGridBelow(room, grid)}};
  const double w = width.mm();
  const double h = height.mm();
  ExtraParts parts;
  parts.pieces.push_back({flatPiece("slip", {{{0, 0}, {w, 0}, {w, h}, {0, h}}, {}}, extra.lines,
                                    wordsLookOf(extra.parameters)),
                          Placing::Inside});
  return parts;
}

std::vector<ParameterSpec> slipParameters() {
  std::vector<ParameterSpec> all{
      measure("width", worded("styles", "Width"), worded("styles", "0 fills the box inside."))
          .from(Length())
          .to(kLargestSide),
      measure("height", worded("styles", "Height"), worded("styles", "0 fills the box inside."))
          .from(Length())
          .to(kLargestSide)};
  std::ranges::move(wordsParameters(), std::back_inserter(all));
  return all;
}

}  // namespace

ExtraKind platformExtra() {
  return {.id = "platform",
          .title = worded("styles", "Platform insert"),
          .summary = worded("styles", "A shelf on feet inside the box that holds the product."),
          .act = ExtraAct::SetInsertIn,
          .carriesProduct = true,
          .parameters = {measure("height", worded("styles", "Height"),
                                 worded("styles", "Of the legs; 0 takes half the product."))
                             .from(Length())
                             .to(mm(500))},
          .build = buildPlatform};
}

ExtraKind slipExtra() {
  return {.id = "greeting-slip",
          .title = worded("styles", "Greeting slip"),
          .summary = worded("styles", "Fits under the product."),
          .act = ExtraAct::LaySlipIn,
          .turn = ExtraTurn::First,
          .written = true,
          .words = {.panels = {{"slip", worded("panels", "greeting slip")}},
                    .pieces = {{"slip", worded("pieces", "greeting slip")}}},
          .parameters = slipParameters(),
          .build = buildSlip};
}

}  // namespace creasewright
