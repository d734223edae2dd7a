#pragma once

#include <string>
#include <vector>

#include "net/net_builder.h"
#include "styles/style.h"

namespace creasewright {

/// Measures of a box of four walls with a glued seam, made for tuck ends; mm, t is the caliper.
struct TuckBox {
  double length, width, height, tuck, seam, t;
  double lidDepth;  ///< the tuck flap lies inside its wall

  TuckBox(const Parameters& parameters, const Workbench& bench);

  double backLength;  ///< it carries the seam, which lies inside the right wall: a caliper less
  /// Where a lid two calipers narrower than the opening starts on the back's edge, from the seam.
  [[nodiscard]] double fromSeam() const { return backLength - lidLength() - t; }
  /// Two calipers narrower than its opening (common practice, no published source).
  [[nodiscard]] double lidLength() const { return length - 2 * t; }
  /// Two dust flaps share one opening.
  [[nodiscard]] double dustDepth() const;
  /// A tuck flap held upright swings this far in front of its resting place: D - sqrt(D^2 - d^2)
  /// for lid depth D and tuck depth d (from the circle the crease moves on).
  [[nodiscard]] double dustRelief() const;
  [[nodiscard]] double notchRadius() const;
};

enum class BoxEnd { Bottom, Top };
enum class LidOn { Back, Front };

/// One end closed by two dust flaps and a lid whose tuck flap goes in behind the other long wall;
/// the stages in which they fold.
struct TuckEnd {
  BoxEnd end;
  LidOn lidOn;
  int dustStage, tuckStage, lidStage;
};

/// Panel ids: `front` (root), `front/left`, `front/left/back`, `front/left/back/seam`,
/// `front/right`. The front's edges are `bottom`, `right`, `top`, `left`; the back's lower edge is
/// `left`, its upper one `right`.
Shape frontWall(const TuckBox& box);
Shape backWall(const TuckBox& box);
/// Seam, back, left wall, front and right wall from left to right. Back and seam fold in
/// the stage before `stage`, so that the right wall comes round a wide seam from outside.
void addWalls(NetBuilder& net, const TuckBox& box, Shape front, Shape back, int stage);

/// How the walls fold: `left` and `right` against the front, the back against the left wall, and
/// the seam against the back.
struct WallFolds {
  HingeFold left, back, seam, right;
};
void addWalls(NetBuilder& net, const TuckBox& box, Shape front, Shape back, WallFolds folds);
/// Adds `<end>-dust-flap` to both side walls and `<end>-lid` with its `tuck`.
void addTuckEnd(NetBuilder& net, const TuckBox& box, const TuckEnd& end);

/// Edge of the left wall, the back or the right wall that lies at an end of the box.
std::string_view leftEdge(BoxEnd end);
std::string_view backEdge(BoxEnd end);
std::string_view rightEdge(BoxEnd end);

/// The space between the walls, the product standing on the bottom.
Cavity insideOf(const TuckBox& box);

/// `length`, `width`, `height`, `tuck` and `seam`.
std::vector<ParameterSpec> tuckBoxParameters();
/// Each wall takes half a caliper on either side, the seam on the length and tuck flaps on the
/// width one more each; at both ends something lies under the lid.
StyleNeeds tuckBoxNeeds(std::int64_t tuckFlapsOnWidth = 1);
ParameterSpec thumbNotchParameter(Worded hint);

/// Words of the stages and panels that these parts bring.
NetWords tuckEndWords();

}  // namespace creasewright
