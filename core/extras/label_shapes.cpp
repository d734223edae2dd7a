#include "extras/label_shapes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "extras/flat_piece.h"

namespace creasewright {
namespace {

constexpr double kRightAngle = std::numbers::pi / 2;

/// Points of an ellipse from one angle to another (radians), the first left out.
void addArc(Point centre, Point half, double from, double to, Polygon& outline) {
  constexpr int kPerQuarter = 8;
  const int steps =
      std::max(1, static_cast<int>(std::ceil(std::abs(to - from) / kRightAngle * kPerQuarter)));
  for (int i = 1; i <= steps; ++i) {
    const double turn = from + (to - from) * i / steps;
    outline.push_back(centre + Point{half.x * std::cos(turn), half.y * std::sin(turn)});
  }
}

/// Stretched so that its bounds go from (0, 0) to (width, height).
Polygon filling(Polygon outline, double width, double height) {
  const Bounds box = bounds(outline);
  for (Point& p : outline)
    p = {(p.x - box.low.x) * width / box.width(), (p.y - box.low.y) * height / box.height()};
  return outline;
}

Polygon rectangular(double w, double h) { return {{0, 0}, {w, 0}, {w, h}, {0, h}}; }

/// A whole number of lobes on each side, true pitch = side / lobes, and three quarters of a circle
/// at each corner, so that none is cut (own derivation).
Polygon scallopedRectangle(double w, double h) {
  const double rho = std::min({kWave / 2, w / 6, h / 6});
  const auto lobes = [&](double side) {
    return std::max(1, static_cast<int>(std::lround((side - 2 * rho) / (2 * rho))));
  };
  const int across = lobes(w);
  const int up = lobes(h);
  const double px = (w - 2 * rho) / across / 2;  // half a pitch
  const double py = (h - 2 * rho) / up / 2;
  Polygon outline;
  const auto side = [&](Point from, Point step, int count, Point half, double start) {
    for (int i = 1; i < count; ++i)
      addArc(from + step * i, half, start, start + 2 * kRightAngle, outline);
  };
  const auto corner = [&](Point at, Point in, Point out, double start) {
    addArc(at, in, start - kRightAngle, start, outline);
    addArc(at, {rho, rho}, start, start + kRightAngle, outline);
    addArc(at, out, start + kRightAngle, start + 2 * kRightAngle, outline);
  };
  const Point alongX{px, rho};
  const Point alongY{rho, py};
  const double pi = std::numbers::pi;
  corner({rho, rho}, alongY, alongX, pi);
  side({rho, rho}, {2 * px, 0}, across, alongX, pi);
  corner({w - rho, rho}, alongX, alongY, -kRightAngle);
  side({w - rho, rho}, {0, 2 * py}, up, alongY, -kRightAngle);
  corner({w - rho, h - rho}, alongY, alongX, 0);
  side({w - rho, h - rho}, {-2 * px, 0}, across, alongX, 0);
  corner({rho, h - rho}, alongX, alongY, kRightAngle);
  side({rho, h - rho}, {0, -2 * py}, up, alongY, kRightAngle);
  return outline;
}

/// A swallow-tail at either end; a notch of 0.4 to 0.5 of the banner's width is common practice.
Polygon banner(double w, double h) {
  const double notch = std::min(0.45 * std::min(w, h), 0.25 * std::max(w, h));
  if (w >= h) return {{0, 0}, {w, 0}, {w - notch, h / 2}, {w, h}, {0, h}, {notch, h / 2}};
  return {{0, 0}, {w / 2, notch}, {w, 0}, {w, h}, {w / 2, h - notch}, {0, h}};
}

/// Two corners off at 45 degrees by a quarter of its width (common practice).
Polygon tag(double w, double h) {
  const double off = std::min(w, h) / 4;
  if (h >= w) return {{0, 0}, {w, 0}, {w, h - off}, {w - off, h}, {off, h}, {0, h - off}};
  return {{off, 0}, {w, 0}, {w, h}, {off, h}, {0, h - off}, {0, off}};
}

/// A square on its corner with two half circles.
Polygon heart(double w, double h) {
  const double r = std::numbers::sqrt2 / 2;  // half of a side of 1.41
  Polygon outline{{0, 0}, {1, 1}};
  addArc({0.5, 1.5}, {r, r}, -kRightAngle / 2, 1.5 * kRightAngle, outline);
  addArc({-0.5, 1.5}, {r, r}, kRightAngle / 2, 2.5 * kRightAngle, outline);
  return filling(std::move(outline), w, h);
}

Polygon star(double w, double h) {
  constexpr int kTips = 5;
  constexpr double kInner = 0.5;
  Polygon outline;
  for (int i = 0; i < 2 * kTips; ++i) {
    const double turn = kRightAngle + std::numbers::pi * i / kTips;
    const double r = i % 2 == 0 ? 1 : kInner;
    outline.push_back({r * std::cos(turn), r * std::sin(turn)});
  }
  return filling(std::move(outline), w, h);
}

Polygon arch(double w, double h) {
  const double rise = std::min(w / 2, 0.6 * h);
  Polygon outline{{0, 0}, {w, 0}, {w, h - rise}};
  addArc({w / 2, h - rise}, {w / 2, rise}, 0, 2 * kRightAngle, outline);
  return outline;
}

/// Round bites of 3 to 6 mm out of the corners (common practice).
Polygon ticket(double w, double h) {
  const double r = std::min(std::clamp(0.12 * std::min(w, h), 3.0, 6.0), std::min(w, h) / 4);
  Polygon outline;
  const auto bite = [&](Point corner, double from) {
    outline.push_back(corner + Point{r * std::cos(from), r * std::sin(from)});
    addArc(corner, {r, r}, from, from - kRightAngle, outline);
  };
  bite({w, 0}, 2 * kRightAngle);
  bite({w, h}, 3 * kRightAngle);
  bite({0, h}, 0);
  bite({0, 0}, kRightAngle);
  return outline;
}

Polygon hexagon(double w, double h) {
  return {{w / 4, 0}, {3 * w / 4, 0}, {w, h / 2}, {3 * w / 4, h}, {w / 4, h}, {0, h / 2}};
}

}  // namespace

std::vector<Worded> shapeWords() {
  return {worded("styles", "Rectangle"),
          worded("styles", "Circle"),
          worded("styles", "Oval"),
          worded("styles", "Scalloped"),
          worded("styles", "Rounded"),
          worded("styles", "Scalloped circle"),
          worded("styles", "Scalloped rectangle"),
          worded("styles", "Banner"),
          worded("styles", "Tag shape"),
          worded("styles", "Heart"),
          worded("styles", "Star"),
          worded("styles", "Arch"),
          worded("styles", "Ticket"),
          worded("styles", "Hexagon")};
}

bool isRound(LabelShape shape) {
  return shape == LabelShape::Circle || shape == LabelShape::ScallopedCircle;
}

bool isWavy(LabelShape shape) {
  return shape == LabelShape::Scallop || shape == LabelShape::ScallopedCircle ||
         shape == LabelShape::ScallopedRectangle;
}

Polygon labelOutline(LabelShape shape, double width, double height) {
  switch (shape) {
    case LabelShape::Rectangle:
      return rectangular(width, height);
    case LabelShape::Circle:
    case LabelShape::Oval:
      return ellipse({width / 2, height / 2}, width / 2, height / 2);
    case LabelShape::Scallop:
    case LabelShape::ScallopedCircle:
      return scallop(width, height, kWave);
    case LabelShape::Rounded:
      return roundedRectangle(width, height, std::clamp(0.15 * std::min(width, height), 2.0, 6.4));
    case LabelShape::ScallopedRectangle:
      return scallopedRectangle(width, height);
    case LabelShape::Banner:
      return banner(width, height);
    case LabelShape::Tag:
      return tag(width, height);
    case LabelShape::Heart:
      return heart(width, height);
    case LabelShape::Star:
      return star(width, height);
    case LabelShape::Arch:
      return arch(width, height);
    case LabelShape::Ticket:
      return ticket(width, height);
    case LabelShape::Hexagon:
      return hexagon(width, height);
  }
  return {};
}

}  // namespace creasewright
