#include "net/inscription.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "units/angle.h"

namespace creasewright {
namespace {

constexpr double kFar = std::numeric_limits<double>::max();

Point wayAt(double turnDegrees) {
  const double turn = Angle::degrees(turnDegrees).radians();
  return {std::cos(turn), std::sin(turn)};
}

/// How far it is from the middle of a line to the nearest edge that a level crosses, to either
/// side.
double reachAt(const std::vector<Polygon>& rings, double level) {
  double reach = kFar;
  for (const Polygon& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i];
      const Point b = ring[(i + 1) % ring.size()];
      if ((a.y > level) == (b.y > level)) continue;
      reach = std::min(reach, std::abs(a.x + (b.x - a.x) * (level - a.y) / (b.y - a.y)));
    }
  return reach == kFar ? 0 : reach;
}

double straightRoom(std::vector<Polygon> rings, const Inscription& words) {
  constexpr int kLevels = 8;
  const Point along = wayAt(-words.turnDegrees);
  for (Polygon& ring : rings)
    for (Point& p : ring) {
      const Point from = p - words.at;
      p = along * from.x + turnLeft(along) * from.y;
    }
  double reach = kFar;
  for (int i = 0; i <= kLevels; ++i) {
    const double share = static_cast<double>(i) / kLevels;
    const double level = -kBelowBaseline + (kBelowBaseline + kAboveBaseline) * share;
    reach = std::min(reach, reachAt(rings, words.height * level));
  }
  return 2 * reach;
}

bool onCard(Point p, const std::vector<Polygon>& rings) {
  if (locate(p, rings.back()) != Side::Inside) return false;
  return std::all_of(rings.begin(), rings.end() - 1,
                     [&](const Polygon& opening) { return locate(p, opening) == Side::Outside; });
}

/// Steps outwards from the middle of the arc, until letters would leave the card.
double curvedRoom(const std::vector<Polygon>& rings, const Inscription& words) {
  constexpr double kStep = 1;  // degree
  constexpr int kLevels = 4;
  const WordsArc& arc = *words.arc;
  const Point centre = arc.centre(words.at, words.turnDegrees);
  const double out = arc.lower ? -1 : 1;
  const auto stays = [&](double degrees) {
    const Point way = turnLeft(wayAt(words.turnDegrees + degrees)) * out;
    for (int i = 0; i <= kLevels; ++i) {
      const double share = static_cast<double>(i) / kLevels;
      const double level = -kBelowBaseline + (kBelowBaseline + kAboveBaseline) * share;
      if (!onCard(centre + way * (arc.radius + out * words.height * level), rings)) return false;
    }
    return true;
  };
  double degrees = 0;
  while (2 * degrees < arc.most && stays(degrees) && stays(-degrees)) degrees += kStep;
  return std::numbers::pi / 180 * std::min(2 * degrees, arc.most) * arc.pace(words.height);
}

}  // namespace

Point WordsArc::centre(Point at, double turnDegrees) const {
  return at + turnLeft(wayAt(turnDegrees)) * (lower ? radius : -radius);
}

double WordsArc::pace(double height) const {
  constexpr double kMiddleOfCapitals = 0.36;  // of the type size: there letters are widest
  return std::max(0.1, lower ? radius - kMiddleOfCapitals * height : radius);
}

double WordsArc::longest(double height) const {
  return std::numbers::pi / 180 * most * pace(height);
}

double roomFor(const Polygon& outline, const std::vector<Polygon>& openings,
               const Inscription& words) {
  std::vector<Polygon> rings = openings;
  rings.push_back(outline);
  if (words.arc) return curvedRoom(rings, words);
  const double room = straightRoom(std::move(rings), words);
  return words.side == WordsSide::Centre ? room : std::min(room, words.column / kWordsFill);
}

}  // namespace creasewright
