#include "styles/framed_tray.h"

#include <algorithm>
#include <cmath>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"
#include "styles/parts/needs.h"

namespace creasewright {
namespace {

/// All measures in mm.
struct Tray {
  double openingLength, openingWidth, depth, frame, strip, tab;
  bool longSidesFirst;

  explicit Tray(const Parameters& p)
      : openingLength(p.mm("opening-length")),
        openingWidth(p.mm("opening-width")),
        depth(p.mm("depth")),
        frame(p.mm("frame")),
        strip(p.mm("glue-strip")),
        tab(p.mm("tab")),
        longSidesFirst(p.flag("long-sides-first")) {}

  [[nodiscard]] double length() const { return openingLength + 2 * frame; }
  [[nodiscard]] double width() const { return openingWidth + 2 * frame; }
  /// As long as the corner of the sheet allows; the two tabs in one tube must not meet.
  [[nodiscard]] double tabLength() const {
    constexpr double kGap = 25.4 / 16;
    return std::min(2 * depth + frame + strip, length() / 2 - kGap);
  }
};

/// When the parts move, by the place of their stage in `stages`; and the stages in which card must
/// bend.
struct Order {
  std::vector<std::string> stages;
  int tabs = 0;
  int longWall = 0, longShape = 0, longFrame = 0;
  int shortWall = 0, shortShape = 0, shortFrame = 0;
  std::vector<Bend> bends;

