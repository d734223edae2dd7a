#include "panels/checks_panel.h"

#include <QLabel>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "panels/hover_light.h"
#include "widgets/icon.h"

namespace creasewright {

QStringList panelsOf(const Problem& problem, const BuiltDesign& built) {
  QStringList named;
  const auto add = [&](const std::string& name) {
    for (const BuiltPiece& piece : built.pieces) {
      if (piece.net.find(name)) {
        named += text(name);
        return;
      }
    }
  };
  add(problem.where);
  for (const ProblemValue& value : problem.values) {
    if (const auto* name = std::get_if<std::string>(&value)) {
      add(*name);
    }
  }
  if (problem.code == ProblemCode::CavityTooSmall && !built.pieces.empty() &&
      built.pieces.front().cavity) {
    add(built.pieces.front().cavity->panel);
  }
  return named;
}

ChecksPanel::ChecksPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent), session_(session), fine_(new QLabel(this)), list_(new QListWidget(this)) {
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
  connect(&session_, &DesignSession::changed, this, &ChecksPanel::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, &ChecksPanel::showDesign);
  connect(list_, &QListWidget::currentRowChanged, this, &ChecksPanel::showPlace);
  connect(list_, &QListWidget::itemClicked, this, [this] { showPlace(list_->currentRow()); });
  lightUnderMouse(*list_, session_);
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
    item->setData(Qt::UserRole, panelsOf(problem, session_.built()));
  }
  const int count = list_->count();
  fine_->setVisible(onlyWarnings(session_.problems()));
  list_->setVisible(count > 0);
  emit countChanged(count);
}

void ChecksPanel::showPlace(int row) {
  const auto index = static_cast<std::size_t>(row);
  if (row < 0 || index >= session_.problems().size()) {
    return;
  }
  const Problem problem = session_.problems()[index];
  if (session_.design().parameters.has(problem.where)) {
    emit parameterAsked(text(problem.where));
    return;
  }
  session_.pinHighlight(panelsOf(problem, session_.built()));
}

}  // namespace creasewright
