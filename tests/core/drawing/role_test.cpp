#include "drawing/role.h"

#include <algorithm>
#include <set>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

TEST(Role, EveryRoleIsPaintedOnceAndHasItsOwnName) {
  std::set<Role> roles;
  std::set<std::string_view> names;
  for (const Role role : paintOrder()) {
    EXPECT_TRUE(roles.insert(role).second);
    EXPECT_TRUE(names.insert(roleStyle(role).id).second) << roleStyle(role).id;
  }
  EXPECT_EQ(roles.size(), static_cast<std::size_t>(Role::Edge) + 1);
}

/// Line widths from the ISO 128 series, wide to narrow 2:1, for example 0.35 and 0.18 mm (read in a
/// drawing manual).
TEST(Role, WidthsAreOfTheIsoSeries) {
  for (const Role role : paintOrder()) {
    const double width = roleStyle(role).width;
    EXPECT_TRUE(width == 0.35 || width == 0.18) << roleStyle(role).id;
  }
}

TEST(Role, LinesDifferByPatternAndNotByColourAlone) {
  std::set<std::vector<double>> patterns;
  for (const Role role : {Role::Cut, Role::Valley, Role::Mountain, Role::Perforation}) {
    const RoleStyle& style = roleStyle(role);
    EXPECT_TRUE(patterns.insert({style.dashes.begin(), style.dashes.end()}).second) << style.id;
    EXPECT_EQ(style.dashes.size() % 2, 0U);
  }
}

TEST(Role, FacesDarkenWithLessLightAndInside) {
  EXPECT_GT(faceColour(1, Surface::Outside, {}).green, faceColour(0.5, Surface::Outside, {}).green);
  EXPECT_GT(faceColour(0.5, Surface::Outside, {}).green,
            faceColour(0.5, Surface::Inside, {}).green);
  EXPECT_EQ(faceColour(7, Surface::Product, {}), faceColour(1, Surface::Product, {}));
}

}  // namespace
}  // namespace creasewright
