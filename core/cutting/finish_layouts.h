#pragma once

#include <optional>
#include <vector>

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// Sheets that give the same blanks.
struct SheetsAlike {
  int sheets = 1;
  std::vector<int> counts;  ///< by demand, of one sheet
};

/// What `times` sheets of a layout of `counts` are cut into, of each blank only as many as are
/// still needed: `rest` (by demand) is used up. All are cut alike, so that fewer than a sheet's
/// worth of each comes out over; with `noExtras` the last sheets give only what is still needed.
std::vector<SheetsAlike> sheetsFor(const std::vector<int>& counts, int times,
                                   std::vector<int>& rest, bool noExtras);

/// The layout of so many blanks of each demand from a sheet that is least work at the trimmer:
/// `known` or another one of the same blanks. Nothing when none is known or found. Blanks are
/// turned only where their demand and the sheet let them.
std::optional<CutNode> leastWork(const CutSheet& sheet, const std::vector<BlankDemand>& demands,
                                 const std::vector<int>& counts, std::optional<CutNode> known,
                                 Work& work);

/// Sets the trimmer less often for the layouts of a plan where fewer_settings.h finds how; each
/// gets an even part of the work. That goes beyond the work's limit, so that a plan that took all
/// of it is no harder to cut: a tenth of a second for each of up to five layouts, and no more than
/// a fifth of `whole`, the steps that the whole plan may take.
void setLessOften(std::vector<Layout>& layouts, const std::vector<CutSheet>& stock,
                  const std::vector<BlankDemand>& demands, double whole, Work& work);

}  // namespace creasewright
