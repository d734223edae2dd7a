#include "document/design.h"

#include <algorithm>
#include <utility>

#include "base/excerpt.h"
#include "extras/extra_kind.h"
#include "styles/parameter_text.h"
#include "styles/registry.h"

namespace creasewright {
Result<Design> newDesign(std::string_view styleId, std::optional<Product> product, const Card& card,
                         Ease ease, ToolGrid grid) {
  const Result<const Style*> style = findStyle(styleId);
  if (!style) return style.problem();
  Design design;
  design.styleId = styleId;
  design.product = product;
  design.parameters = standardParameters(**style);
  design.card = card;
  design.ease = ease;
  design.grid = grid;
  const Workbench bench{card.caliper, grid};
  design.parameters = product
                          ? fit(**style, *product, ease, bench).parameters
                          : placedOnGrid((*style)->parameters, standardParameters(**style), bench);
  return design;
}

Result<Design> withParameter(Design design, std::string_view key, std::string_view text) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return style.problem();
  const auto spec = std::ranges::find((*style)->parameters, key, &ParameterSpec::key);
  if (spec == (*style)->parameters.end())
    return Problem{ProblemCode::UnknownParameter, design.styleId, {excerpt(key)}};
  const std::optional<std::int64_t> raw = readRaw(spec->kind, text, unitOf(design.grid));
  if (!raw) return Problem{ProblemCode::ParameterUnreadable, std::string(key), {excerpt(text)}};
  return withValue(std::move(design), key, *raw);
}

Design withValue(Design design, std::string_view key, std::int64_t raw) {
  design.parameters.setCount(key, raw);
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return design;
  const auto spec = std::ranges::find((*style)->parameters, key, &ParameterSpec::key);
  if (spec == (*style)->parameters.end() || spec->kind == ParameterKind::Length) return design;
  const Workbench bench = benchOf(design);
  const bool possible = raw >= spec->minimum(design.parameters, bench) &&
                        raw <= spec->maximum(design.parameters, bench);
  return possible ? refitted(std::move(design)) : design;
}

Design ontoGrid(Design design, ToolGrid grid) {
  for (Extra& extra : design.extras) extra = ontoGrid(std::move(extra), grid);
  const ToolGrid before = std::exchange(design.grid, grid);
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style || grid.isNone()) return style ? refitted(std::move(design)) : design;
  const Workbench bench{design.card.caliper, grid};
  Floors floors;
  if (design.product) {
    const auto fitOn = [&](ToolGrid on) {
      return fit(**style, *design.product, design.ease, {design.card.caliper, on},
                 design.parameters);
    };
    const Fitted was = fitOn(before);
    const Fitted is = fitOn(grid);
    floors = floorsOf(is);
    for (std::size_t i = 0; i < is.reasons.size(); ++i)
      if (design.parameters.length(was.reasons[i].key) == was.reasons[i].chosen)
        design.parameters.set(is.reasons[i].key, is.reasons[i].chosen);
  }
  design.parameters =
      placedOnGrid((*style)->parameters, std::move(design.parameters), bench, floors);
  return design;
}

Extra ontoGrid(Extra extra, ToolGrid grid) {
  const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
  if (kind)
    extra.parameters =
        placedOnGrid((*kind)->parameters, std::move(extra.parameters), {extra.card.caliper, grid});
  return extra;
}

Design refitted(Design design) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style || !design.product) return design;
  const Fitted fitted =
      fit(**style, *design.product, design.ease, benchOf(design), design.parameters);
  for (const FitReason& reason : fitted.reasons)
    design.parameters.setCount(reason.key, fitted.parameters.raw(reason.key));
  return design;
}

}  // namespace creasewright
