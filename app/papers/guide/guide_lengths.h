#pragma once

#include <QString>
#include <vector>

#include "drawing/drawing.h"

namespace creasewright {

/// How a guide gives its lengths.
enum class GuideUnits { Inch, Millimetre, Both };

/// A length in one unit or as `2 1/4 in (57.2 mm)`.
QString guideLength(Length length, GuideUnits units);

/// A length of tape in all, rounded up to what is pulled off a roll: whole millimetres, eighths of
/// an inch.
QString tapeLength(Length length, GuideUnits units);

/// `a × b` or `a × b × c`, in one unit or with the second in brackets.
QString guideSize(const std::vector<Length>& sides, GuideUnits units);

/// The same of a finished box, to the whole millimetre or sixteenth of an inch: `about 117 × 92 ×
/// 27 mm`.
QString finishedSize(const std::vector<Length>& sides, GuideUnits units);

/// How far adhesive stays from folds and edges: 1 mm, for readers of inches the nearest thing on a
/// ruler.
QString keepAwayWords(GuideUnits units);

/// The unit of figures, and of sentences that a guide gives once for each unit.
Unit firstUnit(GuideUnits units);

/// The units a guide writes whole sentences of readings in: one or both.
std::vector<Unit> unitsOf(GuideUnits units);

}  // namespace creasewright
