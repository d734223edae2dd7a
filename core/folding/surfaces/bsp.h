#pragma once

#include <memory>
#include <vector>

#include "folding/surfaces/plate.h"

namespace creasewright {

/// A binary space partition of plane plates: splits them so that for every orthographic view they
/// can be painted back to front. Plates within `tolerance` mm of one plane share a node.
class Bsp {
 public:
  Bsp(std::vector<Plate> plates, double tolerance);

  /// The plates' parts, the farthest first; pointers live as long as the tree. `towardsEye` is a
  /// direction; coplanar parts come in the order of liesOver().
  [[nodiscard]] std::vector<const Plate*> backToFront(Point3 towardsEye) const;

 private:
  struct Node {
    Point3 normal;
    std::vector<Plate> coplanar;
    std::unique_ptr<Node> front;
    std::unique_ptr<Node> back;
  };
  static std::unique_ptr<Node> build(std::vector<Plate> plates, double tolerance);
  static void walk(const Node* node, Point3 towardsEye, std::vector<const Plate*>& out);
  std::unique_ptr<Node> root_;
};

}  // namespace creasewright
