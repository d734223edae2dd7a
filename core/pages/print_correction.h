#pragma once

#include "base/result.h"
#include "drawing/drawing.h"
#include "pages/page_setup.h"

namespace creasewright {

/// More than this is no fault of a printer's feed but a page scaled by a setting.
inline constexpr double kMostCorrection = 0.03;

/// A bar of the calibration page: as long as it is drawn, and as long as it came out of the
/// printer.
struct MeasuredBar {
  Length drawn;
  Length printed;
};

/// The correction that makes both bars come out as drawn. Error: PrintScaleOff (`across` or `down`;
/// printed, least and most that can be corrected).
Result<PrintCorrection> correctionFor(const MeasuredBar& across, const MeasuredBar& down);

/// The setup with so much more margin that what is drawn inside it stays off the printer's own
/// margin once it is stretched.
PageSetup withRoomFor(const PrintCorrection& correction, PageSetup setup);

/// A page stretched about its middle, its own size kept. Across and down are those of the sheet as
/// it lies upright.
Drawing stretched(Drawing page, const PrintCorrection& correction);

}  // namespace creasewright
