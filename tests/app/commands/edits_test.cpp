#include "commands/edits.h"

#include <functional>

#include <gtest/gtest.h>

#include "document/design_file.h"
#include "styles/registry.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// What a file would hold: equal designs have equal bytes.
std::string bytes(const DesignSession& session) { return writeDesign(session.design()); }

Extra label() {
  Extra extra;
  extra.kind = "label";
  return extra;
}

/// One change of every kind, each of which changes something of a fresh design.
std::vector<std::function<void(DesignSession&)>> everyEdit() {
  return {
      [](DesignSession& s) {
        changeWords(s,
                    {QStringLiteral("Soap tray"), {QStringLiteral("soap")}, QStringLiteral("n")});
      },
      [](DesignSession& s) { changeStyle(s, "straight-tuck-box"); },
      [](DesignSession& s) { changeProduct(s, *parseProduct("box:80x50x30mm")); },
      [](DesignSession& s) { changeEase(s, Ease::Loose); },
      [](DesignSession& s) { changeGrid(s, ToolGrid::eighthInch()); },
      [](DesignSession& s) { changeBoard(s, Length::mm(250)); },
      [](DesignSession& s) { changeCard(s, *findCard("cover-80lb")); },
      [](DesignSession& s) { changeExtras(s, {label()}, QStringLiteral("add a label")); },
      [](DesignSession& s) { changeParameter(s, "seam", Length::mm(17).nm()); },
  };
}

TEST(Edits, EveryChangeIsOneNamedStepThatCanBeUndone) {
  DesignSession session;
  std::vector<std::string> states{bytes(session)};
  for (const auto& edit : everyEdit()) {
    edit(session);
    ASSERT_EQ(session.history().count(), static_cast<int>(states.size())) << "one step each";
    EXPECT_FALSE(session.history().undoText().isEmpty());
    EXPECT_NE(bytes(session), states.back()) << session.history().undoText().toStdString();
    states.push_back(bytes(session));
  }
  for (std::size_t i = states.size(); i-- > 1;) {
    session.history().undo();
    EXPECT_EQ(bytes(session), states[i - 1]) << session.history().redoText().toStdString();
  }
  for (std::size_t i = 1; i < states.size(); ++i) {
    session.history().redo();
    EXPECT_EQ(bytes(session), states[i]) << session.history().undoText().toStdString();
  }
}

TEST(Edits, AnEqualValueMakesNoStep) {
  DesignSession session;
  const Design now = session.design();
  changeStyle(session, now.styleId);
  changeStyle(session, "no-such-style");
  changeProduct(session, now.product);
  changeEase(session, now.ease);
  changeGrid(session, now.grid);
  changeBoard(session, now.board);
  changeCard(session, now.card);
  changeExtras(session, now.extras, QStringLiteral("extras"));
  changeParameter(session, "depth", now.parameters.raw("depth"));
  EXPECT_EQ(session.history().count(), 0);
  EXPECT_EQ(session.design(), now);
}

TEST(Edits, GoingOnInOneFieldIsOneStepAndComingBackIsNone) {
  DesignSession session;
  const std::string first = bytes(session);
  const auto type = [&](const char* product, const char* field) {
    changeProduct(session, *parseProduct(product), QString::fromLatin1(field));
  };
  type("box:106x32x22mm", "product-0");
  type("box:107x32x22mm", "product-0");
  EXPECT_EQ(session.history().count(), 1);
  type("box:107x33x22mm", "product-1");
  EXPECT_EQ(session.history().count(), 2) << "another field is another step";
  session.history().undo();
  type("box:108x32x22mm", "product-0");
  type("box:105x32x22mm", "product-0");
  EXPECT_EQ(bytes(session), first);
  EXPECT_EQ(session.history().count(), 0) << "typed back to what it was";
  changeEase(session, Ease::Loose);
  changeEase(session, Ease::Snug);
  EXPECT_EQ(session.history().count(), 2) << "choices do not merge";
}

TEST(Edits, AnotherStyleKeepsAllThatIsNotItsOwn) {
  DesignSession session;
  Extra extra = label();
  extra.face = "base";
  changeWords(session,
              {QStringLiteral("Soap tray"), {QStringLiteral("soap")}, QStringLiteral("n")});
  changeBoard(session, Length::mm(250));
  changeExtras(session, {extra}, QStringLiteral("label"));
  const Design before = session.design();
  for (const Style& style : styles()) {
    if (style.id == before.styleId) continue;
    changeStyle(session, style.id);
    const Design& now = session.design();
    EXPECT_EQ(now.styleId, style.id);
    EXPECT_EQ(now.title, before.title);
    EXPECT_EQ(now.tags, before.tags);
    EXPECT_EQ(now.notes, before.notes);
    EXPECT_EQ(now.product, before.product);
    EXPECT_EQ(now.card, before.card);
    EXPECT_EQ(now.ease, before.ease);
    EXPECT_EQ(now.grid, before.grid);
    EXPECT_EQ(now.board, before.board);
    ASSERT_EQ(now.extras.size(), 1U);
    EXPECT_EQ(now.extras[0].face, "") << "it finds its face in the new style";
    session.history().undo();
    EXPECT_EQ(session.design(), before);
  }
}

TEST(Edits, AnySequenceUndoneAndRedoneGivesTheSameBytes) {
  testing::Random random(907);
  const auto edits = everyEdit();
  for (int round = 0; round < 6; ++round) {
    DesignSession session;
    const std::string first = bytes(session);
    for (int i = 0; i < 30; ++i) {
      const auto pick =
          static_cast<std::size_t>(random.whole(0, static_cast<int>(edits.size()) + 2));
      if (pick < edits.size()) {
        edits[pick](session);
      } else if (pick == edits.size()) {
        session.history().undo();
      } else if (pick == edits.size() + 1) {
        changeStyle(session, styles()[static_cast<std::size_t>(
                                          random.whole(0, static_cast<int>(styles().size()) - 1))]
                                 .id);
      } else {
        const double side = random.whole(20, 120);
        changeProduct(session,
                      Product{ProductShape::Box, Length::mm(side), Length::mm(40), Length::mm(25)});
      }
    }
    const std::string last = bytes(session);
    const int at = session.history().index();
    session.history().setIndex(0);
    EXPECT_EQ(bytes(session), first);
    session.history().setIndex(at);
    EXPECT_EQ(bytes(session), last);
  }
}

}  // namespace
}  // namespace creasewright
