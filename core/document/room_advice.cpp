#include "document/room_advice.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "styles/limits_search.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

constexpr std::array<std::string_view, 3> kAxes{"length", "width", "height"};
constexpr int kTrials = 16;  // each a sixteenth of the value, or a step of the grid, larger

bool lacksRoom(const Problem& problem) { return problem.code == ProblemCode::CavityTooSmall; }

struct Change {
  std::string key;
  Length value;
  std::string title;
};

/// Every measure that must grow, so that the product has its room and the others go with it.
std::vector<Change> growing(const BuiltDesign& built, const Parameters& right) {
  std::vector<Change> changes;
  for (const ParameterSpec& spec : built.style->parameters)
    if (spec.kind == ParameterKind::Length &&
        right.raw(spec.key) > built.design.parameters.raw(spec.key))
      changes.push_back({std::string(spec.key), right.length(spec.key), std::string(spec.title)});
  return changes;
}

/// The one of them that belongs to an axis, else the first.
std::vector<Change>::iterator changeFor(std::vector<Change>& changes, const BuiltDesign& built,
                                        std::string_view axis) {
  const auto found = std::ranges::find_if(changes, [&](const Change& change) {
    return std::ranges::any_of(built.reasons, [&](const FitReason& reason) {
      return reason.key == change.key && reason.ofProduct &&
             kAxes.at(static_cast<std::size_t>(reason.axis)) == axis;
    });
  });
  return found == changes.end() ? changes.begin() : found;
}

void add(const Change& change, Problem& problem) {
  problem.values.emplace_back(change.key);
  problem.values.emplace_back(change.value);
  problem.values.emplace_back(change.title);
}

bool holdsRoom(const Design& design, std::string_view axis) {
  const Result<BuiltDesign> built = buildWithoutAdvice(design);
  return built && std::ranges::none_of(built->problems, [&](const Problem& problem) {
           return lacksRoom(problem) && problem.where == axis;
         });
}

std::string titleOf(const Style& style, std::string_view key) {
  return std::string(std::ranges::find(style.parameters, key, &ParameterSpec::key)->title);
}

/// The least of a few larger values of a measure of the product that gives the axis its room.
std::optional<Change> tried(const BuiltDesign& built, std::string_view axis) {
  const Workbench bench = benchOf(built.design);
  for (const bool same : {true, false})
    for (const FitReason& reason : built.reasons) {
      if (!reason.ofProduct || (kAxes.at(static_cast<std::size_t>(reason.axis)) == axis) != same)
        continue;
      const Length now = built.design.parameters.length(reason.key);
      const Length step = bench.grid.roundUp(std::max(now / kTrials, mm(0.5)));
      Design larger = built.design;
      larger.extras.clear();
      for (int i = 1; i <= kTrials; ++i) {
        const Length value = bench.grid.roundUp(now + step * i);
        Parameters wanted = built.design.parameters;
        wanted.set(reason.key, value);
        larger.parameters =
            movedWithinLimits(built.style->parameters, wanted, bench, {{reason.key, value.nm()}})
                .value_or(wanted);
        if (larger.parameters.length(reason.key) == value && holdsRoom(larger, axis))
          return Change{reason.key, value, titleOf(*built.style, reason.key)};
      }
    }
  return std::nullopt;
}

/// Shares the changes out: to each problem that of its axis, the rest to the first; where there are
/// fewer changes than problems, one helps them all.
void share(std::vector<Change> changes, BuiltDesign& built) {
  const Change helpsAll = changes.front();
  Problem* first = nullptr;
  for (Problem& problem : built.problems) {
    if (!lacksRoom(problem)) continue;
    if (first == nullptr) first = &problem;
    if (changes.empty()) {
      add(helpsAll, problem);
      continue;
    }
    const auto change = changeFor(changes, built, problem.where);
    add(*change, problem);
    changes.erase(change);
  }
  for (const Change& change : changes) add(change, *first);
}

}  // namespace

void adviseOnRoom(BuiltDesign& built) {
  if (std::ranges::none_of(built.problems, lacksRoom)) return;
  const Workbench bench = benchOf(built.design);
  const Fitted fitted{built.design.parameters, built.reasons};
  const Parameters wanted = raisedTo(fitted, built.design.parameters);
  const auto right = movedWithinLimits(built.style->parameters, wanted, bench, floorsOf(fitted));
  if (!right) {
    const Problems why = adviceFor(built.style->parameters, built.design.parameters, wanted, bench,
                                   floorsOf(fitted));
    built.problems.insert(built.problems.end(), why.begin(), why.end());
    return;
  }
  std::vector<Change> changes = growing(built, *right);
  if (!changes.empty()) return share(std::move(changes), built);
  for (Problem& problem : built.problems)
    if (lacksRoom(problem))
      if (const auto value = tried(built, problem.where)) add(*value, problem);
}

}  // namespace creasewright
