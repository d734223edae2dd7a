#pragma once

#include <map>
#include <vector>

#include "edits/kinds/edit_judge.h"
#include "edits/kinds/edit_kind.h"
#include "net/piece.h"
#include "styles/parameter_spec.h"

namespace creasewright {

/// The measures that formulas may name: a style's lengths.
std::vector<std::string> lengthKeys(const std::vector<ParameterSpec>& measures);

/// What came of a design's edits.
struct EditsMade {
  std::map<int, Problem> broken;            ///< by index: why one is not made
  std::vector<PieceJoint> joints;           ///< of pieces that were divided, besides Piece::held
  std::map<std::size_t, JudgedNet> judged;  ///< of pieces whose nets were judged as they are now
};

/// Makes the edits that are on, one after another, in the pieces of a style; those that divide a
/// piece come last. An edit whose place is
/// gone, whose measures cannot be read, or after which the net would hold less than before, is left
/// out; the result says why, by its index in `edits`. Formulas may name the `lengths` among the
/// style's `measures`, `panel-width` and `panel-height` as the net is drawn, `edge-length`,
/// `caliper`, and the edit's own measures as `this-KEY`.
EditsMade applyEdits(const std::vector<Edit>& edits, const Parameters& measures,
                     const std::vector<std::string>& lengths, const Workbench& bench,
                     std::vector<Piece>& pieces);

/// The same, but nobody asks whether the net holds afterwards: for edits that are known to hold
/// with measures close by.
EditsMade makeEdits(const std::vector<Edit>& edits, const Parameters& measures,
                    const std::vector<std::string>& lengths, const Workbench& bench,
                    std::vector<Piece>& pieces);

}  // namespace creasewright
