#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "papers/guide/guide_form.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

/// A step's words with its number in a disc: title, sentences, checks, set to `width` mm.
Drawing stepText(int number, const StepWords& words, double width, const GuideType& type);

inline constexpr double kUnderPicture = 3;  ///< mm

/// A picture above the words, all `width` mm wide; the words begin `boxHeight` mm below the top,
/// the picture stands on a line above them.
Drawing stepCell(const Drawing& picture, double boxHeight, const Drawing& text, double width);

/// A note with its heading, its lines in two columns where `width` mm leave the room.
Drawing noteBlock(const GuideNote& note, double width, const GuideType& type);

/// Drawings below one another, `gap` mm apart.
Drawing stacked(const std::vector<Drawing>& blocks, double gap);

/// Drawings side by side from the left, each in a column of `column` mm, level at the top.
Drawing inColumns(const std::vector<Drawing>& blocks, double column, double gap);

}  // namespace creasewright
