#include "extras/punch.h"

namespace creasewright {

const Punch* punchWithin(std::span<const Punch> punches, LabelShape shape, Length width,
                         Length height) {
  constexpr Length kPlay = Length::nanometres(1000);
  const Punch* best = nullptr;
  for (const Punch& punch : punches) {
    if (punch.shape != shape || punch.width > width + kPlay || punch.height > height + kPlay)
      continue;
    if (best == nullptr || punch.width + punch.height > best->width + best->height) best = &punch;
  }
  return best;
}

}  // namespace creasewright
