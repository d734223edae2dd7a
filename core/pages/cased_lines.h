#pragma once

#include "drawing/drawing.h"

namespace creasewright {

/// A page of printed papers whose lines, marks and names of tiles show on what is printed under
/// them: where one of its colours is nearer to a line's than 3 to 1 (WCAG 2.1, 1.4.11), a light
/// line that is wider lies beneath, and a light plate under words. They stand in Role::Edge, so
/// that a machine which cuts by layers meets no line twice.
Drawing casedLines(Drawing page, const Wording& wording);

}  // namespace creasewright
