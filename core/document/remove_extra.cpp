#include "document/remove_extra.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "document/build_extras.h"
#include "extras/host.h"
#include "extras/hosting.h"
#include "net/standing.h"

namespace creasewright {
namespace {

/// Panel 0 of a piece in the frame of the first one, where it has its place there.
std::optional<Transform> placeOf(const BuiltDesign& built, const BuiltPiece& piece);

std::optional<Transform> placeOf(const BuiltDesign& built, const FacePlace& face) {
  const BuiltPiece& on = built.pieces[static_cast<std::size_t>(face.piece)];
  const std::optional<Transform> below = placeOf(built, on);
  if (!below) return std::nullopt;
  return below->after(on.folded[static_cast<std::size_t>(face.panel)]).after(face.place);
}

std::optional<Transform> placeOf(const BuiltDesign& built, const BuiltPiece& piece) {
  if (piece.role) {
    if (piece.role->around) return piece.role->around;
    if (piece.role->faces.empty()) return std::nullopt;
    return placeOf(built, piece.role->faces.front());
  }
  std::vector<const Piece*> own;
  for (const BuiltPiece& each : built.pieces)
    if (!each.role) own.push_back(&each);
  const auto first = standingOf(*own.front(), own);
  const auto there = standingOf(piece, own);
  if (!first || !there || first->root != there->root) return std::nullopt;
  return first->place.inverse().after(there->place);
}

/// The face that an extra lies on.
std::optional<FacePlace> faceOf(const BuiltDesign& built, int extra) {
  for (const BuiltPiece& piece : built.pieces)
    if (piece.role && piece.role->extra == extra && !piece.role->faces.empty())
      return piece.role->faces.front();
  for (const RibbonNeed& ribbon : built.ribbons)
    if (ribbon.extra == extra && ribbon.shape && ribbon.shape->face) return ribbon.shape->face;
  return std::nullopt;
}

/// Out of that face.
std::optional<Point3> sideOf(const BuiltDesign& built, int extra) {
  const std::optional<FacePlace> face = faceOf(built, extra);
  const std::optional<Transform> place = face ? placeOf(built, *face) : std::nullopt;
  if (!place) return std::nullopt;
  return place->normal() * -1;
}

bool isOnSide(const Design& design, int extra, Point3 side) {
  constexpr double kSameSide = 0.95;  // cosine
  const Result<BuiltDesign> built = build(design);
  if (!built) return false;
  const std::optional<Point3> there = sideOf(*built, extra);
  return there && dot(*there, side) > kSameSide;
}

/// Gives an extra the face of the box on a side, or the one that is gone.
void keepSide(const BuiltDesign& before, int extra, Point3 side, const std::string& lost,
              Design& design) {
  std::string& face = design.extras[static_cast<std::size_t>(extra)].face;
  for (const std::string& name : faceNames(before, nullptr)) {
    face = name;
    if (isOnSide(design, extra, side)) return;
  }
  face = lost;
}

}  // namespace

Design withoutExtra(const BuiltDesign& built, int gone) {
  Design design = built.design;
  const std::vector<Extra>& extras = built.design.extras;
  design.extras = withoutExtra(extras, gone);
  for (int i = 0; i < static_cast<int>(extras.size()); ++i) {
    if (i == gone || extras[static_cast<std::size_t>(i)].host != gone) continue;
    const std::optional<Point3> side = sideOf(built, i);
    const int now = i - (i > gone ? 1 : 0);
    if (!side || isOnSide(design, now, *side)) continue;
    const FacePlace lost = *faceOf(built, i);
    const BuiltPiece& on = built.pieces[static_cast<std::size_t>(lost.piece)];
    keepSide(built, now, *side, faceName(on, lost.panel), design);
  }
  return design;
}

}  // namespace creasewright
