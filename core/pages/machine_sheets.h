#pragma once

#include <optional>
#include <string>
#include <vector>

#include "document/build.h"
#include "drawing/drawing.h"
#include "pages/part_packing.h"

namespace creasewright {

/// Between parts on a machine's sheet, and to its edges, mm (common practice, no published source).
inline constexpr double kMachineGap = 5;

/// The nets of a design (only `piece`; empty = all), each as often as it is made, together on as
/// few sheets of one size as are found. No dimensions, no hatching. Nothing where a part is larger
/// than the sheet.
std::optional<std::vector<Drawing>> machineSheets(const BuiltDesign& design,
                                                  const std::string& piece, const PartSize& sheet);

}  // namespace creasewright
