#include "making/score_place.h"

namespace creasewright {

bool isUpright(SheetSide side) { return side == SheetSide::Left || side == SheetSide::Right; }
bool isFar(SheetSide side) { return side == SheetSide::Right || side == SheetSide::Top; }

Segment scoredLine(SheetSide side, const ScoreReading& reading, double width, double height) {
  const bool full = reading.run == ScoreRun::Full;
  const SheetSide measured = full ? side : reading.measuredFrom;
  const double across = isUpright(measured) ? width : height;
  const double along = isUpright(measured) ? height : width;
  const double at = isFar(measured) ? across - reading.at.mm() : reading.at.mm();
  const double low = full || !isFar(side) ? 0 : along - reading.to.mm();
  const double high = full || isFar(side) ? along : reading.to.mm();
  return isUpright(measured) ? Segment{{at, low}, {at, high}} : Segment{{low, at}, {high, at}};
}

}  // namespace creasewright
