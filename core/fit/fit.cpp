#include "fit/fit.h"

#include <algorithm>
#include <array>
#include <functional>
#include <utility>

#include "fit/round_product.h"
#include "styles/limits_search.h"

namespace creasewright {
namespace {

constexpr std::array<std::string_view, 3> kEaseNames{"snug", "easy", "loose"};

/// Tenths of a millimetre by shape and ease: rigid things 1.5 mm, rounded ones 3 mm, flat cards 0
/// to 2 mm in all (common practice, no published source).
constexpr std::array<std::array<int, 3>, 5> kEaseTenths{{
    {5, 15, 30},   // box
    {15, 30, 45},  // cylinder
    {15, 30, 45},  // sphere
    {15, 30, 45},  // tube
    {0, 10, 20},   // card
}};

/// Tenths of a millimetre by ease between a tray and its lid of the same card (common practice, no
/// published source).
constexpr std::array<int, 3> kLidEaseTenths{5, 10, 16};

constexpr std::int64_t kNmPerTenth = 100'000;

/// The nearest value of the grid, at least one step of it for what is there at all.
Length nearestStep(Length value, ToolGrid grid) {
  const Length nearest = grid.nearest(value);
  return nearest == Length() && value > Length() ? grid.step() : nearest;
}

/// Measures along the two sides of one base.
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> kBasePairs{{
    {"length", "width"},
    {"opening-length", "opening-width"},
    {"cell-length", "cell-width"},
    {"lid-longer", "lid-wider"},
}};

std::string_view otherSide(std::string_view key) {
  for (const auto& [one, other] : kBasePairs) {
    if (key == one) return other;
    if (key == other) return one;
  }
  return {};
}

/// What a need is made of, found by asking for it without card and for a product twice the size.
FitReason reasonFor(const Need& need, const Need& cardless, const Need& doubled, const Room& room) {
  FitReason reason;
  reason.key = need.key;
  reason.axis = need.axis;
  reason.ofProduct = doubled.least != need.least;
  if (reason.ofProduct) {
    reason.product = room.product.at(static_cast<std::size_t>(need.axis));
    reason.ease = room.ease.at(static_cast<std::size_t>(need.axis));
  }
  reason.card = need.least - cardless.least;
  reason.needed = need.least;
  const Length rest = cardless.least - reason.product - reason.ease;
  (reason.ofProduct ? reason.shape : reason.ease) += rest;
  return reason;
}

std::vector<FitReason> reasonsOf(const Style& style, const Room& room, const Parameters& chosen,
                                 const Workbench& bench) {
  Room larger = room;
  for (Length& size : larger.product) size = size * 2;
  const std::vector<Need> needs = style.needs(room, chosen, bench);
  const std::vector<Need> cardless = style.needs(room, chosen, {Length(), bench.grid});
  const std::vector<Need> doubled = style.needs(larger, chosen, bench);
  std::vector<FitReason> reasons;
  for (std::size_t i = 0; i < needs.size(); ++i)
    reasons.push_back(reasonFor(needs[i], cardless[i], doubled[i], room));
  return reasons;
}

/// A round product stands in a square: where card alone makes the sides differ, the larger counts.
void makeSquare(std::vector<FitReason>& reasons) {
  const auto find = [&](std::string_view key) {
    return std::ranges::find(reasons, key, &FitReason::key);
  };
  for (const auto& [one, other] : kBasePairs) {
    const auto a = find(one);
    const auto b = find(other);
    if (a == reasons.end() || b == reasons.end()) continue;
    if (a->product != b->product || a->ease != b->ease || a->shape != b->shape) continue;
    (a->needed < b->needed ? *a : *b).card = std::max(a->card, b->card);
    a->needed = b->needed = std::max(a->needed, b->needed);
  }
}

/// A need on the grid, never smaller; more only where the style's own least value asks for it, and
/// for a round product that of the base's other side.
void choose(FitReason& reason, const Style& style, const Parameters& parameters,
            const Workbench& bench, bool round) {
  const auto least = [&](std::string_view key) {
    const auto spec = std::ranges::find(style.parameters, key, &ParameterSpec::key);
    return Length::nanometres(spec == style.parameters.end() ? 0
                                                             : spec->minimum(parameters, bench));
  };
  Length low = least(reason.key);
  if (round) low = std::max(low, least(otherSide(reason.key)));
  if (low > reason.needed) reason.floor = low;
  reason.chosen = bench.grid.roundUp(std::max(reason.needed, low));
}

Length sizeOf(const Product& product, Axis axis) {
  switch (axis) {
    case Axis::Length:
      return product.length;
    case Axis::Width:
      return product.width;
    case Axis::Height:
      return product.height;
  }
  return {};
}

}  // namespace

Result<Ease> parseEase(std::string_view text) {
  const auto found = std::ranges::find(kEaseNames, text);
  if (found == kEaseNames.end()) return Problem{ProblemCode::EaseUnknown, {}, {std::string(text)}};
  return static_cast<Ease>(found - kEaseNames.begin());
}

std::string_view easeText(Ease ease) { return kEaseNames.at(static_cast<std::size_t>(ease)); }

Length easeFor(ProductShape shape, Ease ease) {
  const int tenths =
      kEaseTenths.at(static_cast<std::size_t>(shape)).at(static_cast<std::size_t>(ease));
  return Length::nanometres(tenths * kNmPerTenth);
}

std::array<Axis, 3> lyingOf(const Product& product, const Style& style) {
  std::array<Axis, 3> order{Axis::Length, Axis::Width, Axis::Height};
  if (style.lying == Lying::Flat && product.shape != ProductShape::Box)
    std::ranges::stable_sort(order, std::greater<>(),
                             [&](Axis axis) { return sizeOf(product, axis); });
  return order;
}

Room roomFor(const Product& product, const Style& style, Ease ease) {
  Room room;
  const std::array<Axis, 3> order = lyingOf(product, style);
  for (std::size_t i = 0; i < 3; ++i) room.product.at(i) = sizeOf(product, order.at(i));
  for (std::size_t i = 0; i < 3; ++i)
    if (style.easeOn.at(i)) room.ease.at(i) = easeFor(product.shape, ease);
  room.ball = product.shape == ProductShape::Sphere;
  room.round = isRound(product) && room.product[0] == room.product[1];
  room.lidEase =
      Length::nanometres(kLidEaseTenths.at(static_cast<std::size_t>(ease)) * kNmPerTenth);
  return room;
}

Fitted fit(const Style& style, const Product& product, Ease ease, const Workbench& bench) {
  return fit(style, product, ease, bench, standardParameters(style));
}

Fitted fit(const Style& style, const Product& product, Ease ease, const Workbench& bench,
           const Parameters& chosen) {
  const Room room = roomFor(product, style, ease);
  Fitted fitted{chosen, reasonsOf(style, room, chosen, bench)};
  Parameters& parameters = fitted.parameters;
  if (room.round) makeSquare(fitted.reasons);
  for (FitReason& reason : fitted.reasons) {
    choose(reason, style, parameters, bench, room.round);
    parameters.set(reason.key, reason.chosen);
  }
  parameters = placedOnGrid(style.parameters, parameters, bench, floorsOf(fitted));
  for (FitReason& reason : fitted.reasons) reason.chosen = parameters.length(reason.key);
  return fitted;
}

Floors floorsOf(const Fitted& fitted) {
  Floors floors;
  for (const FitReason& reason : fitted.reasons) floors[reason.key] = reason.needed.nm();
  return floors;
}

Parameters raisedTo(const Fitted& fitted, Parameters parameters) {
  for (const FitReason& reason : fitted.reasons)
    parameters.set(reason.key, std::max(reason.chosen, parameters.length(reason.key)));
  return parameters;
}

Parameters placedOnGrid(const std::vector<ParameterSpec>& specs, Parameters wanted,
                        const Workbench& bench, const Floors& floors) {
  for (const ParameterSpec& spec : specs) {
    if (spec.kind != ParameterKind::Length) continue;
    const Length value = wanted.length(spec.key);
    // A flap that gives way makes the blank no larger.
    Length placed = spec.givesWay ? std::max(bench.grid.roundDown(value), bench.grid.step())
                                  : nearestStep(value, bench.grid);
    const auto floor = floors.find(spec.key);
    if (floor != floors.end() && placed.nm() < floor->second && value.nm() >= floor->second)
      placed = bench.grid.roundUp(value);
    wanted.set(spec.key, placed);
  }
  return movedWithinLimits(specs, wanted, bench, floors).value_or(wanted);
}

}  // namespace creasewright
