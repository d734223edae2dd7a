#include "pages/gift_moments.h"

#include <algorithm>

#include "guide/extra_steps.h"
#include "guide/putting_in.h"

namespace creasewright {
namespace {

/// What goes onto the bare box comes before what goes round it, and what lies on that after
/// ribbons. What is pulled by has been threaded before all of them.
enum class Rank { OnBox, Round, Ribbon, OnExtra, Nowhere };

Rank rankOf(const BuiltDesign& built, int extra) {
  for (const RibbonNeed& ribbon : built.ribbons) {
    if (ribbon.extra != extra) continue;
    if (ribbon.pull) return Rank::Nowhere;
    if (!ribbon.shape) return ribbon.ways.empty() ? Rank::Nowhere : Rank::Ribbon;
    const bool onBox = ribbon.shape->face &&
                       !built.pieces[static_cast<std::size_t>(ribbon.shape->face->piece)].role;
    return onBox ? Rank::OnBox : Rank::OnExtra;
  }
  Rank rank = Rank::Nowhere;
  for (const int index : piecesOf(built, extra)) {
    const ExtraRole& role = *built.pieces[static_cast<std::size_t>(index)].role;
    if (role.placing == Placing::Round && role.around) return Rank::Round;
    if (role.placing == Placing::Hanging && role.around) return Rank::OnExtra;
    if (role.placing != Placing::OnFace && role.placing != Placing::OnInside) continue;
    if (role.host < 0) return Rank::OnBox;
    rank = std::min(rank, rankOf(built, role.host) == Rank::OnBox ? Rank::OnBox : Rank::OnExtra);
  }
  return rank;
}

void addOnes(const BuiltDesign& built, std::vector<GiftMoment>& moments) {
  struct Turn {
    Rank rank;
    int depth;
    int extra;
  };
  std::vector<Turn> turns;
  for (int extra = 0; extra < std::ssize(built.design.extras); ++extra) {
    const Rank rank = rankOf(built, extra);
    if (rank != Rank::Nowhere) turns.push_back({rank, extrasUnder(built, extra), extra});
  }
  std::ranges::stable_sort(turns, [](const Turn& a, const Turn& b) {
    return a.rank != b.rank ? a.rank < b.rank : a.depth < b.depth;
  });
  for (const Turn& turn : turns) moments.push_back({MomentCode::AddExtra, turn.extra});
}

bool hasLoose(const BuiltDesign& built) {
  return std::ranges::any_of(
      built.pieces,
      [](const BuiltPiece& piece) {
        return !piece.role && piece.held && piece.held->by == Hold::Loose && piece.held->place;
      });
}

}  // namespace

std::vector<GiftMoment> giftMoments(const BuiltDesign& built) {
  std::vector<GiftMoment> moments;
  for (const RibbonNeed& ribbon : built.ribbons)
    if (ribbon.pull) moments.push_back({MomentCode::AddExtra, ribbon.extra});
  const auto holder = built.design.product ? productHolder(built) : std::nullopt;
  if (holder && holder->putting.after >=
                    built.pieces[static_cast<std::size_t>(holder->piece)].net.stageCount()) {
    for (const int extra : extrasPlaced(built, Placing::Inside))
      moments.push_back({MomentCode::LayInside, extra});
    moments.push_back({MomentCode::PutIn});
  }
  if (hasLoose(built)) moments.push_back({MomentCode::Close});
  addOnes(built, moments);
  return moments;
}

GiftState stateAfter(const BuiltDesign& built, const std::vector<GiftMoment>& moments,
                     double done) {
  GiftState state;
  state.extras.assign(built.design.extras.size(), 1);
  for (std::size_t i = 0; i < moments.size(); ++i) {
    const double share = std::clamp(done - static_cast<double>(i), 0.0, 1.0);
    switch (moments[i].code) {
      case MomentCode::LayInside:
      case MomentCode::AddExtra:
        state.extras[static_cast<std::size_t>(moments[i].extra)] = share;
        break;
      case MomentCode::PutIn:
        state.product = share > 0 ? share : -1;
        break;
      case MomentCode::Close:
        state.opening = kOpen - (kOpen - kClosed) * share;
        break;
    }
  }
  return state;
}

}  // namespace creasewright
