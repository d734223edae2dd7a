#include "pages/guide_figure.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "folding/loop_closure.h"
#include "folding/scene.h"
#include "folding/upright.h"
#include "pages/design_picture.h"
#include "pages/fold_drawing.h"
#include "pages/sheet_figure.h"

namespace creasewright {
namespace {

/// Most of the way, so that a flap is still seen where it goes.
constexpr double kShown = 0.72;
constexpr double kMargin = 4;  // mm round a folded picture, at its own scale
constexpr std::size_t kMostArrows = 6;

Point3 middleOf(const Panel& panel, const Transform& placed) {
  Point sum;
  for (const Point& p : panel.outline) sum = sum + p;
  return placed.apply(sum / static_cast<double>(panel.outline.size()));
}

double areaOf(const Panel& panel) { return std::abs(signedArea(panel.outline)); }

/// The moving panels of a step, the largest first: an arrow each.
std::vector<int> movingPanels(const Net& net, const Step& step) {
  std::vector<int> panels;
  for (const Fold& fold : step.folds)
    if (!fold.bend && !fold.loop) panels.push_back(fold.child);
  std::ranges::stable_sort(panels, std::ranges::greater(), [&](int panel) {
    return areaOf(net.panels[static_cast<std::size_t>(panel)]);
  });
  if (panels.size() > kMostArrows) panels.resize(kMostArrows);
  return panels;
}

/// A bent arrow in picture coordinates with a head of `size` mm.
void addArrow(Drawing& drawing, const Polyline& way, double size) {
  double length = 0;
  for (std::size_t i = 0; i + 1 < way.size(); ++i) length += distance(way[i], way[i + 1]);
  if (length < 1.5 * size) return;
  drawing.paths.push_back({.role = Role::Legend, .rings = {way}});
  const Point tip = way.back();
  const Point along = unit(tip - way[way.size() - 2]);
  const Point across = turnLeft(along);
  drawing.paths.push_back({.role = Role::Legend,
                           .rings = {{tip, tip - along * size + across * (size * 0.4),
                                      tip - along * size - across * (size * 0.4)}},
                           .closed = true,
                           .filled = true});
}

/// How far a drawing shrinks to fit.
double scaleInto(double width, double height, const FigureRoom& room) {
  return std::min(room.width / width, room.height / height);
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

Drawing foldedFigure(const BuiltPiece& piece, const Step& step, const FigureRoom& room) {
  const Net& net = piece.piece.net;
  const FigureSpec& spec = step.figure;
  FoldPath path(net);
  const auto poseAt = [&](double share) {
    const double progress = spec.progressFrom + share * (spec.progress - spec.progressFrom);
    const Result<Pose> found = path.pose(progress);
    return found ? *found : pose(net, progress);
  };
  const Point3 up = uprightOf(piece.piece);
  FoldPicture picture = drawFolded(net, poseAt(kShown), standardView(), up);
  std::vector<Polyline> ways;
  if (spec.arrows) {
    std::vector<Pose> poses;
    for (const double share : {0.3, 0.5, kShown, 0.86, 1.0}) poses.push_back(poseAt(share));
    ways = waysOf(net, step, poses, camera(standardView(), up));
  }
  for (const Polyline& way : ways)
    for (const Point& p : way) {
      Bounds& extent = picture.extent;
      extent.low = {std::min(extent.low.x, p.x), std::min(extent.low.y, p.y)};
      extent.high = {std::max(extent.high.x, p.x), std::max(extent.high.y, p.y)};
    }
  const double scale =
      scaleInto(picture.extent.width() + 2 * kMargin, picture.extent.height() + 2 * kMargin, room);
  Drawing figure = fittedInto(drawFold(picture, kMargin), room);
  for (Polyline& way : ways) {
    for (Point& p : way) p = (p + Point{kMargin, kMargin} - picture.extent.low) * scale;
    addArrow(figure, way, 2.2);
  }
  return figure;
}

Drawing foldedPieces(const BuiltDesign& built, int extra, const FigureRoom& room) {
  PictureOptions options;
  options.folded = true;
  options.extra = extra;
  return fittedInto(pictureOf(built, options), room);
}

}  // namespace

Drawing fittedInto(Drawing drawing, const FigureRoom& room) {
  if (drawing.width <= 0 || drawing.height <= 0) return drawing;
  const double scale = scaleInto(drawing.width, drawing.height, room);
  for (PathItem& item : drawing.paths)
    for (Polygon& ring : item.rings)
      for (Point& p : ring) p = p * scale;
  for (TextItem& text : drawing.texts) {
    text.at = text.at * scale;
    text.height *= scale;
  }
  drawing.width *= scale;
  drawing.height *= scale;
  return drawing;
}

Drawing finishedFigure(const BuiltDesign& built, const FigureRoom& room) {
  return foldedPieces(built, kAllExtras, room);
}

Drawing guideFigure(const BuiltDesign& built, const Step& step, const FigureRoom& room) {
  const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(step.piece));
  switch (step.figure.kind) {
    case FigureKind::Sheet:
      return sheetFigure(piece, step, room);
    case FigureKind::Folded:
      return foldedFigure(piece, step, room);
    case FigureKind::Finished:
      return foldedPieces(built, step.extra, room);
  }
  return {};
}

}  // namespace creasewright
