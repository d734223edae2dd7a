#include "kits/machine_layouts.h"

#include <algorithm>

#include "document/build.h"
#include "drawing/arrange.h"
#include "drawing/net_drawing.h"

namespace creasewright {
namespace {

/// Largest ring: what the blade goes round.
Polygon rimOf(const FlatNet& flat) {
  const auto largest = std::ranges::max_element(
      flat.outline, {}, [](const Area& area) { return std::abs(signedArea(area.outer)); });
  return largest == flat.outline.end() ? Polygon{} : largest->outer;
}

Drawing linesOf(const BuiltPiece& piece) {
  NetDrawingOptions options;
  options.sheet = false;
  options.waste = false;
  options.dimensions = false;
  return drawNetLines(piece.piece.net, piece.flat, {}, options);
}

/// A card's plan while its parts are gathered, and the picture of each.
struct Gathered {
  MachinePlan plan;
  std::vector<Drawing> pictures;
};

Gathered& gatheredFor(const Card& card, std::vector<Gathered>& all) {
  const auto known = std::ranges::find_if(
      all, [&](const Gathered& other) { return sameCard(other.plan.card, card); });
  if (known != all.end()) return *known;
  all.push_back({{card, {}, {}, {}, 0}, {}});
  return all.back();
}

std::optional<Problem> gather(const ClassKit& kit, const KitItem& item,
                              std::vector<Gathered>& all) {
  const Result<BuiltDesign> built = build(item.design);
  if (!built) return built.problem();
  for (const BuiltPiece& piece : built->pieces) {
    if (!item.cuts(piece.piece.name)) continue;
    Gathered& card = gatheredFor(piece.card, all);
    card.plan.parts.push_back({piece.piece.name, rimOf(piece.flat), piece.flat.width,
                               piece.flat.height, piece.piece.count * item.perPerson * kit.sets(),
                               !kit.keepGrain});
    card.pictures.push_back(linesOf(piece));
  }
  return std::nullopt;
}

void gather(const ClassKit& kit, const PlainBlank& blank, std::vector<Gathered>& all) {
  const double width = blank.width.mm();
  const double height = blank.height.mm();
  const Polygon rim{{0, 0}, {width, 0}, {width, height}, {0, height}};
  Gathered& card = gatheredFor(blank.card, all);
  card.plan.parts.push_back(
      {blank.name, rim, width, height, blank.perPerson * kit.sets(), !kit.keepGrain});
  Drawing lines{width, height, {}, {}};
  lines.paths.push_back({.role = Role::Cut, .rings = {rim}, .closed = true});
  card.pictures.push_back(std::move(lines));
}

Drawing drawMat(const MatLayout& layout, const Gathered& card, Length width, Length height) {
  Drawing out{width.mm(), height.mm(), {}, {}};
  for (const NestedPart& part : layout.parts) {
    Drawing lines = card.pictures[static_cast<std::size_t>(part.part)];
    for (int q = 0; q < part.quarters; ++q) lines = turnedLeft(std::move(lines));
    append(out, moved(std::move(lines), part.at));
  }
  return out;
}

}  // namespace

Result<std::vector<MachinePlan>> planMachine(const ClassKit& kit, Length matWidth, Length matHeight,
                                             const NestOptions& options) {
  std::vector<Gathered> all;
  for (const KitItem& item : kit.items)
    if (const std::optional<Problem> problem = gather(kit, item, all)) return *problem;
  for (const PlainBlank& blank : kit.blanks) gather(kit, blank, all);
  if (all.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  std::vector<MachinePlan> plans;
  for (Gathered& card : all) {
    Result<std::vector<MatLayout>> layouts = nest(card.plan.parts, matWidth, matHeight, options);
    if (!layouts) return layouts.problem();
    card.plan.layouts = std::move(layouts).value();
    for (const MatLayout& layout : card.plan.layouts) {
      card.plan.drawings.push_back(drawMat(layout, card, matWidth, matHeight));
      card.plan.mats += layout.count;
    }
    plans.push_back(std::move(card.plan));
  }
  return plans;
}

}  // namespace creasewright
