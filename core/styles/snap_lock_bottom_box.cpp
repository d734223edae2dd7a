#include "styles/snap_lock_bottom_box.h"

#include <algorithm>

#include "styles/parameter_rows.h"
#include "styles/parts/tuck_box.h"

namespace creasewright {
namespace {

/// The bottom of a box of length L and width W (mm), folded in the order panel on the back, two
/// side flaps, panel on the front with its tongue. It holds because the front panel's shoulders lie
/// outside the side flaps and its tongue inside the back panel:
///   depth of back panel + depth of front panel = W + overlap,
///   tongue width <= L - 2 x depth of the side flaps where the tongue passes between them,
///   side flaps deeper than the shoulders where these rest on them.
/// Derived from how the layers must lie; no published source has numbers.
struct SnapBottom {
  double length, width, overlap, t;

  [[nodiscard]] double panelWidth() const { return length - 2 * t; }
  [[nodiscard]] double backDepth() const { return (width + overlap) / 2; }
  /// Of the front panel up to where its tongue begins.
  [[nodiscard]] double shoulderDepth() const { return (width - overlap) / 2; }
  /// From a side wall to the tongue.
  [[nodiscard]] double shoulder() const { return std::min(length / 4, std::max(width / 2, 10.0)); }
  [[nodiscard]] double tongueWidth() const { return length - 2 * shoulder(); }
  /// Of a side flap beside the tongue, and under the shoulder.
  [[nodiscard]] double besideTongue() const { return shoulder() - std::max(0.5, t); }
  [[nodiscard]] double underShoulder() const { return std::min(length / 2 - 1, shoulder() + 10); }
  [[nodiscard]] double atBack() const { return besideTongue() * 0.6; }
  [[nodiscard]] double backInset() const { return std::min(3.0, width / 8); }
};

enum Stage {
  BackAndSeam = 1,
  Walls,
  BottomPanel,
  BottomSides,
  BottomTongue,
  TopDust,
  TopTuck,
  TopLid
};

constexpr double kFrontInset = 1;  // mm

/// Points given from the front wall along the side wall; `mirrored` counts from the back wall.
Polygon alongWall(const SnapBottom& b, Polygon points, bool mirrored) {
  if (!mirrored) return points;
  for (Point& p : points) p.x = b.width - p.x;
  std::ranges::reverse(points);
  return points;
}

/// Deep where the shoulder rests on it, then making way for the tongue.
Shape sideFlap(const SnapBottom& b, bool mirrored) {
  const double s = b.shoulderDepth();
  Polygon outline = alongWall(b,
                              {{0, 0},
                               {b.width, 0},
                               {b.width - b.backInset(), b.atBack()},
                               {s, b.besideTongue()},
                               {s / 2, b.underShoulder()},
                               {kFrontInset, b.underShoulder()}},
                              mirrored);
  if (mirrored) std::ranges::rotate(outline, outline.begin() + 4);  // start at the crease again
  return {outline, {"inner", "side", "side", "side", "side", "side"}};
}

/// Where a side flap lies under the back panel.
Polygon underBackPanel(const SnapBottom& b, bool mirrored) {
  const double from = b.shoulderDepth() + 0.2;
  const double to = b.width - b.backInset() - 0.2;
  return alongWall(b, {{from, b.t}, {to, b.t}, {to, b.atBack()}, {from, b.atBack()}}, mirrored);
}

void addSide(NetBuilder& net, const SnapBottom& b, const std::string& wall, std::string_view edge,
             bool mirrored) {
  const std::string flap = wall + "/bottom-side";
  net.hinge({wall, edge}, flap, sideFlap(b, mirrored), {90, BottomSides});
  net.mate(flap, "front/left/back/bottom-panel", Face::Outside, Method::Rest, false,
           underBackPanel(b, mirrored));
}

/// Panel and tongue on the front; its frame runs from right to left.
void addTongue(NetBuilder& net, const SnapBottom& b) {
  const double w = b.panelWidth();
  const double s = b.shoulderDepth();
  const double reach = b.besideTongue() - b.t;
  net.hinge({"front", "bottom", b.t, w}, "front/bottom-shoulders", rectangle(w, s),
            {90, BottomTongue});
  const double low = s / 4;
  const double high = s / 2;
  net.mate("front/bottom-shoulders", "front/right/bottom-side", Face::Outside, Method::Rest, false,
           {{0, low}, {reach, low}, {reach, high}, {0, high}});
  net.mate("front/bottom-shoulders", "front/left/bottom-side", Face::Outside, Method::Rest, false,
           {{w - reach, low}, {w, low}, {w, high}, {w - reach, high}});
  const double tongue = b.tongueWidth();
  net.hinge({"front/bottom-shoulders", "outer", b.shoulder() - b.t, tongue}, "front/bottom-tongue",
            roundedFlap(tongue, b.overlap, std::min({6.0, b.overlap / 2, tongue / 4})),
            {0, BottomTongue, CreaseKind::Flat});
  net.mate("front/bottom-tongue", "front/left/back/bottom-panel", Face::Inside, Method::Lock, true);
  net.open({"front/bottom-shoulders", "outer"}, {"front/left/back/bottom-panel", "outer"},
           "held-beside");
  net.bends(BottomTongue, BendCode::TuckSlidesIn);
}

std::vector<Piece> buildBox(const Parameters& parameters, const Workbench& bench) {
  const TuckBox box(parameters, bench);
  const SnapBottom b{box.length, box.width, parameters.mm("overlap"), box.t};
  NetBuilder net({"back-and-seam", "walls", "bottom-panel", "bottom-sides", "bottom-tongue",
                  "top-dust-flaps", "top-tuck", "top-lid"});
  addWalls(net, box, frontWall(box), backWall(box), Walls);
  net.hinge({"front/left/back", backEdge(BoxEnd::Bottom), box.fromSeam(), b.panelWidth()},
            "front/left/back/bottom-panel", rectangle(b.panelWidth(), b.backDepth()),
            {90, BottomPanel});
  addSide(net, b, "front/left", leftEdge(BoxEnd::Bottom), false);
  addSide(net, b, "front/right", rightEdge(BoxEnd::Bottom), true);
  addTongue(net, b);
  addTuckEnd(net, box, {BoxEnd::Top, LidOn::Back, TopDust, TopTuck, TopLid});
  net.showing({"front/bottom-shoulders", "front/left/bottom-side", "front/right/bottom-side"});
  return {{"box", net.take(), insideOf(box)}};
}

}  // namespace

Style snapLockBottomBox() {
  std::vector<ParameterSpec> parameters = tuckBoxParameters();
  parameters.push_back(
      measure("overlap", worded("styles", "Bottom overlap"),
              worded("styles",
                     "How far the tongue goes in over the back's bottom, at most half the width."))
          .standard(mm(10))
          .from(mm(8))
          .to(partOf("width", 2))
          .givesWay());
  return {
      .id = "snap-lock-bottom-box",
      .title = worded("styles", "Snap-lock bottom box"),
      .summary = worded("styles",
                        "A tuck box whose bottom folds together by hand and locks without glue."),
      .traits = {.difficulty = 2,
                 .suits = worded("styles", "Jars, mugs, bottles, candles, heavier things.")},
      .words =
          tuckEndWords() +
          NetWords{
              .stages = {{"bottom-panel", worded("stages", "fold the bottom panel"),
                          worded("stages", "Fold in the panel of the bottom with the slot.")},
                         {"bottom-sides", worded("stages", "fold the sides of the bottom"),
                          worded("stages", "Fold both sides of the bottom in over it.")},
                         {"bottom-tongue", worded("stages", "tuck in the bottom tongue"),
                          worded("stages",
                                 "Fold the last panel over and push its tongue into the slot.")}},
              .panels = {{"bottom-panel", worded("panels", "bottom panel")},
                         {"bottom-shoulders", worded("panels", "bottom shoulders")},
                         {"bottom-tongue", worded("panels", "bottom tongue")}}},
      .parameters = std::move(parameters),
      .needs = tuckBoxNeeds(),
      .build = buildBox,
  };
}

}  // namespace creasewright
