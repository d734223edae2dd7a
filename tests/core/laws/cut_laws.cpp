#include <algorithm>
#include <array>

#include "core/laws/law_book.h"
#include "making/cut_plan.h"

namespace creasewright::testing {
namespace {

constexpr double kShortest = 1e-6;  // mm: shorter than that nothing can be cut
constexpr double kPlace = 5e-6;     // mm: a few roundings to a nanometre at sharp corners

/// Card on either side of a line, told from the panels alone.
class Card {
 public:
  explicit Card(const FlatNet& flat) : flat_(flat) {}

  /// The panel at `p`, -1 where there is no card.
  [[nodiscard]] int at(Point p) const {
    for (const auto& openings : flat_.openings)
      for (const Polygon& opening : openings)
        if (locate(p, opening) == Side::Inside) return -1;
    for (std::size_t i = 0; i < flat_.panels.size(); ++i)
      if (locate(p, flat_.panels[i]) != Side::Outside) return static_cast<int>(i);
    return -1;
  }
  [[nodiscard]] bool atRim(Point p) const {
    return p.x <= kPlace || p.y <= kPlace || p.x >= flat_.width - kPlace ||
           p.y >= flat_.height - kPlace;
  }
  [[nodiscard]] bool isCreased(Point p) const {
    return std::ranges::any_of(flat_.creases, [p](const Segment& crease) {
      return distanceToSegment(p, crease) <= kPlace;
    });
  }

 private:
  const FlatNet& flat_;
};

void addEdges(const Polygon& ring, std::vector<Segment>& edges) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Segment edge{ring[i], ring[(i + 1) % ring.size()]};
    if (length(edge) > kShortest) edges.push_back(edge);
  }
}

/// Where other lines end on an edge or run across it, as positions along it.
std::vector<double> stops(const Segment& edge, const std::vector<Segment>& others) {
  const double size = length(edge);
  const Point along = (edge.b - edge.a) / size;
  std::vector<double> at{0, size};
  for (const Segment& other : others) {
    const double a = cross(along, other.a - edge.a);
    const double b = cross(along, other.b - edge.a);
    for (const auto& [off, p] : {std::pair{a, other.a}, std::pair{b, other.b}})
      if (std::abs(off) <= kPlace) at.push_back(dot(along, p - edge.a));
    if ((a < 0) != (b < 0) && std::abs(a - b) > kPlace)
      at.push_back(dot(along, other.a + (other.b - other.a) * (a / (a - b)) - edge.a));
  }
  std::erase_if(at, [size](double t) { return t < 0 || t > size; });
  std::ranges::sort(at);
  return at;
}

/// All that has to be cut out of the trimmed sheet: edges of card against none, edges of panels
/// against others that no crease joins, and slits.
std::vector<Segment> edgesToCut(const FlatNet& flat) {
  std::vector<Segment> edges;
  for (const Polygon& panel : flat.panels) addEdges(panel, edges);
  for (const auto& openings : flat.openings)
    for (const Polygon& opening : openings) addEdges(opening, edges);
  std::vector<Segment> lines = edges;
  lines.insert(lines.end(), flat.creases.begin(), flat.creases.end());
  const Card card(flat);
  std::vector<Segment> cuts;
  for (const Segment& edge : edges) {
    const Point along = unit(edge.b - edge.a);
    const Point beside = turnLeft(along) * kPlace;
    const std::vector<double> at = stops(edge, lines);
    for (std::size_t i = 0; i + 1 < at.size(); ++i) {
      if (at[i + 1] - at[i] <= kShortest) continue;
      const Point middle = edge.a + along * ((at[i] + at[i + 1]) / 2);
      const int left = card.at(middle + beside);
      const int right = card.at(middle - beside);
      if (left == right) continue;
      const bool againstNone = left < 0 || right < 0;
      if (againstNone ? card.atRim(middle) : card.isCreased(middle)) continue;
      cuts.push_back({edge.a + along * at[i], edge.a + along * at[i + 1]});
    }
  }
  for (const Polyline& slit : flat.slits)
    for (std::size_t i = 0; i + 1 < slit.size(); ++i) cuts.push_back({slit[i], slit[i + 1]});
  return cuts;
}

std::vector<Segment> strokesOf(const CutPlan& plan) {
  std::vector<Segment> strokes;
  const auto add = [&strokes](const Polyline& line) {
    for (std::size_t i = 0; i + 1 < line.size(); ++i)
      if (length({line[i], line[i + 1]}) > kShortest) strokes.push_back({line[i], line[i + 1]});
  };
  for (const Cut& cut : plan.cuts) {
    add(cut.line);
    for (const CutRepeat repeat : cut.repeats)
      add(repeated(cut.line, repeat, plan.width.mm(), plan.height.mm()));
  }
  return strokes;
}

/// How much of a line no stroke lies on, mm.
double uncovered(const Segment& line, const std::vector<Segment>& strokes) {
  const double size = length(line);
  const Point along = (line.b - line.a) / size;
  std::vector<std::pair<double, double>> taken;
  for (const Segment& s : strokes) {
    double a = dot(along, s.a - line.a);
    double b = dot(along, s.b - line.a);
    if (std::abs(a - b) < kShortest) continue;
    // How far off the stroke is over the line's own length.
    const double offA = cross(along, s.a - line.a);
    const double offB = cross(along, s.b - line.a);
    const auto offAt = [&](double t) { return offA + (offB - offA) * (t - a) / (b - a); };
    const double low = std::max(0.0, std::min(a, b));
    const double high = std::min(size, std::max(a, b));
    if (high > low && std::abs(offAt(low)) <= kPlace && std::abs(offAt(high)) <= kPlace)
      taken.emplace_back(low, high);
  }
  std::ranges::sort(taken);
  double left = 0;
  double at = 0;
  for (const auto& [low, high] : taken) {
    left += std::max(0.0, low - at);
    at = std::max(at, high);
  }
  return left + std::max(0.0, size - at);
}

std::string place(const Segment& s) {
  return "(" + std::to_string(s.a.x) + ", " + std::to_string(s.a.y) + ") to (" +
         std::to_string(s.b.x) + ", " + std::to_string(s.b.y) + "), " + std::to_string(length(s)) +
         " mm";
}

Verdict judgeCuts(const BuiltPiece& piece) {
  const std::vector<Segment> edges = edgesToCut(piece.flat);
  const std::vector<Segment> strokes = strokesOf(planCuts(piece.net, piece.flat, piece.waste));
  for (const Segment& edge : edges)
    if (uncovered(edge, strokes) > kPlace) return "no stroke cuts " + place(edge);
  for (std::size_t i = 0; i < strokes.size(); ++i) {
    if (uncovered(strokes[i], edges) > 2 * kPlace) return "into the card: " + place(strokes[i]);
    std::vector<Segment> others = strokes;
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
    if (length(strokes[i]) - uncovered(strokes[i], others) > 2 * kPlace)
      return "cut twice: " + place(strokes[i]);
  }
  return {};
}

}  // namespace

/// Strokes and trimming cut the sheet along every edge, opening, slit and parting, once, and
/// nowhere else, however short they are.
Verdict everyCutIsTold(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces)
    if (const Verdict verdict = judgeCuts(piece); !verdict.empty())
      return piece.name + ": " + verdict;
  return {};
}

}  // namespace creasewright::testing
