#include "styles/registry.h"

#include <algorithm>
#include <array>

#include "styles/library.h"

namespace creasewright {

std::span<const Style> styles() {
  static const std::array all{
      framedTray(),
      bellyBand(),
      straightTuckBox(),
  };
  return all;
}

Result<const Style*> findStyle(std::string_view id) {
  const auto found = std::ranges::find(styles(), id, &Style::id);
  if (found == styles().end()) return Problem{ProblemCode::UnknownStyle, {}, {std::string(id)}};
  return &*found;
}

}  // namespace creasewright
