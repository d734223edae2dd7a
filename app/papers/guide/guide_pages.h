#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "papers/guide/guide_form.h"
#include "papers/guide/guide_words.h"
#include "units/paper.h"

namespace creasewright {

/// The guide laid out on upright pages, figures beside their sentences; a step is never split
/// unless it is longer than a page; the note last. To be painted with lookOf(form).
std::vector<Drawing> guidePages(const BuiltDesign& built, GuideUnits units, const Paper& paper,
                                const GuideForm& form = {}, const GuideNote& note = {});

}  // namespace creasewright
