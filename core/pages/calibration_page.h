#pragma once

#include "drawing/drawing.h"
#include "pages/page_setup.h"
#include "units/length.h"
#include "units/length_text.h"

namespace creasewright {

/// One page with two long bars to measure, the sheet upright, and how long they are drawn: whole
/// centimetres or half inches, as long as the paper allows.
struct CalibrationPage {
  Drawing page;
  Length across;
  Length down;
};

/// Never corrected itself: it shows what the printer does.
CalibrationPage calibrationPage(const PageSetup& setup, Unit unit, const Wording& wording);

}  // namespace creasewright
