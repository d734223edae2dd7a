#include "panels/score_list.h"

#include <QHeaderView>

#include "bridge/label_text.h"
#include "bridge/style_text.h"
#include "pages/score_text.h"
#include "panels/hover_light.h"
#include "panels/lit_panels.h"

namespace creasewright {

ScoreList::ScoreList(DesignSession& session, QWidget* parent)
    : QTreeWidget(parent), session_(session) {
  setHeaderHidden(true);
  setRootIsDecorated(false);
  setIndentation(16);
  // Trees do not wrap their rows: a long line scrolls rather than lose its end.
  setTextElideMode(Qt::ElideNone);
  header()->setStretchLastSection(false);
  header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setAccessibleName(tr("Score plan"));
  connect(&session_, &DesignSession::changed, this, &ScoreList::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, &ScoreList::showDesign);
  connect(this, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
    session_.pinHighlight(item != nullptr ? item->data(0, Qt::UserRole).toStringList()
                                          : QStringList());
  });
  lightUnderMouse(*this, session_);
  showDesign();
}

void ScoreList::showDesign() {
  const QSignalBlocker quiet(this);
  clear();
  for (const BuiltPiece& piece : session_.built().pieces) {
    addPlan(piece);
  }
  expandAll();
}

void ScoreList::addPlan(const BuiltPiece& piece) {
  const Unit unit = session_.unit();
  const bool several = session_.built().pieces.size() > 1;
  QTreeWidgetItem* heading = nullptr;
  for (const ScoreSection& section :
       scoreText(piece.scorePlan, piece.flat.width, piece.flat.height)) {
    const QString words = labelText(section.heading, unit);
    if (!words.isEmpty() || several) {
      heading = new QTreeWidgetItem(this);
      heading->setText(0, several ? tr("%1: %2").arg(pieceTitle(piece.name), words) : words);
      QFont bold = font();
      bold.setBold(true);
      heading->setFont(0, bold);
    }
    for (std::size_t i = 0; i < section.lines.size(); ++i) {
      auto* line = heading != nullptr ? new QTreeWidgetItem(heading) : new QTreeWidgetItem(this);
      line->setText(0, labelText(section.lines[i], unit));
      line->setData(0, Qt::UserRole, panelsAlong(piece, section.places[i]));
    }
  }
}

}  // namespace creasewright
