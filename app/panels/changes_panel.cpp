#include "panels/changes_panel.h"

#include <QLabel>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>

#include "bridge/style_text.h"
#include "commands/edits.h"

namespace creasewright {

namespace {

/// The panel that is chosen in the views, else the first one.
Edit placedEdit(const EditKind& kind, const DesignSession& session) {
  const std::vector<BuiltPiece>& pieces = session.built().pieces;
  const BuiltPiece* piece = &pieces.front();
  std::size_t panel = 0;
  const Place& kept = session.selection().kept();
  for (const BuiltPiece& each : pieces) {
    const auto found = each.role || kept.panels.isEmpty()
                           ? std::nullopt
                           : each.net.find(kept.panels.front().toStdString());
    if (!found) continue;
    piece = &each;
    panel = static_cast<std::size_t>(*found);
    break;
  }
  const Panel& on = piece->net.panels.at(panel);
  Edit edit;
  edit.kind = kind.id;
  edit.piece = piece->name;
  edit.panel = on.id;
  if (kind.place == EditPlace::Edge && !on.edges.empty()) edit.edge = on.edges.front();
  return edit;
}

}  // namespace

ChangesPanel::ChangesPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      layout_(new QVBoxLayout(this)),
      add_(new QToolButton(this)),
      none_(new QLabel(tr("Nothing is changed by hand yet. Click a panel, then add."), this)) {
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(8);
  none_->setProperty("quiet", true);
  none_->setWordWrap(true);
  layout_->addWidget(none_);
  layout_->addWidget(add_, 0, Qt::AlignLeft);
  makeAddMenu();
  connect(&session_, &DesignSession::changed, this, &ChangesPanel::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, &ChangesPanel::showDesign);
  showDesign();
}

void ChangesPanel::makeAddMenu() {
  add_->setText(tr("Add…"));
  add_->setAccessibleName(tr("Add a change"));
  add_->setPopupMode(QToolButton::InstantPopup);
  auto* menu = new QMenu(add_);
  menu->setToolTipsVisible(true);
  for (const EditKind& kind : editKinds()) {
    QAction* action = menu->addAction(styleText(kind.title));
    action->setToolTip(styleText(kind.summary));
    connect(action, &QAction::triggered, this, [this, &kind] { add(kind); });
  }
  add_->setMenu(menu);
}

void ChangesPanel::add(const EditKind& kind) {
  if (session_.built().pieces.empty()) return;
  std::vector<Edit> edits = session_.design().edits;
  edits.push_back(placedEdit(kind, session_));
  changeEdits(session_, std::move(edits), styleText(kind.title));
}

void ChangesPanel::showDesign() {
  makeRows();
  none_->setVisible(rows_.empty());
  for (ChangeRow* row : rows_) row->showDesign();
}

/// One row an edit; they are made anew only when the kinds change.
void ChangesPanel::makeRows() {
  const std::vector<Edit>& edits = session_.design().edits;
  const bool same =
      rows_.size() == edits.size() &&
      std::equal(rows_.begin(), rows_.end(), edits.begin(),
                 [](const ChangeRow* row, const Edit& edit) { return row->kind() == edit.kind; });
  if (same) return;
  for (ChangeRow* row : rows_) {
    row->hide();
    row->deleteLater();
  }
  rows_.clear();
  for (int i = 0; i < static_cast<int>(edits.size()); ++i) {
    auto* row = new ChangeRow(session_, i, this);
    rows_.push_back(row);
    layout_->insertWidget(i + 1, row);
  }
}

}  // namespace creasewright
