#pragma once

#include <vector>

#include "drawing/drawing.h"

namespace creasewright {

/// Roles of `drawing` that a legend explains, in the order cut, folds, marks, areas.
std::vector<Role> legendRoles(const Drawing& drawing);

/// How a legend's areas are drawn, where that differs.
struct LegendForm {
  bool glue = true;         ///< adhesive is drawn on the printed face
  bool glueBehind = false;  ///< and on the other one
  bool glueOutlined = false;
  bool tint = false;   ///< waste is tinted, not marked
  bool prick = false;  ///< there are points to prick through
};

/// A legend no wider than `width` mm: a sample of each line or hatching with its meaning, row by
/// row. All of it has the legend's own role, so that no machine cuts or creases a sample.
Drawing drawLegend(const std::vector<Role>& roles, double width, const Wording& wording,
                   const LegendForm& form = {});

}  // namespace creasewright
