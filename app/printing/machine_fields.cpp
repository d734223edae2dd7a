#include "printing/machine_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <utility>

#include "bridge/text.h"
#include "units/paper.h"

namespace creasewright {

namespace {

constexpr double kWidestKerf = 5;  // mm

QDoubleSpinBox* kerfField(QWidget* parent) {
  auto* field = new QDoubleSpinBox(parent);
  field->setRange(0, kWidestKerf);
  field->setDecimals(2);
  field->setSingleStep(0.05);
  field->setSuffix(MachineFields::tr(" mm"));
  field->setToolTip(MachineFields::tr(
      "How wide the machine cuts. Outlines move by half of it into what falls away."));
  return field;
}

}  // namespace

MachineFields::MachineFields(QWidget* parent)
    : QWidget(parent),
      scores_(new QComboBox(this)),
      outer_(kerfField(this)),
      inner_(kerfField(this)),
      sheet_(new QComboBox(this)),
      outlines_(new QCheckBox(tr("Words as outlines"), this)) {
  for (const auto& [title, form] : {std::pair{tr("Whole lines"), ScoreForm::Line},
                                    {tr("Dashes"), ScoreForm::Dashes},
                                    {tr("Perforation"), ScoreForm::Perforation}})
    scores_->addItem(title, static_cast<int>(form));
  sheet_->addItem(tr("As large as the pieces"), QString());
  for (const Paper& paper : papers()) sheet_->addItem(text(paper.name), text(paper.id));
  outlines_->setToolTip(tr("For programs that have no such type."));
  auto* form = new QFormLayout(this);
  form->setContentsMargins(24, 0, 0, 6);
  form->addRow(tr("Scores as"), scores_);
  form->addRow(tr("Kerf outside"), outer_);
  form->addRow(tr("Kerf in openings"), inner_);
  form->addRow(tr("Sheet"), sheet_);
  form->addRow(QString(), outlines_);
}

MachineExport MachineFields::chosen() const {
  MachineExport out;
  out.lines.scores = static_cast<ScoreForm>(scores_->currentData().toInt());
  out.lines.kerf = {outer_->value(), inner_->value()};
  out.outlines = outlines_->isChecked();
  if (const auto paper = findPaper(sheet_->currentData().toString().toStdString()))
    out.sheet = PartSize{paper->width.mm(), paper->height.mm()};
  return out;
}

}  // namespace creasewright
