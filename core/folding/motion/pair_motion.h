#pragma once

#include <vector>

#include "folding/motion/separation.h"

namespace creasewright {

/// How far creases of a net are apart on their panels, which no folding changes.
class CreaseSpans {
 public:
  explicit CreaseSpans(const Net& net);

  /// mm from the middle of a panel's crease to the panel's farthest corner.
  [[nodiscard]] double farthest(int panel, int crease) const;
  /// mm between the middles of two creases of a panel.
  [[nodiscard]] double between(int panel, int one, int other) const;

 private:
  struct Span {
    double farthestOfParent = 0;
    double farthestOfChild = 0;
    double toParents = 0;  // to the crease that places the parent
  };
  const Net* net_;
  std::vector<Span> spans_;  // by crease
  std::vector<int> places_;  // by panel: the crease that places it, -1 the root
};

/// How two panels of a net can move against one another.
class PairMotion {
 public:
  /// `path` are the creases between the two (CreaseTree::path).
  PairMotion(const Net& net, const CreaseSpans& spans, const std::vector<int>& path, int a, int b);

  /// Whether a stage turns a crease between the two; creases that follow loops may turn in any.
  [[nodiscard]] bool movesIn(const FoldStep& step) const;
  [[nodiscard]] RelativeMotion during(const FoldStep& step) const;
  /// The most mm that any corner of the one moves, seen from the other, in half the step.
  [[nodiscard]] double most(const FoldStep& step) const;
  /// The most mm that any corner of a moves, seen from b, in half the step.
  [[nodiscard]] double mostOfA(const FoldStep& step) const;

 private:
  struct Hinge {
    std::size_t crease;
    double reachA;  // mm from the hinge to the farthest corner of a, however the rest is folded
    double reachB;
  };
  [[nodiscard]] double stray(const FoldStep& step, bool ofB) const;

  std::size_t a_;
  std::size_t b_;
  std::vector<Hinge> hinges_;  // from a to b
};

}  // namespace creasewright
