#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "units/length.h"

namespace creasewright {

/// A kind of sheet to cut from.
struct CutSheet {
  Length width;
  Length height;
  std::int64_t cost = 0;  ///< of one, in any unit; 0 = not told
  int atHand = -1;        ///< no more can be had; -1 = as many as wanted
  bool mayTurn = true;    ///< false where its grain or pattern forbids a quarter turn
};

/// Blanks of one size that are needed.
struct BlankDemand {
  std::string name;
  Length width;
  Length height;
  int quantity = 1;
  bool mayTurn = true;  ///< false where it must lie as it is on every sheet
};

/// Whether a blank may be turned by a quarter on a sheet.
inline bool mayTurn(const CutSheet& sheet, const BlankDemand& blank) {
  return sheet.mayTurn && blank.mayTurn;
}

/// Whether a blank fits a sheet, by a quarter turn only where it may be turned.
inline bool holds(const CutSheet& sheet, const BlankDemand& blank) {
  return (blank.width <= sheet.width && blank.height <= sheet.height) ||
         (mayTurn(sheet, blank) && blank.width <= sheet.height && blank.height <= sheet.width);
}

/// A rectangle on a sheet: cut in two from edge to edge, a blank, or left over. Corner and sizes in
/// the sheet's frame, origin lower left.
struct CutNode {
  enum class Kind { Offcut, Blank, Cut };
  Kind kind = Kind::Offcut;
  Length x, y, width, height;
  int demand = -1;             ///< Blank: index into the demands
  bool turned = false;         ///< Blank: lies turned by a quarter
  bool upright = false;        ///< Cut: along the height, else along the width
  Length at;                   ///< Cut: from the rectangle's left or lower edge
  std::vector<CutNode> parts;  ///< Cut: the left or lower part, then the other
};

/// One way to cut a sheet, and how many sheets are cut that way.
struct Layout {
  int stock = 0;
  int count = 1;
  CutNode sheet;
};

/// Worths of the blanks in whole numbers, by demand, and for each kind of sheet what blanks that
/// fit one sheet are worth together at most. Whoever cuts `n` sheets of each kind gets blanks worth
/// no more than the sum of n * most, so no plan does with numbers of sheets for which that sum is
/// less than what all blanks asked for are worth.
struct WorthProof {
  std::vector<std::int64_t> worth;
  std::vector<std::int64_t> most;  ///< by kind of sheet
};

/// One step of a CountProof: an end where `stock` is negative, else a pattern to branch on.
struct CountStep {
  int stock = -1;
  std::vector<int> pattern = {};         ///< blanks by demand
  int most = 0;                          ///< first it is cut at most so often, then more often
  std::vector<std::int64_t> worth = {};  ///< an end: of the blanks
};

/// That so many sheets of each kind do not give the blanks: a tree of steps, each before what
/// follows from it. Patterns that waste more than all these sheets together may, by the worths of
/// `spare`, are left out. However often the pattern of a step is cut, one of its two branches
/// holds; at an end all patterns, cut as often as the branches let them, are worth less than the
/// blanks that are asked for.
struct CountProof {
  std::vector<int> sheets;  ///< by kind
  std::vector<WorthProof> spare;
  std::vector<CountStep> steps;  ///< none = there is no proof
};

/// What a bound follows from: worths, and numbers of sheets that no worths rule out.
struct BoundProof {
  std::vector<WorthProof> worths;
  std::vector<CountProof> counts;
};

struct CuttingPlan {
  std::vector<Layout> layouts;
  int sheets = 0;
  std::int64_t cost = 0;   ///< sheets, or their prices when all stock has one
  std::int64_t bound = 0;  ///< no plan costs less
  bool priced = false;     ///< cost and bound are prices
  BoundProof proof = {};   ///< prove_bound.h finds the bound anew from it
  double work = 0;         ///< that planning took, in seconds of an ordinary machine
  [[nodiscard]] bool proven() const { return cost == bound; }
};

/// Visits every node of a sheet, parents first.
template <class Visit>
void eachNode(const CutNode& node, const Visit& visit) {
  visit(node);
  for (const CutNode& part : node.parts) eachNode(part, visit);
}

}  // namespace creasewright
