#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "papers/guide/guide_form.h"
#include "papers/guide/guide_words.h"
#include "units/paper.h"

namespace creasewright {

/// All measures of a design on one page, to publish or to pin up: the finished box, its parts, and
/// of each piece scores and cuts at one scale; no steps; the note last.
Drawing measureCard(const BuiltDesign& built, GuideUnits units, const Paper& paper,
                    const GuideForm& form = {}, const GuideNote& note = {});

}  // namespace creasewright
