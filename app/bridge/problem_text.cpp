#include "bridge/problem_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>

#include "base/excerpt.h"
#include "base/problem_extra.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "edits/kinds/edit_kind.h"
#include "extras/extra_kind.h"

namespace creasewright {

namespace {

constexpr std::size_t kLongestValue = 240;  // bytes; a list of pieces may be long

struct Say {
  Q_DECLARE_TR_FUNCTIONS(problems)
};

QString number(double value) {
  return QLocale().toString(value, 'f', std::abs(value) < 10 ? 2 : 0);
}

QString valueWords(const ProblemValue& value, Unit unit) {
  struct Visitor {
    Unit unit;
    QString operator()(Length v) const { return lengthText(v, unit); }
    QString operator()(Angle v) const { return number(v.degrees()) + QChar(0x00B0); }
    QString operator()(std::int64_t v) const {
      return QLocale().toString(static_cast<qlonglong>(v));
    }
    QString operator()(double v) const { return number(v); }
    QString operator()(const std::string& v) const { return text(excerpt(v, kLongestValue)); }
  };
  return std::visit(Visitor{unit}, value);
}

/// The problem's values as words; a value that is not there reads as an ellipsis.
class Values {
 public:
  Values(const Problem& problem, Unit unit) : problem_(problem), unit_(unit) {}

  [[nodiscard]] QString at(std::size_t index) const {
    return index < problem_.values.size() ? valueWords(problem_.values[index], unit_)
                                          : QStringLiteral("…");
  }
  [[nodiscard]] QString titleAt(std::size_t index) const { return quoted(styleText(raw(index))); }
  /// Of card, which everybody measures in millimetres.
  [[nodiscard]] QString thicknessAt(std::size_t index) const {
    return index < problem_.values.size() ? valueWords(problem_.values[index], Unit::Millimetre)
                                          : at(index);
  }
  /// A limit, which must hold as it is printed.
  [[nodiscard]] QString limitAt(std::size_t index) const {
    const auto* length =
        index < problem_.values.size() ? std::get_if<Length>(&problem_.values[index]) : nullptr;
    return length == nullptr ? at(index) : limitText(*length, unit_);
  }
  [[nodiscard]] std::size_t count() const { return problem_.values.size(); }
  [[nodiscard]] QString panelAt(std::size_t index) const { return quoted(panelTitle(raw(index))); }
  [[nodiscard]] QString stageAt(std::size_t index) const { return stageTitle(raw(index)); }
  [[nodiscard]] QString panel() const { return quoted(panelTitle(problem_.where)); }
  /// By the title it has in its own style, where the problem tells it.
  [[nodiscard]] QString parameter() const {
    const auto* title =
        problem_.values.size() > 2 ? std::get_if<std::string>(&problem_.values[2]) : nullptr;
    const QString own =
        quoted(title == nullptr ? parameterTitle(problem_.where) : styleText(*title));
    if (extraOfMeasure(problem_).empty()) return own;
    return Say::tr("%1 of the extra “%2”").arg(own, extraAt(3));
  }
  [[nodiscard]] QString piece() const { return quoted(pieceTitle(problem_.where)); }
  [[nodiscard]] QString extra() const { return extraTitle(problem_.where); }
  [[nodiscard]] QString edit() const { return quoted(editTitle(problem_.where)); }
  /// The measure of an edit by its key, as formulas and the command line write it.
  [[nodiscard]] QString measure() const { return quoted(text(problem_.where)); }
  [[nodiscard]] QString extraAt(std::size_t index) const { return extraTitle(raw(index)); }
  /// All values as kinds of extras.
  [[nodiscard]] QString extraList() const {
    QStringList titles;
    for (std::size_t i = 0; i < problem_.values.size(); ++i) titles.append(quoted(extraAt(i)));
    return titles.join(QStringLiteral(", "));
  }
  [[nodiscard]] QString faceNameAt(std::size_t index) const { return faceTitle(raw(index)); }
  [[nodiscard]] QString faceAt(std::size_t index) const { return quoted(faceTitle(raw(index))); }
  /// A panel, or a piece of the box.
  [[nodiscard]] QString partAt(std::size_t index) const {
    const std::string name = raw(index);
    const QString piece = pieceTitle(name);
    return quoted(piece == text(name) ? panelTitle(name) : piece);
  }
  /// A piece of an extra, or the kind of one without a piece.
  [[nodiscard]] QString coverAt(std::size_t index) const {
    const std::string name = raw(index);
    const QString piece = pieceTitle(name);
    return quoted(piece == text(name) ? extraTitle(name) : piece);
  }
  [[nodiscard]] QString where() const { return text(pathExcerpt(problem_.where)); }

 private:
  [[nodiscard]] std::string raw(std::size_t index) const {
    const auto* held = index < problem_.values.size()
                           ? std::get_if<std::string>(&problem_.values[index])
                           : nullptr;
    return held != nullptr ? *held : std::string("…");
  }
  static QString quoted(const QString& name) { return Say::tr("“%1”").arg(name); }

