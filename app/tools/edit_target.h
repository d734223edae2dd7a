#pragma once

#include <optional>
#include <string>

#include "document/build.h"
#include "edits/kinds/edit_kind.h"
#include "units/tool_grid.h"

namespace creasewright {

/// What a hand means with a place on the net: a panel, a cut edge of one, or a fold.
struct EditTarget {
  int panel = 0;
  std::string edge;             ///< empty for a whole panel
  std::optional<Segment> line;  ///< of the edge, blank coordinates
  bool operator==(const EditTarget&) const = default;
};

/// The panel, edge or fold at a place on the blank (mm): the nearest within `reach` mm, else of the
/// panel there the nearest. Nothing beside the net, and where a panel has none.
std::optional<EditTarget> editTargetAt(const BuiltPiece& piece, EditPlace place, Point at,
                                       double reach);

/// An edit of that kind there, tied to its panel so that it stays in place when sizes change: in
/// the middle where `at` is near it; else from the nearer side, or from the middle, by what the
/// grid has.
Edit editAt(const EditKind& kind, const BuiltPiece& piece, const EditTarget& target, Point at,
            ToolGrid grid);

/// A score from one place on a panel to another: level or upright as it lies nearer, slanting where
/// they are no two of a kind.
Edit splitBetween(const EditKind& kind, const BuiltPiece& piece, const EditTarget& target,
                  Point from, Point to, ToolGrid grid);

}  // namespace creasewright
