#pragma once

#include <optional>

#include "document/build.h"
#include "extras/extra_kind.h"
#include "guide/guide.h"

namespace creasewright {

/// The step in which an extra meets the box.
Step extraStep(const BuiltDesign& built, int extra);

/// The step in which the parts of an extra that belong onto one piece are glued there while it lies
/// flat: films behind their openings, mats and labels on the outside.
Step flatExtraStep(const BuiltDesign& built, int extra, int onto);

/// Ribbons that are threaded through a piece while it lies flat, as indices into
/// BuiltDesign::ribbons, and the step in which one is.
std::vector<int> pullsThrough(const BuiltDesign& built, int piece);
Step pullStep(const BuiltDesign& built, int ribbon);

/// Extras that are glued onto a piece while it lies flat, in the order of doing: films on the
/// inside, then mats, then what is glued onto them.
std::vector<int> flatExtrasOn(const BuiltDesign& built, int piece);

/// Extras with pieces placed so (Placing::Hanging, Round, Inside).
std::vector<int> extrasPlaced(const BuiltDesign& built, Placing placing);

/// What an extra of a built design is.
const ExtraKind& kindOf(const BuiltDesign& built, int extra);

/// The extra's own pieces, as indices into BuiltDesign::pieces.
std::vector<int> piecesOf(const BuiltDesign& built, int extra);

/// How many extras lie between an extra and the box.
int extrasUnder(const BuiltDesign& built, int extra);

/// What an extra is glued onto that is to lie at a point (mm, frame of the piece's panel 0) of a
/// piece with that place: a piece of another extra that is there before it, the topmost; none where
/// the face itself shows.
std::optional<int> pieceUnder(const BuiltDesign& built, int extra, const FacePlace& face, Point at);

/// The colour of the ribbon of an extra; none of a tag's own string, nor where `extra` is -1.
std::optional<Colour> ribbonColour(const BuiltDesign& built, int extra);

}  // namespace creasewright
