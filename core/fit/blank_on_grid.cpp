#include "fit/blank_on_grid.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <set>
#include <utility>

#include "making/score_plan.h"
#include "net/flat_net.h"
#include "net/pose.h"

namespace creasewright {
namespace {

constexpr double kMostLost = 0.25;  // of a flap's width

/// Width and height of every blank, one piece after the other.
std::vector<Length> sidesOf(const Style& style, const Parameters& parameters,
                            const Workbench& bench) {
  std::vector<Length> sides;
  for (const Piece& piece : style.build(parameters, bench)) {
    const Pose flat = pose(piece.net, std::vector<Angle>(piece.net.creases.size()));
    Polygon corners;
    for (std::size_t i = 0; i < piece.net.panels.size(); ++i)
      for (const Point& p : piece.net.panels[i].outline) {
        const Point3 there = flat[i].apply(p);
        corners.push_back({there.x, there.y});
      }
    const Bounds blank = bounds(corners);
    sides.push_back(Length::mm(blank.width()));
    sides.push_back(Length::mm(blank.height()));
  }
  return sides;
}

/// Settings at the board that no tool of the grid hits.
std::ptrdiff_t offReadings(const Style& style, const Parameters& parameters,
                           const Workbench& bench) {
  std::ptrdiff_t off = 0;
  for (const Piece& piece : style.build(parameters, bench))
    for (const ScoreSetup& setup : planScores(piece.net, layOut(piece.net), bench.grid).setups)
      off += std::ranges::count_if(setup.readings, [&](const ScoreReading& reading) {
        return !bench.grid.holds(reading.at);
      });
  return off;
}

struct Search {
  const Style& style;
  const Workbench& bench;
  mutable std::vector<std::pair<Parameters, std::vector<Length>>> known = {};

  /// The same are asked for again and again.
  [[nodiscard]] std::vector<Length> sides(const Parameters& p) const {
    const auto found = std::ranges::find(known, p, &decltype(known)::value_type::first);
    if (found != known.end()) return found->second;
    return known.emplace_back(p, sidesOf(style, p, bench)).second;
  }
  [[nodiscard]] bool mayBe(const Parameters& p) const {
    return checkLimits(style, p, bench).empty();
  }
  [[nodiscard]] std::ptrdiff_t offGrid(const std::vector<Length>& all) const {
    return std::ranges::count_if(
        all, [&](Length side) { return !bench.grid.holds(side); });
  }
};

Parameters with(Parameters parameters, std::string_view key, double mm) {
  parameters.set(key, Length::mm(mm));
  return parameters;
}

/// How fast a side grows with a flap; nothing when the flap does not bear on it.
std::optional<double> slopeOf(const Search& search, const Parameters& now, std::string_view key,
                              std::size_t side) {
  constexpr double kLeast = 0.2;
  for (const double by : {-0.1, 0.1}) {
    const Parameters other = with(now, key, now.mm(key) + by);
    if (!search.mayBe(other)) continue;
    const double slope = (search.sides(other).at(side).mm() - search.sides(now).at(side).mm()) / by;
    if (slope >= kLeast) return slope;
    return std::nullopt;
  }
  return std::nullopt;
}

/// The flap at which a side comes to measure `wanted`: a side follows a flap in proportion, or
/// nearly so, and a few steps of the secant find it.
Parameters reaching(const Search& search, Parameters now, std::string_view key, std::size_t side,
                    double wanted, double slope) {
  constexpr int kSteps = 4;
  for (int i = 0; i < kSteps; ++i) {
    const double away = wanted - search.sides(now).at(side).mm();
    if (std::abs(away) < 1e-6) break;
    now = with(std::move(now), key, now.mm(key) + away / slope);
    if (!search.mayBe(now)) break;
  }
  return now;
}

/// The parameters with one more side on the grid, by this flap.
std::optional<Parameters> takingRest(const Search& search, const Parameters& now,
                                     std::string_view key, std::size_t side) {
  const std::optional<double> slope = slopeOf(search, now, key, side);
  if (!slope) return std::nullopt;
  const std::vector<Length> before = search.sides(now);
  const ToolGrid grid = search.bench.grid;
  for (const Length wanted : {grid.roundDown(before.at(side)), grid.roundUp(before.at(side))}) {
    const Parameters then = reaching(search, now, key, side, wanted.mm(), *slope);
    if (!search.mayBe(then) || then.mm(key) < (1 - kMostLost) * now.mm(key)) continue;
    if (search.offGrid(search.sides(then)) < search.offGrid(before)) return then;
  }
  return std::nullopt;
}

/// The flap that takes the rest at the least cost in settings off the grid: at most its own score.
/// Nothing when none can.
std::optional<Parameters> withSideOnGrid(const Search& search, const Parameters& now,
                                         std::size_t side, std::set<std::string_view>& used) {
  constexpr std::ptrdiff_t kMostCost = 1;
  const auto offNow = offReadings(search.style, now, search.bench);
  std::optional<Parameters> best;
  std::string_view taker;
  std::ptrdiff_t least = offNow + kMostCost + 1;
  for (const ParameterSpec& spec : search.style.parameters) {
    if (!spec.givesWay || used.contains(spec.key)) continue;
    std::optional<Parameters> then = takingRest(search, now, spec.key, side);
    if (!then) continue;
    const auto off = offReadings(search.style, *then, search.bench);
    if (off >= least) continue;
    least = off;
    taker = spec.key;
    best = std::move(then);
  }
  if (best) used.insert(taker);
  return best;
}

}  // namespace

Parameters blanksOnGrid(const Style& style, const Parameters& parameters, const Workbench& bench) {
  if (bench.grid.isNone()) return parameters;
  const Search search{style, bench};
  Parameters now = parameters;
  std::set<std::string_view> used;
  const std::vector<Length> sides = search.sides(now);
  for (std::size_t side = 0; side < sides.size(); ++side) {
    if (bench.grid.holds(search.sides(now).at(side))) continue;
    if (std::optional<Parameters> then = withSideOnGrid(search, now, side, used))
      now = *std::move(then);
  }
  return now;
}

}  // namespace creasewright
