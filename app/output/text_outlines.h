#pragma once

#include "drawing/drawing.h"

namespace creasewright {

/// The words of a drawing as closed outlines in the layers of their roles, for programs that have
/// no such font: filled, or lines alone for those that know no fills. Needs a QGuiApplication.
Drawing withOutlinedWords(Drawing drawing, const Wording& wording, bool filled);

}  // namespace creasewright
