#include "panels/score_list.h"

#include "bridge/design_words.h"
#include "bridge/label_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "pages/score_text.h"
#include "panels/keeps_up.h"
#include "session/places.h"
#include "widgets/wrapped_rows.h"

namespace creasewright {

ScoreList::ScoreList(DesignSession& session, QWidget* parent)
    : QTreeWidget(parent), session_(session) {
  setHeaderHidden(true);
  setRootIsDecorated(false);
  setIndentation(16);
  new WrappedRows(this);
  setSelectionMode(QAbstractItemView::SingleSelection);
  setAccessibleName(tr("Score plan"));
  connect(
      this, &QTreeWidget::itemChanged, this,
      [this](QTreeWidgetItem* item) {
        if (item->checkState(0) == Qt::Checked)
          done_.insert(tickOf(*item));
        else
          done_.remove(tickOf(*item));
      });
  new KeepsUp(session_, *this, [this] { showDesign(); });
}

/// What a row says, with its heading and style: the same reading again is ticked still.
QString ScoreList::tickOf(const QTreeWidgetItem& row) const {
  const QString heading = row.parent() != nullptr ? row.parent()->text(0) : QString();
  return QStringList{text(styleIdOf(session_.design())), heading, row.text(0)}.join(
      QLatin1Char('\n'));
}

void ScoreList::showDesign() {
  const QSignalBlocker quiet(this);
  clear();
  for (std::size_t i = 0; i < session_.built().pieces.size(); ++i) addPlan(static_cast<int>(i));
  expandAll();
  lights_.tint();
}

void ScoreList::addPlan(int index) {
  const BuiltDesign& built = session_.built();
  const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(index)];
  const Unit unit = session_.unit();
  const bool several = built.pieces.size() > 1;
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
      line->setFlags(line->flags() | Qt::ItemIsUserCheckable);
      line->setCheckState(0, done_.contains(tickOf(*line)) ? Qt::Checked : Qt::Unchecked);
      line->setData(0, kPlaceRole, rowPlace(placeOfLines(built, index, section.places[i])));
    }
  }
}

}  // namespace creasewright
