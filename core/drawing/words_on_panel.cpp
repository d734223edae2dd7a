#include "drawing/words_on_panel.h"

#include <cmath>

#include "drawing/set_words.h"
#include "net/pose.h"
#include "units/angle.h"

namespace creasewright {

std::vector<Inscription> wordsOfPanels(const Net& net) {
  std::vector<Inscription> words;
  if (net.inscriptions.empty()) return words;
  const Pose flat = pose(net, std::vector<Angle>(net.creases.size()));
  for (Inscription line : net.inscriptions) {
    const Point3 level = flat[static_cast<std::size_t>(line.panel)].turn({1, 0, 0});
    line.turnDegrees -= Angle::radians(std::atan2(level.y, level.x)).degrees();
    words.push_back(std::move(line));
  }
  return words;
}

TextItem textOnPanel(const Inscription& words) {
  const double turn = Angle::degrees(words.turnDegrees).radians();
  const Point along{std::cos(turn), std::sin(turn)};
  TextItem text = textOf(words, {}, 0);
  text.plane = PlaneMap{words.at, along * -1, turnLeft(along)};
  return text;
}

}  // namespace creasewright
