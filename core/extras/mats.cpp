#include <algorithm>
#include <cmath>

#include "extras/flat_piece.h"
#include "extras/kinds.h"
#include "styles/limits.h"

namespace creasewright {
namespace {

constexpr double kSame = 1e-4;   // mm; mats that differ less are one size
constexpr double kSmallest = 6;  // mm; narrower ones are not worth cutting

/// The largest part of a face, `inset` inside every edge and opening, upright about (0, 0).
std::optional<Area> matFor(const HostFace& face, double inset) {
  const Region inner = offset(cardOf(face), -inset);
  if (inner.empty()) return std::nullopt;
  const Area& largest = *std::ranges::max_element(
      inner, {}, [](const Area& a) { return std::abs(signedArea(a.outer)); });
  Area mat{laidUpright(face, largest.outer), {}};
  for (const Polygon& hole : largest.holes) mat.holes.push_back(laidUpright(face, hole));
  const Bounds box = bounds(mat.outer);
  if (box.width() < kSmallest || box.height() < kSmallest) return std::nullopt;
  return mat;
}

bool sameRing(const Polygon& a, const Polygon& b) {
  if (a.size() != b.size()) return false;
  for (std::size_t shift = 0; shift < a.size(); ++shift) {
    bool same = true;
    for (std::size_t i = 0; i < a.size() && same; ++i)
      same = distance(a[i], b[(i + shift) % b.size()]) < kSame;
    if (same) return true;
  }
  return false;
}

bool sameArea(const Area& a, const Area& b) {
  return sameRing(a.outer, b.outer) && a.holes.size() == b.holes.size() &&
         std::ranges::equal(a.holes, b.holes, sameRing);
}

/// Mats of one size, with the faces they go onto.
struct Group {
  Area area;
  std::vector<HostFace> faces;
};

std::vector<Group> groupsOf(const std::vector<HostFace>& faces, double inset) {
  std::vector<Group> groups;
  for (const HostFace& face : faces) {
    std::optional<Area> mat = matFor(face, inset);
    if (!mat) continue;
    const auto known =
        std::ranges::find_if(groups, [&](const Group& g) { return sameArea(g.area, *mat); });
    if (known == groups.end())
      groups.push_back({std::move(*mat), {face}});
    else
      known->faces.push_back(face);
  }
  return groups;
}

Result<ExtraParts> buildMats(const Extra& extra, const Host& host) {
  std::vector<HostFace> faces;
  if (extra.face.empty()) {
    faces = facesOf(host);
  } else {
    const Result<HostFace> face = faceFor(extra, host);
    if (!face) return face.problem();
    faces.push_back(*face);
  }
  const std::vector<Group> groups = groupsOf(faces, extra.parameters.mm("inset"));
  if (groups.empty()) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const double lift = (host.making.caliper.mm() + extra.card.caliper.mm()) / 2 + 0.1;
  ExtraParts parts;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const Group& group = groups[i];
    const std::string name = groups.size() == 1 ? "mat" : "mat-" + std::to_string(i + 1);
    ExtraPiece piece{flatPiece(name, group.area), Placing::OnFace};
    piece.piece.count = static_cast<int>(group.faces.size());
    const Point middle = bounds(group.area.outer).low * -1;
    for (const HostFace& face : group.faces) piece.faces.push_back(placeOn(face, middle, lift));
    parts.pieces.push_back(std::move(piece));
  }
  return parts;
}

}  // namespace

ExtraKind matsExtra() {
  return {
      .id = "mats",
      .title = "Mats",
      .summary = "A decorative layer on every face that shows, or on one.",
      .onFace = true,
      .parameters = {{"inset", "Inset", "Card left to be seen at every edge.",
                      ParameterKind::Length, Length::inches(1, 16).nm(),
                      fixed(Length::nanometres(500'000)), fixed(Length::nanometres(30'000'000))}},
      .build = buildMats};
}

}  // namespace creasewright
