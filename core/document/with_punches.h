#pragma once

#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "document/build.h"
#include "extras/punch.h"
#include "units/millimetres.h"

namespace creasewright {

/// The design with its punched labels and layers in the sizes of these punches: each takes the
/// largest that is no larger than it. What none of them can make is cut.
Design withPunches(Design design, std::span<const Punch> punches);

/// Whether a punch makes the piece, and no knife.
bool isPunched(const BuiltPiece& piece);

/// The punch that makes a piece, of its shape and size; nothing for what is cut.
std::optional<Punch> punchFor(const BuiltDesign& built, const BuiltPiece& piece);

/// All punches that a design is made with, each once.
std::vector<Punch> punchesFor(const BuiltDesign& built);

/// What a punched piece leaves of its blank on each side: so much must lie under the die all round
/// (common practice, no published source).
inline constexpr Length kPunchMargin = mm(3);

/// The width and height of the blank that a piece is made from: as large as its net, or what its
/// punch needs.
std::pair<Length, Length> blankSize(const BuiltPiece& piece);

}  // namespace creasewright
