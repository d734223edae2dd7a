#pragma once

#include <QString>

#include "base/result.h"
#include "patterns/paper_pattern.h"

namespace creasewright {

/// How many pixels a paper's picture that is kept has on its longer side: 200 mm at 300 to the
/// inch.
inline constexpr int kPaperPixels = 2400;

/// A picture file of a person's (PNG, JPEG, SVG) as a paper: in the size that the file says it has,
/// else at 300 dots to the inch; tiled, upright; at most kPaperPixels on a side and
/// kLargestPaperPicture bytes. An SVG is drawn as dots, on white; it needs a QGuiApplication where
/// it has words. Errors: FileUnreadable, PictureTooHeavy, NotAPaper, PictureTooWide.
Result<PaperPattern> readPaperFile(const QString& path);

}  // namespace creasewright
