#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/with_punches.h"
#include "extras/extra_kind.h"
#include "folding/loop_closure.h"
#include "geometry/region.h"
#include "guide/extra_steps.h"
#include "guide/make_guide.h"
#include "making/hand_folds.h"
#include "pages/guide_figure.h"

// In which order a design is made, and whether the pictures show it so.
namespace creasewright::testing {
namespace {

BuiltDesign plain(const Style& style) {
  Design design;
  design.styleId = style.id;
  design.parameters = standardParameters(style);
  auto built = build(design);
  EXPECT_TRUE(built);
  return std::move(built).value();
}

/// With every kind of extra that finds a place on it.
BuiltDesign dressedUp(const Style& style) {
  Design design;
  design.styleId = style.id;
  design.parameters = standardParameters(style);
  for (const char* kind : {"ribbon", "tag", "belly-band", "greeting-slip", "label", "platform",
                           "partition", "ribbon-pull", "mats", "window", "sleeve"}) {
    Design more = design;
    more.extras.push_back(standardExtra(**findExtraKind(kind), more.card));
    const auto built = build(more);
    if (built && built->problems.empty()) design = more;
  }
  auto built = build(design);
  EXPECT_TRUE(built);
  return std::move(built).value();
}

const std::string& extraKindOf(const BuiltDesign& built, const Step& step) {
  return built.design.extras[static_cast<std::size_t>(step.extra)].kind;
}

/// Whether a ray meets a panel.
bool meets(const Net& net, const Pose& pose, Point3 from, Point3 along) {
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Transform into = pose[i].inverse();
    const Point3 p = into.apply(from);
    const Point3 d = into.turn(along);
    if (std::abs(d.z) < 1e-9) continue;
    const double t = -p.z / d.z;
    if (t <= 0) continue;
    if (locate(Point{p.x + t * d.x, p.y + t * d.y}, net.panels[i].outline) == Side::Inside)
      return true;
  }
  return false;
}

Pose poseAt(const Net& net, double progress) { return foldedPose(net, progress); }

bool isClosed(const BuiltPiece& built, const Pose& pose) {
  const auto& cavity = *built.cavity;
  const Transform frame = pose[static_cast<std::size_t>(*built.net.find(cavity.panel))];
  const CavityBox& box = built.cavityBox;
  const Point3 middle = frame.apply(Point3{
      (box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2, (box.low.z + box.high.z) / 2});
  for (const Point3 along : {Point3{1, 0, 0}, Point3{-1, 0, 0}, Point3{0, 1, 0}, Point3{0, -1, 0},
                             Point3{0, 0, 1}, Point3{0, 0, -1}})
    if (!meets(built.net, pose, middle, frame.turn(along))) return false;
  return true;
}

TEST(GuideOrder, TheProductGoesInWhileTheBoxIsOpen) {
  Random random(1701);
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    std::vector<BuiltDesign> designs{plain(style)};
    for (int i = 0; i < 12 && designs.size() < 4; ++i)
      if (const auto design = randomInsideLimits(random, style))
        if (auto built = build(*design); built && built->problems.empty())
          designs.push_back(std::move(built).value());
    for (const BuiltDesign& built : designs) {
      const Guide guide = makeGuide(built);
      int times = 0;
      for (std::size_t i = 0; i < guide.steps.size(); ++i) {
        const Step& step = guide.steps[i];
        if (step.code == StepCode::FoldStage && step.putIn) {
          ++times;
          continue;
        }
        if (step.code != StepCode::PutIn) continue;
        ++times;
        const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(step.piece)];
        const Pose now = poseAt(piece.net, step.figure.progress);
        ASSERT_EQ(step.figure.way.size(), 2U);
        const Point3 along = step.figure.way[0] - step.figure.way[1];
        if (piece.cavity->through.empty()) {
          EXPECT_FALSE(meets(piece.net, now, step.figure.way[1], along));
        }
        // What closes it comes after, if anything does.
        if (isClosed(piece, piece.folded)) {
          EXPECT_TRUE(std::any_of(guide.steps.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                                  guide.steps.end(), [&](const Step& later) {
                                    return later.code == StepCode::FoldStage &&
                                           later.piece == step.piece;
                                  }));
        }
      }
      const bool holds = std::ranges::any_of(built.pieces, [](const BuiltPiece& piece) {
        return !piece.role && piece.cavity && piece.cavity && !piece.over;
      });
      EXPECT_EQ(times, holds ? 1 : 0);
    }
  }
}

