#pragma once

#include "lettering/typeface.h"

namespace creasewright {

/// By how much a letter moves towards the one before it, in type sizes, 0 or less: as the font of
/// the face has it. Letters of a typewriter and of a hand, whose font is not known, keep their
/// widths, as do pairs that a font sets farther apart.
double kerning(char32_t before, char32_t letter, Typeface face);

}  // namespace creasewright
