#include "papers/template/export.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "extras/layer_stack.h"
#include "support/picture_measure.h"

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

/// The group codes and values of a DXF file, as its format says.
std::vector<std::pair<int, QByteArray>> dxfPairs(const QByteArray& dxf) {
  std::vector<std::pair<int, QByteArray>> pairs;
  const QList<QByteArray> lines = dxf.split('\n');
  for (qsizetype i = 0; i + 1 < lines.size(); i += 2) {
    pairs.emplace_back(lines[i].trimmed().toInt(), lines[i + 1].trimmed());
  }
  return pairs;
}

/// Units are no part of DXF R12: a comment, words and bars of 100 mm and 4 in tell them.
TEST(Export, DxfTellsItsUnitAndCarriesBars) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("t.dxf"));
  for (const char* style : {"framed-tray", "belly-band", "two-piece-box"}) {
    const auto design =
        newDesign(style, std::nullopt, *findCard("0.3mm"), Ease::Easy, ToolGrid::sixteenthInch());
    ASSERT_FALSE(exportDesign(*build(*design), path, choices()).has_value());
    const auto pairs = dxfPairs(contents(path));
    std::set<QByteArray> texts;
    std::set<long> bars;  // of level lines in the legend, in micrometres
    double lowestCut = 1e9;
    double highestBar = -1e9;
    QByteArray entity;
    QByteArray layer;
    std::map<int, double> at;
    for (const auto& [code, value] : pairs) {
      if (code == 0) {
        if (entity == "LINE" && layer == "LEGEND" && at[20] == at[21] && at[11] - at[10] > 50) {
          bars.insert(std::lround((at[11] - at[10]) * 1000));
          highestBar = std::max(highestBar, at[20]);
        }
        entity = value;
      } else if (code == 8) {
        layer = value;
      } else if (code == 1) {
        texts.insert(value);
      } else if (code >= 10 && code <= 21) {
        at[code] = value.toDouble();
        if (layer == "CUTTING" && entity == "VERTEX" && code == 20) {
          lowestCut = std::min(lowestCut, at[20]);
        }
      }
    }
    EXPECT_EQ(pairs.front(), std::make_pair(999, QByteArray("lengths in millimetres")));
    EXPECT_TRUE(texts.count("100 mm") && texts.count("4 in")) << style;
    EXPECT_TRUE(texts.count("One drawing unit is 1 mm.")) << style;
    EXPECT_TRUE(bars.count(100000) && bars.count(101600)) << style;
    EXPECT_LT(highestBar, lowestCut) << style;
  }
}

/// What is made twice says so in the files for machines too.
TEST(Export, APartNeededTwiceSaysSo) {
  const QTemporaryDir dir;
  const QString path = dir.filePath(QStringLiteral("t.svg"));
  BuiltDesign built = sample();
  ASSERT_FALSE(exportDesign(built, path, choices()).has_value());
  EXPECT_FALSE(contents(path).contains("of these"));
  built.pieces[0].count = 2;
  ASSERT_FALSE(exportDesign(built, path, choices()).has_value());
  EXPECT_TRUE(contents(path).contains("Make 2 of these."));
}

/// What is stamped on is not printed; the finished gift shows it, and what is printed both.
TEST(Export, WordsOfABlankToStampAreNotPrinted) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:80x50x90mm"),
                             *findCard("0.3mm"), Ease::Easy, ToolGrid::millimetre());
  Extra label = standardExtra(**findExtraKind("label"), design.card);
  label.card.colours = parseCardColours("cream").value();
  label.parameters.set("width", Length::mm(50));
  label.parameters.set("height", Length::mm(50));
  ExtraLayer layer = standardLayer(label.card);
  layer.lines = {"Soap"};
  label.layers = {layer};
  for (const bool stamped : {false, true}) {
    label.layers[0].parameters.setCount("stamped", stamped ? 1 : 0);
    design.extras = {label};
    const auto built = build(design);
    ASSERT_TRUE(built);
    ExportChoices out = choices();
    const auto says = [&](const char* words) {
      const auto files = exportedFiles(*built, QStringLiteral("t.svg"), out);
      EXPECT_TRUE(files);
      return files && std::ranges::any_of(
                          *files, [&](const auto& file) { return file.second.contains(words); });
    };
    out.kind = TemplateKind::Printed;
    EXPECT_EQ(says(">Soap<"), !stamped);
    out.folded = true;
    out.kind = TemplateKind::CutAndScore;
    EXPECT_TRUE(says(">Soap<"));
  }
}

/// A design with no title is called as its style is.
TEST(Export, TitlesAreNeverEmpty) {
  const QTemporaryDir dir;
  for (const char* name : {"", "  "}) {
    BuiltDesign built = sample();
    built.design.title = name;
    const QString pdf = dir.filePath(QStringLiteral("t.pdf"));
    const QString svg = dir.filePath(QStringLiteral("t.svg"));
    ASSERT_FALSE(exportDesign(built, pdf, choices()).has_value());
    ASSERT_FALSE(exportDesign(built, svg, choices()).has_value());
    EXPECT_TRUE(contents(svg).contains("<title>Framed tray</title>"));
    const QByteArray info = testing::run(QStringLiteral("pdfinfo"), {pdf});
    EXPECT_TRUE(info.contains("Framed tray")) << info.toStdString();
  }
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
