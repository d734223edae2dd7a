#pragma once

#include <vector>

#include "folding/motion/separation.h"

namespace creasewright {

/// Where points lie that a crease turns: no farther than `reach` from its line, and between `low`
/// and `high` along it, measured from where it begins. All in mm.
struct Swath {
  double reach = 0;
  double low = 0;
  double high = 0;
};

/// The creases of a net as lines on their panels, which no folding changes.
class CreaseSpans {
 public:
  explicit CreaseSpans(const Net& net);

  /// Where the corners of a panel lie that is joined by the crease.
  [[nodiscard]] const Swath& corners(int panel, int crease) const;
  /// Where points are as the crease `to` of the panel sees them, when the crease `from` of the same
  /// panel sees them in `seen` and may turn them as it likes.
  [[nodiscard]] Swath seenFrom(int panel, const Swath& seen, int from, int to) const;

 private:
  struct Line {
    Point start;
    Point along;  // length 1
  };
  struct Span {
    Line onParent;
    Swath ofParent;
    Swath ofChild;
  };
  [[nodiscard]] Line lineOn(int panel, int crease) const;

  const Net* net_;
  std::vector<Span> spans_;  // by crease
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
    double reachA;  // mm from its line to the farthest corner of a, however the rest is folded
    double reachB;
  };
  [[nodiscard]] double stray(const FoldStep& step, bool ofB) const;

  std::size_t a_;
  std::size_t b_;
  std::vector<Hinge> hinges_;  // from a to b
};

}  // namespace creasewright
