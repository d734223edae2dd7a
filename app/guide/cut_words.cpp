#include <map>
#include <tuple>

#include "guide/step_words.h"

namespace creasewright {

namespace {

int countOf(const Step& step) {
  int count = 0;
  for (const Cut& cut : step.cuts) {
    count += 1 + static_cast<int>(cut.repeats.size());
  }
  return count;
}

QString titleOf(StepCode code) {
  switch (code) {
    case StepCode::CutOpenings:
      return GuideTr::tr("Cut the openings");
    case StepCode::CutSlits:
      return GuideTr::tr("Cut the slits");
    case StepCode::CutMitres:
      return GuideTr::tr("Cut the mitres");
    case StepCode::CutTapers:
      return GuideTr::tr("Taper the flaps");
    case StepCode::CutNotches:
      return GuideTr::tr("Notch the corners");
    case StepCode::CutCurves:
      return GuideTr::tr("Cut the curves");
    default:
      return GuideTr::tr("Cut away the corners");
  }
}

QString openingSentence(StepCode code, int count) {
  switch (code) {
    case StepCode::CutOpenings:
      return GuideTr::tr("Cut out %n opening(s) while the sheet is still whole and firm.", "",
                         count);
    case StepCode::CutSlits:
      return GuideTr::tr("Cut %n slit(s); nothing falls out.", "", count);
    case StepCode::CutMitres:
      return GuideTr::tr("Make %n slanting cut(s), each from the end of one score to the next.", "",
                         count);
    case StepCode::CutTapers:
      return GuideTr::tr("Make %n slanting cut(s), so that the flaps go in easily.", "", count);
    case StepCode::CutNotches:
      return GuideTr::tr("Cut off %n small corner(s).", "", count);
    case StepCode::CutCurves:
      return GuideTr::tr("Make %n curved cut(s); trace them from the template.", "", count);
    default:
      return GuideTr::tr("Make %n straight cut(s).", "", count);
  }
}

QString fromEdgeSentence(SheetSide edge, int line, int count) {
  switch (edge) {
    case SheetSide::Left:
      return GuideTr::tr("Cut in from the left edge up to score line %1, %n time(s).", "", count)
          .arg(line);
    case SheetSide::Right:
      return GuideTr::tr("Cut in from the right edge up to score line %1, %n time(s).", "", count)
          .arg(line);
    case SheetSide::Bottom:
      return GuideTr::tr("Cut in from the bottom edge up to score line %1, %n time(s).", "", count)
          .arg(line);
    case SheetSide::Top:
      return GuideTr::tr("Cut in from the top edge up to score line %1, %n time(s).", "", count)
          .arg(line);
  }
  return {};
}

}  // namespace

StepWords wordCuts(const Step& step) {
  StepWords words;
  words.title = titleOf(step.code);
  std::map<std::pair<SheetSide, int>, int> fromEdges;
  int guided = 0;
  for (const Cut& cut : step.cuts) {
    if (!cut.fromEdge || cut.toLine == 0) {
      continue;
    }
    ++fromEdges[{cut.edge, cut.toLine}];
    for (const CutRepeat repeat : cut.repeats) {
      ++fromEdges[{repeatedEdge(cut.edge, repeat), cut.toLine}];
    }
    guided += 1 + static_cast<int>(cut.repeats.size());
  }
  words.sentences.append(openingSentence(step.code, countOf(step)));
  for (const auto& [where, count] : fromEdges) {
    words.sentences.append(fromEdgeSentence(where.first, where.second, count));
  }
  if (const int others = countOf(step) - guided; guided > 0 && others > 0) {
    words.sentences.append(GuideTr::tr("The other %n cut(s) run as the figure shows.", "", others));
  }
  if (!step.waste.empty()) {
    QStringList letters;
    for (const std::string& letter : step.waste) {
      letters.append(QString::fromStdString(letter));
    }
    words.sentences.append(letters.size() == 1
                               ? GuideTr::tr("Take away the piece %1.").arg(letters[0])
                               : GuideTr::tr("Take away the %n piece(s) %1 to %2.", "",
                                             static_cast<int>(letters.size()))
                                     .arg(letters.first(), letters.last()));
  }
  return words;
}

}  // namespace creasewright
