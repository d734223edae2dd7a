#include "output/photo_file.h"

#include <QBuffer>
#include <QImage>
#include <array>

#include "base/file_limits.h"
#include "bridge/decode_picture.h"
#include "document/file_io.h"

namespace creasewright {

namespace {

constexpr std::int64_t kLargestPicture = 50'000'000;  // bytes; a camera's JPEG has 3 to 30 million

std::string encoded(const QImage& image, const char* format, int quality) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, format, quality);
  return bytes.toStdString();
}

/// As a JPEG; a drawing of few colours as a PNG, where that is smaller. Noise that no quality makes
/// small enough is shrunk.
std::string smallEnough(QImage image, PictureKind from) {
  std::string best = encoded(image, "jpeg", 85);
  if (from == PictureKind::Png)
    if (std::string png = encoded(image, "png", -1); png.size() < best.size()) return png;
  const auto tooLarge = [&best] { return static_cast<std::int64_t>(best.size()) > kLargestPhoto; };
  for (const int quality : {75, 65}) {
    if (!tooLarge()) return best;
    best = encoded(image, "jpeg", quality);
  }
  while (tooLarge()) {
    image = image.scaled(image.size() * 0.8, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    best = encoded(image, "jpeg", 65);
  }
  return best;
}

}  // namespace

Result<PictureFile> readPhotoFile(const QString& path) {
  const std::string name = path.toStdString();
  const Result<std::string> bytes = readFile(name, kLargestPicture);
  if (!bytes && bytes.problem().code == ProblemCode::FileTooLarge)
    return Problem{ProblemCode::PictureTooHeavy, name, bytes.problem().values};
  if (!bytes) return bytes.problem();
  const Result<QImage> image = decodePicture(*bytes, name, kPhotoPixels);
  if (!image) return image.problem();
  return PictureFile(smallEnough(*image, *pictureKind(*bytes)));
}

}  // namespace creasewright
