#include <algorithm>

#include "edits/kinds/cut_shapes.h"
#include "edits/kinds/kinds.h"
#include "edits/kinds/panel_site.h"
#include "edits/kinds/place_measures.h"

namespace creasewright {
namespace {

constexpr int kBows = 12;  // of a scalloped opening

std::vector<EditMeasure> withPlace(std::vector<EditMeasure> measures) {
  addPlace(measures);
  return measures;
}

EditMeasure directionMeasure() {
  return editChoice("direction", worded("styles", "Direction"),
                    worded("styles", "As the net is drawn on the sheet."),
                    {worded("styles", "Across"), worded("styles", "Up")});
}

Polygon openingShape(const Parameters& m) {
  const double width = m.mm("width");
  const double height = m.mm("height");
  const double least = std::min(width, height);
  switch (m.count("shape")) {
    case 1:
      return ellipse({0, 0}, least / 2, least / 2);
    case 2:
      return ellipse({0, 0}, width / 2, height / 2);
    case 3:
      return cutHeart(width, height);
    case 4:
      return cutStar(width, height);
    case 5:
      return cutScallop(width, height, kBows);
    case 6:
      return cutArch(width, height);
    default:
      return cutRectangle(width, height, m.mm("radius"));
  }
}

std::optional<ProblemCode> applyOpening(const EditSite& site) {
  Polygon shape = openingShape(site.measures);
  for (std::int64_t i = 0; i < site.measures.count("turn"); ++i)
    for (Point& p : shape) p = turnLeft(p);
  return cutOpening(site, shape);
}

/// From the middle of a place, along the direction that is chosen.
struct PanelLine {
  Point middle;
  Point along;
};

PanelLine placedLine(const EditSite& site, double length, double breadth) {
  const DrawnPanel panel(site.net, site.panel);
  const bool up = site.measures.count("direction") == 1;
  const Point along = up ? Point{0, 1} : Point{1, 0};
  return {
      up ? placedMiddle(site, panel, breadth, length) : placedMiddle(site, panel, length, breadth),
      along};
}

std::optional<ProblemCode> applySlit(const EditSite& site) {
  const double length = site.measures.mm("length");
  const PanelLine line = placedLine(site, length, 0);
  return cutSlit(site, line.middle - line.along * (length / 2),
                 line.middle + line.along * (length / 2));
}

std::optional<ProblemCode> applySlitPair(const EditSite& site) {
  const double length = site.measures.mm("length");
  const double gap = site.measures.mm("gap");
  const PanelLine line = placedLine(site, length, gap);
  for (const double side : {-gap / 2, gap / 2}) {
    const Point middle = line.middle + turnLeft(line.along) * side;
    if (const auto fault =
            cutSlit(site, middle - line.along * (length / 2), middle + line.along * (length / 2)))
      return fault;
  }
  return std::nullopt;
}

std::optional<ProblemCode> applyHanging(const EditSite& site) {
  const Parameters& m = site.measures;
  if (m.mm("height") >= m.mm("width")) return ProblemCode::EditUnfit;
  return cutOpening(site, cutHangingSlot(m.mm("width"), m.mm("height"), m.mm("hole")));
}

std::optional<ProblemCode> applyHoles(const EditSite& site) {
  const Parameters& m = site.measures;
  const double across = m.mm("across");
  const auto count = m.count("count");
  const double row = m.mm("spacing") * static_cast<double>(count - 1);
  const DrawnPanel panel(site.net, site.panel);
  const PanelLine line = placedLine(site, row + across, across);
  for (std::int64_t i = 0; i < count; ++i) {
    const Point at =
        line.middle + line.along * (m.mm("spacing") * static_cast<double>(i) - row / 2);
    Polygon hole = ellipse(panel.own(at), across / 2, across / 2);
    if (!liesOnCard(site, hole)) return ProblemCode::EditUnfit;
    std::ranges::reverse(hole);
    site.on().openings.push_back(std::move(hole));
  }
  return std::nullopt;
}

}  // namespace

EditKind openingEdit() {
  return {
      "opening",
      worded("styles", "Opening"),
      worded("styles", "A hole in a panel, in one of seven shapes."),
      EditPlace::Panel,
      withPlace(
          {editChoice(
               "shape", worded("styles", "Shape"),
               worded("styles", "A circle is as wide as its smaller measure."),
               {worded("styles", "Rectangle"), worded("styles", "Circle"), worded("styles", "Oval"),
                worded("styles", "Heart"), worded("styles", "Star"), worded("styles", "Scallop"),
                worded("styles", "Arch")}),
           editLength("width", worded("styles", "Width"),
                      worded("styles", "Such as panel-width - 2 * 6 mm."), "panel-width / 2",
                      mm(2)),
           editLength("height", worded("styles", "Height"),
                      worded("styles", "Such as panel-height / 3."), "panel-height / 2", mm(2)),
           editLength("radius", worded("styles", "Corner radius"),
                      worded("styles", "Of a rectangle; 0 for sharp corners."), "3 mm", Length()),
           editChoice("turn", worded("styles", "Turned"),
                      worded("styles", "Against the clock, as the net is drawn."),
                      {worded("styles", "Not"), worded("styles", "Quarter"),
                       worded("styles", "Half"), worded("styles", "Three quarters")})}),
      applyOpening};
}

EditKind slitEdit() {
  return {"slit",
          worded("styles", "Slit"),
          worded("styles", "One straight cut in a panel, such as for a tab or a card."),
          EditPlace::Panel,
          withPlace({editLength("length", worded("styles", "Length"),
                                worded("styles", "Of the cut."), "panel-width / 3", mm(3)),
                     directionMeasure()}),
          applySlit};
}

EditKind slitPairEdit() {
  return {"slit-pair",
          worded("styles", "Pair of slits"),
          worded("styles", "Two cuts side by side, such as for a ribbon or a strap."),
          EditPlace::Panel,
          withPlace({editLength("length", worded("styles", "Length"),
                                worded("styles", "Of each cut."), "12 mm", mm(3)),
                     editLength("gap", worded("styles", "Gap"),
                                worded("styles", "Between the two cuts."), "10 mm", mm(3)),
                     directionMeasure()}),
          applySlitPair};
}

EditKind hangingEdit() {
  return {"hanging-slot",
          worded("styles", "Hanging slot"),
          worded("styles", "A slot with a round hole in its middle, to hang the box on a hook."),
          EditPlace::Panel,
          withPlace({editLength("width", worded("styles", "Width"),
                                worded("styles", "Of the slot."), "30 mm", mm(8)),
                     editLength("height", worded("styles", "Height"),
                                worded("styles", "Of the slot."), "5 mm", mm(2)),
                     editLength("hole", worded("styles", "Hole"),
                                worded("styles", "Across the round hole."), "8 mm", mm(2))}),
          applyHanging};
}

EditKind holesEdit() {
  return {"holes",
          worded("styles", "Punched holes"),
          worded("styles", "One round hole, a pair, or a row of them."),
          EditPlace::Panel,
          withPlace({editLength("across", worded("styles", "Across"),
                                worded("styles", "Of each hole."), "5 mm", mm(1), mm(100)),
                     editCount("count", worded("styles", "Number"), worded("styles", "Of holes."),
                               "1", 1, 100),
                     editLength("spacing", worded("styles", "Spacing"),
                                worded("styles", "From middle to middle."), "12 mm", mm(2)),
                     directionMeasure()}),
          applyHoles};
}

}  // namespace creasewright
