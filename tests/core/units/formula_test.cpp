#include "units/formula.h"

#include <map>

#include <gtest/gtest.h>

#include "units/millimetres.h"

namespace creasewright {
namespace {

Result<FormulaValue> evaluated(std::string_view text) {
  const std::map<std::string, Length, std::less<>> known{
      {"depth", mm(25)}, {"side-margin", mm(4)}, {"side", mm(7)}, {"width", mm(60)}};
  return evaluateFormula(text, [&](std::string_view name) -> std::optional<Result<Length>> {
    const auto found = known.find(name);
    if (found == known.end()) return std::nullopt;
    return Result<Length>(found->second);
  });
}

void expectLength(std::string_view text, Length length) {
  const Result<FormulaValue> value = evaluated(text);
  ASSERT_TRUE(value) << text;
  EXPECT_TRUE(value->isLength) << text;
  EXPECT_EQ(value->raw, length.nm()) << text;
}

void expectProblem(std::string_view text, ProblemCode code) {
  const Result<FormulaValue> value = evaluated(text);
  ASSERT_FALSE(value) << text;
  EXPECT_EQ(codeName(value.problem().code), codeName(code)) << text;
}

TEST(Formula, ReadsLengthsNamesAndArithmetic) {
  expectLength("depth / 2 - 3 mm", mm(9.5));
  expectLength("width - 2 * 6 mm", mm(48));
  expectLength("width - 2 x 6mm", mm(48));
  expectLength("-(depth - 30 mm) × 2", mm(10));
  expectLength("2 5/16 in + 1/16 in", Length::inches(19, 8));
  expectLength("5,5 cm", mm(55));
}

TEST(Formula, TakesTheLongestNameThatIsKnown) {
  expectLength("side-margin", mm(4));
  expectLength("width-side", mm(53));
  expectLength("depth-3 mm", mm(22));
}

TEST(Formula, RoundsOnceToAWholeNanometre) {
  expectLength("1 mm / 3", Length::nanometres(333'333));
  expectLength("1 mm / 3 * 3", mm(1));
  expectLength("0.000001 mm / 2", Length::nanometres(1));
  expectLength("-0.000001 mm / 2", Length::nanometres(-1));
  expectLength("depth / width * 6 mm", mm(2.5));
}

TEST(Formula, TellsPlainNumbersInMillionths) {
  const Result<FormulaValue> value = evaluated("2 + 1 / 2");
  ASSERT_TRUE(value);
  EXPECT_FALSE(value->isLength);
  EXPECT_EQ(value->raw, 2'500'000);
}

TEST(Formula, RefusesWhatHasNoSense) {
  expectProblem("depth - 3", ProblemCode::FormulaUnits);
  expectProblem("depth * width", ProblemCode::FormulaUnits);
  expectProblem("2 / depth", ProblemCode::FormulaUnits);
  expectProblem("depth / width", ProblemCode::FormulaUnits);
  expectProblem("depth / 0", ProblemCode::FormulaZeroDivision);
  expectProblem("depth / (3 - 3)", ProblemCode::FormulaZeroDivision);
  expectProblem("1/0 in", ProblemCode::FormulaZeroDivision);
  expectProblem("height", ProblemCode::FormulaUnknownName);
  expectProblem("1000 m", ProblemCode::FormulaUnreadable);
  expectProblem("100000 mm * 100000", ProblemCode::FormulaOutOfRange);
  expectProblem("9999999999999999999999", ProblemCode::FormulaOutOfRange);
  expectProblem("", ProblemCode::FormulaUnreadable);
  expectProblem("(depth", ProblemCode::FormulaUnreadable);
  expectProblem("depth)", ProblemCode::FormulaUnreadable);
  expectProblem("depth +", ProblemCode::FormulaUnreadable);
  expectProblem(std::string(5000, '('), ProblemCode::FormulaUnreadable);
  expectProblem(std::string(5000, '-') + "1", ProblemCode::FormulaUnreadable);
}

// The range is 100 m, the end included.
TEST(Formula, TheLongestLengthIsALength) {
  expectLength("100000 mm", mm(100'000));
  expectLength("50000 mm + 50000 mm", mm(100'000));
  expectProblem("50000 mm + 50000.000001 mm", ProblemCode::FormulaOutOfRange);
  expectLength("100000000000 / 100000000000 * 5 mm", mm(5));
  expectProblem("100000000001 / 100000000001 * 5 mm", ProblemCode::FormulaOutOfRange);
}

}  // namespace
}  // namespace creasewright
