#include "panels/card_panel.h"

#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "bridge/stock_words.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "stockroom/card_box.h"
#include "units/length_text.h"
#include "units/millimetres.h"
#include "widgets/colour_button.h"
#include "widgets/labelled_field.h"
#include "widgets/pattern_picker.h"

namespace creasewright {

namespace {

const Length thinnest = mm(0.05);

/// Known by its thickness alone, which is then its id: not `300gsm`, `12pt` or a card of a list.
bool isMeasured(const Card& card) {
  return card.grammage <= 0 && (card.id.empty() || unitNamed(card.id));
}

}  // namespace

CardPanel::CardPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      stock_(new CardBox(this)),
      caliper_(new LengthRow(tr("Thickness"), this)),
      face_(new ColourButton(tr("Plain"), this)),
      back_(new ColourButton(tr("As outside"), this)),
      pattern_(new PatternPicker(tr("Pattern"), true, this)) {
  stock_->setAccessibleName(tr("Card stock"));
  // Card is known by its thickness in millimetres; in inches the fractions would say nothing.
  caliper_->field().setUnit(Unit::Millimetre);
  caliper_->field().setStep(mm(0.01));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(stock_);
  layout->addWidget(caliper_);
  addLabelledField(layout, tr("Colour outside"), face_);
  addLabelledField(layout, tr("Colour inside"), back_);
  addLabelledField(layout, tr("Pattern"), pattern_);
  connect(
      stock_, &CardBox::cardPicked, this,
      [this](Card card) {
        card.colours = coloursOf(card, session_.design().card.colours);
        changeCard(session_, card);
      });
  const auto colour = [this](std::optional<Colour> CardColours::*side) {
    return [this, side](const std::optional<Colour>& picked) {
      Card card = session_.design().card;
      card.colours.*side = picked;
      // The side is to be seen in this colour now.
      if (card.colours.patternOf(side == &CardColours::back) != nullptr)
        card.colours.pattern.reset();
      changeCard(session_, card);
    };
  };
  connect(face_, &ColourButton::colourPicked, this, colour(&CardColours::face));
  connect(back_, &ColourButton::colourPicked, this, colour(&CardColours::back));
  connect(pattern_, &PatternPicker::patternPicked, this,
          [this](const std::optional<PaperPattern>& picked, bool behind, const QString& field) {
            Card card = session_.design().card;
            card.colours.pattern = picked;
            card.colours.patternBehind = behind;
            changeCard(session_, card, field);
          });
  connect(&caliper_->field(), &LengthEdit::lengthEdited, this, &CardPanel::setCaliper);
  connect(&session_, &DesignSession::changed, this, &CardPanel::showDesign);
  showDesign();
}

void CardPanel::showDesign() {
  const Card& card = session_.design().card;
  stock_->setCard(card, isMeasured(card) ? tr("Measured by you") : stockName(card.name));
  face_->setColour(card.colours.face);
  back_->setColour(card.colours.back);
  pattern_->setUnit(session_.unit());
  pattern_->setPattern(card.colours.pattern, card.colours.patternBehind);
  caliper_->field().setLength(card.caliper);
  caliper_->setComplaint({});
  caliper_->setNote(card.grammage > 0 ? tr("%1 g/m²").arg(QLocale().toString(card.grammage, 'f', 0))
                                      : QString());
}

void CardPanel::setCaliper(Length value) {
  if (value > kThickestCard) {
    caliper_->setComplaint(
        problemSentence({ProblemCode::CardTooThick, {}, {value, kThickestCard}}, Unit::Millimetre));
    return;
  }
  if (value < thinnest) {
    caliper_->setComplaint(
        tr("Card is at least %1 thick.").arg(lengthText(thinnest, Unit::Millimetre)));
    return;
  }
  Card card;
  card.caliper = value;
  card.name = tr("card of %1").arg(lengthText(value, Unit::Millimetre)).toStdString();
  card.id = (text(std::to_string(value.mm())) + QStringLiteral("mm")).toStdString();
  if (const auto measured = findCard(card.id)) card = *measured;
  card.colours = session_.design().card.colours;
  changeCard(session_, card, QStringLiteral("caliper"));
}

}  // namespace creasewright
