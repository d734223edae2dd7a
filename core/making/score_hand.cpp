#include "making/score_hand.h"

#include <algorithm>

namespace creasewright {
namespace {

class Mirror {
 public:
  explicit Mirror(double width) : width_(width) {}

  void turn(Point& p) const { p.x = width_ - p.x; }
  void turn(Segment& s) const {
    turn(s.a);
    turn(s.b);
  }
  void turn(Polygon& ring) const {
    for (Point& p : ring) turn(p);
  }
  void turn(Region& region) const {
    for (Area& area : region) {
      turn(area.outer);
      for (Polygon& hole : area.holes) turn(hole);
    }
  }

 private:
  double width_;
};

/// What score plans read of a sheet; rings run the other way round then.
FlatNet seenInMirror(FlatNet flat) {
  const Mirror mirror(flat.width);
  for (Polygon& panel : flat.panels) mirror.turn(panel);
  for (std::vector<Polygon>& openings : flat.openings)
    for (Polygon& opening : openings) mirror.turn(opening);
  for (Segment& crease : flat.creases) mirror.turn(crease);
  for (Polyline& slit : flat.slits) mirror.turn(slit);
  for (Segment& parting : flat.partings) mirror.turn(parting);
  mirror.turn(flat.outline);
  mirror.turn(flat.waste);
  return flat;
}

}  // namespace

SheetSide inMirror(SheetSide side) {
  switch (side) {
    case SheetSide::Left:
      return SheetSide::Right;
    case SheetSide::Right:
      return SheetSide::Left;
    case SheetSide::Bottom:
    case SheetSide::Top:
      return side;
  }
  return side;
}

ScorePlan planScoresFor(Hand hand, const Net& net, const FlatNet& flat, ToolGrid grid,
                        Length board) {
  if (hand == Hand::Right) return planScores(net, flat, grid, board);
  ScorePlan plan = planScores(net, seenInMirror(flat), grid, board);
  for (ScoreSetup& setup : plan.setups) {
    for (SheetSide& side : setup.sides) side = inMirror(side);
    std::ranges::sort(setup.sides);
    for (ScoreReading& reading : setup.readings)
      reading.measuredFrom = inMirror(reading.measuredFrom);
  }
  const Mirror mirror(flat.width);
  for (FreeScore& score : plan.freeScores) mirror.turn(score.line);
  return plan;
}

}  // namespace creasewright
