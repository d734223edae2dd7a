#include "patterns/shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kFine = 100;  // mm to a repeat where areas are joined: they are whole nanometres

Polygon times(const Polygon& shape, double by) {
  Polygon out;
  for (const Point& p : shape) out.push_back(p * by);
  return out;
}

std::vector<Polygon> rims(const Region& region) {
  std::vector<Polygon> out;
  for (const Area& area : region) out.push_back(times(area.outer, 1 / kFine));
  return out;
}

Point polar(double radius, double radians) {
  return {radius * std::cos(radians), radius * std::sin(radians)};
}

double wrapped(double difference, double period) {
  const double d = std::abs(difference);
  return std::min(d, period - d);
}

}  // namespace

Polygon rectangle(double left, double bottom, double right, double top) {
  return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

Polygon disc(Point centre, double radius, int corners) {
  Polygon out;
  for (int i = 0; i < corners; ++i)
    out.push_back(centre + polar(radius, 2 * std::numbers::pi * i / corners));
  return out;
}

Polygon bar(Point from, Point to, double width, bool round) {
  if (!round) return stroke({from, to}, width);
  constexpr int kSteps = 5;
  const Point right = turnLeft(unit(to - from)) * (-width / 2);
  Polygon out;
  for (const auto& [end, start] : {std::pair{to, right}, std::pair{from, right * -1}})
    for (int i = 0; i <= kSteps; ++i) {
      const double turn = std::numbers::pi * i / kSteps;
      out.push_back(end + start * std::cos(turn) + turnLeft(start) * std::sin(turn));
    }
  return out;
}

Polygon stroke(const Polyline& run, double width) {
  Polygon right;
  Polygon left;
  for (std::size_t i = 0; i < run.size(); ++i) {
    const Point before = run[i] - run[i == 0 ? 0 : i - 1];
    const Point after = run[std::min(i + 1, run.size() - 1)] - run[i];
    const Point a = norm(before) > 0 ? unit(before) : unit(after);
    const Point b = norm(after) > 0 ? unit(after) : unit(before);
    const Point side = turnLeft(unit(a + b)) * (width / 2 / dot(unit(a + b), a));
    right.push_back(run[i] - side);
    left.push_back(run[i] + side);
  }
  right.insert(right.end(), left.rbegin(), left.rend());
  return right;
}

Polyline curve(Point from, Point pull, Point to, int steps) {
  Polyline out;
  for (int i = 0; i <= steps; ++i) {
    const double t = static_cast<double>(i) / steps;
    out.push_back(from * ((1 - t) * (1 - t)) + pull * (2 * t * (1 - t)) + to * (t * t));
  }
  return out;
}

Polygon leaf(Point stalk, Point tip, double bulge, LeafPart part) {
  const Point along = tip - stalk;
  // Widest below the middle, as leaves are.
  const Point belly = stalk + along * 0.42;
  const Point right = turnLeft(along) * (-2 * bulge);
  Polygon out;
  if (part != LeafPart::Left) {
    out = curve(stalk, belly + right, tip);
    out.pop_back();
  } else {
    out = {stalk};
  }
  if (part == LeafPart::Right) {
    out.push_back(tip);
    return out;
  }
  Polyline back = curve(tip, belly - right, stalk);
  back.pop_back();
  out.insert(out.end(), back.begin(), back.end());
  return out;
}

Polygon star(int tips, double outer, double inner) {
  Polygon out;
  for (int i = 0; i < 2 * tips; ++i)
    out.push_back(polar(i % 2 == 0 ? outer : inner, std::numbers::pi * (0.5 + double(i) / tips)));
  return out;
}

Polygon laid(const Polygon& shape, Point at, double degrees, double size) {
  const double turn = degrees * std::numbers::pi / 180;
  const Point x = polar(size, turn);
  Polygon out;
  for (const Point& p : shape) out.push_back(at + x * p.x + turnLeft(x) * p.y);
  return out;
}

Polygon mirrored(const Polygon& shape) {
  Polygon out;
  for (const Point& p : shape) out.push_back({-p.x, p.y});
  std::reverse(out.begin(), out.end());
  return out;
}

std::vector<Polygon> joinedShapes(const std::vector<Polygon>& shapes) {
  std::vector<Polygon> large;
  for (const Polygon& shape : shapes) large.push_back(times(shape, kFine));
  return rims(unite(large));
}

std::vector<Polygon> outside(const Polygon& shape, const std::vector<Polygon>& others) {
  std::vector<Polygon> large;
  for (const Polygon& other : others) large.push_back(times(other, kFine));
  return rims(subtract(region(times(shape, kFine)), unite(large)));
}

/// SplitMix64 (Steele, Lea, Flood 2014).
double Chance::between(double low, double high) {
  state_ += 0x9E3779B97F4A7C15ULL;
  std::uint64_t z = state_;
  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
  z ^= z >> 31;
  return low + (high - low) * static_cast<double>(z >> 11) * 0x1.0p-53;
}

std::vector<Strewn> strewn(const std::vector<double>& reaches, double gap, double height,
                           Chance& chance, std::vector<Strewn> taken) {
  constexpr int kTries = 2000;
  std::vector<Strewn> out;
  for (const double reach : reaches) {
    for (int i = 0; i < kTries; ++i) {
      const Point at{chance.between(0, 1), chance.between(0, height)};
      const bool free = std::ranges::all_of(taken, [&](const Strewn& other) {
        const Point apart{wrapped(at.x - other.at.x, 1), wrapped(at.y - other.at.y, height)};
        const double least = reach + other.reach + gap;
        return dot(apart, apart) >= least * least;
      });
      if (!free) continue;
      out.push_back({at, reach});
      taken.push_back(out.back());
      break;
    }
  }
  return out;
}

}  // namespace creasewright
