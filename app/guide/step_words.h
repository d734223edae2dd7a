#pragma once

#include "guide/guide_words.h"

namespace creasewright {

/// More lines than this are not told as a number.
inline constexpr int kMostLinesToCount = 30;

/// One step; `built` gives the panels their names.
StepWords wordStep(const Step& step, const Guide& guide, const BuiltDesign& built,
                   GuideUnits units);

/// Sentences of the cut steps.
StepWords wordCuts(const Step& step);

/// Sentences of a fold stage and of putting pieces together.
StepWords wordFolds(const Step& step, const Guide& guide, const BuiltDesign& built);

/// AddExtra.
StepWords wordExtra(const Step& step, const BuiltDesign& built, GuideUnits units);

}  // namespace creasewright
