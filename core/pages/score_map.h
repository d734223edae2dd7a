#pragma once

#include <vector>

#include "document/build.h"
#include "drawing/drawing.h"
#include "guide/guide.h"
#include "pages/figure_room.h"

namespace creasewright {

/// Type size of the readings of a score map: 14 pt, to be read at arm's length (Legge & Bigelow,
/// J. Vision 11(5):8, 2011: x-height of 0.2 degrees at 73 cm), mm.
inline constexpr double kReadingType = 4.94;

/// All score steps of one piece in one picture of the flat sheet: what is read once stands once,
/// bold, outside the sheet: full scores above and at the left, each with the number that texts call
/// it by (counted from the edge at the fence, which is drawn thick), short ones below and at the
/// right. For the left hand the fence, and all that is written beside the sheet, stands at the
/// other side; the sheet lies as it is. `wording` measures the readings.
Drawing scoreMap(const BuiltPiece& piece, const std::vector<const Step*>& steps,
                 const FigureRoom& room, const Wording& wording);

}  // namespace creasewright
