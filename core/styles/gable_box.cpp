#include <algorithm>

#include "styles/library.h"
#include "styles/limits.h"
#include "styles/parts/gable_limits.h"
#include "styles/parts/gable_roof.h"

namespace creasewright {
namespace {

enum Stage { BackAndSeam = 1, Walls, BottomFlaps, Bottom, Handle, Roof };

constexpr double kHandAtEnds = 10;  // mm of card beside the hand hole

/// A slot with round ends, as wide as a hand where there is room.
Polygon handHole(double length, double height) {
  const double across = std::min(height / 2, 20.0);
  const double width = std::min(80.0, length - 2 * kHandAtEnds);
  const double r = across / 2;
  const double left = (length - width) / 2 + r;
  const double right = (length + width) / 2 - r;
  const double y = height / 2;
  Polygon hole{{left, y + r}};  // clockwise
  hole.push_back({right, y + r});
  for (const Point& p : arc({right, y + r}, {right, y}, -180)) hole.push_back(p);
  hole.push_back({left, y - r});
  for (const Point& p : arc({left, y - r}, {left, y}, -180)) hole.push_back(p);
  hole.pop_back();
  return hole;
}

std::vector<Piece> buildGable(const Parameters& p, const Making& making) {
  const FourWalls walls{p.mm("length"), p.mm("width"), p.mm("height"), p.mm("seam")};
  const GableRoof roof{walls.width, p.mm("roof")};
  NetBuilder net({"back-and-seam", "walls", "bottom-flaps", "bottom", "handle", "roof"});
  addFourWalls(net, walls, Walls);
  addGluedBottom(net, walls, making.caliper.mm(), BottomFlaps, Bottom);
  addGableRoof(net, walls, roof, Roof);
  Shape handle = rectangle(walls.length, p.mm("handle"));
  if (walls.length > 2 * kHandAtEnds + 20)
    handle.openings = {handHole(walls.length, p.mm("handle"))};
  for (const std::string side : {"front", "back"})
    net.hinge({side + "/roof", "top"}, side + "/roof/" + side + "-handle", handle,
              {roof.slope() - 90, Handle})
        .showing({side + "/roof/" + side + "-handle"});
  net.mate("back/roof/back-handle", "front/roof/front-handle", Face::Inside, Method::Rest, true);
  return {{"box", net.take(), insideUnderRoof(walls)}};
}

}  // namespace

Style gableBox() {
  std::vector<ParameterSpec> parameters = gableParameters();
  parameters.push_back({"handle", "Handle", "Above the ridge; a hand must get through.",
                        ParameterKind::Length, Length::nanometres(35'000'000).nm(),
                        fixed(Length::nanometres(15'000'000)),
                        fixed(Length::nanometres(80'000'000))});
  return {
      .id = "gable-box",
      .title = "Gable box",
      .summary = "A box to carry: the sides fold in under a roof with a handle.",
      .traits = {.difficulty = 3, .suits = "Biscuits, sets, picnic boxes, toys."},
      .parameters = std::move(parameters),
      .needs = gableNeeds,
      .build = buildGable,
  };
}

}  // namespace creasewright
