#pragma once

#include "cutting/cutting.h"

namespace creasewright {

/// Whether a blank is too small for a trimmer or guillotine (kLeastStrip).
bool isSmall(const BlankDemand& blank);

/// Adds the small ones of the demands to layouts of the others: those of one size lie in a grid, a
/// piece that is large enough to be cut off at the trimmer and is cut up with a knife. It comes out
/// of what a layout leaves over, of the offcut that gives most of them and is cut least often, else
/// from new sheets. False when the sheets at hand do not do.
bool addSmallBlanks(std::vector<Layout>& layouts, const std::vector<CutSheet>& stock,
                    const std::vector<BlankDemand>& demands, bool noExtras);

}  // namespace creasewright
