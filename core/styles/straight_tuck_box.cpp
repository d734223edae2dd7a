#include <algorithm>
#include <cmath>

#include "net/net_builder.h"
#include "styles/library.h"
#include "styles/limits.h"

namespace creasewright {
namespace {

/// All measures in mm; t is the card's caliper.
struct Tuck {
  double length, width, height, tuck, seam, t;
  double lidDepth;
  bool notch;

  Tuck(const Parameters& p, const Making& making)
      : length(p.mm("length")),
        width(p.mm("width")),
        height(p.mm("height")),
        tuck(p.mm("tuck")),
        seam(p.mm("seam")),
        t(making.caliper.mm()),
        // The tuck flap lies inside the front. A hand tool cannot score a caliper's difference.
        lidDepth(making.grid.isNone() ? width - t : width),
        notch(p.flag("thumb-notch")) {}

  /// The back carries the seam, which lies inside the right wall.
  [[nodiscard]] double backLength() const { return length - t; }
  [[nodiscard]] double lidLength() const { return length - 2 * t; }
  /// Two dust flaps share one opening.
  [[nodiscard]] double dustDepth() const {
    return std::min(length / 2 - t, std::max(tuck, width / 2));
  }
  /// A tuck flap held upright swings this far in front of its resting place: D - sqrt(D^2 - d^2)
  /// for lid depth D and tuck depth d (from the circle the crease moves on).
  [[nodiscard]] double dustRelief() const {
    const double swing = width - std::sqrt(width * width - tuck * tuck);
    return std::clamp(swing, 1.0, width / 2);
  }
};

enum Stage { Walls = 1, BottomDust, BottomTuck, BottomLid, TopDust, TopTuck, TopLid };

/// A wall whose top and bottom edge may carry a half-round thumb notch.
Shape front(const Tuck& b) {
  const double l = b.length;
  const double h = b.height;
  if (!b.notch) return {{{0, 0}, {l, 0}, {l, h}, {0, h}}, {"bottom", "right", "top", "left"}};
  const double r = std::min({8.0, l / 6, h / 6, b.tuck / 2});
  Shape shape{{{0, 0}}, {}};
  const auto add = [&shape](const Polyline& points, const char* edge) {
    for (const Point& p : points) {
      shape.edges.emplace_back(edge);
      shape.outline.push_back(p);
    }
  };
  add({{l / 2 - r, 0}}, "bottom");
  add(arc({l / 2 - r, 0}, {l / 2, 0}, -180), "bottom-notch");
  add({{l, 0}}, "bottom");
  add({{l, h}}, "right");
  add({{l / 2 + r, h}}, "top");
  add(arc({l / 2 + r, h}, {l / 2, h}, -180), "top-notch");
  add({{0, h}}, "top");
  shape.edges.emplace_back("left");
  return shape;
}

/// Set back at the front so that the tuck flap can swing in, a little at the back. The crease runs
/// from the back corner (x = 0) to the front corner; `mirrored` swaps them.
Shape dustFlap(const Tuck& b, bool mirrored) {
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

struct End {
  std::string name;       // top or bottom
  const char* leftEdge;   // of the left wall
  const char* rightEdge;  // of the right wall
  const char* backEdge;
  double lidStart;  // along the back's edge
  bool leftMirrored;
  int dust, tuck, lid;
};

void addEnd(NetBuilder& net, const Tuck& b, const End& end) {
  const std::string lid = "front/left/back/" + end.name + "-lid";
  const std::string leftDust = "front/left/" + end.name + "-dust-flap";
  const std::string rightDust = "front/right/" + end.name + "-dust-flap";
  const double radius = std::clamp(b.tuck - 4, 0.5, 10.0);
  net.hinge({"front/left", end.leftEdge}, leftDust, dustFlap(b, end.leftMirrored), {90, end.dust});
  net.hinge({"front/right", end.rightEdge}, rightDust, dustFlap(b, !end.leftMirrored),
            {90, end.dust});
  net.hinge({"front/left/back", end.backEdge, end.lidStart, b.lidLength()}, lid,
            rectangle(b.lidLength(), b.lidDepth), {90, end.lid});
  net.hinge({lid, "outer"}, lid + "/tuck",
            roundedFlap(b.lidLength(), b.tuck, std::min(radius, b.lidLength() / 4)),
            {90, end.tuck});
  net.mate(lid + "/tuck", "front", Face::Inside, Method::Tuck, true);
  net.mate(leftDust, lid, Face::Inside, Method::Rest, true);
  net.mate(rightDust, lid, Face::Inside, Method::Rest, true);
}

/// Seam, back, left wall, front, right wall from left to right; both lids on the back.
std::vector<Piece> buildBox(const Parameters& parameters, const Making& making) {
  const Tuck b(parameters, making);
  const double taper =
      std::min(b.seam * std::tan(Angle::degrees(15).radians()) + b.t, b.height / 4);
  NetBuilder net({"walls", "bottom-dust-flaps", "bottom-tuck", "bottom-lid", "top-dust-flaps",
                  "top-tuck", "top-lid"});
  net.root("front", front(b))
      .hinge({"front", "left"}, "front/left", rectangle(b.height, b.width), {90, Walls})
      .hinge({"front/left", "outer"}, "front/left/back", rectangle(b.height, b.backLength()),
             {90, Walls})
      .hinge({"front/left/back", "outer"}, "front/left/back/seam",
             trapezoid(b.height, b.seam, taper, taper), {90, Walls})
      .hinge({"front", "right"}, "front/right", rectangle(b.height, b.width), {90, Walls})
      .mate("front/left/back/seam", "front/right", Face::Inside, Method::Glue, true);
  // The walls' frames have x up on the left and x down on the right.
  addEnd(net, b, {"bottom", "left", "right", "left", 0, true, BottomDust, BottomTuck, BottomLid});
  addEnd(net, b, {"top", "right", "left", "right", b.t, false, TopDust, TopTuck, TopLid});
  net.showing({"front", "front/left", "front/left/back", "front/right",
               "front/left/back/bottom-lid", "front/left/back/top-lid"});
  return {
      {"box", net.take(), Cavity{"front", {b.length / 2, b.height / 2, b.width / 2}, {0, 2, 1}}}};
}

/// Each wall takes half a caliper on either side, the seam and the tuck flaps one more, and at both
/// ends a dust flap lies under the lid.
std::vector<Need> boxNeeds(const Room& room, const Making& making) {
  return {{"length", Axis::Length, room.eased(Axis::Length) + making.caliper * 2},
          {"width", Axis::Width, room.eased(Axis::Width) + making.caliper * 2},
          {"height", Axis::Height, room.eased(Axis::Height) + making.caliper * 3}};
}

}  // namespace

Style straightTuckBox() {
  const Length smallest = Length::nanometres(16'000'000);
  const Length smallestTuck = Length::nanometres(8'000'000);
  const Length tuckGap = Length::nanometres(3'000'000);
  return {
      .id = "straight-tuck-box",
      .title = "Straight tuck box",
      .summary = "Four walls with a glued seam; both lids tuck in at the front.",
      .parameters =
          {{"length", "Length", "The longer side of the opening.", ParameterKind::Length,
            Length::nanometres(60'000'000).nm(), fixed(smallest), fixed(kLargestSide)},
           {"width", "Width", "The shorter side of the opening. At least the tuck flap and 3 mm.",
            ParameterKind::Length, Length::nanometres(35'000'000).nm(), fixed(smallest),
            fixed(kLargestSide)},
           {"height", "Height", "From lid to lid. The two tuck flaps must not meet.",
            ParameterKind::Length, Length::nanometres(120'000'000).nm(), fixed(smallest),
            fixed(kLargestSide)},
           {"tuck", "Tuck flap", "Goes in behind the front, at most 3 mm less than the width.",
            ParameterKind::Length, Length::inches(5, 8).nm(), fixed(smallestTuck),
            least(otherPlus("width", -tuckGap),
                  [](const Parameters& p, const Making&) { return p.length("height").nm() / 2; })},
           {"seam", "Glue seam", "Joins the back to the right wall, narrower than the width.",
            ParameterKind::Length, Length::inches(1, 2).nm(), smallestFlap(),
            otherPlus("width", -tuckGap)},
           {"thumb-notch", "Thumb notch", "A half-round notch in the front for opening the lids.",
            ParameterKind::Flag, 0, fixedCount(0), fixedCount(1)}},
      .needs = boxNeeds,
      .build = buildBox,
  };
}

}  // namespace creasewright
