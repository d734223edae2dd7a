#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/colour.h"
#include "base/result.h"
#include "styles/style.h"
#include "units/length.h"

namespace creasewright {

enum class ProductShape { Box, Cylinder, Sphere, Tube, Card };

/// What goes in. The three sizes bound the product: box length x width x height; cylinder diameter,
/// diameter, height; sphere three diameters; tube (flat crimp at one end) crimp width, body
/// thickness, length; card width, height, thickness.
struct Product {
  ProductShape shape = ProductShape::Box;
  Length length;
  Length width;
  Length height;
  std::optional<Colour> colour = {};  ///< in pictures; without one a pale green
  bool operator==(const Product&) const = default;
};

/// Reads `box:60x35x120mm`, `cylinder:40x120mm`, `sphere:42.7mm`, `tube:35x20x110mm`,
/// `card:85.6x54x0.76mm`; lengths in any form parseLength knows, separated by `x`; a unit after the
/// last one serves for those without. A colour may follow: `sphere:42.7mm:sage`, `…:#9AAF90`. Sides
/// from 0.1 mm to 1 m. Errors: ProductUnreadable, ProductTooLarge, ProductTooSmall, ColourUnknown.
Result<Product> parseProduct(std::string_view text);

/// Exact text that parseProduct reads back.
std::string productText(const Product& product);

}  // namespace creasewright
