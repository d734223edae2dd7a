#include "document/words_room.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "drawing/words_on.h"
#include "lettering/type_width.h"

namespace creasewright {
namespace {

bool fits(const Net& net, const Inscription& words) {
  return typeWidth(words.text, words.height, words.face) <= kWordsFill * roomFor(net, words);
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
  const Panel& panel = net.panels[static_cast<std::size_t>(words.panel)];
  return roomFor(panel.outline, panel.openings, words);
}

double heightRoomFor(const Net& net, const Inscription& words) {
  if (words.arc) return std::numeric_limits<double>::max();
  const double turn = Angle::degrees(words.turnDegrees).radians();
  const Point up{-std::sin(turn), std::cos(turn)};
  double low = std::numeric_limits<double>::max();
  double high = std::numeric_limits<double>::lowest();
  for (const Point& p : net.panels[static_cast<std::size_t>(words.panel)].outline) {
    low = std::min(low, dot(p, up));
    high = std::max(high, dot(p, up));
  }
  double room = high - low;
  for (const Inscription& other : net.inscriptions)
    if (&other != &words && other.panel == words.panel && !other.arc &&
        other.turnDegrees == words.turnDegrees)
      room -= other.height * (kBelowBaseline + kAboveBaseline);
  return std::max(room, 0.0);
}

void fitWords(Net& net) {
  std::map<int, double> shares;
  for (const Inscription& words : net.inscriptions) {
    if (!words.shrinks) continue;
    const auto [known, fresh] = shares.emplace(words.panel, 1.0);
    known->second = std::min(known->second, fittingShare(net, words));
  }
  for (Inscription& words : net.inscriptions)
    if (words.shrinks) words.height *= shares.at(words.panel);
}

}  // namespace creasewright
