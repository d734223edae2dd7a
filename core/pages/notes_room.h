#pragma once

#include <optional>
#include <vector>

#include "drawing/drawing.h"
#include "pages/notes.h"

namespace creasewright {

/// Notes set where a finished page has room for all of them, in one column or two: off every line,
/// text and the `net`'s own areas (page coordinates), inside `printable`. In the margin where that
/// is possible, else on waste; upright before turned by a quarter.
/// Width and height are not set. Nothing: no room.
std::optional<Drawing> notesInFreeRoom(const std::vector<std::vector<NoteLine>>& columns,
                                       const Drawing& page, const std::vector<Polygon>& net,
                                       const Bounds& printable, const Wording& wording);

/// Lines set in one block no wider than `width` mm, from (0, 0) to its width and height.
Drawing noteBlock(const std::vector<NoteLine>& lines, double width, const Wording& wording);

/// The room a drawing's texts take, by textBox().
Bounds textBounds(const Drawing& drawing, const Wording& wording);

}  // namespace creasewright
