#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>
#include <QThread>

#include <gtest/gtest.h>

#include "document/build.h"
#include "document/file_io.h"
#include "kits/bundle.h"
#include "session/preferences.h"
#include "shelf/shelf_model.h"

namespace creasewright {
namespace {

constexpr std::chrono::seconds kPatience{60};

Design made(const char* style, const char* title, const char* product = "box:60x40x25mm") {
  Design design = *newDesign(style, *parseProduct(product), {"c", "card", Length::mm(0.3), 0},
                             Ease::Easy, ToolGrid::millimetre());
  design.title = title;
  return design;
}

TEST(Shelf, KeepsDesignsUnderFreeNames) {
  const QTemporaryDir folder;
  const ShelfFolder shelf(folder.filePath(QStringLiteral("shelf")));
  EXPECT_TRUE(shelf.entries().empty());
  for (const char* title : {"Lavender soap", "Lavender soap", "a/b\\c:d", ""}) {
    EXPECT_FALSE(shelf.add(made("two-piece-box", title)));
  }
  EXPECT_EQ(shelf.entries().size(), 4u);
  for (const ShelfEntry& entry : shelf.entries()) {
    EXPECT_TRUE(entry.design.has_value()) << entry.path.toStdString();
    EXPECT_EQ(QFileInfo(entry.path).path(), shelf.path());
  }
}

TEST(Shelf, FindsByTitleStyleProductAndNotes) {
  const QTemporaryDir folder;
  const ShelfFolder shelf(folder.path());
  Design tea = made("pillow-box", "Tea evening");
  tea.notes = "#autumn class";
  tea.tags = {"Beginners", "tea"};
  ASSERT_FALSE(shelf.add(tea));
  ASSERT_FALSE(shelf.add(made("gable-box", "Picnic", "box:120x80x70mm")));
  ShelfModel model(shelf);
  ASSERT_FALSE(model.isReading(kPatience));
  const auto found = [&](const char* words) {
    model.setWords(QString::fromUtf8(words));
    return model.rowCount();
  };
  EXPECT_EQ(found(""), 2);
  EXPECT_EQ(found("picnic"), 1);
  EXPECT_EQ(found("PILLOW"), 1);
  EXPECT_EQ(found("120x80"), 1);
  EXPECT_EQ(found("beginners"), 1);
  EXPECT_EQ(found("#autumn tea"), 1);
  EXPECT_EQ(found("#autumn picnic"), 0);
}

TEST(Shelf, WhatWasUsedLastStandsFirst) {
  const QTemporaryDir folder;
  const ShelfFolder shelf(folder.path());
  ASSERT_FALSE(shelf.add(made("pillow-box", "Never used here")));
  ASSERT_FALSE(shelf.add(made("gable-box", "Used before")));
  ASSERT_FALSE(shelf.add(made("envelope", "Used last")));
  ShelfModel model(shelf);
  ASSERT_FALSE(model.isReading(kPatience));
  for (const char* title : {"Used before", "Used last"})
    for (const ShelfEntry& entry : shelf.entries())
      if (entry.design->title == title) {
        rememberUse(entry.path);
        QThread::msleep(5);
      }
  model.setOrder(ShelfModel::Order::LastUse);
  EXPECT_EQ(model.title(model.index(0)), "Used last");
  EXPECT_EQ(model.title(model.index(1)), "Used before");
}

TEST(Shelf, ABrokenFileIsShownAndKept) {
  const QTemporaryDir folder;
  const ShelfFolder shelf(folder.path());
  ASSERT_FALSE(shelf.add(made("belly-band", "Band")));
  QFile broken(folder.filePath(QStringLiteral("broken.cwdesign")));
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("{\"format\":");
  broken.close();
  ShelfModel model(shelf);
  ASSERT_FALSE(model.isReading(kPatience));
  EXPECT_EQ(model.rowCount(), 2);
  EXPECT_EQ(model.designs().size(), 1u);
  for (int row = 0; row < 2; ++row) {
    EXPECT_FALSE(model.data(model.index(row), Qt::DisplayRole).toString().isEmpty());
    EXPECT_FALSE(model.data(model.index(row), Qt::ToolTipRole).toString().isEmpty());
    EXPECT_FALSE(model.data(model.index(row), Qt::DecorationRole).value<QPixmap>().isNull());
  }
}

TEST(Shelf, ABundleComesWholeOrNotAtAll) {
  const QTemporaryDir folder;
  const ShelfFolder shelf(folder.filePath(QStringLiteral("shelf")));
  const QString bundle = folder.filePath(QStringLiteral("b.cwbundle"));
  const std::string bytes =
      writeBundle({{made("envelope", "One"), made("wedge-box", "Two")}, {}, {}});
  ASSERT_FALSE(writeFileAtomically(bundle.toStdString(), bytes));
  EXPECT_FALSE(shelf.addBundle(bundle));
  EXPECT_EQ(shelf.entries().size(), 2u);
  ASSERT_FALSE(writeFileAtomically(bundle.toStdString(), bytes.substr(0, bytes.size() / 2)));
  EXPECT_TRUE(shelf.addBundle(bundle));
  EXPECT_EQ(shelf.entries().size(), 2u);
}

/// One design of a bundle is broken: nothing is taken, and its place is named.
TEST(Shelf, ABrokenDesignInABundleIsNamed) {
  const QTemporaryDir folder;
  const ShelfFolder shelf(folder.filePath(QStringLiteral("shelf")));
  const QString file = folder.filePath(QStringLiteral("b.cwbundle"));
  QString bundle = QString::fromStdString(writeBundle(
      {{made("envelope", "One"), made("wedge-box", "Two"), made("envelope", "Three")}, {}, {}}));
  const qsizetype second = bundle.indexOf(QStringLiteral("\"Two\""));
  const qsizetype caliper = bundle.indexOf(QStringLiteral("\"caliper\": \""), second);
  ASSERT_GT(caliper, second);
  bundle.insert(caliper + 12, QStringLiteral("thin "));
  ASSERT_FALSE(writeFileAtomically(file.toStdString(), bundle.toStdString()));
  const auto problem = shelf.addBundle(file);
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->where, "designs/2/card/caliper");
  EXPECT_TRUE(shelf.entries().empty());
}

/// A design that takes long to read holds neither the window nor the files behind it for ever: all
/// names are there at once, and the pictures come later.
TEST(Shelf, SlowFilesDoNotHoldIt) {
  const QTemporaryDir folder;
  const ShelfFolder shelf(folder.path());
  for (int i = 0; i < 30; ++i) {
    Design design = made("belly-band", ("Design " + std::to_string(i)).c_str());
    design.notes = std::string(90'000, 'n');
    ASSERT_FALSE(shelf.add(design));
  }
  ShelfModel model(shelf);
  EXPECT_EQ(model.rowCount(), 30);
  EXPECT_FALSE(model.data(model.index(0), Qt::DisplayRole).toString().isEmpty());
  ASSERT_FALSE(model.isReading(kPatience));
  EXPECT_EQ(model.unreadable(), 0);
  EXPECT_EQ(model.designs().size(), 30U);
  const auto seen = [&] {
    const auto image = model.data(model.index(0), Qt::DecorationRole).value<QPixmap>().toImage();
    for (int x = 0; x < image.width(); ++x) {
      if (image.pixelColor(x, image.height() / 2).alpha() > 0) {
        return true;
      }
    }
    return false;
  };
  EXPECT_FALSE(seen());
  QElapsedTimer waited;
  for (waited.start(); !seen() && waited.elapsed() < 60'000;) {
    model.isReading(std::chrono::milliseconds(20));
    QThread::msleep(20);
  }
  EXPECT_TRUE(seen());
  model.reload();  // in the middle of drawing: what comes late is dropped
  ASSERT_FALSE(model.isReading(kPatience));
  EXPECT_EQ(model.rowCount(), 30);
}

/// A thousand designs; pictures are drawn only when somebody asks for them.
TEST(Shelf, AThousandDesignsAreSearched) {
  const QTemporaryDir folder;
  const ShelfFolder shelf(folder.path());
  for (int i = 0; i < 1000; ++i) {
    const std::string title = "Design " + std::to_string(i);
    ASSERT_FALSE(shelf.add(made(i % 2 == 0 ? "belly-band" : "open-sleeve", title.c_str())));
  }
  ShelfModel model(shelf);
  EXPECT_EQ(model.rowCount(), 1000);
  ASSERT_FALSE(model.isReading(kPatience));
  model.setWords(QStringLiteral("design 99"));
  EXPECT_EQ(model.rowCount(), 19);  // 99, 990 .. 999 and 199, 299 .. 899
  model.setOrder(ShelfModel::Order::Title);
  EXPECT_EQ(model.title(model.index(0)), QStringLiteral("Design 199"));
}

}  // namespace
}  // namespace creasewright
