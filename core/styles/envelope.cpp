#include "styles/envelope.h"

#include <algorithm>
#include <functional>
#include <string>

#include "geometry/region.h"
#include "styles/parameter_rows.h"
#include "styles/parts/four_walls.h"
#include "styles/parts/needs.h"
#include "styles/parts/thumb_notch.h"

namespace creasewright {
namespace {

enum Stage { Sides = 1, Spines, Back, Flap };

/// mm. Its front lies in the plane with the corner at (0, 0).
struct Envelope {
  double length, width, depth, flap;
  bool diagonal;

  /// Of the three flaps that are seen on the back.
  [[nodiscard]] Shape back() const {
    if (diagonal) return trapezoid(length, width * 0.62, length * 0.47, length * 0.47);
    return withThumbNotch(rectangle(length, width), "outer",
                          std::min({10.0, length / 6, width / 6}));
  }
  [[nodiscard]] Shape side() const {
    const double inset = std::min(flap * 0.5, width / 6);
    if (!diagonal) return trapezoid(width, flap, inset, inset);
    return trapezoid(width, length / 2 - 1, width * 0.45, width * 0.45);
  }
  [[nodiscard]] Shape top() const {
    const double height = diagonal ? width * 0.55 : width * 0.45;
    return trapezoid(length, height, length * 0.44, length * 0.44);
  }
};

/// The part of `shape` that lies over the back; `place` says where a point of the front's plane is
/// in the shape's frame.
Polygon overBack(const Envelope& e, const Shape& shape, const std::function<Point(Point)>& place) {
  Polygon back;
  // The back's frame starts at the front's right corner.
  for (const Point& p : e.back().outline) back.push_back(place({e.length - p.x, p.y}));
  if (signedArea(back) < 0) std::ranges::reverse(back);
  const Region common = intersect(region(shape.outline), region(back));
  return common.empty() ? Polygon{} : common[0].outer;
}

void addSideFlap(NetBuilder& net, const Envelope& e, const std::string& side) {
  const std::string strip = "front/" + side;
  const std::string flap = strip + "/flap";
  net.hinge({"front", side}, strip, rectangle(e.width, e.depth), {90, Sides})
      .hinge({strip, "outer"}, flap, e.side(), {90, Sides});
  Polygon held;
  if (e.diagonal)
    held = overBack(e, e.side(), [&](Point p) {
      return side == "left" ? Point{p.y, p.x} : Point{e.width - p.y, e.length - p.x};
    });
  net.mate(flap, "front/bottom/back", Face::Inside, Method::Glue, true, held);
}

/// Whether the slanted edges of side flap and top flap, which start at one corner, run on within a
/// card's thickness of each other.
bool slantsMeet(const Envelope& e, double caliper) {
  const Polygon side = e.side().outline;
  const Polygon top = e.top().outline;
  const Point down = side[3] - side[0];  // across the back, and down it
  const Point along{down.y, down.x};
  const Point slant = top[3] - top[0];
  const bool sideIsShorter = norm(along) < norm(slant);
  const double off =
      std::abs(cross(unit(sideIsShorter ? slant : along), sideIsShorter ? along : slant));
  return off <= caliper + 0.05;
}

std::vector<Piece> buildEnvelope(const Parameters& p, const Workbench& bench) {
  const Envelope e{p.mm("length"), p.mm("width"), p.mm("depth"), p.mm("flap"), p.flag("diagonal")};
  NetBuilder net({"side-flaps", "spines", "back", "flap"});
  const Shape strip = rectangle(e.length, e.depth);
  net.root("front", uprightWall(e.length, e.width))
      .hinge({"front", "bottom"}, "front/bottom", strip, {90, Spines})
      .hinge({"front/bottom", "outer"}, "front/bottom/back", e.back(), {90, Back})
      .hinge({"front", "top"}, "front/top", strip, {90, Spines})
      .hinge({"front/top", "outer"}, "front/top/flap", e.top(), {90, Flap});
  addSideFlap(net, e, "left");
  addSideFlap(net, e, "right");
  net.open({"front/bottom", "left"}, {"front/right", "right"}, "held-beside")
      .open({"front/bottom", "right"}, {"front/left", "left"}, "held-beside")
      .open({"front/top", "left"}, {"front/left", "right"}, "opens")
      .open({"front/top", "right"}, {"front/right", "left"}, "opens");
  if (slantsMeet(e, bench.caliper.mm()))
    net.open({"front/top/flap", "right"}, {"front/right/flap", "left"}, "opens")
        .open({"front/top/flap", "left"}, {"front/left/flap", "right"}, "opens");
  Polygon over;
  if (e.diagonal) over = overBack(e, e.top(), [&](Point q) { return Point{q.x, e.width - q.y}; });
  net.mate("front/top/flap", "front/bottom/back", Face::Outside, Method::Rest, true, over)
      .showing({"front", "front/bottom/back", "front/top/flap"});
  return {{"envelope", net.take(),
           Cavity{"front", {e.length / 2, e.width / 2, e.depth / 2}, {0, 1, 2}}}};
}

}  // namespace

Style envelope() {
  const Limit least = greatest(mm(30), times(4, smallestFlap()));
  return {
      .id = "envelope",
      .title = worded("styles", "Envelope"),
      .summary = worded(
          "styles",
          "Double scores give it depth; with straight or with pointed flaps, closed by a seal."),
      .lying = Lying::Flat,
      .traits = {.difficulty = 1,
                 .suits =
                     worded("styles", "Gift cards, letters, seeds, flat sweets, photographs.")},
      .words = {.stages = {{"flap", worded("stages", "close the flap"),
                            worded("stages", "Bring the flap down over the back.")},
                           {"side-flaps", worded("stages", "fold in the side flaps"),
                            worded("stages", "Fold both sides in.")},
                           {"spines", worded("stages", "fold up the strips"),
                            worded("stages",
                                   "Fold up the narrow strips: they give the envelope its depth.")},
                           {"back", worded("stages", "fold the back over and glue it"),
                            worded("stages", "Fold the back over the sides and press.")}},
                .panels = {{"flap", worded("panels", "flap")}},
                .pieces = {{"envelope", worded("pieces", "envelope")}}},
      .parameters = {measure("length", worded("styles", "Length"),
                             worded("styles", "Of the front, the longer side."))
                         .standard(mm(110))
                         .from(least)
                         .to(kLargestSide),
                     measure(
                         "width", worded("styles", "Width"),
                         worded("styles", "Of the front, from the fold of the flap to the bottom."))
                         .standard(mm(75))
                         .from(least)
                         .to(kLargestSide),
                     measure("depth", worded("styles", "Depth"),
                             worded("styles",
                                    "Between the double scores. Narrower ones cannot be scored."))
                         .standard(mm(3))
                         .from(mm(3))
                         .to(mm(300)),
                     measure("flap", worded("styles", "Side flaps"),
                             worded("styles", "Glued to the back; without pointed flaps."))
                         .standard(mm(15))
                         .from(smallestFlap())
                         .to(partOf("length", 2, mm(2)))
                         .givesWay(),
                     toggle("diagonal", worded("styles", "Pointed flaps"),
                            worded("styles", "Four flaps that meet in diagonals on the back."))},
      .needs =
          // Half a caliper on either side; on the depth the glued flaps too.
      holding({"length", 1}, {"width", 1}, {"depth", 2}),
      .build = buildEnvelope,
  };
}

}  // namespace creasewright
