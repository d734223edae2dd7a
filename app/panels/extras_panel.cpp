#include "panels/extras_panel.h"

#include <QLabel>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>

#include "bridge/style_text.h"
#include "commands/edits.h"

namespace creasewright {

ExtrasPanel::ExtrasPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      layout_(new QVBoxLayout(this)),
      add_(new QToolButton(this)),
      none_(new QLabel(tr("Nothing goes with the box yet."), this)) {
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(8);
  none_->setProperty("quiet", true);
  none_->setWordWrap(true);
  layout_->addWidget(none_);
  layout_->addWidget(add_, 0, Qt::AlignLeft);
  makeAddMenu();
  connect(&session_, &DesignSession::changed, this, &ExtrasPanel::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, &ExtrasPanel::showDesign);
  showDesign();
}

void ExtrasPanel::makeAddMenu() {
  add_->setText(tr("Add…"));
  add_->setAccessibleName(tr("Add an extra"));
  add_->setPopupMode(QToolButton::InstantPopup);
  auto* menu = new QMenu(add_);
  menu->setToolTipsVisible(true);
  for (const ExtraKind& kind : extraKinds()) {
    QAction* action = menu->addAction(styleText(kind.title));
    action->setToolTip(styleText(kind.summary));
    connect(action, &QAction::triggered, this, [this, id = kind.id] { addExtra(id); });
  }
  add_->setMenu(menu);
}

void ExtrasPanel::addExtra(std::string_view kind) {
  const Result<const ExtraKind*> known = findExtraKind(kind);
  if (!known) return;
  std::vector<Extra> extras = session_.design().extras;
  const Design& design = session_.design();
  extras.push_back(ontoGrid(standardExtra(**known, design.card), design.grid));
  changeExtras(session_, std::move(extras), styleText((*known)->title));
}

void ExtrasPanel::showDesign() {
  makeRows();
  none_->setVisible(rows_.empty());
  for (ExtraRow* row : rows_) row->showDesign();
}

/// One row an extra; they are made anew only when the kinds change.
void ExtrasPanel::makeRows() {
  const std::vector<Extra>& extras = session_.design().extras;
  const bool same =
      rows_.size() == extras.size() &&
      std::equal(rows_.begin(), rows_.end(), extras.begin(),
                 [](const ExtraRow* row, const Extra& extra) { return row->kind() == extra.kind; });
  if (same) return;
  for (ExtraRow* row : rows_) {
    row->hide();
    row->deleteLater();
  }
  rows_.clear();
  for (int i = 0; i < static_cast<int>(extras.size()); ++i) {
    auto* row = new ExtraRow(session_, i, this);
    rows_.push_back(row);
    layout_->insertWidget(i + 1, row);
  }
}

}  // namespace creasewright
