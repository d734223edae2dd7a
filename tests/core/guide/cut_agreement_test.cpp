#include <iostream>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/laws/random_design.h"
#include "document/net_json.h"
#include "document/suggest.h"
#include "guide/make_guide.h"

// The JSON file, the guide and the figures beside a style count the same cuts.
namespace creasewright {
namespace {

using Counts = std::map<std::string, int>;

/// Strokes by kind, as another program counts them in the JSON file.
Counts countsInJson(const nlohmann::json& piece) {
  Counts counts;
  for (const auto& entry : piece["cut_plan"]) {
    const auto kind = entry["kind"].get<std::string>();
    if (kind == "opening" || kind == "slit") ++counts[kind];
    if (kind == "cut")
      counts[entry["what"].get<std::string>()] += 1 + static_cast<int>(entry["repeats"].size());
  }
  return counts;
}

std::string kindOf(StepCode code) {
  switch (code) {
    case StepCode::CutOpenings:
      return "opening";
    case StepCode::CutSlits:
      return "slit";
    case StepCode::CutWaste:
      return "straight";
    case StepCode::CutMitres:
      return "mitre";
    case StepCode::CutTapers:
      return "taper";
    case StepCode::CutNotches:
      return "notch";
    case StepCode::CutCurves:
      return "curve";
    default:
      return {};
  }
}

Counts countsInGuide(const Guide& guide, int piece) {
  Counts counts;
  for (const Step& step : guide.steps)
    if (step.piece == piece)
      for (const Cut& cut : step.cuts)
        counts[kindOf(step.code)] += 1 + static_cast<int>(cut.repeats.size());
  return counts;
}

void expectAgreement(const BuiltDesign& built) {
  const Guide guide = makeGuide(built);
  const nlohmann::json json = nlohmann::json::parse(writeNetJson(built));
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    const Counts inJson = countsInJson(json["pieces"][i]);
    EXPECT_EQ(inJson, countsInGuide(guide, static_cast<int>(i)))
        << built.style->id << ' ' << built.pieces[i].name;
  }
}

TEST(CutAgreement, JsonAndGuideCountAlikeInEveryStyle) {
  testing::Random random(1801);
  for (const Style& style : styles()) {
    Design design;
    design.styleId = style.id;
    design.parameters = standardParameters(style);
    const auto built = build(design);
    ASSERT_TRUE(built) << style.id;
    expectAgreement(*built);
    for (int i = 0; i < 5; ++i)
      if (const auto other = testing::randomInsideLimits(random, style))
        expectAgreement(*build(*other));
  }
}

/// Its tabs and ends are parted from the strips beside them: the JSON told these partings as slits
/// and the same lines as cuts again.
TEST(CutAgreement, TheFramedTrayHasNoSlits) {
  Design design;
  design.styleId = "framed-tray";
  design.parameters = standardParameters(**findStyle("framed-tray"));
  const nlohmann::json json = nlohmann::json::parse(writeNetJson(*build(design)));
  const Counts counts = countsInJson(json["pieces"][0]);
  EXPECT_FALSE(counts.contains("slit"));
  EXPECT_GE(counts.at("straight"), 8);
}

}  // namespace
}  // namespace creasewright
