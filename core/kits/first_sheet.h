#pragma once

#include <vector>

#include "kits/build_kit.h"

namespace creasewright {

/// The sheet without a colour that a class would take first: `usual` if every blank fits it, else
/// the smallest of any card that all fit, those in the units of the usual one first; `usual` when
/// there is none. An index into `stock`.
int firstSheetFor(const BuiltKit& kit, const std::vector<StockSheet>& stock, int usual);

}  // namespace creasewright
