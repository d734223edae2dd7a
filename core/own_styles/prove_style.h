#pragma once

#include <vector>

#include "document/build.h"

namespace creasewright {

/// A product that a style was tried on.
struct StyleTrial {
  Product product;
  Problems problems;  ///< everything that `check` tells of the design

  /// Whether every check holds; warnings do not count.
  [[nodiscard]] bool holds() const { return onlyWarnings(problems); }
};

/// The products to try a style on: the smallest and the largest that it suits, one between, and the
/// largest on each axis with the smallest on the others; without sizes, four boxes of other
/// proportions.
std::vector<Product> productsToTry(const OwnStyle& style);

/// A new design of the style for each of these products, with everything that is wrong in it.
std::vector<StyleTrial> tryStyle(const OwnStyle& style, const std::vector<Product>& products,
                                 const Card& card, Ease ease, ToolGrid grid);

}  // namespace creasewright
