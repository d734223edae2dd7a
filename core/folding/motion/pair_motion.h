#pragma once

#include <vector>

#include "folding/motion/crease_path.h"
#include "folding/motion/separation.h"

namespace creasewright {

/// How two panels of a net can move against one another.
class PairMotion {
 public:
  PairMotion(const Net& net, const CreaseTree& tree, int a, int b);

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
