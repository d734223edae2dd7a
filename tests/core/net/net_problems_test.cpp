#include "net/net_problems.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "support/net_text.h"

namespace creasewright {
namespace {

struct Case {
  const char* name;
  const char* net;
  ProblemCode code;
  const char* where;
};

// Each net has exactly the one fault its name says.
const Case kFaults[] = {
    {"SameNameTwice", "panel a 0,0 40,0 40,20 0,20\npanel a 0,0 40,0 40,20 0,20\n",
     ProblemCode::DuplicateName, "a"},
    {"BowTie", "panel a 0,0 40,20 40,0 0,20\n", ProblemCode::PanelNotSimple, "a"},
    {"Crumb", "panel a 0,0 0.9,0 0.9,0.9 0,0.9\n", ProblemCode::PanelTooSmall, "a"},
    {"Overlap",
     "panel a 0,0 40,0 40,20 0,20\npanel b 0,0 20,0 20,15 -10,20\npanel c 0,0 20,0 20,10 0,10\n"
     "crease a b 0,0 20,0 90 1 score\ncrease a c 20,0 40,0 90 1 score\n",
     ProblemCode::PanelsOverlap, "b"},
    {"CreaseBesideItsPanel",
     "panel a 0,0 40,0 40,20 0,20\npanel b 0,0 20,0 20,10 0,10\n"
     "crease a b 0,0 40,0 90 1 score\n",
     ProblemCode::CreaseOffPanel, "b"},
    {"CreaseTooShort",
     "panel a 0,0 40,0 40,20 0,20\npanel b 0,0 2,0 2,10 0,10\ncrease a b 0,0 2,0 90 1 score\n",
     ProblemCode::CreaseTooShort, "b"},
    {"NarrowGlueFlap",
     "panel a 0,0 40,0 40,20 0,20\npanel b 0,0 40,0 40,5 0,5\n"
     "crease a b 0,0 40,0 180 1 score\nmate b a inside glue rim\n",
     ProblemCode::FlapTooNarrow, "b"},
    {"HoleAcrossTheEdge", "panel a 0,0 40,0 40,20 0,20\nopening a 35,5 35,8 45,8 45,5\n",
     ProblemCode::OpeningOutside, "a"},
};

TEST(NetProblems, SaysWhatAndWhere) {
  for (const Case& fault : kFaults) {
    const Result<Net> net = netFromText(fault.net);
    ASSERT_TRUE(net.ok()) << fault.name;
    const Problems found = findProblems(*net, flatten(*net), 0.3);
    EXPECT_TRUE(std::ranges::any_of(found, [&fault](const Problem& p) {
      return p.code == fault.code && p.where == fault.where;
    })) << fault.name;
  }
}

TEST(NetProblems, TwoPanelsThatOnlyTouchInACornerAreTwoPieces) {
  // b hangs on a by a crease given beside it, so that flat they meet in one point only.
  const Result<Net> net = netFromText(
      "panel a 0,0 40,0 40,20 0,20\npanel b 0,0 40,0 40,10 0,10\n"
      "crease a b -40,0 0,0 90 1 score\n");
  ASSERT_TRUE(net.ok());
  const Problems found = findProblems(*net, flatten(*net), 0.3);
  EXPECT_TRUE(std::ranges::any_of(
      found, [](const Problem& p) { return p.code == ProblemCode::NetInPieces; }));
}

TEST(NetProblems, SoundNetHasNone) {
  const Result<Net> net = netFromText(
      "panel a 0,0 40,0 40,20 0,20\nopening a 5,5 5,8 8,8 8,5\npanel b 0,0 40,0 40,10 0,10\n"
      "crease a b 0,0 40,0 90 1 score\n");
  ASSERT_TRUE(net.ok());
  EXPECT_TRUE(findProblems(*net, flatten(*net), 0.3).empty());
}

}  // namespace
}  // namespace creasewright
