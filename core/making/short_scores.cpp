#include "making/short_scores.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "making/cut_marks.h"
#include "making/score_sides.h"

namespace creasewright {
namespace {

/// Readings by the side where the scores start.
struct BothEnds {
  std::vector<ScoreReading> fromStart;
  std::vector<ScoreReading> fromEnd;
};

/// How a view's readings are measured.
struct Ruler {
  ToolGrid grid;
  Length board;
  [[nodiscard]] bool reaches(Length at) const { return board == Length() || at <= board; }
  [[nodiscard]] bool prefersHigh(Length fromLow, Length fromHigh) const {
    if (reaches(fromLow) != reaches(fromHigh)) return reaches(fromHigh);
    return !grid.holds(fromLow) && grid.holds(fromHigh);
  }
};

ScoreReading shortReading(const LineView& view, const ShortRun& run,
                          const std::vector<double>& fullAcross, const Ruler& ruler) {
  ScoreReading reading;
  reading.run = ScoreRun::Short;
  reading.purpose = run.purpose;
  reading.valley = run.valley;
  reading.at = Length::mm(run.at);
  reading.measuredFrom = view.low();
  const Length fromHigh = Length::mm(view.width - run.at);
  if (ruler.prefersHigh(reading.at, fromHigh)) {
    reading.at = fromHigh;
    reading.measuredFrom = view.high();
  }
  reading.to = Length::mm(run.fromEnd ? view.height - run.to : run.to);
  reading.toLine = lineNumber(fullAcross, run.to, run.fromEnd);
  return reading;
}

/// The runs of one line that is not full: from an edge of the sheet where nothing is in the way.
void splitLine(const LineView& view, const ScoreLine& line, std::vector<ShortRun>& runs,
               std::vector<FreeScore>& frees) {
  const std::vector<Span> blocked = view.blocked(line.at);
  std::optional<ShortRun> start;
  std::optional<ShortRun> end;
  const auto place = [&](const Span& span, bool valley) {
    if (!line.isMixed() && !overlaps(blocked, 0, span.low)) {
      if (!start || start->to < span.high)
        start = ShortRun{line.at, span.high, false, ScorePurpose::Fold, valley};
    } else if (!line.isMixed() && !overlaps(blocked, span.high, view.height)) {
      if (!end || end->to > span.low)
        end = ShortRun{line.at, span.low, true, ScorePurpose::Fold, valley};
    } else {
      frees.push_back({{view.turn({line.at, span.low}), view.turn({line.at, span.high})}, valley});
    }
  };
  for (const Span& span : line.valleys) place(span, true);
  for (const Span& span : line.mountains) place(span, false);
  if (start) runs.push_back(*start);
  if (end) runs.push_back(*end);
}

/// The reading on the other side of the view's middle.
ScoreReading mirrored(ScoreReading reading, const LineView& view) {
  if (reading.measuredFrom == view.high())
    reading.measuredFrom = view.low();
  else
    reading.at = Length::mm(view.width) - reading.at;
  return reading;
}

/// As if it were measured from the low side.
ScoreReading fromLow(ScoreReading reading, const LineView& view) {
  if (reading.measuredFrom == view.low()) return reading;
  reading.measuredFrom = view.low();
  reading.at = Length::mm(view.width) - reading.at;
  return reading;
}

bool isSymmetric(const std::vector<ScoreReading>& readings, const LineView& view) {
  return std::ranges::all_of(
      readings,
      [&](const ScoreReading& reading) {
        return std::ranges::any_of(
            readings,
            [&](const ScoreReading& other) {
              return sameReadings({fromLow(mirrored(reading, view), view)}, {fromLow(other, view)});
            });
      });
}

BothEnds readingsOf(const LineView& view, const std::vector<ShortRun>& runs,
                    const std::vector<double>& fullAcross, const Ruler& ruler) {
  BothEnds ends;
  for (const ShortRun& run : runs)
    (run.fromEnd ? ends.fromEnd : ends.fromStart)
        .push_back(shortReading(view, run, fullAcross, ruler));
  return ends;
}

bool allOn(ToolGrid grid, const BothEnds& ends) {
  const auto on = [grid](const ScoreReading& reading) { return grid.holds(reading.at); };
  return std::ranges::all_of(ends.fromStart, on) && std::ranges::all_of(ends.fromEnd, on);
}

/// One setting serves the sheet's start and, turned, its end.
bool servesBoth(const BothEnds& ends, const LineView& view) {
  return !ends.fromStart.empty() && sameReadings(ends.fromStart, ends.fromEnd) &&
         isSymmetric(ends.fromStart, view);
}

}  // namespace

ShortScores planShortScores(const LineView& view, const std::vector<double>& fullAcross,
                            ToolGrid grid, Length board) {
  ShortScores plan;
  std::vector<ShortRun> runs;
  for (const ScoreLine& line : view.lines)
    if (!line.full) splitLine(view, line, runs, plan.freeScores);
  const std::vector<ShortRun> marks = findCutMarks(view, fullAcross);
  runs.insert(runs.end(), marks.begin(), marks.end());
  std::ranges::stable_sort(runs, {}, &ShortRun::at);

  BothEnds ends = readingsOf(view, runs, fullAcross, {grid, board});
  // Readings of which some stay off the grid are better alike on both sides than a few of them on.
  const BothEnds plain = readingsOf(view, runs, fullAcross, {ToolGrid::none(), board});
  if (!allOn(grid, ends) && servesBoth(plain, view)) ends = plain;
  if (servesBoth(ends, view)) {
    plan.setups.push_back({{view.start(), view.end()}, ends.fromStart});
    return plan;
  }
  if (!ends.fromStart.empty()) plan.setups.push_back({{view.start()}, ends.fromStart});
  if (!ends.fromEnd.empty()) plan.setups.push_back({{view.end()}, ends.fromEnd});
  return plan;
}

}  // namespace creasewright
