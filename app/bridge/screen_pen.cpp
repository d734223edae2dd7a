#include "bridge/screen_pen.h"

#include <algorithm>

namespace creasewright {

QPen screenPen(Role role, double scale) {
  constexpr double kThinnest = 1.2;     // pixels
  constexpr double kSmallestScale = 2;  // pixels per mm of the dash pattern
  const RoleStyle& style = roleStyle(role);
  const double width = std::max(style.width * scale, kThinnest);
  QPen pen(roleColour(role), width);
  pen.setCapStyle(Qt::FlatCap);
  pen.setJoinStyle(Qt::MiterJoin);
  QList<qreal> dashes;
  for (const double mm : style.dashes)
    dashes.push_back(mm * std::max(scale, kSmallestScale) / width);
  if (!dashes.isEmpty()) pen.setDashPattern(dashes);
  return pen;
}

}  // namespace creasewright
