#include "extras/tied_bow.h"

#include <algorithm>
#include <cmath>

#include "extras/ribbon_strips.h"
#include "extras/ribbon_way.h"
#include "folding/surfaces/scene.h"
#include "folding/surfaces/upright.h"
#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kTiedKnot = 4;              // widths of ribbon
constexpr double kTailShare = 0.75;          // of the span
constexpr double kLeastTail = 0.4;           // of the span: the tails of a wide ribbon
constexpr double kGenerousSpan = 3;          // widths of span, for which tails are made shorter
constexpr double kLeastLoops = 2;            // widths of span: less shows no loop
constexpr double kSpanOfBox = 0.9;           // of its length, the most that a bow spans
constexpr double kAside = 25;                // degrees
constexpr double kTailsOff = 1.7;            // mm over what is under them, over ribbons that cross
constexpr double kOverFoot = 2 * kTailsOff;  // mm, of what would reach the ground
constexpr double kUnderKnot = 0.3;           // mm

/// Where ribbons cross, its loops to both sides of who looks and its tails towards them.
Transform knotAt(const RibbonNeed& ribbon) {
  const Transform crossing = crossingOf(ribbon);
  const Point3 up = ribbon.round.up;
  const Point3 eye = camera(frontView(standardView(), up), up).towardsEye;
  const double x = dot(crossing.turn({1, 0, 0}), eye);
  const bool level = std::abs(dot(crossing.normal(), up)) < 0.5;
  if (level || std::abs(x) <= std::abs(dot(crossing.turn({0, 1, 0}), eye))) return crossing;
  return crossing.after(Transform::rotationZ(Angle::degrees(x > 0 ? 90 : -90)));
}

/// The axis of the box along a knot's x.
std::size_t axisAlong(const RibbonNeed& ribbon, const Transform& knot) {
  const Point3 x = knot.turn({1, 0, 0});
  std::size_t along = 0;
  for (std::size_t axis = 1; axis < 3; ++axis)
    if (std::abs(dot(ribbon.round.axes.at(axis), x)) >
        std::abs(dot(ribbon.round.axes.at(along), x)))
      along = axis;
  return along;
}

/// What its tails lie on as it is seen along the knot's x: mm along its -y, and out of its plane.
Polygon inProfile(const RibbonNeed& ribbon, const Transform& knot, const Polygon& under) {
  const OutsideBox& box = ribbon.round;
  const std::size_t axis = axisAlong(ribbon, knot);
  const Transform back = knot.inverse();
  Polygon seen;
  for (const Area& part : offset(region(under), kTailsOff))
    for (const Point& p : part.outer) {
      const Point3 at = back.apply(box.centre + box.axes.at((axis + 1) % 3) * p.x +
                                   box.axes.at((axis + 2) % 3) * p.y);
      seen.push_back({-at.y, -at.z});
    }
  if (signedArea(seen) > 0) std::ranges::reverse(seen);
  return seen;
}

/// Whether a stretch of a profile lies on the underside of the box.
bool isUnderside(Point step, const Transform& knot, Point3 up) {
  constexpr double kDown = -0.3;  // cosine
  const Point out = Point{-step.y, step.x} / norm(step);
  return dot(knot.turn({0, -out.x, -out.y}), up) < kDown;
}

/// From over the knot's middle on, clockwise.
Polyline drapeOn(const Polygon& profile, const Transform& knot, Point3 up) {
  const std::size_t count = profile.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Point a = profile[i];
    const Point b = profile[(i + 1) % count];
    if (a.x > 0 || b.x <= 0) continue;
    Polyline drape{a + (b - a) * (-a.x / (b.x - a.x)), b};
    for (std::size_t k = 2; k < count; ++k) {
      const Point next = profile[(i + k) % count];
      if (isUnderside(next - drape.back(), knot, up)) {
        const Point last = drape.back() - drape[drape.size() - 2];
        drape.back() = drape.back() - last * std::min(1.0, kOverFoot / norm(last));
        break;
      }
      drape.push_back(next);
    }
    return drape;
  }
  return {};
}

/// The part of a tail that lies on one stretch of what it is laid on.
struct TailPart {
  int panel = 0;
  Segment end;  ///< in the panel's frame, against x
};

/// Where a shape touches a level, from left to right.
std::optional<Segment> chordAt(const Polygon& shape, double level) {
  constexpr double kSame = 1e-5;  // mm
  std::optional<Segment> chord;
  for (const Point& p : shape) {
    if (std::abs(p.y - level) > kSame) continue;
    if (!chord) chord = Segment{p, p};
    if (p.x < chord->a.x) chord->a = p;
    if (p.x > chord->b.x) chord->b = p;
  }
  return chord;
}

