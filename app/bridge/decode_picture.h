#pragma once

#include <QImage>
#include <QSize>
#include <string>
#include <string_view>

#include "base/picture_file.h"
#include "base/result.h"

namespace creasewright {

/// A PNG or JPEG as an image, upright as its camera says, in sRGB on white, shrunk to at most
/// `longest` pixels on a side. Its size is read before its pixels, so that they never take more
/// than a few hundred megabytes. `where` names it in problems. Errors: NotAPicture, PictureTooWide.
Result<QImage> decodePicture(std::string_view bytes, const std::string& where, int longest);

/// Pixels of a picture without decoding it; invalid when it is none.
QSize pictureSize(const PictureFile& file);

/// decodePicture of a picture that is drawn again and again; a null image when it cannot be
/// decoded.
QImage keptPicture(const PictureFile& file, int longest);

}  // namespace creasewright
