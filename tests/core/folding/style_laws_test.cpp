#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "core/folding/test_nets.h"
#include "folding/cavity/cavity.h"
#include "folding/fold_check.h"
#include "net/flat_net.h"
#include "styles/registry.h"

// Laws that hold for every style there is, at its standard measures.

namespace creasewright {
namespace {

const Workbench kMaking{Length::mm(0.3), ToolGrid::sixteenthInch()};

struct NamedNet {
  std::string name;
  Piece piece;
};

std::vector<NamedNet> allNets() {
  std::vector<NamedNet> nets;
  for (const Style& style : styles())
    for (Piece& piece : style.build(standardParameters(style), kMaking))
      nets.push_back({std::string(style.id) + '/' + piece.name, std::move(piece)});
  return nets;
}

/// Pieces that another piece or the product holds in shape.
bool holdsByItself(std::string_view name) {
  return !name.starts_with("exploding-box/") && !name.starts_with("partition-insert/") &&
         !name.starts_with("platform-insert/");
}

TEST(StyleLaws, ThereAreStyles) { EXPECT_GE(allNets().size(), 3u); }

TEST(StyleLaws, MatesHoldWhenFolded) {
  for (const auto& [name, piece] : allNets()) {
    EXPECT_TRUE(!piece.net.mates.empty() || !holdsByItself(name)) << name;
    for (const Problem& problem : checkMates(piece.net, pose(piece.net, 1), kMaking.caliper.mm()))
      ADD_FAILURE() << name << ": code " << static_cast<int>(problem.code) << " at "
                    << problem.where << " onto " << std::get<std::string>(problem.values[0]);
  }
}

/// Two walls take half a caliper each, a flap lying on a wall or a lid one more.
TEST(StyleLaws, CavityIsTheDrawnSizeLessTheCard) {
  const double t = kMaking.caliper.mm();
  const auto cavityOf = [&](std::string_view id) {
    const Style* style = *findStyle(id);
    const Piece piece = style->build(standardParameters(*style), kMaking)[0];
    return measureCavity(piece.net, pose(piece.net, 1), *piece.cavity, t);
  };
  const Parameters box = standardParameters(**findStyle("straight-tuck-box"));
  const CavitySize inBox = cavityOf("straight-tuck-box");
  EXPECT_NEAR(inBox.length, box.mm("length") - 2 * t, 1e-6);
  EXPECT_NEAR(inBox.width, box.mm("width") - 2 * t, 1e-6);
  EXPECT_NEAR(inBox.height, box.mm("height") - 3 * t, 1e-6);
  const Parameters tray = standardParameters(**findStyle("framed-tray"));
  const CavitySize inTray = cavityOf("framed-tray");
  EXPECT_NEAR(inTray.length, tray.mm("opening-length") - t, 1e-6);
  EXPECT_NEAR(inTray.width, tray.mm("opening-width") - t, 1e-6);
}

/// Panels keep their edges and every crease stays one line for both of its panels.
TEST(StyleLaws, FoldingIsRigid) {
  auto generator = testing::seededGenerator();
  for (const auto& [name, piece] : allNets()) {
    for (int round = 0; round < 20; ++round) {
      const Pose placed = pose(piece.net, testing::randomIn(generator, 0, 1));
      for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
        const Polygon& outline = piece.net.panels[i].outline;
        for (std::size_t k = 0; k < outline.size(); ++k) {
          const Point a = outline[k];
          const Point b = outline[(k + 1) % outline.size()];
          EXPECT_NEAR(distance(placed[i].apply(a), placed[i].apply(b)), distance(a, b), 1e-9)
              << name;
        }
      }
      for (const Crease& crease : piece.net.creases) {
        if (crease.loop) continue;
        const Point end{length(crease.onParent), 0};
        const Transform& parent = placed[crease.parent];
        const Transform& child = placed[crease.child];
        EXPECT_LT(distance(parent.apply(crease.onParent.b), child.apply(Point{0, 0})), 1e-9);
        EXPECT_LT(distance(parent.apply(crease.onParent.a), child.apply(end)), 1e-9) << name;
      }
    }
  }
}

TEST(StyleLaws, AngleZeroIsTheFlatNet) {
  for (const auto& [name, piece] : allNets()) {
    const Pose placed = pose(piece.net, 0);
    const FlatNet flat = flatten(piece.net);
    const Point origin = flat.place(0, {0, 0});
    for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
      for (const Point& corner : piece.net.panels[i].outline) {
        const Point3 p = placed[i].apply(corner);
        const Point drawn = flat.place(static_cast<int>(i), corner) - origin;
        EXPECT_NEAR(p.z, 0, 1e-9) << name;
        EXPECT_LT(distance(drawn, {p.x, p.y}), 1e-9) << name;
      }
    }
  }
}

TEST(StyleLaws, NegatedAnglesGiveTheMirrorImage) {
  auto generator = testing::seededGenerator();
  for (const auto& [name, piece] : allNets()) {
    for (int round = 0; round < 20; ++round) {
      std::vector<Angle> angles = foldAngles(piece.net, testing::randomIn(generator, 0, 1));
      const Pose placed = pose(piece.net, angles);
      for (Angle& angle : angles) angle = -angle;
      const Pose mirrored = pose(piece.net, angles);
      for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
        for (const Point& corner : piece.net.panels[i].outline) {
          const Point3 p = placed[i].apply(corner);
          EXPECT_LT(distance(mirrored[i].apply(corner), Point3{p.x, p.y, -p.z}), 1e-9) << name;
        }
      }
    }
  }
}

/// Creases whose angle decides where some flap lies on its target: those on the way through the
/// tree from one to the other.
std::set<std::size_t> creasesThatMatter(const Net& net) {
  const auto wayToRoot = [&net](int panel) {
    std::set<std::size_t> way;
    for (const Crease* crease = net.creaseOf(panel); crease != nullptr;
         crease = net.creaseOf(crease->parent))
      way.insert(static_cast<std::size_t>(crease - net.creases.data()));
    return way;
  };
  std::set<std::size_t> found;
  for (const Mate& mate : net.mates) {
    const std::set<std::size_t> one = wayToRoot(mate.panel);
    const std::set<std::size_t> other = wayToRoot(mate.onto);
    std::ranges::set_symmetric_difference(one, other, std::inserter(found, found.end()));
  }
  return found;
}

TEST(StyleLaws, OneDegreeOffIsAlwaysSeen) {
  for (const auto& [name, piece] : allNets()) {
    const std::set<std::size_t> creases = creasesThatMatter(piece.net);
    EXPECT_TRUE(!creases.empty() || !holdsByItself(name)) << name;
    for (const std::size_t index : creases) {
      for (const double change : {-1.0, 1.0}) {
        Net net = piece.net;
        Crease& crease = net.creases[index];
        crease.angle = Angle::degrees(crease.angle.degrees() + change);
        EXPECT_FALSE(checkMates(net, pose(net, 1), kMaking.caliper.mm()).empty())
            << name << ' ' << net.panels[crease.child].id << ' ' << change;
      }
    }
  }
}

}  // namespace
}  // namespace creasewright
