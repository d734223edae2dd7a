#include "panels/score_list.h"

#include "bridge/score_text.h"
#include "bridge/style_text.h"

namespace creasewright {

ScoreList::ScoreList(DesignSession& session, QWidget* parent)
    : QTreeWidget(parent), session_(session) {
  setHeaderHidden(true);
  setRootIsDecorated(false);
  setIndentation(16);
  setWordWrap(true);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setAccessibleName(tr("Score plan"));
  connect(&session_, &DesignSession::changed, this, &ScoreList::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, &ScoreList::showDesign);
  showDesign();
}

void ScoreList::showDesign() {
  clear();
  for (const BuiltPiece& piece : session_.built().pieces) {
    addPlan(piece);
  }
  expandAll();
}

void ScoreList::addPlan(const BuiltPiece& piece) {
  const bool several = session_.built().pieces.size() > 1;
  const QString prefix = several ? pieceTitle(piece.piece.name) + QStringLiteral(": ") : QString();
  for (const ScoreSetup& setup : piece.scorePlan.setups) {
    auto* heading = new QTreeWidgetItem(this);
    const QString sides = sidesTitle(setup.sides, piece.flat.width, piece.flat.height);
    heading->setText(0, prefix + tr("Measured from %1").arg(sides));
    QFont bold = font();
    bold.setBold(true);
    heading->setFont(0, bold);
    for (const ScoreReading& reading : setup.readings) {
      auto* line = new QTreeWidgetItem(heading);
      line->setText(0, readingText(reading, session_.unit()));
    }
  }
  if (!piece.scorePlan.freeScores.empty()) {
    auto* heading = new QTreeWidgetItem(this);
    heading->setText(0, prefix + tr("Slanting or inner scores, by their ends"));
    for (const FreeScore& score : piece.scorePlan.freeScores) {
      auto* line = new QTreeWidgetItem(heading);
      line->setText(0, freeScoreText(score, session_.unit()));
    }
  }
}

}  // namespace creasewright
