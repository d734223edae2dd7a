#include "extras/inside_room.h"

#include <algorithm>

namespace creasewright {

std::optional<CavitySize> insideOf(const Host& host) {
  for (const HostPiece& piece : host.pieces)
    if (piece.part->cavity && !piece.part->over) {
      const CavitySize size = sizeAlong(*piece.part->cavity, piece.cavity);
      if (std::min({size.length, size.width, size.height}) > 5) return size;
    }
  return std::nullopt;
}

}  // namespace creasewright
