#pragma once

#include <QFont>

#include "lettering/typeface.h"

namespace creasewright {

/// The font that words of a face are set in, by a size in pixels and without hinting: faces whose
/// widths core knows, and for a hand what the platform has for one, or else the slanted one.
QFont fontOf(Typeface face, bool bold, int pixels);

}  // namespace creasewright
