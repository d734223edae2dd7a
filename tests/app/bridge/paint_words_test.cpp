#include "bridge/paint_words.h"

#include <QFontInfo>
#include <QImage>
#include <cmath>

#include <gtest/gtest.h>

#include "bridge/paint_drawing.h"
#include "bridge/text.h"
#include "bridge/typefaces.h"
#include "document/build.h"
#include "drawing/set_words.h"
#include "extras/flat_piece.h"
#include "extras/label_shapes.h"
#include "lettering/type_width.h"
#include "output/text_outlines.h"

namespace creasewright {
namespace {

constexpr double kDotsPerMm = 20;  // to a millimetre
constexpr double kLabelSide = 60;  // mm

Drawing label(WordsCurve curve, Typeface face = Typeface::Plain) {
  Problems problems;
  const BuiltPiece piece =
      buildPiece(flatPiece("label", {labelOutline(LabelShape::Circle, kLabelSide, kLabelSide), {}},
                           {"Lavender soap"}, {face, {}, curve, 0}),
                 cards().front(), {}, problems);
  const Inscription& words = piece.net.inscriptions.at(0);
  Drawing out{kLabelSide, kLabelSide, {}, {}};
  out.texts.push_back(textOf(words, words.at, words.turnDegrees));
  return out;
}

std::string plain(const Label& label) { return label.literal; }

QImage painted(const Drawing& drawing) {
  const int side = static_cast<int>(kLabelSide * kDotsPerMm);
  QImage image(side, side, QImage::Format_ARGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  paintDrawing(painter, drawing, plain, {.scale = kDotsPerMm});
  return image;
}

struct Ink {
  double nearest = 1e9;  ///< from the middle, mm
  double farthest = 0;
  double lowest = 1e9;  ///< over the lower edge, mm
  double highest = 0;
  double leftmost = 1e9;
  double rightmost = 0;
  int dots = 0;
};

Ink inkOf(const QImage& image) {
  Ink ink;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) {
      if (qGray(image.pixel(x, y)) > 128) continue;
      const double right = (x + 0.5) / kDotsPerMm;
      const double up = kLabelSide - (y + 0.5) / kDotsPerMm;
      const double out = std::hypot(right - kLabelSide / 2, up - kLabelSide / 2);
      ink.nearest = std::min(ink.nearest, out);
      ink.farthest = std::max(ink.farthest, out);
      ink.lowest = std::min(ink.lowest, up);
      ink.highest = std::max(ink.highest, up);
      ink.leftmost = std::min(ink.leftmost, right);
      ink.rightmost = std::max(ink.rightmost, right);
      ++ink.dots;
    }
  return ink;
}

/// The ink itself, by its pixels: in a ring inside the rim, on its own half, evenly to both sides.
TEST(PaintWords, BentWordsInkTheRingTheyAreMeantFor) {
  for (const Typeface face :
       {Typeface::Plain, Typeface::Serif, Typeface::Typewriter, Typeface::Slanted, Typeface::Hand})
    for (const bool lower : {false, true}) {
      const Drawing drawing = label(lower ? WordsCurve::Lower : WordsCurve::Upper, face);
      const TextItem& text = drawing.texts.front();
      const Ink ink = inkOf(painted(drawing));
      const double size = text.height;
      ASSERT_GT(ink.dots, 1000);
      EXPECT_LT(ink.farthest, kLabelSide / 2 - 0.8);
      EXPECT_GT(ink.nearest, kLabelSide / 2 - 1 - 0.3 * size - 1.25 * size);
      const double low = text.arc->radius - (lower ? 0.95 : 0.3) * size;
      const double high = text.arc->radius + (lower ? 0.3 : 0.95) * size;
      EXPECT_GT(ink.nearest, low - 0.3);
      EXPECT_LT(ink.farthest, high + 0.3);
      if (lower)
        EXPECT_LT(ink.highest, kLabelSide * 0.6);
      else
        EXPECT_GT(ink.lowest, kLabelSide * 0.4);
      EXPECT_NEAR(ink.leftmost + ink.rightmost, kLabelSide, 3);
    }
}

/// Outlines for machines are where the painter's ink is.
TEST(PaintWords, OutlinesLieWhereTheInkIs) {
  for (const WordsCurve curve : {WordsCurve::Straight, WordsCurve::Upper, WordsCurve::Lower}) {
    const Ink ink = inkOf(painted(label(curve)));
    const Ink outlined = inkOf(painted(withOutlinedWords(label(curve), plain, true)));
    EXPECT_NEAR(ink.leftmost, outlined.leftmost, 0.15);
    EXPECT_NEAR(ink.rightmost, outlined.rightmost, 0.15);
    EXPECT_NEAR(ink.highest, outlined.highest, 0.15);
    EXPECT_NEAR(ink.lowest, outlined.lowest, 0.15);
  }
}

/// No face is painted wider than core measures it, whatever the machine has for it.
TEST(PaintWords, NoFaceIsPaintedWiderThanItWasMeasured) {
  for (const Typeface face :
       {Typeface::Plain, Typeface::Serif, Typeface::Typewriter, Typeface::Slanted, Typeface::Hand})
    for (const char* words : {"Lavender soap", "WWWW MMMM", "Grüße für dich", "„Tee“ – 12 €"}) {
      Drawing drawing{kLabelSide, kLabelSide, {}, {}};
      drawing.texts.push_back(
          {.label = Label::plain(words), .at = {5, 30}, .height = 5, .face = face});
      const Ink ink = inkOf(painted(drawing));
      EXPECT_LT(ink.rightmost, 5 + typeWidth(words, 5, face) + 0.4)
          << words << static_cast<int>(face);
    }
  EXPECT_EQ(QFontInfo(fontOf(Typeface::Serif, false, 64)).family(), QStringLiteral("DejaVu Serif"));
  EXPECT_EQ(QFontInfo(fontOf(Typeface::Typewriter, false, 64)).family(),
            QStringLiteral("DejaVu Sans Mono"));
}

/// Words on a slanting face: painted in its plane, and only where it is seen.
TEST(PaintWords, ArePaintedInTheirPlaneAndCutOff) {
  Drawing drawing{kLabelSide, kLabelSide, {}, {}};
  TextItem text{.label = Label::plain("MMMM"), .at = {}, .height = 10};
  text.plane = PlaneMap{{10, 10}, {0.5, 0.5}, {0, 1}};
  drawing.texts = {text};
  const Ink whole = inkOf(painted(drawing));
  EXPECT_NEAR(whole.leftmost, 10, 1);
  // The baseline climbs by as much as it goes to the right.
  EXPECT_NEAR(whole.highest - whole.lowest, whole.rightmost - whole.leftmost + 7.3, 1.2);
  drawing.texts[0].shown = {{{0, 0}, {20, 0}, {20, 60}, {0, 60}}};
  const Ink part = inkOf(painted(drawing));
  EXPECT_NEAR(part.rightmost, 20, 0.1);
  EXPECT_NEAR(part.leftmost, whole.leftmost, 0.05);
}

}  // namespace
}  // namespace creasewright
