#pragma once

#include <optional>

#include "cutting/cutting.h"
#include "cutting/work.h"
#include "units/tool_grid.h"

namespace creasewright {

/// How a plan is to be easy.
struct EasyOptions {
  ToolGrid trimmer;       ///< every setting lies on its marks
  bool noExtras = false;  ///< the last sheets are cut in part: no blank is left over
  double seconds = 5;     ///< that the plan of the card may take (PlanOptions::seconds)
};

/// A plan that is easy to cut for a class, from the sheets that `fewest` may use: few layouts, each
/// of straight strips in which alike blanks lie side by side, cut in stacks; every setting of the
/// trimmer on one of its marks, as blanks are rounded up to them (by less than a mark); and nothing
/// narrower than kLeastStrip cut at the trimmer: blanks that are smaller are gathered in a larger
/// piece of what is left over, to be cut up with a knife.
///
/// What it makes least is the sum of what the sheets cost and of the trouble: a layout is as much
/// as a sheet (one more picture to read, one more stack to lay by), and five settings of the
/// trimmer as much as a sheet (a setting and its check take a beginner a minute, a sheet costs
/// about what five of them do; own estimate). So a sheet more is taken only where it spares at
/// least a layout or five settings. Candidates are layouts of strips of one to three sizes, whole
/// sets side by side, and what `fewest` cuts; which of them, and how often, is a beam search over
/// what is still to be cut.
///
/// The bound is that of `fewest`, whose proof it takes: it is proven where its own cost meets it.
/// Nothing when the sheets at hand do not do, or the work was given up. Blanks whose rounded sizes
/// no sheet holds keep theirs. Judged by checkPlan before it goes out.
std::optional<CuttingPlan> easyPlan(const std::vector<CutSheet>& stock,
                                    const std::vector<BlankDemand>& demands,
                                    const CuttingPlan& fewest, const EasyOptions& options,
                                    Work& work);

/// The blanks as an easy plan cuts them: rounded up to the trimmer's marks where a sheet holds
/// that.
std::vector<BlankDemand> roundedUp(const std::vector<CutSheet>& stock,
                                   std::vector<BlankDemand> demands, ToolGrid trimmer);

}  // namespace creasewright
