#include <cmath>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/build.h"
#include "document/design_file.h"
#include "folding/loop_closure.h"
#include "guide/make_guide.h"

// Boxes that lie flat with their bottom glued: what the net must obey there, worked out from the
// drawn lines alone.
namespace creasewright::testing {
namespace {

constexpr double kSame = 1e-6;

/// Random designs of a style that hold, each judged.
template <class Judge>
void overDesigns(std::string_view id, std::uint64_t seed, const Judge& judge) {
  Random random(seed);
  const Style& style = **findStyle(id);
  int done = 0;
  for (int i = 0; i < 200 && done < 60; ++i) {
    const auto design = randomInsideLimits(random, style);
    if (!design) continue;
    const auto built = build(*design);
    ASSERT_TRUE(built.ok());
    ++done;
    SCOPED_TRACE(writeDesign(*design));
    ASSERT_TRUE(built->problems.empty());
    judge(built->pieces[0]);
    if (::testing::Test::HasFailure()) return;
  }
  EXPECT_GE(done, 40);
}

const Crease& creaseBetween(const Net& net, std::string_view a, std::string_view b) {
  for (const Crease& crease : net.creases) {
    const std::string& p = net.panels[static_cast<std::size_t>(crease.parent)].id;
    const std::string& q = net.panels[static_cast<std::size_t>(crease.child)].id;
    if ((p == a && q == b) || (p == b && q == a)) return crease;
  }
  ADD_FAILURE() << "no crease between " << a << " and " << b;
  return net.creases[0];
}

/// The angle of panel `id` at its drawn corner nearest to a point of the sheet, degrees.
double cornerAngle(const BuiltPiece& piece, std::string_view id, Point at) {
  const Polygon& outline = piece.flat.panels[static_cast<std::size_t>(*piece.net.find(id))];
  const std::size_t n = outline.size();
  std::size_t nearest = 0;
  for (std::size_t i = 1; i < n; ++i)
    if (distance(outline[i], at) < distance(outline[nearest], at)) nearest = i;
  const Point before = outline[(nearest + n - 1) % n] - outline[nearest];
  const Point after = outline[(nearest + 1) % n] - outline[nearest];
  return std::abs(std::atan2(cross(after, before), dot(after, before))) * 180 / std::numbers::pi;
}

/// Panels round a point of the folded box in turn; the creases lie between each and the next.
struct Corner {
  std::string_view name;
  std::array<std::string_view, 4> panels;
};

Point sheetPoint(const BuiltPiece& piece, std::string_view panel, std::string_view other) {
  const Net& net = piece.net;
  const Crease& crease = creaseBetween(net, panel, other);
  const auto index = static_cast<std::size_t>(&crease - net.creases.data());
  const Segment& line = piece.flat.creases[index];
  // Of its two ends the one nearer to the bottom: the sheet stands on it.
  return line.a.y < line.b.y ? line.a : line.b;
}

/// Kawasaki's condition holds for a corner with less than 360 degrees too: the sectors of either
/// pair of opposite panels add up to the same; and mountains and valleys differ by two (Maekawa).
/// Kawasaki's and Maekawa's theorems: https://en.wikipedia.org/wiki/Kawasaki%27s_theorem
void expectFoldsFlat(const BuiltPiece& piece, const Corner& corner,
                     const std::array<Point, 4>& drawn, int known) {
  SCOPED_TRACE(std::string(corner.name));
  std::array<double, 4> sector{};
  for (std::size_t i = 0; i < 4; ++i)
    sector.at(i) = cornerAngle(piece, corner.panels.at(i), drawn.at(i));
  EXPECT_NEAR(sector[0] + sector[2], sector[1] + sector[3], 1e-6);
  int valleys = 0;
  for (std::size_t i = 0; i < static_cast<std::size_t>(known); ++i)
    valleys +=
        creaseBetween(piece.net, corner.panels.at(i), corner.panels.at((i + 1) % 4)).isValley()
            ? 1
            : -1;
  EXPECT_EQ(std::abs(valleys + (4 - known)), 2);  // the others are valleys, glued
}

Point3 lowest(const BuiltPiece& piece, const Pose& pose, Point3& high) {
  Point3 low{1e9, 1e9, 1e9};
  high = {-1e9, -1e9, -1e9};
  const Net& net = piece.net;
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    for (const Point& p : net.panels[i].outline) {
      const Point3 at = pose[i].apply(p);
      low = {std::min(low.x, at.x), std::min(low.y, at.y), std::min(low.z, at.z)};
      high = {std::max(high.x, at.x), std::max(high.y, at.y), std::max(high.z, at.z)};
    }
  return low;
}

Pose after(const BuiltPiece& piece, std::string_view stage) {
  const Net& net = piece.net;
  const auto found = std::ranges::find(net.stages, stage);
  EXPECT_NE(found, net.stages.end());
  const double done = static_cast<double>(found - net.stages.begin() + 1);
  const auto folded = FoldPath(net).pose(done / net.stageCount());
  EXPECT_TRUE(folded.ok());
  return *folded;
}

/// At the apex the creases divide the card into 90, 45, 90 and 135 degrees, where the level crease
/// meets the back's edge into four times 90; at a bottom corner the bottom adds 90 (derived: the
/// directions of the edges in the flat state must come back to where they began).
TEST(GussetedBag, ItsCreasesObeyKawasakiAndMaekawaAtEveryVertex) {
  overDesigns("gusseted-bag", 901, [](const BuiltPiece& piece) {
    for (const std::string side : {"right", "left"}) {
      const Point apex = sheetPoint(piece, side + "-front", side + "-back");
      expectFoldsFlat(
          piece, {"apex", {side + "-front", side + "-back", side + "-back-foot", side + "-foot"}},
          {apex, apex, apex, apex}, 4);
      const Point edge = sheetPoint(piece, side + "-back", "back");
      expectFoldsFlat(piece,
                      {"back edge", {side + "-back", "back", "back-foot", side + "-back-foot"}},
                      {edge, edge, edge, edge}, 4);
      const Point back = sheetPoint(piece, side + "-back-foot", "back-foot");
      EXPECT_NEAR(cornerAngle(piece, "back-foot", back) + cornerAngle(piece, side + "-foot", back),
                  90 + cornerAngle(piece, side + "-back-foot", back), 1e-6);
    }
    const Point corner = sheetPoint(piece, "front", "right-front");
    EXPECT_NEAR(cornerAngle(piece, "front", corner) + cornerAngle(piece, "right-foot", corner),
                90 + cornerAngle(piece, "right-front", corner), 1e-6);
  });
}

/// Glued and laid flat the bag is a rectangle of its front, tops level, the bottom outside the
/// back.
TEST(GussetedBag, LiesFlatWithItsBottomGlued) {
  overDesigns("gusseted-bag", 902, [](const BuiltPiece& piece) {
    const Net& net = piece.net;
    const Pose flat = after(piece, "fold-bag-flat");
    Point3 high;
    const Point3 low = lowest(piece, flat, high);
    const Bounds front = bounds(net.panels[0].outline);
    EXPECT_NEAR(high.z - low.z, 0, kSame);
    EXPECT_NEAR(high.x - low.x, front.width(), kSame);
    EXPECT_NEAR(low.y, 0, kSame);
    const auto back = static_cast<std::size_t>(*net.find("back"));
    double top = 0;
    for (const Point& p : net.panels[back].outline) top = std::max(top, flat[back].apply(p).y);
    EXPECT_NEAR(top, front.high.y, kSame);
    // The foot of each side and the foot of the back still meet along their edge.
    for (const std::string side : {"right", "left"})
      for (const auto& [a, b] : {std::pair{side + "-back-foot", std::string("back-foot")},
                                 std::pair{side + "-back-foot", side + "-foot"}}) {
        const Crease& loop = creaseBetween(net, a, b);
        const auto i = static_cast<std::size_t>(loop.parent);
        const auto j = static_cast<std::size_t>(loop.child);
        for (const Point p : {loop.onParent.a, loop.onParent.b}) {
          const Point3 drawn = piece.flat.frames[i].apply(p);
          const Point3 there = piece.flat.frames[j].inverse().apply(drawn);
          EXPECT_LE(distance(flat[i].apply(p), flat[j].apply(there)), kSame);
        }
      }
    // So does the bottom's tab with the back's foot: in one plane, inside it.
    const auto tab = static_cast<std::size_t>(*net.find("front/bottom/tab"));
    const auto foot = static_cast<std::size_t>(*net.find("back-foot"));
    for (const Point& p : net.panels[tab].outline) {
      const Point3 at = flat[foot].inverse().apply(flat[tab].apply(p));
      EXPECT_NE(locate({at.x, at.y}, net.panels[foot].outline, 1e-6), Side::Outside);
    }
    EXPECT_GT(flat[foot].normal().z, 0.9);   // its outside to the front's inside ...
    EXPECT_LT(flat[back].normal().z, -0.9);  // ... as it lies on the back's outside
  });
}

/// At every size: the seam covers no hole, and leaves 2 mm.
TEST(GussetedBag, TheSeamCoversNoHandleHole) {
  overDesigns("gusseted-bag", 903, [](const BuiltPiece& piece) {
    const Net& net = piece.net;
    const auto seam = static_cast<std::size_t>(*net.find("seam"));
    const Pose glued = after(piece, "glue-tube-flat");
    double covers = -1e9;
    for (const Pose& pose : {piece.folded, after(piece, "open-tube")})
      for (const Point& p : net.panels[seam].outline)
        covers = std::max(covers, pose[seam].apply(p).x);
    for (const Polygon& hole : net.panels[0].openings)
      EXPECT_GE(bounds(hole).low.x, covers + 2 - 1e-3);
    ASSERT_EQ(net.panels[0].openings.size() % 2, 0u);
    if (net.panels[0].openings.size() == 2) {
      EXPECT_GE(bounds(net.panels[0].openings[1]).low.x - bounds(net.panels[0].openings[0]).high.x,
                3 - 1e-3);
    }
  });
}

/// Nor in bags for products so short that holes and seam would not fit side by side.
TEST(GussetedBag, ShortProductsGetABagWithRoomForItsHoles) {
  for (double length = 5; length < 60; length += 2.5) {
    for (const ToolGrid grid :
         {ToolGrid::none(), ToolGrid::sixteenthInch(), ToolGrid::millimetre()}) {
      const Product product{ProductShape::Box, Length::mm(length), Length::mm(20), Length::mm(60)};
      const auto design =
          newDesign("gusseted-bag", product, {"test", "", Length::mm(0.3), 0}, Ease::Easy, grid);
      ASSERT_TRUE(design);
      const auto built = build(*design);
      ASSERT_TRUE(built);
      EXPECT_TRUE(built->problems.empty()) << length;
      const double seam = built->design.parameters.mm("seam");
      for (const Polygon& hole : built->pieces[0].net.panels[0].openings)
        EXPECT_GE(bounds(hole).low.x, seam + 2 - 1e-3) << length;
    }
  }
}

/// Where two walls meet whose bottom flaps are glued, the loop has sectors of 90, 90, 45 and 45
/// degrees; its diagonal folds back while the three others are valleys.
TEST(CrashLockBottom, ItsGluedCornersObeyKawasakiAndMaekawa) {
  overDesigns("crash-lock-bottom-box", 904, [](const BuiltPiece& piece) {
    const Net& net = piece.net;
    for (const std::string wall : {"front/left", "front/right"}) {
      const Crease& hinge = creaseBetween(net, wall, wall + "/bottom-side");
      const Crease& diagonal = creaseBetween(net, wall + "/bottom-side", wall + "/bottom-glue-tab");
      const auto line = [&](const Crease& crease) {
        return piece.flat.creases[static_cast<std::size_t>(&crease - net.creases.data())];
      };
      const Point along = line(hinge).b - line(hinge).a;
      const Point slant = line(diagonal).b - line(diagonal).a;
      const double cosine =
          std::abs(dot(along, slant)) / length(line(hinge)) / length(line(diagonal));
      EXPECT_NEAR(std::acos(cosine) * 180 / std::numbers::pi, 45, 1e-6);
      EXPECT_TRUE(hinge.isValley());
      EXPECT_FALSE(diagonal.isValley());
      EXPECT_EQ(diagonal.angle.degrees(), 0);
    }
  });
}

/// Bottom and seam are glued while the box lies flat; then it opens, and on the whole way the glued
/// tabs stay on the flaps they are glued to: seen from each flap its tab does not move.
TEST(CrashLockBottom, IsGluedFlatAndItsTabsStayGluedWhileItOpens) {
  overDesigns("crash-lock-bottom-box", 905, [](const BuiltPiece& piece) {
    const Net& net = piece.net;
    const Pose glued = after(piece, "glue-bottom-flat");
    for (const Mate& mate : net.mates) {
      if (mate.method != Method::Glue) continue;
      EXPECT_EQ(net.stages[static_cast<std::size_t>(mate.stage - 1)], "glue-bottom-flat");
      const auto flap = static_cast<std::size_t>(mate.panel);
      const auto target = static_cast<std::size_t>(mate.onto);
      EXPECT_NEAR(std::abs(dot(glued[flap].normal(), glued[target].normal())), 1, 1e-9);
      const Transform held = glued[target].inverse().after(glued[flap]);
      for (int k = 0; k <= 20; ++k) {
        const double progress = (2 + k / 20.0) / net.stageCount();
        const Pose open = pose(net, progress);
        const Transform now = open[target].inverse().after(open[flap]);
        for (const Point& p : net.panels[flap].outline) {
          const double size = std::max(perimeter(net.panels[flap].outline) / 4, 1.0);
          // Waypoints are joined evenly; the seam side is a caliper shorter.
          EXPECT_LE(distance(now.apply(p), held.apply(p)), 0.02 * size + 1) << k;
        }
      }
    }
    // Until then everything but the two lids lies in one plane.
    Point3 high;
    const Point3 low = lowest(piece, glued, high);
    EXPECT_NEAR(high.z - low.z, 0, kSame);
  });
}

/// The guide glues before it opens: tabs first, then the seam, then the box is opened.
TEST(CrashLockBottom, TheGuideGluesBottomAndSeamFlatAndThenOpens) {
  Design design;
  design.styleId = "crash-lock-bottom-box";
  design.parameters = standardParameters(**findStyle(design.styleId));
  const auto built = build(design);
  ASSERT_TRUE(built);
  std::vector<std::string> told;
  for (const Step& step : makeGuide(*built).steps) {
    if (step.code != StepCode::FoldStage) continue;
    told.push_back(step.stage);
    for (const Join& join : step.joins) {
      const Net& net = built->pieces[0].net;
      if (join.method == Method::Glue)
        told.push_back(net.panels[static_cast<std::size_t>(join.panel)].id);
    }
  }
  const std::vector<std::string> wanted{"bottom-flaps-up",
                                        "glue-bottom-flat",
                                        "front/left/bottom-glue-tab",
                                        "front/right/bottom-glue-tab",
                                        "front/left/back/seam",
                                        "open-bottom"};
  ASSERT_GE(told.size(), wanted.size());
  told.resize(wanted.size());
  EXPECT_EQ(told, wanted);
}

/// Its seam is pressed on the tube that lies flat, before the ends are pressed in.
TEST(PillowBox, ItsSeamIsGluedOnTheFlatTube) {
  overDesigns("pillow-box", 906, [](const BuiltPiece& piece) {
    const Net& net = piece.net;
    const Pose glued = after(piece, "glue-tube-flat");
    Point3 high;
    const Point3 low = lowest(piece, glued, high);
    EXPECT_NEAR(high.z - low.z, 0, kSame);
    const auto seam = static_cast<std::size_t>(*net.find("back/seam"));
    for (const Point& p : net.panels[seam].outline) {
      const Point3 at = glued[0].inverse().apply(glued[seam].apply(p));
      bool covered = false;
      for (std::size_t i = 0; i < net.panels.size(); ++i) {
        if (!net.panels[i].id.starts_with("front") ||
            net.panels[i].id.find('/') != std::string::npos)
          continue;
        const Point3 local = glued[i].inverse().apply(glued[0].apply(at));
        covered =
            covered || locate({local.x, local.y}, net.panels[i].outline, 1e-6) != Side::Outside;
      }
      EXPECT_TRUE(covered);
    }
    const FoldPlan plan = planFolds(net, piece.flat);
    ASSERT_EQ(plan.stages[0].mates.size(), 1u);
    EXPECT_EQ(net.mates[static_cast<std::size_t>(plan.stages[0].mates[0])].method, Method::Glue);
  });
}

}  // namespace
}  // namespace creasewright::testing
