#pragma once

#include "extras/extra_kind.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// The bow that is tied of what a ribbon has for it; nothing where that is too short for loops, as
/// where its ends only lap. Two loops of span B, two tails T and a knot of about four widths w take
/// 2B + 2T + 4w of ribbon (as a tied bow is reckoned in bow.cpp); T is three quarters of B, less
/// for a wide ribbon, and more where the box is too short for B. Its knot lies where ribbons cross,
/// its tails towards who looks.
std::optional<TiedBow> tiedBow(const RibbonNeed& ribbon);

/// The axis of the box along which its loops lie.
std::size_t acrossOf(const TiedBow& bow, const RibbonNeed& ribbon);

/// How wide about the middle its tails lie, mm.
double spreadOf(const TiedBow& bow, Length width);

/// Lays its tails along an outline of what is under them, as of `outlineRound` about the axis of
/// its loops: over the edge of the face and down, and no farther than the foot of the box, where
/// the picture cuts them short. Its knot is raised over them, and by at least `lift` mm.
void layTails(TiedBow& bow, const RibbonNeed& ribbon, const Polygon& under, double lift);

/// Adds its two tails as panels; `tail` is one of them, its knot end at 0 and along x.
void addDrapedTails(const TiedBow& bow, const Polygon& tail, Net& net, Pose& pose);

}  // namespace creasewright
