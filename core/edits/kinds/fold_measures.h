#pragma once

#include "edits/kinds/edit_kind.h"

namespace creasewright {

/// How a fold that is added goes: `fold` (valley or mountain), `angle` in degrees (`standard`),
/// `when` (before all others or after them).
void addFoldMeasures(std::vector<EditMeasure>& measures, std::string_view standard);

/// Gives a fold that is added what these measures say; a fold of no angle belongs to `stage`.
void setFold(const EditSite& site, Crease& crease, int stage);

/// The stage that `when` asks for, in which what was added is folded.
int addedStage(const EditSite& site);

}  // namespace creasewright
