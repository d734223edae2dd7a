#include "panels/step_list.h"

#include <QShowEvent>

#include "guide/make_guide.h"
#include "papers/guide/guide_words.h"
#include "session/places.h"

namespace creasewright {

StepList::StepList(DesignSession& session, QWidget* parent)
    : QListWidget(parent), session_(session) {
  setAccessibleName(tr("Steps"));
  setWordWrap(true);
  connect(&session_, &DesignSession::changed, this, &StepList::refresh);
  connect(&session_, &DesignSession::unitChanged, this, &StepList::refresh);
}

/// A list nobody sees need not keep up.
void StepList::refresh() {
  stale_ = true;
  if (isVisible()) showDesign();
}

void StepList::showEvent(QShowEvent* event) {
  QListWidget::showEvent(event);
  if (stale_) showDesign();
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
            .arg(QString::number(i + 1), step.title, step.told().join(QLatin1Char(' '))),
        this);
    item->setData(kPlaceRole, rowPlace(placeOfStep(built, guide.steps[i])));
  }
  lights_.tint();
}

}  // namespace creasewright
