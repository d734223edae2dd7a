#pragma once

#include <optional>
#include <span>

#include "net/piece.h"

namespace creasewright {

/// Where a piece stands once its design is put together.
struct Standing {
  const Piece* root = nullptr;  ///< the piece that it is held to in the end, or itself
  Transform place;              ///< its panel 0 in the frame of the root's; mm
};

/// Followed through what each piece is held to. Nothing where a place on the way is not told, or a
/// piece is not among `pieces`.
std::optional<Standing> standingOf(const Piece& piece, std::span<const Piece* const> pieces);

}  // namespace creasewright
