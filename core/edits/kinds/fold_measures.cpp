#include "edits/kinds/fold_measures.h"

#include "edits/kinds/kinds.h"
#include "edits/kinds/net_surgery.h"
#include "edits/kinds/place_measures.h"

namespace creasewright {
namespace {

constexpr std::string_view kFirst = "added-first";
constexpr std::string_view kLast = "added-last";

}  // namespace

const NetWords& editWords() {
  static const NetWords kWords = {
      .stages = {{kFirst, worded("stages", "fold what was added"),
                  worded("stages", "Fold what was added by hand as the figure shows.")},
                 {kLast, worded("stages", "fold what was added last"),
                  worded("stages", "Last, fold what was added by hand as the figure shows.")}},
      .panels = {{"flap", worded("panels", "flap")}, {"part", worded("panels", "part")}},
      .pieces = {{"other-half", worded("pieces", "other half")}}};
  return kWords;
}

void addFoldMeasures(std::vector<EditMeasure>& measures, std::string_view standard) {
  measures.push_back(editChoice("fold", worded("styles", "Fold"),
                                worded("styles", "Towards you or away, the net lying as drawn."),
                                {worded("styles", "Valley"), worded("styles", "Mountain")}));
  measures.push_back(editCount("angle", worded("styles", "Angle"),
                               worded("styles", "Degrees; 0 for a fold that is opened again."),
                               standard, 0, 180));
  measures.push_back(editChoice("when", worded("styles", "When"),
                                worded("styles", "Before all other folds, or after them."),
                                {worded("styles", "First"), worded("styles", "Last")}));
}

int addedStage(const EditSite& site) {
  return site.measures.count("when") == 1 ? stageAtEnd(site.net, kLast)
                                          : stageAtStart(site.net, kFirst);
}

void setFold(const EditSite& site, Crease& crease, int stage) {
  const bool valley = site.measures.count("fold") == 0;
  const auto degrees = static_cast<double>(site.measures.count("angle"));
  crease.angle = Angle::degrees(valley ? degrees : -degrees);
  crease.sense = valley ? Sense::Valley : Sense::Mountain;
  crease.stage = stage;
}

}  // namespace creasewright
