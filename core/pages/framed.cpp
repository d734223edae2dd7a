#include "pages/framed.h"

#include <algorithm>
#include <utility>

#include "drawing/arrange.h"
#include "pages/figure_room.h"

namespace creasewright {
namespace {

Drawing inTheMiddle(Drawing drawing, double width, double height, std::optional<Colour> ground) {
  const Point by{(width - drawing.width) / 2, (height - drawing.height) / 2};
  constexpr double kBeyond = 1;  // mm, for pixels that the rim crosses
  Drawing out{width, height, {}, {}};
  if (ground)
    out.paths.push_back({.role = Role::Sheet,
                         .rings = {{{-kBeyond, -kBeyond},
                                    {width + kBeyond, -kBeyond},
                                    {width + kBeyond, height + kBeyond},
                                    {-kBeyond, height + kBeyond}}},
                         .closed = true,
                         .filled = true,
                         .colour = ground});
  append(out, moved(std::move(drawing), by));
  return out;
}

}  // namespace

Drawing framed(Drawing drawing, double ratio, std::optional<Colour> ground) {
  const double width = std::max(drawing.width, drawing.height * ratio);
  return inTheMiddle(std::move(drawing), width, width / ratio, ground);
}

Drawing onPage(Drawing drawing, double width, double height, double margin,
               std::optional<Colour> ground) {
  const FigureRoom room{width - 2 * margin, height - 2 * margin};
  const double scale = scaleInto(drawing.width, drawing.height, room);
  drawing = fittedInto(std::move(drawing), room);
  for (PathItem& item : drawing.paths)
    if (!item.filled) item.width *= scale;
  return inTheMiddle(std::move(drawing), width, height, ground);
}

}  // namespace creasewright
