#include "document/halves.h"

#include <algorithm>

#include "edits/kinds/apply_edits.h"
#include "edits/kinds/halves.h"
#include "fit/blank_on_grid.h"

namespace creasewright {
namespace {

/// The pieces of a design before any is divided.
std::vector<Piece> undivided(const BuiltDesign& built) {
  const Design& design = built.design;
  const Workbench bench = benchOf(design);
  std::vector<Piece> pieces =
      built.style->build(blanksOnGrid(*built.style, design.parameters, bench), bench);
  std::vector<Edit> edits = allEdits(design);
  for (Edit& edit : edits) {
    const Result<const EditKind*> kind = findEditKind(edit.kind);
    if (kind && (*kind)->divides) edit.on = false;
  }
  applyEdits(edits, design.parameters, lengthKeys(built.style->parameters), bench, pieces);
  return pieces;
}

/// The joints are those of the piece before it was divided, in their order: those between the
/// halves neither of them has alone. The tab adds its own.
void setMates(const BuiltDesign& built, const BuiltPiece& half, Net& whole) {
  const std::vector<Piece> pieces = undivided(built);
  const auto before = std::ranges::find(pieces, half.name, &Piece::name);
  if (before == pieces.end()) return;
  whole.mates.clear();
  for (Mate mate : before->net.mates) {
    const auto number = [&](int panel) {
      return whole.find(before->net.panels[static_cast<std::size_t>(panel)].id);
    };
    const std::optional<int> panel = number(mate.panel);
    const std::optional<int> onto = number(mate.onto);
    if (!panel || !onto) continue;
    mate.panel = *panel;
    mate.onto = *onto;
    whole.mates.push_back(std::move(mate));
  }
  const int first = static_cast<int>(half.net.panels.size());
  whole.mates.push_back({first - 1, first, half.held->face, Method::Glue});
}

}  // namespace

bool areHalves(const BuiltPiece& one, const BuiltPiece& other) {
  return isOtherHalf(other.name) && one.held && one.held->by == Hold::Glue &&
         one.held->to == other.name;
}

std::optional<Whole> wholeOf(const BuiltDesign& built, const BuiltPiece& piece) {
  const auto other = std::ranges::find_if(
      built.pieces, [&](const BuiltPiece& each) { return areHalves(piece, each); });
  if (other == built.pieces.end()) return std::nullopt;
  Whole whole{wholeNet(piece.net, other->net), {}};
  setMates(built, piece, whole.net);
  whole.folded = pose(whole.net, 1.0);
  return whole;
}

BuiltPiece asWhole(const BuiltDesign& built, const BuiltPiece& piece) {
  BuiltPiece all = piece;
  std::optional<Whole> whole = wholeOf(built, piece);
  if (!whole) return all;
  all.net = std::move(whole->net);
  all.folded = std::move(whole->folded);
  return all;
}

}  // namespace creasewright
