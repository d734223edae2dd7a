#include "own_stock/own_paper_warnings.h"

#include "own_stock/stock_store.h"
#include "papers/template/paper_warnings.h"
#include "session/preferences.h"

namespace creasewright {

Problems ownPaperWarnings(const BuiltDesign& built) {
  std::vector<Paper> sheets;
  for (const StockSheet& sheet : ownStock()) sheets.push_back({{}, {}, sheet.width, sheet.height});
  const auto printed = findPaper(preferredPaper().toStdString());
  return paperWarnings(built, sheets, printed ? *printed : *findPaper("a4"));
}

}  // namespace creasewright
