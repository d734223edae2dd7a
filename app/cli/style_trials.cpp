// A style of one's own is tried on several products.

#include <algorithm>

#include <nlohmann/json.hpp>

#include "bridge/text.h"
#include "cli/output.h"
#include "cli/problem_output.h"
#include "cli/style_argument.h"
#include "cli/style_options.h"
#include "own_styles/prove_style.h"
#include "styles/parameter_text.h"

namespace creasewright {

namespace {

using TrialJson = nlohmann::ordered_json;

/// The products that are written, or those that the style suits; nothing when one cannot be read.
std::optional<std::vector<Product>> productsFor(const StyleOptions& options,
                                                const OwnStyle& style) {
  if (options.products.empty()) return productsToTry(style);
  std::vector<Product> products;
  for (const std::string& written : options.products) {
    const Result<Product> product = parseProduct(written);
    if (!product) {
      fail(QStringLiteral("--for"), product.problem());
      return std::nullopt;
    }
    products.push_back(*product);
  }
  return products;
}

void printTrials(const OwnStyle& style, const std::vector<StyleTrial>& trials, Unit unit) {
  printLine(QStringLiteral("%1  %2").arg(text(style.id), text(style.title)));
  for (const StyleTrial& trial : trials) {
    printLine(text(productText(trial.product)));
    printProblems(trial.problems, trial.holds(), unit);
  }
}

void printTrialsJson(const OwnStyle& style, const std::vector<StyleTrial>& trials, bool holds,
                     Unit unit) {
  TrialJson list = TrialJson::array();
  for (const StyleTrial& trial : trials)
    list.push_back({{"product", productText(trial.product)},
                    {"holds", trial.holds()},
                    {"problems", problemsJson(trial.problems, unit)}});
  const TrialJson page{{"format", "creasewright-style-check"},
                       {"version", 1},
                       {"id", style.id},
                       {"change", style.change},
                       {"holds", holds},
                       {"trials", std::move(list)}};
  printLine(QString::fromStdString(page.dump(2, ' ', false, TrialJson::error_handler_t::replace)));
}

}  // namespace

int checkStyle(const StyleOptions& options) {
  const std::vector<std::string> files = options.files();
  if (files.size() > 1)
    return fail(Cli::tr("style check: One style at a time, not %1.").arg(files.size()));
  const auto style =
      readOwnStyleArgument("style check", files.empty() ? std::string() : files.front());
  if (!style) return ExitUsage;
  const std::optional<Choices> choices = readChoices(options.choices, "--for");
  if (!choices) return ExitUsage;
  const auto products = productsFor(options, *style);
  if (!products) return ExitUsage;
  const std::vector<StyleTrial> trials =
      tryStyle(*style, *products, choices->card, choices->ease, choices->grid);
  const bool holds = std::ranges::all_of(trials, &StyleTrial::holds);
  const Unit unit = unitOf(choices->grid);
  options.json ? printTrialsJson(*style, trials, holds, unit) : printTrials(*style, trials, unit);
  return holds ? ExitHolds : ExitFails;
}

}  // namespace creasewright
