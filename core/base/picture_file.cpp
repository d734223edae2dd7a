#include "base/picture_file.h"

#include <algorithm>

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

/// Whether a PNG goes on to its last chunk.
bool reachesItsLastChunk(std::string_view bytes) {
  constexpr std::size_t kSignature = 8;
  constexpr std::size_t kAround = 12;  // length, kind and check sum of a chunk
  for (std::size_t i = kSignature; i + kAround <= bytes.size();) {
    std::size_t length = 0;
    for (std::size_t k = 0; k < 4; ++k)
      length = length << 8U | static_cast<unsigned char>(bytes[i + k]);
    if (length > bytes.size() - i - kAround) return false;
    if (bytes.substr(i + 4, 4) == "IEND") return true;
    i += kAround + length;
  }
  return false;
}

/// Whether a JPEG goes on to its end mark; what is behind that is not looked at.
bool reachesItsEnd(std::string_view bytes) {
  const auto at = [&](std::size_t i) { return static_cast<unsigned char>(bytes[i]); };
  std::size_t i = 0;
  while (i + 1 < bytes.size()) {
    const unsigned mark = at(i) == 0xFF ? at(i + 1) : 0U;
    if (mark == 0xD9) return true;
    const bool segment = mark >= 0xC0 && mark < 0xFF && (mark < 0xD0 || mark > 0xD8);
    if (!segment)
      ++i;  // coded pixels, marks among them, the picture's start
    else if (i + 3 < bytes.size())
      i += 2U + (at(i + 2) << 8U | at(i + 3));
    else
      return false;
  }
  return false;
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

bool isWholePicture(std::string_view bytes) {
  const std::optional<PictureKind> kind = pictureKind(bytes);
  if (!kind) return false;
  return *kind == PictureKind::Png ? reachesItsLastChunk(bytes) : reachesItsEnd(bytes);
}

bool isTooWide(PixelSize size, std::int64_t bytesPerPixel) {
  return std::max(size.width, size.height) > kWidestPicture ||
         std::int64_t{size.width} * size.height > kMostDecodedBytes / bytesPerPixel;
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