/// A tail that bends round where the profile does. Its outline is laid flat: x to a side of the
/// knot, y along the profile.
void addDraped(const Polygon& flat, const TiedBow& bow, double off, Net& net, Pose& pose) {
  constexpr double kSmooth = 0.87;  // cosine of 30 degrees
  const Bounds all = bounds(flat);
  std::vector<TailPart> before;
  Point wayBefore;
  double from = 0;
  for (std::size_t i = 0; i + 1 < bow.drape.size() && from < all.high.y; ++i) {
    const Point step = bow.drape[i + 1] - bow.drape[i];
    const double size = norm(step);
    if (size < 1e-6) continue;
    const Point way = step / size;
    const Point start = bow.drape[i] + Point{-way.y, way.x} * off;
    std::vector<TailPart> parts;
    const Polygon band{{all.low.x - 1, from},
                       {all.high.x + 1, from},
                       {all.high.x + 1, from + size},
                       {all.low.x - 1, from + size}};
    for (Area& area : intersect(region(flat), region(band))) {
      const std::optional<Segment> hinge = chordAt(area.outer, from);
      const Point origin{hinge ? hinge->a.x : 0.0, from};
      const std::optional<Segment> end = chordAt(area.outer, from + size);
      for (Point& p : area.outer) p = p - origin;
      // Drawn from within: x runs against the knot's.
      const Transform place = bow.knot.after(
          Transform::frame({-origin.x, -start.x, -start.y}, {-1, 0, 0}, {0, -way.x, -way.y}));
      TailPart part{addRibbonPanel(area.outer, place, net, pose), {}};
      if (end) part.end = {end->b - origin, end->a - origin};
      if (hinge && !before.empty() && dot(way, wayBefore) >= kSmooth) {
        Crease bend;
        bend.child = part.panel;
        bend.kind = CreaseKind::Flat;
        bend.parent = before.front().panel;
        bend.onParent = before.front().end;
        net.creases.push_back(bend);
      }
      parts.push_back(part);
    }
    before = std::move(parts);
    wayBefore = way;
    from += size;
  }
}

}  // namespace

std::optional<TiedBow> tiedBow(const RibbonNeed& ribbon) {
  const double width = ribbon.width.mm();
  const double left = ribbon.bow.mm() - kTiedKnot * width;
  if (ribbon.ways.empty() || left <= 0) return std::nullopt;
  TiedBow bow;
  bow.knot = knotAt(ribbon);
  const double along = ribbon.round.sizes.at(acrossOf(bow, ribbon));
  bow.span =
      std::clamp(kGenerousSpan * width, left / (2 + 2 * kTailShare), left / (2 + 2 * kLeastTail));
  bow.span = std::min(bow.span, kSpanOfBox * along);
  if (bow.span < kLeastLoops * width) return std::nullopt;
  bow.tail = left / 2 - bow.span;
  // It leans no farther than leaves its end on the box.
  const double room = (along - width) / 2;
  const double sine = std::clamp(room / bow.tail, 0.0, std::sin(Angle::degrees(kAside).radians()));
  bow.aside = Angle::radians(std::asin(sine)).degrees();
  return bow;
}

std::size_t acrossOf(const TiedBow& bow, const RibbonNeed& ribbon) {
  return axisAlong(ribbon, bow.knot);
}

double spreadOf(const TiedBow& bow, Length width) {
  const double turn = Angle::degrees(bow.aside).radians();
  return 2 * bow.tail * std::sin(turn) + width.mm();
}

void layTails(TiedBow& bow, const RibbonNeed& ribbon, const Polygon& under, double lift) {
  const Polygon profile = inProfile(ribbon, bow.knot, under);
  bow.drape = drapeOn(profile, bow.knot, ribbon.round.up);
  const double over = bow.drape.empty() ? 0 : bow.drape.front().y + kUnderKnot;
  const double raise = std::max(lift, over);
  bow.knot = bow.knot.after(Transform::translation({0, 0, -raise}));
  for (Point& p : bow.drape) p.y -= raise;
}

void addDrapedTails(const TiedBow& bow, const Polygon& tail, Net& net, Pose& pose) {
  constexpr double kApart = 0.3;  // mm where one lies on the other
  const double s = std::sin(Angle::degrees(bow.aside).radians());
  const double c = std::cos(Angle::degrees(bow.aside).radians());
  for (const double side : {1.0, -1.0}) {
    Polygon flat;
    for (const Point& p : tail)
      flat.push_back({side * s * p.x + c * p.y, c * p.x - side * s * p.y});
    if (signedArea(flat) < 0) std::ranges::reverse(flat);
    addDraped(flat, bow, side > 0 ? 0 : kApart, net, pose);
  }
}

}  // namespace creasewright
