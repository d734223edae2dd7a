#include "printing/export.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <map>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

BuiltDesign sample() {
  const auto design = newDesign("framed-tray", std::nullopt, *findCard("0.3mm"), Ease::Easy,
                                ToolGrid::sixteenthInch());
  EXPECT_TRUE(design.ok());
  auto built = build(*design);
  EXPECT_TRUE(built.ok());
  return *built;
}

ExportChoices choices() {
  ExportChoices out;
  out.setup.paper = *findPaper("a4");
  out.now = QDateTime(QDate(2026, 1, 2), QTime(3, 4, 5), Qt::UTC);
  return out;
}

QByteArray contents(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  return file.readAll();
}

TEST(Export, EveryEndingWritesItsForm) {
  const QTemporaryDir dir;
  const std::map<QString, QByteArray> starts{{QStringLiteral("pdf"), "%PDF-1."},
                                             {QStringLiteral("svg"), "<?xml"},
                                             {QStringLiteral("dxf"), "999\n"},
                                             {QStringLiteral("png"), "\x89PNG"},
                                             {QStringLiteral("json"), "{"}};
  const BuiltDesign built = sample();
  ASSERT_EQ(static_cast<std::size_t>(exportEndings().size()), starts.size());
  for (const auto& [ending, start] : starts) {
    const QString path = dir.filePath(QStringLiteral("Tray ä.") + ending);
    const auto problem = exportDesign(built, path, choices());
    EXPECT_FALSE(problem.has_value()) << ending.toStdString();
    EXPECT_TRUE(contents(path).startsWith(start)) << ending.toStdString();
  }
}

TEST(Export, FoldedPictureDiffersFromTheNet) {
  const QTemporaryDir dir;
  const BuiltDesign built = sample();
  ExportChoices folded = choices();
  folded.folded = true;
  ASSERT_FALSE(exportDesign(built, dir.filePath(QStringLiteral("n.png")), choices()).has_value());
  ASSERT_FALSE(exportDesign(built, dir.filePath(QStringLiteral("f.png")), folded).has_value());
  const QImage net(dir.filePath(QStringLiteral("n.png")));
  const QImage box(dir.filePath(QStringLiteral("f.png")));
  EXPECT_FALSE(net.isNull());
  EXPECT_FALSE(box.isNull());
  EXPECT_NE(net, box);
}

TEST(Export, RefusesUnknownEndingsPiecesAndFolders) {
  const QTemporaryDir dir;
  const BuiltDesign built = sample();
  const auto ending = exportDesign(built, dir.filePath(QStringLiteral("t.doc")), choices());
  ASSERT_TRUE(ending.has_value());
  EXPECT_EQ(ending->code, ProblemCode::FileNotWritten);
  ExportChoices lid = choices();
  lid.piece = QStringLiteral("lid");
  const auto piece = exportDesign(built, dir.filePath(QStringLiteral("t.svg")), lid);
  ASSERT_TRUE(piece.has_value());
  EXPECT_EQ(piece->where, "piece");
  const auto folder = exportDesign(built, dir.filePath(QStringLiteral("no/t.svg")), choices());
  ASSERT_TRUE(folder.has_value());
  EXPECT_EQ(folder->code, ProblemCode::FileNotWritten);
  EXPECT_TRUE(QDir(dir.path()).entryList(QDir::Files).isEmpty());
}

TEST(Export, AnOldFileStaysWhenThePaperIsTooSmall) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("t.pdf"));
  QFile old(path);
  ASSERT_TRUE(old.open(QIODevice::WriteOnly));
  old.write("old");
  old.close();
  ExportChoices wide = choices();
  wide.setup.margin = 100;
  const auto problem = exportDesign(sample(), path, wide);
  ASSERT_TRUE(problem.has_value());
  EXPECT_EQ(problem->code, ProblemCode::MarginTooLarge);
  EXPECT_EQ(contents(path), "old");
}

}  // namespace
}  // namespace creasewright
