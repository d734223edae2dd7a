#include "extras/host.h"

#include <algorithm>
#include <cmath>

#include "folding/surfaces/upright.h"

namespace creasewright {
namespace {

/// Whether another piece goes over this one.
bool isCovered(const Host& host, const Piece& piece) {
  return std::ranges::any_of(
      host.pieces,
      [&](const HostPiece& other) {
        return other.part->over && other.part->over->piece == piece.name;
      });
}

struct Span {
  double low = 1e9;
  double high = -1e9;
};

/// How far a piece of the box reaches along the axes, half a caliper on either side.
void widen(std::array<Span, 3>& spans, const std::array<Point3, 3>& axes, const HostPiece& piece,
           const Transform& standing, double caliper) {
  for (std::size_t i = 0; i < piece.part->net.panels.size(); ++i) {
    const Transform place = standing.after((*piece.folded)[i]);
    for (const Point& corner : piece.part->net.panels[i].outline)
      for (std::size_t k = 0; k < 3; ++k) {
        const double at = dot(place.apply(corner), axes.at(k));
        spans.at(k).low = std::min(spans.at(k).low, at - caliper / 2);
        spans.at(k).high = std::max(spans.at(k).high, at + caliper / 2);
      }
  }
}

Angle turnBetween(Point from, Point to) {
  return Angle::radians(std::atan2(cross(from, to), dot(from, to)));
}

Point turned(Point p, Angle by) {
  const double c = std::cos(by.radians());
  const double s = std::sin(by.radians());
  return {c * p.x - s * p.y, s * p.x + c * p.y};
}

/// Which way is up for who stands before the box.
struct Stance {
  Point3 up;
  Point3 away;  ///< from who looks, level
};

Stance stanceOf(Point3 up) {
  const View level{Angle::degrees(0), Angle::degrees(0)};
  return {up, camera(frontView(level, up), up).towardsEye * -1};
}

/// The axis of a plane that a direction is nearest to.
Point nearestAxis(Point3 way) {
  if (std::abs(way.x) > std::abs(way.y) + 1e-6) return {way.x > 0 ? 1.0 : -1.0, 0};
  return {0, way.y < 0 ? -1.0 : 1.0};
}

/// The direction in a panel's frame that points upwards on the standing box. On a panel whose
/// outside lies level and up it points away from who looks, along an axis of the panel; on one that
/// looks down it is the panel's own y.
Point upIn(const Transform& placed, const Stance& stance) {
  const Transform back = placed.inverse();
  const Point3 seen = back.turn(stance.up);
  const Point flat{seen.x, seen.y};
  if (norm(flat) < 0.3) return seen.z > 0 ? Point{0, 1} : nearestAxis(back.turn(stance.away));
  // Walls that lean show no other upright than their own edges.
  return unit(flat);
}

/// In the frame of a piece.
Stance stanceOf(const Host& host, const HostPiece& piece) {
  if (!piece.place) return stanceOf(uprightOf(*piece.part));
  const Stance box = stanceOf(host.box ? host.box->up : uprightOf(*host.pieces.front().part));
  const Transform back = piece.place->inverse();
  return {back.turn(box.up), back.turn(box.away)};
}

HostFace faceOf(const Host& host, int pieceIndex, int panelIndex, const Stance& stance) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(pieceIndex)];
  const Panel& panel = piece.part->net.panels[static_cast<std::size_t>(panelIndex)];
  HostFace face{pieceIndex, panelIndex, {panel.outline, panel.openings}, {}, {}, 0};
  const Point direction = upIn((*piece.folded)[static_cast<std::size_t>(panelIndex)], stance);
  face.upright = turnBetween({0, 1}, direction);
  Polygon laid;
  for (const Point& p : panel.outline) laid.push_back(turned(p, -face.upright));
  const Bounds box = bounds(laid);
  face.middle = turned((box.low + box.high) / 2, face.upright);
  face.size = std::abs(signedArea(panel.outline));
  for (const Polygon& hole : panel.openings) face.size -= std::abs(signedArea(hole));
  return face;
}

