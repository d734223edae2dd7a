#include "guide/step_names.h"

#include <map>
#include <string_view>

namespace creasewright {
namespace {

std::string_view codeOf(StepCode code) {
  switch (code) {
    case StepCode::TrimBlank:
      return "trim";
    case StepCode::ScoreSides:
      return "score";
    case StepCode::ShortScores:
      return "score-short";
    case StepCode::ScoreFreely:
      return "score-freely";
    case StepCode::FoldAndBurnish:
      return "burnish";
    case StepCode::CutOpenings:
      return "cut-openings";
    case StepCode::CutSlits:
      return "cut-slits";
    case StepCode::CutWaste:
      return "cut-waste";
    case StepCode::CutMitres:
      return "cut-mitres";
    case StepCode::CutTapers:
      return "cut-tapers";
    case StepCode::CutNotches:
      return "cut-notches";
    case StepCode::CutCurves:
      return "cut-curves";
    case StepCode::ApplyAdhesive:
      return "adhesive";
    case StepCode::FoldStage:
      return "fold";
    case StepCode::GluePieces:
      return "glue";
    case StepCode::PutTogether:
      return "put-together";
    case StepCode::PutIn:
      return "put-in";
    case StepCode::AddExtra:
      return "extra";
  }
  return {};
}

std::string foldName(const Guide& guide, const Step& step, const std::string& stage) {
  std::string name = guide.pieces.at(static_cast<std::size_t>(step.piece)).name;
  return name.append("/fold/").append(stage);
}

}  // namespace

std::vector<std::string> earlierNames(const Guide& guide, const Step& step) {
  std::vector<std::string> names;
  for (std::size_t i = 0; i + 1 < step.stages.size(); ++i)
    names.push_back(foldName(guide, step, step.stages[i].code));
  return names;
}

std::vector<std::string> stepNames(const Guide& guide, const Design& design) {
  std::vector<std::string> names;
  std::map<std::string, int> times;
  for (const Step& step : guide.steps) {
    std::string name = guide.pieces.at(static_cast<std::size_t>(step.piece)).name + "/";
    name += codeOf(step.code);
    if (!step.stage.empty()) name += "/" + step.stage;
    if (step.extra >= 0) name += "/" + design.extras.at(static_cast<std::size_t>(step.extra)).kind;
    const int time = ++times[name];
    names.push_back(time == 1 ? name : name + "/" + std::to_string(time));
  }
  return names;
}

}  // namespace creasewright
