#include "extras/ribbon_picture.h"

#include <algorithm>
#include <cmath>

#include "extras/ribbon_strips.h"
#include "extras/ribbon_way.h"
#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kRibbonOff = 0.8;  // mm above the faces, over mats and labels
constexpr double kOver = 0.3;       // mm of the way that lies on the other one
constexpr double kLoop = 0.16;      // of the ribbon that a bow takes: one of its two loops
constexpr double kTied = 28;        // degrees that a tied loop leans up
constexpr double kFolded = 9;       // degrees of a folded one
constexpr double kNextLayer = 20;   // mm that the next layer is smaller

Polygon strip(double length, double width) {
  return {{-length / 2, -width / 2},
          {length / 2, -width / 2},
          {length / 2, width / 2},
          {-length / 2, width / 2}};
}

/// A way round the box, so far off what it goes over, its drawn face inwards.
void addWay(const OutsideBox& box, const RibbonWay& way, double width, double off, Net& net,
            Pose& pose) {
  const Point3 b = box.axes.at((way.axis + 1) % 3);
  const Point3 c = box.axes.at((way.axis + 2) % 3);
  RibbonLine line;
  line.closed = true;
  // Counter-clockwise from b to c; inwards is to its left.
  line.across = cross(b, c);
  for (const Area& part : offset(region(way.outline), off))
    for (const Point& p : part.outer) {
      line.points.push_back(box.centre + b * p.x + c * p.y);
      line.halves.push_back(width / 2);
    }
  addRibbonLine(line, net, pose);
}

/// A loop from the middle in a direction of the place's plane, leaning out by `tilt` degrees.
void addLoop(const Transform& place, double direction, double tilt, double length, double width,
             double off, Net& net, Pose& pose) {
  const double turn = Angle::degrees(direction).radians();
  const double lean = Angle::degrees(tilt).radians();
  const Point3 out = place.turn({0, 0, -1});
  const Point3 flat = place.turn({std::cos(turn), std::sin(turn), 0});
  const Point3 along = flat * std::cos(lean) + out * std::sin(lean);
  const Point3 across = cross(along, out);
  constexpr double kOpen = 0.2;  // of its length: half the opening of a loop
  addRibbonPanel(
      ellipse({length / 2, 0}, length / 2, std::max(width, kOpen * length)),
      Transform::frame(place.apply(Point{}) + out * off, along, across * (1 / norm(across))), net,
      pose);
}

/// A tail that lies on what is under it, its end notched by half its width (common practice).
void addTail(const Transform& place, double direction, double length, double width, double off,
             Net& net, Pose& pose) {
  const Transform turned = place.after(Transform::translation({0, 0, -off}))
                               .after(Transform::rotationZ(Angle::degrees(direction)));
  addRibbonPanel({{0, -width / 2},
                  {length, -width / 2},
                  {length - width / 2, 0},
                  {length, width / 2},
                  {0, width / 2}},
                 turned, net, pose);
}

}  // namespace

void addRibbon(const RibbonNeed& ribbon, double share, Net& net, Pose& pose) {
  if (ribbon.ways.empty()) return;
  const auto parts = static_cast<double>(ribbon.ways.size() + 1);
  double there = 0;  // of the ribbon, before the next part of it
  const double width = ribbon.width.mm();
  double off = kRibbonOff;
  for (const RibbonWay& way : ribbon.ways) {
    if (share <= there) return;
    there += 1 / parts;
    addWay(ribbon.round, way, width, off, net, pose);
    off += kOver;
  }
  if (share <= there) return;
  const double span = 2 * std::min(kLoop * ribbon.bow.mm(), 0.45 * ribbon.round.sizes[0]);
  if (span > 2 * width)
    addBow({BowForm::TwoLoops, span, 0, 1, {}, {}}, width, crossingOf(ribbon), net, pose);
}

Polygon bowOutline(const BowShape& bow, double width) {
  Net net;
  Pose pose;
  addBow(bow, width, {}, net, pose);
  std::vector<Point> points;
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    for (const Point& p : net.panels[i].outline) {
      const Point3 at = pose[i].apply(p);
      points.push_back({at.x, at.y});
    }
  return convexHull(std::move(points));
}

void addBow(const BowShape& bow, double width, const Transform& place, Net& net, Pose& pose) {
  if (bow.tail > 0)
    for (const double direction : {-65.0, -115.0})
      addTail(place, direction, bow.tail, width, 0, net, pose);
  const double tilt = bow.form == BowForm::TwoLoops ? kTied : kFolded;
  double off = 0.3;
  for (int layer = 0; layer < bow.layers; ++layer, off += 1.2) {
    // Layers lie across one another, the largest below.
    const double turn = bow.layers == 1 ? 0 : 180.0 / bow.layers * layer;
    for (const double side : {0.0, 180.0})
      addLoop(place, side + turn, tilt, (bow.span - kNextLayer * layer) / 2, width / 2, off, net,
              pose);
  }
  const Transform top = place.after(Transform::translation({0, 0, -off - 2 * kRibbonOff}));
  addRibbonPanel(strip(width, width), top, net, pose);
}

}  // namespace creasewright
