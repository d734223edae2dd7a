#pragma once

#include <sstream>
#include <string>
#include <vector>

#include "making/score_plan.h"

namespace creasewright {

/// A reading carried out on one side of the blank.
struct ScoreSide {
  ScoreReading reading;
  Segment line;
};

namespace testing {

inline const char* sideName(SheetSide side) {
  const char* names[] = {"left", "right", "bottom", "top"};
  return names[static_cast<int>(side)];
}

/// One line a setup, lengths in sixteenths of an inch.
inline std::string planText(const ScorePlan& plan) {
  std::ostringstream out;
  for (const ScoreSetup& setup : plan.setups) {
    const char* gap = "";
    for (const SheetSide side : setup.sides) {
      out << gap << sideName(side);
      gap = " ";
    }
    gap = ": ";
    for (const ScoreReading& r : setup.readings) {
      out << gap << r.at.inches() * 16;
      gap = " ";
      if (r.run == ScoreRun::Full) continue;
      out << " from " << sideName(r.measuredFrom) << " to " << r.to.inches() * 16 << " line "
          << r.toLine << (r.purpose == ScorePurpose::CutMark ? " cut" : " fold");
      gap = ", ";
    }
    out << '\n';
  }
  return out.str();
}

/// Where the board puts each reading of a setup, side by side.
inline std::vector<ScoreSide> placed(const ScoreSetup& setup, const FlatNet& flat) {
  std::vector<ScoreSide> result;
  for (const SheetSide side : setup.sides)
    for (const ScoreReading& r : setup.readings) {
      const bool full = r.run == ScoreRun::Full;
      const SheetSide measured = full ? side : r.measuredFrom;
      const bool upright = measured == SheetSide::Left || measured == SheetSide::Right;
      const bool far = measured == SheetSide::Right || measured == SheetSide::Top;
      const double across = upright ? flat.width : flat.height;
      const double along = upright ? flat.height : flat.width;
      const double at = far ? across - r.at.mm() : r.at.mm();
      const bool fromFar = side == SheetSide::Right || side == SheetSide::Top;
      const double low = full || !fromFar ? 0 : along - r.to.mm();
      const double high = full || fromFar ? along : r.to.mm();
      if (upright)
        result.push_back({r, {{at, low}, {at, high}}});
      else
        result.push_back({r, {{low, at}, {high, at}}});
    }
  return result;
}

}  // namespace testing
}  // namespace creasewright
