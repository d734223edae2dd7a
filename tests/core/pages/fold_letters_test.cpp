#include "pages/fold_letters.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "folding/loop_closure.h"
#include "folding/surfaces/upright.h"
#include "guide/make_guide.h"
#include "net/whole_panels.h"
#include "pages/guide_figure.h"

namespace creasewright::testing {
namespace {

/// The panels that the eye meets first at a point of a picture, by plain comparison of depths: more
/// than one where they lie on one another.
std::set<int> firstMet(const Net& net, const Pose& pose, const Camera& eye, Point at) {
  constexpr double kLayers = 1;  // mm
  std::vector<std::pair<double, int>> met;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const auto seen = [&](const Polygon& ring) {
      Polygon out;
      for (const Point& p : ring) out.push_back(eye.project(pose[i].apply(p)));
      return out;
    };
    const bool through = std::ranges::any_of(net.panels[i].openings, [&](const Polygon& opening) {
      return locate(at, seen(opening)) == Side::Inside;
    });
    const Point3 normal = pose[i].normal();
    const double facing = dot(normal, eye.towardsEye);
    if (through || std::abs(facing) < 1e-9 ||
        locate(at, seen(net.panels[i].outline)) == Side::Outside)
      continue;
    // The point of the plane that is seen at `at`.
    const Point3 across = eye.right * at.x + eye.up * at.y;
    const double depth = dot(normal, pose[i].apply(Point{0, 0}) - across) / facing;
    met.emplace_back(depth, static_cast<int>(i));
  }
  std::set<int> first;
  if (met.empty()) return first;
  const double nearest = std::ranges::max_element(met)->first;
  for (const auto& [depth, panel] : met)
    if (depth > nearest - kLayers) first.insert(panel);
  return first;
}

/// The net as a fold stage's figure shows it.
struct Shown {
  const Net& net;
  Pose pose;
  Camera eye;
  std::vector<int> whole;

  /// Whether a disc lies wholly on a panel that nothing hides there.
  [[nodiscard]] bool liesOn(int panel, Point middle, double radius) const {
    for (int round = 0; round <= 12; ++round) {
      const double angle = round * 0.5236;
      const double reach = round == 12 ? 0 : 0.98 * radius;
      const auto met =
          firstMet(net, pose, eye, middle + Point{std::cos(angle), std::sin(angle)} * reach);
      if (std::ranges::none_of(
              met, [&](int each) { return whole.at(static_cast<std::size_t>(each)) == panel; }))
        return false;
    }
    return true;
  }
};

/// Judges the letters of every fold stage; gives how many there are.
int judge(const BuiltDesign& built) {
  int count = 0;
  for (const Step& step : makeGuide(built).steps) {
    if (step.code != StepCode::FoldStage) continue;
    const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(step.piece));
    const double progress =
        step.figure.progressFrom +
        shownShare(piece, step) * (step.figure.progress - step.figure.progressFrom);
    const auto pose = FoldPath(piece.net).pose(progress);
    if (!pose) continue;
    const Point3 up = uprightOf(piece);
    const FoldPicture picture = drawFolded(piece.net, *pose, standardView(), up);
    const std::vector<int> told = panelsTold(piece.net, step);
    const double radius = kLetterShare * std::max(picture.extent.width(), picture.extent.height());
    const Shown shown{piece.net, *pose, camera(standardView(), up), wholePanels(piece.net)};
    const auto letters = placeLetters(piece.net, picture, told, {});
    for (std::size_t i = 0; i < letters.size(); ++i) {
      EXPECT_EQ(letters[i].letter, static_cast<char>('a' + i));
      EXPECT_TRUE(std::ranges::find(told, letters[i].panel) != told.end());
      EXPECT_TRUE(letters[i].from ? shown.liesOn(letters[i].panel, *letters[i].from, 0.25 * radius)
                                  : shown.liesOn(letters[i].panel, letters[i].at, radius))
          << letters[i].letter << " in " << step.stage;
      for (std::size_t k = 0; k < i; ++k)
        EXPECT_GE(distance(letters[i].at, letters[k].at), 2 * radius - 1e-9);
      ++count;
    }
  }
  return count;
}

TEST(FoldLetters, LieOnTheirPanelsWhereTheEyeMeetsThem) {
  int count = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(asItComes(style));
    ASSERT_TRUE(built);
    count += judge(*built);
  }
  EXPECT_GT(count, 150);
}

TEST(FoldLetters, LieOnTheirPanelsAtRandom) {
  Random random(2718);
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    for (int i = 0; i < 3; ++i) {
      const auto design = randomInsideLimits(random, style);
      if (!design) continue;
      const auto built = build(*design);
      if (built) judge(*built);
    }
  }
}

/// The tray's figures call their flaps by letters, and draw each letter once.
TEST(FoldLetters, AreDrawnOnTheFigure) {
  const auto built = build(asItComes(**findStyle("framed-tray")));
  ASSERT_TRUE(built);
  int drawn = 0;
  for (const Step& step : makeGuide(*built).steps) {
    const StepFigure figure(*built, step);
    const Drawing drawing = figure.in({60, 45});
    for (const PanelLetter& letter : figure.letters()) {
      const auto times = std::ranges::count_if(drawing.texts, [&](const TextItem& item) {
        return item.label.literal == std::string(1, letter.letter);
      });
      EXPECT_EQ(times, 1);
      ++drawn;
    }
  }
  EXPECT_GT(drawn, 8);
}

}  // namespace
}  // namespace creasewright::testing
