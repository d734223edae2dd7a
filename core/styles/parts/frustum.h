#pragma once

#include <string>

#include "net/net_builder.h"
#include "styles/style.h"

namespace creasewright {

/// The walls of a prism, cup or pyramid over a regular polygon, with a glued seam and a base. mm
/// and degrees. Formulas: right pyramidal frustum, from any handbook of solid geometry (the tests
/// derive them from coordinates).
struct Frustum {
  int sides;
  double bottom, top;  ///< edge lengths of the base and of the opening
  double height;       ///< upright, not along the wall
  double seam;         ///< depth of the glue seam
  double tab;          ///< depth of the base's glue tabs

  /// How far the wall leans inwards from bottom to top, negative for a cup.
  [[nodiscard]] double lean() const;
  /// Between base and wall, inside: 90 for a prism.
  [[nodiscard]] double slope() const;
  /// Height of a wall along its middle.
  [[nodiscard]] double slant() const;
  /// Length of the crease between two walls.
  [[nodiscard]] double ridge() const;
  /// Fold between two walls: sin(fold / 2) = sin(slope) sin(180 / n).
  [[nodiscard]] double seamFold() const;
  /// Each wall turns against the one before it by so much in the flat net.
  [[nodiscard]] double fanAngle() const;
  /// Degrees at the ends of the base's tabs: two on neighbouring edges do not meet, neither folded
  /// nor flat beside the base.
  [[nodiscard]] double tabTaper() const;
  /// Tabs that deep keep a fifth of their edge.
  [[nodiscard]] double deepestTab() const;
};

/// A wall standing on its bottom edge; edges `bottom`, `right`, `top`, `left`.
Shape frustumWall(const Frustum& frustum);

/// Adds the root `wall-1` and to its right `wall-2` .. `wall-n` with the `seam` glued inside the
/// first. Seam and walls fold in the stage before `stage`, in which only the second wall folds and
/// brings the seam round into the first.
void addFrustumWalls(NetBuilder& net, const Frustum& frustum, int stage);

/// Adds a `tab` under every wall but the first, and the `base` under the first that closes over
/// them.
void addFrustumBase(NetBuilder& net, const Frustum& frustum, int tabStage, int baseStage);

/// The space above the base up to the rim; the product's length lies along the first wall.
Cavity insideOf(const Frustum& frustum);

std::string wallName(int number);

}  // namespace creasewright
