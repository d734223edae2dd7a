#include "units/length_text.h"

#include <limits>
#include <string>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

constexpr std::int64_t k64th = 396'875;  // nm in 1/64 in: 25.4 mm / 64, exact

struct Reads {
  const char* text;
  std::int64_t nm;
};

std::string name(const ::testing::TestParamInfo<Reads>& info) {
  return "Text" + std::to_string(info.index);
}

class LengthReads : public ::testing::TestWithParam<Reads> {};

TEST_P(LengthReads, AsMillimetres) {
  const Result<Length> length = parseLength(GetParam().text, Unit::Millimetre);
  ASSERT_TRUE(length.ok()) << GetParam().text;
  EXPECT_EQ(length->nm(), GetParam().nm) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(
    EveryForm, LengthReads,
    ::testing::Values(
        Reads{"2 5/16 in", 148 * k64th}, Reads{"2-5/16\"", 148 * k64th},
        Reads{"2.3125 in", 148 * k64th}, Reads{"2.3125in", 148 * k64th},
        Reads{"2,3125 inch", 148 * k64th}, Reads{"2 5/16 INCHES", 148 * k64th},
        Reads{"  2   5/16  \"  ", 148 * k64th}, Reads{"2-5/16 in", 148 * k64th},
        Reads{"37/16 in", 148 * k64th}, Reads{"1/2\"", 32 * k64th}, Reads{"1/2\u2033", 32 * k64th},
        Reads{"1/2\u201D", 32 * k64th}, Reads{"2\u00BD in", 160 * k64th},
        Reads{"\u00BD in", 32 * k64th}, Reads{"2 \u215C\u2033", 152 * k64th},
        Reads{"2 5\u204416 in", 148 * k64th}, Reads{"2\u00A05/16\u00A0in", 148 * k64th},
        Reads{"2\u2075\u2044\u2081\u2086 in", 148 * k64th},
        Reads{"11\u2075\u00B9\u2044\u2086\u2084 in", 755 * k64th},
        Reads{"\u00B9\u2044\u2084 in", 16 * k64th}, Reads{"1/3 in", 8'466'667},
        Reads{"58.7 mm", 58'700'000}, Reads{"58,7mm", 58'700'000}, Reads{"5,87 cm", 58'700'000},
        Reads{"5.87cm", 58'700'000}, Reads{"5.87 CM", 58'700'000}, Reads{"58.7", 58'700'000},
        Reads{"1/2", 500'000}, Reads{"1 1/2 mm", 1'500'000}, Reads{".5", 500'000},
        Reads{"007", 7'000'000}, Reads{"0", 0}, Reads{"0/5", 0}, Reads{"-0", 0},
        Reads{"-2 5/16 in", -148 * k64th}, Reads{"\u22122.5 mm", -2'500'000},
        Reads{"+3 mm", 3'000'000}, Reads{"0.0000004 mm", 0}, Reads{"0.0000005 mm", 1},
        Reads{"0.00000049999999999999 mm", 0}, Reads{"100000 mm", 100'000'000'000},
        Reads{"-100000", -100'000'000'000}, Reads{"0.3333333333333333333333333 in", 8'466'667}),
    name);

TEST(LengthText, BareNumberIsInTheUnitAskedFor) {
  EXPECT_EQ(*parseLength("2 5/16", Unit::Inch), Length::inches(37, 16));
  EXPECT_EQ(*parseLength("2.5", Unit::Centimetre), Length::mm(25));
  EXPECT_EQ(*parseLength("2.5 mm", Unit::Inch), Length::mm(2.5));
}

class LengthRefuses : public ::testing::TestWithParam<const char*> {};

TEST_P(LengthRefuses, Nonsense) {
  const Result<Length> length = parseLength(GetParam(), Unit::Millimetre);
  ASSERT_FALSE(length.ok()) << GetParam();
  EXPECT_EQ(length.problem().code, ProblemCode::LengthUnreadable) << GetParam();
}

INSTANTIATE_TEST_SUITE_P(
    EveryKind, LengthRefuses,
    ::testing::Values("", " ", "abc", "5..2", "5.2.1", "5,2.1", "1,000.5", "1 2 3", "--3", "-+3",
                      "- 3", "1e9", "1e-3", "NaN", "nan", "inf", "infinity", "0x10", "5mm7",
                      "5mm mm", "5 in mm", "5\"\"", "mm", "in", "\"", "-", "/", "1/", "/2", "1/2/3",
                      "1/-2", "2 5/16 1/2", "2.5 1/2", "2 1.5/2", "1/2\u00BD", "5.", ".", ",",
                      "5. mm", "2--5/16", "2 -5/16", "2/", "\u215C\u215C", "5 m", "5 ft", "5km",
                      "1'000", "\xFF\xFE", "5\n", "~5", "5%", "five", "\u0665 mm",
                      "0000000000000000000000000000000000000000000000000000000000000000001"));

TEST(LengthText, RefusesZeroDenominator) {
  for (const char* text : {"1/0", "0/0", "2 5/0 in", "1/000"}) {
    const Result<Length> length = parseLength(text, Unit::Inch);
    ASSERT_FALSE(length.ok()) << text;
    EXPECT_EQ(length.problem().code, ProblemCode::LengthZeroDivision) << text;
  }
}

TEST(LengthText, RefusesBeyondAHundredMetres) {
  for (const char* text :
       {"100000.000001", "-100000.000001", "99999999999999999999999999", "10000000 in",
        "9999999999/1", "99999999999999999999/99999999999999999999", "4000 1/2 in"}) {
    const Result<Length> length = parseLength(text, Unit::Millimetre);
    ASSERT_FALSE(length.ok()) << text;
    EXPECT_EQ(length.problem().code, ProblemCode::LengthOutOfRange) << text;
  }
}

TEST(LengthText, ProblemShowsTheTextShortened) {
  const Result<Length> length = parseLength(std::string(5'000'000, '9'), Unit::Millimetre);
  ASSERT_FALSE(length.ok());
  EXPECT_LE(std::get<std::string>(length.problem().values.at(0)).size(), 64u);
  EXPECT_EQ(std::get<std::string>(parseLength("5..2", Unit::Inch).problem().values.at(0)), "5..2");
}

TEST(LengthText, NamesTheUnit) {
  EXPECT_EQ(unitNamed("2 5/16\""), Unit::Inch);
  EXPECT_EQ(unitNamed("5 mm "), Unit::Millimetre);
  EXPECT_EQ(unitNamed("5CM"), Unit::Centimetre);
  EXPECT_EQ(unitNamed("5"), std::nullopt);
  EXPECT_EQ(unitNamed(""), std::nullopt);
}

TEST(LengthText, WritesInchesToTheNearestFraction) {
  const LengthFormat sixteenths{.unit = Unit::Inch};
  EXPECT_EQ(formatLength(Length::inches(37, 16), sixteenths), "2 5/16 in");
  EXPECT_EQ(formatLength(Length::inches(1, 2), sixteenths), "1/2 in");
  EXPECT_EQ(formatLength(Length::inches(3), sixteenths), "3 in");
  EXPECT_EQ(formatLength(Length(), sixteenths), "0 in");
  EXPECT_EQ(formatLength(-Length::inches(37, 16), sixteenths), "-2 5/16 in");
  EXPECT_EQ(formatLength(Length::inches(37, 16), {.unit = Unit::Inch, .withUnit = false}),
            "2 5/16");
  EXPECT_EQ(formatLength(Length::inches(11, 32), {.unit = Unit::Inch, .denominator = 32}),
            "11/32 in");
  EXPECT_EQ(formatLength(Length::inches(11, 64), {.unit = Unit::Inch, .denominator = 64}),
            "11/64 in");
}

TEST(LengthText, MarksWhatIsNotExactlyThere) {
  const LengthFormat sixteenths{.unit = Unit::Inch};
  EXPECT_EQ(formatLength(Length::inches(11, 64), sixteenths), "~3/16 in");
  EXPECT_EQ(formatLength(Length::inches(37, 16) + Length::nanometres(1), sixteenths), "~2 5/16 in");
  EXPECT_EQ(formatLength(Length::nanometres(25'399'999), sixteenths), "~1 in");
  EXPECT_EQ(formatLength(Length::nanometres(-1), sixteenths), "~0 in");
  EXPECT_EQ(formatLength(Length::mm(50), sixteenths), "~1 15/16 in");  // 1.9685 in
  EXPECT_EQ(formatLength(Length::nanometres(58'704'999), {}), "~58.7 mm");
  EXPECT_EQ(formatLength(Length::nanometres(58'705'000), {}), "~58.71 mm");
  EXPECT_EQ(formatLength(Length::nanometres(-999'999), {}), "~-1 mm");
}

TEST(LengthText, WritesDecimalsWithoutTrailingZeros) {
  EXPECT_EQ(formatLength(Length::mm(58.7), {}), "58.7 mm");
  EXPECT_EQ(formatLength(Length::mm(58.07), {}), "58.07 mm");
  EXPECT_EQ(formatLength(Length::mm(100), {}), "100 mm");
  EXPECT_EQ(formatLength(Length::mm(-0.5), {}), "-0.5 mm");
  EXPECT_EQ(formatLength(Length::mm(58.7), {.unit = Unit::Centimetre, .decimalPoint = ','}),
            "5,87 cm");
  EXPECT_EQ(formatLength(Length::mm(58.7), {.decimals = 0}), "~59 mm");
  EXPECT_EQ(formatLength(Length::mm(58.7), {.decimals = 50}), "58.7 mm");
}

TEST(LengthText, WritesTheLargestNumbersThereAre) {
  const Length most = Length::nanometres(std::numeric_limits<std::int64_t>::max());
  const Length least = Length::nanometres(std::numeric_limits<std::int64_t>::min());
  EXPECT_EQ(formatLength(most, {.decimals = 6}), "9223372036854.775807 mm");
  EXPECT_EQ(formatLength(least, {.decimals = 6}), "-9223372036854.775808 mm");
  // 9223372036854775807 / 25400000 = 363124883340.7392 in, and 0.7392 x 64 = 47.3
  EXPECT_EQ(formatLength(most, {.unit = Unit::Inch, .denominator = 64}), "~363124883340 47/64 in");
}

TEST(LengthText, RoundTripsEverySixtyFourthUpToTwoMetres) {
  const LengthFormat format{.unit = Unit::Inch, .denominator = 64};
  for (std::int64_t i = 0; i * k64th <= 2'000'000'000; ++i) {
    for (const Length length : {Length::nanometres(i * k64th), Length::nanometres(-i * k64th)}) {
      const std::string text = formatLength(length, format);
      const Result<Length> read = parseLength(text, Unit::Millimetre);
      ASSERT_TRUE(read.ok()) << text;
      ASSERT_EQ(*read, length) << text;
      ASSERT_EQ(*parseLength(exactText(length), Unit::Inch), length) << exactText(length);
    }
  }
}

TEST(LengthText, RoundTripsEveryHundredthOfAMillimetreUpToTwoMetres) {
  const LengthFormat comma{.unit = Unit::Centimetre, .decimals = 3, .decimalPoint = ','};
  for (std::int64_t i = 0; i <= 200'000; ++i) {
    const Length length = Length::nanometres(i * 10'000);
    const std::string text = formatLength(length, {});
    ASSERT_EQ(*parseLength(text, Unit::Inch), length) << text;
    ASSERT_EQ(*parseLength(formatLength(length, comma), Unit::Inch), length) << text;
    ASSERT_EQ(*parseLength(exactText(-length), Unit::Inch), -length) << text;
  }
}

TEST(LengthText, ExactTextKeepsEveryNanometre) {
  EXPECT_EQ(exactText(Length::inches(37, 16)), "2 5/16 in");
  EXPECT_EQ(exactText(Length::mm(58.7)), "58.7 mm");
  EXPECT_EQ(exactText(Length::nanometres(1)), "0.000001 mm");
  for (std::int64_t nm = 999'990; nm < 1'000'010; ++nm)
    EXPECT_EQ(parseLength(exactText(Length::nanometres(nm)), Unit::Inch)->nm(), nm);
}

}  // namespace
}  // namespace creasewright
