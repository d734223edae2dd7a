#include "document/build_extras.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "document/halves.h"
#include "extras/wrap_round.h"

namespace creasewright {
namespace {

Length thicknessOnFaces(const Design& design) {
  Length most;
  for (const Extra& extra : design.extras) {
    const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
    if (kind && (*kind)->onEveryFace && extra.face.empty())
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

Host hostOf(const BuiltDesign& built) {
  Host host = hostOf(built.design);
  for (const BuiltPiece& piece : built.pieces)
    if (!piece.role) host.pieces.push_back({&piece, &piece.folded, piece.cavityBox});
  return host;
}

Result<ExtraParts> partsOf(const Extra& extra, const Host& host) {
  const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
  if (!kind) return kind.problem();
  const Problems limits =
      checkLimits(extra.kind, (*kind)->parameters, extra.parameters, host.benchOf(extra));
  if (!limits.empty()) return limits.front();
  return (*kind)->build(extra, host);
}

/// What goes round a box is measured on one piece, which half of a box is not.
bool goesRound(const ExtraParts& parts) {
  return parts.ribbon ||
         std::ranges::any_of(
             parts.pieces, [](const ExtraPiece& piece) { return piece.placing == Placing::Round; });
}

bool hasHalves(const BuiltDesign& built) {
  return std::ranges::any_of(
      built.pieces, [&](const BuiltPiece& piece) { return wholeOf(built, piece).has_value(); });
}

/// Two of a name are told apart by a number.
std::string freeName(const std::string& wanted, const BuiltDesign& built) {
  const auto taken = [&](const std::string& name) {
    return std::ranges::any_of(built.pieces, [&](const BuiltPiece& p) { return p.name == name; });
  };
  std::string name = wanted;
  for (int i = 2; taken(name); ++i) name = wanted + "-" + std::to_string(i);
  return name;
}

void addPieces(int index, ExtraParts parts, BuiltDesign& built) {
  const Extra& extra = built.design.extras[static_cast<std::size_t>(index)];
  for (ExtraPiece& added : parts.pieces) {
    added.part.name = freeName(added.part.name, built);
    BuiltPiece piece = buildPiece(std::move(added.part), extra.card, built.design, built.problems);
    piece.role = ExtraRole{index, added.placing, std::move(added.faces), added.around};
    built.pieces.push_back(std::move(piece));
  }
  if (!parts.ribbon) return;
  built.ribbons.push_back(*parts.ribbon);
  built.ribbons.back().extra = index;
}

}  // namespace

CutWindows cutWindows(const Design& design, std::vector<Piece>& pieces) {
  CutWindows windows;
  std::vector<Pose> poses;
  for (const Piece& piece : pieces) poses.push_back(pose(piece.net, 1.0));
  Host host = hostOf(design);
  for (std::size_t i = 0; i < pieces.size(); ++i)
    host.pieces.push_back({&pieces[i], &poses[i], {}});
  host.wraps = wrapsOf(design.extras, host);
  for (std::size_t i = 0; i < design.extras.size(); ++i) {
    const Result<const ExtraKind*> kind = findExtraKind(design.extras[i].kind);
    if (!kind || !(*kind)->opensFace) continue;
    const Result<ExtraParts> parts = partsOf(design.extras[i], host);
    windows.emplace(static_cast<int>(i), parts);
    if (!parts || !parts->opening) continue;
    const FaceOpening& opening = *parts->opening;
    Net& net = pieces[static_cast<std::size_t>(opening.piece)].net;
    net.panels[static_cast<std::size_t>(opening.panel)].openings.push_back(opening.outline);
  }
  return windows;
}

std::vector<std::string> faceNames(const BuiltDesign& built) {
  const Host host = hostOf(built);
  std::vector<std::string> names;
  for (const HostFace& face : facesOf(host)) names.push_back(faceName(host, face));
  return names;
}

void addExtras(const CutWindows& windows, BuiltDesign& built) {
  std::vector<TakenPlace> taken;
  const std::vector<WrapRound> wraps = wrapsOf(built.design.extras, hostOf(built));
  for (std::size_t i = 0; i < built.design.extras.size(); ++i) {
    const int index = static_cast<int>(i);
    const auto window = windows.find(index);
    Host host = hostOf(built);
    host.taken = taken;
    host.wraps = wraps;
    Result<ExtraParts> parts =
        window != windows.end() ? window->second : partsOf(built.design.extras[i], host);
    if (!parts) {
      built.problems.push_back(parts.problem());
      continue;
    }
    if (goesRound(*parts) && hasHalves(built)) {
      built.problems.push_back({ProblemCode::ExtraNoPlace, built.design.extras[i].kind, {}});
      continue;
    }
    std::ranges::copy(parts->taken, std::back_inserter(taken));
    std::ranges::copy(parts->warnings, std::back_inserter(built.problems));
    addPieces(index, std::move(parts).value(), built);
  }
}

}  // namespace creasewright
