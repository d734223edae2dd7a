#include "pages/folded_figure.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "folding/motion/motion_check.h"
#include "folding/surfaces/scene.h"
#include "folding/surfaces/upright.h"
#include "pages/dressing.h"
#include "pages/fold_drawing.h"
#include "pages/fold_ways.h"
#include "pages/number_mark.h"

namespace creasewright {
namespace {

/// Most of the way, so that a flap is still seen where it goes.
constexpr double kShown = 0.72;
/// The same of the last stage of several, so that what it closes over is seen too.
constexpr double kShownOfSeveral = 0.4;
/// Where card bends, rigid panels would be shown in one another: then an earlier moment.
constexpr std::array kShownInBends{kShown, 0.5, kShownOfSeveral, 0.3, 0.15, 0.0};
constexpr double kHalo = 5;  // widths of the line of an arrow

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

/// A step's picture as an eye sees it.
struct SeenStep {
  FoldPicture picture;
  std::vector<Polyline> ways;
  std::vector<PanelLetter> letters;
};

View fromBehind() {
  View view = standardView();
  view.turn = Angle::degrees(view.turn.degrees() + 180);
  return view;
}

FoldedPicture onDrawing(std::span<const PanelLook> looks, SeenStep seen) {
  includeAll(seen.picture.extent, seen.ways, seen.letters);
  const Point toDrawing = Point{kFoldedMargin, kFoldedMargin} - seen.picture.extent.low;
  for (Polyline& way : seen.ways)
    for (Point& p : way) p = p + toDrawing;
  for (PanelLetter& letter : seen.letters) {
    letter.at = letter.at + toDrawing;
    if (letter.from) *letter.from = *letter.from + toDrawing;
  }
  return {drawFold(seen.picture, looks, kFoldedMargin), std::move(seen.ways),
          std::move(seen.letters)};
}

}  // namespace

FoldedPicture foldedPicture(const BuiltDesign& built, const Step& step,
                            const std::optional<ProductInBox>& product) {
  const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(step.piece));
  const Net& net = piece.net;
  StepPoses poses(net, step);
  const double shown = shownShare(piece, step);
  // What goes from flat to flat is done on the table, the face up that becomes the inside.
  const bool onTable = liesFlat(net, poses.atShare(0)) && liesFlat(net, poses.atShare(1));
  Point3 up = onTable ? Point3{0, 0, 1} : uprightOf(piece);
  const Pose there = poses.atShare(shown);
  const std::vector<Solid> solids = productOf(step, product, there);
  if (!onTable && solids.empty() && closesBelow(net, step, poses.atShare(1), up)) up = up * -1.0;
  const auto seenFrom = [&](const View& view) {
    const Camera eye = camera(view, up);
    SeenStep seen{drawFolded(net, there, view, up, solids), {}, {}};
    if (step.figure.arrows) seen.ways = waysOf(net, step, shown, poses, eye);
    if (!step.figure.way.empty()) {
      Polyline way;
      for (const Point3& p : step.figure.way) way.push_back(eye.project(p));
      seen.ways.push_back(std::move(way));
    }
    if (step.code == StepCode::FoldStage)
      seen.letters = placeLetters(net, seen.picture, panelsTold(net, step), seen.ways);
    return seen;
  };
  SeenStep seen = seenFrom(standardView());
  if (step.stages.size() > 1 && !onTable && seen.letters.size() < panelsTold(net, step).size()) {
    SeenStep behind = seenFrom(fromBehind());
    if (behind.letters.size() > seen.letters.size()) seen = std::move(behind);
  }
  return onDrawing(undressed(built, piece, there).looks, std::move(seen));
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
  const FigureSpec& spec = step.figure;
  // What a step of several stages gets ready is seen before the last one closes over it.
  const bool several = step.stages.size() > 1;
  const double from = several ? step.stages.back().from : spec.progressFrom;
  const double least =
      several ? (from - spec.progressFrom) / (spec.progress - spec.progressFrom) : 0;
  const auto shareOf = [&](double share) { return least + share * (1 - least); };
  const double wanted = several ? kShownOfSeveral : kShown;
  if (step.bends.empty()) return shareOf(wanted);
  for (const double share : kShownInBends) {
    if (share > wanted) continue;
    const double progress = from + share * (spec.progress - from);
    if (!collidesAt(piece.net, piece.card.caliper.mm(), progress)) return shareOf(share);
  }
  return shareOf(0);
}

}  // namespace creasewright
