#include "tools/edit_tool.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "bridge/style_text.h"
#include "commands/edits.h"
#include "document/design_file.h"
#include "scene/sheet_view.h"
#include "support/deep_point.h"
#include "tools/tool_strip.h"

namespace creasewright {
namespace {

class EditToolTest : public ::testing::Test {
 protected:
  EditToolTest() {
    changeStyle(session_, "straight-tuck-box");
    changeProduct(session_, *parseProduct("box:60x35x120mm"));
    view_.resize(900, 800);
    view_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&view_));
    view_.activateWindow();
    view_.setFocus();
  }

  [[nodiscard]] const BuiltPiece& box() const { return session_.built().pieces.front(); }
  [[nodiscard]] const std::vector<Edit>& edits() const { return session_.design().edits; }
  [[nodiscard]] std::size_t panel(const char* id) const {
    return static_cast<std::size_t>(*box().net.find(id));
  }
  [[nodiscard]] Point middle(const char* id) const {
    const Bounds all = bounds(box().flat.panels[panel(id)]);
    return (all.low + all.high) / 2;
  }
  [[nodiscard]] Segment foldOf(const std::string& id) const {
    const Crease* crease = box().net.creaseOf(*box().net.find(id));
    return box().flat.creases[static_cast<std::size_t>(crease - box().net.creases.data())];
  }
  void click(Point at, Qt::KeyboardModifiers keys = {}) {
    const QPoint pixel = view_.camera().toScreen(at).toPoint();
    QTest::mouseMove(&view_, pixel);
    QTest::mouseClick(&view_, Qt::LeftButton, keys, pixel);
  }
  void key(Qt::Key key) { QTest::keyClick(&view_, key); }
  /// The edit just made; it must be the last of `count` and not broken.
  Edit made(std::size_t count) {
    EXPECT_EQ(edits().size(), count) << said();
    EXPECT_TRUE(session_.built().brokenEdits.empty()) << said();
    return edits().empty() ? Edit() : edits().back();
  }
  std::string said() const {
    return said_.isEmpty() ? std::string() : said_.last().front().toString().toStdString();
  }

  DesignSession session_;
  SheetView view_{session_};
  ToolStrip strip_{view_};
  QSignalSpy said_{&view_, &SheetView::hovered};
};

TEST_F(EditToolTest, AClickInTheMiddleCutsAnOpeningThatStaysInTheMiddle) {
  key(Qt::Key_O);
  click(middle("front") + Point{1, 1});
  const Edit edit = made(1);
  EXPECT_EQ(edit.kind, "opening");
  EXPECT_EQ(edit.panel, "front");
  EXPECT_TRUE(edit.measures.empty()) << "all of it follows from the panel";
  EXPECT_EQ(box().net.panels[panel("front")].openings.size(), 1U);
  EXPECT_NE(said().find("Changes"), std::string::npos);
  changeProduct(session_, *parseProduct("box:90x50x70mm"));
  EXPECT_TRUE(session_.built().brokenEdits.empty());
  const Panel& front = box().net.panels[panel("front")];
  const Bounds hole = bounds(front.openings.front());
  const Bounds whole = bounds(front.outline);
  EXPECT_NEAR(hole.low.x + hole.high.x, whole.low.x + whole.high.x, 1e-6);
  session_.history().undo();
  session_.history().undo();
  EXPECT_TRUE(edits().empty()) << "one step";
}

TEST_F(EditToolTest, AClickNearASideKeepsItsDistanceFromThatSide) {
  key(Qt::Key_H);
  const Bounds front = bounds(box().flat.panels[panel("front")]);
  click({front.low.x + 8, front.high.y - 12});
  const Edit edit = made(1);
  EXPECT_EQ(edit.kind, "holes");
  EXPECT_EQ(edit.measures.at("x-from"), "Left");
  EXPECT_EQ(edit.measures.at("y-from"), "Top");
  const Bounds hole = bounds(box().net.panels[panel("front")].openings.front());
  const Polygon& outline = box().net.panels[panel("front")].outline;
  // As far as the hand can aim, and the grid.
  EXPECT_NEAR((hole.low.x + hole.high.x) / 2 - bounds(outline).low.x, 8, 2);
  EXPECT_NEAR(bounds(outline).high.y - (hole.low.y + hole.high.y) / 2, 12, 2);
}

TEST_F(EditToolTest, NumbersChooseAnotherKindAndTheHintNamesThem) {
  key(Qt::Key_H);
  key(Qt::Key_3);
  EXPECT_NE(said().find("Pair of slits"), std::string::npos) << said();
  click(middle("front"));
  EXPECT_EQ(made(1).kind, "slit-pair");
}

TEST_F(EditToolTest, ANotchAndAShapedEdgeGoOntoTheEdgeThatIsNearest) {
  const Segment top = [&] {
    const Polygon& front = box().flat.panels[panel("front")];
    const Bounds all = bounds(front);
    return Segment{{all.low.x, all.high.y}, all.high};
  }();
  key(Qt::Key_N);
  click((top.a + top.b) / 2);
  const Edit notch = made(1);
  EXPECT_EQ(notch.kind, "notch");
  EXPECT_EQ(notch.panel, "front");
  EXPECT_EQ(notch.edge, "top");
  EXPECT_TRUE(notch.measures.empty());
  session_.history().undo();
  key(Qt::Key_E);
  click((top.a + top.b) / 2);
  EXPECT_EQ(made(1).kind, "edge");
}

