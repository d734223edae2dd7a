#include "core/laws/law_book.h"

namespace creasewright::testing {
namespace {

constexpr double kRounding = 1e-6;  // mm

/// Ends of a crease on the folded piece.
std::pair<Point3, Point3> foldedEnds(const BuiltPiece& piece, const Crease& crease) {
  const Transform& place = piece.folded[static_cast<std::size_t>(crease.parent)];
  return {place.apply(crease.onParent.a), place.apply(crease.onParent.b)};
}

/// The farthest corner of a panel from a line, in space.
double depthFrom(const BuiltPiece& piece, int panel, Point3 a, Point3 b) {
  const auto i = static_cast<std::size_t>(panel);
  const Point3 along = unit(b - a);
  double depth = 0;
  for (const Point& corner : piece.net.panels[i].outline) {
    const Point3 from = piece.folded[i].apply(corner) - a;
    depth = std::max(depth, norm(from - along * dot(from, along)));
  }
  return depth;
}

}  // namespace

Verdict everyCheckHolds(const BuiltDesign& built) {
  if (built.problems.empty()) return {};
  const Problem& first = built.problems.front();
  return std::string(codeName(first.code)) + " at " + first.where;
}

/// Scored by hand a crease needs 3 mm (common practice, no published source).
Verdict creasesAreLongEnoughToScore(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces)
    for (const Crease& crease : piece.net.creases) {
      if (crease.kind == CreaseKind::Flat) continue;
      const auto [a, b] = foldedEnds(piece, crease);
      if (distance(a, b) < 3 - kRounding)
        return "crease of " + piece.net.panels[static_cast<std::size_t>(crease.child)].id + " is " +
               std::to_string(distance(a, b)) + " mm long";
    }
  return {};
}

/// A flap that holds by glue, tuck or lock reaches 6 mm and ten calipers beyond its crease (common
/// practice, no published source).
Verdict flapsAreAsWideAsTheirLimit(const BuiltDesign& built) {
  const double least = std::max(6.0, 10 * built.design.card.caliper.mm());
  for (const BuiltPiece& piece : built.pieces) {
    const Net& net = piece.net;
    for (const Mate& mate : net.mates) {
      const Crease* crease = net.creaseOf(mate.panel);
      if (mate.method == Method::Rest || crease == nullptr || crease->kind == CreaseKind::Flat)
        continue;
      const auto [a, b] = foldedEnds(piece, *crease);
      const double depth = depthFrom(piece, mate.panel, a, b);
      if (depth < least - kRounding)
        return net.panels[static_cast<std::size_t>(mate.panel)].id + " is only " +
               std::to_string(depth) + " mm wide";
    }
  }
  return {};
}

}  // namespace creasewright::testing
