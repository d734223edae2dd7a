#pragma once

#include <QImage>
#include <optional>

#include "drawing/drawing.h"

namespace creasewright {

/// Sides of a picture in pixels.
inline constexpr int kLeastPixels = 16;
inline constexpr int kMostPixels = 8000;

/// How large a picture is to be.
struct PictureSize {
  int width = 0;   ///< pixels; of the longer side where there is no height
  int height = 0;  ///< 0 = as the drawing has it
};

/// What a picture lies on.
struct PictureGround {
  enum class Kind {
    Usual,  ///< as such files have it: white in a PNG, none elsewhere
    Clear,  ///< nothing
    Coloured
  };
  Kind kind = Kind::Usual;
  Colour colour = {};
};

/// The size of a picture of this drawing, its shorter side not under a pixel.
PixelSize pixelsFor(const Drawing& drawing, PictureSize size);

/// The drawing on its ground, of the shape of the pixels.
Drawing framedFor(Drawing drawing, const PictureGround& ground,
                  const std::optional<PixelSize>& pixels);

/// Paints a drawing on white, 10 pixels for each mm, at most 4000 pixels wide or high.
QImage renderImage(const Drawing& drawing, const Wording& wording);

/// Paints a drawing of the shape of the pixels, on white or on nothing.
QImage renderImage(const Drawing& drawing, const Wording& wording, PixelSize pixels, bool clear);

}  // namespace creasewright
