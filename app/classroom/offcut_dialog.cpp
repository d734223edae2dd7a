#include "classroom/offcut_dialog.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "papers/kit/kit_words.h"
#include "widgets/answer_row.h"

namespace creasewright {

OffcutDialog::OffcutDialog(const KitPlan& plan, Unit unit, QWidget* parent)
    : QDialog(parent), uses_(plan.findings.value_or(KitFindings()).offcuts) {
  setWindowTitle(tr("Offcuts"));
  resize(680, 400);
  auto* layout = new QVBoxLayout(this);
  const QStringList sizes = offcutSizes(plan, unit);
  auto* have = new QLabel(sizes.isEmpty() ? tr("No offcut is wide enough to keep.")
                                          : tr("Left over in all:") + QStringLiteral("\n") +
                                                sizes.join(QLatin1Char('\n')),
                          this);
  have->setWordWrap(true);
  layout->addWidget(have);
  auto* head =
      new QLabel(uses_.empty() ? tr("They are not enough for mats or labels of every set.")
                               : tr("They would be enough for one or the other of these. What you "
                                    "tick is added to the kit, and the sheets are planned anew:"),
                 this);
  head->setWordWrap(true);
  layout->addWidget(head);
  auto* choices = new QWidget(this);
  auto* column = new QVBoxLayout(choices);
  for (const QString& line : offcutLines(plan)) {
    ticks_.push_back(new QCheckBox(line, choices));
    column->addWidget(ticks_.back());
  }
  column->addStretch(1);
  auto* scroll = new QScrollArea(this);
  scroll->setWidget(choices);
  scroll->setWidgetResizable(true);
  layout->addWidget(scroll, 1);
  QPushButton* add = addAnswerRow(layout, this, tr("Add to the kit"));
  add->setEnabled(!uses_.empty());
  connect(add, &QPushButton::clicked, this, &QDialog::accept);
}

void OffcutDialog::tick(int row) { ticks_.at(static_cast<std::size_t>(row))->setChecked(true); }

std::vector<OffcutUse> OffcutDialog::chosen() const {
  std::vector<OffcutUse> chosen;
  for (std::size_t i = 0; i < uses_.size(); ++i)
    if (ticks_[i]->isChecked()) chosen.push_back(uses_[i]);
  return chosen;
}

}  // namespace creasewright
