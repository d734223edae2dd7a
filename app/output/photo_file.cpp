#include "output/photo_file.h"

#include <QBuffer>
#include <QImage>
#include <array>

#include "base/file_limits.h"
#include "bridge/decode_picture.h"
#include "document/file_io.h"

namespace creasewright {

namespace {

std::string encoded(const QImage& image, const char* format, int quality) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, format, quality);
  return bytes.toStdString();
}

}  // namespace

std::string keptBytes(QImage image, bool fromPng, bool drawn, std::int64_t most) {
  const auto tooLarge = [most](const std::string& bytes) {
    return static_cast<std::int64_t>(bytes.size()) > most;
  };
  std::string best = encoded(image, "jpeg", drawn ? 92 : 85);
  if (fromPng || drawn) {
    std::string png = encoded(image, "png", -1);
    if (!tooLarge(png) && (drawn || png.size() < best.size())) return png;
  }
  for (const int quality : {75, 65}) {
    if (!tooLarge(best)) return best;
    best = encoded(image, "jpeg", quality);
  }
  while (tooLarge(best)) {
    image = image.scaled(image.size() * 0.8, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    best = encoded(image, "jpeg", 65);
  }
  return best;
}

Result<PictureFile> readPhotoFile(const QString& path) {
  const std::string name = path.toStdString();
  const Result<std::string> bytes = readFile(name, kLargestPictureFile);
  if (!bytes && bytes.problem().code == ProblemCode::FileTooLarge)
    return Problem{ProblemCode::PictureTooHeavy, name, bytes.problem().values};
  if (!bytes) return bytes.problem();
  const Result<QImage> image = decodePicture(*bytes, name, kPhotoPixels);
  if (!image) return image.problem();
  return PictureFile(
      keptBytes(*image, pictureKind(*bytes) == PictureKind::Png, false, kLargestPhoto));
}

}  // namespace creasewright
