#include "folding/surfaces/ground_shadow.h"

#include <gtest/gtest.h>

#include "core/folding/surfaces/eye_ray.h"
#include "folding/loop_closure.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr double kShadeOfAll = 76;  // as dark as it gets

/// Whether something stops the light that would come to a place, ray by ray.
class Light {
 public:
  Light(const Net& net, const Pose& pose, Point3 lamp) : net_(net), pose_(pose) {
    const Point3 across = std::abs(lamp.x) < 0.9 ? Point3{1, 0, 0} : Point3{0, 1, 0};
    rays_.towardsEye = lamp;
    rays_.right = unit(cross(across, lamp));
    rays_.up = cross(lamp, rays_.right);
  }
  [[nodiscard]] bool isStopped(Point3 place) const {
    return testing::nearestPanel(net_, pose_, rays_, rays_.project(place)) >= 0;
  }

 private:
  const Net& net_;
  const Pose& pose_;
  Camera rays_;
};

struct Stood {
  Net net;
  Pose pose;
};

Stood stoodUp(const Style& style, double progress) {
  const std::vector<Piece> pieces = style.build(standardParameters(style), Workbench{});
  Stood out{pieces.front().net, {}};
  out.pose = foldedPose(out.net, progress);
  return out;
}

double levelOf(const Stood& stood, Point3 up) {
  double low = 1e9;
  for (std::size_t i = 0; i < stood.net.panels.size(); ++i)
    for (const Point& p : stood.net.panels[i].outline)
      low = std::min(low, dot(stood.pose[i].apply(p), up));
  return low;
}

// The lamp stands to the upper left of the eye, before the picture: told here once more, from the
// eye's own axes.
Point3 lampSeen(const Camera& eye) {
  return unit(eye.right * -0.45 + eye.up * 0.7 + eye.towardsEye * 0.55);
}

TEST(GroundShadow, IsWhereRaysToTheLampAreStopped) {
  int dark = 0;
  int light = 0;
  for (const Style& style : styles())
    for (const double progress : {0.45, 1.0})
      for (const View& view :
           {standardView(), viewFromAbove(), View{Angle::degrees(140), Angle::degrees(20)}}) {
        SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(view.turn.degrees()));
        const Stood stood = stoodUp(style, progress);
        const Point3 up{0, 0, 1};
        const Camera eye = camera(view, up);
        const GroundShadow shadow = groundShadow(stood.net, stood.pose, view, up);
        ASSERT_FALSE(shadow.empty());
        ASSERT_EQ(shadow.dark.size(), static_cast<std::size_t>(shadow.columns * shadow.rows));
        const double level = levelOf(stood, up);
        const Light lamp(stood.net, stood.pose, lampSeen(eye));
        const double rise = dot(up, eye.towardsEye);
        const Point cell{shadow.extent.width() / shadow.columns,
                         shadow.extent.height() / shadow.rows};
        const auto stopped = [&](double column, double row) {
          const Point seen{shadow.extent.low.x + (column + 0.5) * cell.x,
                           shadow.extent.high.y - (row + 0.5) * cell.y};
          // Along the eye's ray down to the ground.
          const Point3 start = eye.right * seen.x + eye.up * seen.y;
          return lamp.isStopped(start + eye.towardsEye * ((level - dot(start, up)) / rise));
        };
        for (int row = 5; row < shadow.rows; row += 9)
          for (int column = 5; column < shadow.columns; column += 9) {
            const bool here = stopped(column, row);
            bool alike = true;  // as far as the edge is soft
            for (int x = -10; x <= 10; x += 2)
              for (int y = -10; y <= 10; y += 2)
                alike = alike && stopped(column + x, row + y) == here;
            if (here) {
              const Bounds& sharp = shadow.sharp;
              const Point at{shadow.extent.low.x + (column + 0.5) * cell.x,
                             shadow.extent.high.y - (row + 0.5) * cell.y};
              EXPECT_TRUE(at.x > sharp.low.x && at.x < sharp.high.x && at.y > sharp.low.y &&
                          at.y < sharp.high.y)
                  << column << ' ' << row;
            }
            if (!alike) continue;
            const int found = shadow.dark[static_cast<std::size_t>(row * shadow.columns + column)];
            EXPECT_NEAR(found, here ? kShadeOfAll : 0, here ? 12 : 3) << column << ' ' << row;
            ++(here ? dark : light);
          }
      }
  EXPECT_GT(dark, 300);
  EXPECT_GT(light, 300);
}

TEST(GroundShadow, EndsSoftlyAndNeverAtTheRimOfItsPicture) {
  const Stood stood = stoodUp(styles()[0], 1);
  const GroundShadow shadow = groundShadow(stood.net, stood.pose, standardView(), {0, 0, 1});
  const auto at = [&](int column, int row) {
    return int{shadow.dark[static_cast<std::size_t>(row * shadow.columns + column)]};
  };
  int steepest = 0;
  for (int row = 0; row < shadow.rows; ++row)
    for (int column = 0; column < shadow.columns; ++column) {
      const bool rim =
          row == 0 || column == 0 || row == shadow.rows - 1 || column == shadow.columns - 1;
      EXPECT_LE(rim ? at(column, row) : 0, 1);
      if (column > 0)
        steepest = std::max(steepest, std::abs(at(column, row) - at(column - 1, row)));
    }
  EXPECT_LT(steepest, kShadeOfAll / 3) << "a soft edge";
}

TEST(GroundShadow, IsNotSeenFromBelowNorAlongTheGround) {
  const Stood stood = stoodUp(styles()[0], 1);
  for (const double tilt : {-89.0, -30.0, -1.0, 0.0})
    EXPECT_TRUE(
        groundShadow(stood.net, stood.pose, {Angle::degrees(20), Angle::degrees(tilt)}, {0, 0, 1})
            .empty())
        << tilt;
}

TEST(GroundShadow, OfTheProductToo) {
  Net net;
  Panel base;
  base.outline = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
  net.panels.push_back(std::move(base));
  const Pose pose{Transform()};
  const GroundShadow bare = groundShadow(net, pose, standardView(), {0, 0, 1});
  const GroundShadow with =
      groundShadow(net, pose, standardView(), {0, 0, 1}, {boxSolid(40, 30, 50)});
  EXPECT_GT(with.extent.width(), bare.extent.width() + 40);
}

}  // namespace
}  // namespace creasewright
