#include "printing/paper_warnings.h"

#include "document/making_warnings.h"
#include "printing/template_print.h"
#include "session/preferences.h"
#include "stock/stock_store.h"

namespace creasewright {

namespace {

constexpr std::size_t kManyPages = 6;

std::vector<Paper> sheetsAtHand() {
  std::vector<Paper> sheets;
  for (const StockSheet& sheet : ownStock()) {
    sheets.push_back({{}, {}, sheet.width, sheet.height});
  }
  return sheets;
}

}  // namespace

Problems paperWarnings(const BuiltDesign& built) {
  const std::vector<Paper> sheets = sheetsAtHand();
  Problems found = sheetWarnings(built, sheets);
  const auto paper = findPaper(preferredPaper().toStdString());
  if (!paper) {
    return found;
  }
  TemplateOptions options;
  options.setup.paper = *paper;
  const auto pages = templatePages(built, options);
  if (pages && pages->size() > kManyPages) {
    found.push_back({ProblemCode::ManyPages,
                     {},
                     {static_cast<std::int64_t>(pages->size()), std::int64_t{kManyPages},
                      std::string(paper->name)},
                     Severity::Warning});
  }
  if (!pages && pages.problem().code == ProblemCode::TooManyTiles) {
    Problem many{ProblemCode::ManyPages, {}, pages.problem().values, Severity::Warning};
    many.values[1] = std::int64_t{kManyPages};
    many.values.emplace_back(std::string(paper->name));
    found.push_back(std::move(many));
  }
  return found;
}

}  // namespace creasewright
