#pragma once

#include <string_view>
#include <vector>

#include "extras/extra_kind.h"
#include "extras/host.h"

namespace creasewright {

/// The side of a face that something is glued to.
enum class FaceSide { Outside, Inside };

/// A face and the card of it that may take a mat, in the panel's frame.
struct MatRoom {
  HostFace face;
  Region card;
};

/// A face and where the lower left corner of its mat lies on it, as it stands.
struct MatPlace {
  HostFace face;
  Point corner;
};

/// Mats of one size, with the faces they go onto.
struct MatGroup {
  Area area;  ///< its bounds begin at (0, 0)
  std::vector<MatPlace> places;
};

/// The largest mat for each room, `inset` mm inside every edge and opening and on the grid; those
/// of one size together. Rooms too small for a mat are left out.
std::vector<MatGroup> matGroups(const std::vector<MatRoom>& rooms, FaceSide side, double inset,
                                ToolGrid grid);

/// Their pieces, called `name`, or `name-1`, `name-2` … where there are several sizes; `lift` mm
/// off the middle of the card.
ExtraParts matParts(const std::vector<MatGroup>& groups, std::string_view name, FaceSide side,
                    double lift);

}  // namespace creasewright
