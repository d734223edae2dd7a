
#include <gtest/gtest.h>

#include "core/guide/paper_hand.h"
#include "core/laws/random_design.h"
#include "document/design_file.h"
#include "folding/triangulate.h"
#include "guide/make_guide.h"
#include "net/pose.h"

// A guide carried out step by step must end in the net and the box it was made from.
namespace creasewright::testing {
namespace {

constexpr double kPlace = 1e-6;   // mm: lines agree
constexpr double kNearby = 2e-6;  // mm: two roundings to a nanometre
constexpr double kFolded = 1e-5;  // mm, after a chain of folds

/// A point well inside a polygon and outside its openings, near a corner if need be.
Point inside(const Polygon& polygon, const std::vector<Polygon>& openings = {}) {
  Point best;
  double largest = -1;
  for (const auto& t : triangulate(polygon)) {
    for (const Point p : {(t[0] + t[1] + t[2]) / 3, t[0] * 0.9 + (t[1] + t[2]) * 0.05,
                          t[1] * 0.9 + (t[2] + t[0]) * 0.05}) {
      const double size = std::abs(cross(t[1] - t[0], t[2] - t[0]));
      const bool open = std::ranges::any_of(
          openings, [&](const Polygon& o) { return locate(p, o) != Side::Outside; });
      if (open || size <= largest) continue;
      largest = size;
      best = p;
    }
  }
  return best;
}

/// How far a score may lie from its fold (mm): the score plan takes a line that leans by less than
/// a micrometre as parallel to the side, and such lines within a micrometre of one another as one.
double residual(const Segment& fold) {
  const double lean = std::min(std::abs(fold.a.x - fold.b.x), std::abs(fold.a.y - fold.b.y));
  constexpr double kMicrometre = 1e-3;
  const bool leans = lean > 1e-9 && lean <= kMicrometre;
  return kNearby + (leans ? kMicrometre + lean : 0);
}

std::vector<Fold> foldsOf(const Guide& guide, int piece) {
  std::vector<Fold> folds;
  for (const Step& step : guide.steps)
    if (step.piece == piece && step.code == StepCode::FoldStage)
      folds.insert(folds.end(), step.folds.begin(), step.folds.end());
  return folds;
}

/// Offcuts that are no opening of a panel: a thumb notch at the rim falls off without a letter.
int letteredOffcuts(const PaperHand& hand, const FlatNet& flat) {
  return static_cast<int>(std::ranges::count_if(hand.offcuts(), [&](const Polygon& offcut) {
    return std::ranges::none_of(flat.openings, [&](const std::vector<Polygon>& openings) {
      return std::ranges::any_of(openings, [&](const Polygon& opening) {
        return locate(inside(offcut), opening) == Side::Inside;
      });
    });
  }));
}

bool isCutStep(const Step& step) { return !step.cuts.empty(); }

/// Every panel of the net is a part of the sheet, or of one with panels it is not folded against.
void expectSameOutline(const PaperHand& hand, const FlatNet& flat) {
  EXPECT_NEAR(hand.width(), flat.width, kPlace);
  EXPECT_NEAR(hand.height(), flat.height, kPlace);
  EXPECT_NEAR(hand.cardArea(), area(flat.outline), 1e-5 * (flat.width + flat.height));
  for (std::size_t i = 0; i < flat.panels.size(); ++i) {
    const Polygon& panel = flat.panels[i];
    const int part = hand.partAt(inside(panel, flat.openings[i]));
    ASSERT_GE(part, 0);
    const Polygon& outline = hand.parts()[static_cast<std::size_t>(part)].outline;
    for (const Point& p : panel) EXPECT_NE(locate(p, outline, 1e-5), Side::Outside);
  }
  for (const PaperHand::Part& part : hand.parts())
    for (const Point& p : part.outline)
      EXPECT_TRUE(
          std::ranges::any_of(
              flat.panels,
              [&](const Polygon& panel) { return locate(p, panel, 1e-5) == Side::Boundary; }) ||
          std::ranges::any_of(flat.openings,
                              [&](const std::vector<Polygon>& openings) {
                                return std::ranges::any_of(openings, [&](const Polygon& opening) {
                                  return locate(p, opening, 1e-5) == Side::Boundary;
                                });
                              }) ||
          std::ranges::any_of(flat.slits, [&](const Polyline& slit) {
            return std::ranges::any_of(slit, [&](Point q) { return distance(p, q) < 1e-5; });
          }));
}

/// All panels lie where the pose has them; returns the largest distance in mm.
double farthest(const PaperHand& hand, const BuiltPiece& built, const Pose& folded) {
  const Transform toRoot = built.flat.frames[0].inverse();
  double far = 0;
  for (std::size_t i = 0; i < built.flat.panels.size(); ++i) {
    const int part = hand.partAt(inside(built.flat.panels[i], built.flat.openings[i]));
    if (part < 0) return 1e9;
    const Transform& placed = hand.parts()[static_cast<std::size_t>(part)].placed;
    for (std::size_t k = 0; k < built.flat.panels[i].size(); ++k)
      far = std::max(far, distance(toRoot.apply(placed.apply(built.flat.panels[i][k])),
                                   folded[i].apply(built.net.panels[i].outline[k])));
  }
  return far;
}

/// A cut told by its edge and score number ends there.
void expectCutsMeetScores(const PaperHand& hand, const Step& step) {
  for (const Cut& cut : step.cuts) {
    if (!cut.fromEdge || cut.toLine == 0) continue;
    const std::vector<double> scores = hand.fullScoresFrom(cut.edge);
    ASSERT_LE(static_cast<std::size_t>(cut.toLine), scores.size());
    EXPECT_NEAR(length({cut.line.front(), cut.line.back()}),
                scores[static_cast<std::size_t>(cut.toLine - 1)], 1e-3);
  }
}

/// What is glued in a stage has its adhesive, bared for that stage, on the flap.
void expectAdhesive(const Guide& guide, const Step& fold, int stage) {
  for (const Join& join : fold.joins) {
    if (join.method != Method::Glue) continue;
    EXPECT_TRUE(std::ranges::any_of(
        guide.steps,
        [&](const Step& step) {
          return step.piece == fold.piece &&
                 std::ranges::any_of(step.adhesive, [&](const Adhesive& a) {
                   return a.panel == join.panel && a.stage <= stage && a.stage > 0;
                 });
        }))
        << "panel " << join.panel;
  }
}

void expectTruth(const BuiltDesign& built) {
  const Guide guide = makeGuide(built);
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    const BuiltPiece& piece = built.pieces[i];
    SCOPED_TRACE(piece.name);
    const Net& net = piece.net;
    const std::vector<Fold> folds = foldsOf(guide, static_cast<int>(i));
    PaperHand hand;
    bool released = false;
    int waste = 0;
    const auto release = [&] {
      hand.release(inside(piece.flat.panels[0], piece.flat.openings[0]), folds);
      released = true;
      EXPECT_EQ(letteredOffcuts(hand, piece.flat), waste);
      expectSameOutline(hand, piece.flat);
    };
    for (const Step& step : guide.steps) {
      if (step.code == StepCode::TrimBlank && !step.pieces.empty()) {
        if (std::ranges::find(step.pieces, static_cast<int>(i)) == step.pieces.end()) continue;
        hand.trim(guide.pieces[i].width, guide.pieces[i].height);
        continue;
      }
      if (step.piece != static_cast<int>(i)) continue;
      if (step.code == StepCode::FoldStage && !released) release();
      hand.perform(step);
      waste += static_cast<int>(step.waste.size());
      if (isCutStep(step)) expectCutsMeetScores(hand, step);
      if (step.code == StepCode::FoldAndBurnish) {
        for (const Fold& fold : step.folds)
          EXPECT_TRUE(hand.isScored(fold.line, residual(fold.line)));
      }
      if (step.code != StepCode::FoldStage) continue;
      const double progress = step.figure.progress;
      expectAdhesive(guide, step, static_cast<int>(std::lround(progress * net.stageCount())));
      const bool loops = std::ranges::any_of(net.creases, &Crease::loop);
      if (!loops) {
        EXPECT_LE(farthest(hand, piece, pose(net, progress)), kFolded) << step.stage;
      }
    }
    if (!released) {
      release();  // nothing to fold
    } else {
      EXPECT_LE(farthest(hand, piece, piece.folded), kFolded);
    }
  }
}

TEST(GuideTruth, EveryStyleAsItComes) {
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(testing::asItComes(style));
    ASSERT_TRUE(built);
    expectTruth(*built);
    if (HasFailure()) return;
  }
}

