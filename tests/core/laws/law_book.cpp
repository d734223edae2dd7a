#include "core/laws/law_book.h"

#include <array>

namespace creasewright::testing {

std::span<const Law> lawBook() {
  static constexpr std::array kLaws{
      Law{"every check holds", everyCheckHolds},
      Law{"no panel goes through another", noPanelGoesThroughAnother},
      Law{"no bend is idle", noBendIsIdle},
      Law{"mates land on their targets", matesLandOnTheirTargets},
      Law{"creases are long enough to score", creasesAreLongEnoughToScore},
      Law{"flaps are as wide as their limit", flapsAreAsWideAsTheirLimit},
      Law{"every cut is told", everyCutIsTold},
      Law{"doubled measures double the net", doubledMeasuresDoubleTheNet},
      Law{"even styles fold to mirror images", evenStylesFoldToMirrorImages},
      Law{"meeting edges are held or declared open", meetingEdgesAreHeldOrDeclaredOpen},
      Law{"declared open edges meet", declaredOpenEdgesMeet},
      Law{"every piece is held or loose", everyPieceIsHeldOrLoose},
      Law{"outer pieces go over inner ones", outerPiecesGoOverInnerOnes},
      Law{"standing pieces stay clear", standingPiecesStayClear},
  };
  return kLaws;
}

std::string describe(const BuiltDesign& built) {
  std::string text =
      built.design.styleId + " caliper " + std::to_string(built.design.card.caliper.mm());
  for (const auto& [key, raw] : built.design.parameters)
    text += ' ' + key + '=' + std::to_string(raw);
  for (const Problem& p : built.problems)
    text += " | " + std::string(codeName(p.code)) + " at " + p.where;
  return text;
}

}  // namespace creasewright::testing
