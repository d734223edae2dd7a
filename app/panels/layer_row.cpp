#include "panels/layer_row.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QToolButton>
#include <QVBoxLayout>

#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "extras/layer_stack.h"
#include "panels/change_dressing.h"
#include "panels/punch_box.h"
#include "panels/written_lines.h"
#include "stockroom/card_box.h"
#include "widgets/colour_button.h"
#include "widgets/labelled_field.h"

namespace creasewright {

namespace {

constexpr int textHeight = 44;
constexpr int indent = 12;

}  // namespace

LayerRow::LayerRow(DesignSession& session, int extra, int layer, QWidget* parent)
    : QWidget(parent),
      session_(session),
      extra_(static_cast<std::size_t>(extra)),
      layer_(static_cast<std::size_t>(layer)),
      layout_(new QVBoxLayout(this)),
      rows_(new ParameterRows(withoutWords(layerParameters()), this)) {
  layout_->setContentsMargins(indent, 0, 0, 4);
  layout_->setSpacing(6);
  makeHeading();
  connect(rows_, &ParameterRows::edited, this, [this](const QString& key, qint64 raw) {
    changeLayer(key, [&](ExtraLayer& each) { each.parameters.setCount(key.toStdString(), raw); });
  });
  layout_->addWidget(rows_);
  makePunch();
  makeCard();
  makeText();
}

void LayerRow::makeHeading() {
  auto* title = new QLabel(tr("Layer %1").arg(layer_ + 1), this);
  auto* leave = new QToolButton(this);
  leave->setText(tr("Remove"));
  leave->setAutoRaise(true);
  leave->setAccessibleName(tr("Remove layer %1").arg(layer_ + 1));
  connect(leave, &QToolButton::clicked, this, [this] {
    change({}, [&](Extra& extra) {
      extra.layers.erase(extra.layers.begin() + static_cast<std::ptrdiff_t>(layer_));
    });
  });
  auto* line = new QHBoxLayout;
  line->addWidget(title, 1);
  line->addWidget(leave);
  layout_->addLayout(line);
}

void LayerRow::makePunch() {
  punch_ = new PunchBox(this);
  connect(punch_, &PunchBox::punchPicked, this, [this](const Punch* punch) {
    changeLayer({}, [&](ExtraLayer& each) { takePunch(each.parameters, punch); });
  });
  addLabelledField(layout_, tr("Punch"), punch_);
}

void LayerRow::makeCard() {
  card_ = new CardBox(this);
  connect(card_, &CardBox::cardPicked, this, [this](Card picked) {
    picked.colours = layer().card.colours;
    changeLayer({}, [&](ExtraLayer& each) { each.card = picked; });
  });
  addLabelledField(layout_, tr("Card"), card_);
  colour_ = new ColourButton(tr("Plain"), this);
  connect(colour_, &ColourButton::colourPicked, this, [this](const std::optional<Colour>& picked) {
    changeLayer({}, [&](ExtraLayer& each) { each.card.colours = {picked, {}}; });
  });
  addLabelledField(layout_, tr("Colour"), colour_);
}

void LayerRow::makeText() {
  text_ = new QPlainTextEdit(this);
  text_->setFixedHeight(textHeight);
  text_->setTabChangesFocus(true);
  connect(text_, &QPlainTextEdit::textChanged, this, [this] {
    const std::vector<std::string> lines = writtenLines(text_->toPlainText());
    changeLayer(QStringLiteral("text"), [&](ExtraLayer& each) { each.lines = lines; });
  });
  addLabelledField(layout_, tr("Text"), text_);
  words_ = new ParameterRows(wordsParameters(), this);
  words_->setZeroText("points", tr("as it fits"));
  connect(words_, &ParameterRows::edited, this, [this](const QString& key, qint64 raw) {
    changeLayer(key, [&](ExtraLayer& each) { each.parameters.setCount(key.toStdString(), raw); });
  });
  layout_->addWidget(words_);
}

const ExtraLayer& LayerRow::layer() const {
  return session_.design().extras.at(extra_).layers.at(layer_);
}

void LayerRow::change(const QString& field, const std::function<void(Extra&)>& edit) {
  std::vector<Extra> extras = session_.design().extras;
  const QString title = extraTitle(extras.at(extra_).kind);
  edit(extras.at(extra_));
  const QString merge =
      field.isEmpty() ? field
                      : QStringLiteral("extra %1 layer %2 %3").arg(extra_).arg(layer_).arg(field);
  changeDressing(session_, std::move(extras), title, merge);
}

void LayerRow::changeLayer(const QString& field, const std::function<void(ExtraLayer&)>& edit) {
  change(
      field, [&](Extra& extra) { edit(extra.layers.at(layer_)); });
}

void LayerRow::showDesign() {
  rows_->setUnit(session_.unit());
  rows_->setValues(layer().parameters, stepOf(session_.design().grid, session_.unit()));
  colour_->setColour(layer().card.colours.face);
  card_->setCard(layer().card, stockName(layer().card.name));
  punch_->setPunched(layer().parameters.flag("punched"), punchOf(layer().parameters),
                     session_.unit());
  words_->setValues(layer().parameters, {});
  words_->setVisible(!layer().lines.empty());
  if (writtenLines(text_->toPlainText()) == layer().lines) return;
  const QSignalBlocker quiet(text_);
  text_->setPlainText(linesText(layer().lines));
}

}  // namespace creasewright
