#include "edits/kinds/edit_units.h"

#include <string>
#include <string_view>

#include "edits/kinds/edit_kind.h"
#include "units/formula.h"

namespace creasewright {
namespace {

std::string_view unitText(Unit unit) {
  switch (unit) {
    case Unit::Millimetre:
      return "mm";
    case Unit::Centimetre:
      return "cm";
    case Unit::Inch:
      return "in";
  }
  return {};
}

}  // namespace

std::string withUnit(const std::string& formula, Unit unit) {
  const FormulaNames lengths = [](std::string_view) -> std::optional<Result<Length>> {
    return Result<Length>(Length::mm(7));
  };
  const Result<FormulaValue> value = evaluateFormula(formula, lengths);
  if (!value || value->isLength) return formula;
  const bool plain = formula.find_first_not_of("0123456789.,/ ") == std::string::npos;
  const std::string number = plain ? formula : "(" + formula + ")";
  return number + (plain ? " " : " * 1 ") + std::string(unitText(unit));
}

Edit withUnits(Edit edit, Unit unit) {
  const Result<const EditKind*> kind = findEditKind(edit.kind);
  if (!kind) return edit;
  for (const EditMeasure& measure : (*kind)->measures) {
    const auto written = edit.measures.find(measure.key);
    if (written == edit.measures.end() || measure.words) continue;
    if (measure.kind == ParameterKind::Length) written->second = withUnit(written->second, unit);
  }
  return edit;
}

}  // namespace creasewright
