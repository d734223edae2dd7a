#include "panels/row_column.h"

#include <QLabel>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>

namespace creasewright {

RowColumn::RowColumn(const QString& none, const QString& addName, QWidget* parent)
    : QWidget(parent),
      layout_(new QVBoxLayout(this)),
      add_(new QToolButton(this)),
      menu_(new QMenu(add_)),
      none_(new QLabel(none, this)) {
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(8);
  none_->setProperty("quiet", true);
  none_->setWordWrap(true);
  layout_->addWidget(none_);
  layout_->addWidget(add_, 0, Qt::AlignLeft);
  add_->setText(tr("Add…"));
  add_->setProperty("choice", true);
  add_->setAccessibleName(addName);
  add_->setPopupMode(QToolButton::InstantPopup);
  menu_->setToolTipsVisible(true);
  add_->setMenu(menu_);
}

void RowColumn::offer(const QString& title, const QString& summary,
                      const std::function<void()>& add) {
  QAction* action = menu_->addAction(title);
  action->setToolTip(summary);
  connect(action, &QAction::triggered, this, add);
}

void RowColumn::showRows(const std::vector<std::string>& kinds,
                         const std::function<DesignRow*(int index)>& make) {
  if (kinds != kinds_) {
    for (DesignRow* row : rows_) {
      row->hide();
      row->deleteLater();
    }
    rows_.clear();
    kinds_ = kinds;
    for (int i = 0; i < static_cast<int>(kinds.size()); ++i) {
      rows_.push_back(make(i));
      layout_->insertWidget(i + 1, rows_.back());
    }
  }
  none_->setVisible(rows_.empty());
  for (DesignRow* row : rows_) row->showDesign();
}

}  // namespace creasewright
