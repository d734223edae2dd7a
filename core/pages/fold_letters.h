#pragma once

#include <optional>
#include <vector>

#include "folding/surfaces/scene.h"
#include "guide/guide.h"

namespace creasewright {

/// A letter on a panel in the figure of a fold stage; the words of the step call it so.
struct PanelLetter {
  int panel = 0;  ///< of a bent one the first strip (wholePanels)
  char letter = 'a';
  Point at;  ///< middle of its disc in the picture, mm
  /// Where the panel is too small for the disc: the point on it from which a line leads there.
  std::optional<Point> from = {};
};

/// Radius of a letter's disc, as a share of the larger side of its picture.
inline constexpr double kLetterShare = 0.035;

/// The panels that the words of a fold stage tell one by one, each once: those that fold, then
/// flaps and what they are joined to. Of bent panels the first strips.
std::vector<int> panelsTold(const Net& net, const Step& step);

/// Letters for those of `panels` that show in the picture, a, b, c .. in the order of `panels`.
/// Each lies on its panel, clear of the panel's edges and of what is painted over it; or beside the
/// picture at the end of a line. They keep clear of one another and of the ends of `ways`, where
/// the arrows have their heads. `picture` shows `net`.
std::vector<PanelLetter> placeLetters(const Net& net, const FoldPicture& picture,
                                      const std::vector<int>& panels,
                                      const std::vector<Polyline>& ways);

}  // namespace creasewright
