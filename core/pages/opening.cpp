#include "pages/opening.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "folding/loop_closure.h"
#include "pages/opened_end.h"
#include "pages/reach.h"

namespace creasewright {
namespace {

/// Whether rigid panels can follow their creases one by one.
bool isTree(const Net& net) {
  return std::ranges::none_of(
      net.creases, [](const Crease& crease) { return crease.loop || !crease.driven; });
}

/// Whether a crease moves in a stage (from 1).
bool movesIn(const Crease& crease, int stage) {
  constexpr double kSame = 1e-6;  // degrees
  return std::abs(angleAfter(crease, stage).degrees() - angleAfter(crease, stage - 1).degrees()) >
         kSame;
}

/// The last stage in which a fold between each panel and the root moves; 0 = none.
std::vector<int> carriedIn(const Net& net) {
  std::vector<int> last(net.panels.size(), 0);
  for (const Crease& crease : net.creases) {
    if (crease.loop) continue;
    int own = last[static_cast<std::size_t>(crease.parent)];
    for (int stage = 1; stage <= net.stageCount(); ++stage)
      if (movesIn(crease, stage)) own = std::max(own, stage);
    last[static_cast<std::size_t>(crease.child)] = own;
  }
  return last;
}

/// The first stage in which an edge moves that is declared to open, of the later one of each pair.
int firstOpening(const Net& net) {
  const std::vector<int> carried = carriedIn(net);
  int first = net.stageCount() + 1;
  for (const OpenEdges& open : net.openEdges)
    if (open.why == "opens")
      first = std::min(first, std::max(carried[static_cast<std::size_t>(open.panel)],
                                       carried[static_cast<std::size_t>(open.other)]));
  return first;
}

/// The last stage that a glued joint needs to be made, of those after one; flaps that only went on
/// with what they are glued to need none.
int lastGlued(const Net& net, const Pose& folded, int after) {
  constexpr double kMoved = 0.5;  // mm
  FoldPath path(net);
  const auto apart = [&](const Mate& mate, const Pose& now) {
    const auto flap = static_cast<std::size_t>(mate.panel);
    const auto onto = static_cast<std::size_t>(mate.onto);
    return std::ranges::any_of(net.panels[flap].outline, [&](const Point& corner) {
      const Point3 there = now[onto].inverse().apply(now[flap].apply(corner));
      return distance(there, folded[onto].inverse().apply(folded[flap].apply(corner))) > kMoved;
    });
  };
  for (int stage = net.stageCount() - 1; stage >= after; --stage) {
    const Result<Pose> now = path.pose(static_cast<double>(stage) / net.stageCount());
    if (now && std::ranges::any_of(net.mates, [&](const Mate& mate) {
          return mate.method == Method::Glue && apart(mate, *now);
        }))
      return stage + 1;
  }
  return after;
}

/// A fold that is undone, and in which stage it was made.
struct Undone {
  std::size_t crease;
  int stage;
};

/// Folds after a stage that no later one carries along.
std::vector<Undone> closingFolds(const Net& net, int after) {
  const std::vector<int> carried = carriedIn(net);
  std::vector<Undone> folds;
  for (std::size_t i = 0; i < net.creases.size(); ++i)
    for (int stage = after + 1; stage <= net.stageCount(); ++stage)
      if (movesIn(net.creases[i], stage) &&
          carried[static_cast<std::size_t>(net.creases[i].parent)] <= stage)
        folds.push_back({i, stage});
  return folds;
}

/// The share of one of `count` that follow one another, each beginning a little before the one
/// before it ends.
double shareOf(std::size_t index, std::size_t count, double all) {
  constexpr double kSooner = 0.1;
  const double each = 1.0 / static_cast<double>(count);
  const double from = static_cast<double>(index) * each - (index > 0 ? kSooner : 0);
  const double to = static_cast<double>(index + 1) * each;
  return std::clamp((all - from) / (to - from), 0.0, 1.0);
}

Point3 centroidOf(const Panel& panel, const Transform& place) {
  return place.apply(centroid(panel.outline));
}

/// A lid that hinges on the upper edge of an upright wall in front of it: opened upright it would
/// hide what is behind it.
bool hingesInFront(const BuiltPiece& piece, const Crease& crease, const Upright& stands) {
  constexpr double kLevel = 0.2;
  constexpr double kLeast = 30;  // degrees; and as far from folded flat
  const Transform& wall = piece.folded[static_cast<std::size_t>(crease.parent)];
  const double fold = std::abs(crease.angle.degrees());
  if (!crease.way.empty() || fold < kLeast || fold > 180 - kLeast) return false;
  if (std::abs(dot(wall.normal(), stands.up)) > kLevel) return false;
  const auto child = static_cast<std::size_t>(crease.child);
  const Point3 hinge = wall.apply((crease.onParent.a + crease.onParent.b) / 2);
  Point3 way = hinge - centroidOf(piece.net.panels[child], piece.folded[child]);
  way = way - stands.up * dot(way, stands.up);  // a roof slants
  return norm(way) > 0 && dot(way, stands.front) > 0.8 * norm(way);
}

/// How far a lid in front falls, as so many of its folds: that of a roof farther than a level one,
/// for it stands less steep when it is closed.
double forwardsOf(const Crease& crease) {
  constexpr double kSquare = 60;  // degrees: from here on it closes like a level lid
  constexpr double kBeyond = 75;  // degrees that a roof falls beyond upright
  constexpr double kForwards = 1.5;
  const double fold = std::abs(crease.angle.degrees());
  return fold >= kSquare ? kForwards : (fold + kBeyond) / fold;
}

/// Angles with folds undone by a share, stage by stage from the last one back, each by `most` of
/// it.
void undo(const BuiltPiece& piece, const std::vector<Undone>& folds, double share, double most,
          const Upright& stands, std::vector<Angle>& angles) {
  constexpr double kSoon = 0.65;  // of the share, for it hides more while it stands
  std::set<int, std::greater<>> stages;
  for (const Undone& fold : folds) stages.insert(fold.stage);
  std::size_t k = 0;
  for (const int stage : stages) {
    const double undone = most * shareOf(k++, stages.size(), share);
    if (undone <= 0) return;
    for (const Undone& fold : folds) {
      if (fold.stage != stage) continue;
      const Crease& crease = piece.net.creases[fold.crease];
      angles[fold.crease] =
          hingesInFront(piece, crease, stands)
              ? Angle::degrees(crease.angle.degrees() *
                               (1 - forwardsOf(crease) * std::min(1.0, undone / kSoon)))
              : angleAfter(crease, stage - undone);
    }
  }
}

/// More of it at first.
double eased(double share) { return 1 - std::pow(1 - share, 1.6); }

std::vector<Angle> openedAngles(const BuiltPiece& piece, const ClosingStages& closing, double share,
                                const Upright& stands) {
  constexpr double kParted = 0.3;
  std::vector<Angle> angles = foldAngles(piece.net, 1);
  const double all = closing.glued ? kParted * share : eased(share);
  undo(piece, closingFolds(piece.net, closing.after), all, 1, stands, angles);
  return angles;
}

/// Folds by which level flaps close the lower end, none of them glued.
std::vector<Undone> bottomFolds(const BuiltPiece& piece, int until, Point3 up) {
  constexpr double kNear = 0.1;  // of the height
  constexpr double kLevel = 0.95;
  const Net& net = piece.net;
  Reach height;
  height.take(net, piece.folded, {}, up);
  std::vector<Undone> folds;
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    const auto child = static_cast<std::size_t>(crease.child);
    const Transform& place = piece.folded[child];
    const double at = dot(centroidOf(net.panels[child], place), up) - height.low;
    const double wall = dot(piece.folded[static_cast<std::size_t>(crease.parent)].normal(), up);
    if (at > kNear * (height.high - height.low) || std::abs(dot(place.normal(), up)) < kLevel ||
        std::abs(wall) > 1 - kLevel)
      continue;
    if (isGlued(net, crease.child)) return {};
    for (int stage = 1; stage <= until; ++stage)
      if (movesIn(crease, stage)) folds.push_back({i, stage});
  }
  return folds;
}

/// Whether the last stage ends with a flap that slides in, and would slide out again.
bool slidesInLast(const Net& net) {
  const int last = net.stageCount();
  return isTree(net) && std::ranges::any_of(net.bends, [last](const Bend& bend) {
           return bend.stage == last && bend.why == BendCode::TuckSlidesIn;
         });
}

}  // namespace