  int add(const char* stage) {
    stages.emplace_back(stage);
    return static_cast<int>(stages.size());
  }
  void bend(int stage, BendCode why) { bends.push_back({stage, why}); }
};

/// Half of what must be between opposite sides for their sections to swing past one another.
double swing(const Tray& t) { return std::hypot(t.depth, t.frame); }

/// The same for sides that stand while their inner walls and strips are folded together: the most
/// of d sin x + s sin 2x.
double reachStanding(const Tray& t) {
  const double c =
      (std::sqrt(t.depth * t.depth + 32 * t.strip * t.strip) - t.depth) / (8 * t.strip);
  return std::sqrt(1 - c * c) * (t.depth + 2 * t.strip * c);
}

/// The tabs lie against the long walls before the sides are rolled over them; the mitres come last.
/// A side's inner wall and strip are folded to their angles, then its frame swings: the section
/// turns about the wall's upper edge, its lower corner rises at once and stays clear of base and
/// tabs; turned about the frame's inner edge the strip would go through the base. Sides too deep
/// for that are rolled in one go.
Order tabsFirst(const Tray& t) {
  Order order;
  const bool deepLong = 2 * swing(t) > t.width();
  const bool deepShort = 2 * std::max(swing(t), reachStanding(t)) > t.length();
  if (!deepLong) order.longShape = order.add("shape-long-sides");
  order.tabs = order.add("fold-tabs");
  order.shortWall = order.add("raise-short-sides");
  order.longWall = order.add("long-sides-to-tabs");
  order.longFrame = order.add("long-sides-over-tabs");
  if (!deepShort) order.shortShape = order.add("shape-short-sides");
  order.shortFrame = order.add("short-sides-over-long");
  if (deepLong) {
    order.longShape = order.longFrame;
    order.bend(order.longFrame, BendCode::InnerWallsCurl);
  }
  if (deepShort) {
    order.shortShape = order.shortFrame;
    order.bend(order.shortFrame, BendCode::InnerWallsCurl);
  }
  return order;
}

/// All sides are rolled while they lie flat; the tabs go into the long sides' ends last.
Order longSidesFirst() {
  Order order;
  order.longShape = order.longFrame = order.add("roll-long-sides");
  order.longWall = order.add("raise-long-sides");
  order.tabs = order.add("fold-tabs");
  order.shortShape = order.shortFrame = order.add("roll-short-sides");
  order.shortWall = order.add("raise-short-sides");
  order.bend(order.shortWall, BendCode::TabsFedIn);
  return order;
}

Shape base(const Tray& t) {
  Shape shape = rectangle(t.length(), t.width());
  shape.edges = {"front", "right", "back", "left"};
  return shape;
}

/// A tab with its outer corners notched away so that it finds its way into the tube.
Shape notchedTab(const Tray& t) {
  const double notch = std::min(t.tab / 4, t.tabLength() / 4);
  const double l = t.tabLength();
  return {{{0, 0}, {t.tab, 0}, {t.tab, l - notch}, {t.tab - notch, l}, {notch, l}, {0, l - notch}},
          {"inner", "right", "notch", "outer", "notch", "left"}};
}

/// Outer wall, frame, inner wall and glue strip, all over the full length of the base.
void addLongSide(NetBuilder& net, const Tray& t, const Order& order, const std::string& side) {
  const std::string at = "base/" + side;
  net.hinge({"base", side}, at + "/wall", rectangle(t.length(), t.depth), {90, order.longWall});
  net.hinge({at + "/wall", "outer"}, at + "/frame", rectangle(t.length(), t.frame),
            {90, order.longFrame});
  net.hinge({at + "/frame", "outer"}, at + "/inner-wall", rectangle(t.length(), t.depth),
            {90, order.longShape});
  net.hinge({at + "/inner-wall", "outer"}, at + "/glue-strip", rectangle(t.length(), t.strip),
            {90, order.longShape});
  net.mate(at + "/glue-strip", "base", Face::Inside, Method::Glue, false);
}

/// The same strips, the inner ones only as wide as the opening; the frame's ends are mitred and lie
/// on the long sides' frame; a tab at each end of the outer wall. `first` and `second` are the long
/// sides met at the start and the end of this side's own crease.
void addShortSide(NetBuilder& net, const Tray& t, const Order& order, const std::string& side,
                  const std::string& first, const std::string& second) {
  const std::string at = "base/" + side;
  const double f = t.frame;
  net.hinge({"base", side}, at + "/wall", rectangle(t.width(), t.depth), {90, order.shortWall});
  net.hinge({at + "/wall", "outer"}, at + "/frame", trapezoid(t.width(), f, f, f),
            {90, order.shortFrame});
  net.hinge({at + "/frame", "outer"}, at + "/inner-wall", rectangle(t.openingWidth, t.depth),
            {90, order.shortShape});
  net.hinge({at + "/inner-wall", "outer"}, at + "/glue-strip", rectangle(t.openingWidth, t.strip),
            {90, order.shortShape});
  net.mate(at + "/glue-strip", "base", Face::Inside, Method::Glue, false);

  const double w = t.width();
  net.mate(at + "/frame", "base/" + first + "/frame", Face::Outside, Method::Glue, false,
           {{0, 0}, {f, 0}, {f, f}});
  net.mate(at + "/frame", "base/" + second + "/frame", Face::Outside, Method::Glue, false,
           {{w - f, 0}, {w, 0}, {w - f, f}});

  net.hinge({at + "/wall", "left", t.depth - t.tab}, at + "/" + first + "-tab", notchedTab(t),
            {90, order.tabs});
  net.hinge({at + "/wall", "right", 0, t.tab}, at + "/" + second + "-tab", notchedTab(t),
            {90, order.tabs});
  net.mate(at + "/" + first + "-tab", "base/" + first + "/wall", Face::Inside, Method::Glue, true);
  net.mate(at + "/" + second + "-tab", "base/" + second + "/wall", Face::Inside, Method::Glue,
           true);
}

std::vector<Piece> buildTray(const Parameters& parameters, const Workbench& bench) {
  const Tray t(parameters);
  const Order order = t.longSidesFirst ? longSidesFirst() : tabsFirst(t);
  NetBuilder net(order.stages);
  net.root("base", base(t));
  addLongSide(net, t, order, "front");
  addLongSide(net, t, order, "back");
  addShortSide(net, t, order, "left", "front", "back");
  addShortSide(net, t, order, "right", "back", "front");
  // Above the tabs the corners of the walls are held by the mitres of the frame.
  if (t.depth - t.tab > 2)
    net.open({"base/front/wall", "left"}, {"base/right/wall", "right"}, "held-beside")
        .open({"base/front/wall", "right"}, {"base/left/wall", "left"}, "held-beside")
        .open({"base/back/wall", "left"}, {"base/left/wall", "right"}, "held-beside")
        .open({"base/back/wall", "right"}, {"base/right/wall", "left"}, "held-beside");
  for (const Bend& bend : order.bends) net.bends(bend.stage, bend.why);
  net.showing({"base", "base/front/wall", "base/back/wall", "base/left/wall", "base/right/wall",
               "base/front/frame", "base/back/frame", "base/left/frame", "base/right/frame"});

  Cavity cavity{"base", {t.length() / 2, t.width() / 2, t.depth / 2}};
  cavity.high.z = t.depth + bench.caliper.mm() / 2;  // level with the top of the frame
  return {{"tray", net.take(), cavity}};
}

}  // namespace

Style framedTray() {
  const Length smallestOpening = mm(10);
  const Length widestFrame = mm(80);
  return {
      .id = "framed-tray",
      .title = worded("styles", "Framed tray"),
      .summary = worded("styles", "The product lies in a recess with a mitred rim around it."),
      .lying = Lying::Flat,
      .words = {.stages =
                    {{"roll-long-sides", worded("stages", "roll the long sides"),
                      worded("stages", "Roll both long sides inwards: strip, inner wall, frame.")},
                     {"raise-long-sides", worded("stages", "raise the long sides"),
                      worded("stages", "Stand both long sides up and press.")},
                     {"fold-tabs", worded("stages", "fold the tabs"),
                      worded("stages", "Fold all four corner tabs inwards.")},
                     {"long-sides-to-tabs",
                      worded("stages", "raise the long sides against the tabs"),
                      worded("stages", "Raise both long sides against the tabs and press.")},
                     {"long-sides-over-tabs", worded("stages", "roll the long sides over the tabs"),
                      worded("stages", "Roll both long sides over the tabs and press.")},
                     {"short-sides-over-long",
                      worded("stages", "roll the short sides in, their mitres on top"),
                      worded("stages",
                             "Roll both short sides in, so that their mitres lie on the long "
                             "frames, and press.")},
                     {"shape-long-sides",
                      worded("stages", "fold the strips and inner walls of the long sides"),
                      worded("stages",
                             "Fold strip and inner wall of both long sides to a right angle.")},
                     {"shape-short-sides",
                      worded("stages", "fold the strips and inner walls of the short sides"),
                      worded("stages",
                             "Fold strip and inner wall of both short sides to a right angle.")},
                     {"roll-short-sides", worded("stages", "roll the short sides"),
                      worded("stages", "Roll both short sides inwards: strip, inner wall, frame.")},
                     {"raise-short-sides", worded("stages", "raise the short sides"),
                      worded("stages", "Stand both short sides up.")}},
                .panels = {{"frame", worded("panels", "frame")},
                           {"glue-strip", worded("panels", "glue strip")}}},
      .parameters =
          {measure("opening-length", worded("styles", "Opening length"),
                   worded("styles", "Between the inner walls of the short sides."))
               .standard(Length::inches(7, 2))
               .from(smallestOpening)
               .to(kLargestSide),
           measure("opening-width", worded("styles", "Opening width"),
                   worded("styles", "Between the inner walls of the long sides."))
               .standard(Length::inches(5, 2))
               .from(smallestOpening)
               .to(kLargestSide),
           measure("depth", worded("styles", "Depth"),
                   worded("styles", "From the base to the frame. At least the smallest tab."))
               .standard(Length::inches(1))
               .from(smallestFlap())
               .to(mm(300)),
           measure("frame", worded("styles", "Frame"),
                   worded("styles", "Width of the rim. At least the smallest glue strip."))
               .standard(Length::inches(1, 2))
               .from(smallestFlap())
               .to(widestFrame),
           measure("glue-strip", worded("styles", "Glue strip"),
                   worded("styles", "Turned back under the frame, so no wider than the frame."))
               .standard(Length::inches(3, 8))
               .from(smallestFlap())
               .to(otherPlus("frame"))
               .givesWay(),
           measure("tab", worded("styles", "Tab width"),
                   worded("styles",
                          "Measured up the wall from the base line, so no wider than the depth."))
               .standard(Length::inches(1, 2))
               .from(smallestFlap())
               .to(otherPlus("depth")),
           toggle("long-sides-first", worded("styles", "Long sides first"),
                  worded("styles",
                         "Roll and glue the long sides before the tabs go in: each tab is then "
                         "bent and fed into their open ends."))},
      .needs = holding({"opening-length", 1}, {"opening-width", 1}, {"depth"}),
      .build = buildTray,
  };
}

}  // namespace creasewright
