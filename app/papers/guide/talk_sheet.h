#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "papers/guide/guide_form.h"
#include "papers/guide/guide_words.h"
#include "units/paper.h"

namespace creasewright {

/// For who shows a design to a class or to a camera: what to have ready, which pieces to cut
/// beforehand, and what to show and to say in which minute; the note last. To be painted with
/// lookOf(form).
std::vector<Drawing> talkSheet(const BuiltDesign& built, GuideUnits units, const Paper& paper,
                               const GuideForm& form = {}, const GuideNote& note = {});

}  // namespace creasewright
