#include "units/formula.h"

#include <array>
#include <cctype>
#include <cstdlib>
#include <limits>
#include <numeric>
#include <utility>

#include "base/digit.h"
#include "base/excerpt.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

constexpr std::int64_t kMost = 100'000'000'000;  // nm, as parseLength
constexpr int kDeepest = 40;                     // brackets in brackets

/// A fraction with its dimension: 0 a number, 1 a length in nanometres, -1 the inverse of one.
struct Quantity {
  std::int64_t over = 0;
  std::int64_t under = 1;
  int dimension = 0;
};

Problem told(ProblemCode code, std::string_view text) { return {code, {}, {excerpt(text)}}; }

bool isLetter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

/// In lowest terms; nothing when it leaves the range.
std::optional<Quantity> reduced(std::int64_t over, std::int64_t under, int dimension) {
  if (over == std::numeric_limits<std::int64_t>::min()) return std::nullopt;
  if (under < 0) {
    over = -over;
    under = -under;
  }
  const std::int64_t common = std::gcd(over, under);
  const Quantity q{over / common, under / common, dimension};
  if (q.over / q.under > kMost || q.over / q.under < -kMost) return std::nullopt;
  return q;
}

std::optional<Quantity> times(Quantity a, Quantity b) {
  const std::int64_t crossed = std::gcd(a.over, b.under);
  const std::int64_t other = std::gcd(b.over, a.under);
  if (crossed != 0) a.over /= crossed, b.under /= crossed;
  if (other != 0) b.over /= other, a.under /= other;
  std::int64_t over = 0;
  std::int64_t under = 0;
  if (__builtin_mul_overflow(a.over, b.over, &over) ||
      __builtin_mul_overflow(a.under, b.under, &under))
    return std::nullopt;
  return reduced(over, under, a.dimension + b.dimension);
}

std::optional<Quantity> plus(Quantity a, Quantity b) {
  std::int64_t left = 0;
  std::int64_t right = 0;
  std::int64_t over = 0;
  std::int64_t under = 0;
  if (__builtin_mul_overflow(a.over, b.under, &left) ||
      __builtin_mul_overflow(b.over, a.under, &right) ||
      __builtin_add_overflow(left, right, &over) ||
      __builtin_mul_overflow(a.under, b.under, &under))
    return std::nullopt;
  return reduced(over, under, a.dimension);
}

/// Reads by recursive descent: sums of products of signed terms.
class Reader {
 public:
  Reader(std::string_view text, const FormulaNames& names)
      : text_(text), rest_(text), names_(names) {}

  Result<Quantity> whole() {
    Result<Quantity> sum = readSum();
    skip();
    if (sum && !rest_.empty()) return told(ProblemCode::FormulaUnreadable, text_);
    return sum;
  }
  [[nodiscard]] bool heldLength() const { return heldLength_; }

 private:
  void skip() {
    while (!rest_.empty() && rest_.front() == ' ') rest_.remove_prefix(1);
  }
  bool take(std::string_view sign) {
    skip();
    if (!rest_.starts_with(sign)) return false;
    rest_.remove_prefix(sign.size());
    return true;
  }
  [[nodiscard]] Result<Quantity> ranged(std::optional<Quantity> q) const {
    if (!q) return told(ProblemCode::FormulaOutOfRange, text_);
    return *q;
  }

  Result<Quantity> readSum() {
    Result<Quantity> sum = readProduct();
    while (sum) {
      const bool minus = take("-") || take("−");
      if (!minus && !take("+")) return sum;
      const Result<Quantity> next = readProduct();
      if (!next) return next;
      if (next->dimension != sum->dimension) return told(ProblemCode::FormulaUnits, text_);
      Quantity term = *next;
      if (minus) term.over = -term.over;
      sum = ranged(plus(*sum, term));
    }
    return sum;
  }

  bool takeTimes() {
    if (take("*") || take("×")) return true;
    skip();  // the letter x, where no name begins with it
    if (rest_.size() < 2 || rest_[0] != 'x' || isLetter(rest_[1]) || rest_[1] == '-') return false;
    rest_.remove_prefix(1);
    return true;
  }

  Result<Quantity> readProduct() {
    Result<Quantity> product = readTerm();
    while (product) {
      const bool divided = take("/") || take("÷");
      if (!divided && !takeTimes()) return product;
      const Result<Quantity> next = readTerm();
      if (!next) return next;
      Quantity factor = *next;
      if (divided) {
        if (factor.over == 0) return told(ProblemCode::FormulaZeroDivision, text_);
        std::swap(factor.over, factor.under);
        factor.dimension = -factor.dimension;
      }
      const int dimension = product->dimension + factor.dimension;
      if (dimension < 0 || dimension > 1) return told(ProblemCode::FormulaUnits, text_);
      product = ranged(times(*product, factor));
    }
    return product;
  }

  Result<Quantity> readTerm() {
    if (++depth_ > kDeepest) return told(ProblemCode::FormulaUnreadable, text_);
    Result<Quantity> term = readSigned();
    --depth_;
    return term;
  }

