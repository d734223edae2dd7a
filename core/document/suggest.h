#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "document/build.h"
#include "units/paper.h"

namespace creasewright {

/// How the pieces of a design lie on sheets of one size, each piece on a sheet of its own.
struct SheetFit {
  Paper sheet;
  bool fits = false;    ///< every piece, edge to edge, upright or turned
  bool turned = false;  ///< at least one must lie with its width along the sheet's height
};

/// One style made for a product, and what it costs to make. An own style is in `built`, and `style`
/// is its base.
struct Suggestion {
  const Style* style = nullptr;
  BuiltDesign built;             ///< fitted to the product
  std::vector<SheetFit> sheets;  ///< in the order of the stock
  double cardArea = 0;           ///< mm2 of all blanks, counts included
  int scores = 0;                ///< score lines, counts included
  int cuts = 0;                  ///< straight or curved, four to trim each blank; counts included
  Length glue;                   ///< length of all glued joints, counts included

  /// Whether every check holds; warnings do not count.
  [[nodiscard]] bool holds() const { return onlyWarnings(built.problems); }
  [[nodiscard]] bool fitsAnySheet() const;
  [[nodiscard]] bool usesGlue() const { return glue > Length(); }
};

/// What a maker asks for when choosing.
struct Wish {
  bool onMySheet = false;  ///< fits one of the stock sheets
  bool noGlue = false;
  bool showsProduct = false;
  bool forRound = false;

  [[nodiscard]] bool meets(const Suggestion& suggestion) const;
};

/// Every style made for the product (without one: at its defaults), and these own ones, the most
/// suitable first: styles whose checks hold before others, own ones kept for other sizes after
/// others, then those that fit a sheet of the stock, those made for round things before others when
/// the product is round, boxes before inserts, then by card used and difficulty. The blank sheet
/// comes last.
std::vector<Suggestion> suggest(const std::optional<Product>& product, const Card& card, Ease ease,
                                ToolGrid grid, std::span<const Paper> stock,
                                std::span<const OwnStyle> own = {});

/// How a blank (mm) lies on a sheet.
SheetFit fitOnSheet(const Paper& sheet, double width, double height);

}  // namespace creasewright
