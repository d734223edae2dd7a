#pragma once

#include <optional>
#include <string>

#include "base/picture_file.h"
#include "drawing/drawing.h"

namespace creasewright {

/// An SVG 1.1 picture in true size: width, height and viewBox in mm, one group for each role that
/// occurs, its `id` and `data-step` named as in drawing/role.h. `title` is UTF-8 and is escaped.
/// Without `dashed`, lines look solid whatever their role: where dashes are lines of their own.
/// With `pixels`, of the drawing's shape, width and height are that many pixels, for a web page.
std::string writeSvg(const Drawing& drawing, const std::string& title, const Wording& wording,
                     bool dashed = true, std::optional<PixelSize> pixels = {});

}  // namespace creasewright
