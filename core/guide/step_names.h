#pragma once

#include <string>
#include <vector>

#include "document/design.h"
#include "guide/guide.h"

namespace creasewright {

/// A name for each step, no two alike, that stays when other steps come or go or change places:
/// `tray/fold/roll-sides`, `tray/cut-mitres`, `tray/extra/label`. A second step of the same kind
/// ends in `/2`. By these a design's photos find their steps.
std::vector<std::string> stepNames(const Guide& guide, const Design& design);

/// Names under which photos of a step may have been kept besides its own: those of stages that it
/// tells before its last one.
std::vector<std::string> earlierNames(const Guide& guide, const Step& step);

}  // namespace creasewright
