#pragma once

#include <optional>
#include <vector>

#include "core/extras/built_extras.h"
#include "folding/surfaces/upright.h"
#include "net/standing.h"

namespace creasewright::testing {

/// Panel 0 of a piece of a built design in the frame of its first piece.
inline std::optional<Transform> inSpace(const BuiltDesign& design, const BuiltPiece& piece) {
  if (piece.role) {
    if (piece.role->around) return piece.role->around;
    if (piece.role->faces.size() != 1) return std::nullopt;
    const FacePlace& face = piece.role->faces.front();
    const BuiltPiece& on = hostOf(design, face);
    const auto below = inSpace(design, on);
    if (!below) return std::nullopt;
    return below->after(on.folded.at(static_cast<std::size_t>(face.panel))).after(face.place);
  }
  std::vector<const Piece*> own;
  for (const BuiltPiece& each : design.pieces)
    if (!each.role) own.push_back(&each);
  const auto first = standingOf(*own.front(), own);
  const auto there = standingOf(piece, own);
  if (!first || !there || first->root != there->root) return std::nullopt;
  return first->place.inverse().after(there->place);
}

/// Where a bow stands in the same frame: x to the right, y up, z into what it lies on.
inline std::optional<Transform> inSpace(const BuiltDesign& design, const BowShape& bow) {
  if (bow.crossing) return bow.crossing;
  if (!bow.face) return std::nullopt;
  const BuiltPiece& on = hostOf(design, *bow.face);
  const auto below = inSpace(design, on);
  if (!below) return std::nullopt;
  return below->after(on.folded.at(static_cast<std::size_t>(bow.face->panel)))
      .after(bow.face->place);
}

/// Up and towards who stands in front, where a design's gift stands.
struct Room {
  Point3 up;
  Point3 front;
};
inline Room roomOf(const BuiltDesign& design) {
  const Point3 up = uprightOf(design.pieces.front());
  return {up, camera(frontView({Angle::degrees(0), Angle::degrees(0)}, up), up).towardsEye};
}

inline bool tells(const BuiltDesign& design, ProblemCode code) {
  return std::ranges::any_of(design.problems, [&](const Problem& p) { return p.code == code; });
}
inline const Problem* toldOf(const BuiltDesign& design, std::string_view kind) {
  for (const Problem& problem : design.problems)
    if (problem.where == kind) return &problem;
  return nullptr;
}

}  // namespace creasewright::testing
