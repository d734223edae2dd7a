#pragma once

#include <string_view>

#include "base/result.h"
#include "units/length.h"

namespace creasewright {

/// What the user's board, trimmer or ruler can hit: multiples of one step, or anything.
class ToolGrid {
 public:
  constexpr ToolGrid() = default;  ///< none: every length
  constexpr explicit ToolGrid(Length step) : step_(step) {}

  static constexpr ToolGrid none() { return ToolGrid(); }
  static constexpr ToolGrid eighthInch() { return ToolGrid(Length::inches(1, 8)); }
  static constexpr ToolGrid sixteenthInch() { return ToolGrid(Length::inches(1, 16)); }
  static constexpr ToolGrid millimetre() { return ToolGrid(Length::nanometres(1'000'000)); }

  /// Zero when there is no grid.
  [[nodiscard]] constexpr Length step() const { return step_; }
  [[nodiscard]] constexpr bool isNone() const { return step_ == Length(); }

  /// Whether `length` lies on the grid to within `tolerance`.
  [[nodiscard]] bool holds(Length length, Length tolerance = Length::nanometres(1000)) const;
  [[nodiscard]] Length roundUp(Length length) const;    ///< never smaller than `length`
  [[nodiscard]] Length roundDown(Length length) const;  ///< never larger than `length`
  [[nodiscard]] Length nearest(Length length) const;

  constexpr bool operator==(const ToolGrid&) const = default;

 private:
  Length step_;
};

/// `1/8in`, `1/16in`, `1mm`, `none`.  Error: GridUnknown.
Result<ToolGrid> parseToolGrid(std::string_view text);
/// The text parseToolGrid reads back; empty for a step without a name.
std::string_view toolGridText(ToolGrid grid);

}  // namespace creasewright
