#pragma once

#include "document/build.h"

namespace creasewright {

/// Warnings that take the person's own sheets and printer: blanks larger than every sheet at hand
/// (BlankOverSheets), a template of more than six pages (ManyPages).
Problems paperWarnings(const BuiltDesign& built);

}  // namespace creasewright
