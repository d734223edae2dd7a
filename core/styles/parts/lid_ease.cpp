#include "styles/parts/lid_ease.h"

namespace creasewright {

bool measuresInches(const ToolGrid& grid) {
  return !grid.isNone() && grid.step().nm() % Length::inches(1, 64).nm() == 0;
}

Length lidEase(const Room& room, const Making& making) {
  return measuresInches(making.grid) ? Length::inches(1, 16) : room.lidEase;
}

}  // namespace creasewright
