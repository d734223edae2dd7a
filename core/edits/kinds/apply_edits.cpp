#include "edits/kinds/apply_edits.h"

#include <algorithm>
#include <iterator>
#include <set>

#include "edits/kinds/crease_site.h"
#include "edits/kinds/edge_site.h"
#include "edits/kinds/halves.h"
#include "edits/kinds/panel_site.h"
#include "styles/parameter_text.h"

namespace creasewright {
namespace {

/// Where an edit is to be made: indices of a piece and its panel.
struct Place {
  std::size_t piece = 0;
  int panel = 0;
};

std::optional<Place> findPlace(const Edit& edit, const std::vector<Piece>& pieces) {
  // What the second half of a divided piece has is found in the piece that it was before.
  const bool any = edit.piece.empty() || isOtherHalf(edit.piece);
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (!any && pieces[i].name != edit.piece) continue;
    if (const auto panel = pieces[i].net.find(edit.panel)) return Place{i, *panel};
  }
  return std::nullopt;
}

bool hasEdge(EditPlace place, const Net& net, int panel, std::string_view edge) {
  switch (place) {
    case EditPlace::Panel:
      return true;
    case EditPlace::Edge:
      return findEdge(net, panel, edge).has_value();
    case EditPlace::Crease:
      return findFold(net, panel, edge).has_value();
  }
  return true;
}

/// The pieces after some of the edits.
struct Trial {
  std::vector<Piece> pieces;
  std::set<std::size_t> touched;  ///< pieces in which one was made
  std::map<int, Problem> broken;  ///< edits that could not be made where they belong
  std::vector<PieceJoint> joints = {};
  std::map<std::size_t, JudgedNet> judged = {};  ///< by piece, as it is now
};

/// Makes edits one after another. Each names what keeps it from being made at all; whether the net
/// still holds is asked once, of what all of them make together, and only where it does not, the
/// first is looked for after which it does not.
class Application {
 public:
  Application(const std::vector<Edit>& edits, const Parameters& measures, const Workbench& bench,
              const std::vector<std::string>& lengths, const std::vector<Piece>& pieces,
              bool trusted)
      : edits_(edits), bench_(bench), plain_(pieces), trusted_(trusted) {
    for (const std::string& key : lengths) names_[key] = measures.length(key);
    names_["caliper"] = bench.caliper;
  }

  Trial run() const {
    Trial sound{plain_, {}, {}};
    std::size_t from = 0;
    for (;;) {
      Trial all = make(sound, from, edits_.size());
      if (holds(all)) {
        divide(all);
        return all;
      }
      const std::size_t faulty = firstFaulty(sound, from);
      sound = make(sound, from, faulty);
      sound.broken.emplace(static_cast<int>(faulty), told(ProblemCode::EditUnfit, faulty));
      from = faulty + 1;
    }
  }

 private:
  [[nodiscard]] static bool divides(const Edit& edit) {
    const Result<const EditKind*> kind = findEditKind(edit.kind);
    return kind && (*kind)->divides;
  }

  /// The edits that divide a piece, each judged at once.
  void divide(Trial& trial) const {
    for (std::size_t i = 0; i < edits_.size(); ++i) {
      if (!edits_[i].on || !divides(edits_[i])) continue;
      Trial next = trial;
      std::optional<Problem> problem = make(i, next);
      if (!problem && !halvesHold(trial, next)) problem = told(ProblemCode::EditUnfit, i);
      if (problem) {
        trial.broken.emplace(static_cast<int>(i), std::move(*problem));
      } else {
        trial = std::move(next);
        trial.judged.clear();  // there are other pieces now
      }
    }
  }

  /// Whether the pieces hold whatever they held before.
  [[nodiscard]] bool halvesHold(const Trial& before, const Trial& now) const {
    if (trusted_) return true;
    const double caliper = bench_.caliper.mm();
    Problems then;
    for (const Piece& piece : before.pieces)
      std::ranges::move(judgeNet(piece.net, caliper).problems, std::back_inserter(then));
    return std::ranges::none_of(now.pieces, [&](const Piece& piece) {
      const Problems found = judgeNet(piece.net, caliper).problems;
      return !found.empty() && isWorse(then, found);
    });
  }

  [[nodiscard]] Trial make(Trial trial, std::size_t from, std::size_t to) const {
    for (std::size_t i = from; i < to; ++i)
      if (edits_[i].on && !divides(edits_[i]))
        if (auto problem = make(i, trial))
          trial.broken.emplace(static_cast<int>(i), std::move(*problem));
    return trial;
  }

  /// The edit with which a net that holds becomes one that does not: between two places at which
  /// that is known there is always one.
  [[nodiscard]] std::size_t firstFaulty(const Trial& sound, std::size_t from) const {
    std::size_t low = from;
    std::size_t high = edits_.size();
    while (high - low > 1) {
      const std::size_t middle = low + (high - low) / 2;
      Trial some = make(sound, from, middle);
      (holds(some) ? low : high) = middle;
    }
    return low;
  }