TEST_F(EditToolTest, AFlapIsAddedAndTakenAwayAgain) {
  const std::size_t before = box().net.panels.size();
  const Polygon seam = box().flat.panels[panel("front/left/back/seam")];
  key(Qt::Key_F);
  click(testing::deepPoint(seam));
  const Edit flap = made(1);
  EXPECT_EQ(flap.panel, "front/left/back/seam");
  EXPECT_EQ(box().net.panels.size(), before + 1);
  const std::string id = flap.panel + "/flap";
  key(Qt::Key_X);
  click(testing::deepPoint(box().flat.panels[panel(id.c_str())]));
  EXPECT_EQ(made(2).kind, "remove");
  EXPECT_EQ(box().net.panels.size(), before);
}

TEST_F(EditToolTest, AFoldIsLockedBySlits) {
  std::string tuck;
  for (const Mate& mate : box().net.mates)
    if (mate.method == Method::Tuck)
      tuck = box().net.panels[static_cast<std::size_t>(mate.panel)].id;
  const double whole = length(foldOf(tuck));
  key(Qt::Key_G);
  key(Qt::Key_2);
  const Segment fold = foldOf(tuck);
  click((fold.a + fold.b) / 2);
  EXPECT_EQ(made(1).kind, "slit-lock");
  EXPECT_NEAR(length(foldOf(tuck)), whole - 16, 1e-9);
}

TEST_F(EditToolTest, APullFromEdgeToEdgeScoresBetweenThem) {
  std::string lid;
  for (const Panel& each : box().net.panels)
    if (each.id.ends_with("top-dust-flap")) lid = each.id;
  ASSERT_FALSE(lid.empty());
  const std::size_t before = box().net.panels.size();
  key(Qt::Key_C);
  const Bounds all = bounds(box().flat.panels[panel(lid.c_str())]);
  const Point from{all.low.x + all.width() / 4, (all.low.y + all.high.y) / 2};
  const Point to{all.high.x - all.width() / 4, (all.low.y + all.high.y) / 2};
  const auto pixel = [&](Point at) { return view_.camera().toScreen(at); };
  QTest::mousePress(&view_, Qt::LeftButton, {}, pixel(from).toPoint());
  QMouseEvent move(QEvent::MouseMove, pixel(to), view_.mapToGlobal(pixel(to)), Qt::NoButton,
                   Qt::LeftButton, {});
  QApplication::sendEvent(&view_, &move);
  QTest::mouseRelease(&view_, Qt::LeftButton, {}, pixel(to).toPoint());
  EXPECT_EQ(made(1).kind, "split");
  EXPECT_EQ(box().net.panels.size(), before + 1);
  EXPECT_TRUE(box().net.find(lid + "/part"));
}

TEST_F(EditToolTest, WordsAreWrittenOnThePanel) {
  key(Qt::Key_T);
  click(middle("front/left/back"));
  EXPECT_EQ(made(1).kind, "text");
  EXPECT_EQ(box().net.inscriptions.size(), 1U);
  EXPECT_FALSE(view_.grab().isNull());
}

// What cannot be made is told in words, kept in the list, and one step to undo.
TEST_F(EditToolTest, WhatCannotBeMadeIsTold) {
  key(Qt::Key_X);
  click(middle("front"));  // the first panel carries all others
  ASSERT_EQ(edits().size(), 1U);
  EXPECT_EQ(session_.built().brokenEdits.size(), 1U);
  EXPECT_GT(said().size(), 10U);
  session_.history().undo();
  EXPECT_TRUE(edits().empty());
  click({-5, -5});
  EXPECT_TRUE(edits().empty()) << "beside the net nothing is added";
}

TEST_F(EditToolTest, EveryToolAddsSomethingSomewhereAndUndoGivesTheSameBytes) {
  const std::string before = writeDesign(session_.design());
  int tools = 0;
  for (const auto& tool : strip_.tools()) {
    if (dynamic_cast<EditTool*>(tool.get()) == nullptr) continue;
    ++tools;
    key(tool->key());
    bool added = false;
    for (std::size_t i = 0; i < box().net.panels.size() && !added; ++i) {
      const std::size_t count = edits().size();
      click(testing::deepPoint(box().flat.panels[i]));
      added = edits().size() > count && session_.built().brokenEdits.empty();
      if (!added && edits().size() > count) session_.history().undo();
    }
    EXPECT_TRUE(added) << tool->name().toStdString();
  }
  EXPECT_GE(tools, 9);
  const std::string after = writeDesign(session_.design());
  while (session_.history().undoText() != "product") session_.history().undo();
  EXPECT_EQ(writeDesign(session_.design()), before);
  while (session_.history().canRedo()) session_.history().redo();
  EXPECT_EQ(writeDesign(session_.design()), after);
}

}  // namespace
}  // namespace creasewright
