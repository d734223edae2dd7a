#pragma once

#include "edits/kinds/edit_kind.h"

namespace creasewright {

// On a panel.
EditKind openingEdit();
EditKind slitEdit();
EditKind slitPairEdit();
EditKind hangingEdit();
EditKind holesEdit();

// On a cut edge.
EditKind notchEdit();
EditKind cornersEdit();
EditKind shapedEdgeEdit();

}  // namespace creasewright
