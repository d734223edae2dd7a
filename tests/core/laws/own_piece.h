#pragma once

#include <string>

#include "document/build.h"

namespace creasewright::testing {

/// The box's own piece of that name; null when there is none.
inline const BuiltPiece* ownPiece(const BuiltDesign& built, const std::string& name) {
  for (const BuiltPiece& piece : built.pieces)
    if (!piece.role && piece.name == name) return &piece;
  return nullptr;
}

}  // namespace creasewright::testing
