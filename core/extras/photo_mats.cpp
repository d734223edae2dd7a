#include <algorithm>

#include "extras/beside_face.h"
#include "extras/inside_room.h"
#include "extras/kinds.h"
#include "extras/mat_groups.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

constexpr double kOff = 0.1;  // mm between a wall and its mat

/// Whether a piece is put over another and comes off again: a lid, a sleeve.
bool comesOff(const Piece& piece) {
  return piece.over && piece.held && piece.held->by == Hold::Loose;
}

/// Walls and floors that hold the product, of each piece that stays where it is.
std::vector<HostFace> facesInside(const Host& host) {
  std::vector<HostFace> faces;
  for (std::size_t i = 0; i < host.pieces.size(); ++i) {
    const Piece& piece = *host.pieces[i].part;
    if (!piece.cavity || comesOff(piece)) continue;
    for (std::size_t p = 0; p < piece.net.panels.size(); ++p)
      if (piece.net.panels[p].shows || piece.net.panels[p].id == piece.cavity->panel)
        faces.push_back(faceAt(host, static_cast<int>(i), static_cast<int>(p)));
  }
  return faces;
}

/// Mats on walls that face each other, and one on the floor, take room from the product.
std::optional<Problem> missingRoom(const Extra& extra, const Host& host) {
  const std::optional<CavitySize> inside = insideOf(host);
  if (!host.product || !inside) return std::nullopt;
  const double thick = extra.card.caliper.mm() + kOff;
  const double left = std::min({inside->length - host.product->length.mm() - 2 * thick,
                                inside->width - host.product->width.mm() - 2 * thick,
                                inside->height - host.product->height.mm() - thick});
  if (left >= 0) return std::nullopt;
  return Problem{ProblemCode::ExtraTooLarge,
                 extra.kind,
                 {extra.card.caliper, Length::mm(std::max(0.0, thick + left / 2 - kOff))}};
}

Result<ExtraParts> buildPhotoMats(const Extra& extra, const Host& host) {
  std::vector<MatRoom> rooms;
  bool known = extra.face.empty();
  for (HostFace& face : facesInside(host)) {
    const bool chosen = extra.face.empty() || faceName(host, face) == extra.face;
    known = known || chosen;
    if (!chosen) continue;
    Region card = subtract(cardOf(face), joined(behindFace(host, face)));
    rooms.push_back({std::move(face), std::move(card)});
  }
  if (!known) return Problem{ProblemCode::ExtraFaceUnknown, extra.kind, {extra.face}};
  const std::vector<MatGroup> groups =
      matGroups(rooms, FaceSide::Inside, extra.parameters.mm("inset"), host.bench.grid);
  if (groups.empty()) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  if (const auto problem = missingRoom(extra, host)) return *problem;
  const double lift = (host.bench.caliper.mm() + extra.card.caliper.mm()) / 2 + kOff;
  return matParts(groups, "photo-mat", FaceSide::Inside, lift);
}

}  // namespace

ExtraKind photoMatsExtra() {
  return {.id = "photo-mats",
          .title = worded("styles", "Photo mats"),
          .summary = worded("styles",
                            "A layer on the inside of every wall and of the floor, or of one, for "
                            "photos and messages."),
          .act = ExtraAct::GlueMatsIn,
          .turn = ExtraTurn::Second,
          .onFace = true,
          .carriers = {Carrier::Box},
          .words = {.panels = {{"photo-mat", worded("panels", "photo mat")}},
                    .pieces = {{"photo-mat", worded("pieces", "photo mat")}}},
          .parameters = {measure("inset", worded("styles", "Inset"),
                                 worded("styles", "Card left to be seen at every edge."))
                             .standard(mm(3))
                             .from(mm(0.5))
                             .to(mm(30))},
          .build = buildPhotoMats,
          .faces = facesInside};
}

}  // namespace creasewright
