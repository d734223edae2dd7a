#include "pages/design_picture.h"

#include <algorithm>
#include <cstdint>

#include "base/shade_png.h"
#include "drawing/arrange.h"
#include "drawing/net_drawing.h"
#include "folding/surfaces/upright.h"
#include "pages/fold_drawing.h"
#include "pages/gift_strip.h"
#include "pages/marks.h"
#include "pages/pale_paper.h"

namespace creasewright {
namespace {

Drawing netPicture(const BuiltDesign& design, const BuiltPiece& built,
                   const PictureOptions& picture) {
  std::vector<Polygon> glue;
  NetDrawingOptions options;
  if (picture.hatching)
    for (const GlueArea& area : built.gluePlan)
      (area.flapFace == Face::Inside ? glue : options.glueBehind).push_back(area.area);
  options.dimensions = picture.dimensions;
  options.waste = picture.hatching;
  options.sheet = false;
  NetDrawing net = drawNet(built.net, built.flat, glue, options);
  Drawing out = std::move(net.drawing);
  if (picture.coloured) {
    Drawing print;
    print.paths = palePrint(design, built);
    append(out, moved(std::move(print), net.origin));
  }
  if (built.count > 1)
    out.texts.push_back({.role = Role::Legend,
                         .label = {"make-count", {std::int64_t{built.count}}, {}},
                         .at = {options.margin, 1},
                         .height = 3});
  return out;
}

/// The drawing above two bars to scale it by.
Drawing withScaleBars(const Drawing& drawing) {
  constexpr double kRoom = 20;
  const std::vector<Drawing> bars = checkBars();
  Drawing out = moved(drawing, {0, kRoom});
  append(out, moved(bars[0], {5, 13}));
  append(out, moved(bars[1], {5, 7}));
  out.texts.push_back(
      {.role = Role::Legend, .label = {"unit-mm", {}, {}}, .at = {5, 3}, .height = 2.4});
  out.width = std::max(drawing.width, bars[1].width + 10);
  out.height = drawing.height + kRoom;
  return out;
}

Drawing scenePicture(const GiftScene& scene, const PictureOptions& options) {
  FoldPicture picture = pictureOf(scene, options.view);
  const GroundShadow shadow = options.shadow ? shadowOf(scene, options.view) : GroundShadow();
  if (shadow.empty()) return drawFold(picture, scene.shown.looks, kFoldedMargin, scene.shown.words);
  include(picture.extent, shadow.extent.low);
  include(picture.extent, shadow.extent.high);
  Drawing out = drawFold(picture, scene.shown.looks, kFoldedMargin, scene.shown.words);
  out.pictures.push_back(
      {.file = PictureFile(shadePng(shadow.columns, shadow.rows, shadow.dark)),
       .at = shadow.extent.low - picture.extent.low + Point{kFoldedMargin, kFoldedMargin},
       .width = shadow.extent.width(),
       .height = shadow.extent.height()});
  return out;
}

Drawing foldPicture(const BuiltDesign& design, const BuiltPiece& built,
                    const PictureOptions& options) {
  const int index = static_cast<int>(&built - design.pieces.data());
  const GiftStrip strip(design, index, GiftStrip::Of::Piece);
  if (options.done < strip.end()) return scenePicture(strip.at(options.done, kClosed), options);
  GiftScene scene{dressed(design, built), {}, uprightOf(built)};
  scene.solids = productAt(productInFinished(design), index, scene.shown.pose, 1);
  return scenePicture(scene, options);
}

/// Puts a part to the right of those before it.
void addBeside(Drawing& out, const Drawing& part) {
  constexpr double kApart = 10;
  const double at = out.width > 0 ? out.width + kApart : 0;
  append(out, moved(part, {at, 0}));
  out.width = at + part.width;
  out.height = std::max(out.height, part.height);
}

Drawing foldedPieces(const BuiltDesign& design, const PictureOptions& options) {
  Drawing out;
  const auto wanted = [&](const BuiltPiece& piece) {
    return options.extra == kAllExtras || !piece.role || piece.role->extra == options.extra;
  };
  if (!options.piece.empty()) {
    for (const BuiltPiece& piece : design.pieces)
      if (piece.name == options.piece && wanted(piece))
        addBeside(out, foldPicture(design, piece, options));
    return out;
  }
  if (options.done < kFinished)
    if (const GiftStrip strip(design, 0); options.done < strip.end())
      return scenePicture(strip.at(options.done, kClosed), options);
  const Gift gift(design);
  const GiftScene scene = gift.at(options.gift);
  if (!scene.shown.pose.empty()) addBeside(out, scenePicture(scene, options));
  for (const BuiltPiece& piece : design.pieces)
    if (wanted(piece) && !gift.holds(piece)) addBeside(out, foldPicture(design, piece, options));
  return out;
}

}  // namespace

Drawing pictureOf(const BuiltDesign& design, const PictureOptions& options) {
  if (options.folded) return foldedPieces(design, options);
  Drawing out;
  for (const BuiltPiece& built : design.pieces) {
    if (!options.piece.empty() && built.name != options.piece) continue;
    if (options.extra != kAllExtras && built.role && built.role->extra != options.extra) continue;
    addBeside(out, netPicture(design, built, options));
  }
  return options.scaleBar ? withScaleBars(out) : out;
}

}  // namespace creasewright
