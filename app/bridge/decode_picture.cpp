#include "bridge/decode_picture.h"

#include <QBuffer>
#include <QCache>
#include <QColorSpace>
#include <QImageReader>
#include <QPainter>
#include <algorithm>
#include <cstdint>

namespace creasewright {

namespace {

constexpr int kMostMegabytes = 256;  // that Qt may take for an image

/// Flat on white, so that nothing of the file but its pixels is left.
QImage flattened(QImage image) {
  if (image.colorSpace().isValid() && image.colorSpace() != QColorSpace(QColorSpace::SRgb))
    image.convertToColorSpace(QColorSpace::SRgb);
  QImage flat(image.size(), QImage::Format_RGB32);
  flat.fill(Qt::white);
  QPainter painter(&flat);
  painter.drawImage(0, 0, image);
  return flat;
}

const char* formatOf(PictureKind kind) { return kind == PictureKind::Png ? "png" : "jpeg"; }

struct Opened {
  explicit Opened(std::string_view bytes)
      : data(QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()))) {
    buffer.setBuffer(&data);
    buffer.open(QIODevice::ReadOnly);
    if (const auto kind = pictureKind(bytes)) {
      reader.setFormat(formatOf(*kind));
      reader.setAutoDetectImageFormat(false);
      reader.setDevice(&buffer);
    }
    reader.setAutoTransform(true);
    QImageReader::setAllocationLimit(kMostMegabytes);
  }
  QByteArray data;
  QBuffer buffer;
  QImageReader reader;
};

}  // namespace

Result<QImage> decodePicture(std::string_view bytes, const std::string& where, int longest) {
  const Problem broken{ProblemCode::NotAPicture, where, {}};
  const std::optional<PictureKind> kind = pictureKind(bytes);
  if (!kind || !isWholePicture(bytes)) return broken;
  Opened opened(bytes);
  const QSize size = opened.reader.size();
  if (!size.isValid() || size.isEmpty()) return broken;
  const int bits = QImage::toPixelFormat(opened.reader.imageFormat()).bitsPerPixel();
  const std::int64_t deep = std::max(32, bits) / 8;
  const std::int64_t most = kMostDecodedBytes / deep;
  if (isTooWide({size.width(), size.height()}, deep))
    return Problem{ProblemCode::PictureTooWide,
                   where,
                   {std::int64_t{size.width()}, std::int64_t{size.height()},
                    std::int64_t{kWidestPicture}, most}};
  const bool shrinks = std::max(size.width(), size.height()) > longest;
  const QSize small = size.scaled(longest, longest, Qt::KeepAspectRatio).expandedTo({1, 1});
  // A JPEG is decoded small at once.
  if (shrinks && *kind == PictureKind::Jpeg) opened.reader.setScaledSize(small);
  QImage image = opened.reader.read();
  if (image.isNull()) return broken;
  if (std::max(image.width(), image.height()) > longest)
    image = image.scaled(longest, longest, Qt::KeepAspectRatio, Qt::SmoothTransformation);
  return flattened(std::move(image));
}

QSize pictureSize(const PictureFile& file) {
  const Opened opened(file.bytes());
  const QSize size = opened.reader.size();
  const bool lies =
      opened.reader.transformation().testFlag(QImageIOHandler::TransformationRotate90);
  return lies ? size.transposed() : size;
}

QImage keptPicture(const PictureFile& file, int longest) {
  struct Kept {
    PictureFile file;  // keeps its address from being another's
    QImage image;
  };
  constexpr int kMostKept = 48'000;  // kilobytes
  using Key = std::pair<const void*, int>;
  thread_local QCache<Key, Kept> cache(kMostKept);
  const Key key{file.bytes().data(), longest};
  if (const Kept* known = cache.object(key)) return known->image;
  const Result<QImage> decoded = decodePicture(file.bytes(), {}, longest);
  const QImage image = decoded ? *decoded : QImage();
  cache.insert(key, new Kept{file, image}, static_cast<int>(image.sizeInBytes() / 1000) + 1);
  return image;
}

}  // namespace creasewright
