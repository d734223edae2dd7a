#pragma once

#include <QString>
#include <vector>

#include "document/build.h"

namespace creasewright {

/// Panels of a piece by name, in quotes. Several of one kind are told together, “corner tab” (all
/// 4), only when they are all there are of it.
QString panelList(const BuiltPiece& piece, const std::vector<int>& panels);

}  // namespace creasewright
