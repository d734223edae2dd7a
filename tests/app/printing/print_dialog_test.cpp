#include "printing/print_dialog.h"

#include <QAbstractButton>
#include <QCheckBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QLabel>
#include <QTest>

#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "bridge/language.h"
#include "commands/edits.h"
#include "drawing/drawing.h"
#include "printing/calibration_fields.h"
#include "printing/printed_fields.h"
#include "widgets/length_edit.h"

namespace creasewright {
namespace {

void type(LengthEdit& field, const QString& words) {
  field.setFocus();
  field.setText(words);
  field.setModified(true);
  field.commit();
}

void choose(PrintDialog& dialog, TemplateKind kind) {
  dialog.kind().setCurrentIndex(dialog.kind().findData(static_cast<int>(kind)));
}

/// Whether every page says that it is corrected.
bool isSaidOnAll(const PrintDialog& dialog) {
  const Wording wording = wordingIn(Unit::Millimetre);
  return std::ranges::all_of(dialog.pages(), [&](const Drawing& page) {
    return std::ranges::any_of(page.texts, [&](const TextItem& text) {
      return wording(text.label).find("corrected for the printer") != std::string::npos;
    });
  });
}

class Calibration : public ::testing::Test {
 protected:
  void open(PrintDialog& dialog) {
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
    dialog.paper().setCurrentIndex(dialog.paper().findData(QStringLiteral("a4")));
  }
  /// A factor times what is drawn now.
  static QString times(const LengthEdit& field, double factor) {
    return QStringLiteral("%1 mm").arg(field.length().mm() * factor, 0, 'f', 2);
  }

