#include "pages/page_frame.h"

#include <string>
#include <utility>

namespace creasewright {

PageFrame pageFrame(const PageSetup& setup, bool sideways, const PageReserve& reserve) {
  PageFrame frame;
  frame.width = setup.paper.width.mm();
  frame.height = setup.paper.height.mm();
  if (sideways) std::swap(frame.width, frame.height);
  const double m = setup.margin;
  frame.printable = {{m, m}, {frame.width - m, frame.height - m}};
  const Bounds& all = frame.printable;
  frame.cell = {{all.low.x + reserve.left, all.low.y + reserve.foot},
                {all.high.x, all.high.y - reserve.head}};
  return frame;
}

Result<PageSetup> checkedSetup(const PageSetup& setup) {
  constexpr double kLeast = 60;
  if (!(setup.margin >= 0) || setup.paper.width.mm() - 2 * setup.margin < kLeast) {
    return Problem{ProblemCode::MarginTooLarge,
                   "margin",
                   {Length::mm(setup.margin), std::string(setup.paper.name)}};
  }
  return setup;
}

}  // namespace creasewright
