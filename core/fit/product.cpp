#include "fit/product.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "base/excerpt.h"
#include "fit/card_colours.h"
#include "units/length_text.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

constexpr Length kSmallest = mm(0.1);
constexpr Length kLargest = mm(1000);  // 1 m

struct ShapeWord {
  std::string_view word;
  ProductShape shape;
  std::size_t sizes;  ///< how many lengths follow
};

constexpr std::array<ShapeWord, 5> kShapes{{
    {"box", ProductShape::Box, 3},
    {"cylinder", ProductShape::Cylinder, 2},
    {"sphere", ProductShape::Sphere, 1},
    {"tube", ProductShape::Tube, 3},
    {"card", ProductShape::Card, 3},
}};

Problem unreadable(std::string_view text) {
  return {ProblemCode::ProductUnreadable, {}, {excerpt(text)}};
}

/// The parts between the `x` or multiplication signs.
std::vector<std::string_view> partsOf(std::string_view text) {
  constexpr std::string_view kTimes = "\u00D7";
  std::vector<std::string_view> parts;
  std::size_t start = 0;
  for (std::size_t i = 0; i < text.size();) {
    const bool times = text.substr(i).starts_with(kTimes);
    const std::size_t size = times ? kTimes.size() : 1;
    if (times || text[i] == 'x' || text[i] == 'X') {
      parts.push_back(text.substr(start, i - start));
      start = i + size;
    }
    i += size;
  }
  parts.push_back(text.substr(start));
  return parts;
}

std::optional<Problem> outOfBounds(Length size) {
  if (size < kSmallest) return Problem{ProblemCode::ProductTooSmall, {}, {size, kSmallest}};
  if (size > kLargest) return Problem{ProblemCode::ProductTooLarge, {}, {size, kLargest}};
  return std::nullopt;
}

Product shaped(ProductShape shape, const std::vector<Length>& sizes) {
  switch (shape) {
    case ProductShape::Cylinder:
      return {shape, sizes[0], sizes[0], sizes[1]};
    case ProductShape::Sphere:
      return {shape, sizes[0], sizes[0], sizes[0]};
    case ProductShape::Box:
    case ProductShape::Tube:
    case ProductShape::Card:
      break;
  }
  return {shape, sizes[0], sizes[1], sizes[2]};
}

std::vector<Length> sizesOf(const Product& product) {
  switch (product.shape) {
    case ProductShape::Cylinder:
      return {product.width, product.height};
    case ProductShape::Sphere:
      return {product.height};
    case ProductShape::Box:
    case ProductShape::Tube:
    case ProductShape::Card:
      break;
  }
  return {product.length, product.width, product.height};
}

}  // namespace

Result<Product> parseProduct(std::string_view text) {
  const std::size_t colon = text.find(':');
  const auto shape = std::ranges::find(kShapes, text.substr(0, colon), &ShapeWord::word);
  if (colon == std::string_view::npos || shape == kShapes.end()) return unreadable(text);
  std::string_view sizesText = text.substr(colon + 1);
  std::optional<Colour> colour;
  if (const std::size_t second = sizesText.find(':'); second != std::string_view::npos) {
    const Result<Colour> read = parseColour(sizesText.substr(second + 1));
    if (!read) return read.problem();
    colour = *read;
    sizesText = sizesText.substr(0, second);
  }
  const std::vector<std::string_view> parts = partsOf(sizesText);
  if (parts.size() != shape->sizes) return unreadable(text);

  const Unit unit = unitNamed(parts.back()).value_or(Unit::Millimetre);
  std::vector<Length> sizes;
  for (const std::string_view part : parts) {
    const Result<Length> size = parseLength(part, unit);
    if (!size) return unreadable(text);
    if (std::optional<Problem> problem = outOfBounds(*size)) return std::move(*problem);
    sizes.push_back(*size);
  }
  Product product = shaped(shape->shape, sizes);
  product.colour = colour;
  return product;
}

std::string productText(const Product& product) {
  const std::vector<Length> sizes = sizesOf(product);
  const bool inches = std::ranges::all_of(
      sizes, [](Length size) { return size.nm() % Length::inches(1, 64).nm() == 0; });
  const LengthFormat format{.unit = inches ? Unit::Inch : Unit::Millimetre,
                            .denominator = 64,
                            .decimals = 6,
                            .withUnit = false};
  const auto shape = std::ranges::find(kShapes, product.shape, &ShapeWord::shape);
  std::string text(shape->word);
  char separator = ':';
  for (const Length size : sizes) {
    text += separator + formatLength(size, format);
    separator = 'x';
  }
  text += inches ? "in" : "mm";
  return product.colour ? text + ':' + hexText(*product.colour) : text;
}

}  // namespace creasewright
