#include "styles/style.h"

#include <algorithm>

namespace creasewright {
namespace {

ProblemValue shown(const ParameterSpec& spec, std::int64_t raw) {
  if (spec.kind == ParameterKind::Length) return Length::nanometres(raw);
  return raw;
}

}  // namespace

Parameters standardParameters(const Style& style) {
  Parameters parameters;
  for (const ParameterSpec& spec : style.parameters) parameters.setCount(spec.key, spec.standard);
  return parameters;
}

Problems checkLimits(const Style& style, const Parameters& parameters, const Making& making) {
  return checkLimits(style.id, style.parameters, parameters, making);
}

Problems checkLimits(std::string_view owner, const std::vector<ParameterSpec>& specs,
                     const Parameters& parameters, const Making& making) {
  Problems found;
  for (const auto& [key, value] : parameters) {
    const std::string_view name = key;
    if (std::ranges::find(specs, name, &ParameterSpec::key) == specs.end())
      found.push_back({ProblemCode::UnknownParameter, std::string(owner), {key}});
  }
  for (const ParameterSpec& spec : specs) {
    const std::int64_t value = parameters.raw(spec.key);
    const std::int64_t low = spec.minimum(parameters, making);
    const std::int64_t high = spec.maximum(parameters, making);
    const std::string key(spec.key);
    if (value < low)
      found.push_back(
          {ProblemCode::ParameterTooSmall, key, {shown(spec, value), shown(spec, low)}});
    else if (value > high)
      found.push_back(
          {ProblemCode::ParameterTooLarge, key, {shown(spec, value), shown(spec, high)}});
  }
  return found;
}

}  // namespace creasewright
