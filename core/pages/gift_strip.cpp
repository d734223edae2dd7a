#include "pages/gift_strip.h"

#include <algorithm>
#include <cmath>

#include "folding/loop_closure.h"
#include "folding/surfaces/upright.h"
#include "guide/extra_steps.h"
#include "guide/make_guide.h"

namespace creasewright {
namespace {

int stageOf(const BuiltDesign& built, const Step& fold) {
  const Net& net = built.pieces[static_cast<std::size_t>(fold.piece)].net;
  return static_cast<int>(std::lround(fold.figure.progress * net.stageCount()));
}

StripStop stopOfExtra(const BuiltDesign& built, const Step& step) {
  if (step.figure.kind == FigureKind::Sheet) return {StopCode::GlueOn, step.piece, 0, step.extra};
  const std::vector<int> inside = extrasPlaced(built, Placing::Inside);
  const bool goesIn = std::ranges::find(inside, step.extra) != inside.end();
  return {goesIn ? StopCode::LayInside : StopCode::AddExtra, -1, 0, step.extra};
}

void addStops(const BuiltDesign& built, const Step& step, std::vector<StripStop>& stops) {
  switch (step.code) {
    case StepCode::FoldStage:
      if (step.putIn) stops.push_back({StopCode::PutIn});
      return stops.push_back({StopCode::Fold, step.piece, stageOf(built, step)});
    case StepCode::GluePieces:
      return stops.push_back({StopCode::GluePieces, step.piece});
    case StepCode::PutTogether:
      return stops.push_back({StopCode::Close});
    case StepCode::PutIn:
      return stops.push_back({StopCode::PutIn});
    case StepCode::AddExtra:
      return stops.push_back(stopOfExtra(built, step));
    case StepCode::TrimBlank:
    case StepCode::ScoreSides:
    case StepCode::ShortScores:
    case StepCode::ScoreFreely:
    case StepCode::FoldAndBurnish:
    case StepCode::CutOpenings:
    case StepCode::CutSlits:
    case StepCode::CutWaste:
    case StepCode::CutMitres:
    case StepCode::CutTapers:
    case StepCode::CutNotches:
    case StepCode::CutCurves:
    case StepCode::ApplyAdhesive:
      return;
  }
}

}  // namespace

std::vector<StripStop> giftStops(const BuiltDesign& built) {
  std::vector<StripStop> stops;
  for (const Step& step : makingSteps(built)) addStops(built, step, stops);
  return stops;
}

GiftStrip::GiftStrip(const BuiltDesign& built, int piece)
    : GiftStrip(built, piece,
                built.pieces[static_cast<std::size_t>(piece)].role ? Of::Piece : Of::Gift) {}

GiftStrip::GiftStrip(const BuiltDesign& built, int piece, Of of)
    : built_(built), piece_(piece), of_(of) {
  if (of == Of::Gift) {
    stops_ = giftStops(built);
    return;
  }
  const Net& net = built.pieces[static_cast<std::size_t>(piece)].net;
  for (int stage = 1; stage <= net.stageCount(); ++stage)
    stops_.push_back({StopCode::Fold, piece, stage});
}

const Gift& GiftStrip::gift() const {
  return *gift_.get([&] { return std::make_shared<const Gift>(built_); });
}

/// The last stop before all pieces of the box are folded; -1 = there is none.
int GiftStrip::lastFold() const {
  int last = -1;
  for (int i = 0; i < static_cast<int>(stops_.size()); ++i) {
    const StripStop& stop = stops_[static_cast<std::size_t>(i)];
    const bool folds = stop.code == StopCode::Fold || stop.code == StopCode::GluePieces;
    if (folds && !built_.pieces[static_cast<std::size_t>(stop.piece)].role) last = i;
  }
  return last;
}

MakingState GiftStrip::stateAfter(double done) const {
  MakingState state;
  state.folded.assign(built_.pieces.size(), 0);
  state.glued.assign(built_.pieces.size(), 0);
  state.extras.assign(built_.design.extras.size(), 0);
  std::vector<bool> told(built_.design.extras.size());
  state.product = 1;
  for (std::size_t i = 0; i < stops_.size(); ++i) {
    const StripStop& stop = stops_[i];
    const double share = std::clamp(done - static_cast<double>(i), 0.0, 1.0);
    const auto piece = static_cast<std::size_t>(std::max(0, stop.piece));
    switch (stop.code) {
      case StopCode::Fold:
        if (share > 0)
          state.folded[piece] = (stop.stage - 1 + share) / built_.pieces[piece].net.stageCount();
        break;
      case StopCode::GluePieces:
        state.glued[piece] = share;
        break;
      case StopCode::PutIn:
        state.product = share > 0 ? share : -1;
        break;
      case StopCode::Close:
        state.opening = kOpen - (kOpen - kClosed) * share;
        break;
      case StopCode::GlueOn:
      case StopCode::LayInside:
      case StopCode::AddExtra: {
        // One that belongs onto several pieces is there as it is on the last of them.
        const auto extra = static_cast<std::size_t>(stop.extra);
        if (share > 0 || !told[extra]) state.extras[extra] = share;
        told[extra] = true;
        break;
      }
    }
  }
  for (std::size_t extra = 0; extra < told.size(); ++extra)
    if (!told[extra]) state.extras[extra] = 1;
  // Pieces without folds are what they are.
  for (std::size_t i = 0; i < built_.pieces.size(); ++i)
    if (built_.pieces[i].net.stageCount() == 0) state.folded[i] = 1;
  return state;
}

GiftScene GiftStrip::at(double done, double opening) const {
  done = std::clamp(done, 0.0, end());
  const BuiltPiece& own = built_.pieces[static_cast<std::size_t>(piece_)];
  if (of_ == Of::Piece) return alone(end() > 0 ? done / end() : 1);
  if (done >= end()) return gift().holds(own) ? gift().at({.opening = opening}) : alone(1);
  const MakingState state = stateAfter(done);
  const int now = std::max(0, static_cast<int>(std::ceil(done)) - 1);
  const StripStop& stop = stops_[static_cast<std::size_t>(now)];
  if (stop.piece >= 0) return gift().making(stop.piece, state);
  if (now < lastFold())
    if (const std::optional<int> holder = productPiece(built_))
      return gift().making(*holder, state);
  return gift().at({state.opening, state.product, state.extras});
}

double GiftStrip::doneWhenFolded(double progress) const {
  const int count = built_.pieces[static_cast<std::size_t>(piece_)].net.stageCount();
  const double stages = progress * count;
  double done = 0;
  for (std::size_t i = 0; i < stops_.size(); ++i) {
    const StripStop& stop = stops_[i];
    if (stop.code != StopCode::Fold || stop.piece != piece_) continue;
    if (stages > stop.stage - 1)
      done = static_cast<double>(i) + std::min(1.0, stages - (stop.stage - 1));
  }
  return done;
}

/// The piece by itself; folded with what is glued onto it.
GiftScene GiftStrip::alone(double progress) const {
  const BuiltPiece& own = built_.pieces[static_cast<std::size_t>(piece_)];
  GiftScene scene;
  scene.shown =
      progress < 1 ? undressed(built_, own, foldedPose(own.net, progress)) : dressed(built_, own);
  scene.up = uprightOf(own);
  return scene;
}

}  // namespace creasewright
