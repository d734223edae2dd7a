#include "document/words_room.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "drawing/type_width.h"
#include "drawing/words_on.h"
#include "units/angle.h"

namespace creasewright {
namespace {

constexpr double kFills = 0.92;  // of its room, at the most: words that touch a cut look torn

/// How far it is from the middle of a line to the nearest edge that a level crosses, to either
/// side.
double reachAt(const std::vector<Polygon>& rings, double level) {
  double reach = std::numeric_limits<double>::max();
  for (const Polygon& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i];
      const Point b = ring[(i + 1) % ring.size()];
      if ((a.y > level) == (b.y > level)) continue;
      reach = std::min(reach, std::abs(a.x + (b.x - a.x) * (level - a.y) / (b.y - a.y)));
    }
  return reach == std::numeric_limits<double>::max() ? 0 : reach;
}

bool fits(const Net& net, const Inscription& words) {
  return typeWidth(words.text, words.height) <= kFills * roomFor(net, words);
}

/// The largest share of its size in which it fits, no smaller than is readable.
double fittingShare(const Net& net, const Inscription& words) {
  constexpr int kSteps = 40;
  const double least = std::min(1.0, kSmallestPoints * kPoint / words.height);
  for (int i = 0; i <= kSteps; ++i) {
    const double share = 1 - (1 - least) * i / kSteps;
    Inscription smaller = words;
    smaller.height *= share;
    if (fits(net, smaller)) return share;
  }
  return least;
}

}  // namespace

double roomFor(const Net& net, const Inscription& words) {
  constexpr int kLevels = 8;
  constexpr double kBelow = 0.25;  // of the height: descenders
  constexpr double kAbove = 0.95;
  const Panel& panel = net.panels[static_cast<std::size_t>(words.panel)];
  std::vector<Polygon> rings = panel.openings;
  rings.push_back(panel.outline);
  const double turn = -Angle::degrees(words.turnDegrees).radians();
  const Point along{std::cos(turn), std::sin(turn)};
  for (Polygon& ring : rings)
    for (Point& p : ring) {
      const Point from = p - words.at;
      p = along * from.x + turnLeft(along) * from.y;
    }
  double reach = std::numeric_limits<double>::max();
  for (int i = 0; i <= kLevels; ++i)
    reach =
        std::min(reach, reachAt(rings, words.height * (-kBelow + (kBelow + kAbove) * i / kLevels)));
  return 2 * reach;
}

void fitWords(Net& net) {
  std::map<int, double> shares;
  for (const Inscription& words : net.inscriptions) {
    const auto [known, fresh] = shares.emplace(words.panel, 1.0);
    known->second = std::min(known->second, fittingShare(net, words));
  }
  for (Inscription& words : net.inscriptions) words.height *= shares.at(words.panel);
}

}  // namespace creasewright
