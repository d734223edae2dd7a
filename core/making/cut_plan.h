#pragma once

#include <string>
#include <vector>

#include "making/score_plan.h"
#include "making/waste.h"

namespace creasewright {

/// What the hand does with a cut; also the order of the plan: holes while the sheet is whole and
/// firm, then the waste, then the fine work at its edges.
enum class CutKind {
  Opening,  ///< closed, its middle falls out
  Slit,     ///< inside the card, takes nothing away
  Straight,
  Mitre,  ///< oblique, from a crease's end to a crease's end
  Taper,  ///< oblique, longer than a notch
  Notch,  ///< a corner cut off, at most 10 mm long
  Curve
};

/// How the same cut is repeated on the blank.
enum class CutRepeat {
  LeftRight,  ///< mirrored about the upright middle line
  BottomTop,  ///< mirrored about the level middle line
  HalfTurn    ///< turned by 180 degrees about the middle
};

/// One stroke of the knife and its equals. A straight stroke along a sheet's side names the sheet's
/// edge where it starts and the full score where it stops.
struct Cut {
  CutKind kind = CutKind::Straight;
  Polyline line;                   ///< blank coordinates, mm; closed for openings
  std::vector<CutRepeat> repeats;  ///< to be cut again there
  bool fromEdge = false;           ///< starts at the sheet's edge, on `edge`
  SheetSide edge = SheetSide::Left;
  int toLine = 0;           ///< stops at this full score counted from `edge`; 0 = none
  bool alongScore = false;  ///< runs along a full score or the mark of a short one
};

struct CutPlan {
  Length width;  ///< of the blank to trim from the stock sheet
  Length height;
  std::vector<Cut> cuts;
  std::vector<std::string> wasteLetters;  ///< what falls off, as in findWaste
};

/// Every cut of the net once: cuts on one line that touch are one stroke, mirror-equal cuts are
/// told once.
CutPlan planCuts(const Net& net, const FlatNet& flat, const std::vector<WastePiece>& waste);

/// The edge that a stroke from `edge` starts at where it is repeated.
SheetSide repeatedEdge(SheetSide edge, CutRepeat repeat);

/// A stroke as it is repeated on a blank of that size.
Polyline repeated(const Polyline& line, CutRepeat repeat, double width, double height);

}  // namespace creasewright
