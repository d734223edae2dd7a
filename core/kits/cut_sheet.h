#pragma once

#include "cutting/cutting.h"
#include "stock/stock_sheet.h"

namespace creasewright {

/// What the planner knows of a sheet that blanks may lie on either way.
inline CutSheet cutSheet(const StockSheet& sheet) {
  return {sheet.width, sheet.height, sheet.price, sheet.atHand, true};
}

}  // namespace creasewright
