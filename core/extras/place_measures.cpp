#include "extras/place_measures.h"

#include "extras/extra_kind.h"
#include "styles/parameter_rows.h"

namespace creasewright {

std::vector<ParameterSpec> placeMeasures() {
  return {
      measure("across", worded("styles", "Across"),
              worded("styles", "From its place to the right; less than 0 to the left."))
          .from(Length() - kLargestSide)
          .to(kLargestSide),
      measure("up", worded("styles", "Up"),
              worded("styles", "From its place upwards; less than 0 downwards."))
          .from(Length() - kLargestSide)
          .to(kLargestSide),
      number(
          "across-share", worded("styles", "Across, share"),
          worded("styles", "Percent of the width of the face, besides; less than 0 to the left."))
          .from(-100)
          .to(100),
      number("up-share", worded("styles", "Up, share"),
             worded("styles", "Percent of the height of the face, besides; less than 0 downwards."))
          .from(-100)
          .to(100),
      number("turn", worded("styles", "Turn"), worded("styles", "Degrees against the clock."))
          .from(0)
          .to(359)};
}

Point shiftOf(const Parameters& parameters) {
  return {-parameters.mm("across"), parameters.mm("up")};
}

Point shiftOn(const Bounds& face, const Parameters& parameters) {
  const auto share = [&](std::string_view key) {
    return static_cast<double>(parameters.count(key)) / 100;
  };
  return shiftOf(parameters) +
         Point{-share("across-share") * face.width(), share("up-share") * face.height()};
}

bool isShifted(const Parameters& parameters) {
  return parameters.length("across") != Length() || parameters.length("up") != Length() ||
         parameters.count("across-share") != 0 || parameters.count("up-share") != 0;
}

Angle turnOf(const Parameters& parameters) {
  return Angle::degrees(-static_cast<double>(parameters.count("turn")));
}

}  // namespace creasewright
