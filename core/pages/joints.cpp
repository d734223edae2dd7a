#include "pages/joints.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace creasewright {
namespace {

constexpr double kTouch = 0.02;  // mm to either side of a line
constexpr double kSame = 0.05;   // mm
constexpr double kSlack = 1e-6;

double along(Point p, bool upright) { return upright ? p.x : p.y; }
double across(Point p, bool upright) { return upright ? p.y : p.x; }

/// Stretches of the line inside the card.
std::vector<std::pair<double, double>> chords(const Region& card, bool upright, double at) {
  std::vector<double> found;
  const auto meet = [&](const Polygon& ring) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i];
      const Point b = ring[(i + 1) % ring.size()];
      const double da = along(a, upright) - at;
      const double db = along(b, upright) - at;
      if ((da < 0) == (db < 0)) continue;
      const double share = da / (da - db);
      found.push_back(across(a, upright) + share * (across(b, upright) - across(a, upright)));
    }
  };
  for (const Area& area : card) {
    meet(area.outer);
    for (const Polygon& hole : area.holes) meet(hole);
  }
  std::ranges::sort(found);
  std::vector<std::pair<double, double>> out;
  for (std::size_t i = 0; i + 1 < found.size(); i += 2) out.emplace_back(found[i], found[i + 1]);
  return out;
}

double crossedBeside(const TiledSheet& sheet, bool upright, double at, double line) {
  double sum = 0;
  for (const auto& [from, to] : chords(sheet.card, upright, at)) {
    sum += to - from;
    for (const Segment& score : sheet.scores) {
      if (std::abs(along(score.a, upright) - line) > kSame ||
          std::abs(along(score.b, upright) - line) > kSame)
        continue;
      const auto [low, high] = std::minmax({across(score.a, upright), across(score.b, upright)});
      sum -= std::max(0.0, std::min(high, to) - std::max(low, from));
    }
  }
  return std::max(0.0, sum);
}

/// Where a joint may go: along scores and cuts, at the ends of the room, and on a grid.
std::vector<double> candidates(const TiledSheet& sheet, bool upright, double length, int tiles,
                               double cell, double overlap) {
  constexpr double kMost = 150;
  std::vector<double> places;
  const auto add = [&](double place) {
    if (place > overlap / 2 && place < length - overlap / 2) places.push_back(place);
  };
  for (const Segment& score : sheet.scores)
    if (std::abs(along(score.a, upright) - along(score.b, upright)) < kSame)
      add(along(score.a, upright));
  for (const Area& area : sheet.card)
    for (const Point& p : area.outer) add(along(p, upright));
  for (int k = 1; k < tiles; ++k) {
    const double reach = k * (cell - overlap) + overlap / 2;
    add(upright ? reach : length - reach);
    add(upright ? length - reach : reach);
    add(length * k / tiles);
  }
  const double step = std::max(2.0, length / kMost);
  for (double place = step; place < length; place += step) add(place);
  std::ranges::sort(places);
  const auto same = [](double a, double b) { return std::abs(a - b) < 1e-9; };
  places.erase(std::unique(places.begin(), places.end(), same), places.end());
  return places;
}

}  // namespace

double cardCrossed(const TiledSheet& sheet, bool upright, double at) {
  return std::min(crossedBeside(sheet, upright, at - kTouch, at),
                  crossedBeside(sheet, upright, at + kTouch, at));
}

Joints chooseJoints(const TiledSheet& sheet, bool upright, int tiles, double cell, double overlap,
                    JointRule rule) {
  Joints out;
  if (tiles < 2) return out;
  constexpr double kNever = std::numeric_limits<double>::infinity();
  constexpr double kWish = 0.02;  // a millimetre of card weighs as much as 50 mm of a wish
  const double length = upright ? sheet.width : sheet.height;
  std::vector<double> places = candidates(sheet, upright, length, tiles, cell, overlap);
  const std::size_t count = places.size();
  std::vector<double> crossed(count);
  for (std::size_t i = 0; i < count; ++i) crossed[i] = cardCrossed(sheet, upright, places[i]);
  if (!upright) {  // tiles are counted from the top
    for (double& place : places) place = length - place;
    std::ranges::reverse(places);
    std::ranges::reverse(crossed);
  }
  const auto joints = static_cast<std::size_t>(tiles - 1);
  std::vector<std::vector<double>> cost(joints, std::vector<double>(count, kNever));
  std::vector<std::vector<std::size_t>> from(joints, std::vector<std::size_t>(count, 0));
  const auto wish = [&](std::size_t joint, double place) {
    if (rule == JointRule::Even)
      return kWish * std::abs(place - length * static_cast<double>(joint + 1) / tiles);
    return joint == 0 ? kWish * (cell - overlap / 2 - place) : 0.0;
  };
  for (std::size_t i = 0; i < count; ++i)
    if (places[i] + overlap / 2 <= cell + kSlack) cost[0][i] = crossed[i] + wish(0, places[i]);
  for (std::size_t k = 1; k < joints; ++k)
    for (std::size_t i = 0; i < count; ++i)
      for (std::size_t j = i; j-- > 0 && places[i] - places[j] + overlap <= cell + kSlack;) {
        const double sum = cost[k - 1][j] + crossed[i] + wish(k, places[i]);
        if (places[i] - places[j] < overlap || sum >= cost[k][i]) continue;
        cost[k][i] = sum;
        from[k][i] = j;
      }
  std::size_t last = count;
  for (std::size_t i = 0; i < count; ++i)
    if (length - places[i] + overlap / 2 <= cell + kSlack && cost[joints - 1][i] < kNever &&
        (last == count || cost[joints - 1][i] < cost[joints - 1][last]))
      last = i;
  for (std::size_t k = joints; last < count && k-- > 0; last = from[k][last]) {
    out.places.insert(out.places.begin(), places[last]);
    out.crossed += crossed[last];
  }
  return out;
}

}  // namespace creasewright
