#pragma once

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <numbers>
#include <random>
#include <string>

#include "net/net_builder.h"
#include "net/pose.h"

namespace creasewright::testing {

/// A generator whose seed is printed and can be set with CREASEWRIGHT_SEED.
inline std::mt19937_64 seededGenerator() {
  const char* given = std::getenv("CREASEWRIGHT_SEED");
  const std::uint64_t seed =
      given != nullptr ? std::strtoull(given, nullptr, 10) : std::random_device{}();
  std::cout << "CREASEWRIGHT_SEED=" << seed << '\n';
  return std::mt19937_64(seed);
}

inline double randomIn(std::mt19937_64& generator, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(generator);
}

/// A tray of length x width x height mm, open at the top, no tabs.
inline NetBuilder plainTray(double length, double width, double height) {
  NetBuilder builder({"walls"});
  builder.root("base", rectangle(length, width));
  builder.hinge({"base", "inner"}, "front", rectangle(length, height), {90, 1});
  builder.hinge({"base", "right"}, "right", rectangle(width, height), {90, 1});
  builder.hinge({"base", "outer"}, "back", rectangle(length, height), {90, 1});
  builder.hinge({"base", "left"}, "left", rectangle(width, height), {90, 1});
  return builder;
}

/// The same with two tabs on the front wall, glued to the inside of the side walls. A wall is seen
/// from inside the tray, so the front wall's own left edge meets the right wall.
inline Net tabbedTray(double length, double width, double height, double tab) {
  NetBuilder builder = plainTray(length, width, height);
  builder.hinge({"front", "left"}, "tab-right", trapezoid(height, tab, 2, 2), {90, 1});
  builder.hinge({"front", "right"}, "tab-left", trapezoid(height, tab, 2, 2), {90, 1});
  builder.mate("tab-right", "right", Face::Inside, Method::Glue, true);
  builder.mate("tab-left", "left", Face::Inside, Method::Glue, true);
  return builder.take();
}

/// A tube of four walls, width x depth x height mm, with a seam flap glued inside the first wall.
inline Net gluedTube(double width, double depth, double height, double seam) {
  NetBuilder builder({"walls"});
  builder.root("front", rectangle(width, height));
  builder.hinge({"front", "right"}, "right", rectangle(height, depth), {90, 1});
  builder.hinge({"right", "outer"}, "back", rectangle(height, width), {90, 1});
  builder.hinge({"back", "outer"}, "left", rectangle(height, depth), {90, 1});
  builder.hinge({"left", "outer"}, "seam", rectangle(height, seam), {90, 1});
  builder.mate("seam", "front", Face::Inside, Method::Glue, true);
  return builder.take();
}

/// A square tray with walls that lean inwards: bottom edge, top edge, height in mm.
/// Wall slope by plane geometry: apothem run e = (b-t)/2, beta = atan2(h, e), slant hypot(h, e).
inline Net taperedTray(double bottom, double top, double height) {
  const double run = (bottom - top) / 2;
  const double slant = std::hypot(height, run);
  const double fold = 180 - std::atan2(height, run) * 180 / std::numbers::pi;
  NetBuilder builder({"walls"});
  builder.root("base", rectangle(bottom, bottom));
  for (const std::string side : {"inner", "right", "outer", "left"})
    builder.hinge({"base", side}, "wall-" + side, trapezoid(bottom, slant, run, run), {fold, 1});
  return builder.take();
}

}  // namespace creasewright::testing
