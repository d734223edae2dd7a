#include "kits/machine_layouts.h"

#include <algorithm>

#include "document/paper_way.h"
#include "drawing/arrange.h"
#include "drawing/net_drawing.h"
#include "patterns/pattern.h"

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
  return drawNetLines(piece.net, piece.flat, {}, options);
}

/// A card's plan while its parts are gathered, and the picture of each.
struct Gathered {
  MachineCard plan;
  std::vector<Drawing> pictures;
};

/// How a piece may lie on a patterned paper that is laid onto the mat upright, in quarters from how
/// it is drawn; empty where the pattern may be turned.
std::vector<int> waysOn(const BuiltDesign& design, const BuiltPiece& piece) {
  if (!hasWay(piece.card)) return {};
  const int upright = quartersToPaper(design, piece);
  if (turnsOf(*piece.card.colours.pattern) == Turns::None) return {upright};
  return {upright, (upright + 2) % 4};
}

void addPiece(const BuiltDesign& design, const BuiltPiece& piece, int quantity, bool mayTurn,
              Gathered& card) {
  card.plan.parts.push_back({piece.name, rimOf(piece.flat), piece.flat.width, piece.flat.height,
                             quantity, mayTurn, waysOn(design, piece)});
  card.pictures.push_back(linesOf(piece));
}

void addPlain(const BlankDemand& blank, bool mayTurn, Gathered& card) {
  const double width = blank.width.mm();
  const double height = blank.height.mm();
  const Polygon rim{{0, 0}, {width, 0}, {width, height}, {0, height}};
  card.plan.parts.push_back({blank.name, rim, width, height, blank.quantity, mayTurn});
  Drawing lines{width, height, {}, {}};
  lines.paths.push_back({.role = Role::Cut, .rings = {rim}, .closed = true});
  card.pictures.push_back(std::move(lines));
}

Gathered gather(const BuiltKit& kit, const CardBlanks& blanks) {
  Gathered card;
  card.plan.card = blanks.card;
  const bool mayTurn = !kit.kit.keepGrain;
  for (std::size_t d = 0; d < blanks.demands.size(); ++d) {
    const BlankDemand& demand = blanks.demands[d];
    if (blanks.sources[d].item < 0)
      addPlain(demand, mayTurn && !hasWay(blanks.card), card);
    else {
      const BlankSource& source = blanks.sources[d];
      const BuiltDesign& design = kit.items[static_cast<std::size_t>(source.item)]->design;
      addPiece(design, design.pieces[source.at], demand.quantity, mayTurn, card);
    }
  }
  return card;
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

Result<MachinePlan> planMachine(BuiltKit kit, Length matWidth, Length matHeight,
                                const NestOptions& options) {
  MachinePlan plan{std::make_shared<const BuiltKit>(std::move(kit)), {}};
  for (const CardBlanks& blanks : plan.built->cards) {
    Gathered card = gather(*plan.built, blanks);
    Result<std::vector<MatLayout>> layouts = nest(card.plan.parts, matWidth, matHeight, options);
    if (!layouts) return layouts.problem();
    card.plan.layouts = std::move(layouts).value();
    card.plan.least = leastMats(card.plan.parts, matWidth, matHeight, options);
    for (const MatLayout& layout : card.plan.layouts) {
      card.plan.drawings.push_back(drawMat(layout, card, matWidth, matHeight));
      card.plan.mats += layout.count;
    }
    plan.cards.push_back(std::move(card.plan));
  }
  return plan;
}

}  // namespace creasewright
