#include "papers/guide/guide_words.h"

#include <algorithm>

#include "base/excerpt.h"
#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "document/with_punches.h"
#include "guide/guide_time.h"
#include "papers/guide/step_words.h"

namespace creasewright {

namespace {

/// A sheet of something else than the box's card, or of card with a colour, by its name.
QString otherCardWords(const Supply& supply, const BuiltPiece& piece, GuideUnits units) {
  return GuideTr::tr("%n sheet(s) of %1, %2, for the piece “%3”", "", supply.quantity)
      .arg(cardName(piece.card), guideSize({supply.width, supply.height}, units),
           pieceTitle(piece.name));
}

QString supplyWords(const Supply& supply, const Guide& guide, const BuiltDesign& built,
                    GuideUnits units) {
  switch (supply.kind) {
    case SupplyKind::Card: {
      const QString size = guideSize({supply.width, supply.height}, units);
      if (supply.piece >= 0) {
        const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(supply.piece));
        if (piece.card != built.design.card || isColoured(piece.card))
          return otherCardWords(supply, piece, units);
      }
      if (guide.pieces.size() < 2 || supply.piece < 0)
        return GuideTr::tr("%n sheet(s) of card, %1", "", supply.quantity).arg(size);
      const GuidePiece& piece = guide.pieces.at(static_cast<std::size_t>(supply.piece));
      return GuideTr::tr("%n sheet(s) of card, %1, for the piece “%2”", "", supply.quantity)
          .arg(size, pieceTitle(piece.name));
    }
    case SupplyKind::Tape:
      return GuideTr::tr("Double-sided tape %1 wide: %n strip(s), %2 in all", "", supply.quantity)
          .arg(guideLength(supply.width, units), tapeLength(supply.length, units));
    case SupplyKind::LiquidGlue:
      return GuideTr::tr("Liquid glue for %n place(s)", "", supply.quantity);
    case SupplyKind::FoamDots:
      return GuideTr::tr("%n foam dot(s), %1 thick", "", supply.quantity)
          .arg(guideLength(supply.width, units));
    case SupplyKind::Ribbon:
      return ribbonWords(supply.length, supply.width, supply.extra, built, units);
  }
  return {};
}

/// How far a common roll of tape goes: 25 yd where inches are read, else 25 m (common practice, no
/// published source).
QString rollWords(Length length, GuideUnits units) {
  constexpr double kRoll = 25'000;       // mm
  constexpr double kYards = 25 * 914.4;  // mm
  const auto pieces = [length](double roll) {
    return std::max(1, static_cast<int>(roll / length.mm()));
  };
  if (units == GuideUnits::Millimetre)
    return GuideTr::tr("(a roll of 25 m does for %n)", "", pieces(kRoll));
  return GuideTr::tr("(a roll of 25 yd does for %n)", "", pieces(kYards));
}

/// The same in few words.
QString tapeWords(const Supply& tape, GuideUnits units) {
  return GuideTr::tr("Double-sided tape, %1: %2 in all")
      .arg(guideLength(tape.width, units), tapeLength(tape.length, units));
}

/// A, B … Z, AA, AB …
QString letterOf(std::size_t index) {
  QString letter;
  for (std::size_t rest = index + 1; rest > 0; rest = (rest - 1) / 26)
    letter.prepend(QChar(static_cast<char16_t>(u'A' + (rest - 1) % 26)));
  return letter;
}

PartWords partWords(std::size_t index, const Supply& supply, const BuiltDesign& built,
                    GuideUnits units) {
  const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(supply.piece));
  return {letterOf(index), pieceTitle(piece.name), QStringLiteral("%1 ×").arg(supply.quantity),
          guideSize({supply.width, supply.height}, units), cardName(piece.card)};
}

/// What is made for one hand.
QString leftToolWords(ToolCode tool) {
  if (tool == ToolCode::ScoringBoard)
    return GuideTr::tr("Scoring board with its stop at your right, and scoring tool");
  if (tool == ToolCode::Knife) return GuideTr::tr("Left-handed scissors, or a craft knife");
  if (tool == ToolCode::SafetyRuler) return GuideTr::tr("Safety ruler with numbers from the right");
  return {};
}

/// How far a lever punch reaches and what it takes: common practice, no published source.
QString punchWords(const BuiltDesign& built) {
  QStringList names;
  for (const Punch& punch : punchesFor(built)) names.append(punchName(punch));
  return GuideTr::tr(
             "Punches: %1 (they reach 30 to 40 mm in from an edge, through card of up to "
             "250 g/m²)")
      .arg(names.join(QStringLiteral(", ")));
}

QString toolWords(ToolCode tool, const BuiltDesign& built, GuideUnits units) {
  switch (tool) {
    case ToolCode::Punch:
      return punchWords(built);
    case ToolCode::Trimmer:
      return GuideTr::tr("Paper trimmer");
    case ToolCode::ScoringBoard:
      return GuideTr::tr("Scoring board and scoring tool");
    case ToolCode::Stylus:
      return units == GuideUnits::Millimetre
                 ? GuideTr::tr("Ball stylus, 1 to 1.5 mm")
                 : GuideTr::tr("Ball stylus with a fine ball, about 1/16 in");
    case ToolCode::BoneFolder:
      return GuideTr::tr("Bone folder");
    case ToolCode::Knife:
      return GuideTr::tr("Scissors, or a craft knife");
    case ToolCode::CuttingMat:
      return GuideTr::tr("Cutting mat");
    case ToolCode::SafetyRuler:
      return GuideTr::tr("Safety ruler");
  }
  return {};
}

