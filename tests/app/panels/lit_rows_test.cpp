#include <QAbstractItemView>
#include <QApplication>
#include <QMouseEvent>
#include <QTest>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "panels/glue_list.h"
#include "panels/outline_tree.h"
#include "panels/score_list.h"
#include "panels/step_list.h"
#include "session/places.h"

namespace creasewright {
namespace {

template <class List>
struct Shown {
  DesignSession session;
  List list{session};

  Shown() {
    list.setFocusPolicy(Qt::NoFocus);  // a list with the focus lights its current row
    list.resize(900, 700);
    list.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&list));
  }
};

/// Every row that stands for a place, by going over all of them with the mouse.
template <class List>
int litRows(Shown<List>& shown) {
  QAbstractItemView& list = shown.list;
  int lit = 0;
  for (int y = 2; y < list.viewport()->height(); y += 4) {
    const QModelIndex row = list.indexAt({list.viewport()->width() / 8, y});
    if (!row.isValid()) {
      continue;
    }
    const QPoint at = list.visualRect(row).center();
    QMouseEvent move(QEvent::MouseMove, at, list.viewport()->mapToGlobal(at), Qt::NoButton,
                     Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(list.viewport(), &move);
    const Place wanted = row.siblingAtColumn(0).data(kPlaceRole).value<Place>();
    const Place& now = shown.session.selection().lit();
    EXPECT_TRUE(wanted.isEmpty() ? now.isEmpty() : now == wanted)
        << row.data().toString().toStdString();
    lit += wanted.isEmpty() ? 0 : 1;
  }
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(list.viewport(), &leave);
  EXPECT_TRUE(shown.session.selection().lit().isEmpty()) << "the mouse has gone";
  return lit;
}

TEST(LitRows, RowsOfEveryListLightTheirPanelsUnderTheMouse) {
  Shown<ScoreList> scores;
  EXPECT_GT(litRows(scores), 2);
  Shown<StepList> steps;
  EXPECT_GT(litRows(steps), 5);
  Shown<GlueList> glue;
  EXPECT_GT(litRows(glue), 5);
  Shown<OutlineTree> panels;
  EXPECT_GT(litRows(panels), 5);
}

TEST(LitRows, EachCreaseOfTheNetIsLitByTheLineItLiesOn) {
  const DesignSession session;
  for (std::size_t p = 0; p < session.built().pieces.size(); ++p) {
    const BuiltPiece& piece = session.built().pieces[p];
    for (std::size_t i = 0; i < piece.flat.creases.size(); ++i) {
      const Crease& crease = piece.net.creases[i];
      const QStringList lit =
          placeOfLines(session.built(), static_cast<int>(p), {piece.flat.creases[i]}).panels;
      for (const int panel : {crease.parent, crease.child}) {
        const auto& id = piece.net.panels[static_cast<std::size_t>(panel)].id;
        EXPECT_TRUE(lit.contains(QString::fromStdString(id))) << id;
      }
    }
  }
}

TEST(LitRows, AScoreThatIsTickedOffStaysSoWhileItReadsTheSame) {
  DesignSession session;
  ScoreList list(session);
  const auto firstLine = [&] { return list.topLevelItem(0)->child(0); };
  firstLine()->setCheckState(0, Qt::Checked);
  const QString words = firstLine()->text(0);
  changeCard(session, *findCard("310gsm"));
  ASSERT_EQ(firstLine()->text(0), words);
  EXPECT_EQ(firstLine()->checkState(0), Qt::Checked);
  changeParameter(session, "glue-strip", Length::mm(12).nm());
  ASSERT_NE(firstLine()->text(0), words);
  EXPECT_EQ(firstLine()->checkState(0), Qt::Unchecked) << "another setting is yet to be scored";
}

}  // namespace
}  // namespace creasewright
