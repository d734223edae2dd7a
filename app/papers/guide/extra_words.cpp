#include "bridge/style_text.h"
#include "guide/extra_steps.h"
#include "papers/guide/panel_list.h"
#include "papers/guide/step_words.h"

namespace creasewright {

namespace {

QString faceWords(const FacePlace& face, const BuiltDesign& built) {
  const Net& net = built.pieces.at(static_cast<std::size_t>(face.piece)).net;
  return panelTitle(net.panels.at(static_cast<std::size_t>(face.panel)).id);
}

StepWords wordMats(const Step& step, const BuiltDesign& built) {
  StepWords words;
  words.title = GuideTr::tr("Glue on the mats");
  for (const int index : step.pieces) {
    const BuiltPiece& mat = built.pieces.at(static_cast<std::size_t>(index));
    std::vector<int> faces;
    for (const FacePlace& face : mat.role->faces)
      if (face.piece == step.piece) faces.push_back(face.panel);
    words.sentences.append(
        GuideTr::tr("“%1”: %n piece(s), onto %2.", "", static_cast<int>(faces.size()))
            .arg(pieceTitle(mat.name),
                 panelList(built.pieces.at(static_cast<std::size_t>(step.piece)), faces)));
  }
  words.sentences.append(
      GuideTr::tr("Lay each in the middle of its face, the pattern upright, and press it on."));
  return words;
}

StepWords wordLabel(const Step& step, const BuiltDesign& built) {
  StepWords words;
  words.title = GuideTr::tr("Glue on the label");
  if (step.pieces.size() > 1)
    words.sentences.append(GuideTr::tr("Glue the label onto the middle of its mat layer."));
  const BuiltPiece& label = built.pieces.at(static_cast<std::size_t>(step.pieces.front()));
  words.sentences.append(GuideTr::tr("Glue it onto the middle of “%1”.")
                             .arg(faceWords(label.role->faces.front(), built)));
  return words;
}

StepWords wordFilm(const Step& step, const BuiltDesign& built) {
  StepWords words;
  words.title = GuideTr::tr("Glue in the film");
  const BuiltPiece& film = built.pieces.at(static_cast<std::size_t>(step.pieces.front()));
  words.sentences.append(
      GuideTr::tr("Put narrow tape or glue round the opening of “%1”, on the inside.")
          .arg(faceWords(film.role->faces.front(), built)));
  words.sentences.append(GuideTr::tr("Press the film on; it must not reach a fold."));
  return words;
}

StepWords wordRibbon(const Step& step, const BuiltDesign& built, GuideUnits units) {
  StepWords words;
  words.title = GuideTr::tr("Tie the ribbon");
  for (const RibbonNeed& ribbon : built.ribbons) {
    if (ribbon.extra != step.extra) continue;
    words.sentences.append(
        GuideTr::tr("Cut %1 of ribbon, %2 wide.")
            .arg(guideLength(ribbon.length, units), guideLength(ribbon.width, units)));
    words.sentences.append(
        ribbon.cross ? GuideTr::tr("Lay it under the box, cross it on top, and tie a bow.")
                     : GuideTr::tr("Lay it once round the box and tie a bow."));
  }
  return words;
}

StepWords plain(const QString& title, const QString& sentence) { return {title, {sentence}, {}}; }

StepWords wordsOf(const Step& step, const BuiltDesign& built, GuideUnits units) {
  switch (kindOf(built, step.extra).act) {
    case ExtraAct::GlueMatsOn:
      return wordMats(step, built);
    case ExtraAct::GlueLabelOn:
      return wordLabel(step, built);
    case ExtraAct::GlueFilmIn:
      return wordFilm(step, built);
    case ExtraAct::TieRibbon:
      return wordRibbon(step, built, units);
    case ExtraAct::SlideBandOn:
      return plain(GuideTr::tr("Slide the band on"),
                   GuideTr::tr("Slide the band round the box, its seam at the back."));
    case ExtraAct::SlideIntoSleeve:
      return plain(GuideTr::tr("Slide the box into the sleeve"),
                   GuideTr::tr("Push it in from one end until both ends are flush."));
    case ExtraAct::TieTagOn:
      return plain(GuideTr::tr("Tie on the tag"),
                   GuideTr::tr("Thread ribbon or string through the hole and tie the tag on."));
    case ExtraAct::SetInsertIn:
      return plain(GuideTr::tr("Set in the insert"),
                   GuideTr::tr("Set the insert into the box, its opening up."));
    case ExtraAct::LaySlipIn:
      return plain(GuideTr::tr("Lay in the greeting slip"),
                   GuideTr::tr("Lay it flat into the box; the product goes onto it."));
  }
  return {};
}

}  // namespace

StepWords wordExtra(const Step& step, const BuiltDesign& built, GuideUnits units) {
  StepWords words = wordsOf(step, built, units);
  if (step.turn) words.sentences.prepend(turnSentence());
  return words;
}

}  // namespace creasewright
