#pragma once

#include <string>

#include "document/build.h"
#include "drawing/drawing.h"
#include "pages/gift.h"
#include "pages/gift_sight.h"

namespace creasewright {

inline constexpr int kAllExtras = -1;
inline constexpr int kNoExtras = -2;

/// What the pictures of a design show.
struct PictureOptions {
  std::string piece = {};      ///< only this piece; empty = all, side by side
  int extra = kAllExtras;      ///< beside the box only this of Design::extras
  bool folded = false;         ///< the finished gift, or one folded piece, instead of the net
  GiftState gift = {};         ///< how it is shown
  View view = standardView();  ///< of what is folded
  double done = kFinished;     ///< stops of the strip of the gift, or of the one folded piece
  bool shadow = false;         ///< on the ground under what is folded
  bool dimensions = true;      ///< score distances and sizes around a net
  bool hatching = true;        ///< waste and glue of a net
  bool coloured = false;       ///< a net in the colours of its card, pale where lines want it
  bool scaleBar = false;       ///< below a net: bars of 100 mm and 4 in, and what a unit is
};

/// Nets of the chosen pieces, or the finished gift and what is no part of it, as one drawing in
/// true size, 10 mm apart. A net that is needed more than once says so below it.
Drawing pictureOf(const BuiltDesign& design, const PictureOptions& options);

}  // namespace creasewright
