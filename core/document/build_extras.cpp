#include "document/build_extras.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "document/dress.h"
#include "document/halves.h"
#include "extras/hosting.h"
#include "extras/wrap_round.h"
#include "net/standing.h"

namespace creasewright {
namespace {

Length thicknessOnFaces(const Design& design) {
  Length most;
  for (const Extra& extra : design.extras) {
    const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
    if (kind && (*kind)->onEveryFace && extra.face.empty() && extra.host < 0)
      most = std::max(most, extra.card.caliper);
  }
  return most;
}

Host hostOf(const Design& design) {
  Host host;
  host.product = design.product;
  host.ease = design.ease;
  host.bench = benchOf(design);
  host.onFaces = thicknessOnFaces(design);
  return host;
}

/// Where the pieces stand in the closed box.
void placePieces(Host& host) {
  std::vector<const Piece*> parts;
  for (const HostPiece& piece : host.pieces) parts.push_back(piece.part);
  const auto first = parts.empty() ? std::nullopt : standingOf(*parts.front(), parts);
  for (HostPiece& piece : host.pieces)
    if (const auto own = standingOf(*piece.part, parts); first && own && own->root == first->root)
      piece.place = first->place.inverse().after(own->place);
}

Host hostOf(const BuiltDesign& built) {
  Host host = hostOf(built.design);
  for (const BuiltPiece& piece : built.pieces)
    if (!piece.role) host.pieces.push_back({&piece, &piece.folded, piece.cavityBox});
  placePieces(host);
  return host;
}

bool hasHalves(const BuiltDesign& built) {
  return std::ranges::any_of(
      built.pieces, [&](const BuiltPiece& piece) { return wholeOf(built, piece).has_value(); });
}

}  // namespace

CutWindows cutWindows(const Design& design, std::vector<Piece>& pieces) {
  CutWindows windows;
  const std::vector<Result<int>> hosts = hostsOf(design.extras);
  std::vector<Pose> poses;
  for (const Piece& piece : pieces) poses.push_back(pose(piece.net, 1.0));
  Host host = hostOf(design);
  for (std::size_t i = 0; i < pieces.size(); ++i)
    host.pieces.push_back({&pieces[i], &poses[i], {}});
  placePieces(host);
  host.wraps = wrapsOf(design.extras, host);
  for (std::size_t i = 0; i < design.extras.size(); ++i) {
    const Result<const ExtraKind*> kind = findExtraKind(design.extras[i].kind);
    if (!kind || !(*kind)->opensFace || !hosts[i]) continue;
    const Result<ExtraParts> parts = partsOf(design.extras[i], host);
    windows.emplace(static_cast<int>(i), parts);
    if (!parts) continue;
    std::ranges::copy(parts->taken, std::back_inserter(host.taken));
    for (const FaceOpening& opening : parts->openings) {
      Net& net = pieces[static_cast<std::size_t>(opening.piece)].net;
      net.panels[static_cast<std::size_t>(opening.panel)].openings.push_back(opening.outline);
    }
  }
  return windows;
}

std::vector<std::string> faceNames(const BuiltDesign& built, const ExtraKind* kind) {
  const Host host = hostOf(built);
  std::vector<std::string> names;
  const bool own = kind != nullptr && kind->faces;
  for (const HostFace& face : own ? kind->faces(host) : facesOf(host))
    names.push_back(faceName(host, face));
  return names;
}

Extra newExtra(const ExtraKind& kind, const Design& design) {
  Extra extra = ontoGrid(standardExtra(kind, design.card), design.grid);
  if (!kind.runs || kind.ofCard) return extra;
  Design with = design;
  with.extras.push_back(extra);
  const Result<BuiltDesign> built = build(with);
  if (built && std::ranges::find(built->problems, ProblemCode::ExtraInAir, &Problem::code) !=
                   built->problems.end())
    extra.parameters.setCount("cross", 0);
  return extra;
}

void addExtras(const CutWindows& windows, BuiltDesign& built) {
  dress(windows, hostOf(built), hasHalves(built), built);
}

}  // namespace creasewright
