#include "document/design.h"

#include <algorithm>
#include <utility>

#include "base/excerpt.h"
#include "edits/kinds/edit_units.h"
#include "extras/layer_stack.h"
#include "styles/parameter_text.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// A design whose measures start from these of its style.
Design startedFrom(Design design, const Style& style, const Parameters& parameters) {
  const Workbench bench = benchOf(design);
  design.styleId = style.id;
  design.parameters = design.product
                          ? fit(style, *design.product, design.ease, bench, parameters).parameters
                          : placedOnGrid(style.parameters, parameters, bench);
  return followingRules(std::move(design));
}

Design bare(std::optional<Product> product, const Card& card, Ease ease, ToolGrid grid) {
  Design design;
  design.product = product;
  design.card = card;
  design.ease = ease;
  design.grid = grid;
  return design;
}

}  // namespace

Result<Design> newDesign(std::string_view styleId, std::optional<Product> product, const Card& card,
                         Ease ease, ToolGrid grid) {
  const Result<const Style*> style = findStyle(styleId);
  if (!style) return style.problem();
  return startedFrom(bare(product, card, ease, grid), **style, standardParameters(**style));
}

Result<Design> newDesign(const OwnStyle& style, std::optional<Product> product, const Card& card,
                         Ease ease, ToolGrid grid) {
  const Result<const Style*> base = findStyle(style.base);
  if (!base) return base.problem();
  Design design = bare(product, card, ease, grid);
  design.ownStyle = style;
  return startedFrom(std::move(design), **base, style.parameters);
}

Design followingRules(Design design) {
  if (!design.ownStyle || design.ownStyle->rules.empty()) return design;
  const Result<const Style*> base = findStyle(design.styleId);
  if (!base) return design;
  const Workbench bench = benchOf(design);
  Floors floors;
  if (design.product)
    floors = floorsOf(fit(**base, *design.product, design.ease, bench, design.parameters));
  design.parameters =
      withRules(*design.ownStyle, **base, std::move(design.parameters), bench, floors);
  return design;
}

std::vector<Edit> allEdits(const Design& design) {
  if (!design.ownStyle) return design.edits;
  std::vector<Edit> edits = design.ownStyle->edits;
  edits.insert(edits.end(), design.edits.begin(), design.edits.end());
  return edits;
}

std::vector<std::string_view> seenMeasures(const Design& design) {
  std::vector<std::string_view> keys;
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return keys;
  for (const ParameterSpec& spec : (*style)->parameters)
    if (!design.ownStyle || isSeen(*design.ownStyle, spec.key)) keys.push_back(spec.key);
  return keys;
}

Result<Design> withParameter(Design design, std::string_view key, std::string_view text) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return style.problem();
  const auto spec = std::ranges::find((*style)->parameters, key, &ParameterSpec::key);
  if (spec == (*style)->parameters.end())
    return Problem{ProblemCode::UnknownParameter, design.styleId, {excerpt(key)}};
  if (design.ownStyle && !isSeen(*design.ownStyle, key))
    return Problem{ProblemCode::UnknownParameter, design.ownStyle->id, {excerpt(key)}};
  const std::optional<std::int64_t> raw = readRaw(spec->kind, text, unitOf(design.grid));
  if (!raw) return Problem{ProblemCode::ParameterUnreadable, std::string(key), {excerpt(text)}};
  return withValue(std::move(design), key, *raw);
}

Design withValue(Design design, std::string_view key, std::int64_t raw) {
  design.parameters.setCount(key, raw);
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return design;
  const auto spec = std::ranges::find((*style)->parameters, key, &ParameterSpec::key);
  if (spec == (*style)->parameters.end()) return design;
  if (spec->kind == ParameterKind::Length) return followingRules(std::move(design));
  const Workbench bench = benchOf(design);
  const bool possible = raw >= spec->minimum(design.parameters, bench) &&
                        raw <= spec->maximum(design.parameters, bench);
  return possible ? refitted(std::move(design)) : followingRules(std::move(design));
}

Design ontoGrid(Design design, ToolGrid grid) {
  for (Extra& extra : design.extras) extra = ontoGrid(std::move(extra), grid);
  const ToolGrid before = std::exchange(design.grid, grid);
  if (unitOf(before) != unitOf(grid))
    for (Edit& edit : design.edits) edit = withUnits(std::move(edit), unitOf(before));
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
  return followingRules(std::move(design));
}

Extra ontoGrid(Extra extra, ToolGrid grid) {
  const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
  if (kind)
    extra.parameters =
        placedOnGrid((*kind)->parameters, std::move(extra.parameters), {extra.card.caliper, grid});
  for (ExtraLayer& layer : extra.layers)
    layer.parameters =
        placedOnGrid(layerParameters(), std::move(layer.parameters), {layer.card.caliper, grid});
  return extra;
}

Design refitted(Design design) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return design;
  if (!design.product) return followingRules(std::move(design));
  const Fitted fitted =
      fit(**style, *design.product, design.ease, benchOf(design), design.parameters);
  for (const FitReason& reason : fitted.reasons)
    design.parameters.setCount(reason.key, fitted.parameters.raw(reason.key));
  return followingRules(std::move(design));
}

}  // namespace creasewright
