#include "guide/sheet_steps.h"

#include <algorithm>
#include <array>
#include <utility>

namespace creasewright {
namespace {

Step sheetStep(const PiecePlans& plans, StepCode code) {
  Step step;
  step.code = code;
  step.piece = plans.index;
  step.figure.scoresDone = true;
  return step;
}

Step trimStep(const PiecePlans& plans) {
  Step step = sheetStep(plans, StepCode::TrimBlank);
  step.figure.scoresDone = false;
  step.width = plans.cuts.width;
  step.height = plans.cuts.height;
  CheckLine check;
  check.a = step.width;
  check.b = step.height;
  step.checks.push_back(check);
  return step;
}

std::vector<ScoreSetup> settingsOf(const ScorePlan& plan, ScoreRun run) {
  std::vector<ScoreSetup> settings;
  for (const ScoreSetup& setup : plan.setups) {
    ScoreSetup part{setup.sides, {}};
    std::ranges::copy_if(setup.readings, std::back_inserter(part.readings),
                         [run](const ScoreReading& reading) { return reading.run == run; });
    if (!part.readings.empty()) settings.push_back(std::move(part));
  }
  return settings;
}

void addScoreSteps(const PiecePlans& plans, std::vector<Step>& steps) {
  const ScorePlan& plan = plans.scores;
  for (const auto& [code, run] : {std::pair{StepCode::ScoreSides, ScoreRun::Full},
                                  std::pair{StepCode::ShortScores, ScoreRun::Short}}) {
    Step step = sheetStep(plans, code);
    step.settings = settingsOf(plan, run);
    step.figure.settings = true;
    if (!step.settings.empty()) steps.push_back(std::move(step));
  }
  if (!plan.freeScores.empty()) {
    Step step = sheetStep(plans, StepCode::ScoreFreely);
    step.freeScores = plan.freeScores;
    step.figure.settings = true;
    steps.push_back(std::move(step));
  }
  if (!plans.folds.burnish.empty()) {
    Step step = sheetStep(plans, StepCode::FoldAndBurnish);
    step.folds = plans.folds.burnish;
    steps.push_back(std::move(step));
  }
}

/// Cuts that meet a score say which.
void addCutChecks(Step& step) {
  for (const Cut& cut : step.cuts) {
    if (!cut.fromEdge || cut.toLine == 0) continue;
    const bool told = std::ranges::any_of(step.checks, [&](const CheckLine& check) {
      return check.code == CheckCode::CutMeetsScore && check.number == cut.toLine;
    });
    if (told) continue;
    CheckLine check;
    check.code = CheckCode::CutMeetsScore;
    check.number = cut.toLine;
    step.checks.push_back(check);
  }
}

constexpr std::array kCutSteps{std::pair{CutKind::Opening, StepCode::CutOpenings},
                               std::pair{CutKind::Slit, StepCode::CutSlits},
                               std::pair{CutKind::Straight, StepCode::CutWaste},
                               std::pair{CutKind::Mitre, StepCode::CutMitres},
                               std::pair{CutKind::Taper, StepCode::CutTapers},
                               std::pair{CutKind::Notch, StepCode::CutNotches},
                               std::pair{CutKind::Curve, StepCode::CutCurves}};

void addCutSteps(const PiecePlans& plans, std::vector<Step>& steps) {
  const std::size_t first = steps.size();
  for (const auto& [kind, code] : kCutSteps) {
    Step step = sheetStep(plans, code);
    std::ranges::copy_if(plans.cuts.cuts, std::back_inserter(step.cuts),
                         [kind = kind](const Cut& cut) { return cut.kind == kind; });
    if (step.cuts.empty()) continue;
    step.figure.cuts = true;
    step.figure.wasteHatched = kind != CutKind::Opening && kind != CutKind::Slit;
    addCutChecks(step);
    steps.push_back(std::move(step));
  }
  // A piece falls off with its last cut.
  if (steps.size() == first || plans.cuts.wasteLetters.empty()) return;
  Step& last = steps.back();
  last.waste = plans.cuts.wasteLetters;
  CheckLine count;
  count.code = CheckCode::WasteCount;
  count.number = static_cast<int>(last.waste.size());
  last.checks.push_back(count);
}

Step adhesiveStep(const PiecePlans& plans, Face face) {
  Step step = sheetStep(plans, StepCode::ApplyAdhesive);
  for (const GlueStrip& strip : plans.adhesive.strips) {
    const GlueArea& area = plans.built.gluePlan[static_cast<std::size_t>(strip.area)];
    if (area.flapFace != face) continue;
    const bool patch = std::ranges::any_of(plans.built.net.mates, [&](const Mate& mate) {
      return mate.panel == area.panel && mate.onto == area.onto && !mate.patch.empty();
    });
    step.adhesive.push_back(
        {area.panel, area.flapFace, patch, area.area, strip.width, strip.middle, strip.stage});
    if (std::ranges::find(step.figure.panels, area.panel) == step.figure.panels.end())
      step.figure.panels.push_back(area.panel);
  }
  step.figure.adhesive = true;
  step.figure.wasteGone = true;
  step.figure.turned = face == Face::Outside;
  return step;
}

}  // namespace

std::vector<Step> sheetSteps(const PiecePlans& plans) {
  std::vector<Step> steps{trimStep(plans)};
  addScoreSteps(plans, steps);
  addCutSteps(plans, steps);
  return steps;
}

std::vector<Step> adhesiveSteps(const PiecePlans& plans) {
  std::vector<Step> steps;
  for (const Face face : {Face::Outside, Face::Inside}) {
    Step step = adhesiveStep(plans, face);
    if (step.adhesive.empty()) continue;
    for (const Step& before : steps)
      for (const Adhesive& there : before.adhesive) step.figure.behind.push_back(there.area);
    steps.push_back(std::move(step));
  }
  return steps;
}

void trimTogether(std::vector<Step>& steps) {
  const auto isPlain = [&steps](const Step& trim) {
    return trim.code == StepCode::TrimBlank && std::ranges::none_of(steps, [&](const Step& step) {
             const bool onSheet = step.figure.kind != FigureKind::Finished &&
                                  step.code != StepCode::TrimBlank &&
                                  step.code != StepCode::AddExtra;
             return onSheet && step.piece == trim.piece;
           });
  };
  std::vector<bool> plain;
  for (const Step& step : steps) plain.push_back(isPlain(step));
  std::vector<Step> out;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (i == 0 || !plain[i] || !plain[i - 1]) {
      out.push_back(std::move(steps[i]));
      continue;
    }
    Step& first = out.back();
    if (first.pieces.empty()) first.pieces.push_back(first.piece);
    first.pieces.push_back(steps[i].piece);
    first.checks.clear();  // each has its own measure
  }
  steps = std::move(out);
}

}  // namespace creasewright
