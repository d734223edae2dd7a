#pragma once

#include <QString>
#include <vector>

#include "making/score_plan.h"

namespace creasewright {

QString sideTitle(SheetSide side);

/// "all four sides", "both short sides" …, else the sides one by one. Short sides are the ends of
/// the longer measure of a blank of `width` x `height` mm.
QString sidesTitle(const std::vector<SheetSide>& sides, double width, double height);

/// One reading as a phrase: what to set and how far the score runs.
QString readingText(const ScoreReading& reading, Unit unit);

/// A score given by its two ends.
QString freeScoreText(const FreeScore& score, Unit unit);

}  // namespace creasewright
