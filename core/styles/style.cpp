#include "styles/style.h"

#include <algorithm>

#include "styles/limits_search.h"

namespace creasewright {
namespace {

ProblemValue shown(const ParameterSpec& spec, std::int64_t raw) {
  if (spec.kind == ParameterKind::Length) return Length::nanometres(raw);
  return raw;
}

Problems changes(const std::vector<ParameterSpec>& specs, const Parameters& from,
                 const Parameters& to) {
  Problems found;
  for (const ParameterSpec& spec : specs) {
    const std::int64_t have = from.raw(spec.key);
    const std::int64_t right = to.raw(spec.key);
    if (have == right) continue;
    found.push_back({have < right ? ProblemCode::ParameterTooSmall : ProblemCode::ParameterTooLarge,
                     std::string(spec.key),
                     {shown(spec, have), shown(spec, right), std::string(spec.title)}});
  }
  return found;
}

/// No values are right: the product asks for more than one of them may be, or the card is too
/// thick.
Problem unsuited(const std::vector<ParameterSpec>& specs, const Parameters& wanted,
                 const Workbench& bench, const Floors& floors) {
  const auto without = movedWithinLimits(specs, wanted, bench);
  for (const ParameterSpec& spec : specs) {
    const auto floor = floors.find(spec.key);
    if (!without || floor == floors.end()) continue;
    const std::int64_t most = possibleRange(specs, *without, bench, spec.key).most;
    if (most < floor->second)
      return {ProblemCode::StyleUnsuited,
              std::string(spec.key),
              {shown(spec, floor->second), shown(spec, most), std::string(spec.title)}};
  }
  return {ProblemCode::StyleUnsuited, std::string(firstOutside(specs, wanted, bench)), {}};
}

}  // namespace

Parameters standardParameters(const Style& style) {
  Parameters parameters;
  for (const ParameterSpec& spec : style.parameters) parameters.setCount(spec.key, spec.standard);
  return parameters;
}

Problems adviceFor(const std::vector<ParameterSpec>& specs, const Parameters& parameters,
                   const Parameters& wanted, const Workbench& bench, const Floors& floors) {
  if (const auto right = movedWithinLimits(specs, wanted, bench, floors))
    return changes(specs, parameters, *right);
  return {unsuited(specs, wanted, bench, floors)};
}

Problems checkLimits(const Style& style, const Parameters& parameters, const Workbench& bench) {
  return checkLimits(style.id, style.parameters, parameters, bench);
}

Problems checkLimits(std::string_view owner, const std::vector<ParameterSpec>& specs,
                     const Parameters& parameters, const Workbench& bench) {
  Problems found;
  for (const auto& [key, value] : parameters) {
    const std::string_view name = key;
    if (std::ranges::find(specs, name, &ParameterSpec::key) == specs.end())
      found.push_back({ProblemCode::UnknownParameter, std::string(owner), {key}});
  }
  if (withinLimits(specs, parameters, bench)) return found;
  const Problems advice = adviceFor(specs, parameters, parameters, bench, {});
  found.insert(found.end(), advice.begin(), advice.end());
  return found;
}

}  // namespace creasewright
