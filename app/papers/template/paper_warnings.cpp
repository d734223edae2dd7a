#include "papers/template/paper_warnings.h"

#include "document/making_warnings.h"
#include "papers/template/template_print.h"

namespace creasewright {

namespace {

constexpr std::size_t kManyPages = 6;

}  // namespace

Problems paperWarnings(const BuiltDesign& built, const std::vector<Paper>& sheets,
                       const Paper& printed) {
  Problems found = sheetWarnings(built, sheets);
  TemplateOptions options;
  options.setup.paper = printed;
  const auto pages = templatePages(built, options);
  if (pages && pages->size() > kManyPages) {
    found.push_back({ProblemCode::ManyPages,
                     {},
                     {static_cast<std::int64_t>(pages->size()), std::int64_t{kManyPages},
                      std::string(printed.name)},
                     Severity::Warning});
  }
  if (!pages && pages.problem().code == ProblemCode::TooManyTiles) {
    Problem many{ProblemCode::ManyPages, {}, pages.problem().values, Severity::Warning};
    many.values[1] = std::int64_t{kManyPages};
    many.values.emplace_back(std::string(printed.name));
    found.push_back(std::move(many));
  }
  return found;
}

}  // namespace creasewright
