#include <algorithm>
#include <cctype>
#include <cstdlib>
#include <set>

#include "base/excerpt.h"
#include "edits/kinds/edit_kind.h"
#include "units/formula.h"

namespace creasewright {
namespace {

constexpr std::string_view kOwn = "this-";
constexpr std::int64_t kMillion = 1'000'000;

/// ASCII letters alike, large or small.
bool sameChoice(std::string_view a, std::string_view b) {
  return std::ranges::equal(
      a, b, [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

/// The measures of one edit, each evaluated when it is asked for.
class Measures {
 public:
  Measures(const EditKind& kind, const Edit& edit, const LengthNames& known, Unit unitless)
      : kind_(kind), edit_(edit), known_(known), unitless_(unitless) {}

  Result<std::int64_t> valueOf(const EditMeasure& measure) {
    const auto written = edit_.measures.find(measure.key);
    const std::string_view text =
        written == edit_.measures.end() ? measure.standard : std::string_view(written->second);
    if (!open_.insert(measure.key).second)
      return Problem{ProblemCode::FormulaCircle, std::string(measure.key), {excerpt(text)}};
    Result<std::int64_t> value = read(measure, text);
    open_.erase(measure.key);
    return value;
  }

 private:
  [[nodiscard]] std::optional<Result<Length>> named(std::string_view name) {
    if (name.starts_with(kOwn)) {
      const auto own =
          std::ranges::find(kind_.measures, name.substr(kOwn.size()), &EditMeasure::key);
      if (own == kind_.measures.end() || own->kind != ParameterKind::Length) return std::nullopt;
      const Result<std::int64_t> value = valueOf(*own);
      if (!value) return Result<Length>(value.problem());
      return Result<Length>(Length::nanometres(*value));
    }
    const auto found = known_.find(name);
    if (found == known_.end()) return std::nullopt;
    return Result<Length>(found->second);
  }

  /// What may be named: the choices of a measure that has some, else the lengths.
  [[nodiscard]] std::string names(const EditMeasure& measure) const {
    std::string list;
    for (const std::string_view choice : measure.choices) {
      if (!list.empty()) list += ", ";
      for (const unsigned char c : choice) list += static_cast<char>(std::tolower(c));
    }
    if (!list.empty()) return list;
    for (const auto& [name, length] : known_) list += (list.empty() ? "" : ", ") + name;
    return list;
  }

  Result<std::int64_t> read(const EditMeasure& measure, std::string_view text) {
    for (std::size_t i = 0; i < measure.choices.size(); ++i)
      if (sameChoice(measure.choices[i], text)) return static_cast<std::int64_t>(i);
    const FormulaNames lookUp = [this](std::string_view name) { return named(name); };
    const Result<FormulaValue> value = evaluateFormula(text, lookUp);
    if (!value) return at(measure, value.problem());
    Result<std::int64_t> raw = rawOf(measure, text, *value);
    if (raw && (*raw < measure.least || *raw > measure.most))
      return Problem{ProblemCode::FormulaOutOfRange,
                     std::string(measure.key),
                     {excerpt(text), limit(measure, measure.least), limit(measure, measure.most)}};
    return raw;
  }

  [[nodiscard]] Problem at(const EditMeasure& measure, Problem problem) const {
    if (!problem.where.empty()) return problem;  // another measure of this edit
    problem.where = measure.key;
    if (problem.code == ProblemCode::FormulaUnknownName)
      problem.values.emplace_back(names(measure));
    if (problem.code == ProblemCode::FormulaOutOfRange) {
      problem.values.emplace_back(limit(measure, measure.least));
      problem.values.emplace_back(limit(measure, measure.most));
    }
    return problem;
  }

  static ProblemValue limit(const EditMeasure& measure, std::int64_t raw) {
    if (measure.kind == ParameterKind::Length) return Length::nanometres(raw);
    return raw;
  }

  [[nodiscard]] Result<std::int64_t> rawOf(const EditMeasure& measure, std::string_view text,
                                           FormulaValue value) const {
    const Problem wrongUnit{ProblemCode::FormulaUnits, std::string(measure.key), {excerpt(text)}};
    if (measure.kind == ParameterKind::Length) {
      if (value.isLength) return value.raw;
      // A bare number; within 1e17 millionths by the range of formulas.
      if (std::abs(value.raw) > 100'000 * kMillion) return wrongUnit;
      return value.raw / kMillion * nanometresIn(unitless_) +
             value.raw % kMillion * (nanometresIn(unitless_) / 1000) / 1000;
    }
    if (value.isLength || value.raw % kMillion != 0) return wrongUnit;
    return value.raw / kMillion;
  }

  const EditKind& kind_;
  const Edit& edit_;
  const LengthNames& known_;
  Unit unitless_;
  std::set<std::string_view> open_;
};

}  // namespace

Result<Parameters> evaluateMeasures(const EditKind& kind, const Edit& edit,
                                    const LengthNames& known, Unit unitless) {
  for (const auto& [key, formula] : edit.measures)
    if (std::ranges::find(kind.measures, key, &EditMeasure::key) == kind.measures.end())
      return Problem{ProblemCode::UnknownParameter, edit.kind, {excerpt(key)}};
  Measures measures(kind, edit, known, unitless);
  Parameters values;
  for (const EditMeasure& measure : kind.measures) {
    if (measure.words) continue;
    const Result<std::int64_t> value = measures.valueOf(measure);
    if (!value) return value.problem();
    values.setCount(measure.key, *value);
  }
  return values;
}

}  // namespace creasewright
