#include "fit/card.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <vector>

#include "base/near_texts.h"
#include "units/length_text.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

constexpr Length kThinnest = mm(0.01);
constexpr Length kPoint = mm(0.0254);  // 1/1000 in

Card stock(const char* id, const char* name, int grams, std::int64_t micrometres) {
  return {id, name, Length::nanometres(micrometres * 1000), static_cast<double>(grams)};
}

// The first is the one a new design takes. resources/card_stock.json says where each figure comes
// from; a test keeps the two alike.
const std::vector<Card>& listed() {
  static const std::vector<Card> kCards{
      stock("cover-65lb", "65 lb cover", 176, 240),
      stock("cover-80lb", "80 lb cover", 216, 290),
      stock("cover-100lb", "100 lb cover", 270, 370),
      stock("cover-110lb", "110 lb cover", 297, 390),
      stock("index-90lb", "90 lb index", 165, 190),
      stock("index-110lb", "110 lb index", 200, 230),
      stock("index-140lb", "140 lb index", 255, 290),
      stock("index-170lb", "170 lb index", 305, 350),
      stock("folder-150lb", "150 lb folder stock", 245, 280),
      stock("coated-10pt", "10 pt coated cover", 0, 254),
      stock("coated-12pt", "12 pt coated cover", 0, 305),
      stock("card-220gsm", "220 g/m\u00B2 card", 220, 297),
      stock("card-300gsm", "300 g/m\u00B2 card", 300, 405),
      stock("grey-board-1.5mm", "1.5 mm grey board", 970, 1500),
  };
  return kCards;
}

/// A number above zero; a comma or a point separates decimals.
std::optional<double> positiveNumber(std::string_view text) {
  std::string point(text);
  std::ranges::replace(point, ',', '.');
  double number = 0;
  const char* end = point.data() + point.size();
  const auto result = std::from_chars(point.data(), end, number, std::chars_format::fixed);
  if (result.ec != std::errc() || result.ptr != end) return std::nullopt;
  if (!std::isfinite(number) || number <= 0) return std::nullopt;
  return number;
}

/// `300gsm` or `300gsm@1.3`.
std::optional<Card> byWeight(std::string_view text) {
  const std::size_t unit = text.find("gsm");
  if (unit == std::string_view::npos) return std::nullopt;
  const std::string_view after = text.substr(unit + 3);
  if (!after.empty() && after.front() != '@') return std::nullopt;
  const std::optional<double> grams = positiveNumber(text.substr(0, unit));
  const std::optional<double> bulk = after.empty() ? kUsualBulk : positiveNumber(after.substr(1));
  if (!grams || !bulk || *grams > kHeaviestCard || *bulk > kHeaviestCard) return std::nullopt;
  std::string name = std::string(text.substr(0, unit)) + " g/m\u00B2";
  return Card{std::string(text), std::move(name), caliper(*grams, *bulk), *grams};
}

/// `12pt`.
std::optional<Card> byPoints(std::string_view text) {
  if (!text.ends_with("pt")) return std::nullopt;
  const std::string_view count = text.substr(0, text.size() - 2);
  const std::optional<double> points = positiveNumber(count);
  if (!points || *points > kHeaviestCard) return std::nullopt;
  return Card{std::string(text), std::string(count) + " pt", Length::mm(*points * kPoint.mm()), 0};
}

/// `0.3mm`, or any length with its unit.
std::optional<Card> byThickness(std::string_view text) {
  if (!unitNamed(text)) return std::nullopt;
  const Result<Length> thickness = parseLength(text, Unit::Millimetre);
  if (!thickness) return std::nullopt;
  std::string name = formatLength(*thickness, {.unit = Unit::Millimetre, .decimals = 6});
  return Card{std::string(text), std::move(name), *thickness, 0};
}

std::optional<Card> byMeasure(std::string_view text) {
  std::string close(text);
  std::erase(close, ' ');
  if (std::optional<Card> card = byWeight(close)) return card;
  if (std::optional<Card> card = byPoints(close)) return card;
  return byThickness(text);  // as it is: the blank in `1 1/64 in` counts
}

Problem unknown(std::string_view text) {
  std::vector<Spelled> known;
  for (const Card& card : listed()) known.push_back({card.id, card.name});
  return unknownAmong(ProblemCode::CardUnknown, text, known);
}

}  // namespace

std::span<const Card> cards() { return listed(); }

Result<Card> findCard(std::string_view text) {
  const auto found = std::ranges::find(listed(), text, &Card::id);
  if (found != listed().end()) return *found;
  std::optional<Card> card = byMeasure(text);
  if (!card || card->caliper < kThinnest) return unknown(text);
  if (card->caliper > kThickestCard)
    return Problem{ProblemCode::CardTooThick, {}, {card->caliper, kThickestCard}};
  return std::move(*card);
}

double grammage(double pounds, Length width, Length height) {
  constexpr double kGramsPerPound = 453.59237;  // exact by definition
  constexpr double kSheets = 500;
  const double squareMetres = width.mm() * height.mm() / 1e6;
  return pounds * kGramsPerPound / (kSheets * squareMetres);
}

Length caliper(double grammage, double bulk) { return Length::mm(grammage * bulk / 1000); }

}  // namespace creasewright
