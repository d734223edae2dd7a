#include "output/photo_file.h"

#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <array>

#include <gtest/gtest.h>

#include "app/output/picture_bytes.h"
#include "base/file_limits.h"
#include "bridge/decode_picture.h"
#include "support/random.h"

namespace creasewright {
namespace {

using testing::encoded;

/// Red above left, green above right, blue below left, white below right.
QImage quarters(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  for (int y = 0; y < height; ++y)
    for (int x = 0; x < width; ++x)
      image.setPixelColor(x, y,
                          y < height / 2 ? (x < width / 2 ? Qt::red : Qt::green)
                                         : (x < width / 2 ? Qt::blue : Qt::white));
  return image;
}

/// The JPEG with an Exif segment that says how it lies: Exif 2.3, 4.5.4 and tag 0x0112.
QByteArray lying(const QByteArray& jpeg, char orientation) {
  const QByteArray tiff("II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 18);
  QByteArray segment = QByteArray("Exif\0\0", 6) + tiff + orientation + QByteArray(7, '\0');
  const auto length = static_cast<char>(segment.size() + 2);
  return jpeg.left(2) + QByteArray("\xFF\xE1\0", 3) + length + segment + jpeg.mid(2);
}

Result<PictureFile> photoOf(const QByteArray& bytes) {
  return testing::readFrom(bytes, [](const QString& path) { return readPhotoFile(path); });
}

bool looksLike(QColor a, QColor b) {
  return std::abs(a.red() - b.red()) < 60 && std::abs(a.green() - b.green()) < 60 &&
         std::abs(a.blue() - b.blue()) < 60;
}

QColor cornerOf(const QImage& image, bool right, bool below) {
  return image.pixelColor(right ? image.width() * 3 / 4 : image.width() / 4,
                          below ? image.height() * 3 / 4 : image.height() / 4);
}

/// Where the 0th row and column of the stored pixels lie, by the Orientation tag (Exif 2.3, table
/// 4, tag 0x0112): what is seen above left, above right, below left, below right.
TEST(PhotoFile, LiesAsItsCameraSays) {
  struct Lying {
    char orientation;
    std::array<QColor, 4> seen;
  };
  const QColor r = Qt::red;
  const QColor g = Qt::green;
  const QColor b = Qt::blue;
  const QColor w = Qt::white;
  const Lying cases[]{{1, {r, g, b, w}}, {2, {g, r, w, b}}, {3, {w, b, g, r}}, {4, {b, w, r, g}},
                      {5, {r, b, g, w}}, {6, {b, r, w, g}}, {7, {w, g, b, r}}, {8, {g, w, r, b}}};
  const QByteArray jpeg = encoded(quarters(160, 80), "jpeg");
  for (const Lying& each : cases) {
    const Result<PictureFile> photo = photoOf(lying(jpeg, each.orientation));
    ASSERT_TRUE(photo.ok()) << int{each.orientation};
    const QImage image = keptPicture(*photo, kPhotoPixels);
    EXPECT_EQ(image.width() > image.height(), each.orientation < 5) << int{each.orientation};
    EXPECT_EQ(pictureSize(*photo), image.size());
    for (const int corner : {0, 1, 2, 3})
      EXPECT_TRUE(looksLike(cornerOf(image, corner % 2 == 1, corner > 1),
                            each.seen.at(static_cast<std::size_t>(corner))))
          << int{each.orientation} << " corner " << corner;
    EXPECT_FALSE(photo->bytes().find("Exif") != std::string_view::npos);
  }
}

TEST(PhotoFile, KeepsToItsLimitsWhateverItShows) {
  testing::Random random(1605);
  for (const QSize size : {QSize(3000, 2000), QSize(40, 30), QSize(1200, 1200), QSize(5000, 40)}) {
    QImage noise(size, QImage::Format_RGB32);
    for (int y = 0; y < size.height(); ++y)
      for (int x = 0; x < size.width(); ++x)
        noise.setPixel(x, y, static_cast<QRgb>(random.whole(0, 0xFFFFFF)) | 0xFF000000U);
    for (const char* format : {"png", "jpeg"}) {
      const Result<PictureFile> photo = photoOf(encoded(noise, format));
      ASSERT_TRUE(photo.ok()) << format << size.width();
      EXPECT_LE(static_cast<std::int64_t>(photo->bytes().size()), kLargestPhoto);
      const QSize kept = pictureSize(*photo);
      EXPECT_LE(std::max(kept.width(), kept.height()), kPhotoPixels);
      EXPECT_NEAR(1.0 * kept.width() / kept.height(), 1.0 * size.width() / size.height(),
                  0.12 * size.width() / size.height());
    }
  }
}

TEST(PhotoFile, AFlatDrawingStaysAPngAndItsClearPartsGoWhite) {
  QImage drawing(300, 200, QImage::Format_ARGB32);
  drawing.fill(Qt::transparent);
  const Result<PictureFile> photo = photoOf(encoded(drawing, "png"));
  ASSERT_TRUE(photo.ok());
  EXPECT_EQ(photo->kind(), PictureKind::Png);
  EXPECT_EQ(keptPicture(*photo, kPhotoPixels).pixelColor(150, 100), QColor(Qt::white));
}

/// Every file that ends anywhere before its end.
TEST(PhotoFile, HalfAPictureIsNone) {
  const QImage image = quarters(200, 150);
  for (const char* format : {"png", "jpeg"}) {
    const QByteArray whole = encoded(image, format);
    for (qsizetype length = 0; length < whole.size() - 13; length += 1 + whole.size() / 60) {
      const Result<PictureFile> photo = photoOf(whole.left(length));
      ASSERT_FALSE(photo.ok()) << format << ' ' << length << " of " << whole.size();
      EXPECT_EQ(photo.problem().code, ProblemCode::NotAPicture);
    }
    // What some cameras write behind a picture does no harm.
    EXPECT_TRUE(photoOf(whole + "a short film").ok()) << format;
  }
}

}  // namespace
}  // namespace creasewright
