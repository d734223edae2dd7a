#include "styles/pillow_box.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

enum Stage { Wrap = 1, PressIn };

/// Flat strips that stand for the bent card; odd, so that one lies level in the middle.
constexpr int kStrips = 11;

/// Front and back bend to cylinders whose rulings run along the length; the end flaps are mirror
/// images of their ends at planes that slope by 45 degrees, so that their rulings stand upright.
/// Across the width the bent card is as high as the scored arc lies above its chord (from the
/// mirror, length along the paper being kept); the tests hold the closed formula beside it. mm.
struct Pillow {
  double length, width, bulge, seam, caliper;
  std::array<double, kStrips + 1> at;      ///< where the rulings cross the width
  std::array<double, kStrips + 1> height;  ///< of the arc over its chord there

  Pillow(const Parameters& p, const Workbench& bench);

  /// How steep strip `i` stands, degrees.
  [[nodiscard]] double slope(int i) const {
    return toDegrees(
        std::asin((height[next(i)] - height[index(i)]) / (at[next(i)] - at[index(i)])));
  }
  /// Between a strip and its flap: the angle of their outward normals.
  [[nodiscard]] double flapFold(int i) const {
    const double s = std::sin(slope(i) * std::numbers::pi / 180);
    return toDegrees(std::acos(-s * s));
  }
  /// A flap just misses the opposite score.
  [[nodiscard]] double reach(std::size_t i) const {
    return std::max(height[i] - caliper, height[i] / 2);
  }
  static std::size_t index(int i) { return static_cast<std::size_t>(i); }
  static std::size_t next(int i) { return static_cast<std::size_t>(i) + 1; }
};

Pillow::Pillow(const Parameters& p, const Workbench& bench)
    : length(p.mm("length")),
      width(p.mm("width")),
      bulge(p.mm("depth") / 2),
      seam(p.mm("seam")),
      caliper(bench.caliper.mm()),
      at{},
      height{} {
  const double radius = (width * width / 4 + bulge * bulge) / (2 * bulge);
  const double first = std::max(width / kStrips, seam + 1);  // the seam lies on one strip
  for (int i = 0; i <= kStrips; ++i) {
    const double u = i == 0         ? 0
                     : i == kStrips ? width
                                    : first + (width - 2 * first) * (i - 1) / (kStrips - 2);
    const double x = u - width / 2;
    at[index(i)] = u;
    height[index(i)] =
        i == 0 || i == kStrips ? 0 : std::sqrt(radius * radius - x * x) - (radius - bulge);
  }
}

/// Strip `i` of a curved panel: the middle one has its name, the others a number besides.
std::string part(const std::string& name, int i) {
  return i == kStrips / 2 ? name : name + '#' + std::to_string(i + 1);
}

std::string strip(const std::string& side, int i) { return part(side, i); }

std::string flap(const std::string& side, const std::string& end, int i) {
  return part(side + '/' + end + "-flap", i);
}

Shape stripShape(const Pillow& b, int i) {
  const auto j = Pillow::index(i);
  return {{{b.at[j], b.height[j]},
           {b.at[j + 1], b.height[j + 1]},
           {b.at[j + 1], b.length - b.height[j + 1]},
           {b.at[j], b.length - b.height[j]}},
          {"near", "right", "far", "left"}};
}

/// The part of a flap that hangs on strip `i`; a triangle at the ends of the curve.
Shape flapShape(const Pillow& b, int i) {
  const auto j = Pillow::index(i);
  Shape shape;
  const auto corner = [&](double x, double y, const char* edge) {
    shape.outline.push_back({x, y});
    shape.edges.emplace_back(edge);
  };
  if (i > 0) corner(b.at[j], b.height[j], "left");
  corner(b.at[j], i > 0 ? -b.reach(j) : 0, "outer");
  if (i < kStrips - 1) corner(b.at[j + 1], -b.reach(j + 1), "right");
  corner(b.at[j + 1], i < kStrips - 1 ? b.height[j + 1] : 0, "crease");
  return restedOn(shape, "crease");
}

/// The same at the far end.
Shape mirroredFlap(const Pillow& b, int i) {
  Shape shape = flapShape(b, i);
  const double width = shape.outline[1].x;
  for (Point& p : shape.outline) p.x = width - p.x;
  std::ranges::reverse(shape.outline);
  std::ranges::reverse(shape.edges);
  std::ranges::rotate(shape.edges, shape.edges.begin() + 1);
  return restedOn(shape, "crease");
}

/// A side: closed flat, so that the seam can be pressed; opened by the bulge of the ends.
HingeFold sideFold(const Pillow& b) {
  HingeFold fold{180 - 2 * b.slope(0), PressIn};
  fold.way = {{0, Angle()}, {Wrap, Angle::degrees(180)}};
  return fold;
}

/// Between two neighbours; a ruling, not a score.
HingeFold ruling(const Pillow& b, int i) {
  return {b.slope(i) - b.slope(i + 1), PressIn, CreaseKind::Flat};
}

void addEndFlaps(NetBuilder& net, const Pillow& b, const std::string& side) {
  for (const std::string end : {"near", "far"}) {
    for (int i = 0; i < kStrips; ++i)
      net.hinge({strip(side, i), end}, flap(side, end, i),
                end == "near" ? flapShape(b, i) : mirroredFlap(b, i), {b.flapFold(i), PressIn});
    for (int i = 0; i + 1 < kStrips; ++i) {
      HingeFold fold = ruling(b, i);
      fold.degrees = -fold.degrees;
      net.loop({flap(side, end, i), "right"}, flap(side, end, i + 1), fold);
    }
  }
}

