#include "folding/motion/motion_check.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

#include "folding/index.h"
#include "folding/motion/allowed_contacts.h"
#include "folding/motion/crease_path.h"
#include "folding/motion/edge_watch.h"
#include "folding/motion/pair_watch.h"

namespace creasewright {
namespace {

constexpr double kMateSlack = 0.05;  // mm, as in checkMates

/// Two panels that share no crease, and all pairs of their parts.
struct PanelPair {
  int a;
  int b;
  PairMotion motion;
  std::vector<PairWatch> watches;
};

/// A flap in the plane of the panel it is joined to, and the edges it must not stick out over.
struct FlapWatch {
  const Mate* mate;
  PairMotion motion;
  std::vector<EdgeWatch> edges;
};

bool bendsIn(const Net& net, int stage) {
  return std::ranges::any_of(
      net.bends, [stage](const Bend& bend) { return bend.stage == stage; });
}

class PathCheck {
 public:
  PathCheck(const Net& net, double tolerance)
      : net_(net),
        steps_(net),
        shapes_(convexShapes(net, tolerance)),
        context_{shapes_, steps_, tolerance},
        allowed_(allowedContacts(net)),
        shapesOf_(net.panels.size()) {
    for (std::size_t i = 0; i < shapes_.size(); ++i) shapesOf_[at(shapes_[i].panel)].push_back(i);
    const CreaseTree tree(net);
    const CreaseSpans spans(net);
    findPairs(tree, spans);
    findFlaps(tree, spans);
  }

  /// Whether any two panels cut or pass through one another in one plane, or a flap sticks out over
  /// a turned edge, at `progress`.
  [[nodiscard]] bool collidesAt(double progress) {
    const double inStages = progress * net_.stageCount();
    const bool between = std::abs(inStages - std::round(inStages)) > 1e-9;
    FoldStep* step = between ? steps_.stage(static_cast<int>(std::ceil(inStages))) : nullptr;
    const auto now = steps_.at(progress);
    if (!now) return false;
    constexpr double kMoment = 1e-3;  // of a stage
    const Pose& placed = now->pose;
    const auto next = steps_.at((inStages + kMoment) / net_.stageCount());
    const Pose& soon = next ? next->pose : placed;
    return std::ranges::any_of(pairs_,
                               [&](const PanelPair& pair) {
                                 const bool moves = step != nullptr && pair.motion.movesIn(*step) &&
                                                    !isMate(pair) &&
                                                    movesBetween(pair, placed, soon);
                                 return cutsAt(pair, placed, moves);
                               }) ||
           std::ranges::any_of(flaps_, [&](const FlapWatch& flap) {
             return std::ranges::any_of(flap.edges, [&](const EdgeWatch& watch) {
               return watch.edge().stage <= inStages &&
                      watch.crossesAt(context_, placed, now->angles);
             });
           });
  }

  /// All problems, or the first `most` of them and perhaps some more.
  Problems run(std::size_t most = std::numeric_limits<std::size_t>::max()) {
    for (int stage = 1; stage <= net_.stageCount(); ++stage) {
      FoldStep* step = steps_.stage(stage);
      if (step == nullptr) break;
      const Pose& end = steps_.stageEnd().pose;
      checkFolds(*step, stage);
      std::erase_if(pairs_, [&](PanelPair& pair) {
        const bool hit = problems_.size() < most && collides(pair, *step, end, stage);
        if (hit) report(pair.a, pair.b, stage);
        return hit;
      });
      for (FlapWatch& flap : flaps_)
        if (problems_.size() < most) watchEdges(flap, *step, end, stage);
      if (problems_.size() >= most) return std::move(problems_);
    }
    if (steps_.problem()) problems_.push_back(*steps_.problem());
    return std::move(problems_);
  }

 private:
  void findPairs(const CreaseTree& tree, const CreaseSpans& spans) {
    const int count = static_cast<int>(net_.panels.size());
    std::set<std::pair<int, int>> joined;
    for (const Crease& crease : net_.creases)
      joined.insert(std::minmax(crease.parent, crease.child));
    for (int a = 0; a < count; ++a)
      for (int b = a + 1; b < count; ++b) {
        if (joined.contains({a, b})) continue;
        PanelPair& pair =
            pairs_.emplace_back(PanelPair{a, b, {net_, spans, tree.path(a, b), a, b}, {}});
        for (const std::size_t i : shapesOf_[at(a)])
          for (const std::size_t k : shapesOf_[at(b)]) pair.watches.emplace_back(i, k);
      }
  }

  /// A locking tongue goes through its target: it has no face to lie on.
  void findFlaps(const CreaseTree& tree, const CreaseSpans& spans) {
    const std::vector<JoinedEdge> edges = joinedEdges(net_);
    for (const Mate& mate : net_.mates) {
      if (mate.method == Method::Lock) continue;
      const int side = mate.face == Face::Inside ? 1 : -1;
      FlapWatch flap{
          &mate, {net_, spans, tree.path(mate.panel, mate.onto), mate.panel, mate.onto}, {}};
      for (const JoinedEdge& edge : edges) {
        if (edge.panel != mate.onto || edge.neighbour == mate.panel) continue;
        if (edge.crease < 0 && edge.frame == mate.panel) continue;
        for (const std::size_t i : shapesOf_[at(mate.panel)])
          flap.edges.emplace_back(net_, edge, i, side);
      }
      flaps_.push_back(std::move(flap));
    }
  }

