#include "guide/step_names.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/build.h"
#include "guide/make_guide.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

std::vector<std::string> namesOf(const Design& design, Hand hand = Hand::Right) {
  const auto built = build(design);
  if (!built) return {};
  return stepNames(makeGuide(*built, hand), built->design);
}

TEST(StepNames, NoTwoAreAlikeInAnyStyle) {
  for (const Style& style : styles())
    for (const Design& design : {testing::asItComes(style), testing::withItsExtras(style)}) {
      const std::vector<std::string> names = namesOf(design);
      ASSERT_FALSE(names.empty()) << style.id;
      EXPECT_EQ(std::set(names.begin(), names.end()).size(), names.size()) << style.id;
      EXPECT_EQ(std::ranges::find(names, std::string()), names.end()) << style.id;
    }
}

/// A photo stays with the step that it shows when the design changes beside it.
TEST(StepNames, FoldsKeepTheirNamesWhenExtrasCome) {
  for (const Style& style : styles()) {
    const std::vector<std::string> plain = namesOf(testing::asItComes(style));
    const std::vector<std::string> more = namesOf(testing::withItsExtras(style));
    for (const std::string& name : plain)
      if (name.find("/fold/") != std::string::npos) {
        EXPECT_NE(std::ranges::find(more, name), more.end()) << style.id << ' ' << name;
      }
  }
}

TEST(StepNames, TheLeftHandFoldsTheSameSteps) {
  for (const Style& style : styles()) {
    const Design design = testing::asItComes(style);
    const std::vector<std::string> left = namesOf(design, Hand::Left);
    for (const std::string& name : namesOf(design))
      if (name.find("/fold/") != std::string::npos) {
        EXPECT_NE(std::ranges::find(left, name), left.end()) << style.id << ' ' << name;
      }
  }
}

}  // namespace
}  // namespace creasewright
