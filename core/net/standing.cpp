#include "net/standing.h"

#include <algorithm>

namespace creasewright {

std::optional<Standing> standingOf(const Piece& piece, std::span<const Piece* const> pieces) {
  Standing standing{&piece, {}};
  // As many steps as there are pieces: one more would go round in a ring.
  for (std::size_t step = 0; standing.root->held; ++step) {
    const Holding& held = *standing.root->held;
    const auto other = std::ranges::find(pieces, held.to, &Piece::name);
    if (!held.place || other == pieces.end() || step == pieces.size()) return std::nullopt;
    standing = {*other, held.place->after(standing.place)};
  }
  return standing;
}

}  // namespace creasewright
