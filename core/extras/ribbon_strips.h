#pragma once

#include <vector>

#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// A flat piece of ribbon; returns its panel.
int addRibbonPanel(Polygon outline, const Transform& place, Net& net, Pose& pose);

/// The middle line of a ribbon in space, mm.
struct RibbonLine {
  std::vector<Point3> points;
  std::vector<double> halves;  ///< by point, half of its width
  Point3 across;               ///< square to its way
  bool smooth = false;         ///< no lines are drawn across it, else where it bends sharply
  bool closed = false;
};

/// Adds it, one strip from each point to the next; their drawn faces look along across x way.
void addRibbonLine(const RibbonLine& line, Net& net, Pose& pose);

}  // namespace creasewright
