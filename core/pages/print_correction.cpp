#include "pages/print_correction.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "drawing/arrange.h"
#include "units/millimetres.h"
#include "units/tool_grid.h"

namespace creasewright {
namespace {

/// Rounded inwards, so that the limits told hold.
std::optional<Problem> scaleProblem(const char* axis, const MeasuredBar& bar) {
  const ToolGrid hundredths(mm(0.01));
  const Length least = hundredths.roundUp(Length::mm(bar.drawn.mm() / (1 + kMostCorrection)));
  const Length most = hundredths.roundDown(Length::mm(bar.drawn.mm() / (1 - kMostCorrection)));
  if (bar.printed >= least && bar.printed <= most) return std::nullopt;
  return Problem{ProblemCode::PrintScaleOff, axis, {bar.printed, bar.drawn, least, most}};
}

}  // namespace

Result<PrintCorrection> correctionFor(const MeasuredBar& across, const MeasuredBar& down) {
  if (auto problem = scaleProblem("across", across)) return *problem;
  if (auto problem = scaleProblem("down", down)) return *problem;
  return PrintCorrection{across.drawn.mm() / across.printed.mm(),
                         down.drawn.mm() / down.printed.mm()};
}

PageSetup withRoomFor(const PrintCorrection& correction, PageSetup setup) {
  const auto marginFor = [&](Length side, double factor) {
    const double half = side.mm() / 2;
    return half - (half - setup.margin) / std::max(1.0, factor);
  };
  setup.margin = std::max(marginFor(setup.paper.width, correction.across),
                          marginFor(setup.paper.height, correction.down));
  return setup;
}

Drawing stretched(Drawing page, const PrintCorrection& correction) {
  const bool sideways = page.width > page.height;
  const Point factor = sideways ? Point{correction.down, correction.across}
                                : Point{correction.across, correction.down};
  const Point middle{page.width / 2, page.height / 2};
  const auto stretch = [&](Point p) {
    return Point{middle.x + (p.x - middle.x) * factor.x, middle.y + (p.y - middle.y) * factor.y};
  };
  for (PathItem& path : page.paths) carry(path, stretch);
  for (TextItem& text : page.texts) text.at = stretch(text.at);
  return page;
}

}  // namespace creasewright
