#include "panels/step_list.h"

#include <QShowEvent>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "guide/guide_words.h"
#include "guide/make_guide.h"

namespace creasewright {

namespace {

/// Ids of the panels that a fold stage moves.
QStringList movedPanels(const Step& step, const BuiltDesign& built) {
  QStringList ids;
  if (step.code != StepCode::FoldStage) {
    return ids;
  }
  const Net& net = built.pieces.at(static_cast<std::size_t>(step.piece)).piece.net;
  for (const Fold& fold : step.folds) {
    ids.append(text(net.panels.at(static_cast<std::size_t>(fold.child)).id));
  }
  return ids;
}

}  // namespace

StepList::StepList(DesignSession& session, QWidget* parent)
    : QListWidget(parent), session_(session) {
  setAccessibleName(tr("Steps"));
  setWordWrap(true);
  connect(&session_, &DesignSession::changed, this, &StepList::refresh);
  connect(&session_, &DesignSession::unitChanged, this, &StepList::refresh);
  connect(this, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
    session_.pinHighlight(item != nullptr ? item->data(Qt::UserRole).toStringList()
                                          : QStringList());
  });
}

/// A list nobody sees need not keep up.
void StepList::refresh() {
  stale_ = true;
  if (isVisible()) {
    showDesign();
  }
}

void StepList::showEvent(QShowEvent* event) {
  QListWidget::showEvent(event);
  if (stale_) {
    showDesign();
  }
}

void StepList::showDesign() {
  stale_ = false;
  const QSignalBlocker quiet(this);
  clear();
  const BuiltDesign& built = session_.built();
  const Guide guide = makeGuide(built);
  const GuideUnits units =
      session_.unit() == Unit::Inch ? GuideUnits::Inch : GuideUnits::Millimetre;
  const GuideWords words = wordGuide(guide, built, units);
  for (std::size_t i = 0; i < guide.steps.size(); ++i) {
    const StepWords& step = words.steps[i];
    auto* item = new QListWidgetItem(
        tr("%1  %2: %3", "number, title and text of a step")
            .arg(QString::number(i + 1), step.title, step.sentences.join(QLatin1Char(' '))),
        this);
    item->setData(Qt::UserRole, movedPanels(guide.steps[i], built));
  }
}

}  // namespace creasewright
