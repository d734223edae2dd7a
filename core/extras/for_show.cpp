#include "extras/for_show.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "folding/surfaces/upright.h"

namespace creasewright {
namespace {

constexpr double kAlikeTurned = 0.95;  // cosine

/// Where who looks at the box stands.
struct Looker {
  Point3 up;
  Point3 front;  ///< level, towards who looks
  Point3 eye;
};

Looker lookerAt(const Host& host) {
  const View level{Angle::degrees(0), Angle::degrees(0)};
  const Point3 up = host.box ? host.box->up : uprightOf(*host.pieces.front().part);
  return {up, camera(frontView(level, up), up).towardsEye,
          camera(frontView(standardView(), up), up).towardsEye};
}

bool isHiddenSide(Point3 out, const Looker& from) {
  constexpr double kUnder = -0.5;  // cosines
  constexpr double kBehind = -0.7;
  return dot(out, from.up) < kUnder || dot(out, from.front) < kBehind;
}

/// A face and what it is worth; the smaller the better.
struct Worth {
  bool unseen = false;
  long size = 0;  ///< faces within a fiftieth are alike
  int side = 0;
  double turned = 0;

  auto operator<=>(const Worth&) const = default;
};

Worth worthOf(const HostFace& face, Point3 out, const Looker& from) {
  constexpr double kSeen = 0.2;
  constexpr double kAlike = 50;
  const double towards = dot(out, from.eye);
  const int side = dot(out, from.up) > kAlikeTurned      ? 0
                   : dot(out, from.front) > kAlikeTurned ? 1
                                                         : 2;
  return {towards <= kSeen, -std::lround(kAlike * std::log(std::max(face.size, 1e-3))), side,
          -towards};
}

struct Shown {
  Worth worth;
  HostFace face;
  Point3 out;
};

void addShown(const Host& host, std::vector<HostFace> faces, std::vector<Shown>& all) {
  if (faces.empty()) return;
  const Looker from = lookerAt(host);
  for (HostFace& face : faces) {
    const Point3 out = outOfBox(host, face);
    if (!isHiddenSide(out, from)) all.push_back({worthOf(face, out, from), std::move(face), out});
  }
}

void sortByWorth(std::vector<Shown>& all) {
  std::ranges::stable_sort(
      all, [](const Shown& a, const Shown& b) { return a.worth < b.worth; });
}

}  // namespace

Point3 outOfBox(const Host& host, const HostFace& face) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  const Point3 out = (*piece.folded)[static_cast<std::size_t>(face.panel)].normal() * -1;
  return piece.place ? piece.place->turn(out) : out;
}

std::vector<HostFace> facesForShow(const Host& host, std::vector<HostFace> faces) {
  std::vector<Shown> all;
  addShown(host, std::move(faces), all);
  sortByWorth(all);
  std::vector<HostFace> shown;
  for (Shown& each : all) shown.push_back(std::move(each.face));
  return shown;
}

Result<std::vector<HostFace>> facesFor(const Extra& extra, const Host& host) {
  std::vector<HostFace> faces = facesOf(host);
  const Problem noPlace{ProblemCode::ExtraNoPlace, extra.kind, {}};
  for (const HostFace& face : faces)
    if (!extra.face.empty() && faceName(host, face) == extra.face) return std::vector{face};
  if (norm(host.side) > 0)
    std::erase_if(faces, [&](const HostFace& f) {
      return dot(outOfBox(host, f), unit(host.side)) < kAlikeTurned;
    });
  else if (extra.face.empty())
    faces = facesForShow(host, std::move(faces));
  else if (!faces.empty())
    return Problem{ProblemCode::ExtraFaceUnknown, extra.kind, {extra.face}};
  if (faces.empty()) return noPlace;
  return faces;
}

Result<HostFace> faceFor(const Extra& extra, const Host& host) {
  const Result<std::vector<HostFace>> faces = facesFor(extra, host);
  if (!faces) return faces.problem();
  return faces->front();
}

std::vector<Point3> sidesForShow(const std::vector<Host>& hosts) {
  std::vector<Shown> all;
  for (const Host& host : hosts) addShown(host, facesOf(host), all);
  sortByWorth(all);
  std::vector<Point3> sides;
  for (const Shown& each : all)
    if (std::ranges::none_of(sides, [&](Point3 s) { return dot(s, each.out) > kAlikeTurned; }))
      sides.push_back(each.out);
  return sides;
}

}  // namespace creasewright
