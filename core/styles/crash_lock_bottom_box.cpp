#include "styles/crash_lock_bottom_box.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "styles/limits.h"
#include "styles/parts/tuck_box.h"

namespace creasewright {
namespace {

/// The bottom of a box of length L and width W (mm). Each side flap is glued by a tab beyond its
/// crease at 45 degrees to the outside of the flap beside it, so that the bottom folds flat with
/// the box and opens with it: at a corner of 90 degrees the two flaps lie in one plane when the
/// crease halves the corner (derived from the closed loop of the four folds at the corner).
struct CrashBottom {
  double length, width, t;

  [[nodiscard]] double flapWidth() const { return length - 2 * t; }
  /// Half of each long flap stops short of the middle, the other half hooks over it.
  [[nodiscard]] double flapDepth() const { return width / 2 - 1; }
  [[nodiscard]] double hookDepth() const { return 1 + std::min(10.0, width / 4); }
  /// Slanted towards the middle, so that the two hooks find their way past each other.
  [[nodiscard]] double hookInset() const { return std::min(hookDepth() / 2, flapWidth() / 8); }
  /// How far from both walls the crease at 45 degrees goes.
  [[nodiscard]] double diagonal() const { return std::min(flapDepth() - 1, length / 2 - 1); }
};

/// What a diagonal of 1 mm each way leaves of the tab's width, its end tapered by 15 degrees.
const double kTaper = std::tan(Angle::degrees(15).radians());
const double kTabWidthPerDiagonal = (1 - kTaper) / std::numbers::sqrt2;

constexpr double kHookRelief = 1;  // mm, beside the wall

enum Stage { BottomFlaps = 1, GlueFlat, OpenUp, TopDust, TopTuck, TopLid };

/// The folds while the box lies flat and while it opens. With walls at an angle t to one another,
/// the flaps at their corner stand x above the floor's plane, cos x = tan(t / 2), and the crease
/// between them is folded by 180 degrees - 2 asin(sqrt(2) sin(t / 2)): the loop of four folds at
/// the corner stays closed (spherical trigonometry of sectors 90, 90, 45, 45 degrees).
struct FlatCrash {
  static constexpr int kSteps = 16;

  static double half(double t) { return Angle::degrees(t / 2).radians(); }
  static double flap(double t) {
    return 90 + std::acos(std::min(1.0, std::tan(half(t)))) * 180 / std::numbers::pi;
  }
  static double diagonal(double t) {
    const double turned = std::asin(std::min(1.0, std::numbers::sqrt2 * std::sin(half(t))));
    return -(180 - 2 * turned * 180 / std::numbers::pi);
  }
  static double gluedCorner(double t) { return 180 - t; }  ///< whose flaps are glued
  static double otherCorner(double t) { return t; }

