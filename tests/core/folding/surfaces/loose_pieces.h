#pragma once

#include <random>
#include <string>

#include "core/folding/test_nets.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright::testing {

/// Loose pieces that cut through each other: plain, with an opening, and with a concave corner.
inline Net loosePieces(int count) {
  Net net;
  for (int i = 0; i < count; ++i) {
    Panel panel;
    panel.id = "piece-" + std::to_string(i);
    panel.outline = {{-30, -20}, {30, -20}, {30, 20}, {-30, 20}};
    if (i % 3 == 1) panel.openings = {{{-20, -10}, {-20, 10}, {15, 10}, {15, -10}}};
    if (i % 3 == 2) panel.outline = {{-30, -20}, {30, -20}, {30, 20}, {0, -5}, {-30, 20}};
    net.panels.push_back(panel);
  }
  return net;
}

/// So near one another that many of them cross.
inline Pose randomPlaces(std::size_t count, std::mt19937_64& generator) {
  const auto in = [&](double low, double high) { return randomIn(generator, low, high); };
  Pose placed;
  for (std::size_t i = 0; i < count; ++i)
    placed.push_back(Transform::translation({in(-20, 20), in(-20, 20), in(-20, 20)})
                         .after(Transform::rotationZ(Angle::degrees(in(0, 360))))
                         .after(Transform::rotationX(Angle::degrees(in(0, 360)))));
  return placed;
}

}  // namespace creasewright::testing
