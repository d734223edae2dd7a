#include "panels/parameter_rows.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>
#include <QVBoxLayout>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "units/millimetres.h"

namespace creasewright {

namespace {

constexpr int kLargestCount = 999;
constexpr int kLeastChoice = 100;  // pixels: else the longest words of a choice widen the column

}  // namespace

ParameterRows::ParameterRows(const std::vector<ParameterSpec>& specs, QWidget* parent)
    : QWidget(parent), layout_(new QVBoxLayout(this)) {
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(8);
  for (const ParameterSpec& spec : specs) addRow(spec);
}

void ParameterRows::addRow(const ParameterSpec& spec) {
  switch (spec.kind) {
    case ParameterKind::Length:
      return addLength(spec);
    case ParameterKind::Count:
      return spec.choices.empty() ? addCount(spec) : addChoice(spec);
    case ParameterKind::Flag:
      return addFlag(spec);
  }
}

void ParameterRows::addLength(const ParameterSpec& spec) {
  const QString key = text(spec.key);
  auto* row = new LengthRow(parameterTitle(spec), this);
  row->setToolTip(parameterHint(spec) + QLatin1Char('\n') + tr("In sums: %1").arg(key));
  row->field().setNames([this](std::string_view name) -> std::optional<Result<Length>> {
    const auto named = lengths_.find(std::string(name));
    if (named == lengths_.end()) return std::nullopt;
    return named->second->field().length();
  });
  connect(
      &row->field(), &LengthEdit::lengthEdited, this,
      [this, key](Length value) { emit edited(key, value.nm()); });
  connect(
      &row->field(), &LengthEdit::focused, this, [this, key](bool in) { emit focused(key, in); });
  connect(row, &LengthRow::pointedAt, this, [this, key](bool in) { emit pointedAt(key, in); });
  lengths_[std::string(spec.key)] = row;
  layout_->addWidget(row);
}

void ParameterRows::addBeside(const ParameterSpec& spec, QWidget* field) {
  auto* row = new QWidget(this);
  auto* title = new QLabel(parameterTitle(spec), row);
  title->setBuddy(field);
  field->setAccessibleName(parameterTitle(spec));
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(title, 1);
  line->addWidget(field);
  row->setToolTip(parameterHint(spec));
  layout_->addWidget(row);
}

void ParameterRows::addCount(const ParameterSpec& spec) {
  const QString key = text(spec.key);
  auto* field = new QSpinBox(this);
  field->setRange(0, kLargestCount);
  field->setKeyboardTracking(false);  // a number counts when it is typed whole
  connect(field, &QSpinBox::valueChanged, this,
          [this, key](int value) { emit edited(key, value); });
  counts_[std::string(spec.key)] = field;
  addBeside(spec, field);
}

void ParameterRows::addChoice(const ParameterSpec& spec) {
  const QString key = text(spec.key);
  auto* field = new QComboBox(this);
  for (const std::string_view choice : spec.choices) field->addItem(styleText(choice));
  field->setMinimumWidth(kLeastChoice);
  connect(field, &QComboBox::activated, this, [this, key](int index) { emit edited(key, index); });
  choices_[std::string(spec.key)] = field;
  addBeside(spec, field);
}

void ParameterRows::addFlag(const ParameterSpec& spec) {
  const QString key = text(spec.key);
  auto* box = new QCheckBox(parameterTitle(spec), this);
  box->setToolTip(parameterHint(spec));
  connect(box, &QCheckBox::clicked, this, [this, key](bool on) { emit edited(key, on ? 1 : 0); });
  flags_[std::string(spec.key)] = box;
  layout_->addWidget(box);
}

void ParameterRows::setValues(const Parameters& values, Length step) {
  for (auto& [key, row] : lengths_) {
    row->field().setStep(step);
    row->field().setLength(values.length(key));
  }
  for (auto& [key, field] : counts_) {
    const QSignalBlocker quiet(field);
    field->setValue(static_cast<int>(values.count(key)));
  }
  for (auto& [key, field] : choices_) field->setCurrentIndex(static_cast<int>(values.count(key)));
  for (auto& [key, box] : flags_) box->setChecked(values.flag(key));
}

void ParameterRows::setUnit(Unit unit) {
  for (auto& [key, row] : lengths_) row->field().setUnit(unit);
}

void ParameterRows::setZeroText(const std::string& key, const QString& words) {
  counts_.at(key)->setSpecialValueText(words);
}

void ParameterRows::setShown(const std::string& key, bool shown) {
  lengths_.at(key)->setVisible(shown);
}

void ParameterRows::setNote(const std::string& key, const QString& note) {
  lengths_.at(key)->setNote(note);
}

void ParameterRows::explainZeros(const std::vector<ParameterSpec>& specs,
                                 const Parameters& values) {
  for (const ParameterSpec& spec : specs) {
    const auto row = lengths_.find(std::string(spec.key));
    if (row == lengths_.end()) continue;
    const bool stands = values.raw(spec.key) == 0 && spec.minimum(values, {}) == 0;
    row->second->setNote(stands ? parameterHint(spec) : QString());
  }
}

void ParameterRows::setComplaint(const std::string& key, const QString& sentence) {
  lengths_.at(key)->setComplaint(sentence);
}

void ParameterRows::setLit(const std::string& key, bool lit) { lengths_.at(key)->setLit(lit); }

std::vector<std::string> ParameterRows::lengthKeys() const {
  std::vector<std::string> keys;
  for (const auto& [key, row] : lengths_) keys.push_back(key);
  return keys;
}

LengthEdit* ParameterRows::lengthField(const std::string& key) {
  const auto found = lengths_.find(key);
  return found == lengths_.end() ? nullptr : &found->second->field();
}

Length stepOf(ToolGrid grid, Unit unit) {
  if (!grid.isNone()) return grid.step();
  return unit == Unit::Inch ? Length::inches(1, 16) : mm(1);
}

}  // namespace creasewright
