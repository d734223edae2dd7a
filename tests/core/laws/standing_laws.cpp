#include <algorithm>
#include <array>

#include "core/laws/law_book.h"
#include "core/laws/own_piece.h"
#include "document/halves.h"
#include "support/pierced.h"

// Judged from the places that pieces state; nothing here asks where a picture puts them.

namespace creasewright::testing {
namespace {

constexpr double kStandSlack = 0.02;  // mm
constexpr std::array kAxes{Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}};

/// A piece of the box, or one of several alike, in the frame of the one that others are held to.
struct Body {
  const BuiltPiece* piece;
  Transform place;
};

/// Nothing for a piece whose place is not told.
std::optional<Transform> placeOf(const BuiltDesign& built, const BuiltPiece& piece, int depth = 0) {
  if (!piece.held) return Transform();
  const BuiltPiece* other = ownPiece(built, piece.held->to);
  if (other == nullptr || !piece.held->place || depth > 9) return std::nullopt;
  const auto below = placeOf(built, *other, depth + 1);
  if (!below) return std::nullopt;
  return below->after(*piece.held->place);
}

Verdict goThrough(const Body& one, const Body& other, double tolerance) {
  for (std::size_t i = 0; i < one.piece->net.panels.size(); ++i)
    for (std::size_t k = 0; k < other.piece->net.panels.size(); ++k) {
      const Panel& a = one.piece->net.panels[i];
      const Panel& b = other.piece->net.panels[k];
      const Transform aAt = one.place.after(one.piece->folded[i]);
      const Transform bAt = other.place.after(other.piece->folded[k]);
      if (panelsCut(a, aAt, b, bAt, tolerance))
        return one.piece->name + ":" + a.id + " goes through " + other.piece->name + ":" + b.id;
    }
  return {};
}

struct Extent {
  double low = 1e9;
  double high = -1e9;
};

Extent spanOf(const Body& body, Point3 along) {
  Extent span;
  for (std::size_t i = 0; i < body.piece->net.panels.size(); ++i)
    for (const Point& corner : body.piece->net.panels[i].outline) {
      const double at = dot(body.place.after(body.piece->folded[i]).apply(corner), along);
      span.low = std::min(span.low, at);
      span.high = std::max(span.high, at);
    }
  return span;
}

/// Whether a loose piece goes over the one it is put on, along a way off it: square to that way it
/// has a card's thickness on either side; along it, it covers the end or, open at both, all of it.
bool goesOver(const Body& outer, const Body& inner, Point3 off, double caliper) {
  for (const Point3 axis : kAxes) {
    const Point3 along = inner.place.turn(axis);
    if (std::abs(dot(along, off)) > 0.5) continue;
    const Extent in = spanOf(inner, along);
    const Extent out = spanOf(outer, along);
    if (in.low < out.low + caliper - kStandSlack || in.high > out.high - caliper + kStandSlack)
      return false;
  }
  const Extent in = spanOf(inner, off);
  const Extent out = spanOf(outer, off);
  const bool closes = out.high > in.high + caliper - kStandSlack && out.low < in.high;
  const bool sleeve = out.high > in.high - kStandSlack && out.low < in.low + kStandSlack;
  return closes || sleeve;
}

/// Along one of the six ways there are.
bool goesOver(const Body& outer, const Body& inner, double caliper) {
  return std::ranges::any_of(kAxes, [&](Point3 axis) {
    const Point3 off = inner.place.turn(axis);
    return goesOver(outer, inner, off, caliper) || goesOver(outer, inner, off * -1, caliper);
  });
}

}  // namespace

Verdict standingPiecesStayClear(const BuiltDesign& built) {
  const double caliper = built.design.card.caliper.mm();
  std::vector<Body> bodies;
  for (const BuiltPiece& piece : built.pieces) {
    if (piece.role) continue;
    const auto place = placeOf(built, piece);
    if (!place) return piece.name + " has no place";
    bodies.push_back({&piece, *place});
  }
  for (std::size_t i = 0; i < bodies.size(); ++i)
    for (std::size_t k = i + 1; k < bodies.size(); ++k)
      if (Verdict wrong = goThrough(bodies[i], bodies[k], caliper / 2); !wrong.empty())
        return wrong;
  // Half a lid does not go over anything.
  const bool divided = std::ranges::any_of(
      built.pieces, [&](const BuiltPiece& piece) { return wholeOf(built, piece).has_value(); });
  if (divided) return {};
  for (const Body& body : bodies) {
    const std::optional<Holding>& held = body.piece->held;
    if (!held || held->by != Hold::Loose) continue;
    const BuiltPiece* inner = ownPiece(built, held->to);
    if (!goesOver(body, {inner, *placeOf(built, *inner)}, caliper))
      return body.piece->name + " does not go over " + inner->name;
  }
  return {};
}

}  // namespace creasewright::testing
