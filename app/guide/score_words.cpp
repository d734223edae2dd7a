#include "bridge/label_text.h"
#include "guide/step_words.h"
#include "making/hand_folds.h"
#include "pages/score_text.h"

namespace creasewright {

namespace {

constexpr int kMostByCoordinates = 8;

/// Scores that no side guides, as the hand draws them.
struct FreeLines {
  std::vector<FreeScore> straight;  ///< one for each line, its longest piece or the only one
  int curved = 0;
};

FreeLines freeLines(const std::vector<FreeScore>& scores) {
  std::vector<Fold> folds;
  for (const FreeScore& score : scores) {
    Fold fold;
    fold.line = score.line;
    fold.angle = Angle::degrees(score.valley ? 90 : -90);
    folds.push_back(fold);
  }
  FreeLines lines;
  for (const std::vector<std::size_t>& line : handFolds(folds)) {
    if (line.size() > 2) {
      ++lines.curved;
      continue;
    }
    for (const std::size_t index : line) {
      lines.straight.push_back(scores[index]);
    }
  }
  return lines;
}

void addReadings(const ScorePlan& plan, const FlatNet& flat, Unit unit, StepWords& words) {
  for (const ScoreSection& section : scoreText(plan, flat.width, flat.height)) {
    const QString heading = labelText(section.heading, unit);
    QStringList lines;
    for (const Label& line : section.lines) {
      lines.append(labelText(line, unit));
    }
    words.sentences.append(heading.isEmpty()
                               ? lines.join(QLatin1Char(' '))
                               : heading + QLatin1Char(' ') + lines.join(QLatin1Char(' ')));
  }
}

}  // namespace

/// The readings as the score guide has them, once for each unit.
StepWords wordScores(const Step& step, const BuiltPiece& piece, GuideUnits units) {
  StepWords words;
  words.title = step.code == StepCode::ScoreSides ? GuideTr::tr("Score from side to side")
                : step.code == StepCode::ShortScores
                    ? GuideTr::tr("Score the short lines")
                    : GuideTr::tr("Score the slanting and curved lines");
  const FreeLines free = freeLines(step.freeScores);
  const int straight = static_cast<int>(free.straight.size());
  const bool traced = straight > kMostByCoordinates;
  const ScorePlan plan{step.settings, traced ? std::vector<FreeScore>{} : free.straight};
  if (!plan.setups.empty() || !plan.freeScores.empty()) {
    for (const Unit unit : unitsOf(units)) {
      addReadings(plan, piece.flat, unit, words);
    }
  }
  if (traced) {
    words.sentences.append(
        GuideTr::tr("Trace %n slanting line(s) from the template with a stylus.", "", straight));
  }
  if (free.curved > 0) {
    words.sentences.append(
        GuideTr::tr("Trace %n curved line(s) from the template with a stylus.", "", free.curved));
  }
  return words;
}

}  // namespace creasewright
