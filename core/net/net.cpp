#include "net/net.h"

#include <algorithm>

namespace creasewright {

bool Crease::isValley() const {
  if (angle.degrees() != 0) return angle.degrees() > 0;
  return sense == Sense::Valley;
}

std::optional<int> Net::find(std::string_view id) const {
  const auto found = std::ranges::find(panels, id, &Panel::id);
  if (found == panels.end()) return std::nullopt;
  return static_cast<int>(found - panels.begin());
}

const Crease* Net::creaseOf(int panel) const {
  const auto found = std::ranges::find_if(
      creases, [panel](const Crease& c) { return c.child == panel && !c.loop; });
  return found == creases.end() ? nullptr : &*found;
}

}  // namespace creasewright
