#pragma once

#include <QString>

#include "pages/page_setup.h"

namespace creasewright {

// Kept between starts (QSettings), for each printer and paper.

/// What corrects a printer on a paper; none where none is kept or what is kept cannot be read.
/// `printer` is empty for a PDF that is printed elsewhere.
PrintCorrection keptCorrection(const QString& printer, const Paper& paper);
void keepCorrection(const QString& printer, const Paper& paper, const PrintCorrection& correction);

}  // namespace creasewright
