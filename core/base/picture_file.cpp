#include "base/picture_file.h"

namespace creasewright {

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
