#include "extras/beside_face.h"

#include <algorithm>
#include <cmath>

#include "folding/surfaces/upright.h"

namespace creasewright {
namespace {

constexpr double kParallel = 0.95;  // cosine
constexpr double kAgainst = 3;      // mm: card that lies against card, layers and slack counted
constexpr double kCoincide = 0.05;  // mm: nets are folded as surfaces, glued panels coincide
constexpr double kLeastArea = 0.5;  // mm2 that count

enum class SideOfFace { None, Behind, Before };

/// The sides of a face that mates tell: layers that coincide have no other.
SideOfFace toldByMates(const Net& net, const Pose& folded, int face, int other) {
  for (const Mate& mate : net.mates) {
    if (mate.panel == other && mate.onto == face)
      return mate.face == Face::Inside ? SideOfFace::Behind : SideOfFace::Before;
    if (mate.panel != face || mate.onto != other) continue;
    const bool against = dot(folded[static_cast<std::size_t>(face)].normal(),
                             folded[static_cast<std::size_t>(other)].normal()) < 0;
    return against == (mate.face == Face::Inside) ? SideOfFace::Behind : SideOfFace::Before;
  }
  return SideOfFace::None;
}

/// How far behind a face the middle of the room is, or no farther than card against card.
double depthBehind(const Host& host, const HostFace& face) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  if (!piece.part->cavity) return kAgainst;
  const auto owner = piece.part->net.find(piece.part->cavity->panel);
  if (!owner) return kAgainst;
  const Point3 seed =
      (*piece.folded)[static_cast<std::size_t>(*owner)].apply(piece.part->cavity->seed);
  const Transform& place = (*piece.folded)[static_cast<std::size_t>(face.panel)];
  return std::max(kAgainst, place.inverse().apply(seed).z);
}

/// A panel in the frame of the face, seen straight on.
Polygon projected(const Transform& face, const Transform& panel, const Polygon& outline) {
  const Transform there = face.inverse().after(panel);
  Polygon flat;
  for (const Point& p : outline) {
    const Point3 at = there.apply(p);
    flat.push_back({at.x, at.y});
  }
  if (signedArea(flat) < 0) std::ranges::reverse(flat);
  return flat;
}

SideOfFace sideOf(const Net& net, const Pose& folded, int face, int other, double depth) {
  const Transform& place = folded[static_cast<std::size_t>(face)];
  const Transform& there = folded[static_cast<std::size_t>(other)];
  if (std::abs(dot(place.normal(), there.normal())) < kParallel) return SideOfFace::None;
  const Point middle = centroid(net.panels[static_cast<std::size_t>(other)].outline);
  const double off = place.inverse().apply(there.apply(middle)).z;
  if (off < -kAgainst || off > depth) return SideOfFace::None;
  if (const SideOfFace told = toldByMates(net, folded, face, other); told != SideOfFace::None)
    return told;
  return off < -kCoincide ? SideOfFace::Before : SideOfFace::Behind;
}

std::vector<BesideFace> panelsAt(const Host& host, const HostFace& face, SideOfFace side) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  const Net& net = piece.part->net;
  const Pose& folded = *piece.folded;
  const Region own = region(face.area.outer);
  const double depth = depthBehind(host, face);
  std::vector<BesideFace> parts;
  for (int i = 0; i < static_cast<int>(net.panels.size()); ++i) {
    if (i == face.panel || sideOf(net, folded, face.panel, i, depth) != side) continue;
    const auto other = static_cast<std::size_t>(i);
    Region there = intersect(own, region(projected(folded[static_cast<std::size_t>(face.panel)],
                                                   folded[other], net.panels[other].outline)));
    if (area(there) > kLeastArea) parts.push_back({net.panels[other].id, std::move(there)});
  }
  return parts;
}

/// The product's axis to which a face of a piece is square, or nothing.
std::optional<std::size_t> axisOf(const HostPiece& piece, Point3 normal) {
  if (!piece.part->cavity) return std::nullopt;
  const auto owner = piece.part->net.find(piece.part->cavity->panel);
  if (!owner) return std::nullopt;
  const Transform& frame = (*piece.folded)[static_cast<std::size_t>(*owner)];
  for (std::size_t i = 0; i < 3; ++i)
    if (std::abs(dot(frame.turn(unitAlong(piece.part->cavity->axes.at(i))), normal)) > kParallel)
      return i;
  return std::nullopt;
}

/// Share of the side of a piece's room that its own card closes; the side is square to a product
/// axis, above or below where the axis is upright.
bool hasCardOn(const HostPiece& piece, std::size_t axis, std::optional<bool> above) {
  const Point3 up = uprightOf(*piece.part);
  for (std::size_t i = 0; i < piece.part->net.panels.size(); ++i) {
    if (!piece.part->net.panels[i].shows) continue;
    const Point3 outside = (*piece.folded)[i].normal() * -1;
    if (axisOf(piece, outside) != axis) continue;
    if (!above || (dot(outside, up) > 0) == *above) return true;
  }
  return false;
}

/// The piece that this one goes over, where it has card behind the face.
std::vector<BesideFace> pieceInside(const Host& host, const HostFace& face) {
  const HostPiece& outer = host.pieces[static_cast<std::size_t>(face.piece)];
  if (!outer.part->over) return {};
  const Point3 outside = (*outer.folded)[static_cast<std::size_t>(face.panel)].normal() * -1;
  const std::optional<std::size_t> axis = axisOf(outer, outside);
  if (!axis) return {};
  const double rise = dot(outside, uprightOf(*outer.part));
  const std::optional<bool> above =
      std::abs(rise) > kParallel ? std::optional(rise > 0) : std::nullopt;
  for (const HostPiece& inner : host.pieces)
    if (inner.part->name == outer.part->over->piece && hasCardOn(inner, *axis, above))
      return {{inner.part->name, region(face.area.outer)}};
  return {};
}

}  // namespace

std::vector<BesideFace> behindFace(const Host& host, const HostFace& face) {
  std::vector<BesideFace> parts = panelsAt(host, face, SideOfFace::Behind);
  std::ranges::move(pieceInside(host, face), std::back_inserter(parts));
  return parts;
}

std::vector<BesideFace> onFace(const Host& host, const HostFace& face) {
  return panelsAt(host, face, SideOfFace::Before);
}

Region joined(const std::vector<BesideFace>& parts) {
  std::vector<Polygon> outlines;
  for (const BesideFace& part : parts)
    for (const Area& each : part.area) outlines.push_back(each.outer);
  return outlines.empty() ? Region{} : unite(outlines);
}

}  // namespace creasewright
