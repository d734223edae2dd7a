#include "pages/ribbon_picture.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

constexpr double kOff = 0.8;      // mm above the faces, over mats and labels
constexpr double kLoop = 0.16;    // of the ribbon that a bow takes: one of its two loops
constexpr double kLoopTilt = 28;  // degrees

void addPanel(Polygon outline, const Transform& place, Net& net, Pose& pose) {
  Panel panel;
  panel.id = "ribbon";
  panel.edges.assign(outline.size(), "edge");
  panel.outline = std::move(outline);
  net.panels.push_back(std::move(panel));
  pose.push_back(place);
}

Polygon strip(double length, double width) {
  return {{-length / 2, -width / 2},
          {length / 2, -width / 2},
          {length / 2, width / 2},
          {-length / 2, width / 2}};
}

/// A strip along `along` on the side of the box to which `out` points, its drawn face inwards.
void addStrip(const OutsideBox& box, std::size_t side, double sign, std::size_t along, double width,
              Net& net, Pose& pose) {
  const Point3 out = box.axes.at(side) * sign;
  const Point3 middle = box.centre + out * (box.sizes.at(side) / 2 + kOff);
  const Point3 x = box.axes.at(along);
  addPanel(strip(box.sizes.at(along) + 2 * kOff, width),
           Transform::frame(middle, x, cross(out * -1, x)), net, pose);
}

/// Two loops that lean up from a knot in the middle of the top.
void addBow(const OutsideBox& box, double loop, double width, Net& net, Pose& pose) {
  const Point3 top = box.axes[2];
  const Point3 middle = box.centre + top * (box.sizes[2] / 2 + 2 * kOff);
  const double tilt = Angle::degrees(kLoopTilt).radians();
  for (const double sign : {1.0, -1.0}) {
    const Point3 out = box.axes[0] * (sign * std::cos(tilt)) + top * std::sin(tilt);
    const Point3 side = cross(out, top);
    addPanel(ellipse({loop / 2, 0}, loop / 2, width),
             Transform::frame(middle, out, side / norm(side)), net, pose);
  }
  addPanel(strip(width, width),
           Transform::frame(middle + top * (2 * kOff), box.axes[0], cross(top * -1, box.axes[0])),
           net, pose);
}

}  // namespace

void addRibbon(const RibbonNeed& ribbon, Net& net, Pose& pose) {
  const OutsideBox& box = ribbon.round;
  const double width = std::min(ribbon.width.mm(), 0.5 * *std::ranges::min_element(box.sizes));
  for (const double sign : {1.0, -1.0}) {
    addStrip(box, 2, sign, 1, width, net, pose);
    addStrip(box, 1, sign, 2, width, net, pose);
    if (!ribbon.cross) continue;
    addStrip(box, 2, sign, 0, width, net, pose);
    addStrip(box, 0, sign, 2, width, net, pose);
  }
  const double loop = std::min(kLoop * ribbon.bow.mm(), 0.45 * box.sizes[0]);
  if (loop > width) addBow(box, loop, width / 2, net, pose);
}

}  // namespace creasewright