TEST(GuideOrder, TrayPouchAndTubesAsTheTradeFillsThem) {
  const auto lastStep = [](const char* id) {
    return makeGuide(plain(**findStyle(id))).steps.back().code;
  };
  EXPECT_EQ(lastStep("framed-tray"), StepCode::PutIn);  // nothing closes it
  EXPECT_EQ(lastStep("rolled-wall-tray"), StepCode::PutIn);
  EXPECT_EQ(lastStep("two-piece-box"), StepCode::PutTogether);  // the lid closes it
  EXPECT_EQ(lastStep("straight-tuck-box"), StepCode::FoldStage);
  const Guide tuck = makeGuide(plain(**findStyle("straight-tuck-box")));
  const auto in = std::ranges::find(tuck.steps, StepCode::PutIn, &Step::code);
  ASSERT_NE(in, tuck.steps.end());
  EXPECT_EQ((in + 1)->stages.front().code, "top-dust-flaps");
}

TEST(GuideOrder, FlatWorkFirstWrapsAndTagsLast) {
  int dressed = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const BuiltDesign built = dressedUp(style);
    const Guide guide = makeGuide(built);
    std::vector<int> folded(built.pieces.size(), 0);
    bool wrapped = false;
    bool tied = false;
    bool tagged = false;
    bool filled = false;
    std::vector<int> met(built.design.extras.size(), 0);
    for (const Step& step : guide.steps) {
      if (step.code == StepCode::FoldStage) folded[static_cast<std::size_t>(step.piece)] = 1;
      filled = filled || step.code == StepCode::PutIn || step.putIn;
      if (step.code != StepCode::AddExtra) continue;
      ++dressed;
      ++met[static_cast<std::size_t>(step.extra)];
      const std::string& kind = extraKindOf(built, step);
      if (kind == "window" || kind == "mats" || kind == "label") {
        EXPECT_EQ(folded[static_cast<std::size_t>(step.piece)], 0) << kind;
        EXPECT_EQ(step.figure.kind, FigureKind::Sheet);
        EXPECT_EQ(step.figure.turned, kind != "window");
        EXPECT_FALSE(step.figure.put.empty());
      } else if (kind == "ribbon-pull") {
        EXPECT_EQ(folded[static_cast<std::size_t>(step.piece)], 0) << "threaded while it is flat";
        EXPECT_EQ(step.figure.kind, FigureKind::Sheet);
        EXPECT_FALSE(step.figure.turned) << "its ends are inside";
        EXPECT_FALSE(step.figure.put.empty());
      } else if (kind == "platform" || kind == "greeting-slip" || kind == "partition") {
        EXPECT_FALSE(filled) << kind;
      } else if (kind == "belly-band" || kind == "sleeve") {
        wrapped = true;
        EXPECT_FALSE(tied || tagged);
      } else if (kind == "ribbon") {
        tied = true;
        EXPECT_FALSE(tagged);
      } else if (kind == "tag") {
        tagged = true;
      }
      if (wrapped || tied || tagged) {
        const bool holds = guide.finishedHeight > Length();
        EXPECT_TRUE(!holds || filled || style.id == "partition-insert") << kind;
      }
    }
    for (std::size_t i = 0; i < met.size(); ++i)
      EXPECT_GE(met[i], 1) << built.design.extras[i].kind;
  }
  EXPECT_GT(dressed, 60);
}

/// A step turns the sheet when, and only when, its picture shows the other face than before.
TEST(GuideOrder, ASheetIsTurnedWhenItsPictureIs) {
  int turns = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const Guide guide = makeGuide(dressedUp(style));
    std::vector<bool> outside(guide.pieces.size(), false);
    for (const Step& step : guide.steps) {
      if (step.figure.kind == FigureKind::Finished || step.code == StepCode::PutIn) continue;
      const auto i = static_cast<std::size_t>(step.piece);
      if (step.code != StepCode::TrimBlank) {
        EXPECT_EQ(step.turn, outside[i] != step.figure.turned);
        turns += step.turn ? 1 : 0;
      }
      outside[i] = step.figure.turned;
      for (const Adhesive& adhesive : step.adhesive)
        EXPECT_EQ(adhesive.flapFace == Face::Outside, step.figure.turned);
    }
  }
  EXPECT_GT(turns, 30);
}

