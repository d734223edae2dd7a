#pragma once

#include "pages/part_sheet.h"

namespace creasewright {

/// Colour runs so far into a flap that is glued on its printed face; the rest of it stays plain,
/// for ink weakens glue (common practice, no published source). mm
inline constexpr double kIntoFlap = 2;

/// Which of a piece's panels are glued on that face, and stay plain.
std::vector<bool> gluedPanels(const TemplatePiece& piece, Face face);

/// What is printed of a piece, in blank coordinates: every panel that shows, `bleed` mm beyond its
/// cuts, and no more than kIntoFlap into those that are glued.
Region printedArea(const TemplatePiece& piece, Face face, double bleed);

/// A piece as its printed paper shows it: the face that is printed up (`behind`: the other one), in
/// colour and pattern with its words, marks at the corners of its blank, ticks at the ends of its
/// folds, and its cuts where the form wants them. The sheet is `form.bleed` larger than the blank
/// on each side.
PartSheet printedPart(const TemplatePiece& piece, const PrintedForm& form, bool behind);

/// How far its marks reach beyond the bleed, mm.
double marksReach(double bleed);

/// Whether any side of the piece is printed.
bool isPrinted(const TemplatePiece& piece);

}  // namespace creasewright
