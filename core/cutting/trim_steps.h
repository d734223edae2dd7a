#pragma once

#include <vector>

#include "cutting/cutting.h"

namespace creasewright {

/// What is narrower cannot be held down under a trimmer's or guillotine's clamp and is cut with
/// knife and ruler (common practice, no published source).
inline constexpr Length kLeastStrip = Length::nanometres(20'000'000);

/// Where a blade goes, in the sheet's frame; along its height or its width.
struct CutLine {
  Length x, y, length;
};

/// One setting of the trimmer and all cuts made with it: the part lies against the fence on its
/// left or lower edge as drawn, and what comes off is as wide as the setting.
struct TrimStep {
  int number = 1;
  int from = 0;                ///< the step whose strips are cut; 0 = the sheet
  bool rest = false;           ///< what that step left over is cut, not its strips
  bool first = true;           ///< of these parts: they are turned before it
  int parts = 1;               ///< cut alike
  Length setting;              ///< from the fence to the blade
  bool upright = false;        ///< along the sheet's height, else along its width
  int cuts = 1;                ///< of each part
  int demand = -1;             ///< the blanks that come off; -1 = strips, cut by a later step
  int pieces = 1;              ///< that come off each part, with the last one where it is as wide
  int restDemand = -1;         ///< a blank that is left over; -1 = none
  bool knife = false;          ///< a part or what comes off it is narrower than kLeastStrip
  std::vector<CutLine> lines;  ///< of all parts
};

/// Steps of a layout in an order a person can follow: all cuts of a part in one direction, alike
/// ones with one setting, then its strips, turned.
std::vector<TrimStep> trimSteps(const Layout& layout);

/// A setting of the trimmer is as much work as so many cuts.
inline constexpr int kSettingWork = 8;
/// How much work a sheet is at the trimmer, in cuts.
int trimmingWork(const CutNode& sheet);

/// What is left over, the largest first; parts narrower than `least` are scrap and left out.
struct Offcut {
  Length width, height;
  int count = 1;
};
std::vector<Offcut> offcutsOf(const Layout& layout, Length least);

/// How many blanks of each demand one sheet of a layout gives.
std::vector<int> blanksOf(const Layout& layout, std::size_t demands);

/// How many blanks of each demand all layouts together cut beyond what is asked for.
std::vector<int> leftOver(const CuttingPlan& plan, const std::vector<BlankDemand>& demands);

}  // namespace creasewright
