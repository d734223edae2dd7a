#include "pages/paper_print.h"

#include <cmath>

#include "base/picture_file.h"
#include "patterns/pattern.h"
#include "patterns/pattern_on.h"
#include "units/angle.h"

namespace creasewright {
namespace {

PathItem inked(const Inked& ink) {
  PathItem item{.role = Role::Face,
                .rings = {},
                .closed = true,
                .filled = true,
                .colour = ink.colour,
                .printed = true};
  for (const Area& area : ink.shape) {
    item.rings.push_back(area.outer);
    item.rings.insert(item.rings.end(), area.holes.begin(), area.holes.end());
  }
  return item;
}

}  // namespace

bool liesOnce(const PaperPattern* paper) {
  return paper != nullptr && paper->picture && !paper->picture->tiled;
}

bool isPrinted(const CardColours& colours, bool behind) {
  return colours.patternOf(behind) != nullptr ||
         (behind ? colours.back.has_value() : colours.face.has_value());
}

std::optional<PictureFill> pictureOn(const PaperPattern& paper, const PlaneMap& place) {
  if (!paper.picture) return std::nullopt;
  const std::optional<PixelSize> pixels = pixelsOf(paper.picture->file.bytes());
  if (!pixels) return std::nullopt;
  const double turn = Angle::degrees(paper.turn).radians();
  const Point along{std::cos(turn), std::sin(turn)};
  const double wide = paper.scale.mm();
  const double high = wide * pixels->height / pixels->width;
  const Point corner{paper.picture->right.mm() - wide / 2, paper.picture->up.mm() - high / 2};
  const PlaneMap turned{{}, along, turnLeft(along)};
  const PlaneMap picture{turned.apply(corner), along * wide, turnLeft(along) * high};
  return PictureFill{paper.picture->file, place.after(picture), paper.picture->tiled};
}

std::vector<PathItem> printOn(const Region& outline, const CardColours& colours, bool behind,
                              const PlaneMap& paper) {
  std::vector<PathItem> out;
  if (outline.empty() || !isPrinted(colours, behind)) return out;
  const PaperPattern* pattern = colours.patternOf(behind);
  const std::optional<Colour>& plain = behind ? colours.back : colours.face;
  if (pattern == nullptr) return {inked({*plain, outline})};
  if (std::optional<PictureFill> picture = pictureOn(*pattern, paper)) {
    // Beside a picture that is there once, the card has its own colour.
    const Colour white{0xFF, 0xFF, 0xFF};
    out.push_back(inked({picture->tiled ? meanColour(*pattern) : plain.value_or(white), outline}));
    out.back().picture = std::move(picture);
    return out;
  }
  for (const Inked& ink : patternOn(outline, *pattern, paper)) out.push_back(inked(ink));
  return out;
}

}  // namespace creasewright
