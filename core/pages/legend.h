#pragma once

#include <vector>

#include "drawing/drawing.h"

namespace creasewright {

/// Roles of `drawing` that a legend explains, in the order cut, folds, marks, areas.
std::vector<Role> legendRoles(const Drawing& drawing);

/// On which faces of the sheet adhesive is drawn.
struct GlueFaces {
  bool drawn = true;
  bool behind = false;
};

/// A legend no wider than `width` mm: a sample of each line or hatching with its meaning, row by
/// row. All of it has the legend's own role, so that no machine cuts or creases a sample.
Drawing drawLegend(const std::vector<Role>& roles, double width, const Wording& wording,
                   GlueFaces glue = {});

}  // namespace creasewright
