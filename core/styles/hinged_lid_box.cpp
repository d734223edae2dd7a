#include "styles/hinged_lid_box.h"

#include <algorithm>
#include <cmath>

#include "styles/parameter_rows.h"
#include "styles/parts/glued_tray.h"
#include "styles/parts/needs.h"

namespace creasewright {
namespace {

/// All measures in mm.
struct Hinged {
  GluedTray tray;
  double tuck, ear, t;
  double lidDepth;    // away from the hinge
  double tuckLength;  // along the lid's front

  Hinged(const Parameters& p, const Workbench& bench)
      : tray{p.mm("length"), p.mm("width"), p.mm("depth"), p.mm("tab")},
        tuck(p.mm("tuck")),
        ear(p.mm("ear")),
        t(bench.caliper.mm()),
        // A hand tool cannot score a caliper's difference.
        lidDepth(bench.grid.isNone() ? tray.width - t : tray.width),
        // The ears fold on the side walls' scores; only what is cut gives way to the card, in the
        // middle: a caliper at either end (common practice, no published source).
        tuckLength(tray.length - 2 * t) {}

  [[nodiscard]] double tuckRadius() const {
    return std::min(std::clamp(tuck - 4, 0.5, 10.0), tuckLength / 4);
  }
};

enum Stage { Ears = 4, Tuck, Lid };  // after the tray's

/// An ear turns about the hinge in its wall's plane, so its front corner stays within a circle of
/// the lid's depth about it: D - sqrt(D^2 - e^2) for lid depth D and ear depth e, and 1 mm more.
/// The crease runs from the hinge (x = 0) forward; `mirrored` swaps its ends.
Shape earShape(const Hinged& h, bool mirrored) {
  const double d = h.lidDepth;
  const double front = d - std::sqrt(d * d - h.ear * h.ear) + 1;
  const double back = std::min(2.0, d / 8);
  return mirrored ? trapezoid(d, h.ear, front, back) : trapezoid(d, h.ear, back, front);
}

/// The tuck flap lies over the front's corner tabs, whose free corners are tapered.
void restOnTabs(NetBuilder& net, const Hinged& h) {
  const Polygon tab = gluedTab(h.tray.depth, h.tray.tab).outline;
  const double from = tab[3].x;
  const double to = std::min(tab[2].x, h.tuck - h.tuckRadius());
  const double reach = std::min(h.tray.tab - h.t, h.tuckLength / 2);
  if (to - from < 0.5 || reach < 0.5) return;
  const double w = h.tuckLength;
  net.mate("base/back/lid/tuck", "base/left/front-tab", Face::Inside, Method::Rest, false,
           {{0, from}, {reach, from}, {reach, to}, {0, to}});
  net.mate("base/back/lid/tuck", "base/right/front-tab", Face::Inside, Method::Rest, false,
           {{w - reach, from}, {w, from}, {w, to}, {w - reach, to}});
}

std::vector<Piece> buildBox(const Parameters& parameters, const Workbench& bench) {
  const Hinged h(parameters, bench);
  std::vector<std::string> stages = gluedTrayStages();
  stages.insert(stages.end(), {"ears", "tuck", "lid"});
  NetBuilder net(stages);
  const Shape shortWall = rectangle(h.tray.width, h.tray.depth);
  addGluedTray(net, h.tray, rectangle(h.tray.length, h.tray.depth), shortWall, shortWall);

  const std::string lid = "base/back/lid";
  net.hinge({"base/back", "outer"}, lid, rectangle(h.tray.length, h.lidDepth), {90, Lid})
      .hinge({lid, "left"}, lid + "/left-ear", earShape(h, false), {90, Ears})
      .hinge({lid, "right"}, lid + "/right-ear", earShape(h, true), {90, Ears})
      .hinge({lid, "outer", h.t, h.tuckLength}, lid + "/tuck",
             roundedFlap(h.tuckLength, h.tuck, h.tuckRadius()), {90, Tuck})
      .mate(lid + "/left-ear", "base/left", Face::Inside, Method::Tuck, true)
      .mate(lid + "/right-ear", "base/right", Face::Inside, Method::Tuck, true)
      .mate(lid + "/tuck", "base/front", Face::Inside, Method::Tuck, true)
      .bends(Lid, BendCode::TuckSlidesIn)
      .showing({lid});
  restOnTabs(net, h);

  Cavity cavity = insideOf(h.tray);
  cavity.high.z = 1e4;  // the lid ends it
  return {{"box", net.take(), cavity}};
}

/// Deeper ears would leave no front edge after their relief.
std::int64_t deepestEar(const Parameters& p, const Workbench&) {
  return (p.length("width") * 3 / 4).nm() - 1'000'000;
}

}  // namespace

Style hingedLidBox() {
  ParameterSpec tab = cornerTabParameter("length");
  tab.hint =
      worded("styles",
             "Glued inside front and back; as deep as the box at most, so that the ears are free.");
  tab.maximum = least(std::move(tab.maximum), otherPlus("depth"));
  const Length tuckGap = mm(3);
  return {
      .id = "hinged-lid-box",
      .title = worded("styles", "Hinged-lid box"),
      .summary = worded(
          "styles", "A box whose lid hinges on the back; side ears and a tuck flap keep it shut."),
      .lying = Lying::Flat,
      .traits = {.difficulty = 2,
                 .suits = worded("styles", "Biscuits, tea bags, soap, sets, keepsakes.")},
      .words = {.stages = {{"ears", worded("stages", "fold the ears"),
                            worded("stages", "Fold in the ears at the sides of the lid.")},
                           {"tuck", worded("stages", "fold the tuck flap"),
                            worded("stages", "Fold the tuck flap inwards.")}},
                .panels = {{"left-ear", worded("panels", "left ear")},
                           {"right-ear", worded("panels", "right ear")}}},
      .parameters =
          {measure("length", worded("styles", "Length"),
                   worded("styles", "Along the hinge. Two corner tabs must fit side by side."))
               .standard(Length::inches(4))
               .from(greatest(shortestTabbedWall(), calipers(20)))
               .to(kLargestSide),
           measure("width", worded("styles", "Width"),
                   worded("styles", "From hinge to front. The ears and the tuck flap must fit."))
               .standard(Length::inches(3))
               .from(times(2, smallestFlap()))
               .to(kLargestSide),
           measure("depth", worded("styles", "Depth"),
                   worded("styles", "From base to lid. At least the smallest tab."))
               .standard(Length::inches(3, 2))
               .from(smallestFlap())
               .to(mm(300)),
           measure("tuck", worded("styles", "Tuck flap"),
                   worded("styles", "Goes in behind the front; no deeper than the box."))
               .standard(Length::inches(5, 8))
               .from(smallestFlap())
               .to(least(otherPlus("depth"), otherPlus("width", -tuckGap)))
               .givesWay(),
           measure("ear", worded("styles", "Ears"),
                   worded("styles",
                          "Go in beside the side walls; at most three quarters of the width."))
               .standard(Length::inches(3, 4))
               .from(smallestFlap())
               .to(least(otherPlus("depth"), deepestEar)),
           std::move(tab)},
      .needs =
          // Half a caliper on either side; the ears inside the side walls; the tabs inside front
          // and back and the tuck flap inside the front's tabs.
      holding({"length", 3}, {"width", 4}, {"depth", 1}),
      .build = buildBox,
  };
}

}  // namespace creasewright
