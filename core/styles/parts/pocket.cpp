#include "styles/parts/pocket.h"

#include <algorithm>
#include <string>

#include "styles/parameter_rows.h"
#include "styles/parts/needs.h"
#include "styles/parts/thumb_notch.h"

namespace creasewright {
namespace {

/// `edge` of the pocket, whose frame has x to the left of the back.
void addSide(NetBuilder& net, const Pocket& p, std::string_view edge, const std::string& name,
             int stage) {
  const std::string pocket = "back/bottom/pocket";
  const std::string side = pocket + '/' + name;
  const double taper = std::min(p.tab * 0.27, p.height / 4);
  net.hinge({pocket, edge}, side, rectangle(p.height, p.depth), {90, stage})
      .hinge({side, "outer"}, side + "/tab", trapezoid(p.height, p.tab, taper, taper), {90, stage})
      .mate(side + "/tab", "back", Face::Inside, Method::Glue, true);
}

}  // namespace

void addPocket(NetBuilder& net, const Pocket& p, int sideStage, int spineStage, int pocketStage) {
  Shape front = rectangle(p.width, p.height);
  if (p.notch > 0) front = withThumbNotch(front, "outer", p.notch);
  net.hinge({"back", "bottom"}, "back/bottom", rectangle(p.width, p.depth), {90, spineStage})
      .hinge({"back/bottom", "outer"}, "back/bottom/pocket", front, {90, pocketStage})
      .showing({"back/bottom/pocket"});
  addSide(net, p, "left", "right-side", sideStage);
  addSide(net, p, "right", "left-side", sideStage);
  net.open({"back/bottom", "left"}, {"back/bottom/pocket/right-side", "left"}, "held-beside")
      .open({"back/bottom", "right"}, {"back/bottom/pocket/left-side", "right"}, "held-beside");
}

Cavity insideOf(const Pocket& p, double height) {
  Cavity cavity{"back", {p.width / 2, height / 2, p.depth / 2}, {1, 0, 2}};
  cavity.high.y = height;
  return cavity;
}

std::vector<ParameterSpec> pocketParameters() {
  const Length mm3 = mm(3);
  const Limit shortest = times(3, greatest(smallestFlap(), mm(8)));
  return {
      measure("length", worded("styles", "Length"),
              worded("styles", "Upright, along the longest side of what goes in."))
          .standard(mm(95))
          .from(shortest)
          .to(kLargestSide),
      measure("width", worded("styles", "Width"),
              worded("styles", "Across. Both glue tabs must fit side by side."))
          .standard(mm(65))
          .from(plus(times(2, smallestFlap()), mm(10)))
          .to(kLargestSide),
      measure("depth", worded("styles", "Depth"),
              worded("styles", "Of the strips between the covers. Narrower ones cannot be scored."))
          .standard(mm(6))
          .from(mm3)
          .to(mm(300)),
      measure("pocket", worded("styles", "Pocket"),
              worded("styles", "How high the pocket is, at most three quarters of the length."))
          .standard(mm(30))
          .from(plus(greatest(smallestFlap(), mm(8)), mm3))
          .to([](const Parameters& p, const Workbench&) {
            return p.length("length").nm() / 4 * 3;
          }),
      measure("tab", worded("styles", "Glue tab"),
              worded("styles", "Holds the pocket's sides on the back."))
          .standard(mm(10))
          .from(smallestFlap())
          .to(partOf("width", 2, mm(2)))
          .givesWay()};
}

StyleNeeds pocketNeeds() { return holding({"length", 1}, {"width", 1}, {"depth", 3}); }

NetWords pocketWords() {
  return {.stages = {{"cover", worded("stages", "fold the cover over"),
                      worded("stages", "Fold the cover over the pocket.")},
                     {"cover-spine", worded("stages", "fold the strip of the cover"),
                      worded("stages", "Fold up the strip of the cover.")},
                     {"pocket", worded("stages", "fold up the pocket and glue its tabs"),
                      worded("stages", "Fold the pocket up and press its tabs.")},
                     {"pocket-sides", worded("stages", "fold the sides of the pocket"),
                      worded("stages", "Fold the sides of the pocket inwards.")},
                     {"spine", worded("stages", "fold up the strip"),
                      worded("stages", "Fold up the strip: it gives the pocket its depth.")}},
          .panels = {{"cover", worded("panels", "cover")},
                     {"left-side", worded("panels", "left side")},
                     {"pocket", worded("panels", "pocket")},
                     {"right-side", worded("panels", "right side")}}};
}

}  // namespace creasewright
