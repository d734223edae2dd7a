#include <algorithm>

#include <gtest/gtest.h>

#include "core/laws/law_book.h"
#include "core/laws/random_design.h"
#include "folding/loop_closure.h"

namespace creasewright {
namespace {

constexpr int kSets = 300;
constexpr int kFewestSets = 200;

using testing::describe;

/// Runs a law over every style with random parameters inside their limits; a style that yields too
/// few sets fails.
template <class Law>
void overRandomSets(std::uint64_t seed, int sets, const Law& law) {
  testing::Random random(seed);
  for (const Style& style : styles()) {
    int valid = 0;
    for (int i = 0; i < sets; ++i) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      const Result<BuiltDesign> built = build(*design);
      ASSERT_TRUE(built.ok()) << style.id << ' ' << built.problem().where;
      ++valid;
      law(*built);
      if (::testing::Test::HasFailure()) return;
    }
    EXPECT_GE(valid, sets * kFewestSets / kSets) << style.id;
  }
}

void isSound(const BuiltDesign& built) { EXPECT_TRUE(built.problems.empty()) << describe(built); }

void outlineIsOnePieceOfThePanelsArea(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces) {
    ASSERT_EQ(piece.flat.outline.size(), 1u) << describe(built);
    EXPECT_TRUE(isSimple(piece.flat.outline[0].outer)) << describe(built);
    double sum = 0;
    for (const Polygon& panel : piece.flat.panels) sum += signedArea(panel);
    for (const auto& openings : piece.flat.openings)
      for (const Polygon& opening : openings) sum += signedArea(opening);
    EXPECT_NEAR(area(piece.flat.outline), sum, 1e-6 * sum) << describe(built);
  }
}

/// Each panel edge is cut once or is a crease of two panels: sum of perimeters = cuts round the
/// outline and its holes + 2 partings + 2 creases.
void cutsAndScoresCoverEveryEdgeOnce(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces) {
    double edges = 0;
    for (const Polygon& panel : piece.flat.panels) edges += perimeter(panel);
    for (const auto& openings : piece.flat.openings)
      for (const Polygon& opening : openings) edges += perimeter(opening);
    double lines = 0;
    for (const Area& part : piece.flat.outline) {
      lines += perimeter(part.outer);
      for (const Polygon& hole : part.holes) lines += perimeter(hole);
    }
    for (const Segment& parting : piece.flat.partings) lines += 2 * length(parting);
    for (const Segment& crease : piece.flat.creases) lines += 2 * length(crease);
    EXPECT_NEAR(lines, edges, 1e-6 * edges) << describe(built);
  }
}

void blankIsTheBoundingBoxOfTheOutline(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces) {
    const Bounds box = bounds(piece.flat.outline[0].outer);
    EXPECT_NEAR(box.low.x, 0, 2e-6) << describe(built);
    EXPECT_NEAR(box.low.y, 0, 2e-6) << describe(built);
    EXPECT_NEAR(box.high.x, piece.flat.width, 2e-6) << describe(built);
    EXPECT_NEAR(box.high.y, piece.flat.height, 2e-6) << describe(built);
  }
}

/// Folding keeps every distance inside each panel to 1e-9.
void foldingIsRigidAndLoopsStayClosed(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces) {
    const Net& net = piece.net;
    FoldPath path(net);
    for (const double progress : {0.17, 0.63, 1.0}) {
      const Result<Pose> folded = path.pose(progress);
      ASSERT_TRUE(folded.ok()) << describe(built) << " at " << progress << ' '
                               << folded.problem().where;
      for (std::size_t i = 0; i < net.panels.size(); ++i) {
        const Polygon& outline = net.panels[i].outline;
        const Point3 first = (*folded)[i].apply(outline[0]);
        for (const Point& corner : outline) {
          const double flat = distance(outline[0], corner);
          EXPECT_NEAR(distance(first, (*folded)[i].apply(corner)), flat, 1e-9 * (1 + flat))
              << describe(built);
        }
      }
    }
  }
}

/// All of these of the same sets, so that each is built once.
TEST(Laws, EverySetInsideItsLimitsIsSoundWholeAndRigid) {
  overRandomSets(72, kSets, [](const BuiltDesign& built) {
    isSound(built);
    outlineIsOnePieceOfThePanelsArea(built);
    if (::testing::Test::HasFatalFailure()) return;  // the next ask for that one outline
    cutsAndScoresCoverEveryEdgeOnce(built);
    blankIsTheBoundingBoxOfTheOutline(built);
    foldingIsRigidAndLoopsStayClosed(built);
  });
}

/// Whether any fitted measure of a design is smaller than the smaller design's.
bool hasShrunk(const BuiltDesign& larger, const BuiltDesign& smaller) {
  return std::ranges::any_of(larger.reasons, [&](const FitReason& reason) {
    return larger.design.parameters.raw(reason.key) < smaller.design.parameters.raw(reason.key);
  });
}

bool hasSlantedPanel(const BuiltPiece& piece) {
  return std::ranges::any_of(piece.folded, [](const Transform& frame) {
    const Point3 n = frame.normal();
    return std::max({std::abs(n.x), std::abs(n.y), std::abs(n.z)}) < 1 - 1e-9;
  });
}

bool holdsAllOf(const CavitySize& large, const CavitySize& small) {
  return large.length >= small.length - 1e-6 && large.width >= small.width - 1e-6 &&
         large.height >= small.height - 1e-6;
}

/// Whether each cavity of a design holds what the same cavity of a smaller one held. Among slanting
/// card the search for a cavity is not exhaustive: there no fitted measure may shrink.
void expectCavitiesHold(const BuiltDesign& larger, const BuiltDesign& smaller) {
  ASSERT_EQ(larger.pieces.size(), smaller.pieces.size());
  for (std::size_t i = 0; i < larger.pieces.size(); ++i) {
    const BuiltPiece& piece = larger.pieces[i];
    const auto& before = smaller.pieces[i].cavitySize;
    if (!before) continue;
    const bool slants = hasSlantedPanel(piece);
    const CavitySize after = measureCavity(piece.net, piece.folded, *piece.cavity,
                                           larger.design.card.caliper.mm(), *before);
    EXPECT_TRUE(holdsAllOf(after, *before) || (slants && !hasShrunk(larger, smaller)))
        << describe(larger);
  }
}

/// A product larger on one axis never gets a smaller cavity.
TEST(Laws, LargerProductNeverGetsASmallerCavity) {
  testing::Random random(76);
  for (const Style& style : styles()) {
    for (int i = 0; i < kSets / 3; ++i) {
      Product product{ProductShape::Box, Length::mm(random.between(5, 250)),
                      Length::mm(random.between(5, 200)), Length::mm(random.between(1, 200))};
      const Card card{"test", "test card", Length::mm(random.between(0.15, 0.6)), 0};
      const ToolGrid grid = testing::randomGrid(random);
      const auto buildFor = [&](const Product& wanted) {
        return build(*newDesign(style.id, wanted, card, Ease::Easy, grid));
      };
      const Result<BuiltDesign> before = buildFor(product);
      const Length more = Length::mm(random.between(0.1, 20));
      const int axis = random.whole(0, 2);
      (axis == 0 ? product.length : axis == 1 ? product.width : product.height) += more;
      const Result<BuiltDesign> after = buildFor(product);
      ASSERT_TRUE(before.ok() && after.ok()) << style.id;
      expectCavitiesHold(*after, *before);
      if (HasFailure()) return;
    }
  }
}

}  // namespace
}  // namespace creasewright