void addStrips(NetBuilder& net, const Pillow& b) {
  constexpr int kMiddle = kStrips / 2;
  net.root(strip("front", kMiddle), stripShape(b, kMiddle));
  for (int i = kMiddle + 1; i < kStrips; ++i)
    net.hinge({strip("front", i - 1), "right"}, strip("front", i),
              restedOn(stripShape(b, i), "left"), ruling(b, i - 1));
  for (int i = kMiddle - 1; i >= 0; --i)
    net.hinge({strip("front", i + 1), "left"}, strip("front", i),
              restedOn(stripShape(b, i), "right"), ruling(b, i));
  net.hinge({strip("front", kStrips - 1), "right"}, strip("back", 0),
            restedOn(stripShape(b, 0), "left"), sideFold(b));
  for (int i = 1; i < kStrips; ++i)
    net.hinge({strip("back", i - 1), "right"}, strip("back", i), restedOn(stripShape(b, i), "left"),
              ruling(b, i - 1));
  const double inset = b.height[1] * b.seam / b.at[1] + 1;
  net.hinge({strip("back", kStrips - 1), "right"}, "back/seam",
            trapezoid(b.length, b.seam, inset, inset), sideFold(b))
      .mate("back/seam", strip("front", 0), Face::Inside, Method::Glue, true)
      .meetsIn(Wrap);
}

std::vector<Piece> buildPillow(const Parameters& p, const Workbench& bench) {
  const Pillow b(p, bench);
  NetBuilder net({"glue-tube-flat", "press-in-ends"});
  addStrips(net, b);
  for (const std::string side : {"front", "back"}) {
    addEndFlaps(net, b, side);
    for (int i = 0; i < kStrips; ++i) net.showing({strip(side, i)});
  }
  // The back runs the other way. Its flaps close first.
  // The tips of the ends only lie in the corners: they are pulled out to open the box.
  for (const std::string end : {"near", "far"})
    for (const int i : {0, kStrips - 1}) {
      const int beyond = kStrips - 1 - i;
      net.open({flap("front", end, i), "outer"}, {strip("back", beyond), end}, "opens")
          .open({flap("back", end, i), "outer"}, {strip("front", beyond), end}, "opens");
    }
  for (const std::string end : {"near", "far"})
    for (int i = 1; i + 1 < kStrips; ++i)
      net.mate(flap("back", end, i), flap("front", end, kStrips - 1 - i), Face::Inside,
               Method::Rest, true);
  net.bends(PressIn, BendCode::CurvedScore);
  return {{"box", net.take(),
           Cavity{strip("front", kStrips / 2), {b.width / 2, b.length / 2, b.bulge}, {1, 0, 2}}}};
}

/// In the middle half of the width the bulge is at least 0.7 of its greatest; the ends curve in by
/// the whole bulge.
std::vector<Need> pillowNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const Length t = bench.caliper;
  const Length thick = room.eased(Axis::Height) + t * 4;
  const Length width = std::max((room.eased(Axis::Width) + t * 6) * 2, thick * 4);
  const Length depth = std::max(Length::mm(thick.mm() / 0.7), bench.grid.roundUp(width) / 8);
  return {{"width", Axis::Width, width},
          {"depth", Axis::Height, depth},
          {"length", Axis::Length, room.eased(Axis::Length) + bench.grid.roundUp(depth) + t * 6}};
}

}  // namespace

Style pillowBox() {
  return {
      .id = "pillow-box",
      .title = worded("styles", "Pillow box"),
      .summary = worded("styles", "Two curved scores at each end press in and hold the box shut."),
      .lying = Lying::Flat,
      .traits = {.difficulty = 1,
                 .suits = worded("styles", "Jewellery, ties, gift cards, sweets, soap slices.")},
      .words = {.stages = {{"press-in-ends", worded("stages", "press in the curved ends")}},
                .panels = {{"far-flap", worded("panels", "far flap")},
                           {"near-flap", worded("panels", "near flap")}}},
      .parameters = {measure(
                         "length", worded("styles", "Length"),
                         worded("styles", "Of the straight sides; the ends curve in from there."))
                         .standard(mm(120))
                         .from([](const Parameters& p, const Workbench&) {
                           return p.length("depth").nm() * 3 / 2 + 20'000'000;
                         })
                         .to(kLargestSide),
                     measure("width", worded("styles", "Width"),
                             worded("styles", "Of front and back, laid flat."))
                         .standard(mm(80))
                         .from(greatest(mm(50), times(6, smallestFlap())))
                         .to(kLargestSide),
                     measure("depth", worded("styles", "Depth"),
                             worded("styles",
                                    "In the middle, between the curved scores: a tenth to four "
                                    "tenths of the width."))
                         .standard(mm(22))
                         .from(partOf("width", 10))
                         .to([](const Parameters& p, const Workbench&) {
                           return p.length("width").nm() / 10 * 4;
                         }),
                     measure("seam", worded("styles", "Glue seam"),
                             worded("styles", "Joins back and front at one side."))
                         .standard(mm(10))
                         .from(smallestFlap())
                         .to(partOf("width", 5))},
      .needs = pillowNeeds,
      .build = buildPillow,
  };
}

}  // namespace creasewright
