#include <algorithm>
#include <map>
#include <tuple>

#include "pages/sheet_figure.h"
#include "papers/guide/step_words.h"

namespace creasewright {

namespace {

int countOf(const Step& step) {
  int count = 0;
  for (const Cut& cut : step.cuts) count += 1 + static_cast<int>(cut.repeats.size());
  return count;
}

/// Title and first sentence of a step that cuts.
StepWords cutWords(StepCode code, int count) {
  const auto words = [](const QString& title, const QString& sentence) {
    return StepWords{title, {sentence}, {}};
  };
  switch (code) {
    case StepCode::CutOpenings:
      return words(
          GuideTr::tr("Cut the openings"),
          GuideTr::tr("Cut out %n opening(s) while the sheet is still whole and firm.", "", count));
    case StepCode::CutSlits:
      return words(GuideTr::tr("Cut the slits"),
                   GuideTr::tr("Cut %n slit(s); nothing falls out.", "", count));
    case StepCode::CutWaste:
      return words(GuideTr::tr("Cut away the corners"),
                   GuideTr::tr("Make %n straight cut(s).", "", count));
    case StepCode::CutMitres:
      return words(GuideTr::tr("Cut the mitres"),
                   GuideTr::tr("Make %n slanting cut(s), each from the end of one score to the "
                               "next.",
                               "", count));
    case StepCode::CutTapers:
      return words(
          GuideTr::tr("Taper the flaps"),
          GuideTr::tr("Make %n slanting cut(s), so that the flaps go in easily.", "", count));
    case StepCode::CutNotches:
      return words(GuideTr::tr("Notch the corners"),
                   GuideTr::tr("Cut off %n small corner(s).", "", count));
    case StepCode::CutCurves:
      return words(GuideTr::tr("Cut the curves"),
                   GuideTr::tr("Make %n curved cut(s); trace them from the template.", "", count));
    case StepCode::TrimBlank:
    case StepCode::ScoreSides:
    case StepCode::ShortScores:
    case StepCode::ScoreFreely:
    case StepCode::FoldAndBurnish:
    case StepCode::ApplyAdhesive:
    case StepCode::FoldStage:
    case StepCode::GluePieces:
    case StepCode::PutTogether:
    case StepCode::PutIn:
    case StepCode::AddExtra:
      break;  // do not cut
  }
  return {};
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

/// Whether all that falls off is narrow and reaches no corner of the sheet.
bool onlySlots(const BuiltPiece& piece) {
  constexpr double kNarrow = 5;  // mm
  constexpr double kOnCorner = 0.01;
  const double width = piece.flat.width;
  const double height = piece.flat.height;
  return !piece.waste.empty() && std::ranges::all_of(piece.waste, [&](const WastePiece& waste) {
    const Bounds box = bounds(waste.area.outer);
    return std::min(box.width(), box.height()) < kNarrow &&
           std::ranges::none_of(waste.area.outer, [&](const Point& p) {
             return (p.x < kOnCorner || p.x > width - kOnCorner) &&
                    (p.y < kOnCorner || p.y > height - kOnCorner);
           });
  });
}

/// Whether every stroke of a step ends within the sheet, where another one does.
bool meetInside(const Step& step, const BuiltPiece& piece) {
  constexpr double kSame = 0.05;  // mm
  const double width = piece.flat.width;
  const double height = piece.flat.height;
  std::vector<Polyline> strokes;
  for (const Cut& cut : step.cuts) {
    strokes.push_back(cut.line);
    for (const CutRepeat repeat : cut.repeats)
      strokes.push_back(repeated(cut.line, repeat, width, height));
  }
  const auto within = [&](Point p) {
    return p.x > kSame && p.y > kSame && p.x < width - kSame && p.y < height - kSame;
  };
  return std::ranges::all_of(strokes, [&](const Polyline& stroke) {
    return std::ranges::any_of(strokes, [&](const Polyline& other) {
      if (&other == &stroke) return false;
      for (const Point end : {stroke.front(), stroke.back()})
        for (const Point there : {other.front(), other.back()})
          if (within(end) && distance(end, there) < kSame) return true;
      return false;
    });
  });
}

}  // namespace

StepWords wordCuts(const Step& step, const BuiltPiece& piece) {
  const bool left = step.figure.hand == Hand::Left;
  StepWords words = cutWords(step.code, countOf(step));
  if (step.code == StepCode::CutWaste && onlySlots(piece))
    words.title = GuideTr::tr("Cut the slots");
  const bool slanting = step.code == StepCode::CutNotches || step.code == StepCode::CutTapers;
  if (slanting && piece.net.creases.empty() && meetInside(step, piece)) {
    words.title = GuideTr::tr("Cut the notches");
    words.sentences = {
        GuideTr::tr("Make %n slanting cut(s); two meet in each notch.", "", countOf(step))};
  }
  if (left && countOf(step) > 1) words.sentences.append(GuideTr::tr("Begin at the right."));
  // The edge that the hand begins at comes first.
  std::map<std::pair<SheetSide, int>, int> fromEdges;
  const auto first = [left](SheetSide edge) { return left ? inMirror(edge) : edge; };
  int guided = 0;
  for (const Cut& cut : step.cuts) {
    if (!cut.fromEdge || cut.toLine == 0) continue;
    ++fromEdges[{first(cut.edge), cut.toLine}];
    for (const CutRepeat repeat : cut.repeats)
      ++fromEdges[{first(repeatedEdge(cut.edge, repeat)), cut.toLine}];
    guided += 1 + static_cast<int>(cut.repeats.size());
  }
  for (const auto& [where, count] : fromEdges)
    words.sentences.append(fromEdgeSentence(first(where.first), where.second, count));
  if (const int others = countOf(step) - guided; guided > 0 && others > 0)
    words.sentences.append(GuideTr::tr("The other %n cut(s) run as the figure shows.", "", others));
  if (!step.waste.empty() && !lettersShow(piece, step.waste)) {
    words.sentences.append(
        GuideTr::tr("Take away the %n piece(s).", "", static_cast<int>(step.waste.size())));
  } else if (!step.waste.empty()) {
    QStringList letters;
    for (const std::string& letter : step.waste) letters.append(QString::fromStdString(letter));
    words.sentences.append(letters.size() == 1
                               ? GuideTr::tr("Take away the piece %1.").arg(letters[0])
                               : GuideTr::tr("Take away the %n piece(s) %1 to %2.", "",
                                             static_cast<int>(letters.size()))
                                     .arg(letters.first(), letters.last()));
  }
  return words;
}

}  // namespace creasewright
