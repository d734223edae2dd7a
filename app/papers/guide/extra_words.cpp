#include <algorithm>

#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "document/with_punches.h"
#include "extras/place_measures.h"
#include "guide/extra_steps.h"
#include "papers/guide/guide_lengths.h"
#include "papers/guide/step_words.h"

namespace creasewright {

QString titleOf(ExtraAct act) {
  switch (act) {
    case ExtraAct::GlueMatsOn:
      return GuideTr::tr("Glue on the mats");
    case ExtraAct::GlueMatsIn:
      return GuideTr::tr("Glue in the photo mats");
    case ExtraAct::GlueLabelOn:
      return GuideTr::tr("Glue on the label");
    case ExtraAct::GlueBowOn:
      return GuideTr::tr("Make the bow and glue it on");
    case ExtraAct::GlueFilmIn:
      return GuideTr::tr("Glue in the film");
    case ExtraAct::TieRibbon:
      return GuideTr::tr("Tie the ribbon");
    case ExtraAct::SlideBandOn:
      return GuideTr::tr("Slide the band on");
    case ExtraAct::SlideIntoSleeve:
      return GuideTr::tr("Slide the box into the sleeve");
    case ExtraAct::TieTagOn:
      return GuideTr::tr("Tie on the tag");
    case ExtraAct::SetInsertIn:
      return GuideTr::tr("Set in the insert");
    case ExtraAct::SetPartitionIn:
      return GuideTr::tr("Set in the partition");
    case ExtraAct::LaySlipIn:
      return GuideTr::tr("Lay in the greeting slip");
    case ExtraAct::ThreadPull:
      return GuideTr::tr("Thread the ribbon pull");
  }
  return {};
}

namespace {

QString faceWords(const FacePlace& face, const BuiltDesign& built) {
  const Net& net = built.pieces.at(static_cast<std::size_t>(face.piece)).net;
  return panelTitle(net.panels.at(static_cast<std::size_t>(face.panel)).id);
}

StepWords wordMats(const Step& step, const BuiltDesign& built) {
  StepWords words;
  const bool inside = kindOf(built, step.extra).act == ExtraAct::GlueMatsIn;
  words.title = titleOf(inside ? ExtraAct::GlueMatsIn : ExtraAct::GlueMatsOn);
  for (const int index : step.pieces) {
    const BuiltPiece& mat = built.pieces.at(static_cast<std::size_t>(index));
    std::vector<int> faces;
    for (const FacePlace& face : mat.role->faces)
      if (face.piece == step.piece) faces.push_back(face.panel);
    words.sentences.append(
        (inside ? GuideTr::tr("“%1”: %n piece(s), onto the inside of %2.", "",
                              static_cast<int>(faces.size()))
                : GuideTr::tr("“%1”: %n piece(s), onto %2.", "", static_cast<int>(faces.size())))
            .arg(pieceTitle(mat.name),
                 PanelNames(built.pieces.at(static_cast<std::size_t>(step.piece))).list(faces)));
  }
  const bool patterned = std::ranges::any_of(step.pieces, [&](int mat) {
    return built.pieces.at(static_cast<std::size_t>(mat)).card.colours.pattern.has_value();
  });
  words.sentences.append(
      patterned
          ? GuideTr::tr("Lay each in the middle of its face, the pattern upright, and press it on.")
          : GuideTr::tr("Lay each in the middle of its face and press it on."));
  return words;
}

/// How a layer is put onto what is under it.
QString layerOnto(const BuiltPiece& layer, const QString& onto, GuideUnits units) {
  const LayerFacts facts = layer.role->layer.value_or(LayerFacts());
  const QString name = pieceTitle(layer.name);
  switch (facts.hold) {
    case LayerHold::Glue:
      return GuideTr::tr("Glue “%1” onto %2.").arg(name, onto);
    case LayerHold::Tape:
      return GuideTr::tr("Stick “%1” onto %2 with double-sided tape.").arg(name, onto);
    case LayerHold::Foam:
      return GuideTr::tr("Stick “%1” onto %2 with %n foam dot(s), %3 thick, 3 mm inside its edge.",
                         "", facts.foamDots)
          .arg(name, onto, guideLength(facts.foam, units));
  }
  return {};
}

/// What is done to a layer by itself.
void wordLayer(const BuiltDesign& built, const BuiltPiece& layer, StepWords& words) {
  if (!layer.role->layer) return;
  const QString name = pieceTitle(layer.name);
  if (const std::optional<Punch> punch = punchFor(built, layer))
    words.sentences.append(
        GuideTr::tr("Punch “%1” with your %2 punch.").arg(name, punchName(*punch)));
  if (layer.role->layer->stamped)
    words.sentences.append(GuideTr::tr("Stamp the words onto “%1” and let them dry.").arg(name));
}

/// What something is glued onto whose middle lies `at` in a place: a face of the box, a piece that
/// lies on it or goes round it, or what was glued there before.
QString ontoWords(int extra, const FacePlace& face, Point at, const BuiltDesign& built) {
  const BuiltPiece& host = built.pieces.at(static_cast<std::size_t>(face.piece));
  if (const std::optional<int> under = pieceUnder(built, extra, face, at)) {
    const QString name = pieceTitle(built.pieces.at(static_cast<std::size_t>(*under)).name);
    return host.role && host.net.creases.empty()
               ? GuideTr::tr("“%1”", "a name").arg(name)
               : GuideTr::tr("“%1” on “%2”", "a mat, a face").arg(name, faceWords(face, built));
  }
  if (!host.role) return GuideTr::tr("“%1”", "a name").arg(faceWords(face, built));
  if (host.net.creases.empty()) return GuideTr::tr("“%1”", "a name").arg(pieceTitle(host.name));
  return GuideTr::tr("“%1” of the piece “%2”").arg(faceWords(face, built), pieceTitle(host.name));
}

StepWords wordLabel(const Step& step, const BuiltDesign& built, GuideUnits units) {
  StepWords words;
  words.title = titleOf(ExtraAct::GlueLabelOn);
  const auto at = [&](std::size_t i) -> const BuiltPiece& {
    return built.pieces.at(static_cast<std::size_t>(step.pieces.at(i)));
  };
  const Extra& extra = built.design.extras.at(static_cast<std::size_t>(step.extra));
  const bool plain = extra.layers.empty() && !extra.parameters.flag("punched");
  for (std::size_t i = 0; i < step.pieces.size(); ++i) wordLayer(built, at(i), words);
  if (plain && step.pieces.size() > 1)
    words.sentences.append(GuideTr::tr("Glue the label onto the middle of its mat layer."));
  for (std::size_t i = 1; !plain && i < step.pieces.size(); ++i)
    words.sentences.append(
        layerOnto(at(i), GuideTr::tr("“%1”", "a name").arg(pieceTitle(at(i - 1).name)), units));
  const BuiltPiece& lowest = at(0);
  const bool glued = !lowest.role->layer || lowest.role->layer->hold == LayerHold::Glue;
  const Bounds box = bounds(lowest.net.panels.front().outline);
  const QString under =
      ontoWords(step.extra, lowest.role->faces.front(), (box.low + box.high) / 2, built);
  if (!glued)
    words.sentences.append(layerOnto(lowest, under, units));
  else if (extra.parameters.count("anchor") > 1 || isShifted(extra.parameters))
    words.sentences.append(GuideTr::tr("Glue it onto %1, where the picture shows it.").arg(under));
  else
    words.sentences.append(GuideTr::tr("Glue it onto the middle of %1.").arg(under));
  return words;
}

QString formWords(BowForm form) {
  switch (form) {
    case BowForm::TwoLoops:
      return GuideTr::tr("Tie two loops and leave two tails; cut their ends slanting.");
    case BowForm::Flat:
      return GuideTr::tr(
          "Cut the ends and the middle band off, close the rest to a loop with glue, and press its "
          "middle flat.");
    case BowForm::Layered:
      return GuideTr::tr(
          "Cut the ends and the middle band off, glue a closed loop for each layer, and lay them "
          "on "
          "one another, the largest below.");
  }
  return {};
}

StepWords wordBow(const Step& step, const BuiltDesign& built, GuideUnits units) {
  StepWords words;
  words.title = titleOf(ExtraAct::GlueBowOn);
  for (const RibbonNeed& ribbon : built.ribbons) {
    if (ribbon.extra != step.extra || !ribbon.shape) continue;
    words.sentences.append(
        GuideTr::tr("Cut %1.", "a length of ribbon")
            .arg(ribbonWords(ribbon.length, ribbon.width, ribbon.extra, built, units)));
    words.sentences.append(formWords(ribbon.shape->form));
    if (ribbon.shape->form != BowForm::TwoLoops)
      words.sentences.append(GuideTr::tr("Close the middle band round it, its seam behind."));
    words.sentences.append(ribbon.shape->face
                               ? GuideTr::tr("Glue it onto %1.")
                                     .arg(ontoWords(step.extra, *ribbon.shape->face, {}, built))
                               : GuideTr::tr("Glue it on where the ribbon crosses."));
  }
  return words;
}

StepWords wordFilm(const Step& step, const BuiltDesign& built) {
  StepWords words;
  words.title = titleOf(ExtraAct::GlueFilmIn);
  const BuiltPiece& film = built.pieces.at(static_cast<std::size_t>(step.pieces.front()));
  words.sentences.append(
      GuideTr::tr("Put narrow tape or glue round the opening of “%1”, on the inside.")
          .arg(faceWords(film.role->faces.front(), built)));
  words.sentences.append(GuideTr::tr("Press the film on; it must not reach a fold."));
  return words;
}

bool isOnBand(const RibbonNeed& ribbon, const BuiltDesign& built) {
  return std::ranges::any_of(
             built.pieces,
             [](const BuiltPiece& piece) {
               return piece.role && piece.role->placing == Placing::Round;
             }) &&
         ribbon.ways.size() == 1;
}

/// How a ribbon goes round; one on which a bow is glued is closed by a lap.
QString roundWords(const RibbonNeed& ribbon, const BuiltDesign& built) {
  const bool bowLater = std::ranges::any_of(
      built.ribbons, [](const RibbonNeed& other) { return other.shape && other.shape->crossing; });
  if (ribbon.cross) {
    return bowLater ? GuideTr::tr("Lay it under the box, cross it on top, and glue its ends there.")
                    : GuideTr::tr("Lay it under the box, cross it on top, and tie a bow.");
  }
  if (isOnBand(ribbon, built)) {
    return bowLater ? GuideTr::tr("Lay it once round along the band and glue its ends on top.")
                    : GuideTr::tr("Lay it once round along the band and tie a bow.");
  }
  return bowLater ? GuideTr::tr("Lay it once round the box and glue its ends on top.")
                  : GuideTr::tr("Lay it once round the box and tie a bow.");
}

StepWords wordRibbon(const Step& step, const BuiltDesign& built, GuideUnits units) {
  StepWords words;
  words.title = titleOf(ExtraAct::TieRibbon);
  for (const RibbonNeed& ribbon : built.ribbons) {
    if (ribbon.extra != step.extra) continue;
    words.sentences.append(
        GuideTr::tr("Cut %1.", "a length of ribbon")
            .arg(ribbonWords(ribbon.length, ribbon.width, ribbon.extra, built, units)));
    words.sentences.append(roundWords(ribbon, built));
  }
  return words;
}

/// How the ends of a pull are held inside.
QString endWords(const RibbonPull& pull) {
  if (pull.taped)
    return GuideTr::tr("Stick both ends flat onto the inside with tape, as the figure shows.");
  return pull.holes == 2
             ? GuideTr::tr("Tie a knot in each end inside; it must not slip through the hole.")
             : GuideTr::tr("Knot both ends together inside; the knot must not slip through.");
}

StepWords wordPull(const Step& step, const BuiltDesign& built, GuideUnits units) {
  StepWords words;
  words.title = titleOf(ExtraAct::ThreadPull);
  for (const RibbonNeed& ribbon : built.ribbons) {
    if (ribbon.extra != step.extra || !ribbon.pull) continue;
    const RibbonPull& pull = *ribbon.pull;
    words.sentences.append(
        GuideTr::tr("Cut %1.", "a length of ribbon")
            .arg(ribbonWords(ribbon.length, ribbon.width, ribbon.extra, built, units)));
    words.sentences.append(
        (pull.holes == 2 ? GuideTr::tr("Thread one end through each hole of “%1” from outside, "
                                       "until the loop stands out %2.")
                         : GuideTr::tr("Lay it double and thread both ends through the hole of "
                                       "“%1” from outside, until the loop stands out %2."))
            .arg(faceWords(pull.face, built), guideLength(Length::mm(pull.reach), units)));
    words.sentences.append(endWords(pull));
  }
  return words;
}

StepWords plain(const QString& title, const QString& sentence) { return {title, {sentence}, {}}; }

StepWords wordPartition(const Step& step, const BuiltDesign& built) {
  StepWords words;
  words.title = titleOf(ExtraAct::SetPartitionIn);
  const auto nameOf = [&](std::size_t i) {
    return pieceTitle(built.pieces.at(static_cast<std::size_t>(step.pieces.at(i))).name);
  };
  words.sentences.append(
      GuideTr::tr("Stand each “%1” with its slots up and push each “%2” down into them, slot into "
                  "slot.")
          .arg(nameOf(0), nameOf(1)));
  words.sentences.append(GuideTr::tr("Set it into the box and let it stand on the floor."));
  words.checks.append(GuideTr::tr("The upper edges are level and no divider bulges."));
  return words;
}

StepWords wordsOf(const Step& step, const BuiltDesign& built, GuideUnits units) {
  switch (kindOf(built, step.extra).act) {
    case ExtraAct::GlueMatsOn:
    case ExtraAct::GlueMatsIn:
      return wordMats(step, built);
    case ExtraAct::GlueLabelOn:
      return wordLabel(step, built, units);
    case ExtraAct::GlueFilmIn:
      return wordFilm(step, built);
    case ExtraAct::GlueBowOn:
      return wordBow(step, built, units);
    case ExtraAct::TieRibbon:
      return wordRibbon(step, built, units);
    case ExtraAct::SlideBandOn:
      return plain(titleOf(ExtraAct::SlideBandOn),
                   GuideTr::tr("Slide the band round the box, its seam at the back."));
    case ExtraAct::SlideIntoSleeve:
      return plain(titleOf(ExtraAct::SlideIntoSleeve),
                   GuideTr::tr("Push it in from one end until both ends are flush."));
    case ExtraAct::TieTagOn:
      return plain(titleOf(ExtraAct::TieTagOn),
                   GuideTr::tr("Thread ribbon or string through the hole and tie the tag on."));
    case ExtraAct::SetInsertIn:
      return plain(titleOf(ExtraAct::SetInsertIn),
                   GuideTr::tr("Set the insert into the box, its opening up."));
    case ExtraAct::ThreadPull:
      return wordPull(step, built, units);
    case ExtraAct::SetPartitionIn:
      return wordPartition(step, built);
    case ExtraAct::LaySlipIn:
      return plain(titleOf(ExtraAct::LaySlipIn),
                   GuideTr::tr("Lay it flat into the box; the product goes onto it."));
  }
  return {};
}

}  // namespace

bool isColoured(const Card& card) { return card.colours != CardColours(); }

QString ribbonWords(Length length, Length width, int extra, const BuiltDesign& built,
                    GuideUnits units) {
  const std::optional<Colour> colour = ribbonColour(built, extra);
  const QString extent = guideLength(length, units);
  const QString wide = guideLength(width, units);
  return colour ? GuideTr::tr("%1 of ribbon, %2 wide, %3", "length, width, colour")
                      .arg(extent, wide, colourName(*colour))
                : GuideTr::tr("%1 of ribbon, %2 wide").arg(extent, wide);
}

StepWords wordExtra(const Step& step, const BuiltDesign& built, GuideUnits units) {
  StepWords words = wordsOf(step, built, units);
  if (step.turn) words.sentences.prepend(turnSentence());
  return words;
}

}  // namespace creasewright
