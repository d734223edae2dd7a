#pragma once

#include <string>

#include "drawing/drawing.h"

namespace creasewright {

/// A DXF drawing of release 12 (AC1009) in mm, which every cutting program reads: one layer for
/// each role that occurs, named as in drawing/role.h in capitals (`CUTTING`), with its line type.
/// Lines of two points become LINE, longer ones POLYLINE, texts TEXT. Fills (sheet, faces) are left
/// out. Without `dashed`, all line types are continuous: where dashes are lines of their own.
std::string writeDxf(const Drawing& drawing, const Wording& wording, bool dashed = true);

}  // namespace creasewright
