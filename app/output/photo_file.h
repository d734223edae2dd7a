#pragma once

#include <QString>
#include <cstdint>
#include <string>

#include "base/picture_file.h"
#include "base/result.h"

class QImage;

namespace creasewright {

/// The most bytes of a picture file that is read; a camera's JPEG has 3 to 30 million.
inline constexpr std::int64_t kLargestPictureFile = 50'000'000;

/// An image as a JPEG of at most `most` bytes, or as a PNG where `drawn` asks for it first and it
/// is small enough; without it a PNG must be smaller than the JPEG. Noise that no quality makes
/// small enough is shrunk.
std::string keptBytes(QImage image, bool fromPng, bool drawn, std::int64_t most);

/// How many pixels a photo that is kept has on its longer side: 120 mm at 250 to the inch.
inline constexpr int kPhotoPixels = 1200;

/// A picture file of a person's as a design keeps it: upright, at most kPhotoPixels on a side and
/// kLargestPhoto bytes, without anything that the camera wrote beside its pixels, such as the place
/// where it was taken. Errors: FileUnreadable, PictureTooHeavy, NotAPicture, PictureTooWide.
Result<PictureFile> readPhotoFile(const QString& path);

}  // namespace creasewright