/// Every piece is trimmed once, alone or with others that are nothing but rectangles, before
/// anything is done with it; and no two such steps stand one after the other.
TEST(GuideOrder, EveryPieceIsTrimmedOnce) {
  int together = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const BuiltDesign built = dressedUp(style);
    const Guide guide = makeGuide(built);
    std::vector<int> trimmed(guide.pieces.size(), 0);
    bool plainBefore = false;
    for (const Step& step : guide.steps) {
      if (step.code != StepCode::TrimBlank) {
        plainBefore = false;
        if (step.code == StepCode::AddExtra) continue;
        for (const int piece : step.pieces) EXPECT_EQ(trimmed[static_cast<std::size_t>(piece)], 1);
        continue;
      }
      for (const int piece : step.pieces.empty() ? std::vector{step.piece} : step.pieces)
        ++trimmed[static_cast<std::size_t>(piece)];
      EXPECT_NE(step.pieces.size(), 1U);
      together += step.pieces.empty() ? 0 : 1;
      for (const int piece : step.pieces) {
        const BuiltPiece& part = built.pieces[static_cast<std::size_t>(piece)];
        EXPECT_TRUE(part.net.creases.empty());
        EXPECT_NEAR(area(part.flat.outline), part.flat.width * part.flat.height, 1e-3)
            << part.name << " is no rectangle";
      }
      EXPECT_FALSE(plainBefore && !step.pieces.empty());
      plainBefore = !step.pieces.empty();
    }
    for (std::size_t i = 0; i < trimmed.size(); ++i)
      EXPECT_EQ(trimmed[i], isPunched(built.pieces[i]) ? 0 : 1) << guide.pieces[i].name;
  }
  EXPECT_GT(together, 10);
}

int headsOf(const Drawing& figure) {
  return static_cast<int>(std::ranges::count_if(figure.paths, [](const PathItem& item) {
    return item.role == Role::Legend && item.filled && !item.like;  // discs of letters are white
  }));
}

/// Flaps along one line, counted by brute comparison: pieces that touch hang together.
int flapsOf(const std::vector<Fold>& folds, const std::vector<std::size_t>& line) {
  std::vector<std::size_t> group(line.size());
  for (std::size_t i = 0; i < line.size(); ++i) group[i] = i;
  for (std::size_t i = 0; i < line.size(); ++i)
    for (std::size_t k = 0; k < line.size(); ++k) {
      const Segment& a = folds[line[i]].line;
      const Segment& b = folds[line[k]].line;
      const double apart = std::min(std::min(distance(a.a, b.a), distance(a.a, b.b)),
                                    std::min(distance(a.b, b.a), distance(a.b, b.b)));
      if (apart < 0.01) std::ranges::replace(group, std::size_t{group[k]}, std::size_t{group[i]});
    }
  std::ranges::sort(group);
  return static_cast<int>(std::unique(group.begin(), group.end()) - group.begin());
}

/// Four tabs along two lines are four arrows.
TEST(GuideFigures, EveryFlapOfEveryLineToldHasItsArrow) {
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const BuiltDesign built = plain(style);
    for (const Step& step : makeGuide(built).steps) {
      if (step.code != StepCode::FoldStage) continue;
      int arrows = 0;
      for (const ToldStage& stage : step.stages)
        for (const HandFold& line : handFolds(stage.folds))
          if (!stage.folds[line.folds.front()].loop) arrows += flapsOf(stage.folds, line.folds);
      EXPECT_EQ(headsOf(guideFigure(built, step)), arrows) << step.stage;
    }
  }
}

/// What is told of the other face is drawn mirrored, within the sheet, and with its own hatch.
TEST(GuideFigures, ATurnedSheetIsDrawnTurned) {
  const BuiltDesign built = plain(**findStyle("framed-tray"));
  bool legend = false;
  for (const Step& step : makeGuide(built).steps) {
    if (step.code != StepCode::ApplyAdhesive) continue;
    const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(step.piece)];
    const Drawing figure = guideFigure(built, step);
    Step other = step;
    other.figure.turned = !step.figure.turned;
    const Drawing back = guideFigure(built, other);
    ASSERT_EQ(figure.paths.size(), back.paths.size());
    const Polygon& seen = figure.paths.front().rings.front();
    const Polygon& mirrored = back.paths.front().rings.front();
    for (std::size_t i = 0; i < seen.size(); ++i) {
      EXPECT_NEAR(seen[i].x + mirrored[i].x, figure.width, 1e-9);
      EXPECT_NEAR(seen[i].y, mirrored[i].y, 1e-9);
    }
    const auto labelled = [&](const char* code) {
      return std::ranges::any_of(figure.texts,
                                 [&](const TextItem& item) { return item.label.code == code; });
    };
    EXPECT_TRUE(labelled(step.figure.turned ? "glue-outside" : "glue-inside"));
    EXPECT_EQ(labelled("glue-behind"), !step.figure.behind.empty());
    legend = legend || labelled("glue-behind");
    EXPECT_GT(piece.flat.width, 0);
  }
  EXPECT_TRUE(legend);
}

