#pragma once

#include <string>
#include <vector>

#include "fit/product.h"
#include "styles/style.h"

namespace creasewright {

enum class Ease { Snug, Easy, Loose };

/// Error: EaseUnknown.
Result<Ease> parseEase(std::string_view text);
std::string_view easeText(Ease ease);

/// Room added to each side of a product, both sides together.
Length easeFor(ProductShape shape, Ease ease);

/// Where a parameter's value comes from.
struct FitReason {
  std::string key;
  Length product;  ///< the product's own measure on this axis, zero when none
  Length eased;    ///< product + ease
  Length needed;   ///< with card thickness counted, before snapping
  Length chosen;   ///< on the grid
};

struct Fitted {
  Parameters parameters;
  std::vector<FitReason> reasons;
};

/// The room a product takes up in a style: its bounding sizes turned as the style wants them, and
/// the ease on each axis.
Room roomFor(const Product& product, const Style& style, Ease ease);

/// Parameters of `style` for a product: its measures plus ease and caliper, snapped to the grid and
/// never smaller than needed; the other parameters at their defaults, moved inside their limits.
Fitted fit(const Style& style, const Product& product, Ease ease, const Making& making);
/// The same where the other parameters start from `chosen`.
Fitted fit(const Style& style, const Product& product, Ease ease, const Making& making,
           const Parameters& chosen);

}  // namespace creasewright
