#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/laws/random_design.h"

namespace creasewright::testing {

/// What a design breaks a law with, in words; empty when the law holds.
using Verdict = std::string;

/// Something that is true of every design a style builds, at any parameters inside their limits.
struct Law {
  std::string_view name;
  Verdict (*judge)(const BuiltDesign& built);
};

/// All laws that tests and soak run share.
std::span<const Law> lawBook();

// Motion
Verdict noPanelGoesThroughAnother(const BuiltDesign& built);
Verdict noBendIsIdle(const BuiltDesign& built);
Verdict matesLandOnTheirTargets(const BuiltDesign& built);
// Making
Verdict everyCheckHolds(const BuiltDesign& built);
Verdict creasesAreLongEnoughToScore(const BuiltDesign& built);
Verdict flapsAreAsWideAsTheirLimit(const BuiltDesign& built);
Verdict everyCutIsTold(const BuiltDesign& built);
// Likeness
Verdict doubledMeasuresDoubleTheNet(const BuiltDesign& built);
Verdict evenStylesFoldToMirrorImages(const BuiltDesign& built);
// Holding together
Verdict meetingEdgesAreHeldOrDeclaredOpen(const BuiltDesign& built);
Verdict declaredOpenEdgesMeet(const BuiltDesign& built);
Verdict everyPieceIsHeldOrLoose(const BuiltDesign& built);
// Pieces that go over one another
Verdict outerPiecesGoOverInnerOnes(const BuiltDesign& built);
Verdict standingPiecesStayClear(const BuiltDesign& built);

/// The parameters and card of a design, to build it again from a message.
std::string describe(const BuiltDesign& built);

/// Whether doubledMeasuresDoubleTheNet() finds anything to judge: twice the size is in the limits.
bool canBeDoubled(const BuiltDesign& built);

/// Whether evenStylesFoldToMirrorImages() judges any piece of a style.
bool foldsToMirrorImages(std::string_view styleId);

}  // namespace creasewright::testing