/// Its tabs and its front nearly touch, so that the union of the panels rounded their common corner
/// away from the score that ends there, and a cut stopped short.
TEST(GuideTruth, AScoopWhoseSeamsMeetAtASharpAngle) {
  Design design;
  design.styleId = "treat-scoop";
  design.card = {"test", "test card", Length::nanometres(156'363), 0};
  design.grid = ToolGrid::millimetre();
  const std::pair<const char*, std::int64_t> measures[]{
      {"back", 240'721'766},   {"dip", 988'221},   {"front", 225'611'297}, {"lean", 26'291'318},
      {"length", 122'213'402}, {"tab", 8'388'742}, {"width", 180'812'469}};
  for (const auto& [key, nm] : measures) design.parameters.setCount(key, nm);
  const auto built = build(design);
  ASSERT_TRUE(built);
  expectTruth(*built);
}

TEST(GuideTruth, EveryStyleAtRandom) {
  Random random(411);
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    int done = 0;
    for (int i = 0; i < 60 && done < 20; ++i) {
      const auto design = randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      ASSERT_TRUE(built);
      if (!built->problems.empty()) continue;
      ++done;
      SCOPED_TRACE(writeDesign(*design));
      expectTruth(*built);
      if (HasFailure()) return;
    }
    std::cout << style.id << ": " << done << " designs\n";
  }
}

}  // namespace
}  // namespace creasewright::testing
