#include "bridge/picture_fill.h"

#include <QBuffer>
#include <cmath>

#include <gtest/gtest.h>

#include "bridge/paint_drawing.h"
#include "output/pdf_export.h"
#include "pages/paper_print.h"
#include "support/random.h"
#include "units/angle.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

constexpr Colour kQuarters[] = {{200, 40, 40}, {40, 160, 60}, {40, 60, 180}, {240, 220, 80}};

/// Below left, below right, above left, above right.
PaperPattern paperOfQuarters(int turn, bool tiled) {
  QImage image(80, 40, QImage::Format_RGB32);
  for (int y = 0; y < 40; ++y)
    for (int x = 0; x < 80; ++x)
      image.setPixelColor(x, y, toColor(kQuarters[(y < 20 ? 2 : 0) + (x < 40 ? 0 : 1)]));
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  PaperPattern paper{kPicturePaper, mm(24), turn, {}};
  paper.picture = PaperPicture{PictureFile(bytes.toStdString()), tiled, mm(3), mm(-2)};
  return paper;
}

/// By the definition: back through the turn and the shift into the one picture about the origin.
std::optional<Colour> wantedAt(const PaperPattern& paper, Point p) {
  const double turn = -Angle::degrees(paper.turn).radians();
  const Point straight{p.x * std::cos(turn) - p.y * std::sin(turn),
                       p.x * std::sin(turn) + p.y * std::cos(turn)};
  const double u = (straight.x - 3) / 24 + 0.5;
  const double v = (straight.y + 2) / 12 + 0.5;
  constexpr double kRim = 0.06;
  const double off = std::max({-u, u - 1, -v, v - 1});
  if (!paper.picture->tiled && off > 0)
    return off < kRim ? std::optional(Colour{1, 2, 3}) : std::nullopt;
  const double across = u - std::floor(u);
  const double up = v - std::floor(v);
  for (const double share : {across, up})
    if (share < kRim || share > 1 - kRim || std::abs(share - 0.5) < kRim) return Colour{1, 2, 3};
  return kQuarters[(up > 0.5 ? 2 : 0) + (across > 0.5 ? 1 : 0)];
}

/// A page of 100 mm with a disc of the paper about its middle.
Drawing discOf(const PaperPattern& paper) {
  CardColours colours;
  colours.face = Colour{0xEE, 0xEE, 0xEE};
  colours.pattern = paper;
  Drawing page{100, 100, {}, {}};
  page.paths = printOn(region(ellipse({50, 50}, 40, 40)), colours, false,
                       PlaneMap{{50, 50}, {1, 0}, {0, 1}});
  return page;
}

/// Law: each place of the paper shows the picture as it lies there, tiled or once, turned and
/// shifted.
TEST(PictureFill, EveryPlaceShowsItsPartOfThePicture) {
  testing::Random random(5);
  for (const int turn : {0, 30, 90, 211})
    for (const bool tiled : {true, false}) {
      const PaperPattern paper = paperOfQuarters(turn, tiled);
      QImage image(1000, 1000, QImage::Format_RGB32);
      image.fill(Qt::white);
      QPainter painter(&image);
      painter.setRenderHint(QPainter::Antialiasing);
      paintDrawing(painter, discOf(paper), {}, {.scale = 10});
      painter.end();
      int judged = 0;
      for (int i = 0; i < 600; ++i) {
        const Point p{random.between(-38, 38), random.between(-38, 38)};
        const bool inside = norm(p) < 39;
        const Colour beyond = inside ? Colour{0xEE, 0xEE, 0xEE} : Colour{0xFF, 0xFF, 0xFF};
        const Colour wanted = inside ? wantedAt(paper, p).value_or(beyond) : beyond;
        if (wanted == Colour{1, 2, 3} || std::abs(norm(p) - 40) < 1) continue;
        const QColor shown =
            image.pixelColor(static_cast<int>(500 + p.x * 10), static_cast<int>(500 - p.y * 10));
        ++judged;
        EXPECT_LT(std::abs(shown.red() - wanted.red) + std::abs(shown.green() - wanted.green) +
                      std::abs(shown.blue() - wanted.blue),
                  12)
            << turn << tiled << ' ' << p.x << ' ' << p.y;
      }
      EXPECT_GT(judged, 200);
    }
}

TEST(PictureFill, APrinterWithoutColoursShowsItInGreys) {
  QImage image(200, 200, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  paintDrawing(painter, discOf(paperOfQuarters(0, true)), {},
               {.scale = 2, .look = {.black = true}});
  painter.end();
  int lightest = 0;
  int darkest = 255;
  for (int y = 0; y < 200; ++y)
    for (int x = 0; x < 200; ++x) {
      const QColor pixel = image.pixelColor(x, y);
      ASSERT_EQ(pixel.red(), pixel.green());
      ASSERT_EQ(pixel.red(), pixel.blue());
      if (std::hypot(x - 100, y - 100) > 30) continue;  // within the disc
      lightest = std::max(lightest, pixel.red());
      darkest = std::min(darkest, pixel.red());
    }
  EXPECT_GT(lightest - darkest, 40);
}

TEST(PictureFill, APdfCarriesThePictureOnce) {
  const Result<QByteArray> pdf = renderPdf({discOf(paperOfQuarters(30, true))}, {}, {});
  ASSERT_TRUE(pdf);
  EXPECT_EQ(pdf->count("/Subtype /Image"), 1);
}

}  // namespace
}  // namespace creasewright
