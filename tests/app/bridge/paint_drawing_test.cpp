#include "bridge/paint_drawing.h"

#include <QImage>
#include <vector>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

constexpr double kScale = 100;  // pixels for each mm

QImage painted(const Drawing& drawing, double scale = kScale) {
  QImage image(static_cast<int>(drawing.width * scale), static_cast<int>(drawing.height * scale),
               QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  PaintOptions options;
  options.scale = scale;
  paintDrawing(
      painter, drawing, [](const Label& label) { return label.literal; }, options);
  return image;
}

/// Lengths in mm of ink and gap along the row at `y` pixels, beginning with the first ink.
std::vector<double> runs(const QImage& image, int y) {
  std::vector<double> found;
  bool ink = false;
  for (int x = 0; x < image.width(); ++x) {
    const bool dark = qGray(image.pixel(x, y)) < 128;
    if (dark != ink) found.push_back(0);
    ink = dark;
    if (!found.empty()) found.back() += 1 / kScale;
  }
  return found;
}

TEST(PaintPath, StrokesAreAsMuchWiderAsWanted) {
  Drawing drawing{4, 4, {}, {}};
  drawing.paths.push_back({.role = Role::Cut, .rings = {{{0, 2}, {4, 2}}}});
  const auto width = [&](double strokes, bool black) {
    QImage image(400, 400, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    PaintOptions options;
    options.scale = kScale;
    options.look = {strokes, black};
    paintDrawing(painter, drawing, {}, options);
    int rows = 0;
    for (int y = 0; y < image.height(); ++y) rows += qGray(image.pixel(200, y)) < 128 ? 1 : 0;
    return rows / kScale;
  };
  EXPECT_NEAR(width(1, false), 0.35, 0.02);  // a cut, by drawing/role.h
  EXPECT_NEAR(width(2, false), 0.7, 0.02);
  EXPECT_NEAR(width(2, true), 0.7, 0.02);
}

/// White on a disc, and bold strokes thicker than plain ones.
TEST(PaintText, ReversedIsWhiteAndBoldIsThicker) {
  const auto dark = [](bool bold, bool reversed) {
    Drawing drawing{20, 20, {}, {}};
    if (reversed) {
      drawing.paths.push_back({.role = Role::Legend,
                               .rings = {{{0, 0}, {20, 0}, {20, 20}, {0, 20}}},
                               .closed = true,
                               .filled = true,
                               .like = Role::Valley});
    }
    drawing.texts.push_back({.label = Label::plain("8"),
                             .at = {10, 5},
                             .height = 12,
                             .anchor = Anchor::Centre,
                             .bold = bold,
                             .reversed = reversed});
    const QImage image = painted(drawing, 10);
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) count += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
    return count;
  };
  EXPECT_GT(dark(true, false), 1.2 * dark(false, false));
  EXPECT_NEAR(200 * 200 - dark(true, true), dark(true, false), 0.05 * dark(true, false));
}

class PaintedRole : public ::testing::TestWithParam<Role> {};

TEST_P(PaintedRole, DashesAndWidthAreExactInMillimetres) {
  const Role role = GetParam();
  Drawing drawing{24, 2, {}, {}};
  drawing.paths.push_back({.role = role, .rings = {{{1, 1}, {23, 1}}}});
  const QImage image = painted(drawing);
  const RoleStyle& style = roleStyle(role);
  const std::vector<double> found = runs(image, 100);
  ASSERT_GE(found.size(), 1U);
  if (style.dashes.empty()) {
    EXPECT_NEAR(found[0], 22, 0.021);
  } else {
    ASSERT_GT(found.size(), style.dashes.size());
    for (std::size_t i = 0; i < style.dashes.size(); ++i) {
      EXPECT_NEAR(found[i], style.dashes[i], 0.021) << "part " << i;
    }
  }
  int dark = 0;
  for (int y = 0; y < image.height(); ++y) dark += qGray(image.pixel(110, y)) < 128 ? 1 : 0;
  EXPECT_NEAR(dark / kScale, style.width, 0.021);
}

INSTANTIATE_TEST_SUITE_P(Roles, PaintedRole,
                         ::testing::Values(Role::Cut, Role::Valley, Role::Mountain,
                                           Role::Perforation, Role::CutMark, Role::Dimension),
                         [](const auto& named) { return std::string(roleStyle(named.param).id); });

TEST(PaintDrawing, YRunsUp) {
  Drawing drawing{4, 4, {}, {}};
  drawing.paths.push_back({.role = Role::Cut, .rings = {{{0, 3}, {4, 3}}}});
  const QImage image = painted(drawing);
  EXPECT_LT(qGray(image.pixel(200, 100)), 128);
  EXPECT_GT(qGray(image.pixel(200, 300)), 128);
}

TEST(PaintDrawing, TextStandsUprightOnItsBaselineAtItsSize) {
  Drawing drawing{20, 10, {}, {}};
  drawing.texts.push_back({.label = Label::plain("H"), .at = {5, 2}, .height = 5});
  const QImage image = painted(drawing, 20);
  int top = image.height();
  int bottom = -1;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      if (qGray(image.pixel(x, y)) >= 128) continue;
      top = std::min(top, y);
      bottom = std::max(bottom, y);
    }
  }
  EXPECT_NEAR(bottom + 1, (10 - 2) * 20, 1.5);            // feet on the baseline
  EXPECT_NEAR((bottom + 1 - top) / 20.0, 0.73 * 5, 0.2);  // capitals of DejaVu Sans: 0.729 em
}

TEST(PaintDrawing, HiddenRolesLeaveNoMark) {
  Drawing drawing{4, 4, {}, {}};
  drawing.paths.push_back({.role = Role::Waste, .rings = {{{0, 2}, {4, 2}}}});
  QImage image(40, 40, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  PaintOptions options;
  options.scale = 10;
  options.hidden = {Role::Waste};
  paintDrawing(
      painter, drawing, [](const Label&) { return std::string(); }, options);
  painter.end();
  QImage blank(40, 40, QImage::Format_RGB32);
  blank.fill(Qt::white);
  EXPECT_EQ(image, blank);
}

}  // namespace
}  // namespace creasewright
