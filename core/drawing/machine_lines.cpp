#include "drawing/machine_lines.h"

#include <algorithm>
#include <cmath>

#include "drawing/role.h"
#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kTouching = 1e-4;  // mm

bool isScore(Role role) {
  return role == Role::Valley || role == Role::Mountain || role == Role::Perforation;
}

bool holds(const Polygon& ring, Point p) {
  bool in = false;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Point a = ring[i];
    const Point b = ring[j];
    if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x) in = !in;
  }
  return in;
}

/// `from` to `to` of the way along a line, both in mm.
void addStretch(std::vector<Polygon>& rings, const Segment& line, double from, double to) {
  const Point along = unit(line.b - line.a);
  const double end = std::min(to, length(line));
  if (end - from > kTouching) rings.push_back({line.a + along * from, line.a + along * end});
}

/// Begins and ends with a bridge of at least half the usual width; the cuts between are alike.
void perforate(std::vector<Polygon>& rings, const Segment& line) {
  const double whole = length(line);
  const double pitch = kPerforationCut + kPerforationBridge;
  const double count = std::max(1.0, std::floor((whole - kPerforationBridge) / pitch));
  const double scale = std::min(1.0, whole / (count * pitch + kPerforationBridge));
  const double cut = kPerforationCut * scale;
  const double bridge = (whole - count * cut) / (count + 1);
  for (double i = 0; i < count; ++i) {
    const double from = bridge + i * (cut + bridge);
    addStretch(rings, line, from, from + cut);
  }
}

/// The pattern of a role from one end to the other.
void dash(std::vector<Polygon>& rings, const Segment& line, std::span<const double> pattern) {
  double at = 0;
  const double whole = length(line);
  for (std::size_t i = 0; at < whole; i = (i + 1) % pattern.size()) {
    if (i % 2 == 0) addStretch(rings, line, at, at + pattern[i]);
    at += pattern[i];
  }
}

PathItem scored(PathItem item, ScoreForm form) {
  std::vector<Polygon> rings;
  const std::span<const double> pattern = roleStyle(item.role).dashes;
  for (const Polygon& line : item.rings)
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
      const Segment part{line[i], line[i + 1]};
      if (form == ScoreForm::Perforation || item.role == Role::Perforation)
        perforate(rings, part);
      else
        dash(rings, part, pattern);
    }
  item.rings = std::move(rings);
  if (form == ScoreForm::Perforation) item.role = Role::Perforation;
  return item;
}

/// A closed cut, how many others it lies in, and where the blade goes.
struct Outline {
  Polygon ring;
  std::size_t depth = 0;
  double grown = 0;  ///< mm outwards; negative in a cut-out
  std::vector<Polygon> path = {};
};

class Cuts {
 public:
  explicit Cuts(const Kerf& kerf) : kerf_(kerf) {}

  void add(const PathItem& item) {
    for (const Polygon& ring : item.rings)
      if (item.closed)
        outlines_.push_back({ring});
      else
        open_.push_back(ring);
  }

  /// False where nothing is left of a cut-out.
  bool prepare() {
    for (Outline& outline : outlines_) {
      outline.depth =
          static_cast<std::size_t>(std::ranges::count_if(outlines_, [&](const Outline& other) {
            return &other != &outline && holds(other.ring, outline.ring.front());
          }));
      const bool inner = outline.depth % 2 == 1;
      outline.grown = inner ? -kerf_.inner / 2 : kerf_.outer / 2;
      if (!offsetOutline(outline)) return false;
    }
    for (Polyline& line : open_) {
      follow(line.front(), line[1]);
      follow(line.back(), line[line.size() - 2]);
    }
    std::ranges::stable_sort(outlines_, std::ranges::greater{}, &Outline::depth);
    return true;
  }

  void putInto(Drawing& out) const {
    if (!open_.empty()) out.paths.push_back({.role = Role::Cut, .rings = open_});
    for (const Outline& outline : outlines_)
      for (const Polygon& ring : outline.path)
        out.paths.push_back({.role = Role::Cut, .rings = {ring}, .closed = true});
  }

 private:
  static bool offsetOutline(Outline& outline) {
    if (outline.grown == 0) {
      outline.path = {outline.ring};
      return true;
    }
    for (const Area& part : offset(region(outline.ring), outline.grown)) {
      outline.path.push_back(part.outer);
      outline.path.insert(outline.path.end(), part.holes.begin(), part.holes.end());
    }
    return !outline.path.empty();
  }

  /// An end that lies on an outline goes on, the way it came, until the outline's new place.
  void follow(Point& end, Point before) const {
    for (const Outline& outline : outlines_) {
      if (outline.grown == 0) continue;
      for (std::size_t i = 0; i < outline.ring.size(); ++i) {
        const Segment side{outline.ring[i], outline.ring[(i + 1) % outline.ring.size()]};
        if (distanceToSegment(end, side) > kTouching) continue;
        const Point way = unit(end - before);
        const double slant = std::abs(cross(way, unit(side.b - side.a)));
        end = end + way * (std::abs(outline.grown) / std::max(slant, 0.2));
        return;
      }
    }
  }

  Kerf kerf_;
  std::vector<Outline> outlines_;
  std::vector<Polyline> open_;
};

}  // namespace

std::optional<Drawing> forMachine(Drawing drawing, const MachineLines& lines) {
  Drawing out{drawing.width, drawing.height, {}, std::move(drawing.texts)};
  Cuts cuts(lines.kerf);
  for (PathItem& item : drawing.paths)
    if (item.role == Role::Cut && !item.like && !item.filled)
      cuts.add(item);
    else if (isScore(item.role) && !item.like && lines.scores != ScoreForm::Line)
      out.paths.push_back(scored(std::move(item), lines.scores));
    else
      out.paths.push_back(std::move(item));
  if (!cuts.prepare()) return std::nullopt;
  cuts.putInto(out);
  return out;
}

}  // namespace creasewright
