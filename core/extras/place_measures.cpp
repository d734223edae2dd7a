#include "extras/place_measures.h"

#include "extras/extra_kind.h"
#include "styles/parameter_rows.h"

namespace creasewright {

std::vector<ParameterSpec> placeMeasures() {
  return {measure("across", worded("styles", "Across"),
                  worded("styles", "From its place to the right; less than 0 to the left."))
              .from(Length() - kLargestSide)
              .to(kLargestSide),
          measure("up", worded("styles", "Up"),
                  worded("styles", "From its place upwards; less than 0 downwards."))
              .from(Length() - kLargestSide)
              .to(kLargestSide),
          number("turn", worded("styles", "Turn"), worded("styles", "Degrees against the clock."))
              .from(0)
              .to(359)};
}

Point shiftOf(const Parameters& parameters) {
  return {-parameters.mm("across"), parameters.mm("up")};
}

Angle turnOf(const Parameters& parameters) {
  return Angle::degrees(-static_cast<double>(parameters.count("turn")));
}

}  // namespace creasewright
