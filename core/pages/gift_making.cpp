#include <algorithm>

#include "document/halves.h"
#include "folding/loop_closure.h"
#include "folding/surfaces/upright.h"
#include "guide/piece_steps.h"
#include "pages/gift.h"
#include "pages/opened_end.h"

namespace creasewright {
namespace {

/// Between two sets of folds.
std::vector<Angle> between(const std::vector<Angle>& from, const std::vector<Angle>& to,
                           double share) {
  std::vector<Angle> out;
  for (std::size_t i = 0; i < from.size(); ++i)
    out.push_back(Angle::degrees(from[i].degrees() * (1 - share) + to[i].degrees() * share));
  return out;
}

}  // namespace

/// A piece of which an end is bent open while the product goes in is opened so far first, for it
/// has lain flat, and is closed from there.
Pose Gift::poseInMaking(int index, const MakingState& state) const {
  const BuiltPiece& piece = built_.pieces[static_cast<std::size_t>(index)];
  const double folded = state.folded[static_cast<std::size_t>(index)];
  if (folded >= 1 && !wholeOf(built_, piece)) return piece.folded;
  const bool holds = product_ && product_->piece == index && state.product > 0;
  const int stages = piece.net.stageCount();
  if (!holds || !putting() || putting()->after != stages - 1 ||
      !closingStages(piece, putting()).ends)
    return foldedPose(piece.net, folded);
  const Point3 front = sidesOf(uprightOf(piece)).away * -1;
  const double closed = folded * stages - (stages - 1);
  if (closed > 0) return withEndOut(piece, 1 - closed, front);
  constexpr double kOpenedFirst = 0.4;  // of the time
  const double opened = std::min(1.0, state.product / kOpenedFirst);
  return pose(piece.net,
              between(foldAngles(piece.net, folded), endOutAngles(piece, 1, front), opened));
}

/// A piece in the hand with what is on it, and the pieces that are glued onto it.
void Gift::addInMaking(int index, const Transform& place, const MakingState& state, Dressing& out,
                       GiftScene& scene) const {
  constexpr double kFrom = 50;  // mm before its place, from where a piece comes
  const BuiltPiece& piece = built_.pieces[static_cast<std::size_t>(index)];
  const Stood stood{&piece, place, poseInMaking(index, state)};
  out.add(piece, place, stood.pose);
  out.addOnFaces(piece, place, stood.pose);
  for (int upper = 0; upper < static_cast<int>(built_.pieces.size()); ++upper) {
    const BuiltPiece& above = built_.pieces[static_cast<std::size_t>(upper)];
    const double glued = state.glued[static_cast<std::size_t>(upper)];
    if (above.role || glued <= 0 || gluedOnto(built_, upper) != index) continue;
    const Gluing gluing(above, piece);
    const Pose folding = poseInMaking(upper, state);
    const double side = above.held->face == Face::Inside ? 1 : -1;
    const Transform seen = stood.pose[static_cast<std::size_t>(gluing.onto)]
                               .after(Transform::translation({0, 0, side * kFrom * (1 - glued)}))
                               .after(gluing.seen)
                               .after(folding[static_cast<std::size_t>(gluing.panel)].inverse());
    addInMaking(upper, place.after(seen), state, out, scene);
  }
  if (!product_ || product_->piece != index) return;
  const double raised = addInside(stood, out);
  MakingState now = state;
  // What is opened first waits.
  constexpr double kWaits = 0.4;
  if (now.product > 0 && closingStages(piece, putting()).ends)
    now.product = std::max(0.0, (now.product - kWaits) / (1 - kWaits));
  for (Solid& solid : productIn(stood, {.product = now.product}, 0, raised))
    scene.solids.push_back(std::move(solid));
}

GiftScene Gift::making(int index, const MakingState& state) const {
  int root = index;
  while (const std::optional<int> lower = gluedOnto(built_, root)) {
    if (state.glued[static_cast<std::size_t>(root)] <= 0) break;
    root = *lower;
  }
  GiftScene scene;
  Dressing out(built_, state.extras);
  addInMaking(root, {}, state, out, scene);
  scene.shown = out.take();
  scene.up = uprightOf(built_.pieces[static_cast<std::size_t>(root)]);
  return scene;
}

}  // namespace creasewright