QString cautionWords(CautionCode caution) {
  switch (caution) {
    case CautionCode::Trimmer:
      return GuideTr::tr(
          "The trimmer’s blade is sharp: keep fingers behind the guard, lock the blade after use, "
          "and let adults cut for children.");
    case CautionCode::Knife:
      return GuideTr::tr(
          "Blades are sharp: work on a cutting mat along a safety ruler, keep your hand behind the "
          "blade, and let adults cut for children.");
    case CautionCode::HotGlue:
      return GuideTr::tr(
          "Hot glue burns: if you use it in place of liquid glue, let adults do it and keep water "
          "at hand to cool skin.");
    case CautionCode::FoodContact:
      return GuideTr::tr(
          "Card, ink, glue and tape may touch food only if their maker says so: wrap food, or line "
          "the box.");
    case CautionCode::SmallParts:
      return GuideTr::tr("Small parts can be swallowed: not for children under three.");
    case CautionCode::Flames:
      return GuideTr::tr(
          "No flames in or near card: use LED lights only, with the battery compartment secured.");
  }
  return {};
}

QString levelWords(int level) {
  return level <= 1   ? GuideTr::tr("A first lesson")
         : level == 2 ? GuideTr::tr("With some practice")
                      : GuideTr::tr("For practised hands");
}

/// Says which piece a step is about where the step before left another in the hands.
class PieceInHand {
 public:
  explicit PieceInHand(const Guide& guide) : guide_(guide) {}

  void tell(const Step& step, StepWords& words) {
    switch (step.code) {
      case StepCode::TrimBlank:
        inHand_ = step.pieces.empty() ? step.piece : -1;
        return;
      case StepCode::GluePieces:
      case StepCode::PutTogether:
        inHand_ = -1;
        return;
      case StepCode::PutIn:
      case StepCode::AddExtra:
        return;
      case StepCode::ScoreSides:
      case StepCode::ShortScores:
      case StepCode::ScoreFreely:
      case StepCode::FoldAndBurnish:
      case StepCode::CutOpenings:
      case StepCode::CutSlits:
      case StepCode::CutWaste:
      case StepCode::CutMitres:
      case StepCode::CutTapers:
      case StepCode::CutNotches:
      case StepCode::CutCurves:
      case StepCode::ApplyAdhesive:
      case StepCode::FoldStage:
        break;
    }
    if (step.piece == inHand_) return;
    inHand_ = step.piece;
    const GuidePiece& piece = guide_.pieces.at(static_cast<std::size_t>(step.piece));
    words.sentences.prepend(
        GuideTr::tr("Take the piece “%1” in hand.").arg(pieceTitle(piece.name)));
  }

 private:
  const Guide& guide_;
  int inHand_ = -1;
};

}  // namespace

QStringList StepWords::paragraphs() const {
  if (list || sentences.isEmpty()) return sentences;
  return {sentences.join(QLatin1Char(' '))};
}

QStringList GuideWords::facts() const {
  QStringList facts{style, size, level, time, hand};
  facts.removeAll(QString());
  return facts;
}

GuideWords wordGuide(const Guide& guide, const BuiltDesign& built, GuideUnits units) {
  GuideWords words;
  words.style = built.style == nullptr ? QString() : styleTitle(built.design);
  words.title = guide.title.empty() ? words.style : text(guide.title);
  if (guide.finishedHeight > Length()) {
    words.size =
        finishedSize({guide.finishedLength, guide.finishedWidth, guide.finishedHeight}, units);
  }
  constexpr std::size_t kMostOfNotes = 240;  // letters
  if (!built.design.notes.empty()) words.notes = text(excerpt(built.design.notes, kMostOfNotes));
  words.level = levelWords(guide.level);
  if (guide.hand == Hand::Left) words.hand = GuideTr::tr("For the left hand");
  words.time = GuideTr::tr("about %n minute(s)", "", minutesFor(guide));
  for (const Supply& supply : guide.supplies) {
    words.supplies.append(supplyWords(supply, guide, built, units));
    if (supply.kind == SupplyKind::Tape && supply.length > Length())
      words.supplies.last() += QLatin1Char(' ') + rollWords(supply.length, units);
    if (supply.kind == SupplyKind::Card && supply.piece >= 0) {
      words.parts.push_back(partWords(words.parts.size(), supply, built, units));
    } else {
      words.sticking.append(supply.kind == SupplyKind::Tape ? tapeWords(supply, units)
                                                            : words.supplies.last());
    }
  }
  const bool left = guide.hand == Hand::Left;
  for (const ToolCode tool : guide.tools) {
    const QString own = left ? leftToolWords(tool) : QString();
    words.tools.append(own.isEmpty() ? toolWords(tool, built, units) : own);
  }
  for (const CautionCode caution : guide.cautions) words.cautions.append(cautionWords(caution));
  words.cautions.append(GuideTr::tr("Follow local rules."));
  PieceInHand inHand(guide);
  for (const Step& step : guide.steps) {
    words.steps.push_back(wordStep(step, guide, built, units));
    inHand.tell(step, words.steps.back());
  }
  return words;
}

QString suppliesHeading() { return GuideTr::tr("You need"); }
QString partsHeading() { return GuideTr::tr("Parts to cut"); }
QString toolsHeading() { return GuideTr::tr("Tools"); }
QString cautionsHeading() { return GuideTr::tr("Take care"); }
QString stepsHeading() { return GuideTr::tr("Steps"); }

}  // namespace creasewright