  void watchEdges(FlapWatch& flap, FoldStep& step, const Pose& end, int stage) {
    const bool bent = bendsIn(net_, stage) || isAllowed(flap.mate->panel, flap.mate->onto, stage);
    std::erase_if(flap.edges, [&](const EdgeWatch& watch) {
      const bool hit =
          (!bent && watch.edge().stage < stage && watch.crosses(context_, flap.motion, step)) ||
          (watch.edge().stage <= stage && watch.crossesAt(context_, end, *step.end));
      if (hit) report(flap.mate->panel, watch.edge().neighbour, stage);
      return hit;
    });
  }

  /// What already lies flat in a stage that goes on elsewhere is on no way through.
  [[nodiscard]] bool movesBetween(const PanelPair& pair, const Pose& before,
                                  const Pose& after) const {
    constexpr double kStill = 1e-6;  // mm
    const auto seenFrom = [&](const Pose& pose, Point p) {
      return pose[at(pair.a)].inverse().apply(pose[at(pair.b)].apply(p));
    };
    return std::ranges::any_of(net_.panels[at(pair.b)].outline, [&](const Point& p) {
      return distance(seenFrom(after, p), seenFrom(before, p)) > kStill;
    });
  }

  [[nodiscard]] bool isMate(const PanelPair& pair) const {
    return std::ranges::any_of(
        net_.mates,
        [&](const Mate& mate) {
          return std::minmax(mate.panel, mate.onto) == std::minmax(pair.a, pair.b);
        });
  }

  /// What moves and lies in one plane, one part over the other, is on its way through.
  [[nodiscard]] bool cutsAt(const PanelPair& pair, const Pose& placed, bool moves) const {
    return std::ranges::any_of(
        pair.watches,
        [&](const PairWatch& watch) {
          return watch.cutsAt(context_, placed) || (moves && watch.meetsAt(context_, placed));
        });
  }

  /// Once for a pair of panels, whatever their parts.
  void report(int a, int b, int stage) {
    if (!reported_.insert(std::pair(std::min(a, b), std::max(a, b))).second) return;
    problems_.push_back({ProblemCode::PanelsCollide,
                         net_.panels[at(a)].id,
                         {net_.panels[at(b)].id, net_.stages[at(stage - 1)]}});
  }

  /// Panels that share a crease meet only when folded farther than flat.
  void checkFolds(const FoldStep& step, int stage) {
    constexpr double kHalfTurn = 180 + 1e-6;
    for (std::size_t i = 0; i < net_.creases.size(); ++i) {
      const double end = std::abs((*step.end)[i].degrees());
      if (end > kHalfTurn && std::abs((*step.start)[i].degrees()) <= kHalfTurn)
        report(net_.creases[i].parent, net_.creases[i].child, stage);
    }
  }

  [[nodiscard]] bool isAllowed(int a, int b, int stage) const {
    return std::ranges::any_of(
        allowed_,
        [&](const AllowedContact& contact) {
          return contact.stage == stage &&
                 std::minmax(contact.panel, contact.other) == std::minmax(a, b);
        });
  }

  bool collides(PanelPair& pair, FoldStep& step, const Pose& end, int stage) {
    if (!pair.motion.movesIn(step)) return false;
    if (bendsIn(net_, stage) || isAllowed(pair.a, pair.b, stage)) {
      for (PairWatch& watch : pair.watches) watch.forget();
      return std::ranges::any_of(
          pair.watches, [&](const PairWatch& watch) { return watch.cutsAt(context_, end); });
    }
    for (PairWatch& watch : pair.watches)
      if (watch.collides(context_, pair.motion, step)) return true;
    return landsOnWrongFace(pair, end, stage);
  }

  /// A mate's flap that came from the face of its target on which it does not lie went through it.
  [[nodiscard]] bool landsOnWrongFace(const PanelPair& pair, const Pose& end, int stage) const {
    for (const Mate& mate : net_.mates) {
      if (std::minmax(mate.panel, mate.onto) != std::minmax(pair.a, pair.b)) continue;
      if (meetingStage(net_, mate) != stage) continue;
      const int stated = mate.face == Face::Inside ? 1 : -1;
      const double facing = dot(end[at(pair.a)].normal(), end[at(pair.b)].normal());
      const int flip = mate.onto == pair.a ? 1 : facing > 0 ? -1 : 1;
      for (const PairWatch& watch : pair.watches)
        if (watch.side() * flip * stated < 0 && watch.restsAt(context_, end)) return true;
    }
    return false;
  }

  const Net& net_;
  FoldSteps steps_;
  std::vector<ConvexShape> shapes_;
  PairWatch::Context context_;
  std::vector<AllowedContact> allowed_;
  std::vector<std::vector<std::size_t>> shapesOf_;  // by panel, indices into shapes_
  std::vector<PanelPair> pairs_;
  std::vector<FlapWatch> flaps_;
  std::set<std::pair<int, int>> reported_;
  Problems problems_;
};

}  // namespace

Problems checkFoldPath(const Net& net, double caliper) {
  return PathCheck(net, caliper + kMateSlack).run();
}

bool foldPathMeets(const Net& net, double caliper, std::size_t many) {
  return PathCheck(net, caliper + kMateSlack).run(many).size() >= many;
}

bool collidesAt(const Net& net, double caliper, double progress) {
  return PathCheck(net, caliper + kMateSlack).collidesAt(progress);
}

}  // namespace creasewright
