#include <algorithm>

#include "net/net_builder.h"
#include "styles/library.h"
#include "styles/limits.h"

namespace creasewright {
namespace {

/// All measures in mm.
struct Tray {
  double openingLength, openingWidth, depth, frame, strip, tab;

  explicit Tray(const Parameters& p)
      : openingLength(p.mm("opening-length")),
        openingWidth(p.mm("opening-width")),
        depth(p.mm("depth")),
        frame(p.mm("frame")),
        strip(p.mm("glue-strip")),
        tab(p.mm("tab")) {}

  [[nodiscard]] double length() const { return openingLength + 2 * frame; }
  [[nodiscard]] double width() const { return openingWidth + 2 * frame; }
  /// As long as the corner of the sheet allows; the two tabs in one tube must not meet.
  [[nodiscard]] double tabLength() const {
    constexpr double kGap = 25.4 / 16;
    return std::min(2 * depth + frame + strip, length() / 2 - kGap);
  }
};

enum Stage { RollLong = 1, RaiseLong, FoldTabs, RollShort, RaiseShort };

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
void addLongSide(NetBuilder& net, const Tray& t, const std::string& side) {
  const std::string at = "base/" + side;
  net.hinge({"base", side}, at + "/wall", rectangle(t.length(), t.depth), {90, RaiseLong});
  net.hinge({at + "/wall", "outer"}, at + "/frame", rectangle(t.length(), t.frame), {90, RollLong});
  net.hinge({at + "/frame", "outer"}, at + "/inner-wall", rectangle(t.length(), t.depth),
            {90, RollLong});
  net.hinge({at + "/inner-wall", "outer"}, at + "/glue-strip", rectangle(t.length(), t.strip),
            {90, RollLong});
  net.mate(at + "/glue-strip", "base", Face::Inside, Method::Glue, false);
}

/// The same strips, the inner ones only as wide as the opening; the frame's ends are mitred and lie
/// on the long sides' frame; a tab at each end of the outer wall. `first` and `second` are the long
/// sides met at the start and the end of this side's own crease.
void addShortSide(NetBuilder& net, const Tray& t, const std::string& side, const std::string& first,
                  const std::string& second) {
  const std::string at = "base/" + side;
  const double f = t.frame;
  net.hinge({"base", side}, at + "/wall", rectangle(t.width(), t.depth), {90, RaiseShort});
  net.hinge({at + "/wall", "outer"}, at + "/frame", trapezoid(t.width(), f, f, f), {90, RollShort});
  net.hinge({at + "/frame", "outer"}, at + "/inner-wall", rectangle(t.openingWidth, t.depth),
            {90, RollShort});
  net.hinge({at + "/inner-wall", "outer"}, at + "/glue-strip", rectangle(t.openingWidth, t.strip),
            {90, RollShort});
  net.mate(at + "/glue-strip", "base", Face::Inside, Method::Glue, false);

  const double w = t.width();
  net.mate(at + "/frame", "base/" + first + "/frame", Face::Outside, Method::Glue, false,
           {{0, 0}, {f, 0}, {f, f}});
  net.mate(at + "/frame", "base/" + second + "/frame", Face::Outside, Method::Glue, false,
           {{w - f, 0}, {w, 0}, {w - f, f}});

  net.hinge({at + "/wall", "left", t.depth - t.tab}, at + "/" + first + "-tab", notchedTab(t),
            {90, FoldTabs});
  net.hinge({at + "/wall", "right", 0, t.tab}, at + "/" + second + "-tab", notchedTab(t),
            {90, FoldTabs});
  net.mate(at + "/" + first + "-tab", "base/" + first + "/wall", Face::Inside, Method::Glue, true);
  net.mate(at + "/" + second + "-tab", "base/" + second + "/wall", Face::Inside, Method::Glue,
           true);
}

std::vector<Piece> buildTray(const Parameters& parameters, const Making& making) {
  const Tray t(parameters);
  NetBuilder net({"roll-long-sides", "raise-long-sides", "fold-tabs", "roll-short-sides",
                  "raise-short-sides"});
  net.root("base", base(t));
  addLongSide(net, t, "front");
  addLongSide(net, t, "back");
  addShortSide(net, t, "left", "front", "back");
  addShortSide(net, t, "right", "back", "front");
  // Above the tabs the corners of the walls are held by the mitres of the frame.
  if (t.depth - t.tab > 2)
    net.open({"base/front/wall", "left"}, {"base/right/wall", "right"}, "held-beside")
        .open({"base/front/wall", "right"}, {"base/left/wall", "left"}, "held-beside")
        .open({"base/back/wall", "left"}, {"base/left/wall", "right"}, "held-beside")
        .open({"base/back/wall", "right"}, {"base/right/wall", "left"}, "held-beside");
  net.showing({"base", "base/front/wall", "base/back/wall", "base/left/wall", "base/right/wall",
               "base/front/frame", "base/back/frame", "base/left/frame", "base/right/frame"});

  Cavity cavity{"base", {t.length() / 2, t.width() / 2, t.depth / 2}};
  cavity.high.z = t.depth + making.caliper.mm() / 2;  // level with the top of the frame
  return {{"tray", net.take(), cavity}};
}

std::vector<Need> trayNeeds(const Room& room, const Parameters&, const Making& making) {
  return {{"opening-length", Axis::Length, room.eased(Axis::Length) + making.caliper},
          {"opening-width", Axis::Width, room.eased(Axis::Width) + making.caliper},
          {"depth", Axis::Height, room.eased(Axis::Height)}};
}

}  // namespace

Style framedTray() {
  const Length smallestOpening = Length::nanometres(10'000'000);
  const Length widestFrame = Length::nanometres(80'000'000);
  return {
      .id = "framed-tray",
      .title = "Framed tray",
      .summary = "The product lies in a recess with a mitred rim around it.",
      .lying = Lying::Flat,
      .parameters =
          {{"opening-length", "Opening length", "Between the inner walls of the short sides.",
            ParameterKind::Length, Length::inches(9, 2).nm(), fixed(smallestOpening),
            fixed(kLargestSide)},
           {"opening-width", "Opening width", "Between the inner walls of the long sides.",
            ParameterKind::Length, Length::inches(3, 2).nm(), fixed(smallestOpening),
            fixed(kLargestSide)},
           {"depth", "Depth", "From the base to the frame. At least the smallest tab.",
            ParameterKind::Length, Length::inches(1).nm(), smallestFlap(),
            fixed(Length::nanometres(300'000'000))},
           {"frame", "Frame", "Width of the rim. At least the smallest glue strip.",
            ParameterKind::Length, Length::inches(3, 8).nm(), smallestFlap(), fixed(widestFrame)},
           {"glue-strip", "Glue strip", "Turned back under the frame, so no wider than the frame.",
            ParameterKind::Length, Length::inches(3, 8).nm(), smallestFlap(), otherPlus("frame")},
           {"tab", "Tab width",
            "Measured up the wall from the base line, so no wider than the depth.",
            ParameterKind::Length, Length::inches(1, 2).nm(), smallestFlap(), otherPlus("depth")}},
      .needs = trayNeeds,
      .build = buildTray,
  };
}

}  // namespace creasewright
