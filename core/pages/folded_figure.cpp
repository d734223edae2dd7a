#include "pages/folded_figure.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "folding/loop_closure.h"
#include "folding/motion/motion_check.h"
#include "folding/surfaces/scene.h"
#include "folding/surfaces/upright.h"
#include "making/hand_folds.h"
#include "pages/fold_drawing.h"
#include "pages/number_mark.h"

namespace creasewright {
namespace {

/// Most of the way, so that a flap is still seen where it goes.
constexpr double kShown = 0.72;
/// Where card bends, rigid panels would be shown in one another: then an earlier moment.
constexpr std::array kShownInBends{kShown, 0.5, 0.3, 0.15, 0.0};
constexpr double kHalo = 5;  // widths of the line of an arrow

Point3 middleOf(const Panel& panel, const Transform& placed) {
  Point sum;
  for (const Point& p : panel.outline) sum = sum + p;
  return placed.apply(sum / static_cast<double>(panel.outline.size()));
}

double areaOf(const Panel& panel) { return std::abs(signedArea(panel.outline)); }

bool touch(const Segment& a, const Segment& b) {
  constexpr double kTouch = 1e-2;  // mm
  return distance(a.a, b.a) <= kTouch || distance(a.a, b.b) <= kTouch ||
         distance(a.b, b.a) <= kTouch || distance(a.b, b.b) <= kTouch;
}

/// The flaps along a line that hang together: the runs of pieces that touch.
std::vector<std::vector<std::size_t>> runsOf(const std::vector<Fold>& folds,
                                             const std::vector<std::size_t>& line) {
  std::vector<std::vector<std::size_t>> runs;
  for (const std::size_t fold : line) {
    std::vector<std::size_t> run{fold};
    std::erase_if(runs, [&](const std::vector<std::size_t>& other) {
      const bool joins = std::ranges::any_of(
          other, [&](std::size_t k) { return touch(folds[k].line, folds[fold].line); });
      if (joins) run.insert(run.end(), other.begin(), other.end());
      return joins;
    });
    runs.push_back(std::move(run));
  }
  return runs;
}

/// An arrow for each flap along each line the hand folds: on the largest panel that moves there.
std::vector<int> movingPanels(const Net& net, const Step& step) {
  std::vector<int> panels;
  for (const HandFold& line : handFolds(step.folds)) {
    if (step.folds[line.folds.front()].loop) continue;
    for (const std::vector<std::size_t>& run : runsOf(step.folds, line.folds)) {
      const auto largest = std::ranges::max_element(run, {}, [&](std::size_t fold) {
        return areaOf(net.panels[static_cast<std::size_t>(step.folds[fold].child)]);
      });
      panels.push_back(step.folds[*largest].child);
    }
  }
  return panels;
}

/// A bent arrow in picture coordinates with a head of `size` mm, less on a short way; a light line
/// round it keeps it apart from dark card.
void addArrow(Drawing& drawing, const Polyline& way, double size) {
  double length = 0;
  for (std::size_t i = 0; i + 1 < way.size(); ++i) length += distance(way[i], way[i + 1]);
  size = std::clamp(length / 1.5, 0.8, size);
  const Point tip = way.back();
  const Point last = tip - way[way.size() - 2];
  const Point along = std::hypot(last.x, last.y) > 1e-9 ? unit(last) : Point{1, 0};
  const Point across = turnLeft(along);
  const Polygon head{tip, tip - along * size + across * (size * 0.4),
                     tip - along * size - across * (size * 0.4)};
  drawing.paths.push_back(
      {.role = Role::Legend, .rings = {way}, .like = Role::Sheet, .width = kHalo});
  drawing.paths.push_back(
      {.role = Role::Legend, .rings = {head}, .closed = true, .like = Role::Sheet, .width = kHalo});
  drawing.paths.push_back({.role = Role::Legend, .rings = {way}});
  drawing.paths.push_back({.role = Role::Legend, .rings = {head}, .closed = true, .filled = true});
}

/// A thin line from a dot on a panel to its letter.
void addLeader(Drawing& drawing, Point from, Point to) {
  constexpr double kDot = 0.45;  // mm
  const Polygon dot{from + Point{kDot, 0}, from + Point{0, kDot}, from - Point{kDot, 0},
                    from - Point{0, kDot}};
  drawing.paths.push_back(
      {.role = Role::Legend, .rings = {{from, to}}, .like = Role::Sheet, .width = kHalo});
  drawing.paths.push_back({.role = Role::Legend, .rings = {{from, to}}});
  drawing.paths.push_back(
      {.role = Role::Legend, .rings = {dot}, .closed = true, .filled = true, .like = Role::Legend});
}

/// Whether the card lies on the table, folded on itself or not.
bool liesFlat(const Net& net, const Pose& pose) {
  constexpr double kNearlyFlat = 0.98;  // cosine of 11 degrees
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    if (std::abs(dot(pose[i].normal(), pose[0].normal())) < kNearlyFlat) return false;
  return true;
}

/// The ways of the moving panels' middles from where they are shown to where they go, in picture
/// coordinates.
std::vector<Polyline> waysOf(const Net& net, const Step& step, const std::vector<Pose>& poses,
                             const Camera& eye) {
  std::vector<Polyline> ways;
  for (const int panel : movingPanels(net, step)) {
    const auto i = static_cast<std::size_t>(panel);
    Polyline way;
    for (const Pose& there : poses) way.push_back(eye.project(middleOf(net.panels[i], there[i])));
    ways.push_back(std::move(way));
  }
  return ways;
}

void includeAll(Bounds& extent, const std::vector<Polyline>& ways,
                const std::vector<PanelLetter>& letters) {
  const double radius = std::max(extent.width(), extent.height()) * kLetterShare;
  for (const Polyline& way : ways)
    for (const Point& p : way) include(extent, p);
  for (const PanelLetter& letter : letters) {
    include(extent, letter.at - Point{radius, radius});
    include(extent, letter.at + Point{radius, radius});
  }
}

std::vector<Solid> productOf(const Step& step, const std::optional<ProductInBox>& product,
                             const Pose& pose) {
  const bool putIn = step.code == StepCode::PutIn;
  if (!putIn && step.code != StepCode::FoldStage) return {};
  std::vector<Solid> solids = productAt(product, step.piece, pose, step.figure.progressFrom);
  if (!putIn || step.figure.way.size() < 2) return solids;
  const Point3 outside = step.figure.way.front() - step.figure.way.back();
  for (Solid& solid : solids) solid = placed(solid, Transform::translation(outside));
  return solids;
}

}  // namespace

FoldedPicture foldedPicture(const BuiltPiece& piece, const Step& step,
                            const std::optional<ProductInBox>& product) {
  const Net& net = piece.net;
  const FigureSpec& spec = step.figure;
  FoldPath path(net);
  const auto poseAt = [&](double share) {
    const double progress = spec.progressFrom + share * (spec.progress - spec.progressFrom);
    const Result<Pose> found = path.pose(progress);
    return found ? *found : pose(net, progress);
  };
  const double shown = shownShare(piece, step);
  // What goes from flat to flat is done on the table, the face up that becomes the inside.
  const bool onTable = liesFlat(net, poseAt(0)) && liesFlat(net, poseAt(1));
  const Point3 up = onTable ? Point3{0, 0, 1} : uprightOf(piece);
  FoldPicture picture =
      drawFolded(net, poseAt(shown), standardView(), up, productOf(step, product, poseAt(shown)));
  std::vector<Polyline> ways;
  if (spec.arrows) {
    std::vector<Pose> poses;
    constexpr int kSteps = 10;
    const double first = std::min(0.3, shown);
    for (int k = 0; k <= kSteps; ++k) poses.push_back(poseAt(first + (1 - first) * k / kSteps));
    ways = waysOf(net, step, poses, camera(standardView(), up));
  }
  if (!spec.way.empty()) {
    const Camera eye = camera(standardView(), up);
    Polyline way;
    for (const Point3& p : spec.way) way.push_back(eye.project(p));
    ways.push_back(std::move(way));
  }
  std::vector<PanelLetter> letters;
  if (step.code == StepCode::FoldStage)
    letters = placeLetters(net, picture, panelsTold(net, step), ways);
  includeAll(picture.extent, ways, letters);
  const Point toDrawing = Point{kFoldedMargin, kFoldedMargin} - picture.extent.low;
  for (Polyline& way : ways)
    for (Point& p : way) p = p + toDrawing;
  for (PanelLetter& letter : letters) {
    letter.at = letter.at + toDrawing;
    if (letter.from) *letter.from = *letter.from + toDrawing;
  }
  const std::vector<PanelLook> looks(net.panels.size(), {piece.card.colours});
  // A pattern would hide the lines that the figure is there for.
  return {drawFold(picture, withoutPatterns(looks), kFoldedMargin), std::move(ways),
          std::move(letters)};
}

Drawing foldedFigure(const FoldedPicture& picture, const FigureRoom& room) {
  const double scale = scaleInto(picture.drawing.width, picture.drawing.height, room);
  Drawing figure = fittedInto(picture.drawing, room);
  for (Polyline way : picture.ways) {
    for (Point& p : way) p = p * scale;
    addArrow(figure, way, 2.2);
  }
  const double radius =
      std::clamp(std::max(figure.width, figure.height) * kLetterShare, 1.6, 2.3);  // mm
  for (const PanelLetter& letter : picture.letters) {
    if (letter.from) addLeader(figure, *letter.from * scale, letter.at * scale);
    addPanelLetter(figure, letter.letter, letter.at * scale, radius);
  }
  return figure;
}

double shownShare(const BuiltPiece& piece, const Step& step) {
  if (step.bends.empty()) return kShown;
  const FigureSpec& spec = step.figure;
  for (const double share : kShownInBends) {
    const double progress = spec.progressFrom + share * (spec.progress - spec.progressFrom);
    if (!collidesAt(piece.net, piece.card.caliper.mm(), progress)) return share;
  }
  return 0;
}

}  // namespace creasewright
