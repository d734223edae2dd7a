#include "styles/parts/prism_limits.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "styles/parameter_rows.h"
#include "styles/parts/frustum.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

constexpr int kFewestSides = 3;
constexpr int kMostSides = 12;
/// Walls of a cup lean outwards by a third of their height at most.
constexpr double kSteepestLean = 1.0 / 3;

}  // namespace

ParameterSpec sidesParameter() {
  return number("sides", worded("styles", "Sides"),
                worded("styles", "From a triangle to twelve sides."))
      .standard(6)
      .from(kFewestSides)
      .to(kMostSides);
}

int sidesOf(const Parameters& parameters) {
  return static_cast<int>(
      std::clamp<std::int64_t>(parameters.count("sides"), kFewestSides, kMostSides));
}

Limit leastAcross() {
  return [](const Parameters& p, const Workbench& m) {
    const int n = sidesOf(p);
    // The tabs taper most in the cup that leans most.
    Frustum leaning{n, 10, 0, 30, 0, 0};
    leaning.top = leaning.bottom + sideOf(n, kSteepestLean * leaning.height);
    const double tab = Length::nanometres(smallestFlap()(p, m)).mm();
    const double side = tab / leaning.deepestTab() * leaning.bottom + 0.01;
    return Length::mm(2 * apothemOf(n, std::max(side, tab + 3))).nm();
  };
}

ParameterSpec wallSeamParameter(std::string_view acrossKey) {
  return measure("seam", worded("styles", "Glue seam"),
                 worded("styles",
                        "Glued inside the first wall: narrower than it, and less than half as deep "
                        "as it is high."))
      .standard(mm(10))
      .from(smallestFlap())
      .to([acrossKey](const Parameters& p, const Workbench&) {
        return Length::mm(std::min(sideOf(sidesOf(p), p.mm(acrossKey) / 2), p.mm("height") / 2) - 2)
            .nm();
      })
      .givesWay();
}

Limit leastPrismHeight() { return greatest(mm(20), calipers(40)); }

double apothemFor(const Room& room, int sides) {
  const double length = room.eased(Axis::Length).mm();
  const double width = room.eased(Axis::Width).mm();
  return room.round ? std::max(length, width) / 2 : apothemAround(sides, length, width);
}

double baseTab(double deepest, double caliper) {
  return std::clamp(deepest, std::max(6.0, 10 * caliper), std::max(10.0, 10 * caliper));
}

NetWords prismWords() {
  return {.stages = {{"bottom-tabs", worded("stages", "fold the bottom tabs"),
                      worded("stages", "Fold all bottom tabs inwards.")},
                     {"base", worded("stages", "close the base over the tabs"),
                      worded("stages", "Bring the base down onto the tabs and press.")},
                     {"walls-and-seam", worded("stages", "fold the walls and the seam"),
                      worded("stages", "Fold the walls round, and the seam.")},
                     {"last-wall", worded("stages", "bring the last wall round and glue the seam"),
                      worded("stages", "Bring the last wall round and press the seam.")}}};
}

}  // namespace creasewright
