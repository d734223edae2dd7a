#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "drawing/net_drawing.h"
#include "drawing/svg_writer.h"
#include "net/net_builder.h"
#include "support/picture_measure.h"

namespace creasewright {
namespace {

/// Measured by librsvg, a program that shares nothing with ours, at 254 dpi.
TEST(SvgSize, CutLinesAreTrueWithinATenthOfAMillimetre) {
  NetBuilder builder({"fold"});
  Shape half = rectangle(250, 85);
  half.edges = {"bottom", "right", "top", "left"};
  builder.root("lower", half);
  builder.hinge({"lower", "top"}, "lower/upper", rectangle(250, 85), {90, 1});
  const Net net = builder.take();
  NetDrawingOptions options;
  options.dimensions = false;
  options.sheet = false;
  const NetDrawing drawn = drawNet(net, flatten(net), {}, options);
  const QTemporaryDir dir;
  QFile file(dir.filePath(QStringLiteral("t.svg")));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(QByteArray::fromStdString(
      writeSvg(drawn.drawing, "plate", [](const Label& label) { return label.literal; })));
  file.close();
  const QString png = dir.filePath(QStringLiteral("t.png"));
  testing::run(
      QStringLiteral("rsvg-convert"),
      {QStringLiteral("-d"), QStringLiteral("254"), QStringLiteral("-p"), QStringLiteral("254"),
       QStringLiteral("-b"), QStringLiteral("white"), QStringLiteral("-o"), png, file.fileName()});
  const QImage image(png);
  ASSERT_FALSE(image.isNull());
  EXPECT_NEAR(image.width() * testing::kPixel, 260, 0.1);
  EXPECT_NEAR(image.height() * testing::kPixel, 180, 0.1);
  const std::vector<double> upright = testing::linesAt(testing::darkness(image, true), 170);
  const std::vector<double> level = testing::linesAt(testing::darkness(image, false), 250);
  ASSERT_GE(upright.size(), 2U);
  ASSERT_GE(level.size(), 2U);
  EXPECT_NEAR(upright.back() - upright.front(), 250, 0.1);
  EXPECT_NEAR(level.back() - level.front(), 170, 0.1);
}

}  // namespace
}  // namespace creasewright
