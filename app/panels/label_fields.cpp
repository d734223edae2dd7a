#include "panels/label_fields.h"

#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "extras/extra_kind.h"
#include "extras/piece_words.h"
#include "panels/parameter_rows.h"
#include "panels/punch_box.h"
#include "panels/written_lines.h"
#include "widgets/labelled_field.h"

namespace creasewright {

namespace {

constexpr int linesHeight = 56;

}  // namespace

LabelFields::LabelFields(Making making, QWidget* parent)
    : QWidget(parent),
      text_(new QPlainTextEdit(this)),
      words_(new ParameterRows(wordsParameters(), this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 4, 0, 4);
  layout->setSpacing(6);
  if (making == Making::CutOrPunched) {
    punch_ = new PunchBox(this);
    connect(punch_, &PunchBox::punchPicked, this, &LabelFields::punchPicked);
    addLabelledField(layout, tr("Punch"), punch_);
  }
  text_->setFixedHeight(linesHeight);
  text_->setTabChangesFocus(true);
  connect(text_, &QPlainTextEdit::textChanged, this,
          [this] { emit linesEdited(writtenLines(text_->toPlainText())); });
  addLabelledField(layout, tr("Text"), text_);
  words_->setZeroText("points", tr("as it fits"));
  connect(words_, &ParameterRows::edited, this, &LabelFields::edited);
  layout->addWidget(words_);
}

void LabelFields::showValues(const Parameters& parameters, const std::vector<std::string>& lines,
                             Unit unit) {
  if (punch_ != nullptr) punch_->setPunched(parameters.flag("punched"), punchOf(parameters), unit);
  words_->setValues(parameters, {});
  words_->setVisible(!lines.empty());
  if (writtenLines(text_->toPlainText()) == lines) return;
  const QSignalBlocker quiet(text_);
  text_->setPlainText(linesText(lines));
}

std::vector<ParameterSpec> withoutLabelFields(std::vector<ParameterSpec> specs) {
  specs = withoutWords(std::move(specs));
  std::erase_if(specs, [](const ParameterSpec& spec) { return spec.key == "punched"; });
  return specs;
}

void showFoam(ParameterRows& rows, const Parameters& parameters) {
  const auto hold = static_cast<LayerHold>(parameters.count("hold"));
  rows.setShown("foam", hold == LayerHold::Foam);
}

}  // namespace creasewright
