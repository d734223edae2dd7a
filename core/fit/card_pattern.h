#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "fit/card_colours.h"
#include "units/millimetres.h"

namespace creasewright {

/// `colours` with those that are written in place of its face and back; its pattern stays. Error:
/// ColourUnknown.
Result<CardColours> withColours(CardColours colours, std::string_view text);

/// `colours` with the pattern that is written as `ID`, or
/// `ID:scale=12mm:turn=45:colours=sage,cream:side=back` with as much of that as is wanted; a slash
/// may part the colours too, as in `colours=sage/cream`. `plate=yes` sets words on a plain plate.
/// `none` takes the pattern away. Errors: PatternUnknown, PatternUnreadable, PatternScaleOff,
/// PatternColours, ColourUnknown; PictureNoFile for `picture`, which withPaper() takes once its
/// file is read.
Result<CardColours> withPattern(CardColours colours, std::string_view text);

/// `colours` with a paper, changed by settings as above, parted by colons; a picture may have
/// `tiled=no`, `right=5mm` and `up=-3mm` too. Errors: PatternUnreadable, PatternScaleOff,
/// PatternColours, ColourUnknown.
Result<CardColours> withPaper(CardColours colours, PaperPattern paper, std::string_view settings);

/// A card's pattern as withPattern() reads it (of a picture without its file); empty without one.
std::string patternText(const CardColours& colours);

/// What follows `picture:` parted into the path of its file and the settings behind it: a path may
/// have colons, but none before a setting's name.
struct PictureText {
  std::string_view file;
  std::string_view settings;
};
/// Nothing where `text` names another pattern.
std::optional<PictureText> pictureText(std::string_view text);

/// How far a picture may be shifted on its paper, to either side.
inline constexpr Length kFarthestShift = mm(1000);

}  // namespace creasewright
