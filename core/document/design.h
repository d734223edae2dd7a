#pragma once

#include <optional>
#include <string>

#include "document/own_style.h"
#include "document/photo.h"
#include "edits/kinds/edit.h"
#include "extras/extra.h"
#include "fit/card.h"
#include "fit/fit.h"
#include "fit/product.h"
#include "styles/parameter_spec.h"
#include "styles/parameters.h"
#include "units/tool_grid.h"

namespace creasewright {

/// What a maker has decided: small, comparable, saved as a `.cwdesign` file.
struct Design {
  std::string title;
  std::string styleId = "framed-tray";
  std::optional<Product> product;
  Parameters parameters;
  Card card = cards().front();
  Ease ease = Ease::Easy;
  ToolGrid grid = ToolGrid::sixteenthInch();
  Length board;                      ///< how wide the scoring board is; zero = any width
  std::optional<OwnStyle> ownStyle;  ///< that it is made from; its base is styleId
  std::vector<Edit> edits;           ///< changes by hand, in the order they are made
  std::vector<Extra> extras;         ///< what goes with the box
  std::vector<std::string> tags;     ///< words to find it by
  std::vector<Photo> photos;         ///< for its hand-out, one of a step at the most
  std::string notes;
  bool operator==(const Design&) const = default;
};

/// A new design: the style's defaults moved onto the grid and inside their limits for the card, or
/// fitted to the product when there is one.
/// Error: UnknownStyle.
Result<Design> newDesign(std::string_view styleId, std::optional<Product> product, const Card& card,
                         Ease ease, ToolGrid grid);

/// The same of an own style, which the design then carries: its measures start from those that it
/// was kept with, and follow its rules. Error: UnknownStyle (its base).
Result<Design> newDesign(const OwnStyle& style, std::optional<Product> product, const Card& card,
                         Ease ease, ToolGrid grid);

/// All changes by hand in the order in which they are made: those of its own style, then its own.
std::vector<Edit> allEdits(const Design& design);

/// The keys of the measures that are meant to be set, in the style's order: all of them, or those
/// that its own style shows.
std::vector<std::string_view> seenMeasures(const Design& design);

/// The design with the measures that follow rules of its own style as those say.
Design followingRules(Design design);

/// Reads `text` as parameter `key` of the design's style and sets it.
/// Errors: UnknownParameter (also for one that its own style does not show), ParameterUnreadable,
/// UnknownStyle.
Result<Design> withParameter(Design design, std::string_view key, std::string_view text);

/// Sets a parameter to a raw value (nanometres, count or flag). Where a count or flag changes what
/// the product needs, the fitted measures follow, and what has a rule of its own style follows it.
Design withValue(Design design, std::string_view key, std::int64_t raw);

/// The design for another tool grid: every length moves to the nearest place on it, those of its
/// extras too. What followed from the product is fitted anew; nothing goes below what the product
/// or a limit asks for. Counts, flags and lengths of zero, which mean "automatic", stay.
Design ontoGrid(Design design, ToolGrid grid);

/// An extra's own lengths on the grid in the same way.
Extra ontoGrid(Extra extra, ToolGrid grid);

/// The same design for another product, ease, card or grid: fitted parameters follow, the others
/// stay.
Design refitted(Design design);

/// What the design is made with.
inline Workbench benchOf(const Design& design) { return {design.card.caliper, design.grid}; }

}  // namespace creasewright
