#include "document/design.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "base/excerpt.h"
#include "styles/registry.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

/// What a bare number means to somebody with these tools.
Unit unitOf(ToolGrid grid) {
  const bool inches = !grid.isNone() && grid.step().nm() % Length::inches(1, 64).nm() == 0;
  return inches ? Unit::Inch : Unit::Millimetre;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

std::optional<std::int64_t> readCount(std::string_view text) {
  std::int64_t number = 0;
  const char* end = text.data() + text.size();
  const auto result = std::from_chars(text.data(), end, number);
  if (text.empty() || result.ec != std::errc() || result.ptr != end) return std::nullopt;
  return number;
}

std::optional<std::int64_t> readFlag(std::string_view text) {
  constexpr std::array<std::string_view, 3> kYes{"1", "true", "yes"};
  constexpr std::array<std::string_view, 3> kNo{"0", "false", "no"};
  if (std::ranges::find(kYes, text) != kYes.end()) return 1;
  if (std::ranges::find(kNo, text) != kNo.end()) return 0;
  return std::nullopt;
}

/// The raw value (nanometres, count or flag) that `text` gives a parameter of `kind`.
std::optional<std::int64_t> readRaw(ParameterKind kind, std::string_view text, Unit unitless) {
  switch (kind) {
    case ParameterKind::Length: {
      const Result<Length> length = parseLength(text, unitless);
      if (!length) return std::nullopt;
      return length->nm();
    }
    case ParameterKind::Count:
      return readCount(trimmed(text));
    case ParameterKind::Flag:
      return readFlag(trimmed(text));
  }
  return std::nullopt;
}

}  // namespace

Result<Design> newDesign(std::string_view styleId, std::optional<Product> product, const Card& card,
                         Ease ease, ToolGrid grid) {
  const Result<const Style*> style = findStyle(styleId);
  if (!style) return style.problem();
  Design design;
  design.styleId = styleId;
  design.product = product;
  design.parameters = standardParameters(**style);
  design.card = card;
  design.ease = ease;
  design.grid = grid;
  if (product) design.parameters = fit(**style, *product, ease, {card.caliper, grid}).parameters;
  return design;
}

Result<Design> withParameter(Design design, std::string_view key, std::string_view text) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return style.problem();
  const auto spec = std::ranges::find((*style)->parameters, key, &ParameterSpec::key);
  if (spec == (*style)->parameters.end())
    return Problem{ProblemCode::UnknownParameter, design.styleId, {excerpt(key)}};
  const std::optional<std::int64_t> raw = readRaw(spec->kind, text, unitOf(design.grid));
  if (!raw) return Problem{ProblemCode::ParameterUnreadable, std::string(key), {excerpt(text)}};
  return withValue(std::move(design), key, *raw);
}

Design withValue(Design design, std::string_view key, std::int64_t raw) {
  design.parameters.setCount(key, raw);
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return design;
  const auto spec = std::ranges::find((*style)->parameters, key, &ParameterSpec::key);
  if (spec == (*style)->parameters.end() || spec->kind == ParameterKind::Length) return design;
  const Making making{design.card.caliper, design.grid};
  const bool possible = raw >= spec->minimum(design.parameters, making) &&
                        raw <= spec->maximum(design.parameters, making);
  return possible ? refitted(std::move(design)) : design;
}

Design refitted(Design design) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style || !design.product) return design;
  const Fitted fitted = fit(**style, *design.product, design.ease,
                            {design.card.caliper, design.grid}, design.parameters);
  for (const FitReason& reason : fitted.reasons)
    design.parameters.setCount(reason.key, fitted.parameters.raw(reason.key));
  return design;
}

}  // namespace creasewright
