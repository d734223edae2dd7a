#include "extras/ribbon_picture.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "extras/ribbon_strips.h"
#include "extras/tied_bow.h"
#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kRibbonOff = 0.8;  // mm above the faces, over mats and labels
constexpr double kOver = 0.3;       // mm of what lies on another one
constexpr double kTied = 22;        // degrees that a tied loop leans up
constexpr double kRaised = 8;       // degrees that it is turned away from the tails
constexpr double kFolded = 9;       // degrees that a folded one leans up
constexpr double kNextLayer = 20;   // mm that the next layer is smaller
constexpr double kGathered = 0.55;  // of its width: ribbon in the knot

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

/// A loop of ribbon as it is seen from its edge, from the knot out and back over the top: `length`
/// mm of ribbon that leave the knot level and come back at twice the angle of its middle.
std::vector<Point> loopProfile(double length, double lean) {
  constexpr int kStrips = 18;
  std::vector<Point> loop;
  double round = 0;
  for (int i = 0; i <= kStrips; ++i) {
    const double t = 2 * std::numbers::pi * i / kStrips;
    const Point drop{(1 - std::cos(t)) / 2, -std::tan(lean) / 2 * std::sin(t) * std::sin(t / 2)};
    loop.push_back({std::cos(lean) * drop.x - std::sin(lean) * drop.y,
                    std::sin(lean) * drop.x + std::cos(lean) * drop.y});
    if (i > 0) round += distance(loop[loop.size() - 2], loop.back());
  }
  for (Point& p : loop) p = p * (length / round);
  return loop;
}

/// A loop from the middle in a direction of the place's plane, leaning out by `tilt` degrees; of
/// `length` mm of ribbon, gathered in the knot.
void addLoop(const Transform& place, double direction, double tilt, double length, double width,
             double off, Net& net, Pose& pose) {
  const double turn = Angle::degrees(direction).radians();
  const Point3 out = place.turn({0, 0, -1});
  const Point3 along = place.turn({std::cos(turn), std::sin(turn), 0});
  RibbonLine line;
  line.smooth = true;
  line.across = cross(along, out);
  for (const Point& p : loopProfile(length, Angle::degrees(tilt).radians())) {
    line.points.push_back(place.apply(Point{}) + along * p.x + out * (p.y + off));
    line.halves.push_back(width / 2 * std::min(1.0, kGathered + p.x / (1.5 * width)));
  }
  addRibbonLine(line, net, pose);
}

/// The ribbon round the middle of a bow, over loops that leave it.
void addKnot(const Transform& place, double width, double off, double high, Net& net, Pose& pose) {
  constexpr int kStrips = 8;
  const double half = (kGathered + 0.2) * width / 2;
  RibbonLine line;
  line.smooth = true;
  line.across = place.turn({1, 0, 0});
  for (int i = 0; i <= kStrips; ++i) {
    const double t = std::numbers::pi * i / kStrips;
    line.points.push_back(place.apply(Point3{0, half * std::cos(t), -off - high * std::sin(t)}));
    line.halves.push_back(width * 0.4);
  }
  addRibbonLine(line, net, pose);
}

/// A tail from the knot along x, its end notched by half its width (common practice).
Polygon tailOutline(double length, double width) {
  const double full = std::min(width, length / 3);
  const double half = width / 2;
  return {{0, -kGathered * half}, {full, -half}, {length, -half},      {length - half, 0},
          {length, half},         {full, half},  {0, kGathered * half}};
}

/// A tail that lies flat.
void addTail(const Transform& place, double direction, double length, double width, double off,
             Net& net, Pose& pose) {
  const Transform turned = place.after(Transform::translation({0, 0, -off}))
                               .after(Transform::rotationZ(Angle::degrees(direction)));
  addRibbonPanel(tailOutline(length, width), turned, net, pose);
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
  if (ribbon.tied) addTiedBow(*ribbon.tied, width, net, pose);
}

namespace {

/// What panels lie over about the origin.
Polygon outlineOf(const Net& net, const Pose& pose) {
  std::vector<Point> points;
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    for (const Point& p : net.panels[i].outline) {
      const Point3 at = pose[i].apply(p);
      points.push_back({at.x, at.y});
    }
  return convexHull(std::move(points));
}

/// Loops and knot of a bow of two loops.
void addTwoLoops(double span, double width, const Transform& place, Net& net, Pose& pose) {
  for (const double side : {kRaised, 180 - kRaised})
    addLoop(place, side, kTied, span, width, kOver, net, pose);
  addKnot(place, width, 0, 0.5 * width, net, pose);
}

}  // namespace

Polygon bowOutline(const BowShape& bow, double width) {
  Net net;
  Pose pose;
  addBow(bow, width, {}, net, pose);
  return outlineOf(net, pose);
}

Polygon tiedOutline(const TiedBow& bow, double width) {
  Net net;
  Pose pose;
  addTwoLoops(bow.span, width, {}, net, pose);
  return outlineOf(net, pose);
}

void addTiedBow(const TiedBow& bow, double width, Net& net, Pose& pose) {
  addDrapedTails(bow, tailOutline(bow.tail, width), net, pose);
  addTwoLoops(bow.span, width, bow.knot, net, pose);
}

void addBow(const BowShape& bow, double width, const Transform& place, Net& net, Pose& pose) {
  if (bow.tail > 0)
    for (const double direction : {-65.0, -115.0})
      addTail(place, direction, bow.tail, width, 0, net, pose);
  if (bow.form == BowForm::TwoLoops) return addTwoLoops(bow.span, width, place, net, pose);
  double off = kOver;
  for (int layer = 0; layer < bow.layers; ++layer, off += 1.2) {
    // Layers lie across one another, the largest below.
    const double turn = bow.layers == 1 ? 0 : 180.0 / bow.layers * layer;
    for (const double side : {0.0, 180.0})
      addLoop(place, side + turn, kFolded, bow.span - kNextLayer * layer, width, off, net, pose);
  }
  addKnot(place, width, off, 0.25 * width, net, pose);
}

}  // namespace creasewright
