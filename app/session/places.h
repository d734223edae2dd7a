#pragma once

#include "document/build.h"
#include "guide/guide.h"
#include "session/affected_panels.h"
#include "session/place.h"

namespace creasewright {

// The places of a design, each found in one way, so that all views mean the same.

/// A panel, all its strips where it is bent.
Place placeOfPanel(const BuiltDesign& built, int piece, int panel);

/// Folds, with the panels at both sides of them.
Place placeOfCreases(const BuiltDesign& built, int piece, std::vector<int> creases);

/// Lines scored or cut on the blank (blank coordinates, mm), the folds that lie on them, and the
/// panels that have a part of them on their rim.
Place placeOfLines(const BuiltDesign& built, int piece, std::vector<Segment> lines);

/// What a step of the guide works at.
Place placeOfStep(const BuiltDesign& built, const Step& step);

/// A flap and what it is stuck to.
Place placeOfGlue(const BuiltDesign& built, int piece, const GlueArea& glue);

/// What a check that does not hold is about; empty when it names none of the design's panels.
Place placeOfProblem(const BuiltDesign& built, const Problem& problem);

/// What a measure is about.
Place placeOfMeasure(const AffectedPanels& affected, std::string_view key);

/// The same thing after the design has changed; empty when it is no longer there.
Place placeAfterChange(const BuiltDesign& built, const Place& before);

}  // namespace creasewright
