#include "document/net_json.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "styles/registry.h"
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

/// Plans of every style: a stage for each fold stage, a tape or a line for each place, and cuts
/// that name only edges and scores there are.
TEST(NetJson, PlansAreWholeInEveryStyle) {
  for (const Style& style : styles()) {
    const BuiltDesign built = standard(std::string(style.id).c_str());
    const nlohmann::json json = nlohmann::json::parse(writeNetJson(built));
    for (std::size_t i = 0; i < built.pieces.size(); ++i) {
      const nlohmann::json& piece = json["pieces"][i];
      const Net& net = built.pieces[i].net;
      EXPECT_EQ(piece["fold_plan"]["stages"].size(), net.stages.size()) << style.id;
      std::size_t joins = 0;
      for (const auto& stage : piece["fold_plan"]["stages"]) joins += stage["joins"].size();
      EXPECT_EQ(joins, net.mates.size()) << style.id;
      for (const auto& place : piece["glue_plan"]) {
        EXPECT_TRUE(place.contains("line")) << style.id;
        // Glue between pieces closes in no stage of its own piece.
        EXPECT_GE(place["stage"].get<int>(), place.contains("piece") ? 0 : 1) << style.id;
      }
      for (const auto& entry : piece["cut_plan"]) {
        if (entry["kind"] != "cut") continue;
        EXPECT_GE(entry["line"].size(), 2u) << style.id;
        EXPECT_FALSE(entry["what"].get<std::string>().empty()) << style.id;
      }
    }
  }
}

}  // namespace
}  // namespace creasewright
