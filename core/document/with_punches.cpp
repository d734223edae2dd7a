#include "document/with_punches.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

/// Gives the parameters of what is punched the size of a punch, or leaves it to the knife.
void snap(Parameters& parameters, const BuiltPiece& piece, std::span<const Punch> punches) {
  const Bounds box = bounds(piece.net.panels.front().outline);
  const Punch* punch = punchWithin(punches, static_cast<LabelShape>(parameters.count("shape")),
                                   Length::mm(box.width()), Length::mm(box.height()));
  parameters.setCount("punched", punch == nullptr ? 0 : 1);
  if (punch == nullptr) return;
  parameters.set("width", punch->width);
  parameters.set("height", punch->height);
}

/// The piece of a layer, or of the label itself where `layer` is -1.
const BuiltPiece* pieceOf(const BuiltDesign& built, int extra, int layer) {
  const bool mat = built.design.extras[static_cast<std::size_t>(extra)].parameters.flag("mat");
  const int number = layer + 1 + (mat ? 1 : 0);
  for (const BuiltPiece& piece : built.pieces)
    if (piece.role && piece.role->extra == extra && piece.role->layer &&
        piece.role->layer->number == number)
      return &piece;
  return nullptr;
}

/// A side of a drawn shape, free of what computing it left behind.
Length sideOf(double mm) {
  constexpr double kFinest = 1e-4;  // mm
  return Length::mm(std::round(mm / kFinest) * kFinest);
}

}  // namespace

bool isPunched(const BuiltPiece& piece) {
  return piece.role && piece.role->layer && piece.role->layer->punched;
}

std::optional<Punch> punchFor(const BuiltDesign& built, const BuiltPiece& piece) {
  if (!isPunched(piece)) return std::nullopt;
  const Extra& extra = built.design.extras[static_cast<std::size_t>(piece.role->extra)];
  const int layer = piece.role->layer->number - 1 - (extra.parameters.flag("mat") ? 1 : 0);
  const Parameters& own =
      layer < 0 ? extra.parameters : extra.layers[static_cast<std::size_t>(layer)].parameters;
  const Bounds box = bounds(piece.net.panels.front().outline);
  return Punch{static_cast<LabelShape>(own.count("shape")), sideOf(box.width()),
               sideOf(box.height())};
}

std::vector<Punch> punchesFor(const BuiltDesign& built) {
  std::vector<Punch> all;
  for (const BuiltPiece& piece : built.pieces)
    if (const std::optional<Punch> punch = punchFor(built, piece);
        punch && std::ranges::find(all, *punch) == all.end())
      all.push_back(*punch);
  return all;
}

std::pair<Length, Length> blankSize(const BuiltPiece& piece) {
  const Length rim = isPunched(piece) ? kPunchMargin * 2 : Length();
  return {Length::mm(piece.flat.width) + rim, Length::mm(piece.flat.height) + rim};
}

Design withPunches(Design design, std::span<const Punch> punches) {
  // From the lowest: a layer that becomes smaller leaves less room for the next.
  for (std::size_t i = 0; i < design.extras.size(); ++i)
    for (int layer = -1; layer < static_cast<int>(design.extras[i].layers.size()); ++layer) {
      Extra& extra = design.extras[i];
      Parameters& own =
          layer < 0 ? extra.parameters : extra.layers[static_cast<std::size_t>(layer)].parameters;
      if (!own.flag("punched")) continue;
      const Result<BuiltDesign> built = build(design);
      if (!built) return design;
      if (const BuiltPiece* piece = pieceOf(*built, static_cast<int>(i), layer))
        snap(own, *piece, punches);
    }
  return design;
}

}  // namespace creasewright
