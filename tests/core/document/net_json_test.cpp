#include "document/net_json.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "support/golden.h"

namespace creasewright {
namespace {

BuiltDesign standard(const char* style) {
  const Result<Design> design =
      newDesign(style, std::nullopt, cards().front(), Ease::Easy, ToolGrid::sixteenthInch());
  return *build(*design);
}

TEST(NetJson, FramedTrayIsAsAccepted) {
  testing::expectGolden("net_json/framed_tray.json", writeNetJson(standard("framed-tray")));
}

TEST(NetJson, RestIsNoMate) {
  const nlohmann::json json = nlohmann::json::parse(writeNetJson(standard("straight-tuck-box")));
  const nlohmann::json& piece = json["pieces"][0];
  ASSERT_EQ(piece["mates"].size(), 3u);  // two tuck flaps and the seam
  for (const auto& mate : piece["mates"]) EXPECT_NE(mate["method"], "rest");
  EXPECT_TRUE(json["product"].is_null());
  EXPECT_EQ(piece["cut_plan"][0]["kind"], "trim");
}

}  // namespace
}  // namespace creasewright
