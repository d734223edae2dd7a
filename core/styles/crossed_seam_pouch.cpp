#include "styles/crossed_seam_pouch.h"

#include <algorithm>
#include <cmath>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

enum Stage { Fins = 1, Tube };

/// A tube closed by two seams at right angles: four equal triangles, `side` wide and `height` high.
/// With the lower seam along x and the upper one along y, g apart, two faces have the outward
/// normals (0, g, -side/2) and (g, 0, side/2) over `height`; elementary geometry. mm.
struct Pouch {
  double side, height, fin, seam;

  /// Between the two seams.
  [[nodiscard]] double rise() const { return std::sqrt(height * height - side * side / 4); }
  /// At the four slanting edges, degrees.
  [[nodiscard]] double edgeFold() const {
    const double c = side / (2 * height);
    return toDegrees(std::acos(-c * c));
  }
  /// Of a fin, out of its face into the middle plane of the seam, degrees.
  [[nodiscard]] double finFold() const { return -toDegrees(std::atan2(side / 2, rise())); }
};

/// Notched between one fin and the next, so that they come together.
void addFin(NetBuilder& net, const Pouch& t, const std::string& face, std::string_view edge) {
  const double width = net.edgeLength(face, edge);
  const double inset = std::min(t.fin / 3, width / 6);
  net.hinge({face, edge}, face + "/" + face + "-fin", trapezoid(width, t.fin, inset, inset),
            {t.finFold(), Fins});
}

/// The long seam lies flat inside the left half of the back.
void addSeam(NetBuilder& net, const Pouch& t) {
  const double slanting = t.seam * 2 * t.height / t.side + 1;
  const double start = 1;
  // Its frame starts at the top.
  net.hinge({"right-back", "seam", start, t.height - start}, "seam",
            trapezoid(t.height - start, t.seam, t.seam / 4, slanting), {0, Tube, CreaseKind::Flat})
      .mate("seam", "left-back", Face::Inside, Method::Glue, true);
}

std::vector<Piece> buildPouch(const Parameters& p, const Workbench&) {
  const Pouch t{p.mm("width"), p.mm("height"), p.mm("fin"), p.mm("seam")};
  const double a = t.side;
  const double h = t.height;
  const HingeFold fold{t.edgeFold(), Tube};
  NetBuilder net({"fins", "tube"});
  net.root("left", {{{0, 0}, {a, 0}, {a / 2, h}}, {"bottom", "right", "left"}})
      .hinge({"left", "right"}, "front",
             restedOn({{{a, 0}, {a * 1.5, h}, {a / 2, h}}, {"right", "top", "left"}}, "left"), fold)
      .hinge({"front", "right"}, "right",
             restedOn({{{a, 0}, {a * 2, 0}, {a * 1.5, h}}, {"bottom", "right", "left"}}, "left"),
             fold)
      .hinge({"right", "right"}, "right-back",
             restedOn({{{a * 2, 0}, {a * 2, h}, {a * 1.5, h}}, {"seam", "top", "left"}}, "left"),
             fold)
      .hinge({"left", "left"}, "left-back",
             restedOn({{{0, 0}, {a / 2, h}, {0, h}}, {"right", "top", "seam"}}, "right"), fold);
  addFin(net, t, "left", "bottom");
  addFin(net, t, "right", "bottom");
  addFin(net, t, "front", "top");
  addFin(net, t, "left-back", "top");
  addFin(net, t, "right-back", "top");
  addSeam(net, t);
  net.mate("right/right-fin", "left/left-fin", Face::Inside, Method::Glue, true)
      .mate("left-back/left-back-fin", "front/front-fin", Face::Inside, Method::Glue, true)
      .mate("right-back/right-back-fin", "front/front-fin", Face::Inside, Method::Glue, true)
      .bends(Tube, BendCode::TubePinched)
      .showing({"left", "front", "right", "left-back", "right-back"});
  // The lower fin stands in the middle plane: along it, down it, and square to it.
  return {{"pouch", net.take(), Cavity{"left/left-fin", {a / 2, -t.rise() / 2, 0}, {0, 2, 1}}}};
}

/// A level cut at a share k of the rise is side (1-k) x side k. A product of half the rise in the
/// middle of it needs a side twice its length and width together, if it is no wider than long.
std::vector<Need> pouchNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const Length t = bench.caliper;
  const double rise = 2 * (room.eased(Axis::Height) + t * 6).mm();
  const Length length = room.eased(Axis::Length) + t * 6;
  const Length width = room.eased(Axis::Width) + t * 6;
  const Length side = std::max({(length + width) * 2, width * 4, Length::mm(rise / 2.2)});
  const double half = (bench.grid.roundUp(side)).mm() / 2;
  return {{"width", Axis::Length, side},
          {"height", Axis::Height, Length::mm(std::max(std::hypot(rise, half), half * 1.3))}};
}

}  // namespace

Style crossedSeamPouch() {
  const Limit fin = smallestFlap();
  return {
      .id = "crossed-seam-pouch",
      .title = worded("styles", "Crossed-seam pouch"),
      .summary = worded("styles", "A tube closed by two crossed seams: four equal faces."),
      .lying = Lying::Flat,
      .traits = {.difficulty = 1,
                 .suits = worded("styles", "Sweets, nuts, tea, favours, small surprises.")},
      .words = {.stages = {{"fins", worded("stages", "fold the fins"),
                            worded("stages", "Fold all fins up.")},
                           {"tube", worded("stages", "close the tube and glue the seams")}},
                .panels = {{"left-fin", worded("panels", "left fin")},
                           {"right-fin", worded("panels", "right fin")}},
                .pieces = {{"pouch", worded("pieces", "pouch")}}},
      .parameters = {measure("width", worded("styles", "Width"),
                             worded("styles", "Of each face at its seam: half the sheet."))
                         .standard(mm(90))
                         .from(greatest(mm(30), times(4, fin)))
                         .to(kLargestSide),
                     measure(
                         "height", worded("styles", "Height"),
                         worded("styles",
                                "From seam to seam on the sheet: six tenths of the width or more."))
                         .standard(mm(90))
                         .from(shareOfWidth(60))
                         .to(shareOfWidth(250)),
                     measure("fin", worded("styles", "Fin"),
                             worded("styles", "The seams at the two ends, glued inside to inside."))
                         .standard(mm(10))
                         .from(fin)
                         .to(partOf("width", 4))
                         .givesWay(),
                     measure("seam", worded("styles", "Glue seam"),
                             worded("styles", "Along the tube, inside."))
                         .standard(mm(10))
                         .from(fin)
                         .to(partOf("width", 4))
                         .givesWay()},
      .needs = pouchNeeds,
      .build = buildPouch,
  };
}

}  // namespace creasewright
