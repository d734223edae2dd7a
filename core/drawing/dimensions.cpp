#include "drawing/dimensions.h"

#include <algorithm>
#include <cmath>

#include "drawing/spread.h"

namespace creasewright {
namespace {

constexpr double kGap = 1.5;   // blank to tick
constexpr double kLeader = 4;  // tick to label, room to move sideways
constexpr int kLongestLabel = 12;

/// Distinct distances in mm of scores parallel to one side, and the far end of the blank.
std::vector<double> scoreDistances(const Net& net, const FlatNet& flat, bool upright) {
  std::vector<double> found;
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    if (net.creases[i].kind == CreaseKind::Flat) continue;
    const Segment& s = flat.creases[i];
    const double skew = upright ? s.b.x - s.a.x : s.b.y - s.a.y;
    if (std::abs(skew) < 1e-6) found.push_back(upright ? s.a.x : s.a.y);
  }
  std::sort(found.begin(), found.end());
  // 1 micrometre: closer distances are the same score computed twice.
  found.erase(
      std::unique(found.begin(), found.end(), [](double a, double b) { return b - a < 1e-3; }),
      found.end());
  return found;
}

TextItem lengthText(double mm, Point at, double height, Anchor anchor, double turn) {
  return {.role = Role::Dimension,
          .label = {"length", {Length::mm(mm)}, {}},
          .at = at,
          .height = height,
          .anchor = anchor,
          .turnDegrees = turn};
}

/// Leaders and labels of the scores along one side; `place` maps (distance along the side, distance
/// out of the blank) into blank coordinates.
template <class Place>
void addScores(Drawing& drawing, const std::vector<double>& distances, double height, double turn,
               Anchor anchor, Point baseline, Place place) {
  PathItem leaders{.role = Role::Dimension, .rings = {}};
  const std::vector<double> labels = spreadApart(distances, 1.35 * height);
  for (std::size_t i = 0; i < distances.size(); ++i) {
    leaders.rings.push_back({place(distances[i], kGap), place(distances[i], 2 * kGap),
                             place(labels[i], 2 * kGap + kLeader),
                             place(labels[i], 3 * kGap + kLeader)});
    const Point at = place(labels[i], 3 * kGap + kLeader + 0.3 * height);
    drawing.texts.push_back(lengthText(distances[i], at + baseline, height, anchor, turn));
  }
  if (!leaders.rings.empty()) drawing.paths.push_back(std::move(leaders));
}

/// A dimension line from `a` to `b` with strokes at its ends.
void addMeasure(Drawing& drawing, Point a, Point b, double stroke) {
  const Point across = turnLeft(unit(b - a)) * stroke;
  drawing.paths.push_back({.role = Role::Dimension,
                           .rings = {{a, b}, {a - across, a + across}, {b - across, b + across}}});
}

}  // namespace

Border addDimensions(Drawing& drawing, const Net& net, const FlatNet& flat, double textHeight) {
  const double middle = 0.36 * textHeight;  // half the height of figures
  const std::vector<double> upright = scoreDistances(net, flat, true);
  const std::vector<double> level = scoreDistances(net, flat, false);
  addScores(
      drawing, upright, textHeight, 90, Anchor::Right, {middle, 0},
      [](double along, double out) {
        return Point{along, -out};
      });
  addScores(drawing, level, textHeight, 0, Anchor::Right, {0, -middle},
            [](double along, double out) {
              return Point{-out, along};
            });

  const double offset = 3;
  const double above = flat.height + offset;
  const double beside = flat.width + offset;
  addMeasure(drawing, {0, above}, {flat.width, above}, 1.2);
  addMeasure(drawing, {beside, 0}, {beside, flat.height}, 1.2);
  drawing.texts.push_back(
      lengthText(flat.width, {flat.width / 2, above + 1.5}, textHeight, Anchor::Centre, 0));
  drawing.texts.push_back(lengthText(flat.height,
                                     {beside + 1.5 + 0.75 * textHeight, flat.height / 2},
                                     textHeight, Anchor::Centre, 90));

  const double outer = 3 * kGap + kLeader + textHeight * (0.3 + 0.62 * kLongestLabel);
  const double measure = offset + 1.5 + 1.2 * textHeight;
  return {level.empty() ? 0 : outer, measure, upright.empty() ? 0 : outer, measure};
}

}  // namespace creasewright
