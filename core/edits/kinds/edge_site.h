#pragma once

#include <optional>

#include "edits/kinds/edit_kind.h"

namespace creasewright {

/// The longest straight stretch of a named edge of a panel, with the edges before and after it.
struct EdgeSite {
  std::size_t index = 0;  ///< corner it starts at
  Point a;                ///< runs from a to b with the card on its left
  Point b;
  Point before;         ///< the corner before a
  Point after;          ///< the corner after b
  bool turned = false;  ///< a is its right or upper end as the net is drawn

  [[nodiscard]] double length() const { return distance(a, b); }
  [[nodiscard]] Point along() const { return unit(b - a); }
  [[nodiscard]] Point inwards() const { return turnLeft(along()); }
};

std::optional<EdgeSite> findEdge(const Net& net, int panel, std::string_view name);

/// Replaces the edge by a run of corners from `a` to `b`, its ends left out. New stretches are
/// named `<edge><suffix>`; with `keepEnds` the first and the last keep the edge's name.
void replaceEdge(Panel& panel, const EdgeSite& edge, const Polyline& run, std::string_view suffix,
                 bool keepEnds);

}  // namespace creasewright
