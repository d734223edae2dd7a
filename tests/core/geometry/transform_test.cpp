#include "geometry/transform.h"

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

Transform randomMotion(testing::Random& random) {
  const auto angle = [&random] { return Angle::degrees(random.between(-180, 180)); };
  return Transform::translation({random.between(-50, 50), random.between(-50, 50), 7})
      .after(Transform::rotationZ(angle()))
      .after(Transform::rotationY(angle()))
      .after(Transform::rotationX(angle()));
}

TEST(Transform, TurnsTheAxesByTheRightHandRule) {
  const Angle quarter = Angle::degrees(90);
  EXPECT_EQ(Transform::rotationX(quarter).apply(Point3{0, 1, 0}), (Point3{0, 0, 1}));
  EXPECT_EQ(Transform::rotationY(quarter).apply(Point3{0, 0, 1}), (Point3{1, 0, 0}));
  EXPECT_EQ(Transform::rotationZ(quarter).apply(Point3{1, 0, 0}), (Point3{0, 1, 0}));
  EXPECT_EQ(Transform::rotationZ(Angle::degrees(-90)).apply(Point3{1, 0, 0}), (Point3{0, -1, 0}));
  EXPECT_EQ(Transform::rotationZ(Angle::degrees(270)).apply(Point3{1, 0, 0}), (Point3{0, -1, 0}));
}

TEST(Transform, AfterAppliesTheInnerMotionFirst) {
  testing::Random random(11);
  for (int i = 0; i < 200; ++i) {
    const Transform a = randomMotion(random);
    const Transform b = randomMotion(random);
    const Point3 p{random.between(-9, 9), random.between(-9, 9), random.between(-9, 9)};
    EXPECT_NEAR(distance(a.after(b).apply(p), a.apply(b.apply(p))), 0, 1e-12);
  }
}

TEST(Transform, IsRigidAndItsInverseUndoesIt) {
  testing::Random random(12);
  for (int i = 0; i < 200; ++i) {
    const Transform m = randomMotion(random);
    const Point3 p{random.between(-90, 90), random.between(-90, 90), random.between(-90, 90)};
    const Point3 q{random.between(-90, 90), 3, 4};
    EXPECT_NEAR(distance(m.apply(p), m.apply(q)), distance(p, q), 1e-11);
    EXPECT_NEAR(distance(m.inverse().apply(m.apply(p)), p), 0, 1e-11);
    const Point3 x = m.turn({1, 0, 0});
    EXPECT_NEAR(distance(cross(x, m.turn({0, 1, 0})), m.normal()), 0, 1e-12);  // no mirror image
  }
}

TEST(Transform, FramePutsTheOriginAndTheAxesWhereTold) {
  const Transform f = Transform::frame({1, 2, 3}, {0, 1, 0}, {0, 0, 1});
  EXPECT_EQ(f.apply(Point{0, 0}), (Point3{1, 2, 3}));
  EXPECT_EQ(f.apply(Point{10, 0}), (Point3{1, 12, 3}));
  EXPECT_EQ(f.apply(Point{0, 10}), (Point3{1, 2, 13}));
  EXPECT_EQ(f.normal(), (Point3{1, 0, 0}));
}

}  // namespace
}  // namespace creasewright
