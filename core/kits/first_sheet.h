#pragma once

#include <vector>

#include "kits/build_kit.h"

namespace creasewright {

/// Whether a sheet measures whole half inches, as those sold by inches do.
bool soldByInches(const StockSheet& sheet);

/// The sheet a class would take first: `usual` if every blank fits it, else the smallest of any
/// card that all fit, those in the units of the usual one first; `usual` when there is none. An
/// index into `stock`.
int firstSheetFor(const BuiltKit& kit, const std::vector<StockSheet>& stock, int usual);

}  // namespace creasewright
