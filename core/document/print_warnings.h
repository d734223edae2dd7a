#pragma once

#include "document/build.h"

namespace creasewright {

/// What of a piece will not print well: words too small, too faint on their paper or too long for
/// their place (TextSmall, TextFaint, TextTooLarge), a picture that cannot be decoded
/// (PictureBroken) or of too few dots (PictureCoarse).
Problems printWarnings(const BuiltPiece& piece);

}  // namespace creasewright
