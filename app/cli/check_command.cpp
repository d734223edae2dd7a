#include "cli/check_command.h"

#include <algorithm>
#include <iterator>
#include <memory>

#include <nlohmann/json.hpp>

#include "bridge/problem_text.h"
#include "cli/design_argument.h"
#include "cli/output.h"
#include "own_stock/own_paper_warnings.h"
#include "styles/parameter_text.h"

namespace creasewright {

namespace {

using Json = nlohmann::ordered_json;

bool isError(const Problem& problem) { return problem.severity == Severity::Error; }

/// Lengths in millimetres, angles in degrees, numbers and texts as they are.
Json valueJson(const ProblemValue& value) {
  struct ToJson {
    Json operator()(Length v) const { return v.mm(); }
    Json operator()(Angle v) const { return v.degrees(); }
    Json operator()(std::int64_t v) const { return v; }
    Json operator()(double v) const { return v; }
    Json operator()(const std::string& v) const { return v; }
  };
  return std::visit(ToJson(), value);
}

/// As the design's own tool grid measures.
QString sentence(const Problem& problem, Unit unit) {
  const QString words = problemSentence(problem, unit);
  return isError(problem) ? words : Cli::tr("Warning: %1").arg(words);
}

Json problemJson(const Problem& problem, Unit unit) {
  Json values = Json::array();
  for (const ProblemValue& value : problem.values) values.push_back(valueJson(value));
  return {{"code", codeName(problem.code)},
          {"severity", isError(problem) ? "error" : "warning"},
          {"where", problem.where},
          {"values", std::move(values)},
          {"text", problemSentence(problem, unit).toStdString()}};
}

void printJson(const Problems& problems, bool holds, Unit unit) {
  Json list = Json::array();
  for (const Problem& problem : problems) list.push_back(problemJson(problem, unit));
  const Json page{{"format", "creasewright-check"},
                  {"version", 1},
                  {"holds", holds},
                  {"problems", std::move(list)}};
  printLine(QString::fromStdString(page.dump(2, ' ', false, Json::error_handler_t::replace)));
}

void printText(const Problems& problems, bool holds, Unit unit) {
  for (const Problem& problem : problems) printLine(sentence(problem, unit));
  if (holds) printLine(Cli::tr("All checks hold."));
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
  const bool holds = std::ranges::none_of(problems, isError);
  const Unit unit = unitOf(design->grid);
  options.json ? printJson(problems, holds, unit) : printText(problems, holds, unit);
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