  /// Laid flat between two moments (stages done), kept so until the box opens.
  static HingeFold fold(double (*angle)(double), double end, double from, double to) {
    HingeFold fold{end, OpenUp, CreaseKind::Score, true, Sense::Mountain, {}};
    fold.way = {{0, Angle()}, {from, Angle()}, {to, Angle::degrees(angle(0))}};
    constexpr double kFlat = GlueFlat;
    for (int k = 0; k < kSteps; ++k) {
      const double share = static_cast<double>(k) / kSteps;
      fold.way.push_back({kFlat + share, Angle::degrees(angle(90 * share))});
    }
    return fold;
  }
  static HingeFold bottom(double (*angle)(double), double end) { return fold(angle, end, 0, 1); }
};

/// `wall`'s flap with its tab glued to `onto`; both frames start at the glued corner.
void addSide(NetBuilder& net, const CrashBottom& b, const std::string& wall, std::string_view edge,
             std::string_view onto) {
  const double g = b.diagonal();
  const double back = std::min(2.0, b.width / 8);
  const std::string flap = wall + "/bottom-side";
  const std::string tab = wall + "/bottom-glue-tab";
  net.hinge({wall, edge}, flap,
            {{{0, 0}, {b.width, 0}, {b.width - back, g * 0.8}, {g, g}},
             {"inner", "side", "side", "diagonal"}},
            FlatCrash::bottom(FlatCrash::flap, 90));
  const double half = g / std::numbers::sqrt2;
  const double relief = 2 * b.t;  // the flap it is glued to starts a caliper from the corner
  const double crease = 2 * half - relief;
  net.hinge({flap, "diagonal", 0, crease}, tab,
            {{{0, 0}, {crease, 0}, {half * (1 + kTaper) - relief, half * (1 - kTaper)}},
             {"inner", "outer", "side"}},
            FlatCrash::bottom(FlatCrash::diagonal, 0));
  net.mate(tab, onto, Face::Outside, Method::Glue, false).meetsIn(GlueFlat);
}

/// A long flap; a hook on the half towards its glued corner lies over the other long flap.
void addFlap(NetBuilder& net, const CrashBottom& b, HingeAt hinge) {
  const std::string flap = std::string(hinge.panel) + "/bottom";
  const double half = b.flapWidth() / 2;
  net.hinge(hinge, flap, rectangle(2 * half, b.flapDepth()), FlatCrash::bottom(FlatCrash::flap, 90))
      .hinge({flap, "outer", 0, half}, flap + "-hook",
             trapezoid(half, b.hookDepth(), b.hookInset(), kHookRelief),
             {0, BottomFlaps, CreaseKind::Flat})
      .showing({flap});
}

/// The part of a hook beyond the gap between the two long flaps.
void addHookMate(NetBuilder& net, const CrashBottom& b, std::string_view hook,
                 std::string_view onto) {
  const double half = b.flapWidth() / 2;
  const double d = b.hookDepth();
  const double gap = b.width - 2 * b.flapDepth();
  net.mate(hook, onto, Face::Inside, Method::Rest, false,
           {{b.hookInset() * gap / d, gap},
            {half - kHookRelief * gap / d, gap},
            {half - kHookRelief, d},
            {b.hookInset(), d}});
}

std::vector<Piece> buildBox(const Parameters& parameters, const Workbench& bench) {
  const TuckBox box(parameters, bench);
  const CrashBottom b{box.length, box.width, box.t};
  NetBuilder net({"bottom-flaps-up", "glue-bottom-flat", "open-bottom", "top-dust-flaps",
                  "top-tuck", "top-lid"});
  // The seam first, then left wall and back over the front.
  const auto glued = FlatCrash::gluedCorner;
  const HingeFold plain = FlatCrash::fold(FlatCrash::otherCorner, 90, 1, 2);
  addWalls(net, box, frontWall(box), backWall(box),
           {FlatCrash::fold(glued, 90, 1.5, 2), plain, FlatCrash::fold(glued, 90, 1, 1.5), plain});
  net.meetsIn(GlueFlat);
  addFlap(net, b, {"front", "bottom", b.t, b.flapWidth()});
  addFlap(net, b, {"front/left/back", backEdge(BoxEnd::Bottom), box.fromSeam(), b.flapWidth()});
  net.bends(OpenUp, BendCode::BottomOpens);
  addHookMate(net, b, "front/bottom-hook", "front/left/back/bottom");
  addHookMate(net, b, "front/left/back/bottom-hook", "front/bottom");
  addSide(net, b, "front/left", leftEdge(BoxEnd::Bottom), "front/bottom");
  addSide(net, b, "front/right", rightEdge(BoxEnd::Bottom), "front/left/back/bottom");
  addTuckEnd(net, box, {BoxEnd::Top, LidOn::Back, TopDust, TopTuck, TopLid});
  Net made = net.take();
  // The tabs of the bottom are pressed before the seam.
  const auto seam = std::ranges::find_if(made.mates, [&](const Mate& mate) {
    return made.panels[static_cast<std::size_t>(mate.panel)].id.ends_with("seam");
  });
  std::rotate(seam, seam + 1, made.mates.end());
  return {{"box", std::move(made), insideOf(box)}};
}

/// Long enough for a diagonal whose glue tab holds: the tab is 0.52 of it wide.
Limit tabFits(double diagonals, Length extra) {
  return [diagonals, extra](const Parameters& p, const Workbench& m) {
    const Length tab = Length::nanometres(smallestFlap()(p, m));
    return (Length::mm(tab.mm() / kTabWidthPerDiagonal * diagonals) + extra).nm();
  };
}

}  // namespace

Style crashLockBottomBox() {
  std::vector<ParameterSpec> parameters = tuckBoxParameters();
  for (ParameterSpec& spec : parameters) {
    if (spec.key == "length") {
      spec.minimum = greatest(spec.minimum, tabFits(2, mm(3)));
      spec.hint =
          worded("styles", "The longer side of the opening. The bottom's glue tabs must fit.");
    } else if (spec.key == "width") {
      spec.minimum = greatest(spec.minimum, tabFits(2, mm(5)));
      spec.hint = worded("styles",
                         "The shorter side of the opening. Two glue tabs of the bottom must fit.");
    }
  }
  return {
      .id = "crash-lock-bottom-box",
      .title = worded("styles", "Crash-lock bottom box"),
      .summary =
          worded("styles", "A tuck box whose glued bottom folds flat with it and opens by itself."),
      .traits = {.difficulty = 3,
                 .suits = worded("styles", "Jars, mugs, sets, boxes kept flat until needed.")},
      .words =
          tuckEndWords() +
          NetWords{
              .stages = {{"bottom-flaps-up",
                          worded("stages", "fold the bottom flaps up and their tabs back"),
                          worded("stages",
                                 "Fold the bottom flaps up onto the inside, and their glue tabs "
                                 "back again.")},
                         {"glue-bottom-flat", worded("stages", "glue bottom and seam flat"),
                          worded("stages",
                                 "Leave the box flat. Press the bottom tabs and the seam down.")},
                         {"open-bottom", worded("stages", "open the box")}},
              .panels = {{"bottom-glue-tab", worded("panels", "bottom glue tab")},
                         {"bottom-hook", worded("panels", "bottom hook")}}},
      .parameters = std::move(parameters),
      .needs = tuckBoxNeeds(),
      .build = buildBox,
  };
}

}  // namespace creasewright
