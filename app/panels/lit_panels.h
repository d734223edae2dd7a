#pragma once

#include <QStringList>
#include <vector>

#include "document/build.h"
#include "guide/guide.h"

namespace creasewright {

/// Ids of the panels that have a part of one of `lines` (blank coordinates, mm) on their rim: what
/// a row of a list about scores or cuts lights.
QStringList panelsAlong(const BuiltPiece& piece, const std::vector<Segment>& lines);

/// Ids of the panels that a step of the guide works at.
QStringList panelsOfStep(const Step& step, const BuiltDesign& built);

}  // namespace creasewright
