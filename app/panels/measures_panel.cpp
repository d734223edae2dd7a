#include "panels/measures_panel.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "panels/affected_panels.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

constexpr int largestCount = 999;

/// One step of the up and down keys: the tool grid, or 1 mm / 1/16 in without one.
Length stepOf(const Design& design, Unit unit) {
  if (!design.grid.isNone()) {
    return design.grid.step();
  }
  return unit == Unit::Inch ? Length::inches(1, 16) : Length::nanometres(1'000'000);
}

}  // namespace

MeasuresPanel::MeasuresPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent), session_(session), layout_(new QVBoxLayout(this)) {
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(8);
  connect(&session_, &DesignSession::changed, this, &MeasuresPanel::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, &MeasuresPanel::showUnit);
  showDesign();
}

bool MeasuresPanel::focusParameter(const std::string& key) {
  if (LengthEdit* field = lengthField(key)) {
    field->setFocus();
    field->selectAll();
    return true;
  }
  return false;
}

LengthEdit* MeasuresPanel::lengthField(const std::string& key) {
  const auto found = lengths_.find(key);
  return found == lengths_.end() ? nullptr : &found->second->field();
}

void MeasuresPanel::makeRows() {
  if (styleId_ == session_.design().styleId) {
    return;
  }
  styleId_ = session_.design().styleId;
  for (QWidget* widget : made_) {
    widget->hide();
    widget->deleteLater();
  }
  made_.clear();
  lengths_.clear();
  counts_.clear();
  flags_.clear();
  if (const auto style = findStyle(styleId_)) {
    for (const ParameterSpec& spec : (*style)->parameters) {
      addRow(spec);
    }
  }
  showUnit(session_.unit());
}

void MeasuresPanel::addRow(const ParameterSpec& spec) {
  switch (spec.kind) {
    case ParameterKind::Length:
      return addLength(spec);
    case ParameterKind::Count:
      return addCount(spec);
    case ParameterKind::Flag:
      return addFlag(spec);
  }
}

void MeasuresPanel::addLength(const ParameterSpec& spec) {
  const std::string key(spec.key);
  auto* row = new LengthRow(parameterTitle(spec), this);
  row->setToolTip(parameterHint(spec));
  connect(&row->field(), &LengthEdit::lengthEdited, this,
          [this, key](Length value) { changeParameter(session_, key, value.nm()); });
  connect(&row->field(), &LengthEdit::focused, this, [this, key](bool in) {
    session_.pinHighlight(in ? affectedPanels(session_.design(), key) : QStringList());
  });
  lengths_[key] = row;
  made_.push_back(row);
  layout_->addWidget(row);
}

void MeasuresPanel::addCount(const ParameterSpec& spec) {
  const std::string key(spec.key);
  auto* row = new QWidget(this);
  auto* field = new QSpinBox(row);
  field->setRange(0, largestCount);
  auto* title = new QLabel(parameterTitle(spec), row);
  title->setBuddy(field);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->addWidget(title, 1);
  line->addWidget(field);
  row->setToolTip(parameterHint(spec));
  connect(field, &QSpinBox::valueChanged, this,
          [this, key](int value) { changeParameter(session_, key, value); });
  counts_[key] = field;
  made_.push_back(row);
  layout_->addWidget(row);
}

void MeasuresPanel::addFlag(const ParameterSpec& spec) {
  const std::string key(spec.key);
  auto* box = new QCheckBox(parameterTitle(spec), this);
  box->setToolTip(parameterHint(spec));
  connect(box, &QCheckBox::clicked, this,
          [this, key](bool on) { changeParameter(session_, key, on ? 1 : 0); });
  flags_[key] = box;
  made_.push_back(box);
  layout_->addWidget(box);
}

void MeasuresPanel::showDesign() {
  makeRows();
  const Parameters& values = session_.design().parameters;
  for (auto& [key, row] : lengths_) {
    row->field().setStep(stepOf(session_.design(), session_.unit()));
    row->field().setLength(values.length(key));
    row->setNote(noteFor(key));
    row->setComplaint(complaintFor(key));
  }
  for (auto& [key, field] : counts_) {
    const QSignalBlocker quiet(field);
    field->setValue(static_cast<int>(values.count(key)));
  }
  for (auto& [key, box] : flags_) {
    box->setChecked(values.flag(key));
  }
}

void MeasuresPanel::showUnit(Unit unit) {
  for (auto& [key, row] : lengths_) {
    row->field().setUnit(unit);
  }
  if (styleId_ == session_.design().styleId && !lengths_.empty()) {
    for (auto& [key, row] : lengths_) {
      row->setNote(noteFor(key));
      row->setComplaint(complaintFor(key));
    }
  }
}

QString MeasuresPanel::noteFor(const std::string& key) const {
  const Unit unit = session_.unit();
  for (const FitReason& reason : session_.built().reasons) {
    if (reason.key != key) {
      continue;
    }
    const Length now = session_.design().parameters.length(key);
    if (now != reason.chosen) {
      return tr("Set by hand. The product asks for %1.").arg(lengthText(reason.chosen, unit));
    }
    return tr("Product %1, with ease %2, with card %3, on the tool grid %4.")
        .arg(lengthText(reason.product, unit, false), lengthText(reason.eased, unit, false),
             lengthText(reason.needed, unit, false), lengthText(reason.chosen, unit));
  }
  return {};
}

QString MeasuresPanel::complaintFor(const std::string& key) const {
  for (const Problem& problem : session_.problems()) {
    const bool limit = problem.code == ProblemCode::ParameterTooSmall ||
                       problem.code == ProblemCode::ParameterTooLarge;
    if (limit && problem.where == key) {
      return problemSentence(problem, session_.unit());
    }
  }
  return {};
}

}  // namespace creasewright
