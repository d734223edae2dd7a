#include "scene/ruler.h"

#include <QImage>
#include <set>

#include <gtest/gtest.h>

#include "widgets/theme.h"

namespace creasewright {
namespace {

constexpr double kScale = 10;  // pixels per mm
constexpr double kWide = 60;   // mm, the sheet
constexpr double kHigh = 40;

SheetCamera camera() {
  SheetCamera found;
  found.fit(kWide, kHigh, {50, 50, kWide * kScale, kHigh * kScale});
  return found;
}

Ruler rulerAt(SheetSide border) {
  const double t = kRulerThickness;
  const QRectF level(50, border == SheetSide::Top ? 24 : 450, 600, t);
  const QRectF upright(border == SheetSide::Left ? 24 : 650, 50, t, 400);
  const bool isLevel = border == SheetSide::Top || border == SheetSide::Bottom;
  return {border, isLevel ? level : upright, kWide, kHigh};
}

/// Where along the ruler marks of at least `length` pixels stand at its inner border, in pixels.
std::set<int> marksOf(SheetSide border, Unit unit, double length,
                      std::optional<QPointF> mouse = {}) {
  QImage sheet(700, 500, QImage::Format_RGB32);
  sheet.fill(Qt::white);
  QPainter painter(&sheet);
  const Ruler ruler = rulerAt(border);
  paintRuler(painter, ruler, camera(), unit, mouse);
  painter.end();
  const QRgb ground = theme().surface.rgb();
  const bool isLevel = border == SheetSide::Top || border == SheetSide::Bottom;
  const QRectF& r = ruler.area;
  const int from = static_cast<int>(isLevel ? r.left() : r.top());
  const int to = static_cast<int>(isLevel ? r.right() : r.bottom());
  std::set<int> found;
  for (int at = from; at < to; ++at) {
    const int in = static_cast<int>(length) - 1;
    const int x = border == SheetSide::Left    ? static_cast<int>(r.right()) - 1 - in
                  : border == SheetSide::Right ? static_cast<int>(r.left()) + in
                                               : at;
    const int y = border == SheetSide::Top      ? static_cast<int>(r.bottom()) - 1 - in
                  : border == SheetSide::Bottom ? static_cast<int>(r.top()) + in
                                                : at;
    if (sheet.pixel(x, y) != ground) found.insert(at);
  }
  return found;
}

bool near(const std::set<int>& found, double at) {
  for (int k = -1; k <= 1; ++k)
    if (found.contains(static_cast<int>(at) + k)) return true;
  return false;
}

/// Screen place of `mm` from where the side's board would begin: left, right, top, bottom corner.
double place(SheetSide border, double mm) {
  switch (border) {
    case SheetSide::Top:
      return 50 + mm * kScale;
    case SheetSide::Bottom:
      return 50 + (kWide - mm) * kScale;
    case SheetSide::Left:
      return 50 + (kHigh - mm) * kScale;
    case SheetSide::Right:
      return 50 + mm * kScale;
  }
  return 0;
}

TEST(Ruler, EveryMillimetreHasAMarkAndEveryCentimetreALongOneOnEachBorder) {
  for (const SheetSide border :
       {SheetSide::Top, SheetSide::Bottom, SheetSide::Left, SheetSide::Right}) {
    const bool isLevel = border == SheetSide::Top || border == SheetSide::Bottom;
    const int longest = static_cast<int>(isLevel ? kWide : kHigh);
    const std::set<int> all = marksOf(border, Unit::Millimetre, 3);
    const std::set<int> middle = marksOf(border, Unit::Millimetre, 6);
    const std::set<int> labelled = marksOf(border, Unit::Millimetre, 9);
    for (int mm = 1; mm < longest; ++mm) {
      const double at = place(border, mm);
      EXPECT_TRUE(near(all, at)) << mm;
      EXPECT_EQ(near(middle, at), mm % 5 == 0) << mm;
      EXPECT_EQ(near(labelled, at), mm % 10 == 0) << mm;
      EXPECT_FALSE(near(all, at + kScale / 2)) << "between " << mm << " and the next";
    }
  }
}

TEST(Ruler, InchesAreMarkedInSixteenths) {
  const std::set<int> all = marksOf(SheetSide::Top, Unit::Inch, 3);
  const std::set<int> labelled = marksOf(SheetSide::Top, Unit::Inch, 9);
  for (int i = 1; i * 25.4 / 16 < kWide; ++i) {
    const double at = place(SheetSide::Top, i * 25.4 / 16);
    EXPECT_TRUE(near(all, at)) << i << "/16";
    EXPECT_EQ(near(labelled, at), i % 16 == 0) << i << "/16";
  }
}

TEST(Ruler, ThePointerStandsAcrossTheRuler) {
  const std::set<int> found =
      marksOf(SheetSide::Top, Unit::Millimetre, kRulerThickness - 2, QPointF(333, 200));
  EXPECT_TRUE(near(found, 333));
  EXPECT_FALSE(near(found, 353));
}

}  // namespace
}  // namespace creasewright
