#include "output/pdf_export.h"

#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <algorithm>
#include <vector>

#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "net/net_builder.h"
#include "pages/template_pages.h"
#include "support/picture_measure.h"

namespace creasewright {
namespace {

using testing::darkness;
using testing::linesAt;
using testing::run;

/// Pages of a plate of `width` x `height` mm with one score in its middle.
std::vector<Drawing> platePages(const char* paper, double width, double height) {
  NetBuilder builder({"fold"});
  Shape half = rectangle(width, height / 2);
  half.edges = {"bottom", "right", "top", "left"};
  builder.root("lower", half);
  builder.hinge({"lower", "top"}, "lower/upper", rectangle(width, height / 2), {90, 1});
  const Net net = builder.take();
  const FlatNet flat = flatten(net);
  const ScorePlan plan;
  const std::vector<GlueArea> glue;
  PageSetup setup;
  setup.paper = *findPaper(paper);
  const auto pages = drawTemplate({{"plate", &net, &flat, &plan, &glue}}, setup, {"Plate", "", {}},
                                  wordingIn(Unit::Millimetre));
  EXPECT_TRUE(pages.ok());
  return pages.ok() ? *pages : std::vector<Drawing>{};
}

QByteArray pdfOf(const std::vector<Drawing>& pages, PdfKind kind = PdfKind::Template) {
  const auto pdf = renderPdf(
      pages, wordingIn(Unit::Millimetre),
      {QStringLiteral("Plate ä"), QDateTime(QDate(2026, 1, 2), QTime(3, 4, 5), Qt::UTC), kind});
  EXPECT_TRUE(pdf.ok());
  return pdf.ok() ? *pdf : QByteArray();
}

/// The first page as Poppler sees it, 10 pixels for each mm.
QImage rendered(const QByteArray& pdf, const QTemporaryDir& dir) {
  QFile file(dir.filePath(QStringLiteral("t.pdf")));
  EXPECT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(pdf);
  file.close();
  run(QStringLiteral("pdftoppm"),
      {QStringLiteral("-r"), QStringLiteral("254"), QStringLiteral("-png"), QStringLiteral("-f"),
       QStringLiteral("1"), QStringLiteral("-l"), QStringLiteral("1"),
       QStringLiteral("-singlefile"), file.fileName(), dir.filePath(QStringLiteral("p"))});
  return QImage(dir.filePath(QStringLiteral("p.png")));
}

class TrueSize : public ::testing::TestWithParam<std::tuple<const char*, double, double>> {};

/// Measured by Poppler, a program that shares nothing with ours.
TEST_P(TrueSize, CutLinesAreWithinATenthOfAMillimetreOverTheWholePlate) {
  const auto [paper, width, height] = GetParam();
  const QTemporaryDir dir;
  const QImage image = rendered(pdfOf(platePages(paper, width, height)), dir);
  ASSERT_FALSE(image.isNull());
  // It may lie turned; its sides are longer than any bar.
  const double shorter = std::min(width, height);
  const std::vector<double> upright = linesAt(darkness(image, true), shorter);
  const std::vector<double> level = linesAt(darkness(image, false), shorter);
  ASSERT_GE(upright.size(), 2U);
  ASSERT_GE(level.size(), 2U);
  const auto [low, high] =
      std::minmax({upright.back() - upright.front(), level.back() - level.front()});
  EXPECT_NEAR(low, shorter, 0.1);
  EXPECT_NEAR(high, std::max(width, height), 0.1);
}

INSTANTIATE_TEST_SUITE_P(Papers, TrueSize,
                         ::testing::Values(std::make_tuple("a4", 170.0, 250.0),
                                           std::make_tuple("a4", 250.0, 170.0),
                                           std::make_tuple("letter", 180.0, 240.0),
                                           std::make_tuple("a3", 252.0, 260.0)));

TEST(PdfExport, PageBoxIsExact) {
  // ISO 216: A4 is 210 x 297 mm = 595.276 x 841.890 points; ANSI letter is 612 x 792 points.
  const QByteArray a4 = pdfOf(platePages("a4", 100, 200));
  EXPECT_TRUE(a4.contains("[ 0 0 595.2756 841.8898 ]")) << a4.left(2000).toStdString();
  EXPECT_TRUE(pdfOf(platePages("letter", 100, 200)).contains("[ 0 0 612 792 ]"));
}

TEST(PdfExport, AsksViewersNotToScaleAndNamesTheSteps) {
  const QByteArray pdf = pdfOf(platePages("a4", 100, 200));
  EXPECT_TRUE(pdf.contains("/PrintScaling /None"));
  EXPECT_TRUE(pdf.contains("/GTS_ProcStepsType /Cutting"));
  EXPECT_TRUE(pdf.contains("/GTS_ProcStepsType /Creasing"));
}

/// Pictures in a guide or a plan are not in true size: no machine must cut by them.
TEST(PdfExport, OnlyTemplatesHaveLayersToCutBy) {
  const std::vector<Drawing> pages = platePages("a4", 100, 200);
  const QTemporaryDir dir;
  const QByteArray plain = pdfOf(pages, PdfKind::Document);
  EXPECT_FALSE(plain.contains("/OCG"));
  EXPECT_FALSE(plain.contains("/GTS_"));
  EXPECT_EQ(rendered(plain, dir), rendered(pdfOf(pages), dir));
}

TEST(PdfExport, EqualInputGivesEqualBytes) {
  const std::vector<Drawing> pages = platePages("a4", 100, 200);
  EXPECT_EQ(pdfOf(pages), pdfOf(pages));
}

TEST(PdfExport, IsASoundFileWithSelectableText) {
  const QTemporaryDir dir;
  QFile file(dir.filePath(QStringLiteral("t.pdf")));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(pdfOf(platePages("a4", 100, 200)));
  file.close();
  run(QStringLiteral("qpdf"), {QStringLiteral("--check"), file.fileName()});
  const QByteArray text = run(QStringLiteral("pdftotext"), {file.fileName(), QStringLiteral("-")});
  EXPECT_TRUE(text.contains("Plate")) << text.toStdString();
  EXPECT_TRUE(text.contains("100 mm")) << text.toStdString();
}

TEST(PdfExport, NoPagesIsAProblemNotACrash) {
  EXPECT_FALSE(renderPdf({}, wordingIn(Unit::Millimetre), {}).ok());
}

}  // namespace
}  // namespace creasewright
