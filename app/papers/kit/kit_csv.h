#pragma once

#include <QByteArray>

#include "kits/kit_plan.h"

namespace creasewright {

/// The plan as a table for a spreadsheet (RFC 4180, UTF-8): one line for each blank on each layout,
/// lengths in mm with a decimal point.
QByteArray kitCsv(const KitPlan& plan);

}  // namespace creasewright
