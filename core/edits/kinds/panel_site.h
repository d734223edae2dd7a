#pragma once

#include <optional>

#include "edits/kinds/edit_kind.h"
#include "geometry/region.h"

namespace creasewright {

/// A panel as it is drawn on the sheet, turned there by whole quarters: left, right, top and bottom
/// of an edit are those of the drawing.
class DrawnPanel {
 public:
  DrawnPanel(const Net& net, int panel);

  [[nodiscard]] const Bounds& box() const { return box_; }
  /// From the drawing to the panel's own frame.
  [[nodiscard]] Point own(Point drawn) const;
  [[nodiscard]] Point drawn(Point own) const;

 private:
  int quarters_ = 0;
  Bounds box_;
};

/// Where the middle of what `x-from`, `x`, `y-from` and `y` place lies, for something `width` by
/// `height` mm as drawn.
Point placedMiddle(const EditSite& site, const DrawnPanel& panel, double width, double height);

/// The measures that place something on a panel.
void addPlace(std::vector<EditMeasure>& measures);

/// Whether `cut` (panel's own frame) lies on bare card, clear of edges, openings and slits.
bool liesOnCard(const EditSite& site, const Polygon& cut);

/// Cuts an opening given as drawn round its middle.
std::optional<ProblemCode> cutOpening(const EditSite& site, const Polygon& drawn);
/// Cuts a slit given as drawn.
std::optional<ProblemCode> cutSlit(const EditSite& site, Point from, Point to);

}  // namespace creasewright
