#pragma once

#include <QString>

#include "base/picture_file.h"
#include "base/result.h"

namespace creasewright {

/// How many pixels a photo that is kept has on its longer side: 120 mm at 250 to the inch.
inline constexpr int kPhotoPixels = 1200;

/// A picture file of a person's as a design keeps it: upright, at most kPhotoPixels on a side and
/// kLargestPhoto bytes, without anything that the camera wrote beside its pixels, such as the place
/// where it was taken. Errors: FileUnreadable, PictureTooHeavy, NotAPicture, PictureTooWide.
Result<PictureFile> readPhotoFile(const QString& path);

}  // namespace creasewright
