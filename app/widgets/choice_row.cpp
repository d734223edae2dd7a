#include "widgets/choice_row.h"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QGridLayout>
#include <QToolButton>

namespace creasewright {

ChoiceRow::ChoiceRow(int columns, QWidget* parent)
    : QWidget(parent),
      group_(new QButtonGroup(this)),
      grid_(new QGridLayout(this)),
      columns_(columns) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setSpacing(4);
  connect(group_, &QButtonGroup::idClicked, this, &ChoiceRow::picked);
}

void ChoiceRow::add(int id, const QString& label, const QIcon& icon, const QString& hint) {
  auto* button = new QToolButton(this);
  button->setText(label);
  button->setIcon(icon);
  button->setIconSize({32, 32});
  button->setToolButtonStyle(icon.isNull() ? Qt::ToolButtonTextOnly : Qt::ToolButtonTextUnderIcon);
  button->setCheckable(true);
  button->setToolTip(hint);
  button->setProperty("segment", true);
  button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  const int index = static_cast<int>(group_->buttons().size());
  group_->addButton(button, id);
  grid_->addWidget(button, index / columns_, index % columns_);
  grid_->setColumnStretch(index % columns_, 1);
}

void ChoiceRow::choose(int id) {
  if (auto* button = group_->button(id)) {
    button->setChecked(true);
    return;
  }
  if (auto* chosen = group_->checkedButton()) {
    group_->setExclusive(false);
    chosen->setChecked(false);
    group_->setExclusive(true);
  }
}

int ChoiceRow::chosen() const { return group_->checkedId(); }

}  // namespace creasewright