/// Whether card of another piece lies close before a face.
bool isBehindAnother(const Host& host, const HostFace& face) {
  constexpr double kClose = 6;  // mm: card, ease, and a little
  const HostPiece& own = host.pieces[static_cast<std::size_t>(face.piece)];
  if (!own.place) return true;
  const Transform place = own.place->after((*own.folded)[static_cast<std::size_t>(face.panel)]);
  const Point3 from = place.apply(face.middle);
  const Point3 out = place.normal() * -1;
  for (const HostPiece& other : host.pieces) {
    if (&other == &own || !other.place) continue;
    for (std::size_t i = 0; i < other.part->net.panels.size(); ++i) {
      const Transform back = other.place->after((*other.folded)[i]).inverse();
      const Point3 start = back.apply(from);
      const Point3 way = back.turn(out);
      if (std::abs(way.z) < 0.1) continue;
      const double far = -start.z / way.z;
      const Point there{start.x + way.x * far, start.y + way.y * far};
      if (far > -0.5 && far < kClose &&
          locate(there, other.part->net.panels[i].outline) == Side::Inside)
        return true;
    }
  }
  return false;
}

/// Every face that shows; of pieces that another goes over none, or those that it leaves open.
std::vector<HostFace> facesWhere(const Host& host, bool leftOpen) {
  std::vector<HostFace> faces;
  for (std::size_t i = 0; i < host.pieces.size(); ++i) {
    const Piece& piece = *host.pieces[i].part;
    const bool covered = isCovered(host, piece);
    if (covered && !leftOpen) continue;
    const Stance stance = stanceOf(host, host.pieces[i]);
    for (std::size_t p = 0; p < piece.net.panels.size(); ++p) {
      if (!piece.net.panels[p].shows) continue;
      HostFace face = faceOf(host, static_cast<int>(i), static_cast<int>(p), stance);
      if (!covered || !isBehindAnother(host, face)) faces.push_back(std::move(face));
    }
  }
  std::ranges::stable_sort(
      faces, [](const HostFace& a, const HostFace& b) { return a.size > b.size + 1e-6; });
  return faces;
}

/// The upright frame about a face's middle in the frame of its panel, `depth` mm to the inside.
Transform standingOn(const HostFace& face, double depth) {
  return Transform::translation({face.middle.x, face.middle.y, depth})
      .after(Transform::rotationZ(face.upright));
}

}  // namespace

Point3 unitAlong(int axis) {
  return {axis == 0 ? 1.0 : 0.0, axis == 1 ? 1.0 : 0.0, axis == 2 ? 1.0 : 0.0};
}

std::optional<OutsideBox> outsideOf(const Host& host) {
  if (host.pieces.empty() || !host.pieces.front().part->cavity) return std::nullopt;
  const double caliper = host.bench.caliper.mm();
  const HostPiece& first = host.pieces.front();
  const Cavity& cavity = *first.part->cavity;
  const auto owner = first.part->net.find(cavity.panel);
  if (!owner || first.part->net.creases.empty()) return std::nullopt;
  const Transform& frame = (*first.folded)[static_cast<std::size_t>(*owner)];
  OutsideBox outside;
  outside.up = uprightOf(*first.part);
  for (std::size_t i = 0; i < 3; ++i) outside.axes.at(i) = frame.turn(unitAlong(cavity.axes.at(i)));
  std::array<Span, 3> spans;
  widen(spans, outside.axes, first, {}, caliper);
  for (const HostPiece& piece : host.pieces)
    if (piece.place && piece.part->cavity && !piece.part->net.creases.empty())
      widen(spans, outside.axes, piece, *piece.place, caliper);
  for (std::size_t i = 0; i < 3; ++i) {
    const auto [low, high] = spans.at(i);
    outside.centre = outside.centre + outside.axes.at(i) * ((low + high) / 2);
    outside.sizes.at(i) = high - low + 2 * host.onFaces.mm();
  }
  return outside;
}

