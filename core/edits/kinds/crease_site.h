#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "edits/kinds/edit_kind.h"
#include "net/net.h"

namespace creasewright {

/// A fold as it lies on one of its panels, in that panel's own frame.
struct FoldOn {
  std::size_t crease = 0;  ///< index into Net::creases
  Segment line;            ///< p -> q as in Crease::onParent
};

/// All folds of a panel: to its parent, to its children, and those that close loops.
std::vector<FoldOn> foldsOn(const Net& net, int panel);

/// The fold that lies on a named edge of a panel; of several the longest.
std::optional<FoldOn> findFold(const Net& net, int panel, std::string_view edge);

/// The names of a panel's edges on which folds lie, or those on which none does.
std::vector<std::string> edgesWithFolds(const Net& net, int panel);
std::vector<std::string> edgesWithoutFolds(const Net& net, int panel);
/// Those that an edit of such a place may name; none for a whole panel.
std::vector<std::string> edgesFor(EditPlace place, const Net& net, int panel);

}  // namespace creasewright
