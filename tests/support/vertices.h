#pragma once

#include <vector>

#include "net/flat_net.h"
#include "net/net.h"

namespace creasewright {

/// A point inside the flat card where creases meet, with card all round it.
struct InteriorVertex {
  Point at;                     ///< in blank coordinates
  std::vector<int> creases;     ///< indices into Net::creases, counter-clockwise
  std::vector<double> sectors;  ///< degrees; sectors[i] lies between crease i and the next

  /// Kawasaki: the sum of every second sector less 180 degrees; 0 where the vertex can fold flat.
  [[nodiscard]] double kawasakiExcess() const;
};

std::vector<InteriorVertex> interiorVertices(const Net& net, const FlatNet& flat);

}  // namespace creasewright
