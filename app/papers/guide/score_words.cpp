#include "bridge/label_text.h"
#include "making/score_curves.h"
#include "pages/score_text.h"
#include "papers/guide/step_words.h"

namespace creasewright {

namespace {

constexpr int kMostByCoordinates = 8;

void addReadings(const ScorePlan& plan, const FlatNet& flat, Hand hand, Unit unit,
                 StepWords& words) {
  for (const ScoreSection& section : scoreText(plan, flat.width, flat.height, hand)) {
    const QString heading = labelText(section.heading, unit);
    QStringList lines;
    for (const Label& line : section.lines) lines.append(labelText(line, unit));
    words.sentences.append(heading.isEmpty()
                               ? lines.join(QLatin1Char(' '))
                               : heading + QLatin1Char(' ') + lines.join(QLatin1Char(' ')));
  }
}

}  // namespace

/// The readings as the score guide has them, once for each unit.
StepWords wordScores(const Step& step, const BuiltPiece& piece, GuideUnits units) {
  StepWords words;
  words.list = true;
  words.title = step.code == StepCode::ScoreSides ? GuideTr::tr("Score from side to side")
                : step.code == StepCode::ShortScores
                    ? GuideTr::tr("Score the short lines")
                    : GuideTr::tr("Score the slanting and curved lines");
  if (step.figure.hand == Hand::Left && step.code == StepCode::ScoreSides) {
    words.sentences.append(
        GuideTr::tr("Lay the side named against the stop at your right; its numbers count from "
                    "there."));
  }
  const DrawnScores free = drawnScores(step.freeScores);
  const int straight = static_cast<int>(free.straight.size());
  const bool traced = straight > kMostByCoordinates;
  const ScorePlan plan{step.settings, traced ? std::vector<FreeScore>{} : free.straight};
  if (!plan.setups.empty() || !plan.freeScores.empty())
    for (const Unit unit : unitsOf(units))
      addReadings(plan, piece.flat, step.figure.hand, unit, words);
  if (traced) {
    words.sentences.append(
        GuideTr::tr("Trace %n slanting line(s) from the template with a stylus.", "", straight));
  }
  const int curved = static_cast<int>(free.curves.size());
  if (curved > 0) {
    words.sentences.append(
        GuideTr::tr("Trace %n curved line(s) from the template with a stylus.", "", curved));
  }
  return words;
}

}  // namespace creasewright
