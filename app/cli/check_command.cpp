#include "cli/check_command.h"

#include <algorithm>
#include <iterator>
#include <memory>

#include <nlohmann/json.hpp>

#include "cli/design_argument.h"
#include "cli/output.h"
#include "cli/problem_output.h"
#include "own_stock/own_paper_warnings.h"
#include "styles/parameter_text.h"

namespace creasewright {

namespace {

using Json = nlohmann::ordered_json;

void printJson(const Problems& problems, bool holds, Unit unit) {
  const Json page{{"format", "creasewright-check"},
                  {"version", 1},
                  {"holds", holds},
                  {"problems", problemsJson(problems, unit)}};
  printLine(QString::fromStdString(page.dump(2, ' ', false, Json::error_handler_t::replace)));
}

struct CheckOptions {
  std::string file;
  bool json = false;
};

int runCheck(const CheckOptions& options) {
  const std::optional<Design> design = readDesignArgument(options.file);
  if (!design) return ExitUsage;
  Problems problems = limitProblems(*design);
  if (problems.empty()) {
    const Result<BuiltDesign> built = build(*design);
    problems = built ? everyProblem(*built) : Problems{built.problem()};
    if (built) std::ranges::copy(ownPaperWarnings(*built), std::back_inserter(problems));
  }
  const bool holds = onlyWarnings(problems);
  const Unit unit = unitOf(design->grid);
  options.json ? printJson(problems, holds, unit) : printProblems(problems, holds, unit);
  return holds ? ExitHolds : ExitFails;
}

QString checkHelp() { return Cli::tr("run every check: 0 all hold, 1 some fail, 2 unreadable"); }

std::function<int()> prepareCheck(Grammar& grammar) {
  const auto options = std::make_shared<CheckOptions>();
  grammar.file(options->file, Cli::tr("design to check"));
  grammar.flag("--json", options->json, Cli::tr("for other programs"));
  return [options] { return runCheck(*options); };
}

}  // namespace

Command checkCommand() { return {"check", checkHelp, prepareCheck}; }

}  // namespace creasewright
