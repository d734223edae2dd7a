#include "classroom/kit_preview.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "papers/kit/kit_pages.h"
#include "papers/kit/kit_words.h"
#include "widgets/page_preview.h"
#include "widgets/page_scroll.h"

namespace creasewright {

namespace {

constexpr double secondsToPlan = 0.7;  // while numbers change
constexpr double secondsToLook = 10;   // for a better plan, when the first is not proven

}  // namespace

KitPreview::KitPreview(KitSession& session, const KitSaving& saving, QWidget* parent)
    : QWidget(parent),
      session_(session),
      saving_(saving),
      status_(new QLabel(this)),
      stop_(new QPushButton(tr("Stop looking"), this)),
      pages_(new PagePreview(this)),
      worker_(new PlanWorker(this)) {
  status_->setWordWrap(true);
  status_->setProperty("quiet", true);
  stop_->setAutoDefault(false);
  stop_->hide();
  auto* top = new QHBoxLayout;
  top->addWidget(status_, 1);
  top->addWidget(stop_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addLayout(top);
  layout->addWidget(new PageScroll(pages_, kPreviewWidth, this), 1);
  connect(stop_, &QPushButton::clicked, worker_, &PlanWorker::stop);
  connect(worker_, &PlanWorker::done, this, &KitPreview::showPlan);
  connect(worker_, &PlanWorker::found, this, &KitPreview::showFindings);
  connect(worker_, &PlanWorker::progressed, this, &KitPreview::showProgress);
  connect(&session_, &KitSession::changed, this, &KitPreview::planAnew);
}

const KitPlan* KitPreview::plan() const {
  return shown_ != nullptr && shown_->ok() ? &shown_->value() : nullptr;
}

ToolGrid KitPreview::trimmer() const {
  return saving_.choices().unit == Unit::Inch ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
}

void KitPreview::tell(const QString& words) { status_->setText(words); }

void KitPreview::planAnew() {
  looking_ = false;
  shown_ = nullptr;
  stop_->hide();
  if (session_.isCurrent()) {
    worker_->start(*session_.built(), secondsToPlan, nullptr, trimmer());
  } else {
    worker_->giveUp();
    showProblem(*session_.problem());
  }
  emit planChanged();
}

/// A plan that is not proven is shown, and a better one looked for meanwhile.
void KitPreview::showPlan(const PlanWorker::Plan& result) {
  const Result<KitPlan>& plan = *result;
  stop_->hide();
  if (!plan) {
    showProblem(plan.problem());
    return;
  }
  tell(sheetsSentence(*plan));
  if (shown_ != result) showPages(result);
  if (plan->fewestProven() || looking_) return;
  looking_ = true;
  stop_->show();
  worker_->start(*session_.built(), secondsToLook, shown_, trimmer());
}

void KitPreview::showFindings(const PlanWorker::Plan& plan, const PlanWorker::Plan& withFindings) {
  if (plan == shown_) showPages(withFindings);
}

void KitPreview::showProblem(const Problem& problem) {
  const Unit unit = saving_.choices().unit;
  tell(problemSentence(problem, unit));
  pages_->showPages({}, unit);
}

void KitPreview::showPages(const PlanWorker::Plan& plan) {
  shown_ = plan;
  const KitChoices now = saving_.choices();
  pages_->showPages(kitPages(plan->value(), now.unit, now.paper), now.unit);
  emit planChanged();
}

void KitPreview::showProgress(qint64 cost, qint64 bound) {
  if (looking_ && cost > bound && plan() != nullptr)
    tell(tr("%n sheet(s); looking for a better plan …", nullptr, plan()->sheets));
}

}  // namespace creasewright
