#pragma once

#include <optional>

#include "cutting/cutting.h"
#include "drawing/drawing.h"
#include "fit/card_colours.h"

namespace creasewright {

/// How large the letters and settings of a layout's picture are at best and at least, mm.
inline constexpr double kLayoutType = 2.6;
inline constexpr double kLeastLayoutType = 1.6;

/// How the card of a layout shows in its picture.
struct LayoutLook {
  std::optional<Colour> tint = {};  ///< of the blanks
  bool up =
      false;  ///< its pattern has an up: an arrow on each blank (`pattern-up` where it has room)
};

/// A layout as a picture that fits into `width` x `height` mm, lying as its sheet lies at the first
/// cut: the fence thick at its left; blanks with letters by demand (from `firstLetter` on), offcuts
/// hatched; on the cut lines the numbers of the steps (cutting/trim_steps.h), and on one line of
/// each step its setting too (label `trim-setting`: number, setting) where a part beside it has
/// room. Nothing stands on anything else.
/// `look` tells what the blanks are cut from.
Drawing drawLayout(const Layout& layout, double width, double height, int firstLetter,
                   const Wording& wording, const LayoutLook& look = {});

/// How a card shows in such a picture. Its tint is the colour of its face, or of its back where
/// only that has one, or the mean colour of its pattern, so pale that lines and words stand out
/// from it; none for plain card.
LayoutLook lookOf(const CardColours& colours);

/// Whether the sheet lies turned by a quarter at its first cut, and so on its picture.
bool liesTurned(const Layout& layout);

/// The letter of a demand on the pictures: A .. Z, AA ..
std::string demandLetter(int demand);

}  // namespace creasewright
