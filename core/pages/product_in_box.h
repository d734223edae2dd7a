#pragma once

#include <optional>
#include <vector>

#include "document/build.h"
#include "folding/surfaces/solid.h"

namespace creasewright {

/// The product where it lies in the folded piece that holds it.
struct ProductInBox {
  int piece = 0;          ///< of BuiltDesign::pieces
  double from = 1;        ///< in it from this progress of the fold on, 0..1
  std::vector<Solid> at;  ///< in the frame of the panel that the cavity belongs to
  int panel = 0;
};

/// Nothing without a product, or where no piece has a space of its own for it. A product that is
/// too large stands in the middle of its space and sticks out.
std::optional<ProductInBox> productInBox(const BuiltDesign& built);

/// The same for the finished box alone, without asking when it goes in.
std::optional<ProductInBox> productInFinished(const BuiltDesign& built);

/// The product as it lies in a pose of the piece, in the frame of panel 0; empty before it is put
/// in and for other pieces.
std::vector<Solid> productAt(const std::optional<ProductInBox>& product, int piece,
                             const Pose& pose, double progress);

}  // namespace creasewright
