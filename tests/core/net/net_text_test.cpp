#include "support/net_text.h"

#include <gtest/gtest.h>

#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr const char* kTwoPanels =
    "stage walls\n"
    "panel base 0,0 40,0 40,20 0,20\n"
    "opening base 5,5 5,8 8,8 8,5\n"
    "panel base/front 0,0 40,0 40,10 0,10\n"
    "crease base base/front 0,0 40,0 90 1 score\n"
    "mate base/front base inside glue inner 0,0 40,0 40,5\n"
    "slit base 10,10 20,10\n";

TEST(NetText, ReadsBackWhatItWrote) {
  const Result<Net> net = netFromText(kTwoPanels);
  ASSERT_TRUE(net.ok());
  EXPECT_EQ(toText(*net), kTwoPanels);
  EXPECT_EQ(net->panels[1].id, "base/front");
  EXPECT_EQ(net->creases[0].angle, Angle::degrees(90));
  EXPECT_EQ(net->mates[0].patch.size(), 3U);
}

TEST(NetText, RoundTripsEveryStyle) {
  for (const Style& style : styles()) {
    const Workbench bench{Length::mm(0.25), ToolGrid::none()};
    for (const Piece& piece : style.build(standardParameters(style), bench)) {
      const std::string text = toText(piece.net);
      const Result<Net> again = netFromText(text);
      ASSERT_TRUE(again.ok()) << style.id;
      EXPECT_EQ(toText(*again), text) << style.id;
    }
  }
}

TEST(NetText, NamesTheLineItCannotRead) {
  for (const char* bad : {"panel base 0,0 1,0\n", "panel base 0,0 1,0 x,1\n",
                          "crease base front 0,0 1,0 90 1 score\n", "hello world\n",
                          "mate a b inside glue rim\n", "panel base 0,0 1,0 nan,1\n", "stage\n"}) {
    const Result<Net> net = netFromText(std::string("# comment\n") + bad);
    ASSERT_FALSE(net.ok()) << bad;
    EXPECT_EQ(net.problem().where, "line 2") << bad;
  }
}

}  // namespace
}  // namespace creasewright
