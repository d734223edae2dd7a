#include "units/length_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <numeric>
#include <utility>

#include "base/digit.h"
#include "base/excerpt.h"

namespace creasewright {
namespace {

constexpr std::int64_t kFarthest = 100'000'000'000;    // nm: 100 m
constexpr std::int64_t kLargestPart = 10'000'000'000;  // keeps every product below in 64 bits
constexpr std::size_t kDecimalsRead = 11;              // an inch to 1e-11 is far below a nanometre
constexpr std::size_t kLongestText = 64;

constexpr std::string_view suffix(Unit unit) {
  switch (unit) {
    case Unit::Millimetre:
      return " mm";
    case Unit::Centimetre:
      return " cm";
    case Unit::Inch:
      return " in";
  }
  return "";
}

constexpr std::array<std::pair<std::string_view, Unit>, 6> kUnitWords{{
    {"inches", Unit::Inch},
    {"inch", Unit::Inch},
    {"in", Unit::Inch},
    {"\"", Unit::Inch},
    {"mm", Unit::Millimetre},
    {"cm", Unit::Centimetre},
}};

constexpr std::array<std::pair<std::string_view, std::string_view>, 11> kPlainSigns{{
    {"\u2033", "\""},  // double prime
    {"\u201D", "\""},  // closing quotation mark
    {"\u201C", "\""},  // opening quotation mark
    {"\u2044", "/"},   // fraction slash
    {"\u2212", "-"},   // minus
    {"\u2013", "-"},   // en dash
    {"\u2011", "-"},   // non-breaking hyphen
    {"\u00A0", " "},   // non-breaking blank
    {"\u202F", " "},   // narrow non-breaking blank
    {"\u2009", " "},   // thin blank
    {"\t", " "},
}};

constexpr std::array<std::pair<std::string_view, std::string_view>, 7> kFractionSigns{{
    {"\u00BC", "1/4"},
    {"\u00BD", "1/2"},
    {"\u00BE", "3/4"},
    {"\u215B", "1/8"},
    {"\u215C", "3/8"},
    {"\u215D", "5/8"},
    {"\u215E", "7/8"},
}};

/// Digits over and under a fraction slash, as we print them ourselves.
constexpr std::array<std::pair<std::string_view, std::string_view>, 10> kRaisedDigits{{
    {"\u2070", "0"},
    {"\u00B9", "1"},
    {"\u00B2", "2"},
    {"\u00B3", "3"},
    {"\u2074", "4"},
    {"\u2075", "5"},
    {"\u2076", "6"},
    {"\u2077", "7"},
    {"\u2078", "8"},
    {"\u2079", "9"},
}};
constexpr std::array<std::pair<std::string_view, std::string_view>, 10> kLoweredDigits{{
    {"\u2080", "0"},
    {"\u2081", "1"},
    {"\u2082", "2"},
    {"\u2083", "3"},
    {"\u2084", "4"},
    {"\u2085", "5"},
    {"\u2086", "6"},
    {"\u2087", "7"},
    {"\u2088", "8"},
    {"\u2089", "9"},
}};

template <class Table>
const auto* signAt(const Table& table, std::string_view text) {
  const auto found = std::ranges::find_if(
      table, [text](const auto& entry) { return text.starts_with(entry.first); });
  return found == table.end() ? nullptr : &*found;
}

/// The text in ASCII and small letters, as far as it has such a form.
std::string plain(std::string_view text) {
  std::string result;
  bool raised = false;  // within the numerator of a set fraction
  while (!text.empty()) {
    const bool wasRaised = std::exchange(raised, false);
    if (const auto* digit = signAt(kRaisedDigits, text)) {
      if (!wasRaised && !result.empty() && isDigit(result.back())) result += ' ';
      result += digit->second;
      text.remove_prefix(digit->first.size());
      raised = true;
    } else if (const auto* lowered = signAt(kLoweredDigits, text)) {
      result += lowered->second;
      text.remove_prefix(lowered->first.size());
    } else if (const auto* fraction = signAt(kFractionSigns, text)) {
      if (!result.empty() && isDigit(result.back())) result += ' ';
      result += fraction->second;
      text.remove_prefix(fraction->first.size());
    } else if (const auto* sign = signAt(kPlainSigns, text)) {
      result += sign->second;
      text.remove_prefix(sign->first.size());
    } else {
      const char c = text.front();
      result += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
      text.remove_prefix(1);
    }
  }
  return result;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

std::optional<Unit> takeUnit(std::string_view& text) {
  for (const auto& [word, unit] : kUnitWords)
    if (text.ends_with(word)) {
      text = trimmed(text.substr(0, text.size() - word.size()));
      return unit;
    }
  return std::nullopt;
}

enum class Reading { Read, Unreadable, TooLarge, ZeroDivision };

/// Reads `text`, all digits, into `number`.
Reading readWhole(std::string_view text, std::int64_t& number) {
  if (text.empty() || !std::ranges::all_of(text, isDigit)) return Reading::Unreadable;
  const auto result = std::from_chars(text.data(), text.data() + text.size(), number);
  if (result.ec != std::errc() || number > kLargestPart) return Reading::TooLarge;
  return Reading::Read;
}

/// `5/16` of a unit of `unit` nanometres, to the nearest nanometre.
Reading readFraction(std::string_view text, std::int64_t unit, std::int64_t& nm) {
  const std::size_t bar = text.find('/');
  if (bar == std::string_view::npos) return Reading::Unreadable;
  std::int64_t numerator = 0;
  std::int64_t denominator = 0;
  const Reading upper = readWhole(text.substr(0, bar), numerator);
  const Reading lower = readWhole(text.substr(bar + 1), denominator);
  if (upper == Reading::Unreadable || lower == Reading::Unreadable) return Reading::Unreadable;
  if (upper != Reading::Read || lower != Reading::Read) return Reading::TooLarge;
  if (denominator == 0) return Reading::ZeroDivision;
  nm = (numerator * unit + denominator / 2) / denominator;
  return Reading::Read;
}

/// `2.3125`, `5,87`, `.5` or `2` units of `unit` nanometres, to the nearest nanometre.
Reading readDecimal(std::string_view text, std::int64_t unit, std::int64_t& nm) {
  const std::size_t point = text.find_first_of(".,");
  std::int64_t whole = 0;
  const std::string_view before = text.substr(0, point);
  if (!before.empty() || point == std::string_view::npos)
    if (const Reading read = readWhole(before, whole); read != Reading::Read) return read;
  if (whole > kLongestRoll.nm() / unit) return Reading::TooLarge;
  nm = whole * unit;
  if (point == std::string_view::npos) return Reading::Read;

  std::string_view decimals = text.substr(point + 1);
  if (decimals.empty() || !std::ranges::all_of(decimals, isDigit)) return Reading::Unreadable;
  decimals = decimals.substr(0, kDecimalsRead);
  std::int64_t part = 0;
  std::from_chars(decimals.data(), decimals.data() + decimals.size(), part);
  std::int64_t scale = 1;
  for (std::size_t i = 0; i < decimals.size(); ++i) scale *= 10;
  nm += (part * unit + scale / 2) / scale;
  return Reading::Read;
}

/// `2 5/16` or `2-5/16`; the blank or the hyphen is at `gap`.
Reading readMixed(std::string_view text, std::size_t gap, std::int64_t unit, std::int64_t& nm) {
  std::int64_t whole = 0;
  if (const Reading read = readWhole(text.substr(0, gap), whole); read != Reading::Read)
    return read;
  if (whole > kLongestRoll.nm() / unit) return Reading::TooLarge;
  std::string_view rest = text.substr(gap);
  rest = rest.front() == '-' ? rest.substr(1) : trimmed(rest);
  const Reading read = readFraction(rest, unit, nm);
  nm += whole * unit;
  return read;
}

Reading readMagnitude(std::string_view text, std::int64_t unit, std::int64_t& nm) {
  if (const std::size_t gap = text.find_first_of(" -"); gap != std::string_view::npos)
    return readMixed(text, gap, unit, nm);
  if (text.find('/') != std::string_view::npos) return readFraction(text, unit, nm);
  return readDecimal(text, unit, nm);
}

Problem lengthProblem(Reading reading, std::string_view text) {
  ProblemCode code = ProblemCode::LengthUnreadable;
  if (reading == Reading::TooLarge) code = ProblemCode::LengthOutOfRange;
  if (reading == Reading::ZeroDivision) code = ProblemCode::LengthZeroDivision;
  return {code, {}, {excerpt(text)}};
}

std::string digits(std::uint64_t number) {
  std::array<char, 20> buffer{};
  const auto result = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number);
  return {buffer.data(), result.ptr};
}

/// A length as whole steps of a unit cut into `parts`, nearest, halves away from zero.
struct Steps {
  bool negative = false;
  bool exact = true;
  std::uint64_t whole = 0;  ///< units
  std::uint64_t part = 0;   ///< steps beyond them, less than `parts`
};

Steps stepsIn(Length length, std::uint64_t unit, std::uint64_t parts) {
  Steps steps;
  steps.negative = length.nm() < 0;
  // Negated as unsigned, so that the most negative number has a magnitude too.
  const auto bits = static_cast<std::uint64_t>(length.nm());
  const std::uint64_t magnitude = steps.negative ? 0 - bits : bits;
  const std::uint64_t rest = magnitude % unit * parts;
  steps.whole = magnitude / unit;
  steps.part = (rest + unit / 2) / unit;
  steps.exact = rest % unit == 0;
  if (steps.part == parts) {
    steps.part = 0;
    ++steps.whole;
  }
  if (steps.whole == 0 && steps.part == 0) steps.negative = false;
  return steps;
}

std::string fractionText(const Steps& steps, std::uint64_t parts) {
  if (steps.part == 0) return digits(steps.whole);
  const std::uint64_t common = std::gcd(steps.part, parts);
  const std::string fraction = digits(steps.part / common) + "/" + digits(parts / common);
  return steps.whole == 0 ? fraction : digits(steps.whole) + " " + fraction;
}

std::string decimalText(const Steps& steps, int decimals, char point) {
  std::string part = digits(steps.part);
  part.insert(0, static_cast<std::size_t>(decimals) - std::min<std::size_t>(part.size(), decimals),
              '0');
  while (!part.empty() && part.back() == '0') part.pop_back();
  return part.empty() ? digits(steps.whole) : digits(steps.whole) + point + part;
}

Result<Length> parseWithin(std::int64_t farthest, std::string_view text, Unit unitless) {
  if (text.size() > kLongestText) return lengthProblem(Reading::Unreadable, text);
  const std::string ascii = plain(text);
  std::string_view rest = trimmed(ascii);
  const Unit unit = takeUnit(rest).value_or(unitless);
  const bool negative = rest.starts_with('-');
  if (negative || rest.starts_with('+')) rest.remove_prefix(1);

  std::int64_t nm = 0;
  Reading reading = readMagnitude(rest, nanometresIn(unit), nm);
  if (reading == Reading::Read && nm > farthest) reading = Reading::TooLarge;
  if (reading != Reading::Read) return lengthProblem(reading, text);
  return Length::nanometres(negative ? -nm : nm);
}

}  // namespace

std::optional<Unit> unitNamed(std::string_view text) {
  const std::string ascii = plain(text);
  std::string_view rest = trimmed(ascii);
  return takeUnit(rest);
}

Result<Length> parseLength(std::string_view text, Unit unitless) {
  return parseWithin(kFarthest, text, unitless);
}

Result<Length> parseRoll(std::string_view text, Unit unitless) {
  for (const auto& [unit, inUnit] : {std::pair{std::string_view("m"), std::int64_t{1000}},
                                     std::pair{std::string_view("yd"), std::int64_t{36}}}) {
    std::string_view number = trimmed(text);
    if (!number.ends_with(unit)) continue;
    number = trimmed(number.substr(0, number.size() - unit.size()));
    if (number.empty() || !(isDigit(number.back()) || number.back() == '.')) continue;
    // A metre is a thousand millimetres, a yard is 36 inches.
    const Result<Length> read = parseLength(number, unit == "m" ? Unit::Millimetre : Unit::Inch);
    if (!read) return Problem{read.problem().code, {}, {excerpt(text)}};
    if (read->nm() > kLongestRoll.nm() / inUnit) return lengthProblem(Reading::TooLarge, text);
    return *read * inUnit;
  }
  return parseWithin(kLongestRoll.nm(), text, unitless);
}

std::string formatLength(Length length, const LengthFormat& format) {
  const auto unit = static_cast<std::uint64_t>(nanometresIn(format.unit));
  const int decimals = std::clamp(format.decimals, 0, 9);
  std::uint64_t parts = 1;
  if (format.unit == Unit::Inch)
    parts = static_cast<std::uint64_t>(std::max(1, format.denominator));
  else
    for (int i = 0; i < decimals; ++i) parts *= 10;

  const Steps steps = stepsIn(length, unit, parts);
  std::string text = steps.exact ? "" : "~";
  if (steps.negative) text += '-';
  text += format.unit == Unit::Inch ? fractionText(steps, parts)
                                    : decimalText(steps, decimals, format.decimalPoint);
  if (format.withUnit) text += suffix(format.unit);
  return text;
}

std::string exactText(Length length) {
  const bool inches = length.nm() % Length::inches(1, 64).nm() == 0;
  return formatLength(
      length, {.unit = inches ? Unit::Inch : Unit::Millimetre, .denominator = 64, .decimals = 6});
}

std::string rollText(Length length) {
  for (const auto& [unit, nm] : {std::pair{" m", std::int64_t{1'000'000'000}},
                                 std::pair{" yd", 36 * nanometresIn(Unit::Inch)}})
    if (length.nm() != 0 && length.nm() % nm == 0) return std::to_string(length.nm() / nm) + unit;
  return exactText(length);
}

}  // namespace creasewright
