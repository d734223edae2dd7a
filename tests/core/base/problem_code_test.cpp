#include "base/problem_code.h"

#include <set>
#include <string>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

constexpr int kLast = static_cast<int>(ProblemCode::PunchNotRound);

TEST(ProblemCode, EveryCodeHasItsOwnKebabName) {
  std::set<std::string_view> names;
  for (int i = 0; i <= kLast; ++i) {
    const std::string_view name = codeName(static_cast<ProblemCode>(i));
    EXPECT_TRUE(names.insert(name).second) << name;
    EXPECT_EQ(name.find_first_not_of("abcdefghijklmnopqrstuvwxyz-"), std::string_view::npos)
        << name;
    EXPECT_NE(name, "unknown");
  }
}

TEST(ProblemCode, NamesAreStable) {
  EXPECT_EQ(codeName(ProblemCode::LengthUnreadable), "length-unreadable");
  EXPECT_EQ(codeName(ProblemCode::CavityTooSmall), "cavity-too-small");
  EXPECT_EQ(codeName(ProblemCode::FieldUnreadable), "field-unreadable");
  EXPECT_EQ(codeName(ProblemCode::NotADesign), "not-a-design");
}

}  // namespace
}  // namespace creasewright
