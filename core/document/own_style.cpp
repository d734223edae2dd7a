#include "document/own_style.h"

#include <algorithm>
#include <cstdint>
#include <set>

#include "base/excerpt.h"
#include "document/own_style_file.h"
#include "styles/parameter_text.h"
#include "styles/registry.h"
#include "units/formula.h"

namespace creasewright {
namespace {

constexpr std::size_t kLongestId = 80;
constexpr std::size_t kLongestIdWords = 40;

/// FNV-1a, 64 bits (Fowler, Noll, Vo; IETF draft-eastlake-fnv): the same on every machine.
std::uint64_t fnv1a(std::string_view text) {
  std::uint64_t hash = 14695981039346656037U;
  for (const unsigned char c : text) hash = (hash ^ c) * 1099511628211U;
  return hash;
}

bool isLetterOrDigit(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); }

/// Words of a title as an id has them.
std::string idWords(std::string_view title) {
  std::string words;
  for (char c : title) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (isLetterOrDigit(c))
      words += c;
    else if (!words.empty() && words.back() != '-')
      words += '-';
    if (words.size() == kLongestIdWords) break;
  }
  while (!words.empty() && words.back() == '-') words.pop_back();
  return words.empty() ? "style" : words;
}

/// Rules of one style, each evaluated when it is asked for.
class Rules {
 public:
  Rules(const OwnStyle& style, const Style& base, const Parameters& parameters,
        const Workbench& bench)
      : style_(style), base_(base), parameters_(parameters), bench_(bench) {}

  Result<Length> valueOf(const std::string& key) {
    const auto rule = style_.rules.find(key);
    if (rule == style_.rules.end()) return parameters_.length(key);
    if (!isLength(key)) return Problem{ProblemCode::UnknownParameter, base(), {excerpt(key)}};
    if (!open_.insert(key).second)
      return Problem{ProblemCode::FormulaCircle, key, {excerpt(rule->second)}};
    Result<Length> value = read(key, rule->second);
    open_.erase(key);
    return value;
  }

 private:
  [[nodiscard]] std::string base() const { return std::string(base_.id); }

  [[nodiscard]] bool isLength(std::string_view key) const {
    const auto spec = std::ranges::find(base_.parameters, key, &ParameterSpec::key);
    return spec != base_.parameters.end() && spec->kind == ParameterKind::Length;
  }

  Result<Length> read(const std::string& key, const std::string& text) {
    const FormulaNames names = [this](std::string_view name) -> std::optional<Result<Length>> {
      if (name == "caliper") return Result<Length>(bench_.caliper);
      if (!isLength(name)) return std::nullopt;
      return valueOf(std::string(name));
    };
    const Result<FormulaValue> value = evaluateFormula(text, names);
    if (!value) return told(key, value.problem());
    if (!value->isLength) return Problem{ProblemCode::FormulaUnits, key, {excerpt(text)}};
    return Length::nanometres(value->raw);
  }

  [[nodiscard]] Problem told(const std::string& key, Problem problem) const {
    if (!problem.where.empty()) return problem;  // another measure's
    problem.where = key;
    if (problem.code == ProblemCode::FormulaUnknownName) {
      std::string names;
      for (const ParameterSpec& spec : base_.parameters)
        if (spec.kind == ParameterKind::Length) names += std::string(spec.key) + ", ";
      problem.values.emplace_back(names + "caliper");
    }
    if (problem.code == ProblemCode::FormulaOutOfRange) {
      problem.values.emplace_back(Length());
      problem.values.emplace_back(Length::mm(100'000));
    }
    return problem;
  }

  const OwnStyle& style_;
  const Style& base_;
  const Parameters& parameters_;
  const Workbench& bench_;
  std::set<std::string, std::less<>> open_;
};

}  // namespace

bool isOwnStyleId(std::string_view text) {
  const auto serves = [](char c) { return isLetterOrDigit(c) || c == '-'; };
  return !text.empty() && text.size() <= kLongestId && text.front() != '-' &&
         std::ranges::all_of(text, serves) && !findStyle(text);
}

std::string ownStyleIdFor(const OwnStyle& style) {
  constexpr std::string_view kDigits = "0123456789abcdef";
  OwnStyle plain = style;
  plain.id.clear();
  plain.picture.clear();
  std::uint64_t hash = fnv1a(writeOwnStyle(plain));
  std::string id = idWords(style.title) + '-';
  for (int i = 0; i < 8; ++i, hash >>= 4U) id += kDigits[hash & 15U];
  return id;
}

bool isSeen(const OwnStyle& style, std::string_view key) {
  return std::ranges::find(style.seen, key) != style.seen.end();
}

std::vector<std::size_t> axesOutside(const OwnStyle& style, const Product& product) {
  std::vector<std::size_t> axes;
  if (!style.suits) return axes;
  const std::array<Length, 3> sizes{product.length, product.width, product.height};
  for (std::size_t i = 0; i < sizes.size(); ++i)
    if (sizes.at(i) < style.suits->least.at(i) || sizes.at(i) > style.suits->most.at(i))
      axes.push_back(i);
  return axes;
}

RuledMeasures ruledMeasures(const OwnStyle& style, const Style& base, const Parameters& parameters,
                            const Workbench& bench) {
  Rules rules(style, base, parameters, bench);
  RuledMeasures ruled;
  for (const auto& [key, rule] : style.rules) {
    const Result<Length> value = rules.valueOf(key);
    if (value)
      ruled.lengths.emplace(key, *value);
    else
      ruled.problems.push_back(value.problem());
  }
  return ruled;
}

Parameters withRules(const OwnStyle& style, const Style& base, Parameters parameters,
                     const Workbench& bench, const Floors& floors) {
  if (style.rules.empty()) return parameters;
  const RuledMeasures ruled = ruledMeasures(style, base, parameters, bench);
  for (const auto& [key, length] : ruled.lengths) parameters.set(key, bench.grid.nearest(length));
  for (const ParameterSpec& spec : base.parameters) {
    if (!ruled.lengths.contains(spec.key)) continue;
    const auto floor = floors.find(spec.key);
    const std::int64_t least =
        std::max(spec.minimum(parameters, bench), floor == floors.end() ? 0 : floor->second);
    const std::int64_t most = spec.maximum(parameters, bench);
    const std::int64_t now = parameters.raw(spec.key);
    if (now < least)
      parameters.set(spec.key, bench.grid.roundUp(Length::nanometres(least)));
    else if (now > most && most >= least)
      parameters.set(spec.key, bench.grid.roundDown(Length::nanometres(most)));
  }
  return parameters;
}

}  // namespace creasewright
