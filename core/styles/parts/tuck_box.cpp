#include "styles/parts/tuck_box.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "styles/parameter_rows.h"
#include "styles/parts/needs.h"

namespace creasewright {
namespace {

/// Set back on the side where the tuck flap swings in, a little on the other. The crease runs from
/// the lid's hinge (x = 0) to the tuck's wall; `mirrored` swaps them.
Shape dustFlap(const TuckBox& b, bool mirrored) {
  const double d = b.dustDepth();
  const double w = b.width;
  const double relief = b.dustRelief();
  const double shoulder = std::min(relief, d / 2);
  const double back = std::min(2.0, w / 8);
  Polygon outline{{0, 0}, {w, 0}, {w - relief, shoulder}, {w - relief, d}, {back, d}};
  if (mirrored) {
    for (Point& p : outline) p.x = w - p.x;
    std::ranges::reverse(outline);
    std::ranges::rotate(outline, outline.begin() + 3);  // start at the crease again
  }
  return {outline, {"inner", "side", "side", "side", "side"}};
}

/// Where the lid hinges, in the middle of the opening: the back may lack a caliper on its seam
/// side.
HingeAt lidHinge(const TuckBox& b, const TuckEnd& end) {
  const bool bottom = end.end == BoxEnd::Bottom;
  if (end.lidOn == LidOn::Front) return {"front", bottom ? "bottom" : "top", b.t, b.lidLength()};
  return {"front/left/back", backEdge(end.end), bottom ? b.fromSeam() : b.t, b.lidLength()};
}

}  // namespace

TuckBox::TuckBox(const Parameters& p, const Workbench& bench)
    : length(p.mm("length")),
      width(p.mm("width")),
      height(p.mm("height")),
      tuck(p.mm("tuck")),
      seam(p.mm("seam")),
      t(bench.caliper.mm()),
      // A hand tool cannot score a caliper's difference.
      lidDepth(bench.grid.isNone() ? width - t : width),
      backLength(bench.grid.isNone() ? length - t : length) {}

double TuckBox::dustDepth() const { return std::min(length / 2 - t, std::max(tuck, width / 2)); }

double TuckBox::dustRelief() const {
  const double swing = width - std::sqrt(width * width - tuck * tuck);
  return std::clamp(swing, 1.0, width / 2);
}

double TuckBox::notchRadius() const { return std::min({8.0, length / 6, height / 6, tuck / 2}); }

// The walls' frames have x up on the left and on the back, x down on the right.
std::string_view leftEdge(BoxEnd end) { return end == BoxEnd::Bottom ? "left" : "right"; }
std::string_view backEdge(BoxEnd end) { return leftEdge(end); }
std::string_view rightEdge(BoxEnd end) { return end == BoxEnd::Bottom ? "right" : "left"; }

Shape frontWall(const TuckBox& b) {
  Shape shape = rectangle(b.length, b.height);
  shape.edges = {"bottom", "right", "top", "left"};
  return shape;
}

Shape backWall(const TuckBox& b) { return rectangle(b.height, b.backLength); }

void addWalls(NetBuilder& net, const TuckBox& b, Shape front, Shape back, int stage) {
  const HingeFold early{90, stage - 1};
  const HingeFold late{90, stage};
  addWalls(net, b, std::move(front), std::move(back), {late, early, early, late});
}

void addWalls(NetBuilder& net, const TuckBox& b, Shape front, Shape back, WallFolds folds) {
  const double taper =
      std::min(b.seam * std::tan(Angle::degrees(15).radians()) + b.t, b.height / 4);
  net.root("front", std::move(front))
      .hinge({"front", "left"}, "front/left", rectangle(b.height, b.width), std::move(folds.left))
      .hinge({"front/left", "outer"}, "front/left/back", std::move(back), std::move(folds.back))
      .hinge({"front/left/back", "outer"}, "front/left/back/seam",
             trapezoid(b.height, b.seam, taper, taper), std::move(folds.seam))
      .hinge({"front", "right"}, "front/right", rectangle(b.height, b.width),
             std::move(folds.right))
      .mate("front/left/back/seam", "front/right", Face::Inside, Method::Glue, true)
      .showing({"front", "front/left", "front/left/back", "front/right"});
}

void addTuckEnd(NetBuilder& net, const TuckBox& b, const TuckEnd& end) {
  const std::string name = end.end == BoxEnd::Bottom ? "bottom" : "top";
  const HingeAt hinge = lidHinge(b, end);
  const std::string lid = std::string(hinge.panel) + '/' + name + "-lid";
  const std::string leftDust = "front/left/" + name + "-dust-flap";
  const std::string rightDust = "front/right/" + name + "-dust-flap";
  const bool leftMirrored = (end.end == BoxEnd::Bottom) == (end.lidOn == LidOn::Back);
  const double radius = std::min(std::clamp(b.tuck - 4, 0.5, 10.0), b.lidLength() / 4);
  net.hinge({"front/left", leftEdge(end.end)}, leftDust, dustFlap(b, leftMirrored),
            {90, end.dustStage});
  net.hinge({"front/right", rightEdge(end.end)}, rightDust, dustFlap(b, !leftMirrored),
            {90, end.dustStage});
  net.hinge(hinge, lid, rectangle(b.lidLength(), b.lidDepth), {90, end.lidStage});
  net.hinge({lid, "outer"}, lid + "/tuck", roundedFlap(b.lidLength(), b.tuck, radius),
            {90, end.tuckStage});
  net.mate(lid + "/tuck", end.lidOn == LidOn::Back ? "front" : "front/left/back", Face::Inside,
           Method::Tuck, true);
  net.mate(leftDust, lid, Face::Inside, Method::Rest, true);
  net.mate(rightDust, lid, Face::Inside, Method::Rest, true);
  net.bends(end.lidStage, BendCode::TuckSlidesIn);
  net.showing({lid});
}

Cavity insideOf(const TuckBox& b) {
  return {"front", {b.length / 2, b.height / 2, b.width / 2}, {0, 2, 1}};
}

std::vector<ParameterSpec> tuckBoxParameters() {
  const Limit smallest = greatest(mm(16), calipers(20));
  const Length gap = mm(3);
  return {
      measure("length", worded("styles", "Length"),
              worded("styles", "The longer side of the opening."))
          .standard(mm(60))
          .from(smallest)
          .to(kLargestSide),
      measure("width", worded("styles", "Width"),
              worded("styles", "The shorter side of the opening. At least the tuck flap and 3 mm."))
          .standard(mm(35))
          .from(greatest(smallest, plus(smallestFlap(), gap)))
          .to(kLargestSide),
      measure("height", worded("styles", "Height"),
              worded("styles", "From lid to lid. The two tuck flaps must not meet."))
          .standard(mm(120))
          .from(smallest)
          .to(kLargestSide),
      measure("tuck", worded("styles", "Tuck flap"),
              worded("styles", "Goes in behind the front, at most 3 mm less than the width."))
          .standard(Length::inches(5, 8))
          .from(greatest(mm(8), smallestFlap()))
          .to(least(otherPlus("width", -gap), partOf("height", 2)))
          .givesWay(),
      measure("seam", worded("styles", "Glue seam"),
              worded("styles", "Joins the back to the right wall, narrower than the width."))
          .standard(Length::inches(1, 2))
          .from(smallestFlap())
          .to(otherPlus("width", -gap))
          .givesWay()};
}

StyleNeeds tuckBoxNeeds(std::int64_t tuckFlapsOnWidth) {
  return holding({"length", 2}, {"width", 1 + tuckFlapsOnWidth}, {"height", 3});
}

ParameterSpec thumbNotchParameter(Worded hint) {
  return toggle("thumb-notch", worded("styles", "Thumb notch"), hint);
}

NetWords tuckEndWords() {
  return {.stages = {{"bottom-dust-flaps", worded("stages", "fold in the bottom dust flaps"),
                      worded("stages", "Fold both bottom dust flaps in.")},
                     {"bottom-tuck", worded("stages", "fold the bottom tuck flap"),
                      worded("stages", "Fold the tuck flap of the bottom inwards.")},
                     {"bottom-lid", worded("stages", "close the bottom lid"),
                      worded("stages", "Close the bottom and tuck its flap in.")},
                     {"top-dust-flaps", worded("stages", "fold in the top dust flaps"),
                      worded("stages", "Fold both top dust flaps in.")},
                     {"top-tuck", worded("stages", "fold the top tuck flap"),
                      worded("stages", "Fold the tuck flap of the lid inwards.")},
                     {"top-lid", worded("stages", "close the top lid"),
                      worded("stages", "Close the lid and tuck its flap in.")}},
          .panels = {{"top-lid", worded("panels", "top lid")},
                     {"bottom-lid", worded("panels", "bottom lid")},
                     {"top-dust-flap", worded("panels", "top dust flap")},
                     {"bottom-dust-flap", worded("panels", "bottom dust flap")}}};
}

}  // namespace creasewright
