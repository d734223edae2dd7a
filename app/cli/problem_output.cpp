#include "cli/problem_output.h"

#include "bridge/problem_text.h"
#include "cli/output.h"

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

}  // namespace

Json problemsJson(const Problems& problems, Unit unit) {
  Json list = Json::array();
  for (const Problem& problem : problems) list.push_back(problemJson(problem, unit));
  return list;
}

void printProblems(const Problems& problems, bool holds, Unit unit) {
  for (const Problem& problem : problems) printLine(sentence(problem, unit));
  if (holds) printLine(Cli::tr("All checks hold."));
}

}  // namespace creasewright
