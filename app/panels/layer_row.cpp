#include "panels/layer_row.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "extras/layer_stack.h"
#include "panels/change_dressing.h"
#include "panels/label_fields.h"
#include "panels/punch_box.h"
#include "stockroom/card_box.h"
#include "widgets/colour_button.h"
#include "widgets/labelled_field.h"
#include "widgets/pattern_picker.h"

namespace creasewright {

namespace {

constexpr int indent = 12;

}  // namespace

LayerRow::LayerRow(DesignSession& session, int extra, int layer, QWidget* parent)
    : QWidget(parent),
      session_(session),
      extra_(static_cast<std::size_t>(extra)),
      layer_(static_cast<std::size_t>(layer)),
      layout_(new QVBoxLayout(this)),
      rows_(new ParameterRows(withoutLabelFields(layerParameters()), this)),
      label_(new LabelFields(LabelFields::Making::CutOrPunched, this)) {
  layout_->setContentsMargins(indent, 8, 0, 4);
  layout_->setSpacing(6);
  makeHeading();
  connect(rows_, &ParameterRows::edited, this, &LayerRow::setParameter);
  layout_->addWidget(rows_);
  makeLabel();
  makeCard();
}

void LayerRow::makeHeading() {
  auto* title = new QLabel(tr("Layer %1").arg(layer_ + 1), this);
  QFont bold = title->font();
  bold.setBold(true);
  title->setFont(bold);
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

void LayerRow::makeCard() {
  card_ = new CardBox(this);
  connect(card_, &CardBox::cardPicked, this, [this](Card picked) {
    picked.colours = coloursOf(picked, layer().card.colours);
    changeLayer({}, [&](ExtraLayer& each) { each.card = picked; });
  });
  addLabelledField(layout_, tr("Card"), card_);
  colour_ = new ColourButton(tr("Plain"), this);
  connect(colour_, &ColourButton::colourPicked, this, [this](const std::optional<Colour>& picked) {
    changeLayer({}, [&](ExtraLayer& each) { each.card.colours = {picked, {}}; });
  });
  addLabelledField(layout_, tr("Colour"), colour_);
  pattern_ = new PatternPicker(tr("Pattern"), false, this);
  connect(pattern_, &PatternPicker::patternPicked, this,
          [this](const std::optional<PaperPattern>& picked, bool, const QString& field) {
            changeLayer(field, [&](ExtraLayer& each) {
              each.card.colours.pattern = picked;
              each.card.colours.patternBehind = false;
            });
          });
  addLabelledField(layout_, tr("Pattern"), pattern_);
}

void LayerRow::makeLabel() {
  connect(
      label_, &LabelFields::punchPicked, this,
      [this](const Punch* punch) {
        changeLayer(
            {}, [&](ExtraLayer& each) { takePunch(each.parameters, punch); });
      });
  connect(label_, &LabelFields::linesEdited, this, [this](const std::vector<std::string>& lines) {
    changeLayer(QStringLiteral("text"), [&](ExtraLayer& each) { each.lines = lines; });
  });
  connect(label_, &LabelFields::edited, this, &LayerRow::setParameter);
  layout_->addWidget(label_);
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

void LayerRow::setParameter(const QString& key, qint64 raw) {
  changeLayer(
      key, [&](ExtraLayer& each) { each.parameters.setCount(key.toStdString(), raw); });
}

void LayerRow::showDesign() {
  rows_->setUnit(session_.unit());
  rows_->setValues(layer().parameters, stepOf(session_.design().grid, session_.unit()));
  rows_->explainZeros(layerParameters(), layer().parameters);
  showFoam(*rows_, layer().parameters);
  colour_->setColour(layer().card.colours.face);
  pattern_->setUnit(session_.unit());
  pattern_->setPattern(layer().card.colours.pattern, false);
  card_->setCard(layer().card, stockName(layer().card.name));
  label_->showValues(layer().parameters, layer().lines, session_.unit());
}

}  // namespace creasewright
