#include "papers/guide/step_words.h"

#include <algorithm>
#include <map>

#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "document/halves.h"
#include "making/hand_folds.h"
#include "pages/guide_figure.h"

namespace creasewright {

namespace {

const BuiltPiece& pieceOf(const Step& step, const BuiltDesign& built) {
  return built.pieces.at(static_cast<std::size_t>(step.piece));
}

/// One that words stand on.
void addInscriptions(const BuiltPiece& cut, QStringList& sentences) {
  if (cut.net.inscriptions.empty()) return;
  QStringList lines;
  for (const Inscription& line : cut.net.inscriptions) lines.append(text(line.text));
  sentences.append(
      GuideTr::tr("Write or print on it: “%1”.").arg(lines.join(QStringLiteral(" / "))));
}

StepWords wordTrim(const Step& step, const Guide& guide, const BuiltDesign& built,
                   GuideUnits units) {
  const GuidePiece& piece = guide.pieces.at(static_cast<std::size_t>(step.piece));
  const QString size = guideSize({step.width, step.height}, units);
  StepWords words;
  if (guide.pieces.size() > 1)
    words.title = GuideTr::tr("Cut “%1”").arg(pieceTitle(piece.name));
  else
    words.title = GuideTr::tr("Cut the sheet");
  const BuiltPiece& cut = pieceOf(step, built);
  if (cut.card == built.design.card && !isColoured(cut.card)) {
    words.sentences.append(
        GuideTr::tr("Trim %n sheet(s) of card to %1.", "", piece.count).arg(size));
  } else {
    words.sentences.append(GuideTr::tr("Trim %n sheet(s) of %1 to %2.", "", piece.count)
                               .arg(cardName(cut.card), size));
  }
  const ToolGrid grid = built.design.grid;
  if (units == GuideUnits::Inch && (!grid.holds(step.width) || !grid.holds(step.height))) {
    words.sentences.append(
        GuideTr::tr("Measure it exactly, %1: no mark of the trimmer stands there.")
            .arg(guideSize({step.width, step.height}, GuideUnits::Millimetre)));
  }
  addInscriptions(cut, words.sentences);
  if (cut.net.creases.empty()) return words;
  words.sentences.append(GuideTr::tr("Lay it inside up, as shown."));
  return words;
}

/// A line for each, by the letters of the figure.
StepWords wordTrimSeveral(const Step& step, const Guide& guide, const BuiltDesign& built,
                          GuideUnits units) {
  StepWords words;
  words.list = true;
  words.title = GuideTr::tr("Cut the plain pieces");
  char letter = 'a';
  for (const int index : step.pieces) {
    const GuidePiece& piece = guide.pieces.at(static_cast<std::size_t>(index));
    const BuiltPiece& cut = built.pieces.at(static_cast<std::size_t>(index));
    words.sentences.append(
        GuideTr::tr("%1: “%2”, %3 of %4, %5.", "letter, piece, count, size, card")
            .arg(QString(QChar::fromLatin1(letter++)), pieceTitle(piece.name),
                 QString::number(piece.count), guideSize({piece.width, piece.height}, units),
                 cardName(cut.card)));
    addInscriptions(cut, words.sentences);
  }
  return words;
}

StepWords wordBurnish(const Step& step) {
  StepWords words;
  words.title = GuideTr::tr("Fold and burnish");
  int valleys = 0;
  int mountains = 0;
  for (const HandFold& line : handFolds(step.folds))
    ++(step.folds[line.folds.front()].valley ? valleys : mountains);
  if (valleys > 0) {
    words.sentences.append(
        GuideTr::tr("Fold %n line(s) towards you (dashed) and back again.", "", valleys));
  }
  if (mountains > 0) {
    words.sentences.append(GuideTr::tr(
        "Fold %n line(s) away from you (dashes and dots) and back again.", "", mountains));
  }
  words.sentences.append(GuideTr::tr("Press each fold sharp with the bone folder."));
  return words;
}

StepWords wordAdhesive(const Step& step, const BuiltDesign& built, GuideUnits units) {
  const BuiltPiece& piece = pieceOf(step, built);
  StepWords words;
  words.title = step.figure.turned ? GuideTr::tr("Put the adhesive on the outside")
                                   : GuideTr::tr("Put the adhesive on the inside");
  if (step.turn) words.sentences.append(turnSentence());
  std::map<Length, std::vector<int>> byTape;
  for (const Adhesive& adhesive : step.adhesive) byTape[adhesive.width].push_back(adhesive.panel);
  for (const auto& [width, panels] : byTape) {
    const int count = static_cast<int>(panels.size());
    const QString names = PanelNames(piece).list(panels);
    words.sentences.append(
        width == Length()
            ? GuideTr::tr("Keep liquid glue ready for %n place(s): %1.", "", count).arg(names)
            : GuideTr::tr("Stick %n strip(s) of %1 tape on: %2. Leave the liner on.", "", count)
                  .arg(guideLength(width, units), names));
  }
  words.sentences.append(
      GuideTr::tr("Stay %1 away from folds and edges.").arg(keepAwayWords(units)));
  return words;
}

StepWords wordPutIn(const Step& step, const BuiltDesign& built) {
  StepWords words;
  words.title = GuideTr::tr("Put the product in");
  if (built.cells) {
    words.sentences.append(GuideTr::tr("Put one piece into each cell."));
    return words;
  }
  words.sentences.append(step.onInsert ? GuideTr::tr("Stand it in the opening of the insert.")
                         : step.through
                             ? GuideTr::tr("Slide it in from one open end, as the arrow shows.")
                             : GuideTr::tr("It goes in from the open side, as the arrow shows."));
  return words;
}

/// The two halves of one blank, by the tab of the first.
StepWords wordHalves(const Step& step, const BuiltPiece& half, const QString& other) {
  const Holding& held = *half.held;
  const QString tab = panelTitle(held.panel);
  const QString onto = panelTitle(held.onto);
  StepWords words;
  words.title = GuideTr::tr("Glue the two halves together");
  if (step.turn) words.sentences.append(turnSentence());
  words.sentences.append(GuideTr::tr("Take the liner off, or put on the glue, just before."));
  words.sentences.append(
      held.face == Face::Inside
          ? GuideTr::tr("Press the tab “%1” onto the inside of “%2” of the piece “%3”, the fold of "
                        "the tab along the edge. All lies flat.")
                .arg(tab, onto, other)
          : GuideTr::tr("Press the tab “%1” onto the outside of “%2” of the piece “%3”, the fold "
                        "of the tab along the edge. All lies flat.")
                .arg(tab, onto, other));
  return words;
}

/// One whole piece is glued onto another, both lying flat.
StepWords wordGluing(const Step& step, const Guide& guide, const BuiltDesign& built) {
  const auto upper = static_cast<std::size_t>(step.pieces.front());
  const Holding& held = *built.pieces.at(upper).held;
  const QString above = pieceTitle(guide.pieces.at(upper).name);
  const QString below =
      pieceTitle(guide.pieces.at(static_cast<std::size_t>(step.pieces.back())).name);
  const auto lower = static_cast<std::size_t>(step.pieces.back());
  if (areHalves(built.pieces.at(upper), built.pieces.at(lower)))
    return wordHalves(step, built.pieces.at(upper), below);
  const QString onto = panelTitle(held.onto);
  StepWords words;
  words.title = GuideTr::tr("Glue the piece “%1” onto the piece “%2”").arg(above, below);
  if (step.turn) words.sentences.append(turnSentence());
  words.sentences.append(GuideTr::tr("Take the liner off, or put on the glue, just before."));
  words.sentences.append(
      held.face == Face::Inside
          ? GuideTr::tr("Press the piece “%1”, flat as it is, onto the inside of “%2” of the piece "
                        "“%3”, in the middle.")
                .arg(above, onto, below)
          : GuideTr::tr("Press the piece “%1”, flat as it is, onto the outside of “%2” of the "
                        "piece “%3”, in the middle.")
                .arg(above, onto, below));
  return words;
}

QString checkWords(const CheckLine& check, const PanelNames& names, GuideUnits units) {
  switch (check.code) {
    case CheckCode::SheetMeasures:
      return GuideTr::tr("It measures %1.").arg(guideSize({check.a, check.b}, units));
    case CheckCode::CutMeetsScore:
      return GuideTr::tr("The cut edge meets score line %1.").arg(check.number);
    case CheckCode::WasteCount:
      return GuideTr::tr("%n piece(s) have come off.", "", check.number);
    case CheckCode::FlapFaceDown:
      return GuideTr::tr("“%1” lies flat on “%2”.")
          .arg(names.of(check.panel), names.of(check.onto));
    case CheckCode::CreaseOnRim:
      return GuideTr::tr("The fold of “%1” lies along the edge of “%2”.")
          .arg(names.of(check.panel), names.of(check.onto));
    case CheckCode::RimAllRound:
      return check.a == check.b
                 ? GuideTr::tr("A rim of %1 shows all round.").arg(guideLength(check.a, units))
                 : GuideTr::tr("A rim of %1 shows at left and right, of %2 in front and behind.")
                       .arg(guideLength(check.a, units), guideLength(check.b, units));
    case CheckCode::FinishedSize:
      return GuideTr::tr("Outside it measures %1.")
          .arg(finishedSize({check.a, check.b, check.c}, units));
  }
  return {};
}

StepWords sentencesOf(const Step& step, const Guide& guide, const BuiltDesign& built,
                      const PanelNames& names, GuideUnits units) {
  switch (step.code) {
    case StepCode::TrimBlank:
      return step.pieces.empty() ? wordTrim(step, guide, built, units)
                                 : wordTrimSeveral(step, guide, built, units);
    case StepCode::ScoreSides:
    case StepCode::ShortScores:
    case StepCode::ScoreFreely:
      return wordScores(step, pieceOf(step, built), units);
    case StepCode::FoldAndBurnish:
      return wordBurnish(step);
    case StepCode::ApplyAdhesive:
      return wordAdhesive(step, built, units);
    case StepCode::FoldStage:
    case StepCode::PutTogether:
      return wordFolds(step, guide, names);
    case StepCode::PutIn:
      return wordPutIn(step, built);
    case StepCode::GluePieces:
      return wordGluing(step, guide, built);
    case StepCode::AddExtra:
      return wordExtra(step, built, units);
    case StepCode::CutOpenings:
    case StepCode::CutSlits:
    case StepCode::CutWaste:
    case StepCode::CutMitres:
    case StepCode::CutTapers:
    case StepCode::CutNotches:
    case StepCode::CutCurves:
      return wordCuts(step, pieceOf(step, built));
  }
  return {};
}

}  // namespace

StepWords wordStep(const Step& step, const Guide& guide, const BuiltDesign& built,
                   GuideUnits units) {
  constexpr int kMostFlaps = 1;  // more are checked with one look
  const auto isFlap = [](const CheckLine& check) {
    return check.code == CheckCode::FlapFaceDown || check.code == CheckCode::CreaseOnRim;
  };
  const bool lettered = step.code == StepCode::FoldStage;
  const PanelNames names(pieceOf(step, built),
                         lettered ? StepFigure(built, step).letters() : std::vector<PanelLetter>());
  StepWords words = sentencesOf(step, guide, built, names, units);
  const auto flaps = static_cast<int>(std::ranges::count_if(step.checks, isFlap));
  if (flaps == 2)
    words.checks.append(GuideTr::tr("Both flaps lie flat."));
  else if (flaps > kMostFlaps)
    words.checks.append(GuideTr::tr("All %n flap(s) lie flat.", "", flaps));
  for (const CheckLine& check : step.checks)
    if (flaps <= kMostFlaps || !isFlap(check)) words.checks.append(checkWords(check, names, units));
  words.checks.removeDuplicates();
  return words;
}

}  // namespace creasewright
