#pragma once

#include "styles/style.h"

namespace creasewright {

/// The parameter that holds one axis of the room, eased, and so many thicknesses of card beside it.
struct Holds {
  std::string_view key;
  std::int64_t calipers = 0;
};

/// What most boxes need: length, width and height each held by a parameter of its own.
inline std::vector<Need> needsOf(const Room& room, const Workbench& bench, Holds length,
                                 Holds width, Holds height) {
  const auto need = [&](const Holds& holds, Axis axis) {
    return Need{holds.key, axis, room.eased(axis) + bench.caliper * holds.calipers};
  };
  return {need(length, Axis::Length), need(width, Axis::Width), need(height, Axis::Height)};
}

/// The same as a style says it: `.needs = holding({"length", 1}, {"width", 3}, {"depth", 1})`.
inline StyleNeeds holding(Holds length, Holds width, Holds height) {
  return [=](const Room& room, const Parameters&, const Workbench& bench) {
    return needsOf(room, bench, length, width, height);
  };
}

}  // namespace creasewright
