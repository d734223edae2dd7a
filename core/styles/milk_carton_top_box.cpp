#include "styles/milk_carton_top_box.h"

#include <algorithm>
#include <string>

#include "styles/parameter_rows.h"
#include "styles/parts/gable_limits.h"
#include "styles/parts/gable_roof.h"

namespace creasewright {
namespace {

enum Stage { BackAndSeam = 1, Walls, BottomFlaps, Bottom, Fin, Roof };

/// The halves of a side's fin lie between the two long ones: the adhesive on the front's reaches
/// one of them, the other has its own. They are cut apart, and a little narrower, so that each
/// folds on its own.
void addFins(NetBuilder& net, double length, const GableRoof& roof, double fin) {
  for (const std::string side : {"front", "back"})
    net.hinge({side + "/roof", "top"}, side + "/roof/" + side + "-fin", rectangle(length, fin),
              {roof.slope() - 90, Fin})
        .showing({side + "/roof/" + side + "-fin"});
  const std::string front = "front/roof/front-fin";
  const std::string back = "back/roof/back-fin";
  net.mate(front, back, Face::Inside, Method::Glue, true);

  const double half = roof.width / 2;
  const double clear = std::min(2.0, half / 8);
  const double inset = std::min(fin / 3, half / 4);
  const Shape shape = trapezoid(half - 2 * clear, fin - clear, inset, inset);
  const HingeFold fold{90 - roof.slope(), Fin};
  for (const std::string side : {"left", "right"}) {
    const auto corner = [&](const std::string& wall) {
      return side + "/" + side + "-gable/" + wall + "-corner";
    };
    const std::string atFront = corner("front") + "/" + side + "-front-fin";
    const std::string atBack = corner("back") + "/" + side + "-back-fin";
    const double from = (side == "left" ? 0 : length - half) + clear;
    const double to = from + half - 2 * clear;
    const Polygon between{
        {from, 0}, {to, 0}, {to - inset, fin - clear}, {from + inset, fin - clear}};
    net.hinge({corner("front"), "ridge", clear, half - 2 * clear}, atFront, shape, fold)
        .hinge({corner("back"), "ridge", clear, half - 2 * clear}, atBack, shape, fold)
        .mate(atBack, back, Face::Inside, Method::Glue, true)
        .mate(atFront, atBack, Face::Outside, Method::Rest, true)
        .mate(front, atFront, Face::Inside, Method::Glue, false, between);
  }
}

std::vector<Piece> buildCarton(const Parameters& p, const Workbench& bench) {
  const FourWalls walls{p.mm("length"), p.mm("width"), p.mm("height"), p.mm("seam")};
  const GableRoof roof{walls.width, p.mm("roof")};
  const double fin = p.mm("fin");
  NetBuilder net({"back-and-seam", "walls", "bottom-flaps", "bottom", "fin", "roof"});
  addFourWalls(net, walls, Walls);
  addGluedBottom(net, walls, bench.caliper.mm(), BottomFlaps, Bottom);
  addGableRoof(net, walls, roof, {BackAndSeam, Roof, roofSeam(walls, bench.caliper.mm())});
  addFins(net, walls.length, roof, fin);
  return {{"box", net.take(), insideUnderRoof(walls)}};
}

Limit leastFin() { return greatest(mm(8), plus(smallestFlap(), mm(2))); }

/// A higher fin takes the corners of the two sides through one another on a square carton with a
/// flat roof (found by sweeps of the fold path; the largest that folded clear was 0.37).
std::int64_t mostFin(const Parameters& p, const Workbench&) {
  return p.length("width").nm() * 7 / 20;
}

std::vector<ParameterSpec> cartonParameters() {
  std::vector<ParameterSpec> parameters = gableParameters();
  const auto width = std::ranges::find(parameters, "width", &ParameterSpec::key);
  width->minimum = greatest(width->minimum, [](const Parameters& p, const Workbench& bench) {
    return (leastFin()(p, bench) * 20 + 6) / 7;
  });
  parameters.push_back(measure("fin", worded("styles", "Fin"),
                               worded("styles",
                                      "Above the ridge, at most seven twentieths of the width, or "
                                      "the sides would meet on the way in."))
                           .standard(mm(15))
                           .from(leastFin())
                           .to(mostFin));
  return parameters;
}

}  // namespace

Style milkCartonTopBox() {
  return {
      .id = "milk-carton-top-box",
      .title = worded("styles", "Milk-carton top box"),
      .summary = worded("styles", "The sides fold in under a roof that ends in a glued fin."),
      .traits = {.difficulty = 3, .suits = worded("styles", "Sweets, biscuits, tea, small toys.")},
      .words = gableWords() +
               NetWords{.stages = {{"fin", worded("stages", "fold the fins"),
                                    worded("stages", "Stand the fins up against one another.")}},
                        .panels = {{"back-fin", worded("panels", "back fin")},
                                   {"left-front-fin", worded("panels", "left front fin")},
                                   {"right-front-fin", worded("panels", "right front fin")}}},
      .parameters = cartonParameters(),
      .needs = gableNeeds,
      .build = buildCarton,
  };
}

}  // namespace creasewright
