#include <algorithm>
#include <iterator>
#include <vector>

#include "bridge/net_words.h"
#include "bridge/style_text.h"
#include "making/hand_folds.h"
#include "papers/guide/step_words.h"

namespace creasewright {

namespace {

QString bendSentence(BendCode why) {
  switch (why) {
    case BendCode::TuckSlidesIn:
      return GuideTr::tr("Let the flap bend a little while it slides in.");
    case BendCode::PetalsOverlap:
      return GuideTr::tr(
          "Bend each petal a little and lay it over the next; the last goes under the "
          "first.");
    case BendCode::TubePinched:
      return GuideTr::tr("Roll the card into a tube and pinch its two ends flat, crosswise.");
    case BendCode::CurvedScore:
      return GuideTr::tr("Press the curved scores in with your thumbs; the card bends by itself.");
    case BendCode::BottomOpens:
      return GuideTr::tr(
          "Press the two folded edges towards each other: the tube opens, the bottom swings down "
          "and its two long flaps hook into one another. Help with a finger from inside.");
    case BendCode::FoldsFlat:
      return GuideTr::tr(
          "Push both sides in along their middle, swing the bottom up onto the outside of the "
          "back, and press all creases. So the bag is kept flat until it is filled.");
    case BendCode::OpensAgain:
      return GuideTr::tr("Pull the sides out and push the bottom down from inside.");
    case BendCode::TabsFedIn:
      return GuideTr::tr(
          "Before the side stands upright, curl each tab inwards and put its end into the open end "
          "of the long side; push it in as you raise the side.");
    case BendCode::InnerWallsCurl:
      return GuideTr::tr(
          "These sides are deep: roll one after the other, and curl the inner wall in your hand so "
          "that it clears the side opposite.");
  }
  return {};
}

/// Whether the sentence of a bend says all that the hand does in the stage.
bool saysMovement(BendCode why) {
  switch (why) {
    case BendCode::PetalsOverlap:
    case BendCode::TubePinched:
    case BendCode::CurvedScore:
    case BendCode::BottomOpens:
    case BendCode::FoldsFlat:
    case BendCode::OpensAgain:
      return true;
    case BendCode::TuckSlidesIn:
    case BendCode::TabsFedIn:
    case BendCode::InnerWallsCurl:
      return false;
  }
  return false;
}

/// A stage told in words of its own; which lines and joins that means is then looked up below.
bool isTold(const Step& step, const ToldStage& stage) {
  return !stageSays(stage.code).isEmpty() ||
         (&stage == &step.stages.back() && std::ranges::any_of(step.bends, saysMovement));
}

bool isTold(const Step& step) {
  return std::ranges::all_of(
      step.stages, [&step](const ToldStage& stage) { return isTold(step, stage); });
}

/// The lines some folds fold, as the hand counts them.
struct FoldCount {
  int lines = 0;
  int following = 0;  ///< of a loop: they fold along by themselves
  bool opens = false;
  std::vector<int> panels;  ///< that move
};

/// Lines are counted stage by stage: those of two stages are folded one after the other.
FoldCount countFolds(const std::vector<const ToldStage*>& stages) {
  FoldCount count;
  std::ptrdiff_t opening = 0;
  std::ptrdiff_t all = 0;
  for (const ToldStage* stage : stages) {
    for (const HandFold& line : handFolds(stage->folds))
      ++(stage->folds[line.folds.front()].loop ? count.following : count.lines);
    for (const Fold& fold : stage->folds)
      if (!fold.bend && !fold.loop) count.panels.push_back(fold.child);
    opening += std::ranges::count_if(stage->folds, &Fold::opens);
    all += std::ssize(stage->folds);
  }
  count.opens = 2 * opening >= all;
  return count;
}

/// Every line of some stages, by the panels that move; those of a loop follow by themselves.
void addFolds(const std::vector<const ToldStage*>& stages, bool said, const PanelNames& names,
              StepWords& words) {
  const FoldCount count = countFolds(stages);
  const QString panels = names.list(count.panels);
  if (said && count.lines > 0)
    words.details.append((count.opens ? GuideTr::tr("Open %n line(s): %1.", "", count.lines)
                                      : GuideTr::tr("Fold %n line(s): %1.", "", count.lines))
                             .arg(panels));
  else if (count.lines > 0)
    words.sentences.append(
        (count.opens ? GuideTr::tr("Open %n line(s) as the arrows show: %1.", "", count.lines)
                     : GuideTr::tr("Fold %n line(s) as the arrows show: %1.", "", count.lines))
            .arg(panels));
  if (count.following > 0)
    (said ? words.details : words.sentences)
        .append(GuideTr::tr("%n more line(s) fold along by themselves.", "", count.following));
}

/// What the style says comes first; then which folds that means is looked up below, of all such
/// stages together.
void addStages(const Step& step, const PanelNames& names, StepWords& words) {
  std::vector<const ToldStage*> told;
  for (const ToldStage& stage : step.stages) {
    const QString says = stageSays(stage.code);
    if (!says.isEmpty()) words.sentences.append(says);
    if (isTold(step, stage))
      told.push_back(&stage);
    else
      addFolds({&stage}, false, names, words);
  }
  if (!told.empty()) addFolds(told, true, names, words);
}

StepWords wordTogether(const Step& step, const Guide& guide) {
  StepWords words;
  words.title = GuideTr::tr("Put the pieces together");
  QStringList names;
  for (const int piece : step.pieces)
    names.append(pieceTitle(guide.pieces.at(static_cast<std::size_t>(piece)).name));
  words.sentences.append(
      GuideTr::tr("The pieces go one into the other: %1.").arg(names.join(QStringLiteral(", "))));
  return words;
}

}  // namespace

QString turnSentence() { return GuideTr::tr("Turn the sheet over."); }

StepWords wordFolds(const Step& step, const Guide& guide, const PanelNames& names) {
  if (step.code == StepCode::PutTogether) return wordTogether(step, guide);
  StepWords words;
  words.title = stageTitle(step.stage);
  if (!words.title.isEmpty()) words.title[0] = words.title[0].toUpper();
  if (step.turn) words.sentences.append(turnSentence());
  if (step.putIn)
    words.sentences.append(GuideTr::tr("Put the product in before the last panels close."));
  QStringList& exact = isTold(step) ? words.details : words.sentences;
  addStages(step, names, words);
  for (const BendCode why : step.bends) words.sentences.append(bendSentence(why));
  const bool glued =
      std::ranges::any_of(step.joins, [](const Join& join) { return join.method == Method::Glue; });
  if (glued)
    words.sentences.append(GuideTr::tr("Take the liner off, or put on the glue, just before."));
  addJoinWords(step, names, exact);
  return words;
}

}  // namespace creasewright
