#include "core/laws/meeting_edges.h"

#include <algorithm>
#include <numeric>

namespace creasewright::testing {
namespace {

constexpr double kNear = 3;         // mm from a crease or a glued flap the card is held
constexpr double kStep = 0.5;       // mm between the points asked
constexpr double kExact = 1e-6;     // mm
constexpr double kParallel = 0.12;  // sine of the most that edges which meet differ in direction

struct Line {
  Point3 a, b;
};

/// A part of a panel's edge that is cut all along, or creased all along.
struct EdgePart {
  int panel = 0;
  std::string edge;
  int across = -1;  // the panel beyond the crease; -1 where the edge is cut
  Line line;
};

struct Span {
  double from, to;
  int across;
};

double distanceTo(Point3 p, const Line& line) {
  const Point3 along = line.b - line.a;
  const double size = dot(along, along);
  const double t = size > 0 ? std::clamp(dot(p - line.a, along) / size, 0.0, 1.0) : 0;
  return distance(p, line.a + along * t);
}

/// Where creases lie on a flat edge, in mm from its start, in order.
std::vector<Span> creasedSpans(const BuiltPiece& piece, int panel, const Segment& edge) {
  std::vector<Span> spans;
  const Point along = unit(edge.b - edge.a);
  for (std::size_t i = 0; i < piece.net.creases.size(); ++i) {
    const Crease& crease = piece.net.creases[i];
    if (crease.parent != panel && crease.child != panel) continue;
    const Segment& line = piece.flat.creases[i];
    if (std::abs(cross(along, line.a - edge.a)) > 1e-4 ||
        std::abs(cross(along, line.b - edge.a)) > 1e-4)
      continue;
    const double p = dot(along, line.a - edge.a);
    const double q = dot(along, line.b - edge.a);
    const Span span{std::max(0.0, std::min(p, q)), std::min(length(edge), std::max(p, q)),
                    crease.parent == panel ? crease.child : crease.parent};
    if (span.to > span.from + kExact) spans.push_back(span);
  }
  std::ranges::sort(spans, {}, &Span::from);
  return spans;
}

std::vector<EdgePart> edgeParts(const BuiltPiece& piece) {
  std::vector<EdgePart> parts;
  const Net& net = piece.net;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Panel& panel = net.panels[i];
    for (std::size_t k = 0; k < panel.outline.size(); ++k) {
      const Point a = panel.outline[k];
      const Point b = panel.outline[(k + 1) % panel.outline.size()];
      if (distance(a, b) < kExact) continue;
      const Segment flat{piece.flat.place(static_cast<int>(i), a),
                         piece.flat.place(static_cast<int>(i), b)};
      const auto add = [&](double from, double to, int across) {
        if (to - from < kExact) return;
        const Point along = unit(b - a);
        parts.push_back(
            {static_cast<int>(i),
             panel.edges.at(k),
             across,
             {piece.folded[i].apply(a + along * from), piece.folded[i].apply(a + along * to)}});
      };
      double at = 0;
      for (const Span& span : creasedSpans(piece, static_cast<int>(i), flat)) {
        add(at, span.from, -1);
        add(std::max(at, span.from), span.to, span.across);
        at = std::max(at, span.to);
      }
      add(at, distance(a, b), -1);
    }
  }
  return parts;
}

/// The stretch of `one` along which `other` lies, both within `tolerance`.
std::optional<Line> common(const Line& one, const Line& other, double tolerance) {
  const Point3 along = unit(one.b - one.a);
  if (std::abs(dot(along, unit(other.b - other.a))) < std::sqrt(1 - kParallel * kParallel))
    return std::nullopt;
  const double c = dot(other.a - one.a, along);
  const double d = dot(other.b - one.a, along);
  const double from = std::max(0.0, std::min(c, d));
  const double to = std::min(distance(one.a, one.b), std::max(c, d));
  if (to - from < kExact) return std::nullopt;
  const Line shared{one.a + along * from, one.a + along * to};
  if (distanceTo(shared.a, other) > tolerance || distanceTo(shared.b, other) > tolerance)
    return std::nullopt;
  return shared;
}

/// What joins panels near a point.
class Joints {
 public:
  explicit Joints(const BuiltPiece& piece) : piece_(piece) {}

  [[nodiscard]] bool join(int one, int other, Point3 at) const {
    std::vector<int> group(piece_.net.panels.size());
    std::iota(group.begin(), group.end(), 0);
    const auto unite = [&group](int a, int b) {
      const int from = group[static_cast<std::size_t>(a)];
      const int to = group[static_cast<std::size_t>(b)];
      std::ranges::replace(group, from, to);
    };
    for (const Crease& crease : piece_.net.creases)
      if (isNear(crease, at)) unite(crease.parent, crease.child);
    for (const Mate& mate : piece_.net.mates)
      if (mate.method != Method::Rest && isNear(mate, at)) unite(mate.panel, mate.onto);
    return group[static_cast<std::size_t>(one)] == group[static_cast<std::size_t>(other)];
  }

 private:
  [[nodiscard]] bool isNear(const Crease& crease, Point3 at) const {
    const Transform& frame = piece_.folded[static_cast<std::size_t>(crease.parent)];
    return distanceTo(at, {frame.apply(crease.onParent.a), frame.apply(crease.onParent.b)}) < kNear;
  }

  [[nodiscard]] bool isNear(const Mate& mate, Point3 at) const {
    const auto flap = static_cast<std::size_t>(mate.panel);
    const Polygon& area = mate.patch.empty() ? piece_.net.panels[flap].outline : mate.patch;
    const Point3 seen = piece_.folded[flap].inverse().apply(at);
    return std::abs(seen.z) < kNear && locate({seen.x, seen.y}, area, kNear) != Side::Outside;
  }

  const BuiltPiece& piece_;
};

double openLength(const Joints& joints, int one, int other, const Line& line) {
  const double size = distance(line.a, line.b);
  const int steps = std::max(1, static_cast<int>(std::ceil(size / kStep)));
  int open = 0;
  for (int i = 0; i < steps; ++i)
    if (!joints.join(one, other, line.a + (line.b - line.a) * ((i + 0.5) / steps))) ++open;
  return size * open / steps;
}

}  // namespace

std::vector<Meeting> meetingEdges(const BuiltPiece& piece, double caliper) {
  const std::vector<EdgePart> parts = edgeParts(piece);
  const Joints joints(piece);
  std::vector<Meeting> meetings;
  for (std::size_t i = 0; i < parts.size(); ++i)
    for (std::size_t k = 0; k < parts.size(); ++k) {
      const EdgePart& one = parts[i];
      const EdgePart& other = parts[k];
      if (one.across >= 0 || one.panel == other.panel || (other.across < 0 && k < i)) continue;
      const auto shared = common(one.line, other.line, 0.05 + caliper);
      if (!shared) continue;
      auto known = std::ranges::find_if(meetings, [&](const Meeting& m) {
        return m.panel == one.panel && m.edge == one.edge && m.other == other.panel &&
               m.otherEdge == other.edge && m.across == other.across;
      });
      if (known == meetings.end())
        known =
            meetings.insert(known, {one.panel, one.edge, other.panel, other.edge, other.across});
      known->length += distance(shared->a, shared->b);
      known->open += openLength(joints, one.panel, other.panel, *shared);
    }
  return meetings;
}

}  // namespace creasewright::testing
