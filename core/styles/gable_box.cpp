#include "styles/gable_box.h"

#include <algorithm>

#include "styles/parameter_rows.h"
#include "styles/parts/gable_limits.h"
#include "styles/parts/gable_roof.h"

namespace creasewright {
namespace {

enum Stage { BackAndSeam = 1, Walls, BottomFlaps, Bottom, Handle, Roof, Lock };

constexpr double kHandAtEnds = 10;  // mm of card beside the hand hole
constexpr double kCard = 5;         // mm of card above and below holes and slits
constexpr double kHandLeast = 8;    // mm a hand hole is high at least

/// The two halves of the handle stand back to back. A hook on the front's is folded over the top of
/// the back's and goes through a slit in it (neck 25 to 40 mm, hook 3 mm wider on each side, slit
/// 2 mm longer: common practice, no published source). mm.
struct HandleHalf {
  double length, height;

  [[nodiscard]] double neck() const {
    return std::min(std::clamp(length / 4, 25.0, 40.0), length - 2 * (kHook + kCard));
  }
  [[nodiscard]] double slitDown() const { return kCard + 1; }  ///< from the top
  [[nodiscard]] double handTop() const { return height - slitDown() - kCard; }
  [[nodiscard]] double handWidth() const { return std::min(80.0, length - 2 * kHandAtEnds); }
  [[nodiscard]] double handHeight() const {
    return std::min({handTop() - kCard, 28.0, handWidth() * 0.8});
  }
  [[nodiscard]] bool hasHole() const {
    return length > 2 * kHandAtEnds + 20 && handHeight() >= kHandLeast;
  }

  static constexpr double kHook = 3;
};

/// A slot with round ends, as wide as a hand where there is room.
Polygon handHole(const HandleHalf& handle) {
  const double width = handle.handWidth();
  const double r = handle.handHeight() / 2;
  const double left = (handle.length - width) / 2 + r;
  const double right = (handle.length + width) / 2 - r;
  const double y = handle.handTop() - r;
  Polygon hole{{left, y + r}};  // clockwise
  hole.push_back({right, y + r});
  for (const Point& p : arc({right, y + r}, {right, y}, -180)) hole.push_back(p);
  hole.push_back({left, y - r});
  for (const Point& p : arc({left, y - r}, {left, y}, -180)) hole.push_back(p);
  hole.pop_back();
  return hole;
}

/// Longer than the slit is down, by what the fold round a card takes.
Shape hook(const HandleHalf& handle, double caliper) {
  const double n = handle.neck();
  const double shoulder = handle.slitDown() + 1;
  // Never down to the ridge.
  const double end = std::min(shoulder + std::max(8.0, 10 * caliper - shoulder), handle.height - 2);
  const double inset = std::min(HandleHalf::kHook, n / 4);
  return {{{0, 0},
           {n, 0},
           {n, shoulder},
           {n + HandleHalf::kHook, shoulder + HandleHalf::kHook},
           {n - inset, end},
           {inset, end},
           {-HandleHalf::kHook, shoulder + HandleHalf::kHook},
           {0, shoulder}},
          {"inner", "neck", "hook", "hook", "outer", "hook", "hook", "neck"}};
}

void addHandle(NetBuilder& net, const HandleHalf& handle, const GableRoof& roof, double caliper) {
  Shape half = rectangle(handle.length, handle.height);
  if (handle.hasHole()) half.openings = {handHole(handle)};
  const std::string front = "front/roof/front-handle";
  const std::string back = "back/roof/back-handle";
  const HingeFold fold{roof.slope() - 90, Handle};
  const double n = handle.neck();
  const double y = handle.height - handle.slitDown();
  const double from = (handle.length - n) / 2;
  net.hinge({"front/roof", "top"}, front, half, fold)
      .hinge({"back/roof", "top"}, back, half, fold)
      .hinge({front, "outer", from, n}, front + "/hook", hook(handle, caliper), {180, Lock})
      .slit(back, {{from - 1, y}, {from + n + 1, y}})
      .mate(back, front, Face::Inside, Method::Rest, true)
      .mate(front + "/hook", back, Face::Outside, Method::Lock, true)
      .open({front, "left"}, {back, "right"}, "layers")
      .open({front, "right"}, {back, "left"}, "layers")
      .open({front, "outer"}, {back, "outer"}, "layers")
      .showing({front, back, front + "/hook"});
}

std::vector<Piece> buildGable(const Parameters& p, const Workbench& bench) {
  const FourWalls walls{p.mm("length"), p.mm("width"), p.mm("height"), p.mm("seam")};
  const GableRoof roof{walls.width, p.mm("roof")};
  NetBuilder net({"back-and-seam", "walls", "bottom-flaps", "bottom", "handle", "roof", "lock"});
  addFourWalls(net, walls, Walls);
  addGluedBottom(net, walls, bench.caliper.mm(), BottomFlaps, Bottom);
  addGableRoof(net, walls, roof, {BackAndSeam, Roof, roofSeam(walls, bench.caliper.mm())});
  addHandle(net, {walls.length, p.mm("handle")}, roof, bench.caliper.mm());
  for (const std::string side : {"left", "right"}) {
    const std::string gable = side + "/" + side + "-gable";
    net.open({gable + "/front-corner", "ridge"}, {gable + "/back-corner", "ridge"}, "layers");
  }
  return {{"box", net.take(), insideUnderRoof(walls)}};
}

}  // namespace

Style gableBox() {
  const Length hookClear = mm(2);  // between hook and ridge
  std::vector<ParameterSpec> parameters = gableParameters();
  parameters.push_back(
      measure("handle", worded("styles", "Handle"),
              worded("styles", "Above the ridge; from 24 mm on a hole for the hand is cut."))
          .standard(mm(35))
          .from(greatest(mm(15), plus(calipers(10), hookClear)))
          .to(mm(80)));
  return {
      .id = "gable-box",
      .title = worded("styles", "Gable box"),
      .summary = worded("styles", "A box to carry: the sides fold in under a roof with a handle."),
      .traits = {.difficulty = 3, .suits = worded("styles", "Biscuits, sets, picnic boxes, toys.")},
      .words =
          gableWords() +
          NetWords{.stages = {{"handle", worded("stages", "fold out both halves of the handle"),
                               worded("stages", "Fold both halves of the handle upright.")},
                              {"lock", worded("stages", "hook the halves of the handle together"),
                               worded("stages",
                                      "Bring the halves of the handle together and hook them.")}},
                   .panels = {{"hook", worded("panels", "hook")},
                              {"front-handle", worded("panels", "front handle")},
                              {"back-handle", worded("panels", "back handle")}}},
      .parameters = std::move(parameters),
      .needs = gableNeeds,
      .build = buildGable,
  };
}

}  // namespace creasewright
