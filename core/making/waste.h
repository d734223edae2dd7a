#pragma once

#include <string>
#include <vector>

#include "net/flat_net.h"

namespace creasewright {

/// A piece cut away from the blank.
struct WastePiece {
  std::string letter;  ///< A, B, .. Z, AA: from the top left, row by row
  Area area;           ///< blank coordinates
};

std::vector<WastePiece> findWaste(const FlatNet& flat);

}  // namespace creasewright