/// By hand: six scores right across a sheet are six lines, though a net cuts them into twenty.
TEST(HandFolds, CollinearCreasesAreOneLineAndACurveIsOne) {
  const auto fold = [](Point a, Point b, double degrees) {
    Fold made;
    made.line = {a, b};
    made.angle = Angle::degrees(degrees);
    made.valley = degrees > 0;
    return made;
  };
  EXPECT_EQ(handFolds({fold({0, 0}, {10, 0}, 90), fold({20, 0}, {30, 0}, 90),
                       fold({0, 5}, {10, 5}, 90), fold({40, 0}, {50, 0}, -90)})
                .size(),
            3U);
  std::vector<Fold> arc;
  for (int i = 0; i < 12; ++i) {
    const double a = 0.1 * i;
    arc.push_back(fold({30 * std::cos(a), 30 * std::sin(a)},
                       {30 * std::cos(a + 0.1), 30 * std::sin(a + 0.1)}, 40));
  }
  EXPECT_EQ(handFolds(arc).size(), 1U);
  Fold bend = fold({0, 0}, {1, 1}, 20);
  bend.bend = true;
  EXPECT_TRUE(handFolds({bend}).empty());
  // A corner of a hexagon is no curve.
  EXPECT_EQ(handFolds({fold({0, 0}, {10, 0}, 90), fold({10, 0}, {15, 8.66}, 90)}).size(), 2U);
}

/// Two arcs that meet in a tip are two curves, however softly they meet: the ends of a pillow box.
TEST(HandFolds, ArcsThatMeetInATipAreTwoCurves) {
  const auto arcs = [](double deep) {
    std::vector<Fold> folds;
    for (int side = 0; side < 2; ++side)
      for (int i = 0; i < 10; ++i) {
        const auto at = [&](int k) { return Point{side * 80 + k * 8.0, deep * k * (10 - k) / 25}; };
        Fold fold;
        fold.line = {at(i), at(i + 1)};
        folds.push_back(fold);
      }
    return folds;
  };
  for (const double deep : {2.0, 5.0, 10.0}) EXPECT_EQ(handFolds(arcs(deep)).size(), 2U) << deep;
}

TEST(Cautions, ComeOnlyWhereTheyFitAndOnce) {
  const auto has = [](const Guide& guide, CautionCode code) {
    return std::ranges::count(guide.cautions, code);
  };
  for (const Style& style : styles()) {
    const Guide guide = makeGuide(plain(style));
    std::vector<CautionCode> sorted = guide.cautions;
    std::ranges::sort(sorted);
    EXPECT_EQ(std::ranges::unique(sorted).size(), 0U) << style.id;
    EXPECT_EQ(has(guide, CautionCode::Knife) + has(guide, CautionCode::Trimmer), 1) << style.id;
  }
  EXPECT_EQ(has(makeGuide(plain(**findStyle("belly-band"))), CautionCode::FoodContact), 0);
  EXPECT_EQ(has(makeGuide(plain(**findStyle("card-wallet"))), CautionCode::Flames), 0);
  EXPECT_EQ(has(makeGuide(plain(**findStyle("card-wallet"))), CautionCode::SmallParts), 0);
  EXPECT_EQ(has(makeGuide(plain(**findStyle("rolled-wall-tray"))), CautionCode::Flames), 1);
  EXPECT_EQ(has(makeGuide(plain(**findStyle("rolled-wall-tray"))), CautionCode::FoodContact), 1);
  Design bead;
  bead.styleId = "cube";
  bead.parameters = standardParameters(**findStyle("cube"));
  bead.product = Product{ProductShape::Sphere, Length::mm(20), Length::mm(20), Length::mm(20)};
  const auto built = build(bead);
  ASSERT_TRUE(built);
  EXPECT_EQ(has(makeGuide(*built), CautionCode::SmallParts), 1);
}

}  // namespace
}  // namespace creasewright::testing