  Result<Quantity> readSigned() {
    if (take("-") || take("−")) {
      Result<Quantity> term = readTerm();
      if (!term) return term;
      return Quantity{-term->over, term->under, term->dimension};
    }
    if (take("(")) {
      Result<Quantity> sum = readSum();
      if (sum && !take(")")) return told(ProblemCode::FormulaUnreadable, text_);
      return sum;
    }
    skip();
    if (rest_.empty()) return told(ProblemCode::FormulaUnreadable, text_);
    if (isDigit(rest_.front())) return readNumber();
    if (isLetter(rest_.front())) return readName();
    return told(ProblemCode::FormulaUnreadable, text_);
  }

  /// How much of the rest is a length with its unit: digits, at most one fraction, the unit.
  [[nodiscard]] std::size_t lengthAhead() const {
    std::size_t i = 0;
    const auto run = [&](auto&& holds) {
      const std::size_t from = i;
      while (i < rest_.size() && holds(rest_[i])) ++i;
      return i > from;
    };
    const auto blanks = [&] { run([](char c) { return c == ' '; }); };
    const auto unitHere = [&]() -> std::size_t {
      blanks();
      if (i < rest_.size() && rest_[i] == '"') return i + 1;
      const std::size_t from = i;
      run(isLetter);
      constexpr std::array<std::string_view, 4> kUnits{"mm", "cm", "in", "inch"};
      for (const std::string_view unit : kUnits)
        if (rest_.substr(from, i - from) == unit) return i;
      i = from;
      return 0;
    };
    run([](char c) { return isDigit(c) || c == '.' || c == ','; });
    if (const std::size_t end = unitHere()) return end;
    const std::size_t afterWhole = i;
    if (run(isDigit) && i < rest_.size() && rest_[i] == '/') {  // 2 5/16 in
      ++i;
      if (run(isDigit))
        if (const std::size_t end = unitHere()) return end;
    }
    i = afterWhole;
    if (i < rest_.size() && rest_[i] == '/') {  // 5/16 in
      ++i;
      blanks();
      if (run(isDigit))
        if (const std::size_t end = unitHere()) return end;
    }
    return 0;
  }

  Result<Quantity> readNumber() {
    if (const std::size_t size = lengthAhead()) {
      const Result<Length> length = parseLength(rest_.substr(0, size), Unit::Millimetre);
      if (!length) return told(lengthCode(length.problem().code), text_);
      rest_.remove_prefix(size);
      heldLength_ = true;
      return Quantity{length->nm(), 1, 1};
    }
    std::int64_t over = 0;
    std::int64_t under = 1;
    bool decimals = false;
    for (; !rest_.empty(); rest_.remove_prefix(1)) {
      const char c = rest_.front();
      if ((c == '.' || c == ',') && !decimals) {
        decimals = true;
        continue;
      }
      if (!isDigit(c)) break;
      over = over * 10 + (c - '0');
      if (decimals) under *= 10;
      if (over > kMost || under > kMost) return told(ProblemCode::FormulaOutOfRange, text_);
    }
    return ranged(reduced(over, under, 0));
  }

  static ProblemCode lengthCode(ProblemCode code) {
    if (code == ProblemCode::LengthZeroDivision) return ProblemCode::FormulaZeroDivision;
    if (code == ProblemCode::LengthOutOfRange) return ProblemCode::FormulaOutOfRange;
    return ProblemCode::FormulaUnreadable;
  }

  /// The longest name that is known: `depth-width` is a name or a difference.
  Result<Quantity> readName() {
    std::size_t end = 0;
    while (end < rest_.size() &&
           (isLetter(rest_[end]) ||
            (end > 0 && (isDigit(rest_[end]) || (rest_[end] == '-' && end + 1 < rest_.size() &&
                                                 isLetter(rest_[end + 1]))))))
      ++end;
    const std::string_view longest = rest_.substr(0, end);
    for (std::string_view name = longest; !name.empty();) {
      if (const auto length = names_(name)) {
        if (!*length) return length->problem();
        rest_.remove_prefix(name.size());
        heldLength_ = true;
        return Quantity{(*length)->nm(), 1, 1};
      }
      const std::size_t dash = name.rfind('-');
      name = dash == std::string_view::npos ? std::string_view() : name.substr(0, dash);
    }
    return told(ProblemCode::FormulaUnknownName, longest);
  }

  std::string_view text_;
  std::string_view rest_;
  const FormulaNames& names_;
  int depth_ = 0;
  bool heldLength_ = false;
};

/// Halves away from zero.
std::int64_t rounded(Quantity q) {
  const std::int64_t part = q.over % q.under;
  const std::int64_t whole = q.over / q.under;
  if (std::abs(part) < q.under - std::abs(part)) return whole;
  return q.over < 0 ? whole - 1 : whole + 1;
}

}  // namespace

Result<FormulaValue> evaluateFormula(std::string_view text, const FormulaNames& names) {
  Reader reader(text, names);
  const Result<Quantity> value = reader.whole();
  if (!value) return value.problem();
  const bool isLength = value->dimension == 1;
  if (!isLength && (value->dimension != 0 || reader.heldLength()))
    return told(ProblemCode::FormulaUnits, text);
  if (isLength) return FormulaValue{true, rounded(*value)};
  // A bare number is a length in some unit or a count: told in millionths, exact for both.
  const std::optional<Quantity> millionths = times(*value, {1'000'000, 1, 0});
  if (!millionths) return told(ProblemCode::FormulaOutOfRange, text);
  return FormulaValue{false, rounded(*millionths)};
}

}  // namespace creasewright
