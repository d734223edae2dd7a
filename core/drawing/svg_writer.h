#pragma once

#include <string>

#include "drawing/drawing.h"

namespace creasewright {

/// An SVG 1.1 picture in true size: width, height and viewBox in mm, one group for each role that
/// occurs, its `id` and `data-step` named as in drawing/role.h. `title` is UTF-8 and is escaped.
/// Without `dashed`, lines look solid whatever their role: where dashes are lines of their own.
std::string writeSvg(const Drawing& drawing, const std::string& title, const Wording& wording,
                     bool dashed = true);

}  // namespace creasewright
