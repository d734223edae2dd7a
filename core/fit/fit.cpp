#include "fit/fit.h"

#include <algorithm>
#include <functional>

#include "fit/round_product.h"

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

std::int64_t snapped(const ParameterSpec& spec, std::int64_t raw, const Parameters& parameters,
                     const Making& making) {
  const std::int64_t low = spec.minimum(parameters, making);
  const std::int64_t high = std::max(low, spec.maximum(parameters, making));
  if (spec.kind != ParameterKind::Length) return std::clamp(raw, low, high);
  const Length value = Length::nanometres(std::clamp(raw, low, high));
  Length onGrid = making.grid.nearest(value);
  if (onGrid.nm() < low) onGrid = making.grid.roundUp(value);
  if (onGrid.nm() > high) onGrid = making.grid.roundDown(value);
  // Limits closer together than the grid: being possible goes before being on the grid.
  return onGrid.nm() < low ? low : onGrid.nm();
}

/// A need on the grid, never smaller; more only where the style's own least value asks for it.
Length chosenFor(const Need& need, const ParameterSpec& spec, const Parameters& parameters,
                 const Making& making) {
  const Length low = Length::nanometres(spec.minimum(parameters, making));
  return making.grid.roundUp(std::max(need.least, low));
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

Room roomFor(const Product& product, const Style& style, Ease ease) {
  Room room{{product.length, product.width, product.height}, {}};
  if (style.lying == Lying::Flat && product.shape != ProductShape::Box)
    std::ranges::sort(room.product, std::greater<>());
  for (std::size_t i = 0; i < 3; ++i)
    if (style.easeOn.at(i)) room.ease.at(i) = easeFor(product.shape, ease);
  room.round = isRound(product);
  room.lidEase =
      Length::nanometres(kLidEaseTenths.at(static_cast<std::size_t>(ease)) * kNmPerTenth);
  return room;
}

Fitted fit(const Style& style, const Product& product, Ease ease, const Making& making) {
  return fit(style, product, ease, making, standardParameters(style));
}

Fitted fit(const Style& style, const Product& product, Ease ease, const Making& making,
           const Parameters& chosen) {
  Fitted fitted{chosen, {}};
  Parameters& parameters = fitted.parameters;
  const Room room = roomFor(product, style, ease);
  const std::vector<Need> needs = style.needs(room, parameters, making);
  for (const Need& need : needs) {
    const auto spec = std::ranges::find(style.parameters, need.key, &ParameterSpec::key);
    const Length value = chosenFor(need, *spec, parameters, making);
    parameters.set(need.key, value);
    fitted.reasons.push_back({std::string(need.key),
                              room.product.at(static_cast<std::size_t>(need.axis)),
                              room.eased(need.axis), need.least, value});
  }
  for (const ParameterSpec& spec : style.parameters)
    if (std::ranges::find(needs, spec.key, &Need::key) == needs.end())
      parameters.setCount(spec.key, snapped(spec, parameters.raw(spec.key), parameters, making));
  return fitted;
}

}  // namespace creasewright
