#include "folding/motion/allowed_contacts.h"

#include <gtest/gtest.h>

#include "folding/motion/crease_path.h"
#include "net/net_builder.h"

namespace creasewright {
namespace {

/// A wall, a lid hinged to it, and a flap at the lid's end that goes to the wall opposite.
Net flapNet(Method method) {
  NetBuilder net({"walls", "flap", "lid"});
  net.root("back", rectangle(40, 40))
      .hinge({"back", "left"}, "side", rectangle(40, 20), {90, 1})
      .hinge({"side", "outer"}, "front", rectangle(40, 40), {90, 1})
      .hinge({"back", "outer"}, "lid", rectangle(40, 20), {90, 3})
      .hinge({"lid", "outer"}, "flap", rectangle(40, 10), {90, 2})
      .mate("flap", "front", Face::Inside, method, true);
  return net.take();
}

TEST(AllowedContacts, LocksInTheStageInWhichTheyMeet) {
  const auto lock = allowedContacts(flapNet(Method::Lock));
  ASSERT_EQ(lock.size(), 1u);
  EXPECT_EQ(lock[0].panel, 4);
  EXPECT_EQ(lock[0].other, 2);
  EXPECT_EQ(lock[0].stage, 3);
  EXPECT_EQ(lock[0].why, "tongue-through-slit");
}

/// A tuck flap that must bend is declared as a bend, so that the guide tells of it.
TEST(AllowedContacts, NoneForTuckGlueAndRest) {
  EXPECT_TRUE(allowedContacts(flapNet(Method::Tuck)).empty());
  EXPECT_TRUE(allowedContacts(flapNet(Method::Glue)).empty());
  EXPECT_TRUE(allowedContacts(flapNet(Method::Rest)).empty());
}

TEST(CreasePath, RunsThroughTheNearestCommonPanel) {
  const Net net = flapNet(Method::Glue);
  EXPECT_EQ(creasePath(net, 4, 2), (std::vector<int>{3, 2, 0, 1}));
  EXPECT_EQ(creasePath(net, 2, 4), (std::vector<int>{1, 0, 2, 3}));
  EXPECT_EQ(creasePath(net, 3, 4), (std::vector<int>{3}));
  EXPECT_TRUE(creasePath(net, 2, 2).empty());
}

TEST(CreasePath, MeetingStageIsTheLastOneThatTurnsACrease) {
  const Net net = flapNet(Method::Glue);
  EXPECT_EQ(meetingStage(net, 4, 2), 3);
  EXPECT_EQ(meetingStage(net, 0, 2), 1);
  EXPECT_EQ(meetingStage(net, 3, 4), 2);
  EXPECT_EQ(meetingStage(net, 2, 2), 0);
}

}  // namespace
}  // namespace creasewright
