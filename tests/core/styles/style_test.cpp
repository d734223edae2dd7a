#include "styles/style.h"

#include <set>

#include <gtest/gtest.h>

#include "styles/registry.h"

namespace creasewright {
namespace {

const Workbench kMaking{Length::mm(0.3), ToolGrid::none()};

TEST(Style, DefaultsAreWithinTheirLimits) {
  for (const Style& style : styles())
    EXPECT_TRUE(checkLimits(style, standardParameters(style), kMaking).empty()) << style.id;
}

TEST(Style, IdsAndKeysAreUniqueAndEveryParameterExplainsItself) {
  std::set<std::string_view> ids;
  for (const Style& style : styles()) {
    EXPECT_TRUE(ids.insert(style.id).second) << style.id;
    EXPECT_FALSE(style.summary.empty());
    std::set<std::string_view> keys;
    for (const ParameterSpec& spec : style.parameters) {
      EXPECT_TRUE(keys.insert(spec.key).second) << spec.key;
      EXPECT_FALSE(spec.title.empty()) << spec.key;
      EXPECT_FALSE(spec.hint.empty()) << spec.key;
    }
  }
}

TEST(Style, LimitsNameTheParameterTheValueAndTheLimit) {
  const Style& tray = **findStyle("framed-tray");
  Parameters p = standardParameters(tray);
  p.set("tab", Length::inches(9, 8));  // deeper than the wall of 1 in
  const Problems found = checkLimits(tray, p, kMaking);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].code, ProblemCode::ParameterTooLarge);
  EXPECT_EQ(found[0].where, "tab");
  EXPECT_EQ(found[0].values[0], ProblemValue(Length::inches(9, 8)));
  EXPECT_EQ(found[0].values[1], ProblemValue(Length::inches(1)));
}

TEST(Style, KeysThatAreNotTheStylesOwnAreNamed) {
  const Style& tray = **findStyle("framed-tray");
  Parameters p = standardParameters(tray);
  p.set("lid", Length::inches(1));
  const Problems found = checkLimits(tray, p, kMaking);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].code, ProblemCode::UnknownParameter);
}

TEST(Style, UnknownStyleIsAProblem) {
  EXPECT_EQ(findStyle("hat-box").problem().code, ProblemCode::UnknownStyle);
}

}  // namespace
}  // namespace creasewright
