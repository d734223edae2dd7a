#include "output/paper_file.h"

#include <QFile>
#include <QImage>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "app/output/picture_bytes.h"
#include "base/file_limits.h"
#include "bridge/decode_picture.h"
#include "support/random.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

using testing::encoded;

Result<PaperPattern> paperOf(const QByteArray& bytes) {
  return testing::readFrom(bytes, [](const QString& path) { return readPaperFile(path); });
}

QImage halves(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(QColor(250, 240, 200));
  for (int y = 0; y < height; ++y)
    for (int x = 0; x < width / 2; ++x) image.setPixelColor(x, y, QColor(90, 20, 60));
  return image;
}

// The dots that a file says it has: PNG, pHYs; JPEG, JFIF density.
TEST(PaperFile, HasTheSizeThatItsFileSays) {
  for (const char* format : {"png", "jpeg"}) {
    QImage image = halves(600, 300);
    image.setDotsPerMeterX(7874);  // 200 to the inch
    image.setDotsPerMeterY(7874);
    const Result<PaperPattern> paper = paperOf(encoded(image, format));
    ASSERT_TRUE(paper) << format;
    EXPECT_EQ(paper->id, kPicturePaper);
    EXPECT_NEAR(paper->scale.mm(), 76.2, 0.05) << format;
    ASSERT_TRUE(paper->picture);
    EXPECT_EQ(pictureSize(paper->picture->file), QSize(600, 300));
    EXPECT_EQ(pixelsOf(paper->picture->file.bytes()), (PixelSize{600, 300}));
  }
}

TEST(PaperFile, ADrawingIsDrawnFineAndInItsOwnSize) {
  const QByteArray svg =
      "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='30mm' viewBox='0 0 2 1'>"
      "<rect width='1' height='1' fill='#5A143C'/></svg>";
  const Result<PaperPattern> paper = paperOf(svg);
  ASSERT_TRUE(paper);
  EXPECT_EQ(paper->scale, mm(60));
  const QSize size = pictureSize(paper->picture->file);
  EXPECT_GE(size.width(), 708) << "300 dots to the inch";
  EXPECT_NEAR(size.width(), 2 * size.height(), 2);
  const QImage image = keptPicture(paper->picture->file, 4000);
  EXPECT_EQ(image.pixelColor(size.width() / 4, size.height() / 2), QColor("#5A143C"));
  EXPECT_EQ(image.pixelColor(size.width() * 3 / 4, size.height() / 2), QColor(Qt::white));
}

TEST(PaperFile, TellsMeanDarkestAndLightest) {
  const Result<PaperPattern> paper = paperOf(encoded(halves(400, 200), "png"));
  ASSERT_TRUE(paper);
  ASSERT_EQ(paper->colours.size(), 3U);
  EXPECT_NEAR(paper->colours[0].red, 170, 3);
  EXPECT_EQ(paper->colours[1], (Colour{90, 20, 60}));
  EXPECT_EQ(paper->colours[2], (Colour{250, 240, 200}));
}

/// Noise of the finest kind is made small enough to be kept.
TEST(PaperFile, IsSmallEnoughToBeKept) {
  testing::Random random(7);
  QImage noise(2600, 2600, QImage::Format_RGB32);
  for (int y = 0; y < noise.height(); ++y)
    for (int x = 0; x < noise.width(); ++x)
      noise.setPixel(x, y, static_cast<QRgb>(random.whole(0, 0xFFFFFF)));
  const Result<PaperPattern> paper = paperOf(encoded(noise, "png"));
  ASSERT_TRUE(paper);
  EXPECT_LE(static_cast<std::int64_t>(paper->picture->file.bytes().size()), kLargestPaperPicture);
  EXPECT_LE(pictureSize(paper->picture->file).width(), kPaperPixels);
}

TEST(PaperFile, WhatIsNoPictureIsToldAndNothingElse) {
  for (const char* bytes : {"", "words", "<svg", "<svg xmlns='http://www.w3.org/2000/svg'/>",
                            "<html><body/></html>", "<?xml version='1.0'?><a>&b;</a>"}) {
    const Result<PaperPattern> paper = paperOf(bytes);
    ASSERT_FALSE(paper) << bytes;
    EXPECT_EQ(paper.problem().code, ProblemCode::NotAPaper) << bytes;
  }
  EXPECT_EQ(readPaperFile(QStringLiteral("/nowhere/at/all.png")).problem().code,
            ProblemCode::FileUnreadable);
}

}  // namespace
}  // namespace creasewright
