#pragma once

#include <optional>

#include "drawing/drawing.h"

namespace creasewright {

/// A drawing in the middle of a larger one whose width is `ratio` times its height, on a ground of
/// this colour, or none.
Drawing framed(Drawing drawing, double ratio, std::optional<Colour> ground);

/// A drawing as large as it fits on a page of `width` x `height` mm with `margin` mm around it, on
/// a ground that fills the page; lines grow along.
Drawing onPage(Drawing drawing, double width, double height, double margin,
               std::optional<Colour> ground);

}  // namespace creasewright
