#include "kits/offcut_dialog.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include "kits/kit_words.h"
#include "widgets/answer_row.h"

namespace creasewright {

OffcutDialog::OffcutDialog(const ClassKit& kit, const KitPlan& plan, std::vector<OffcutUse> uses,
                           Unit unit, QWidget* parent)
    : QDialog(parent), uses_(std::move(uses)), list_(new QListWidget(this)) {
  setWindowTitle(tr("Offcuts"));
  resize(560, 400);
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
  for (const QString& line : offcutLines(kit, plan, uses_)) {
    auto* item = new QListWidgetItem(line, list_);
    item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
    item->setCheckState(Qt::Unchecked);
  }
  list_->setWordWrap(true);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setVisible(!uses_.empty());
  list_->setAccessibleName(tr("What the offcuts could give"));
  layout->addWidget(list_, 1);
  layout->addStretch(uses_.empty() ? 1 : 0);
  QPushButton* add = addAnswerRow(layout, this, tr("Add to the kit"));
  add->setEnabled(!uses_.empty());
  connect(add, &QPushButton::clicked, this, &QDialog::accept);
}

void OffcutDialog::tick(int row) { list_->item(row)->setCheckState(Qt::Checked); }

std::vector<OffcutUse> OffcutDialog::chosen() const {
  std::vector<OffcutUse> chosen;
  for (int row = 0; row < list_->count(); ++row) {
    if (list_->item(row)->checkState() == Qt::Checked) {
      chosen.push_back(uses_[static_cast<std::size_t>(row)]);
    }
  }
  return chosen;
}

}  // namespace creasewright
