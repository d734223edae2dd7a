#include "shell/main_window.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QScreen>
#include <QScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "classroom/kit_window.h"
#include "commands/edits.h"
#include "extras/extra_kind.h"
#include "extras/layer_stack.h"
#include "gallery/gallery_view.h"
#include "panels/checks_panel.h"
#include "panels/measures_panel.h"
#include "patterns/pattern.h"
#include "printing/export_dialog.h"
#include "printing/guide_window.h"
#include "printing/picture_dialog.h"
#include "printing/print_dialog.h"
#include "scene/sheet_view.h"
#include "shelf/samples_window.h"
#include "shell/columns.h"
#include "support/cut_off.h"
#include "widgets/length_edit.h"

namespace creasewright {
namespace {

/// Shown and laid out; on a busy machine that takes its time.
void show(MainWindow& window, int width, int height) {
  window.resize(width, height);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
  ASSERT_TRUE(QTest::qWaitFor([&] { return window.size() == QSize(width, height); }));
  (void)QTest::qWaitFor([&] { return cutOff(window).isEmpty(); });
}

TEST(MainWindow, NothingIsCutOffAtTheSmallestAndTheUsualSize) {
  for (const QSize size :
       {QSize(1024, 600), QSize(1279, 720), QSize(1280, 720), QSize(1920, 1080)}) {
    MainWindow window;
    show(window, size.width(), size.height());
    EXPECT_EQ(window.size(), size);
    EXPECT_EQ(window.columns().isNarrow(), size.width() < Columns::kWideFrom);
    EXPECT_EQ(cutOff(window).join("; ").toStdString(), "") << size.width();
  }
}

/// With its title and frame it must not reach under the edge of a low screen: its status line is
/// there.
TEST(MainWindow, LeavesRoomForItsFrame) {
  const MainWindow window;
  EXPECT_LE(window.height(), window.screen()->availableSize().height() - 40);
}

TEST(MainWindow, NothingIsCutOffInAnyLanguage) {
  for (const char* language : {"de", "en"}) {
    useLanguage(QString::fromLatin1(language));
    MainWindow window;
    show(window, 1000, 640);
    EXPECT_EQ(cutOff(window).join("; ").toStdString(), "") << language;
    // Failing checks: their number stands in the tab.
    changeParameter(window.session(), "depth", Length::mm(0.5).nm());
    EXPECT_EQ(cutOff(window).join("; ").toStdString(), "") << language;
  }
}

/// Patterns, ribbons, labels and pulls have rows of their own in the column on the left.
TEST(MainWindow, NoSampleIsWiderThanItsColumn) {
  for (const auto& [language, unit] :
       {std::pair("de", Unit::Millimetre), std::pair("en", Unit::Inch)}) {
    useLanguage(QString::fromLatin1(language));
    for (const Design& gift : sampleGifts(unit)) {
      MainWindow window;
      window.session().start(gift, {});
      show(window, 1440, 900);
      const auto* left = window.columns().findChild<QScrollArea*>();
      EXPECT_LE(left->widget()->width(), left->viewport()->width())
          << language << ' ' << gift.title;
    }
  }
}

TEST(MainWindow, NoExtraIsWiderThanItsColumn) {
  for (const char* language : {"de", "en"}) {
    useLanguage(QString::fromLatin1(language));
    for (const ExtraKind& kind : extraKinds()) {
      Design design = DesignSession().design();
      Extra extra = standardExtra(kind, design.card);
      if (!kind.ofFilm) extra.card.colours.pattern = usualPaper(*patternCalled("leaves"));
      if (kind.layered) extra.layers.push_back(standardLayer(design.card, design.grid));
      design.extras = {extra};
      MainWindow window;
      window.session().start(design, {});
      show(window, 1440, 900);
      const auto* left = window.columns().findChild<QScrollArea*>();
      EXPECT_LE(left->widget()->width(), left->viewport()->width()) << language << ' ' << kind.id;
    }
  }
}

template <class Dialog>
void expectWordsWhole(const char* name) {
  for (const char* language : {"de", "en"}) {
    useLanguage(QString::fromLatin1(language));
    DesignSession session;
    Dialog dialog(session);
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
    (void)QTest::qWaitFor([&] { return cutOff(dialog).isEmpty(); });
    EXPECT_EQ(cutOff(dialog).join("; ").toStdString(), "") << name << ' ' << language;
  }
}

TEST(Dialogs, NothingIsCutOffInAnyLanguage) {
  expectWordsWhole<GuideWindow>("guide");
  expectWordsWhole<PrintDialog>("print");
  expectWordsWhole<ExportDialog>("export");
  expectWordsWhole<PictureDialog>("picture");
  expectWordsWhole<KitWindow>("class kit");
}

/// Every kind and an own size change the pages; a size that cannot serve is told, not printed.
TEST(Dialogs, ThePrintWindowOffersKindsAndOwnPaper) {
  useLanguage(QStringLiteral("en"));
  DesignSession session;
  Card card = session.design().card;
  card.colours = parseCardColours("sage").value();  // printed papers are a kind
  changeCard(session, card);
  PrintDialog dialog(session);
  dialog.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
  EXPECT_EQ(dialog.kind().count(), 8);
  for (int kind = 0; kind < dialog.kind().count(); ++kind) {
    dialog.kind().setCurrentIndex(kind);
    EXPECT_GT(dialog.pageCount(), 0) << kind;
    EXPECT_TRUE(dialog.complaint().isEmpty()) << kind;
  }
  dialog.kind().setCurrentIndex(0);
  EXPECT_FALSE(dialog.ownWidth().isVisible());
  dialog.paper().setCurrentIndex(dialog.paper().findData(QStringLiteral("own")));
  EXPECT_TRUE(dialog.ownWidth().isVisible());
  const int many = dialog.pageCount();
  const auto type = [](LengthEdit& field, const char* words) {
    field.setFocus();
    field.setText(QString::fromLatin1(words));
    field.setModified(true);
    field.commit();
  };
  type(dialog.ownWidth(), "600 mm");
  type(dialog.ownHeight(), "800 mm");
  EXPECT_EQ(dialog.pageCount(), 1);
  EXPECT_LE(dialog.pageCount(), many);
  type(dialog.ownWidth(), "10 mm");
  EXPECT_TRUE(dialog.ownWidth().isWrong());
  (void)QTest::qWaitFor([&] { return cutOff(dialog).isEmpty(); });
  EXPECT_EQ(cutOff(dialog).join("; ").toStdString(), "");
}

TEST(MainWindow, TheGalleryTakesTheMiddleAndGivesItBack) {
  for (const QSize size : {QSize(1024, 600), QSize(1440, 900)}) {
    MainWindow window;
    show(window, size.width(), size.height());
    window.columns().showGallery(true);
    (void)QTest::qWaitFor([&] { return cutOff(window).isEmpty(); });
    EXPECT_TRUE(window.columns().gallery().isVisible());
    EXPECT_FALSE(window.columns().sheet().isVisible());
    EXPECT_EQ(cutOff(window).join("; ").toStdString(), "") << size.width();
    emit window.columns().gallery().done();
    EXPECT_TRUE(window.columns().sheet().isVisible());
    EXPECT_EQ(window.size(), size);
  }
}

TEST(MainWindow, ArrangesItselfAnewWhenItIsResized) {
  MainWindow window;
  show(window, 1400, 800);
  show(window, 1024, 600);
  EXPECT_TRUE(window.columns().isNarrow());
  EXPECT_EQ(window.columns().drawer().count(), 6);
  show(window, 1400, 800);
  EXPECT_EQ(window.columns().drawer().count(), 4);
  EXPECT_TRUE(window.columns().checks().isVisible());
  EXPECT_EQ(cutOff(window).join("; ").toStdString(), "");
}

TEST(MainWindow, TheStepsAreReachedInANarrowWindowToo) {
  useLanguage(QStringLiteral("en"));
  for (const QSize size : {QSize(1024, 600), QSize(1100, 720), QSize(1279, 720)}) {
    MainWindow window;
    show(window, size.width(), size.height());
    QTabWidget& drawer = window.columns().drawer();
    int steps = -1;
    for (int i = 0; i < drawer.count(); ++i)
      if (drawer.tabText(i) == QLatin1String("Steps")) steps = i;
    ASSERT_GE(steps, 0);
    EXPECT_TRUE(drawer.isTabVisible(steps));
    for (int i = 0; i < drawer.count(); ++i) {
      drawer.setCurrentIndex(i);
      const QRect tab = drawer.tabBar()->tabRect(i);
      EXPECT_GE(tab.left(), 0) << size.width() << drawer.tabText(i).toStdString();
      EXPECT_LE(tab.right(), drawer.tabBar()->width())
          << size.width() << drawer.tabText(i).toStdString();
      EXPECT_TRUE(drawer.currentWidget()->isVisible());
    }
  }
}

TEST(MainWindow, ATypedNumberChangesWhatIsBuiltAndShown) {
  MainWindow window;
  show(window, 1400, 900);
  LengthEdit* depth = window.columns().measures().lengthField("depth");
  ASSERT_NE(depth, nullptr);
  const double before = window.session().built().pieces.at(0).flat.width;
  const QImage sheetBefore = window.columns().sheet().grab().toImage();
  depth->setFocus();
  depth->selectAll();
  QTest::keyClicks(depth, "2 in");
  QTest::keyClick(depth, Qt::Key_Return);
  EXPECT_EQ(window.session().design().parameters.length("depth"), Length::inches(2));
  EXPECT_GT(window.session().built().pieces.at(0).flat.width, before);
  EXPECT_NE(window.columns().sheet().grab().toImage(), sheetBefore);
  EXPECT_TRUE(window.isWindowModified());
  ASSERT_TRUE(depth->hasFocus());
  QTest::keyClick(depth, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_NE(depth->length(), Length::inches(2));
  EXPECT_FALSE(window.isWindowModified());
}

TEST(MainWindow, AMeasureThatDoesNotFitIsListedAndLeadsToItsField) {
  MainWindow window;
  show(window, 1400, 900);
  changeParameter(window.session(), "tab", Length::mm(900).nm());
  ASSERT_GE(window.columns().checks().list().count(), 1);
  window.columns().checks().list().setCurrentRow(0);
  EXPECT_EQ(QApplication::focusWidget(), window.columns().measures().lengthField("tab"));
  EXPECT_TRUE(window.columns().measures().lengthField("tab")->isWrong());
  window.session().history().undo();
}

TEST(MainWindow, FocusOnAMeasureLightsItsPanels) {
  MainWindow window;
  show(window, 1400, 900);
  window.columns().measures().lengthField("glue-strip")->setFocus();
  EXPECT_TRUE(window.session().selection().lit().panels.contains("base/front/glue-strip"));
}

}  // namespace
}  // namespace creasewright
