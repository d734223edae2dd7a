#include "making/cut_plan.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "making/cut_marks.h"
#include "making/cut_strokes.h"
#include "making/score_lines.h"

namespace creasewright {
namespace {

constexpr double kOnLine = 1e-3;      // mm, as the score plan counts
constexpr double kLongestNotch = 10;  // mm

/// Most points are far from one another, and cost no root.
bool within(Point p, Point q, double limit) {
  return std::abs(p.x - q.x) <= limit && std::abs(p.y - q.y) <= limit && distance(p, q) <= limit;
}

/// What decides how a straight cut is told.
struct ScoredSheet {
  std::array<LineView, 2> views;
  std::array<std::vector<double>, 2> full;  // by view
  std::array<std::vector<ShortRun>, 2> marks;
  std::vector<Point> creaseEnds;

  ScoredSheet(const Net& net, const FlatNet& flat) : views(lineViews(net, flat)) {
    for (std::size_t i = 0; i < 2; ++i) full.at(i) = views.at(i).fullPositions();
    for (std::size_t i = 0; i < 2; ++i) marks.at(i) = findCutMarks(views.at(i), full.at(1 - i));
    for (const Segment& crease : flat.creases) {
      creaseEnds.push_back(crease.a);
      creaseEnds.push_back(crease.b);
    }
  }
  [[nodiscard]] bool isCreaseEnd(Point p) const {
    return std::ranges::any_of(
        creaseEnds, [p](Point end) { return within(p, end, kOnLine); });
  }
};

void tellStart(const ScoredSheet& sheet, std::size_t index, Cut& cut) {
  const LineView& view = sheet.views.at(index);
  Point a = view.turn(cut.line.front());
  Point b = view.turn(cut.line.back());
  if (a.y > b.y) std::swap(a, b);
  cut.alongScore = lineNumber(sheet.full.at(index), a.x, false) > 0 ||
                   std::ranges::any_of(sheet.marks.at(index), [&](const ShortRun& mark) {
                     return std::abs(mark.at - a.x) <= kOnLine;
                   });
  const bool atStart = a.y <= kOnLine;
  const bool atEnd = b.y >= view.height - kOnLine;
  cut.fromEdge = atStart || atEnd;
  if (!cut.fromEdge) return;
  cut.edge = atStart ? view.start() : view.end();
  if (!atStart) std::swap(a, b);
  cut.toLine = lineNumber(sheet.full.at(1 - index), b.y, !atStart);
  cut.line = {view.turn(a), view.turn(b)};
}

Cut straightCut(const ScoredSheet& sheet, const Segment& stroke) {
  Cut cut;
  cut.line = {stroke.a, stroke.b};
  for (std::size_t i = 0; i < 2; ++i) {
    const LineView& view = sheet.views.at(i);
    if (!isUpright({view.turn(stroke.a), view.turn(stroke.b)})) continue;
    tellStart(sheet, i, cut);
    return cut;
  }
  if (sheet.isCreaseEnd(stroke.a) && sheet.isCreaseEnd(stroke.b))
    cut.kind = CutKind::Mitre;
  else
    cut.kind = length(stroke) <= kLongestNotch + kOnLine ? CutKind::Notch : CutKind::Taper;
  return cut;
}

bool sameLine(const Polyline& a, const Polyline& b) {
  if (a.size() != b.size()) return false;
  return std::ranges::all_of(a, [&](Point p) {
    return std::ranges::any_of(b, [p](Point q) { return within(p, q, kSamePlace); });
  });
}

/// Whether the hand makes `other` as it makes `cut`, from the mirrored edge to the same score.
bool madeAlike(const Cut& cut, const Cut& other, CutRepeat repeat) {
  return cut.kind == other.kind && cut.fromEdge == other.fromEdge && cut.toLine == other.toLine &&
         (!cut.fromEdge || other.edge == repeatedEdge(cut.edge, repeat));
}

/// Takes the equals of each cut out of the list and names them as repeats.
std::vector<Cut> toldOnce(std::vector<Cut> cuts, double width, double height) {
  constexpr std::array kRepeats{CutRepeat::LeftRight, CutRepeat::BottomTop, CutRepeat::HalfTurn};
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    for (const CutRepeat repeat : kRepeats) {
      const Polyline other = repeated(cuts[i].line, repeat, width, height);
      const auto found = std::find_if(
          cuts.begin() + static_cast<std::ptrdiff_t>(i) + 1, cuts.end(), [&](const Cut& cut) {
            return madeAlike(cuts[i], cut, repeat) && sameLine(cut.line, other);
          });
      if (found == cuts.end()) continue;
      cuts[i].repeats.push_back(repeat);
      cuts.erase(found);
    }
  }
  return cuts;
}

void sortForTheHand(std::vector<Cut>& cuts) {
  const auto place = [](const Cut& cut) { return bounds(cut.line).low; };
  std::ranges::stable_sort(cuts, [&](const Cut& a, const Cut& b) {
    if (a.kind != b.kind) return a.kind < b.kind;
    if (a.fromEdge != b.fromEdge) return a.fromEdge;
    const Point p = place(a);
    const Point q = place(b);
    if (std::abs(p.y - q.y) > kOnLine) return p.y < q.y;
    return p.x < q.x - kOnLine;
  });
}

}  // namespace

Polyline repeated(const Polyline& line, CutRepeat repeat, double width, double height) {
  Polyline other;
  for (const Point& p : line)
    other.push_back({repeat == CutRepeat::BottomTop ? p.x : width - p.x,
                     repeat == CutRepeat::LeftRight ? p.y : height - p.y});
  return other;
}

SheetSide repeatedEdge(SheetSide edge, CutRepeat repeat) {
  const bool upright = edge == SheetSide::Left || edge == SheetSide::Right;
  const bool swaps = repeat == CutRepeat::HalfTurn || (repeat == CutRepeat::LeftRight) == upright;
  if (!swaps) return edge;
  if (upright) return edge == SheetSide::Left ? SheetSide::Right : SheetSide::Left;
  return edge == SheetSide::Bottom ? SheetSide::Top : SheetSide::Bottom;
}

CutPlan planCuts(const Net& net, const FlatNet& flat, const std::vector<WastePiece>& waste) {
  const ScoredSheet sheet(net, flat);
  const CutStrokes strokes = cutStrokes(flat);
  CutPlan plan{Length::mm(flat.width), Length::mm(flat.height), {}, {}};
  const auto add = [&plan](CutKind kind, const std::vector<Polyline>& lines) {
    for (const Polyline& line : lines) {
      plan.cuts.emplace_back();
      plan.cuts.back().kind = kind;
      plan.cuts.back().line = line;
    }
  };
  add(CutKind::Opening, strokes.openings);
  add(CutKind::Slit, strokes.slits);
  for (const Segment& stroke : strokes.straight) plan.cuts.push_back(straightCut(sheet, stroke));
  add(CutKind::Curve, strokes.curves);
  sortForTheHand(plan.cuts);
  plan.cuts = toldOnce(std::move(plan.cuts), flat.width, flat.height);
  for (const WastePiece& piece : waste) plan.wasteLetters.push_back(piece.letter);
  return plan;
}

}  // namespace creasewright