ClosingStages closingStages(const BuiltPiece& piece, const std::optional<PuttingIn>& putting) {
  const int all = piece.net.stageCount();
  const int last = slidesInLast(piece.net) ? all - 1 : all;
  const int after = std::min({firstOpening(piece.net) - 1, putting ? putting->after : all, last});
  // A roof or an end that folds as a whole can be opened only while the walls hold.
  const bool holds = isTree(piece.net) || (putting && putting->holds);
  if (!holds && hasBentEnds(piece)) return {all - 1, false, true};
  if (after >= all || !holds) return {all, false};
  // A roof that folds as a whole parts again where its seam is glued.
  const int glued = isTree(piece.net) ? lastGlued(piece.net, piece.folded, after) : after;
  return glued >= all ? ClosingStages{after, true} : ClosingStages{glued, false};
}

Pose openedPose(const BuiltPiece& piece, const ClosingStages& closing, double share,
                const Upright& stands) {
  const Net& net = piece.net;
  if (share <= 0 || closing.after >= net.stageCount()) return piece.folded;
  if (closing.ends) return withEndOut(piece, share, stands.front);
  if (!isTree(net))
    return foldedPose(net,
                      1 - eased(share) * (net.stageCount() - closing.after) / net.stageCount());
  return pose(net, openedAngles(piece, closing, share, stands));
}

Pose withOpenBottom(const BuiltPiece& piece, const ClosingStages& closing, double share,
                    const Upright& stands) {
  constexpr double kHanging = 0.8;  // of all its stages
  constexpr double kAslant = 0.7;   // of each fold
  const std::vector<Undone> folds = bottomFolds(piece, closing.after, stands.up);
  if (folds.empty() || !isTree(piece.net) || closing.after >= piece.net.stageCount())
    return openedPose(piece, closing, share, stands);
  std::vector<Angle> angles = openedAngles(piece, closing, share, stands);
  undo(piece, folds, kHanging * std::min(1.0, share / kAjar), kAslant, {stands.up, {}}, angles);
  return pose(piece.net, angles);
}

}  // namespace creasewright
