#pragma once

#include "net/net_builder.h"
#include "styles/net_words.h"
#include "styles/parts/four_walls.h"

namespace creasewright {

/// A roof on four walls whose ends fold in: over each side a triangle with its apex on the ridge
/// score, and two corner triangles that come to lie under the roof. Angles in degrees, mm. Derived
/// from where the apex must come to lie, half a width inwards at the height of the ridge; the tests
/// hold tabled values beside them.
struct GableRoof {
  double width;  ///< of the sides
  double slant;  ///< of a roof panel, from the wall to the ridge

  /// Of the roof above the ground: cos = width / (2 slant).
  [[nodiscard]] double slope() const;
  /// Between side triangle and corner triangle: cos = -cos(slope)^2; a mountain fold.
  [[nodiscard]] double diagonalFold() const;
  /// Height of the ridge over the walls.
  [[nodiscard]] double rise() const;
};

/// Stages in which the roof's seam and the roof fold, and how wide the flap of its seam is (mm).
struct GableFold {
  int seamStage = 1;
  int roofStage = 1;
  double seam = 0;
};

/// As the wall's seam, at most half as wide as the sides where the card's thickness allows.
double roofSeam(const FourWalls& walls, double caliper);

/// Adds `front/roof`, `back/roof`, `left/left-gable`, `right/right-gable` and the corners
/// `<side>/<side>-gable/front-corner`, `<side>/<side>-gable/back-corner`; corners and roof close
/// loops, but for the one at the sheet's end, whose `roof-seam` is glued to the front's roof. Every
/// corner's edge along the ridge is called `ridge`, the roofs' `top`.
void addGableRoof(NetBuilder& net, const FourWalls& walls, const GableRoof& roof,
                  const GableFold& fold);

/// Words of the stages and panels that these parts bring.
NetWords gableWords();

}  // namespace creasewright
