#include "net/pose.h"

#include <gtest/gtest.h>

#include "net/flat_net.h"
#include "support/net_text.h"

namespace creasewright {
namespace {

Net hinged(const char* angle) {
  return netFromText(std::string("stage one\nstage two\n"
                                 "panel a 0,0 40,0 40,20 0,20\n"
                                 "panel b 0,0 40,0 40,10 0,10\n"
                                 "panel c 0,0 40,0 40,5 0,5\n"
                                 "crease a b 0,0 40,0 ") +
                     angle +
                     " 1 score\n"
                     "crease b c 40,10 0,10 90 2 score\n")
      .value();
}

TEST(Pose, PositiveAnglesTurnTowardsTheViewer) {
  const Pose folded = pose(hinged("90"), 1.0);
  // b hangs on the lower edge of a; at 90 degrees its far edge stands 10 mm above the drawn face.
  EXPECT_EQ(folded[1].apply(Point{0, 10}), (Point3{40, 0, 10}));
  // c turns in over a.
  EXPECT_EQ(folded[2].apply(Point{0, 5}), (Point3{40, 5, 10}));
  EXPECT_EQ(pose(hinged("-90"), 1.0)[1].apply(Point{0, 10}), (Point3{40, 0, -10}));
}

TEST(Pose, StagesFollowOneAnother) {
  const Net net = hinged("90");
  EXPECT_EQ(foldAngles(net, 0.0), (std::vector{Angle::degrees(0), Angle::degrees(0)}));
  EXPECT_EQ(foldAngles(net, 0.25), (std::vector{Angle::degrees(45), Angle::degrees(0)}));
  EXPECT_EQ(foldAngles(net, 0.5), (std::vector{Angle::degrees(90), Angle::degrees(0)}));
  EXPECT_EQ(foldAngles(net, 0.75), (std::vector{Angle::degrees(90), Angle::degrees(45)}));
  EXPECT_EQ(foldAngles(net, 1.0), (std::vector{Angle::degrees(90), Angle::degrees(90)}));
}

TEST(Pose, AtAngleZeroItIsTheFlatNet) {
  const Net net = hinged("90");
  const FlatNet flat = flatten(net);
  const Pose unfolded = pose(net, 0.0);
  const Point3 shift = unfolded[0].apply(Point{0, 0});
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    for (std::size_t k = 0; k < net.panels[i].outline.size(); ++k) {
      const Point3 p = unfolded[i].apply(net.panels[i].outline[k]) - shift;
      EXPECT_NEAR(p.z, 0, 1e-12);
      EXPECT_NEAR(p.x, flat.panels[i][k].x, 1e-12);
      EXPECT_NEAR(p.y, flat.panels[i][k].y - 15, 1e-12);
    }
  }
}

/// Hinge by hinge, with a rotation made of nothing but its definition.
TEST(Pose, EveryHingeTurnsItsPanelAboutItsCrease) {
  const Net net = hinged("37");
  const std::vector<Angle> angles{Angle::degrees(37), Angle::degrees(-123.4)};
  const Pose placed = Posing(net)(angles);
  EXPECT_EQ(placed.size(), net.panels.size());
  for (std::size_t i = 0; i < angles.size(); ++i) {
    const Crease& crease = net.creases[i];
    const Transform byHand = placed[static_cast<std::size_t>(crease.parent)]
                                 .after(hingeFrame(crease.onParent))
                                 .after(Transform::rotationX(angles[i]));
    for (const Point& corner : net.panels[static_cast<std::size_t>(crease.child)].outline)
      EXPECT_LT(distance(placed[static_cast<std::size_t>(crease.child)].apply(corner),
                         byHand.apply(corner)),
                1e-12);
  }
}

}  // namespace
}  // namespace creasewright