  [[nodiscard]] bool holds(Trial& trial) const {
    if (trusted_) return true;
    return std::ranges::all_of(trial.touched, [&](std::size_t piece) {
      const JudgedNet& now =
          (trial.judged[piece] = judgeNet(trial.pieces[piece].net, bench_.caliper.mm()));
      return now.problems.empty() || !isWorse(plainProblems(piece), now.problems);
    });
  }

  const Problems& plainProblems(std::size_t piece) const {
    const auto known = judged_.find(piece);
    if (known != judged_.end()) return known->second;
    Problems problems = judgeNet(plain_[piece].net, bench_.caliper.mm()).problems;
    return judged_.emplace(piece, std::move(problems)).first->second;
  }

  [[nodiscard]] LengthNames namesOf(const Edit& edit, const Net& net, int panel) const {
    LengthNames names = names_;
    const DrawnPanel drawn(net, panel);
    names["panel-width"] = Length::mm(drawn.box().width());
    names["panel-height"] = Length::mm(drawn.box().height());
    if (edit.edge.empty()) return names;
    if (const auto edge = findEdge(net, panel, edit.edge))
      names["edge-length"] = Length::mm(edge->length());
    return names;
  }

  /// Nothing, or why the edit is not made; the pieces are then as they were.
  std::optional<Problem> make(std::size_t number, Trial& trial) const {
    const Edit& edit = edits_[number];
    const Result<const EditKind*> kind = findEditKind(edit.kind);
    if (!kind) return kind.problem();
    const std::optional<Place> place = findPlace(edit, trial.pieces);
    if (!place) return told(ProblemCode::EditPlaceGone, number);
    Piece& piece = trial.pieces[place->piece];
    if (!hasEdge((*kind)->place, piece.net, place->panel, edit.edge))
      return told(ProblemCode::EditPlaceGone, number);
    const Result<Parameters> values =
        evaluateMeasures(**kind, edit, namesOf(edit, piece.net, place->panel), unitOf(bench_.grid));
    if (!values) return values.problem();
    EditAdds adds;
    const EditSite site{piece, place->panel, edit.edge,           *values,
                        edit,  trial.pieces, bench_.caliper.mm(), adds};
    const auto fault = (*kind)->reshapes ? reshape(**kind, site) : cut(**kind, site);
    if (fault) return told(*fault, number);
    trial.touched.insert(place->piece);
    trial.pieces.insert(trial.pieces.begin() + static_cast<std::ptrdiff_t>(place->piece) + 1,
                        adds.pieces.begin(), adds.pieces.end());
    std::ranges::move(adds.joints, std::back_inserter(trial.joints));
    return std::nullopt;
  }

  static std::optional<ProblemCode> reshape(const EditKind& kind, const EditSite& site) {
    Piece before = site.piece;
    const auto fault = kind.apply(site);
    if (fault) site.piece = std::move(before);
    return fault;
  }

  /// What only cuts its panel is undone by that panel alone.
  static std::optional<ProblemCode> cut(const EditKind& kind, const EditSite& site) {
    Net& net = site.net;
    const Panel before = site.on();
    const std::size_t slits = net.slits.size();
    std::optional<ProblemCode> fault = kind.apply(site);
    const Panel& now = site.on();
    const bool reshaped = now.outline != before.outline;
    if (!fault && !reshaped && now.openings == before.openings && net.slits.size() == slits)
      fault = ProblemCode::EditNoEffect;
    if (!fault && reshaped && !keepsFolds(net, site.panel, before.outline, now.outline))
      fault = ProblemCode::EditUnfit;
    if (fault) {
      site.on() = before;
      net.slits.resize(slits);
    }
    return fault;
  }

  [[nodiscard]] Problem told(ProblemCode code, std::size_t number) const {
    const Edit& edit = edits_[number];
    return {code, edit.kind, {static_cast<std::int64_t>(number) + 1, edit.panel}};
  }

  const std::vector<Edit>& edits_;
  const Workbench& bench_;
  const std::vector<Piece>& plain_;
  bool trusted_;
  LengthNames names_;
  mutable std::map<std::size_t, Problems> judged_;  ///< by piece: of the net without any edit
};

}  // namespace

std::vector<std::string> lengthKeys(const std::vector<ParameterSpec>& measures) {
  std::vector<std::string> keys;
  for (const ParameterSpec& spec : measures)
    if (spec.kind == ParameterKind::Length) keys.emplace_back(spec.key);
  return keys;
}

namespace {

EditsMade madeIn(const Application& application, std::vector<Piece>& pieces) {
  Trial made = application.run();
  pieces = std::move(made.pieces);
  return {std::move(made.broken), std::move(made.joints), std::move(made.judged)};
}

}  // namespace

EditsMade applyEdits(const std::vector<Edit>& edits, const Parameters& measures,
                     const std::vector<std::string>& lengths, const Workbench& bench,
                     std::vector<Piece>& pieces) {
  return madeIn({edits, measures, bench, lengths, pieces, false}, pieces);
}

EditsMade makeEdits(const std::vector<Edit>& edits, const Parameters& measures,
                    const std::vector<std::string>& lengths, const Workbench& bench,
                    std::vector<Piece>& pieces) {
  return madeIn({edits, measures, bench, lengths, pieces, true}, pieces);
}

}  // namespace creasewright
