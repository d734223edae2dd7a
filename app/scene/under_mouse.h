#pragma once

#include <QPointF>
#include <QRectF>
#include <optional>
#include <vector>

#include "document/build.h"
#include "edits/pull.h"
#include "scene/dimension_layer.h"
#include "scene/sheet_camera.h"
#include "session/place.h"

namespace creasewright {

/// How near the mouse must come to a line, in pixels.
constexpr double kLineReach = 4;

/// What is seen at a pixel of the sheet: a fold or a cut edge near it, else the panel; else what a
/// dimension beside the sheet speaks of. Empty where there is nothing.
Place placeUnder(QPointF pixel, const BuiltDesign& built, int piece, const SheetCamera& camera,
                 const std::vector<DimensionLabel>& labels);

/// The edge of a panel near a pixel, to take hold of: of those within reach the nearest.
std::optional<Handle> handleUnder(QPointF pixel, const BuiltDesign& built, int piece,
                                  const SheetCamera& camera);

/// The two lines that meet in a corner near a pixel, to take hold of both; empty away from corners
/// and where the lines are too short on screen to be told from it.
std::vector<Movable> cornerUnder(QPointF pixel, const BuiltDesign& built, int piece,
                                 const SheetCamera& camera);

/// The distance that a dimension speaks of: what is changed when another one is typed. Nothing for
/// the pieces of extras, which follow from the extra.
std::optional<BlankDistance> distanceOf(const DimensionLabel& label, const BuiltDesign& built,
                                        int piece);

/// The scores that a tick of the ruler at a border stands for, `along` mm from the sheet's left
/// (`upright` scores) or its bottom, at most `reach` mm away.
Place placeAtTick(double along, bool upright, double reach, const BuiltDesign& built, int piece);

}  // namespace creasewright
