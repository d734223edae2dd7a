#include "session/kit_session.h"

#include <functional>

#include <gtest/gtest.h>

#include "commands/kit_edits.h"

namespace creasewright {
namespace {

class KitSessionTest : public ::testing::Test {
 protected:
  KitSessionTest() {
    ClassKit kit;
    kit.items = {{*newDesign("two-piece-box", *parseProduct("box:60x40x25mm"), cards()[0],
                             Ease::Easy, ToolGrid::millimetre()),
                  1}};
    kit.stock = {{"A4", Length::mm(210), Length::mm(297)}};
    session_.start(kit);
    QObject::connect(&session_, &KitSession::changed, [this] { ++changes_; });
  }

  KitSession session_;
  int changes_ = 0;
};

/// Every kind of change is one named step, and all undone the kit is as it was, all redone as it
/// became.
TEST_F(KitSessionTest, EveryChangeIsOneNamedStepThatCanBeUndone) {
  const ClassKit first = session_.kit();
  const Design band = *newDesign("belly-band", *parseProduct("box:60x40x25mm"), cards()[1],
                                 Ease::Easy, ToolGrid::millimetre());
  Extra label;
  label.kind = "label";
  const std::vector<std::function<void()>> changes{
      [&] { changeKitTitle(session_, QStringLiteral("Soap evening")); },
      [&] { changeTakers(session_, 20); },
      [&] { changeSpares(session_, 2); },
      [&] { changeKeepGrain(session_, true); },
      [&] {
        changeSheets(session_, {{"A3", Length::mm(297), Length::mm(420)}});
      },
      [&] { changeStock(session_, first.stock, {SupplyItem()}); },
      [&] {
        changeNames(session_, {{"Ada"}, Length::mm(70), Length::mm(40)});
      },
      [&] {
        addKitItem(session_, {band, 1});
      },
      [&] {
        addKitBlank(session_, {"Panel", Length::mm(80), Length::mm(60), cards()[0], 1});
      },
      [&] { changePerPerson(session_, 1, 3); },
      [&] { changePerPerson(session_, 2, 4); },
      [&] { changePiece(session_, 0, "lid"); },
      [&] {
        addOffcutUses(session_, {{0, 1, label, 5}});
      },
      [&] { removeKitRow(session_, 2); },
      [&] { removeKitRow(session_, 0); },
      [&] { changeKit(session_, first); }};
  std::vector<ClassKit> kits{first};
  for (std::size_t i = 0; i < changes.size(); ++i) {
    changes[i]();
    ASSERT_EQ(session_.history().count(), static_cast<int>(i + 1)) << i;
    EXPECT_FALSE(session_.history().undoText().isEmpty()) << i;
    EXPECT_FALSE(session_.kit() == kits.back()) << i;
    kits.push_back(session_.kit());
  }
  for (std::size_t i = changes.size(); i > 0; --i) {
    session_.history().undo();
    EXPECT_TRUE(session_.kit() == kits[i - 1]) << i;
  }
  for (std::size_t i = 1; i < kits.size(); ++i) {
    session_.history().redo();
    EXPECT_TRUE(session_.kit() == kits[i]) << i;
  }
}

TEST_F(KitSessionTest, GoingOnInAFieldIsOneStepAndNothingIsNone) {
  changeTakers(session_, 13);
  changeTakers(session_, 14);
  EXPECT_EQ(session_.history().count(), 1);
  changeSpares(session_, 1);
  changeTakers(session_, 15);
  EXPECT_EQ(session_.history().count(), 3);
  changeTakers(session_, 15);
  changeKeepGrain(session_, false);
  EXPECT_EQ(session_.history().count(), 3);
  changeTakers(session_, 14);  // back where it was: no step is left
  EXPECT_EQ(session_.history().count(), 2);
}

/// A change of numbers builds no design again; one that cannot be built leaves the last that could.
TEST_F(KitSessionTest, WhatIsBuiltIsKept) {
  ASSERT_TRUE(session_.isCurrent());
  const auto box = session_.built()->items[0];
  changeTakers(session_, 30);
  EXPECT_EQ(session_.built()->items[0], box);
  EXPECT_EQ(session_.built()->kit.takers, 30);
  changePiece(session_, 0, "spout");
  EXPECT_FALSE(session_.isCurrent());
  ASSERT_TRUE(session_.problem());
  EXPECT_EQ(session_.problem()->code, ProblemCode::PieceUnknown);
  EXPECT_EQ(session_.builtOf(session_.kit().items[0].design), &box->design);
  session_.history().undo();
  EXPECT_TRUE(session_.isCurrent());
  EXPECT_EQ(session_.built()->items[0], box);
  EXPECT_EQ(changes_, 3);
}

}  // namespace
}  // namespace creasewright
