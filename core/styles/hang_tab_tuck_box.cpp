#include "styles/hang_tab_tuck_box.h"

#include <algorithm>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"
#include "styles/parts/punched_hole.h"
#include "styles/parts/tuck_box.h"

namespace creasewright {
namespace {

/// The turned-over half is shorter by this (mm), so that it does not stand on the lid.
constexpr double kTurnedGap = 1.5;

enum Stage {
  Header = 1,
  BackAndSeam,
  Walls,
  BottomDust,
  BottomTuck,
  BottomLid,
  TopDust,
  TopTuck,
  TopLid
};

/// The back runs on above the top and is doubled there; the hole goes through both layers. Both
/// lids hang on the front and tuck in behind, so that the header stands in line with the back.
std::vector<Piece> buildBox(const Parameters& parameters, const Workbench& bench) {
  const TuckBox b(parameters, bench);
  const double header = parameters.mm("header");
  const double hole = parameters.mm("hole");
  NetBuilder net({"header", "back-and-seam", "walls", "bottom-dust-flaps", "bottom-tuck",
                  "bottom-lid", "top-dust-flaps", "top-tuck", "top-lid"});
  addWalls(net, b, frontWall(b), backWall(b), Walls);

  const double w = b.backLength;
  const double turned = header - kTurnedGap;
  const double holeAt = header / 2;
  Shape single = rectangle(w, header);
  single.openings = {punchedHole({w / 2, holeAt}, hole)};
  Shape doubled = rectangle(w, turned);
  doubled.openings = {punchedHole({w / 2, header - holeAt}, hole)};
  const std::string at = "front/left/back/header";
  net.hinge({"front/left/back", backEdge(BoxEnd::Top)}, at, single, {0, Header, CreaseKind::Flat})
      .hinge({at, "outer"}, at + "/doubling", doubled, {180, Header})
      .mate(at + "/doubling", at, Face::Inside, Method::Glue, true)
      .showing({at, at + "/doubling"});

  addTuckEnd(net, b, {BoxEnd::Bottom, LidOn::Front, BottomDust, BottomTuck, BottomLid});
  addTuckEnd(net, b, {BoxEnd::Top, LidOn::Front, TopDust, TopTuck, TopLid});
  return {{"box", net.take(), insideOf(b)}};
}

/// Card on all sides of the hole: a quarter of the header, and of the back, each way.
std::int64_t largestHole(const Parameters& p, const Workbench&) {
  return std::min(p.length("header"), p.length("length") - mm(6)).nm() / 2;
}

}  // namespace

Style hangTabTuckBox() {
  std::vector<ParameterSpec> parameters = tuckBoxParameters();
  parameters.push_back(measure("header", worded("styles", "Hang tab"),
                               worded("styles", "How far the doubled tab stands above the box."))
                           .standard(Length::inches(5, 4))
                           .from(greatest(mm(16), plus(smallestFlap(), Length::mm(kTurnedGap))))
                           .to(mm(100)));
  parameters.push_back(
      measure("hole", worded("styles", "Hole"),
              worded("styles", "Across the hole for a peg; card must stay on all sides."))
          .standard(mm(8))
          .from(mm(3))
          .to(largestHole));
  return {
      .id = "hang-tab-tuck-box",
      .title = worded("styles", "Hang-tab tuck box"),
      .summary = worded("styles",
                        "A tuck box whose back runs up into a doubled tab with a hole for a peg."),
      .traits = {.difficulty = 1,
                 .suits =
                     worded("styles", "Light things that hang on a peg: lip balm, soap, pens.")},
      .words = tuckEndWords() +
               NetWords{.stages = {{"header", worded("stages", "double the hang tab"),
                                    worded("stages", "Fold the hang tab double and press.")}},
                        .panels = {{"doubling", worded("panels", "doubling")},
                                   {"header", worded("panels", "hang tab")}}},
      .parameters = std::move(parameters),
      .needs = tuckBoxNeeds(),
      .build = buildBox,
  };
}

}  // namespace creasewright
