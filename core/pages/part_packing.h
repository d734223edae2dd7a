#pragma once

#include <optional>
#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

/// Width and height in mm.
struct PartSize {
  double width = 0;
  double height = 0;
};

/// A page that takes parts, with what lies on it already.
struct PartPage {
  Bounds room;
  std::vector<Bounds> taken = {};
};

/// Where a part lies: on which page (the given ones first, then new ones), and its box there.
struct PackedPart {
  std::size_t page = 0;
  Bounds box;
  bool turned = false;
};

/// All parts, in the order given, and how many new pages they take.
struct PartPacking {
  std::vector<PackedPart> parts;
  std::size_t newPages = 0;
  double turnedArea = 0;  ///< mm2 of parts that lie turned
};

/// Packs rectangles at least `gap` mm apart onto the `given` pages and as few new ones with `room`
/// as it finds: the best of several orders, of all orders for few parts. Parts may be turned by a
/// quarter. Nothing: one fits no page.
std::optional<PartPacking> packParts(const std::vector<PartSize>& parts,
                                     const std::vector<PartPage>& given, const Bounds& room,
                                     double gap);

}  // namespace creasewright
