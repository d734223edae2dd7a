#include "pages/page_frame.h"

#include <string>
#include <utility>

namespace creasewright {
namespace {

constexpr double kHeader = 10;
constexpr double kLeft = 11;

}  // namespace

PageFrame pageFrame(const PageSetup& setup, bool sideways, double footHeight) {
  PageFrame frame;
  frame.width = setup.paper.width.mm();
  frame.height = setup.paper.height.mm();
  if (sideways) std::swap(frame.width, frame.height);
  const double m = setup.margin;
  frame.printable = {{m, m}, {frame.width - m, frame.height - m}};
  const Bounds& all = frame.printable;
  frame.header = {{all.low.x, all.high.y - kHeader}, all.high};
  frame.foot = {all.low, {all.high.x, all.low.y + footHeight}};
  frame.left = {{all.low.x, frame.foot.high.y}, {all.low.x + kLeft, frame.header.low.y}};
  frame.cell = {{frame.left.high.x, frame.foot.high.y}, {all.high.x, frame.header.low.y}};
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
