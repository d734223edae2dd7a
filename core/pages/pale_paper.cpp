#include "pages/pale_paper.h"

#include "document/paper_way.h"
#include "drawing/veil.h"
#include "fit/colours_under.h"
#include "pages/paper_print.h"
#include "patterns/pattern.h"

namespace creasewright {
namespace {

/// What the side that is up shows, or nothing.
std::vector<Colour> shownColours(const BuiltPiece& piece, bool turned) {
  const CardColours& colours = piece.card.colours;
  const bool behind = !turned && !faceIsUp(piece);
  const bool plain = !(behind ? colours.behind() : colours.face);
  if (plain && colours.patternOf(behind) == nullptr) return {};
  return coloursUnder(colours, behind);
}

/// The side that is up as if it were the one that is printed; a back that is as the face too.
CardColours sideUp(const BuiltPiece& piece, bool turned) {
  CardColours out = piece.card.colours;
  const bool behind = !turned && !faceIsUp(piece);
  const std::optional<Colour> plain = behind ? out.behind() : out.face;
  if (out.patternOf(behind) == nullptr) out.pattern.reset();
  out.patternBehind = false;
  out.face = plain;
  return out;
}

}  // namespace

bool faceIsUp(const BuiltPiece& piece) { return piece.role && piece.net.panels.size() == 1; }

double veilOver(const BuiltPiece& piece, bool turned) {
  return veilFor(shownColours(piece, turned));
}

std::optional<Colour> paleColour(const BuiltPiece& piece, bool turned) {
  if (shownColours(piece, turned).empty()) return std::nullopt;
  const CardColours up = sideUp(piece, turned);
  const PaperPattern* paper = up.patternOf(false);
  const Colour white{0xFF, 0xFF, 0xFF};
  return veiled(paper != nullptr && !liesOnce(paper) ? meanColour(*paper) : up.face.value_or(white),
                veilOver(piece, turned));
}

PlaneMap paperOnBlank(const BuiltDesign& built, const BuiltPiece& piece) {
  // Of a flat piece the print is shown as it reads, though it is cut from its back.
  return paperOnBlank(piece.net, piece.flat, paperUp(built, piece), true);
}

std::vector<PathItem> palePrint(const BuiltDesign& built, const BuiltPiece& piece) {
  if (shownColours(piece, false).empty()) return {};
  std::vector<PathItem> items =
      printOn(piece.flat.outline, sideUp(piece, false), false, paperOnBlank(built, piece));
  const double veil = veilOver(piece);
  for (PathItem& item : items) {
    item.colour = veiled(*item.colour, veil);
    item.picture.reset();
  }
  return items;
}

}  // namespace creasewright
