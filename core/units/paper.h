#pragma once

#include <span>
#include <string_view>

#include "base/result.h"
#include "units/length.h"

namespace creasewright {

/// A sheet size, upright (width <= height).
struct Paper {
  std::string_view id;    ///< `a4`, `letter`, `12x12`
  std::string_view name;  ///< as printed on the pack: `A4`, `letter`, `12 x 12 in`
  Length width;
  Length height;
};

/// All sizes we know: ISO 216, ISO 217, ANSI/ASME Y14.1 and craft sheets.
std::span<const Paper> papers();

/// A sheet of a person's own: its id and name are its sides in mm.
Paper ownPaper(Length width, Length height);

/// By id, capitals or not. Error: PaperUnknown.
Result<Paper> findPaper(std::string_view id);

}  // namespace creasewright