OutsideBox overUnder(const Host& host, OutsideBox box) {
  for (const WrapBody& body : host.under)
    for (std::size_t i = 0; i < 3; ++i)
      box.sizes.at(i) = std::max(box.sizes.at(i), body.sizes.at(i));
  return box;
}

std::vector<const Raised*> raisedUnder(const Host& host, const OutsideBox& box, std::size_t axis,
                                       double width) {
  std::vector<const Raised*> under;
  for (const Raised& raised : host.raised) {
    if (std::abs(dot(raised.out, box.axes.at(axis))) > 0.9 || raised.corners.empty()) continue;
    double low = 1e9;
    double high = -1e9;
    for (const Point3& p : raised.corners) {
      const double at = dot(p - box.centre, box.axes.at(axis));
      low = std::min(low, at);
      high = std::max(high, at);
    }
    if (low < width / 2 && high > -width / 2) under.push_back(&raised);
  }
  return under;
}

OutsideBox overRaised(const Host& host, OutsideBox box, std::size_t axis, double width,
                      bool onWraps) {
  constexpr double kSameSide = 0.7;  // cosine
  for (std::size_t i = 0; i < 3; ++i)
    for (const double sign : {1.0, -1.0}) {
      double most = 0;
      for (const Raised* raised : raisedUnder(host, box, axis, width))
        if (raised->onWrap == onWraps && dot(raised->out, box.axes.at(i)) * sign > kSameSide)
          most = std::max(most, raised->height);
      box.sizes.at(i) += most;
      box.centre = box.centre + box.axes.at(i) * (sign * most / 2);
    }
  return box;
}

HostFace faceAt(const Host& host, int piece, int panel) {
  return faceOf(host, piece, panel, stanceOf(host, host.pieces[static_cast<std::size_t>(piece)]));
}

std::vector<HostFace> facesOf(const Host& host) { return facesWhere(host, false); }
std::vector<HostFace> openFacesOf(const Host& host) { return facesWhere(host, true); }

Point3 outOf(const Host& host, const HostFace& face) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  const Point3 out = (*piece.folded)[static_cast<std::size_t>(face.panel)].normal() * -1;
  return piece.place && host.box ? piece.place->turn(out) : out;
}

bool isSeen(const Host& host, const HostFace& face) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  const bool placed = piece.place && host.box;
  const Point3 up = placed ? host.box->up : uprightOf(*piece.part);
  const Camera eye = camera(frontView(standardView(), up), up);
  return dot(outOf(host, face), eye.towardsEye) > 0.2;
}

std::string faceName(const Piece& piece, int panel) {
  return piece.name + ":" + piece.net.panels[static_cast<std::size_t>(panel)].id;
}

std::string faceName(const Host& host, const HostFace& face) {
  return faceName(*host.pieces[static_cast<std::size_t>(face.piece)].part, face.panel);
}

FacePlace placeOn(const HostFace& face, Point middle, double lift) {
  const Transform toMiddle = Transform::translation({-middle.x, -middle.y, 0});
  return {face.piece, face.panel, standingOn(face, -lift).after(toMiddle)};
}

FacePlace placeInside(const HostFace& face, Point middle, double lift) {
  const Transform toMiddle = Transform::translation({-middle.x, -middle.y, 0});
  const Transform over = Transform::rotationY(Angle::degrees(180));
  return {face.piece, face.panel, standingOn(face, lift).after(over).after(toMiddle)};
}

Region cardOf(const HostFace& face) { return cutOut(region(face.area.outer), face.area.holes); }

Polygon laidUpright(const HostFace& face, const Polygon& shape) {
  Polygon laid;
  for (const Point& p : shape) laid.push_back(turned(p - face.middle, -face.upright));
  return laid;
}

Polygon inPanel(const HostFace& face, const Polygon& upright) {
  Polygon there;
  for (const Point& p : upright) there.push_back(face.middle + turned(p, face.upright));
  return there;
}

}  // namespace creasewright
