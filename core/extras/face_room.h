#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "extras/host.h"

namespace creasewright {

/// What hides a place on a face once the box is finished.
struct Overlay {
  std::string name;  ///< kind of the extra
  Region area;       ///< in the panel's frame
};

/// The bands, ribbons and labels over a face.
std::vector<Overlay> overlaysOf(const Host& host, const HostFace& face);

/// A region of the panel's frame as the face stands, its middle at (0, 0).
Region laidUpright(const HostFace& face, const Region& there);

/// The face with its middle moved to a point of the upright frame.
HostFace movedTo(const HostFace& face, Point upright);

/// How large an extra is tried, as a share of the face, where no size is chosen: the first at the
/// middle, or smaller there, before it moves aside.
inline constexpr double kShareOfFace = 0.6;
inline constexpr double kLeastAtMiddle = 0.4;
inline constexpr double kLeastShare = 0.25;
inline constexpr double kShareStep = 0.05;

/// A share and the place found for it.
struct Spot {
  double share = kShareOfFace;
  Point place;  ///< in the upright frame
};

/// The first share for which `places` leaves the middle, or else any place.
std::optional<Spot> firstSpot(const std::function<Region(double share)>& places);

/// A side of an extra: its `width` or its `height`.
struct NamedSide {
  Length length;
  std::string name;
};
NamedSide longerOf(Length width, Length height);

/// Why an extra of the sizes chosen finds no room where smaller ones might: ExtraTooLarge with its
/// longer side, `width` or `height`, and the longest of its form that fits, on the grid and no
/// larger; ExtraNoPlace where that is under `least`, or where the sizes were left open and even the
/// smallest tried is too large. `fits` is asked for shares of the sizes, and holds for less where
/// it holds for more.
Problem noRoomFor(const Extra& extra, const Host& host, const NamedSide& longer, Length least,
                  const std::function<bool(double share)>& fits);

/// ExtraCovered for every kind that hides part of `shape` (panel's frame) on a face.
Problems coveredBy(const Extra& extra, const Host& host, const HostFace& face, const Region& shape);

}  // namespace creasewright
