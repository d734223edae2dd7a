#include "guide/piece_steps.h"

#include <algorithm>

#include "document/halves.h"

namespace creasewright {
namespace {

Bounds placedBounds(const Polygon& outline, const Transform& place) {
  Polygon placed;
  for (const Point& corner : outline) {
    const Point3 p = place.apply(corner);
    placed.push_back({p.x, p.y});
  }
  return bounds(placed);
}

/// How much of the panel below is seen on each side of the one glued onto it.
CheckLine rimCheck(const Gluing& gluing, const BuiltPiece& upper, const BuiltPiece& lower) {
  const auto outline = [](const BuiltPiece& of, int panel) -> const Polygon& {
    return of.net.panels[static_cast<std::size_t>(panel)].outline;
  };
  const Bounds above = placedBounds(outline(upper, gluing.panel), gluing.seen);
  const Bounds below = placedBounds(outline(lower, gluing.onto), {});
  CheckLine check;
  check.code = CheckCode::RimAllRound;
  check.panel = gluing.panel;
  check.onto = gluing.onto;
  check.face = upper.held->face;
  check.a = Length::mm(above.low.x - below.low.x);
  check.b = Length::mm(above.low.y - below.low.y);
  return check;
}

}  // namespace

Gluing::Gluing(const BuiltPiece& upper, const BuiltPiece& lower)
    : panel(upper.net.find(upper.held->panel).value_or(0)),
      onto(lower.net.find(upper.held->onto).value_or(0)),
      seen(lower.folded[static_cast<std::size_t>(onto)]
               .inverse()
               .after(upper.held->place.value_or(Transform()))
               .after(upper.folded[static_cast<std::size_t>(panel)])) {}

std::optional<int> gluedOnto(const BuiltDesign& built, int piece) {
  const std::optional<Holding>& held = built.pieces[static_cast<std::size_t>(piece)].held;
  if (!held || held->by != Hold::Glue) return std::nullopt;
  for (std::size_t i = 0; i < built.pieces.size(); ++i)
    if (!built.pieces[i].role && built.pieces[i].name == held->to) return static_cast<int>(i);
  return std::nullopt;
}

Step gluePiecesStep(const BuiltDesign& built, int upper, int lower) {
  const BuiltPiece& above = built.pieces[static_cast<std::size_t>(upper)];
  const BuiltPiece& below = built.pieces[static_cast<std::size_t>(lower)];
  Step step;
  step.code = StepCode::GluePieces;
  step.piece = upper;
  step.pieces = {upper, lower};
  step.figure.scoresDone = step.figure.wasteGone = true;
  for (const GlueArea& area : above.gluePlan)
    if (area.onto < 0) step.figure.behind.push_back(area.area);
  const Gluing gluing(above, below);
  step.figure.panels = {gluing.panel};
  if (!areHalves(above, below)) step.checks.push_back(rimCheck(gluing, above, below));
  return step;
}

}  // namespace creasewright
