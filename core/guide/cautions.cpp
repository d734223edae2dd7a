#include "guide/cautions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace creasewright {
namespace {

bool has(const std::vector<Step>& steps, bool (*test)(const Step&)) {
  return std::ranges::any_of(steps, test);
}

/// Styles that candles and lights are put into, by what each style says it suits.
bool mayHoldFlame(const BuiltDesign& built) {
  const std::string_view suits = built.style->traits.suits;
  return std::ranges::any_of(
      std::array{"candle", "tea-light", "tea light", "lantern"},
      [&](std::string_view word) { return suits.find(word) != std::string_view::npos; });
}

/// Something lies in it, and neither cards nor another box alone.
bool mayHoldFood(const BuiltDesign& built) {
  constexpr std::array<std::string_view, 4> kOthers{"belly-band", "card-wallet", "partition-insert",
                                                    "platform-insert"};
  if (std::ranges::find(kOthers, built.style->id) != kOthers.end()) return false;
  if (built.design.product && built.design.product->shape == ProductShape::Card) return false;
  return std::ranges::any_of(built.pieces, [](const BuiltPiece& piece) {
    return !piece.role && piece.cavity.has_value();
  });
}

/// Goes into the small-parts cylinder, 31.7 mm across and 57.1 mm deep at most (16 CFR 1501.4,
/// EN 71-1).
bool isSmall(std::array<double, 3> sizes) {
  constexpr double kAcross = 31.7;  // mm
  constexpr double kDeep = 57.1;    // mm
  std::ranges::sort(sizes);
  return std::hypot(sizes[0], sizes[1]) <= kAcross && sizes[2] <= kDeep;
}

bool hasSmallParts(const BuiltDesign& built, const Guide& guide) {
  if (built.design.product) {
    const Product& product = *built.design.product;
    if (isSmall({product.length.mm(), product.width.mm(), product.height.mm()})) return true;
  }
  if (guide.finishedHeight > Length() &&
      isSmall({guide.finishedLength.mm(), guide.finishedWidth.mm(), guide.finishedHeight.mm()}))
    return true;
  // What hangs loose or lies loose inside, as flat as it is.
  return std::ranges::any_of(built.pieces, [](const BuiltPiece& piece) {
    return piece.role &&
           (piece.role->placing == Placing::Hanging || piece.role->placing == Placing::Inside) &&
           piece.net.creases.empty() &&
           isSmall({piece.flat.width, piece.flat.height, piece.card.caliper.mm()});
  });
}

}  // namespace

std::vector<CautionCode> cautionsFor(const BuiltDesign& built, const Guide& guide) {
  std::vector<CautionCode> cautions;
  const auto add = [&cautions](CautionCode code, bool fits) {
    if (fits) cautions.push_back(code);
  };
  const bool cuts = has(guide.steps, [](const Step& step) { return !step.cuts.empty(); });
  add(CautionCode::Trimmer, !cuts);
  add(CautionCode::Knife, cuts);
  add(CautionCode::HotGlue,
      std::ranges::count(guide.supplies, SupplyKind::LiquidGlue, &Supply::kind) > 0);
  add(CautionCode::FoodContact, mayHoldFood(built));
  add(CautionCode::SmallParts, hasSmallParts(built, guide));
  add(CautionCode::Flames, mayHoldFlame(built));
  return cautions;
}

}  // namespace creasewright
