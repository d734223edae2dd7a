#include "document/design.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "styles/registry.h"

namespace creasewright {
namespace {

Product box(double length, double width, double height) {
  return {ProductShape::Box, Length::mm(length), Length::mm(width), Length::mm(height)};
}

Design designOf(std::string_view style, std::optional<Product> product = {}) {
  return newDesign(style, product, cards()[0], Ease::Easy, ToolGrid::sixteenthInch()).value();
}

TEST(Design, StartsWithTheListedCard) { EXPECT_EQ(Design().card, cards()[0]); }

TEST(NewDesign, WithoutAProductHasTheStandardParameters) {
  for (const Style& style : styles()) {
    const Design design =
        newDesign(style.id, std::nullopt, cards()[0], Ease::Easy, ToolGrid::none()).value();
    EXPECT_EQ(design.styleId, style.id);
    EXPECT_EQ(design.parameters, standardParameters(style));
    EXPECT_FALSE(design.product.has_value());
  }
}

TEST(NewDesign, WithAProductIsFitted) {
  for (const Style& style : styles()) {
    const Product product = box(90, 40, 30);
    const Result<Design> design =
        newDesign(style.id, product, *findCard("0.3mm"), Ease::Loose, ToolGrid::millimetre());
    ASSERT_TRUE(design.ok());
    const Workbench bench{Length::mm(0.3), ToolGrid::millimetre()};
    EXPECT_EQ(design->parameters, fit(style, product, Ease::Loose, bench).parameters);
    EXPECT_EQ(design->product, product);
    EXPECT_EQ(design->ease, Ease::Loose);
    EXPECT_EQ(design->grid, ToolGrid::millimetre());
    EXPECT_EQ(design->card.caliper, Length::mm(0.3));
  }
}

TEST(NewDesign, UnknownStyleIsNamed) {
  const Result<Design> design = newDesign("teapot", {}, cards()[0], Ease::Easy, ToolGrid::none());
  ASSERT_FALSE(design.ok());
  EXPECT_EQ(design.problem().code, ProblemCode::UnknownStyle);
}

TEST(WithParameter, BareNumbersAreInTheUnitOfTheTools) {
  Design design = designOf("framed-tray");
  EXPECT_EQ(withParameter(design, "depth", "1 1/4")->parameters.length("depth"),
            Length::inches(5, 4));
  design.grid = ToolGrid::eighthInch();
  EXPECT_EQ(withParameter(design, "depth", "2")->parameters.length("depth"), Length::inches(2));
  design.grid = ToolGrid::millimetre();
  EXPECT_EQ(withParameter(design, "depth", "25")->parameters.length("depth"), Length::mm(25));
  design.grid = ToolGrid::none();
  EXPECT_EQ(withParameter(design, "depth", "25,5")->parameters.length("depth"), Length::mm(25.5));
  EXPECT_EQ(withParameter(design, "depth", "1 in")->parameters.length("depth"), Length::inches(1));
}

TEST(WithParameter, ChangesNothingElse) {
  const Design before = designOf("framed-tray", box(90, 40, 30));
  Design after = *withParameter(before, "frame", "5/8 in");
  EXPECT_NE(after.parameters, before.parameters);
  after.parameters.set("frame", before.parameters.length("frame"));
  EXPECT_EQ(after, before);
}

TEST(WithParameter, ReadsFlags) {
  const Design design = designOf("straight-tuck-box");
  for (const char* yes : {"1", "true", "yes", " yes "})
    EXPECT_TRUE(withParameter(design, "thumb-notch", yes)->parameters.flag("thumb-notch")) << yes;
  for (const char* no : {"0", "false", "no"})
    EXPECT_FALSE(withParameter(design, "thumb-notch", no)->parameters.flag("thumb-notch")) << no;
  for (const char* bad : {"", "2", "-1", "maybe", "1 in", "truee"}) {
    const Result<Design> changed = withParameter(design, "thumb-notch", bad);
    ASSERT_FALSE(changed.ok()) << bad;
    EXPECT_EQ(changed.problem(),
              (Problem{ProblemCode::ParameterUnreadable, "thumb-notch", {std::string(bad)}}));
  }
}

TEST(WithParameter, NamesWhatItCannotRead) {
  const Design design = designOf("framed-tray");
  EXPECT_EQ(withParameter(design, "depth", "5..2").problem(),
            (Problem{ProblemCode::ParameterUnreadable, "depth", {std::string("5..2")}}));
  EXPECT_EQ(withParameter(design, "deepth", "5").problem(),
            (Problem{ProblemCode::UnknownParameter, "framed-tray", {std::string("deepth")}}));
  Design other = design;
  other.styleId = "teapot";
  EXPECT_EQ(withParameter(other, "depth", "5").problem().code, ProblemCode::UnknownStyle);
}

TEST(Refitted, FittedParametersFollowTheProductAndTheOthersStay) {
  for (const Style& style : styles()) {
    Design design = designOf(style.id, box(90, 40, 30));
    const std::vector<FitReason> reasons =
        fit(style, *design.product, design.ease, {design.card.caliper, design.grid}).reasons;
    ASSERT_FALSE(reasons.empty()) << style.id;
    for (const ParameterSpec& spec : style.parameters)  // a mark on every free parameter
      if (std::ranges::find(reasons, spec.key, &FitReason::key) == reasons.end())
        design.parameters.setCount(spec.key, 7);
    design.product = box(120, 60, 50);
    design.ease = Ease::Snug;
    const Design after = refitted(design);
    const Fitted fresh = fit(style, *design.product, Ease::Snug, {design.card.caliper, design.grid},
                             design.parameters);
    for (const ParameterSpec& spec : style.parameters) {
      const bool fitted = std::ranges::find(reasons, spec.key, &FitReason::key) != reasons.end();
      EXPECT_EQ(after.parameters.raw(spec.key), fitted ? fresh.parameters.raw(spec.key) : 7)
          << style.id << ' ' << spec.key;
    }
    EXPECT_EQ(refitted(after), after);
  }
}

TEST(Refitted, WithoutProductOrStyleNothingChanges) {
  const Design plain = designOf("framed-tray");
  EXPECT_EQ(refitted(plain), plain);
  Design unknown = designOf("framed-tray", box(90, 40, 30));
  unknown.styleId = "teapot";
  EXPECT_EQ(refitted(unknown), unknown);
}

}  // namespace
}  // namespace creasewright
