#include "pages/printed_backs.h"

#include <algorithm>

#include "pages/printed_part.h"

namespace creasewright {
namespace {

Bounds over(const Bounds& box, double width) {
  return {{width - box.high.x, box.low.y}, {width - box.low.x, box.high.y}};
}

Tiling over(Tiling tiling) {
  for (Tile& tile : tiling.tiles) {
    tile.column = tiling.columns - 1 - tile.column;
    tile.window = over(tile.window, tiling.width);
    tile.own = over(tile.own, tiling.width);
  }
  return tiling;
}

}  // namespace

std::vector<TemplatePiece> printedCopies(const std::vector<TemplatePiece>& pieces) {
  std::vector<TemplatePiece> out;
  for (const TemplatePiece& piece : pieces) {
    if (!isPrinted(piece)) continue;
    out.insert(out.end(), static_cast<std::size_t>(std::max(1, piece.count)), piece);
  }
  for (TemplatePiece& piece : out) piece.count = 1;
  return out;
}

namespace {

/// What a page that takes a piece whole leaves on each of its sides, mm; less than 0 where none
/// does.
double roomRound(const TemplatePiece& piece, const PageSetup& setup) {
  double most = -1;
  for (const bool sideways : {false, true}) {
    if (sideways ? setup.orientation == Orientation::Upright
                 : setup.orientation == Orientation::Sideways)
      continue;
    const Bounds room = pageFrame(setup, sideways, {}).printable;
    const FlatNet& flat = *piece.flat;
    for (const auto& [wide, high] :
         {std::pair{flat.width, flat.height}, std::pair{flat.height, flat.width}})
      most = std::max(most, std::min(room.width() - wide, room.height() - high) / 2);
  }
  return most;
}

}  // namespace

PrintedForm formFor(const TemplatePiece& piece, const PageSetup& setup, PrintedForm form) {
  const double most = roomRound(piece, setup);
  if (most >= 0) form.bleed = std::min(form.bleed, most);
  return form;
}

std::optional<double> marksRoomFor(const TemplatePiece& piece, const PageSetup& setup,
                                   const PrintedForm& form) {
  const double most = roomRound(piece, setup);
  if (most < form.bleed) return std::nullopt;
  return std::min(marksReach(form.bleed), most - form.bleed);
}

TemplateLayout turnedOver(const TemplateLayout& layout) {
  TemplateLayout out = layout;
  for (LaidPage& page : out.pages)
    for (LaidPart& part : page.parts) {
      const std::optional<Tiling>& tiling = layout.tilings[part.part];
      part.at.x = page.frame.width - part.at.x - part.window.width();
      // A part that lies whole has its own width.
      part.window = over(part.window, tiling ? tiling->width : part.window.high.x);
    }
  for (std::optional<Tiling>& tiling : out.tilings)
    if (tiling) tiling = over(std::move(*tiling));
  return out;
}

bool isTurned(const TemplateLayout& layout, std::size_t part) {
  return std::ranges::any_of(
      layout.pages,
      [part](const LaidPage& page) {
        return std::ranges::any_of(
            page.parts, [part](const LaidPart& laid) { return laid.part == part && laid.turned; });
      });
}

PartSheet backPart(const TemplatePiece& piece, const PrintedForm& form, double room, bool turned) {
  PartSheet back = bordered(printedPart(piece, form, true), room);
  // Left on the face is right from behind: a half more.
  return turned ? turnedLeft(turnedLeft(std::move(back))) : back;
}

}  // namespace creasewright
