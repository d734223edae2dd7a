#include "edits/kinds/apply_edits.h"

#include <algorithm>
#include <cmath>

#include "edits/kinds/edge_site.h"
#include "edits/kinds/panel_site.h"
#include "folding/fold_check.h"
#include "folding/loop_closure.h"
#include "net/net_problems.h"
#include "net/pose.h"
#include "styles/parameter_text.h"

namespace creasewright {
namespace {

/// Where an edit is to be made: indices of a piece and its panel.
struct Place {
  std::size_t piece = 0;
  int panel = 0;
};

std::optional<Place> findPlace(const Edit& edit, const std::vector<Piece>& pieces) {
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (!edit.piece.empty() && pieces[i].name != edit.piece) continue;
    if (const auto panel = pieces[i].net.find(edit.panel)) return Place{i, *panel};
    if (!edit.piece.empty()) return std::nullopt;
  }
  return std::nullopt;
}

LengthNames namesOf(const Edit& edit, const Net& net, int panel, const Parameters& measures,
                    const Workbench& bench, const std::vector<std::string>& lengths) {
  LengthNames names;
  for (const std::string& key : lengths) names[key] = measures.length(key);
  const DrawnPanel drawn(net, panel);
  names["panel-width"] = Length::mm(drawn.box().width());
  names["panel-height"] = Length::mm(drawn.box().height());
  names["caliper"] = bench.caliper;
  if (edit.edge.empty()) return names;
  if (const auto edge = findEdge(net, panel, edit.edge))
    names["edge-length"] = Length::mm(edge->length());
  return names;
}

/// What the net does not hold: an edit may not add to it.
Problems problemsOf(const Net& net, const FlatNet& flat, double caliper) {
  Problems found = findProblems(net, flat, caliper);
  const Pose folded = pose(net, 1.0);
  for (Problem& problem : checkMates(net, folded, caliper)) found.push_back(std::move(problem));
  for (Problem& problem : checkLoops(net, folded)) found.push_back(std::move(problem));
  return found;
}

/// How much of a line an outline's edges lie on, mm.
double covered(const Segment& line, const Polygon& outline) {
  constexpr double kBeside = 1e-4;  // mm
  const double whole = length(line);
  const Point along = unit(line.b - line.a);
  double sum = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point a = outline[i] - line.a;
    const Point b = outline[(i + 1) % outline.size()] - line.a;
    if (std::abs(cross(along, a)) > kBeside || std::abs(cross(along, b)) > kBeside) continue;
    const auto [low, high] = std::minmax({dot(along, a), dot(along, b)});
    sum += std::max(0.0, std::min(high, whole) - std::max(low, 0.0));
  }
  return sum;
}

/// Whether all of every crease still lies on the edges of a panel that it lay on: a cut across a
/// score would leave a hole where the card folds.
bool keepsCreases(const FlatNet& before, const FlatNet& after, const Net& net, int panel) {
  constexpr double kSame = 1e-3;  // mm
  const auto index = static_cast<std::size_t>(panel);
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    if (net.creases[i].parent != panel && net.creases[i].child != panel) continue;
    const double lost = covered(before.creases[i], before.panels[index]) -
                        covered(after.creases[i], after.panels[index]);
    if (lost > kSame) return false;
  }
  return true;
}

/// Whether one of `now` is none of `before`.
bool worse(const Problems& before, const Problems& now) {
  return std::ranges::any_of(
      now,
      [&](const Problem& problem) {
        return std::ranges::none_of(
            before,
            [&](const Problem& old) {
              return old.code == problem.code && old.where == problem.where;
            });
      });
}

bool sameCuts(const Net& a, const Net& b) {
  if (a.slits.size() != b.slits.size() || a.panels.size() != b.panels.size()) return false;
  for (std::size_t i = 0; i < a.panels.size(); ++i)
    if (a.panels[i].outline != b.panels[i].outline || a.panels[i].openings != b.panels[i].openings)
      return false;
  return true;
}

class Application {
 public:
  Application(const Parameters& measures, const Workbench& bench,
              const std::vector<std::string>& lengths)
      : measures_(measures), bench_(bench), lengths_(lengths) {}

  /// Nothing, or why the edit is not made; the pieces are then as they were.
  std::optional<Problem> make(const Edit& edit, int number, std::vector<Piece>& pieces) {
    const Result<const EditKind*> kind = findEditKind(edit.kind);
    if (!kind) return kind.problem();
    const std::optional<Place> place = findPlace(edit, pieces);
    if (!place) return told(ProblemCode::EditPlaceGone, edit, number, edit.panel);
    Net& net = pieces[place->piece].net;
    if ((*kind)->place == EditPlace::Edge && !findEdge(net, place->panel, edit.edge))
      return told(ProblemCode::EditPlaceGone, edit, number, edit.panel);
    const Result<Parameters> values = evaluateMeasures(
        **kind, edit, namesOf(edit, net, place->panel, measures_, bench_, lengths_),
        unitOf(bench_.grid));
    if (!values) return values.problem();
    Net changed = net;
    if (const auto fault = (*kind)->apply({changed, place->panel, edit.edge, *values}))
      return told(*fault, edit, number, edit.panel);
    if (sameCuts(net, changed)) return told(ProblemCode::EditNoEffect, edit, number, edit.panel);
    if (!judged_.contains(place->piece)) judged_.emplace(place->piece, judge(net));
    Judged after = judge(changed);
    Judged& before = judged_.at(place->piece);
    if (worse(before.problems, after.problems) ||
        !keepsCreases(before.flat, after.flat, net, place->panel))
      return told(ProblemCode::EditUnfit, edit, number, edit.panel);
    before = std::move(after);
    net = std::move(changed);
    return std::nullopt;
  }

 private:
  struct Judged {
    FlatNet flat;
    Problems problems;
  };
  [[nodiscard]] Judged judge(const Net& net) const {
    Judged judged{flatten(net), {}};
    judged.problems = problemsOf(net, judged.flat, bench_.caliper.mm());
    return judged;
  }
  static Problem told(ProblemCode code, const Edit& edit, int number, const std::string& place) {
    return {code, edit.kind, {std::int64_t{number}, place}};
  }

  const Parameters& measures_;
  const Workbench& bench_;
  const std::vector<std::string>& lengths_;
  std::map<std::size_t, Judged> judged_;  ///< by piece: as it is after the edits so far
};

}  // namespace

std::vector<std::string> lengthKeys(const std::vector<ParameterSpec>& measures) {
  std::vector<std::string> keys;
  for (const ParameterSpec& spec : measures)
    if (spec.kind == ParameterKind::Length) keys.emplace_back(spec.key);
  return keys;
}

std::map<int, Problem> applyEdits(const std::vector<Edit>& edits, const Parameters& measures,
                                  const std::vector<std::string>& lengths, const Workbench& bench,
                                  std::vector<Piece>& pieces) {
  std::map<int, Problem> broken;
  Application application(measures, bench, lengths);
  for (std::size_t i = 0; i < edits.size(); ++i) {
    if (!edits[i].on) continue;
    const int index = static_cast<int>(i);
    if (auto problem = application.make(edits[i], index + 1, pieces))
      broken.emplace(index, std::move(*problem));
  }
  return broken;
}

}  // namespace creasewright
