#include "panels/step_list.h"

#include "guide/make_guide.h"
#include "panels/keeps_up.h"
#include "papers/guide/guide_words.h"
#include "session/places.h"

namespace creasewright {

StepList::StepList(DesignSession& session, QWidget* parent)
    : QListWidget(parent), session_(session) {
  setAccessibleName(tr("Steps"));
  setWordWrap(true);
  new KeepsUp(
      session_, *this, [this] { showDesign(); }, KeepsUp::Start::WhenSeen);
}

void StepList::showDesign() {
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
