#include "core/laws/law_book.h"
#include "folding/motion/motion_check.h"
#include "folding/motion/needed_bends.h"

namespace creasewright::testing {
namespace {

constexpr double kSlack = 0.05;  // mm

const Polygon& partOf(const Mate& mate, const Panel& flap) {
  return mate.patch.empty() ? flap.outline : mate.patch;
}

/// How far (mm) the worst corner of a mate's flap is from its target's plane, and from its outline.
struct Landing {
  double off = 0;
  double outside = 0;
};

double distanceToRing(Point p, const Polygon& ring) {
  double nearest = 1e9;
  for (std::size_t i = 0; i < ring.size(); ++i)
    nearest = std::min(nearest, distanceToSegment(p, {ring[i], ring[(i + 1) % ring.size()]}));
  return nearest;
}

Landing landing(const Net& net, const Pose& folded, const Mate& mate) {
  const auto flap = static_cast<std::size_t>(mate.panel);
  const auto target = static_cast<std::size_t>(mate.onto);
  const Transform seen = folded[target].inverse().after(folded[flap]);
  const Polygon hold = mate.method == Method::Glue ? net.panels[target].outline
                                                   : convexHull(net.panels[target].outline);
  Landing worst;
  for (const Point& corner : partOf(mate, net.panels[flap])) {
    const Point3 p = seen.apply(corner);
    worst.off = std::max(worst.off, std::abs(p.z));
    if (locate({p.x, p.y}, hold) == Side::Outside)
      worst.outside = std::max(worst.outside, distanceToRing({p.x, p.y}, hold));
  }
  return worst;
}

}  // namespace

/// In stages that declare that the card bends only the end counts.
Verdict noPanelGoesThroughAnother(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces)
    for (const Problem& problem : checkFoldPath(piece.net, built.design.card.caliper.mm())) {
      Verdict verdict =
          piece.name + ": " + std::string(codeName(problem.code)) + ' ' + problem.where;
      for (const ProblemValue& value : problem.values)
        if (const auto* word = std::get_if<std::string>(&value)) verdict += " | " + *word;
      return verdict;
    }
  return {};
}

/// A bend is told only where stiff panels would go through one another.
Verdict noBendIsIdle(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces) {
    const Net told = withNeededBends(piece.net, built.design.card.caliper.mm());
    for (std::size_t i = 0; i < told.bends.size(); ++i) {
      Net stiff = told;
      const Bend bend = stiff.bends[i];
      stiff.bends.erase(stiff.bends.begin() + static_cast<std::ptrdiff_t>(i));
      if (checkFoldPath(stiff, built.design.card.caliper.mm()).empty())
        return piece.name + ": " + std::string(bendName(bend.why)) + " in stage " +
               std::to_string(bend.stage);
    }
  }
  return {};
}

/// Folded, every mate lies in its target's plane but for a layer of card, and over its target but
/// for the strip a rounded measure and a layer leave.
Verdict matesLandOnTheirTargets(const BuiltDesign& built) {
  const double caliper = built.design.card.caliper.mm();
  for (const BuiltPiece& piece : built.pieces) {
    const Net& net = piece.net;
    for (const Mate& mate : net.mates) {
      const Landing found = landing(net, piece.folded, mate);
      if (found.off <= caliper + kSlack && found.outside <= 2 * caliper + kSlack) continue;
      return net.panels[static_cast<std::size_t>(mate.panel)].id + " is " +
             std::to_string(found.off) + " mm off its target's plane and " +
             std::to_string(found.outside) + " mm outside it";
    }
  }
  return {};
}

}  // namespace creasewright::testing
