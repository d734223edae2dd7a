#pragma once

#include "edits/kinds/edit_kind.h"
#include "styles/net_words.h"

namespace creasewright {

// On a panel.
EditKind openingEdit();
EditKind slitEdit();
EditKind slitPairEdit();
EditKind hangingEdit();
EditKind holesEdit();
EditKind splitEdit();
EditKind removeEdit();
EditKind textEdit();
EditKind markEdit();

// On a cut edge.
EditKind notchEdit();
EditKind cornersEdit();
EditKind shapedEdgeEdit();
EditKind flapEdit();

// On a fold.
EditKind foldEdit();
EditKind slitLockEdit();
EditKind mergeEdit();
EditKind seamEdit();

/// Words for the stages and panels that edits add to a net.
const NetWords& editWords();

}  // namespace creasewright
