#include "panels/checks_panel.h"

#include <QLabel>
#include <QVBoxLayout>

#include "base/problem_extra.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "session/places.h"
#include "widgets/icon.h"

namespace creasewright {

ChecksPanel::ChecksPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      fine_(new QLabel(this)),
      list_(new QListWidget(this)),
      lights_(*list_, session.selection()) {
  fine_->setText(QStringLiteral("✓  ") + tr("All checks hold."));
  fine_->setProperty("fine", true);
  fine_->setAlignment(Qt::AlignTop);
  fine_->setContentsMargins(4, 4, 4, 4);
  list_->setWordWrap(true);
  list_->setTextElideMode(Qt::ElideNone);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setAccessibleName(tr("Checks that do not hold"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->addWidget(fine_);
  layout->addWidget(list_, 1);
  layout->addStretch(0);
  later_.setSingleShot(true);
  connect(&later_, &QTimer::timeout, this, &ChecksPanel::showDesign);
  connect(&session_, &DesignSession::changed, this, [this] {
    if (session_.isInHand()) return later_.start(0);
    later_.stop();
    showDesign();
  });
  connect(&session_, &DesignSession::unitChanged, this, &ChecksPanel::showDesign);
  connect(list_, &QListWidget::currentRowChanged, this, &ChecksPanel::askForParameter);
  connect(list_, &QListWidget::itemClicked, this, [this] { askForParameter(list_->currentRow()); });
  showDesign();
}

void ChecksPanel::showDesign() {
  const QSignalBlocker quiet(list_);
  list_->clear();
  for (const Problem& problem : session_.problems()) {
    const bool warning = problem.severity == Severity::Warning;
    auto* item =
        new QListWidgetItem(lineIcon(warning ? QStringLiteral("mind") : QStringLiteral("problem")),
                            problemSentence(problem, session_.unit()), list_);
    item->setToolTip(tr("Click to see the place."));
    item->setData(kPlaceRole, rowPlace(placeOfProblem(session_.built(), problem)));
  }
  const int count = list_->count();
  fine_->setVisible(onlyWarnings(session_.problems()));
  list_->setVisible(count > 0);
  lights_.tint();
  emit countChanged(count);
}

void ChecksPanel::askForParameter(int row) {
  const auto index = static_cast<std::size_t>(row);
  if (row < 0 || index >= session_.problems().size()) return;
  const Problem& problem = session_.problems()[index];
  if (!extraOfMeasure(problem).empty()) return;
  if (session_.design().parameters.has(problem.where)) emit parameterAsked(text(problem.where));
}

}  // namespace creasewright