  const Problem& problem_;
  Unit unit_;
};

QString axisTitle(const std::string& axis) {
  if (axis == "length") return Say::tr("along its length");
  if (axis == "width") return Say::tr("across its width");
  return Say::tr("in its height");
}

/// What is wrong inside, as a sentence of its own.
QString insideSentence(const Problem& problem, Unit unit) {
  const auto textAt = [&](std::size_t index) {
    const auto* held =
        index < problem.values.size() ? std::get_if<std::string>(&problem.values[index]) : nullptr;
    return held == nullptr ? std::string() : *held;
  };
  const std::optional<ProblemCode> code = codeNamed(textAt(0));
  if (!code || *code == ProblemCode::StylePieceBroken || problem.values.size() < 2)
    return Say::tr("a part of it does not hold.");
  const Problem inside{*code, textAt(1), {problem.values.begin() + 2, problem.values.end()}};
  return problemSentence(inside, unit);
}

/// A measure may be a style's, an extra's, a layer's or an edit's.
QString unknownMeasureSentence(const Problem& problem, const Values& v) {
  if (problem.where == "layer") {
    return Say::tr("A layer has no measure “%1”. “creasewright extras” lists the ones it has.")
        .arg(v.at(0));
  }
  if (findExtraKind(problem.where)) {
    return Say::tr(
               "The extra “%1” has no measure “%2”. “creasewright extras” lists the ones it has.")
        .arg(v.extra(), v.at(0));
  }
  if (findEditKind(problem.where)) {
    return Say::tr("The edit %1 has no measure “%2”. “creasewright edits” lists the ones it has.")
        .arg(v.edit(), v.at(0));
  }
  return Say::tr("The style %1 has no measure “%2”. “creasewright styles” lists the ones it has.")
      .arg(v.where(), v.at(0));
}

QString cavitySentence(const Problem& problem, const Values& v) {
  QStringList changes;
  for (std::size_t i = 3; i + 2 < v.count(); i += 3)
    changes += Say::tr("%1 %2 or more").arg(v.titleAt(i + 2), v.limitAt(i + 1));
  if (!changes.isEmpty()) {
    return Say::
        tr("The folded piece leaves %1 for the product %2, and %3 is needed. Make %4, or choose "
           "a snugger ease.")
            .arg(v.at(0), axisTitle(problem.where), v.at(1), changes.join(QStringLiteral(", ")));
  }
  return Say::tr(
             "The folded piece leaves %1 for the product %2, and %3 is needed. This style does not "
             "suit the product: choose another style or a snugger ease.")
      .arg(v.at(0), axisTitle(problem.where), v.at(1));
}

QString unsuitedSentence(const Values& v) {
  if (v.count() < 2) {
    return Say::tr(
               "This style cannot be made of this card: nothing is right for %1. Choose thinner "
               "card or another style.")
        .arg(v.parameter());
  }
  return Say::tr(
             "This style does not suit the product: %1 would have to be %2, and %3 is the most it "
             "can be. Choose another style.")
      .arg(v.parameter(), v.at(0), v.at(1));
}

/// Which of its sides is meant, or nothing where that is its length.
std::string sideOf(const Problem& problem) {
  const auto* side =
      problem.values.size() > 2 ? std::get_if<std::string>(&problem.values[2]) : nullptr;
  return side == nullptr ? std::string() : *side;
}

QString extraTooLarge(const Problem& problem) {
  if (sideOf(problem) == "width")
    return Say::tr("The extra “%1” is %2 wide, and %3 is the most that fits. Make it %3 or less.");
  if (sideOf(problem) == "height")
    return Say::tr("The extra “%1” is %2 high, and %3 is the most that fits. Make it %3 or less.");
  return Say::tr("The extra “%1” is %2 long, and %3 is the most that fits. Make it %3 or less.");
}

QString insideSmall(const Problem& problem) {
  if (sideOf(problem) == "width")
    return Say::tr(
        "The extra “%1” needs %2 across the inside of the box, and there is only %3. Make the box "
        "wider, or leave it out.");
  return Say::tr(
      "The extra “%1” needs %2 along the inside of the box, and there is only %3. Make the box "
      "longer, or leave it out.");
}

/// What an unknown name, the first value, is like: the others.
QString namesLikeIt(const Values& v) {
  QStringList near;
  for (std::size_t i = 1; i < v.count(); ++i) near += v.at(i);
  return near.join(QStringLiteral(", "));
}

/// With the colours that the name is like, where there are any.
QString unknownColour(const Values& v) {
  const QString near = namesLikeIt(v);
  if (near.isEmpty()) {
    return Say::tr(
               "There is no colour “%1”. Write one that “creasewright cards” lists, or its sRGB "
               "value, such as #9AAF90.")
        .arg(v.at(0));
  }
  return Say::tr(
             "There is no colour “%1”. Like it are: %2. An sRGB value will do too, such as "
             "#9AAF90.")
      .arg(v.at(0), near);
}

/// The same of a row of a table.
QString rowColour(const Values& v) {
  QStringList near;
  for (std::size_t i = 2; i < v.count(); ++i) near += v.at(i);
  if (near.isEmpty()) {
    return Say::tr(
               "Row %2 of “%1” has the colour “%3”, which is not known. Write one that "
               "“creasewright cards” lists, as in sage or sage/cream, or its sRGB value, such as "
               "#9AAF90.")
        .arg(v.where(), v.at(0), v.at(1));
  }
  return Say::tr(
             "Row %2 of “%1” has the colour “%3”, which is not known. Like it are: %4. An sRGB "
             "value will do too, such as #9AAF90.")
      .arg(v.where(), v.at(0), v.at(1), near.join(QStringLiteral(", ")));
}

/// With the patterns that the name is like, where there are any.
QString unknownPattern(const Values& v) {
  const QString near = namesLikeIt(v);
  return near.isEmpty() ? Say::tr(
                              "There is no pattern “%1”. Choose one that “creasewright "
                              "patterns” lists.")
                              .arg(v.at(0))
                        : Say::tr("There is no pattern “%1”. Like it are: %2.").arg(v.at(0), near);
}

QString unreadablePattern(const Problem& problem, const Values& v) {
  if (problem.where == "turn")
    return Say::tr("“%1” is no turn of a pattern. Give whole degrees from 0 to 359.").arg(v.at(0));
  if (problem.where == "side")
    return Say::tr("“%1” is no side of a card. Write face or back.").arg(v.at(0));
  if (problem.where == "tiled" || problem.where == "plate")
    return Say::tr("“%1” says neither yes nor no.").arg(v.at(0));
  if (problem.where == "shift")
    return Say::tr("“%1” is no shift of a picture. Give a length from −1 m to 1 m, such as -5mm.")
        .arg(v.at(0));
  return Say::tr(
             "“%1” says nothing about a pattern. Write ID:scale=12mm:turn=45:"
             "colours=sage,cream:side=face and leave out what you do not need.")
      .arg(v.at(0));
}

/// With the cards that the name is like, where there are any.
QString unknownCard(const Values& v) {
  const QString near = namesLikeIt(v);
  if (near.isEmpty()) {
    return Say::tr(
               "There is no card “%1”. Choose one that “creasewright cards” lists, or give its "
               "thickness, such as 0.3mm, 12pt or 300gsm.")
        .arg(v.at(0));
  }
  return Say::tr(
             "There is no card “%1”. Like it are: %2. Choose one, or give a thickness, such as "
             "0.3mm, 12pt or 300gsm.")
      .arg(v.at(0), near);
}

}  // namespace

// One case a code and no default, so that a new code cannot stay without words.
QString problemSentence(const Problem& problem, Unit unit) {
  const Values v(problem, unit);
  switch (problem.code) {
    case ProblemCode::LengthUnreadable:
      return Say::tr("“%1” is not a length. Type something like 2 5/16 in, 58.7 mm or 5,87 cm.")
          .arg(v.at(0));
    case ProblemCode::LengthOutOfRange:
      return Say::tr("“%1” is too large for a length. Stay below 100 m.").arg(v.at(0));
    case ProblemCode::LengthZeroDivision:
      return Say::tr("“%1” divides by zero. Type a fraction such as 5/16.").arg(v.at(0));
    case ProblemCode::DuplicateName:
      return Say::tr("Two panels are called %1. Give one of them another name.").arg(v.panel());
    case ProblemCode::PanelNotSimple:
      return Say::tr("The outline of %1 crosses itself. Change the measures beside it.")
          .arg(v.panel());
    case ProblemCode::PanelTooSmall:
      return Say::tr("The panel %1 has only %2 mm² left. Make the measures beside it larger.")
          .arg(v.panel(), v.at(0));
    case ProblemCode::PanelsOverlap:
      return Say::tr(
                 "The panels %1 and %2 overlap on the sheet by %3 mm². Make one of them shorter or "
                 "narrower.")
          .arg(v.panel(), v.panelAt(0), v.at(1));
    case ProblemCode::CreaseOffPanel:
      return Say::tr(
                 "The score between %1 and %2 leaves the edge they share. Make the flap no longer "
                 "than that edge.")
          .arg(v.panel(), v.panelAt(0));
    case ProblemCode::CreaseTooShort:
      return Say::tr("The score of %1 is only %2 long. Make the flap wider at its score.")
          .arg(v.panel(), v.at(0));
    case ProblemCode::FlapTooNarrow:
      return Say::tr(
                 "The flap %1 is %2 wide; adhesive needs %3. Make the flap wider or choose thinner "
                 "card.")
          .arg(v.panel(), v.at(0), v.at(1));
    case ProblemCode::OpeningOutside:
      return Say::tr("An opening reaches over the edge of %1. Make it smaller or move it inwards.")
          .arg(v.panel());
    case ProblemCode::MateUnknownPanel:
      return Say::tr("%1 is to be joined to a panel that does not exist. Name a panel of this net.")
          .arg(v.panel());
    case ProblemCode::NetInPieces:
      return Say::tr(
                 "The net falls into %1 pieces. Every panel must hang on the others by a score.")
          .arg(v.at(0));
    case ProblemCode::MateOffPlane:
      return Say::tr(
                 "Folded, %1 stands %3 away from %2. Change the measures between them so that they "
                 "meet.")
          .arg(v.panel(), v.panelAt(0), v.at(1));
    case ProblemCode::MateOutsideTarget:
      return Say::tr("Folded, %3 percent of %1 reaches past %2. Make the flap smaller.")
          .arg(v.panel(), v.panelAt(0), v.at(1));
    case ProblemCode::CreaseMissesRim:
      return Say::tr(
                 "Folded, the score of %1 lies %3 away from the edge of %2. Change the measures "
                 "between them so that they meet.")
          .arg(v.panel(), v.panelAt(0), v.at(1));
    case ProblemCode::LoopOpen:
      return Say::tr(
                 "Folded, the creases round %1 leave a gap of %2. Change the measures beside it so "
                 "that they meet.")
          .arg(v.panel(), v.at(0));
    case ProblemCode::PanelsCollide:
      return Say::tr(
                 "On the way, in the step “%3”, %1 would pass through %2. Fold in another order "
                 "or make one of them shorter.")
          .arg(v.panel(), v.panelAt(0), v.stageAt(1));
    case ProblemCode::CavityTooSmall:
      return cavitySentence(problem, v);
    case ProblemCode::UnknownStyle:
      return Say::tr("There is no style “%1”. Choose one that “creasewright styles” lists.")
          .arg(v.at(0));
    case ProblemCode::UnknownParameter:
      return unknownMeasureSentence(problem, v);
    case ProblemCode::ParameterUnreadable:
      if (v.count() > 1) {
        return Say::tr("“%2” is no choice for %1. Choose one of these: %3.")
            .arg(v.parameter(), v.at(0), v.at(1));
      }
      return Say::tr(
                 "“%2” cannot be read as %1. Type a length such as 2 5/16 in or 58.7 mm, or a "
                 "whole "
                 "number where pieces are counted.")
          .arg(v.parameter(), v.at(0));
    case ProblemCode::ParameterTooSmall:
      return Say::tr("%1 is %2, and %3 is the least that works here. Make it %3 or more.")
          .arg(v.parameter(), v.at(0), v.limitAt(1));
    case ProblemCode::ParameterTooLarge:
      return Say::tr("%1 is %2, and %3 is the most that fits here. Make it %3 or less.")
          .arg(v.parameter(), v.at(0), v.limitAt(1));
    case ProblemCode::StyleUnsuited:
      return unsuitedSentence(v);
    case ProblemCode::ProductUnreadable:
      return Say::tr(
                 "“%1” is not a product. Type something like box:60x35x120mm, cylinder:40x120mm, "
                 "sphere:42.7mm, tube:35x20x110mm or card:85.6x54x0.76mm.")
          .arg(v.at(0));
    case ProblemCode::ProductTooLarge:
      return Say::tr("A side of the product is %1. Stay at %2 or below.").arg(v.at(0), v.at(1));
    case ProblemCode::ProductTooSmall:
      return Say::tr("A side of the product is %1. Make it at least %2.").arg(v.at(0), v.at(1));
    case ProblemCode::CardUnknown:
      return unknownCard(v);
    case ProblemCode::CardTooThick:
      return Say::tr("The card is %1 thick. Choose one of %2 or less.")
          .arg(v.thicknessAt(0), v.thicknessAt(1));
    case ProblemCode::ColourUnknown:
      return unknownColour(v);
    case ProblemCode::PatternUnknown:
      return unknownPattern(v);
    case ProblemCode::PatternUnreadable:
      return unreadablePattern(problem, v);
    case ProblemCode::PatternScaleOff:
      return Say::tr("A pattern cannot repeat every “%1”. Choose a scale from %2 to %3.")
          .arg(v.at(0), v.at(1), v.at(2));
    case ProblemCode::PatternColours:
      return Say::tr("The pattern %1 has %3 colours, not %2. Leave some out.")
          .arg(text(problem.where), v.at(0), v.at(1));
    case ProblemCode::PictureNoFile:
      return Say::tr(
          "No file of the picture is named. Write picture:FILE, such as picture:leaves.png.");
    case ProblemCode::EaseUnknown:
      return Say::tr("There is no ease “%1”. Choose snug, easy or loose.").arg(v.at(0));
    case ProblemCode::GridUnknown:
      return Say::tr("There is no tool grid “%1”. Choose 1/8in, 1/16in, 1mm or none.").arg(v.at(0));
    case ProblemCode::ExtraUnknown:
      return Say::tr("There is no extra “%1”. Choose one that “creasewright extras” lists.")
          .arg(v.at(0));
    case ProblemCode::ExtraNoPlace:
      if (!problem.values.empty()) {
        return Say::tr(
                   "The extra “%1” would run through the air over the open box. Put a band or a "
                   "sleeve round the box too, or choose a box with a lid.")
            .arg(v.extra());
      }
      return Say::tr(
                 "The extra “%1” finds no place on this box. Leave it out or choose another style.")
          .arg(v.extra());
    case ProblemCode::ExtraFaceUnknown:
      return Say::tr(
                 "The extra “%1” belongs to a face “%2” that does not show. Choose another face.")
          .arg(v.extra(), v.faceNameAt(0));
    case ProblemCode::ExtraTooLarge:
      return extraTooLarge(problem).arg(v.extra(), v.at(0), v.limitAt(1));
    case ProblemCode::ExtraInTheWay:
      return Say::tr(
                 "The extra “%1” finds no room on %2 beside %3. Make it smaller or choose another "
                 "face.")
          .arg(v.extra(), v.faceAt(0), v.partAt(1));
    case ProblemCode::ExtraCovered:
      return Say::tr(
                 "The extra “%1” on %2 is covered, at least in part, by the extra “%3”. Make one "
                 "of them smaller or choose another face.")
          .arg(v.extra(), v.faceAt(0), v.extraAt(1));
    case ProblemCode::ExtraHostUnknown:
      return Say::tr(
                 "The extra “%1” is to go on “%2”, and this design has no such extra. Write “box”, "
                 "“outermost”, or the name or the number of an extra.")
          .arg(v.extra(), v.at(0));
    case ProblemCode::ExtraHostUnfit:
      return Say::tr("The extra “%1” cannot go on “%2”. Choose another place for it.")
          .arg(v.extra(), v.extraAt(0));
    case ProblemCode::ExtraHostCircle:
      return Say::tr(
                 "These extras lie on one another in a circle, so that none lies on the box: %1. "
                 "Let one of them lie on the box.")
          .arg(v.extraList());
    case ProblemCode::ExtraOffFace:
      return Say::
          tr("The extra “%1” would stick out over the edge of %2 at its place. Move it inwards, "
             "make it smaller, or let it overhang.")
              .arg(v.extra(), v.faceAt(0));
    case ProblemCode::ExtraOverFoam:
      return Say::
          tr("The extra “%1” cannot slide over the extra “%2”, which is held by foam. Glue that "
             "flat, or put it onto the band.")
              .arg(v.extra(), v.extraAt(0));
    case ProblemCode::ExtraInAir:
      return Say::tr(
                 "The extra “%1” would run through the air along the open box. Lay it once round, "
                 "or make the band under it as wide as the box is long.")
          .arg(v.extra());
    case ProblemCode::ExtraOverBow:
      return Say::tr(
                 "The extra “%1” cannot slide over the extra “%2”. Glue the bow onto %1, or leave "
                 "one of them out.")
          .arg(v.extra(), v.extraAt(0));
    case ProblemCode::ExtraMiddleOff:
      return Say::tr(
                 "The middle of the extra “%1” lies beyond the edge of %2, where nothing holds it. "
                 "Move it inwards.")
          .arg(v.extra(), v.faceAt(0));
    case ProblemCode::ExtraRoomTaken:
      return Say::
          tr("The extra “%1” finds no room in the box, which the extra “%2” fills. Leave one of "
             "them out.")
              .arg(v.extra(), v.extraAt(0));
    case ProblemCode::ExtraInsideSmall:
      return insideSmall(problem).arg(v.extra(), v.at(1), v.at(0));
    case ProblemCode::ExtraNotRound:
      return Say::tr(
                 "The extra “%1” needs upright sides and a flat front or back to lie on, and this "
                 "box has none that are large enough. Choose a label, or another style.")
          .arg(v.extra());
    case ProblemCode::ExtraUnhung:
      return Say::tr(
                 "The extra “%1” has no ribbon to hang on, and a string of its own cannot go round "
                 "this box. Put a band or a sleeve round the box too, or choose a label.")
          .arg(v.extra());
    case ProblemCode::ExtraUnderRound:
      return Say::tr(
                 "The extra “%1” is hidden under the extra “%2”, which goes the same way round. "
                 "Make it wider, or leave one of them out.")
          .arg(v.extra(), v.extraAt(0));
    case ProblemCode::ExtraWidthUnused:
      return Say::
          tr("The extra “%1” is a full band, so that its width of %2 is not used. Set the width "
             "to 0, or let the band not be full.")
              .arg(v.extra(), v.at(0));
    case ProblemCode::LayerInsetLarge:
      return Say::
          tr("Layer %2 of the extra “%1” is to leave %3 free all round, and %4 is the most that "
             "leaves enough of it. Make the inset smaller.")
              .arg(v.extra(), v.at(0), v.at(1), v.limitAt(2));
    case ProblemCode::LayerTooLarge:
      return Say::tr(
                 "Layer %2 of the extra “%1” is %3 wide or high, and %4 is the most that stays on "
                 "what is under it. Make it smaller, or let it overhang.")
          .arg(v.extra(), v.at(0), v.at(1), v.limitAt(2));
    case ProblemCode::EditUnknown:
      return Say::tr("There is no change “%1”. Choose one that “creasewright edits” lists.")
          .arg(v.at(0));
    case ProblemCode::EditPlaceGone:
      return Say::tr(
                 "Change %1, %2, belongs to %3, and this net has no such panel or edge. Give it "
                 "another place or switch it off.")
          .arg(v.at(0), v.edit(), v.panelAt(1));
    case ProblemCode::EditUnfit:
      return Say::tr(
                 "Change %1, %2, does not fit on %3 as it is now. Make it smaller, move it away "
                 "from edges, scores and other cuts, or switch it off.")
          .arg(v.at(0), v.edit(), v.panelAt(1));
    case ProblemCode::EditNoEffect:
      return Say::tr("Change %1, %2, cuts nothing on %3. Make it larger or switch it off.")
          .arg(v.at(0), v.edit(), v.panelAt(1));
    case ProblemCode::StylePieceBroken:
      return Say::tr("The style “%1”, which this is made from: %2")
          .arg(v.where(), insideSentence(problem, unit));
    case ProblemCode::ProductOutsideStyle:
      return Say::tr(
                 "The product is %2 %1, and the style “%3” is kept for %4 to %5. Look whether its "
                 "changes still suit.")
          .arg(axisTitle(problem.where), v.at(1), v.at(0), v.at(2), v.at(3));
    case ProblemCode::SheetBare:
      return Say::tr(
                 "Nothing is hinged to %1 yet. Add a flap to one of its edges: folded up by 90°, "
                 "it is a wall.")
          .arg(v.panel());
    case ProblemCode::EdgesNotHeld:
      return Say::tr(
                 "%1 and %2 meet at an edge, and nothing holds them there. Add a flap to one of "
                 "them, glued or tucked to the other.")
          .arg(v.panel(), v.panelAt(0));
    case ProblemCode::FormulaUnreadable:
      return Say::tr(
                 "“%1” cannot be read for %2. Write lengths, numbers and names of measures with + "
                 "- * / and brackets, such as depth / 2 - 3 mm.")
          .arg(v.at(0), v.measure());
    case ProblemCode::FormulaUnknownName:
      return Say::tr("%2 names “%1”, which is no measure here. Choose one of these: %3.")
          .arg(v.at(0), v.measure(), v.at(1));
    case ProblemCode::FormulaUnits:
      return Say::tr(
                 "The units of “%1” for %2 do not go together. Add lengths to lengths only, with "
                 "a unit beside each, such as 3 mm; a number of pieces is whole and has no unit.")
          .arg(v.at(0), v.measure());
    case ProblemCode::FormulaZeroDivision:
      return Say::tr("“%1” for %2 divides by zero. Divide by another number.")
          .arg(v.at(0), v.measure());
    case ProblemCode::FormulaCircle:
      return Say::tr(
                 "“%1” for %2 depends on itself. Write one of the measures without naming the "
                 "other.")
          .arg(v.at(0), v.measure());
    case ProblemCode::FormulaOutOfRange:
      return Say::tr("“%1” is out of range for %2. Stay between %3 and %4.")
          .arg(v.at(0), v.measure(), v.at(1), v.at(2));
    case ProblemCode::FoldsClose:
      return Say::tr(
                 "Two scores on %1 are only %2 apart; below %3 the card may tear or not fold "
                 "clean. "
                 "Make the strip wider or choose thinner card.")
          .arg(v.panel(), v.at(0), v.at(1));
    case ProblemCode::CardThick:
      return Say::tr(
                 "The card of %1 is %2 thick; above %3 a score alone may crack it. Cut half "
                 "through on the outside of each fold, or choose thinner card.")
          .arg(v.piece(), v.thicknessAt(0), v.thicknessAt(1));
    case ProblemCode::BlankOverBoard:
      return Say::tr(
                 "The blank of %1, %2 × %3, is larger than the scoring board of %4. Let it hang "
                 "over the edge, or choose a wider board.")
          .arg(v.piece(), v.at(0), v.at(1), v.at(2));
    case ProblemCode::BlankOverSheets:
      return Say::tr(
                 "The blank of %1, %2 × %3, is larger than every sheet at hand. Get larger card or "
                 "make the design smaller.")
          .arg(v.piece(), v.at(0), v.at(1));
    case ProblemCode::ManyPages:
      return Say::tr(
                 "The template takes %1 pages of %3, more than %2 to put together. Choose larger "
                 "paper, or draw the blank by its measures.")
          .arg(v.at(0), v.at(1), v.at(2));
    case ProblemCode::TextSmall:
      return Say::tr(
                 "The words “%2” on %1 are only %3 points high; below %4 few can read them. Write "
                 "less, or make the piece larger.")
          .arg(v.piece(), v.at(0), v.at(1), v.at(2));
    case ProblemCode::TextFaint:
      return Say::tr(
                 "The words “%2” on %1 stand out from their paper by only %3 to 1; below %4 to 1 "
                 "they are hard to read. Set them on a plain plate, or choose other colours.")
          .arg(v.piece(), v.at(0), v.at(1), v.at(2));
    case ProblemCode::TextTooLarge:
      return Say::tr(
                 "The words “%2” on %1 are %3 long where there are only %4. Write less, or make "
                 "the type smaller.")
          .arg(v.piece(), v.at(0), v.at(1), v.at(2));
    case ProblemCode::TextTooHigh:
      return Say::tr(
                 "The words “%2” on %1 are %3 high where there are only %4. Write fewer lines, or "
                 "make the type smaller.")
          .arg(v.piece(), v.at(0), v.at(1), v.at(2));
    case ProblemCode::TextCovered:
      return Say::tr(
                 "The words “%2” on %1 lie under %3, at least in part. Move one of them, or make "
                 "what covers them smaller.")
          .arg(v.piece(), v.at(0), v.coverAt(1));
    case ProblemCode::DesignTooHeavy:
      return Say::
          tr("“%1” would have %2 bytes, more than the %3 a design may have. Use fewer or smaller "
             "pictures; nothing was written.")
              .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::PictureBroken:
      return Say::tr(
                 "The picture on %1 cannot be shown: its file is broken or too large. One colour "
                 "stands for it; choose the picture anew.")
          .arg(v.piece());
    case ProblemCode::PictureCoarse:
      return Say::tr(
                 "The picture on %1 has only %2 dots to the inch in print; below %3 its edges show "
                 "steps. Make it smaller on the paper, or choose a finer file.")
          .arg(v.piece(), v.at(0), v.at(1));
    case ProblemCode::PaperUnknown:
      return Say::tr("There is no paper “%1”. Choose one such as a4 or letter.").arg(v.at(0));
    case ProblemCode::MarginTooLarge:
      return Say::tr(
                 "A margin of %1 leaves no room on %2. Choose a smaller margin or larger paper.")
          .arg(v.at(0), v.at(1));
    case ProblemCode::TooManyTiles:
      return Say::tr(
                 "The template would take %1 pages, more than %2. Choose larger paper or a smaller "
                 "design.")
          .arg(v.at(0), v.at(1));
    case ProblemCode::NothingPrinted:
      return Say::tr(
          "Nothing here has a colour or a pattern to print. Give the card or an extra one.");
    case ProblemCode::BleedOff:
      return Say::tr("“%1” is no bleed. Print from 0 to %2 beyond the cuts.").arg(v.at(0), v.at(1));
    case ProblemCode::NoDemand:
      return Say::tr(
          "There is nothing to cut, or nothing to cut it from. Add a design and a sheet.");
    case ProblemCode::BlankTooLarge:
      if (v.at(2).isEmpty()) {
        return Say::tr(
                   "The blank of “%1”, %2 × %3, is larger than every sheet. Make the design "
                   "smaller.")
            .arg(v.where(), v.at(0), v.at(1));
      }
      return Say::tr(
                 "The blank of “%1”, %2 × %3, is larger than every sheet. Add a sheet such as %4, "
                 "or make the design smaller.")
          .arg(v.where(), v.at(0), v.at(1), v.at(2));
    case ProblemCode::StockTooFew:
      return Say::tr("The sheets at hand do not suffice. Add sheets or take fewer sets.");
    case ProblemCode::PlanNotFound:
      return Say::tr(
          "No cutting plan was found. Plan again without stopping, or add sheets: those at hand "
          "may "
          "just not suffice.");
    case ProblemCode::TakersWrong:
      return Say::tr("%2 is no number for the field “%1”. Choose one from %3 to %4.")
          .arg(v.where(), v.at(0), v.at(1), v.at(2));
    case ProblemCode::NamesTooMany:
      return Say::tr(
                 "There are %1 names for %2 sets. Raise the number of people or leave names "
                 "out.")
          .arg(v.at(0), v.at(1));
    case ProblemCode::PlanFaulty:
      return Say::tr(
                 "The cutting plan that was found is wrong (%2 “%1”) and is kept back: a fault "
                 "of the program. Another number of people or another sheet may do.")
          .arg(v.where(), v.at(0));
    case ProblemCode::NotAKit:
      return Say::tr("“%1” is not a Creasewright kit. Choose a .cwkit file.").arg(v.where());
    case ProblemCode::TableUnreadable:
      return Say::tr("Row %2 of “%1” cannot be read: “%3”. Correct it and read the table again.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::TableNoText:
      return Say::tr(
                 "“%1” is no table: it holds bytes that no text has. Choose a table of "
                 "comma-separated values, as a spreadsheet writes it.")
          .arg(v.where());
    case ProblemCode::ColumnUnknown:
      return Say::tr(
                 "“%1” has a column “%2”, which is not known. Known are: %3. Rename it or take "
                 "it out.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::RowColour:
      return rowColour(v);
    case ProblemCode::NoSheetOfColour:
      return Say::tr(
                 "No sheet serves “%1” in %2: the listed ones have other colours. Add a sheet of "
                 "that colour, or one without a colour.")
          .arg(v.where(), v.at(0));
    case ProblemCode::PunchNotRound:
      return Say::tr(
                 "Row %2 of “%1” gives the shape “%3” two measures, %4 and %5, but it has one. "
                 "Leave the "
                 "height empty, or name another shape.")
          .arg(v.where(), v.at(0), v.at(1), v.at(2), v.at(3));
    case ProblemCode::GrainConflict:
      return Say::tr(
                 "The blank of “%1”, %2 × %3, fits no sheet along the grain. Let it be turned, or "
                 "add a sheet with the other grain.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::PieceUnknown:
      return Say::tr("“%1” has no piece “%2”. Its pieces are: %3.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::FileUnreadable:
      return Say::tr("“%1” cannot be read (%2). Check the name and that you may open it.")
          .arg(v.where(), v.at(0));
    case ProblemCode::FileNotWritten:
      return Say::tr(
                 "“%1” cannot be written (%2). Choose a folder you may write to, with room left.")
          .arg(v.where(), v.at(0));
    case ProblemCode::FileTooLarge:
      return Say::tr(
                 "“%1” has %2 bytes, more than the %3 such a file may have. Choose one saved by "
                 "this program.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::NotAPicture:
      return Say::tr(
                 "“%1” is no picture that can be read. Choose a PNG or JPEG file that opens in "
                 "other programs.")
          .arg(v.where());
    case ProblemCode::NotAPaper:
      return Say::tr(
                 "“%1” is no picture that can be printed on paper. Choose a PNG, JPEG or SVG file "
                 "that opens in other programs.")
          .arg(v.where());
    case ProblemCode::PictureTooWide:
      return Say::
          tr("“%1” is %2 × %3 pixels. A picture has at most %4 on a side and %5 in all: save it "
             "smaller.")
              .arg(v.where(), v.at(0), v.at(1), v.at(2), v.at(3));
    case ProblemCode::PictureTooHeavy:
      return Say::tr(
                 "The picture “%1” has %2 bytes, more than the %3 it may have: save it smaller.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::NotADesign:
      return Say::tr("“%1” is not a Creasewright design. Choose a .cwdesign file.").arg(v.where());
    case ProblemCode::NewerVersion:
      return Say::tr(
                 "“%1” was saved by a newer Creasewright (format %2; this one reads up to %3). "
                 "Open "
                 "it with the newer program.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::NotAStyle:
      return Say::tr("“%1” is not a Creasewright style. Choose a .cwstyle file.").arg(v.where());
    case ProblemCode::NotABundle:
      return Say::tr("“%1” is not a Creasewright bundle. Choose a .cwbundle file.").arg(v.where());
    case ProblemCode::RollTooLong:
      return Say::tr("The roll “%1” is %2 m long, more than the %3 m a roll may have. Shorten it.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::TooMany:
      return Say::tr("The list “%1” has %2 entries, more than the %3 it may have. Take some away.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::TextTooLong:
      return Say::tr(
                 "The text of “%1” has %2 characters, more than the %3 it may have. Shorten it.")
          .arg(v.where(), v.at(0), v.at(1));
    case ProblemCode::FieldMissing:
      return Say::tr("The file has no field “%1”. Add it or open another copy.").arg(v.where());
    case ProblemCode::PrintScaleOff:
      return Say::tr(
                 "The bar of %2 cannot have come out as %1: from %3 to %4 can be corrected. Print "
                 "the page again at 100 %, not “fit to page”, and measure from end to end.")
          .arg(v.at(0), v.at(1), v.limitAt(2), v.limitAt(3));
    case ProblemCode::FieldUnreadable:
      return Say::tr("“%2” is not a value for the field “%1”. Correct it or open another copy.")
          .arg(v.where(), v.at(0));
  }
  return {};
}

}  // namespace creasewright
