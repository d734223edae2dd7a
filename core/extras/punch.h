#pragma once

#include <span>

#include "extras/label_shapes.h"
#include "units/length.h"

namespace creasewright {

/// A punch that somebody owns, as what it punches measures.
struct Punch {
  LabelShape shape = LabelShape::Circle;
  Length width;
  Length height;
  bool operator==(const Punch&) const = default;
};

/// The largest punch of a shape that is no larger than width and height, or nothing.
const Punch* punchWithin(std::span<const Punch> punches, LabelShape shape, Length width,
                         Length height);

}  // namespace creasewright