  DesignSession session_;
};

TEST_F(Calibration, IsKeptForThePaperAndSaidOnEveryPage) {
  {
    PrintDialog dialog(session_);
    open(dialog);
    EXPECT_FALSE(dialog.calibration().isVisible());
    EXPECT_FALSE(isSaidOnAll(dialog));
    choose(dialog, TemplateKind::Calibration);
    ASSERT_TRUE(dialog.calibration().isVisible());
    ASSERT_EQ(dialog.pageCount(), 1);
    type(dialog.calibration().across(), times(dialog.calibration().across(), 0.994));
    choose(dialog, TemplateKind::CutAndScore);
    EXPECT_TRUE(isSaidOnAll(dialog));
    dialog.paper().setCurrentIndex(dialog.paper().findData(QStringLiteral("letter")));
    EXPECT_FALSE(isSaidOnAll(dialog)) << "of another paper nothing is known";
  }
  PrintDialog again(session_);
  open(again);
  EXPECT_TRUE(isSaidOnAll(again));
  choose(again, TemplateKind::Calibration);
  type(again.calibration().across(), times(again.calibration().across(), 1 / 0.994));
  choose(again, TemplateKind::CutAndScore);
  EXPECT_FALSE(isSaidOnAll(again)) << "printed as drawn: nothing to correct";
}

TEST_F(Calibration, AScaledPageIsToldAndNotKept) {
  PrintDialog dialog(session_);
  open(dialog);
  choose(dialog, TemplateKind::Calibration);
  type(dialog.calibration().down(), times(dialog.calibration().down(), 0.941));
  bool told = false;
  for (const QLabel* label : dialog.calibration().findChildren<QLabel*>())
    told = told || label->text().contains(QStringLiteral("can be corrected"));
  EXPECT_TRUE(told);
  choose(dialog, TemplateKind::CutAndScore);
  EXPECT_FALSE(isSaidOnAll(dialog));
}

/// No kind of print has a label or a button wider than there is room for its words.
TEST(PrintedPapersDialog, WordsAreWholeInAnyLanguage) {
  for (const char* language : {"de", "en"}) {
    useLanguage(QString::fromLatin1(language));
    DesignSession session;
    PrintDialog dialog(session);
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
    for (int kind = 0; kind < dialog.kind().count(); ++kind) {
      dialog.kind().setCurrentIndex(kind);
      QCoreApplication::processEvents();
      for (const auto* label : dialog.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->wordWrap()) continue;
        EXPECT_GE(label->width(), label->sizeHint().width()) << label->text().toStdString();
      }
      for (const auto* button : dialog.findChildren<QAbstractButton*>()) {
        if (!button->isVisible()) continue;
        EXPECT_GE(button->width(), button->sizeHint().width()) << button->text().toStdString();
      }
    }
  }
  useLanguage(QStringLiteral("en"));
}

void giveColours(DesignSession& session) {
  Card card = session.design().card;
  card.colours = parseCardColours("plum/mint").value();
  changeCard(session, card);
}

/// Whether an area of colour on the first page is no grey.
bool showsColour(const PrintDialog& dialog) {
  return std::ranges::any_of(dialog.pages().front().paths, [](const PathItem& item) {
    return item.role == Role::Face && item.colour &&
           (item.colour->red != item.colour->green || item.colour->green != item.colour->blue);
  });
}

TEST(PrintedPapersDialog, ComesInBlackAndWhiteWhereThatIsTicked) {
  DesignSession session;
  giveColours(session);
  PrintDialog dialog(session);
  dialog.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
  choose(dialog, TemplateKind::Printed);
  ASSERT_GT(dialog.pageCount(), 0);
  EXPECT_TRUE(showsColour(dialog));
  const auto boxes = dialog.printed().findChildren<QCheckBox*>();
  const auto black = std::ranges::find(boxes, QStringLiteral("Black and white"), &QCheckBox::text);
  ASSERT_NE(black, boxes.end());
  (*black)->click();
  EXPECT_FALSE(showsColour(dialog));
  (*black)->click();
  EXPECT_TRUE(showsColour(dialog));
}

TEST(PrintDialog, TheTemplateComesInTheColoursOfItsCard) {
  DesignSession session;
  giveColours(session);
  PrintDialog dialog(session);
  dialog.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
  EXPECT_FALSE(showsColour(dialog));
  choose(dialog, TemplateKind::Coloured);
  EXPECT_TRUE(showsColour(dialog));
  choose(dialog, TemplateKind::InkSaving);
  EXPECT_FALSE(showsColour(dialog));
}

TEST(PrintedPapersDialog, OffersBleedSideAndCuts) {
  DesignSession session;
  PrintDialog dialog(session);
  dialog.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
  EXPECT_FALSE(dialog.printed().isVisible());
  choose(dialog, TemplateKind::Printed);
  EXPECT_TRUE(dialog.printed().isVisible());
  EXPECT_EQ(dialog.pageCount(), 0) << "plain card";
  EXPECT_FALSE(dialog.complaint().isEmpty());
  giveColours(session);
  PrintDialog coloured(session);
  coloured.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&coloured));
  choose(coloured, TemplateKind::Printed);
  // A page that takes the tray just so leaves less bleed.
  coloured.paper().setCurrentIndex(coloured.paper().findData(QStringLiteral("a3")));
  const int front = coloured.pageCount();
  ASSERT_GT(front, 0);
  const auto fill = [&] {
    for (const PathItem& item : coloured.pages().front().paths)
      if (item.role == Role::Face) return bounds(item.rings.front());
    return Bounds();
  };
  const auto cuts = [&] {
    return std::ranges::any_of(coloured.pages().front().paths, [](const PathItem& item) {
      return item.role == Role::Cut && !item.like;
    });
  };
  const double wide = fill().width();
  type(coloured.printed().bleed(), QStringLiteral("5 mm"));
  EXPECT_NEAR(fill().width(), wide + 4, 0.01);
  type(coloured.printed().bleed(), QStringLiteral("50 mm"));
  EXPECT_NEAR(fill().width(), wide + 14, 0.01) << "the most there is";
  type(coloured.printed().bleed(), QStringLiteral("3 mm"));
  EXPECT_TRUE(cuts());
  coloured.printed().cuts().click();
  EXPECT_FALSE(cuts());
  coloured.printed().sides().setCurrentIndex(2);
  EXPECT_EQ(coloured.pageCount(), 2 * front);
}

}  // namespace
}  // namespace creasewright
