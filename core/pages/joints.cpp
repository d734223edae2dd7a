#include "pages/joints.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace creasewright {
namespace {

constexpr double kTouch = 0.02;      // mm to either side of a line
constexpr double kSameScore = 0.05;  // mm

double along(Point p, bool upright) { return upright ? p.x : p.y; }
double across(Point p, bool upright) { return upright ? p.y : p.x; }

/// Where each of some lines, which go up, meets the outlines of the card; across, going up.
std::vector<std::vector<double>> meetings(const Region& card, bool upright,
                                          const std::vector<double>& lines) {
  std::vector<std::vector<double>> found(lines.size());
  const auto meet = [&](const Polygon& ring) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i];
      const Point b = ring[(i + 1) % ring.size()];
      const auto [low, high] = std::minmax({along(a, upright), along(b, upright)});
      const auto first = std::ranges::upper_bound(lines, low);
      for (auto line = first; line != lines.end() && *line <= high; ++line) {
        const double da = along(a, upright) - *line;
        const double db = along(b, upright) - *line;
        const double share = da / (da - db);
        found[static_cast<std::size_t>(line - lines.begin())].push_back(
            across(a, upright) + share * (across(b, upright) - across(a, upright)));
      }
    }
  };
  for (const Area& area : card) {
    meet(area.outer);
    for (const Polygon& hole : area.holes) meet(hole);
  }
  for (std::vector<double>& each : found) std::ranges::sort(each);
  return found;
}

/// Scores along one axis, from low to high.
struct Stretch {
  double at;
  double low;
  double high;
};

std::vector<Stretch> scoresAlong(const TiledSheet& sheet, bool upright) {
  std::vector<Stretch> found;
  for (const Segment& score : sheet.scores) {
    const double at = (along(score.a, upright) + along(score.b, upright)) / 2;
    const auto [low, high] = std::minmax({across(score.a, upright), across(score.b, upright)});
    if (std::abs(along(score.a, upright) - at) <= kSameScore) found.push_back({at, low, high});
  }
  return found;
}

/// mm of card that a line at `place` cuts through, with its meetings close beside it.
double crossedAt(double place, const std::vector<double>& meets,
                 const std::vector<Stretch>& scores) {
  double sum = 0;
  for (std::size_t i = 0; i + 1 < meets.size(); i += 2) {
    sum += meets[i + 1] - meets[i];
    for (const Stretch& score : scores)
      if (std::abs(score.at - place) <= kSameScore)
        sum -= std::max(0.0, std::min(score.high, meets[i + 1]) - std::max(score.low, meets[i]));
  }
  return std::max(0.0, sum);
}

/// cardCrossed() for many places, which go up.
std::vector<double> crossedAtEach(const TiledSheet& sheet, bool upright,
                                  const std::vector<double>& places) {
  const std::vector<Stretch> scores = scoresAlong(sheet, upright);
  std::vector<double> least(places.size(), std::numeric_limits<double>::infinity());
  for (const double beside : {-kTouch, kTouch}) {
    std::vector<double> lines = places;
    for (double& line : lines) line += beside;
    const auto meets = meetings(sheet.card, upright, lines);
    for (std::size_t i = 0; i < places.size(); ++i)
      least[i] = std::min(least[i], crossedAt(places[i], meets[i], scores));
  }
  return least;
}

/// Whether an outline has a corner or an end along an axis there: a point of a drawn curve is
/// neither.
bool isCornerOrEnd(const Polygon& ring, std::size_t i, bool upright) {
  constexpr double kSine = 0.2;
  const Point to = ring[i] - ring[(i + ring.size() - 1) % ring.size()];
  const Point from = ring[(i + 1) % ring.size()] - ring[i];
  if (along(to, upright) * along(from, upright) <= 0) return true;
  return std::abs(cross(to, from)) > kSine * norm(to) * norm(from) || dot(to, from) < 0;
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
    if (std::abs(along(score.a, upright) - along(score.b, upright)) < kSameScore)
      add(along(score.a, upright));
  for (const Area& area : sheet.card)
    for (std::size_t i = 0; i < area.outer.size(); ++i)
      if (isCornerOrEnd(area.outer, i, upright)) add(along(area.outer[i], upright));
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
  return crossedAtEach(sheet, upright, {at}).front();
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
  std::vector<double> crossed = crossedAtEach(sheet, upright, places);
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
    if (places[i] + overlap / 2 <= cell + kTileSlack) cost[0][i] = crossed[i] + wish(0, places[i]);
  for (std::size_t k = 1; k < joints; ++k)
    for (std::size_t i = 0; i < count; ++i)
      for (std::size_t j = i; j-- > 0 && places[i] - places[j] + overlap <= cell + kTileSlack;) {
        const double sum = cost[k - 1][j] + crossed[i] + wish(k, places[i]);
        if (places[i] - places[j] < overlap || sum >= cost[k][i]) continue;
        cost[k][i] = sum;
        from[k][i] = j;
      }
  std::size_t last = count;
  for (std::size_t i = 0; i < count; ++i)
    if (length - places[i] + overlap / 2 <= cell + kTileSlack && cost[joints - 1][i] < kNever &&
        (last == count || cost[joints - 1][i] < cost[joints - 1][last]))
      last = i;
  for (std::size_t k = joints; last < count && k-- > 0; last = from[k][last]) {
    out.places.insert(out.places.begin(), places[last]);
    out.crossed += crossed[last];
  }
  return out;
}

}  // namespace creasewright
