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

/// Where a parameter's value comes from: product + ease + shape + card = needed.
struct FitReason {
  std::string key;
  Axis axis = Axis::Length;
  bool ofProduct = true;  ///< else it follows from ease and card alone, as a lid's play does
  Length product;         ///< the product's own measure on this axis, zero when not of it
  Length ease;            ///< added to it, both sides together
  Length shape;           ///< what the style's shape adds, or takes off when negative
  Length card;            ///< what the thickness of the card adds
  Length needed;          ///< all of it, before snapping
  Length floor;           ///< the style's own least value where that is larger, else zero
  Length chosen;          ///< on the grid
};

struct Fitted {
  Parameters parameters;
  std::vector<FitReason> reasons;
};

/// Which of the product's own sizes lies along each axis of the room it takes up in a style.
std::array<Axis, 3> lyingOf(const Product& product, const Style& style);

/// The room a product takes up in a style: its bounding sizes turned as the style wants them, and
/// the ease on each axis. It counts as round only where it lies with its round side down.
Room roomFor(const Product& product, const Style& style, Ease ease);

/// Parameters of `style` for a product: its measures plus ease and caliper, snapped to the grid and
/// never smaller than needed, rounded once and last; a round product that stands upright gets a
/// square base. The other parameters at their defaults, moved inside their limits.
Fitted fit(const Style& style, const Product& product, Ease ease, const Workbench& bench);
/// The same where the other parameters start from `chosen`.
Fitted fit(const Style& style, const Product& product, Ease ease, const Workbench& bench,
           const Parameters& chosen);

/// The least values a product asks of a style's parameters.
Floors floorsOf(const Fitted& fitted);

/// `parameters` with every fitted measure at least as large as chosen for the product.
Parameters raisedTo(const Fitted& fitted, Parameters parameters);

/// The style's parameters near `wanted`, every length on the tool grid where its limits let it, all
/// inside their limits and none below `floors`.
Parameters placedOnGrid(const std::vector<ParameterSpec>& specs, Parameters wanted,
                        const Workbench& bench, const Floors& floors = {});

}  // namespace creasewright
