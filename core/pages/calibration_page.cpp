#include "pages/calibration_page.h"

#include <cmath>
#include <string>

#include "drawing/arrange.h"
#include "pages/marks.h"
#include "pages/notes.h"
#include "units/millimetres.h"
#include "units/tool_grid.h"

namespace creasewright {
namespace {

constexpr double kInside = 8;  // mm from the printer's margin to a bar

/// Whole centimetres or half inches within `room` mm, and the words' room beside the bar.
Length barWithin(double room, Unit unit) {
  constexpr double kWordsRoom = 24;
  const ToolGrid step(unit == Unit::Inch ? Length::inches(1, 2) : mm(10));
  return step.roundDown(Length::mm(room - kWordsRoom));
}

void putBar(Drawing& page, Length length, Unit unit, const std::string& words, Point at,
            bool upright) {
  const double division = unit == Unit::Inch ? 12.7 : 10;
  append(page, moved(checkBar(length.mm(), division, words, upright), at));
}

}  // namespace

CalibrationPage calibrationPage(const PageSetup& setup, Unit unit, const Wording& wording) {
  const double width = setup.paper.width.mm();
  const double height = setup.paper.height.mm();
  const double edge = setup.margin + kInside;
  CalibrationPage out;
  out.across = barWithin(width - 2 * edge, unit);
  out.down = barWithin(height - 2 * edge, unit);
  out.page.width = width;
  out.page.height = height;
  putBar(out.page, out.across, unit, wording({"calibration-across", {out.across}, {}}),
         {edge + kInside, edge}, false);
  putBar(out.page, out.down, unit, wording({"calibration-down", {out.down}, {}}),
         {edge, edge + kInside}, true);
  const auto line = [&](const char* code, double size, double before) {
    return NoteLine{wording({code, {}, {}}), size, 0, before};
  };
  const Bounds room{{edge + 3 * kInside, edge + 3 * kInside}, {width - edge, height - edge}};
  for (const Drawing& words :
       setNotes({{wording({"calibration-title", {std::string(setup.paper.name)}, {}}), 6, 0, 0},
                 line("calibration-print", 4, 6),
                 line("calibration-measure", 4, 3),
                 line("calibration-type", 4, 3)},
                room))
    append(out.page, words);
  return out;
}

}  // namespace creasewright
