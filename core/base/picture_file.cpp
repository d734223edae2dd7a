#include "base/picture_file.h"

#include "base/big_endian.h"

namespace creasewright {
namespace {

/// Of the first frame.
PixelSize jpegPixels(std::string_view bytes) {
  for (std::size_t i = 2; i + 4 <= bytes.size();) {
    const int mark = numberAt(bytes, i, 2) - 0xFF00;
    if (mark == 0xFF) {  // filled up
      ++i;
      continue;
    }
    const bool tables = mark == 0xC4 || mark == 0xC8 || mark == 0xCC;
    if (mark >= 0xC0 && mark <= 0xCF && !tables)
      return {numberAt(bytes, i + 7, 2), numberAt(bytes, i + 5, 2)};
    if (mark < 0xC0 || mark == 0xD9 || mark == 0xDA) break;
    i += 2 + static_cast<std::size_t>(numberAt(bytes, i + 2, 2));
  }
  return {};
}

}  // namespace

std::optional<PixelSize> pixelsOf(std::string_view bytes) {
  PixelSize size;
  const std::optional<PictureKind> kind = pictureKind(bytes);
  // Four bytes of which the highest is none of a size that can be drawn.
  if (kind == PictureKind::Png && numberAt(bytes, 16, 1) == 0 && numberAt(bytes, 20, 1) == 0)
    size = {numberAt(bytes, 17, 3), numberAt(bytes, 21, 3)};
  if (kind == PictureKind::Jpeg) size = jpegPixels(bytes);
  return size.width > 0 && size.height > 0 ? std::optional(size) : std::nullopt;
}

std::optional<PictureKind> pictureKind(std::string_view bytes) {
  if (bytes.starts_with("\x89PNG\r\n\x1A\n")) return PictureKind::Png;
  if (bytes.starts_with("\xFF\xD8\xFF")) return PictureKind::Jpeg;
  return std::nullopt;
}

std::string_view mediaType(PictureKind kind) {
  switch (kind) {
    case PictureKind::Png:
      return "image/png";
    case PictureKind::Jpeg:
      return "image/jpeg";
  }
  return {};
}

}  // namespace creasewright
