#include "classroom/plan_worker.h"

#include <QThread>

namespace creasewright {

namespace {

PlanWorker::Plan betterOf(Result<KitPlan> plan, const PlanWorker::Plan& known) {
  const bool isKnown = known != nullptr && known->ok();
  // Stopped before its easy plan was made: the one that is shown stays.
  const bool hard = isKnown && (*known)->isEasy() && plan.ok() && !plan->isEasy();
  const bool keep = isKnown && (!plan || hard || (*known)->cost() < plan->cost());
  return keep ? known : std::make_shared<const Result<KitPlan>>(std::move(plan));
}

}  // namespace

PlanWorker::PlanWorker(QObject* parent) : QObject(parent) {}

PlanWorker::~PlanWorker() {
  giveUp();
  for (QThread* thread : threads_) {
    thread->wait();
    delete thread;
  }
}

void PlanWorker::start(const BuiltKit& kit, double seconds, const Plan& known, ToolGrid trimmer) {
  giveUp();
  running_ = true;
  orders_ = std::make_shared<Orders>();
  PlanOptions options = optionsFor(seconds, run_, orders_);
  options.trimmer = trimmer;
  QThread* thread = QThread::create([this, kit, options, known, run = run_, orders = orders_] {
    work(kit, options, known, run, orders);
  });
  threads_.push_back(thread);
  connect(thread, &QThread::finished, this, [this, thread] {
    std::erase(threads_, thread);
    thread->deleteLater();
  });
  thread->start();
}

/// In its own thread.
void PlanWorker::work(const BuiltKit& kit, const PlanOptions& options, const Plan& known, int run,
                      const std::shared_ptr<Orders>& orders) {
  const Plan plan = betterOf(planKit(kit, options), known);
  QMetaObject::invokeMethod(
      this, [this, run, plan] { finish(run, plan); }, Qt::QueuedConnection);
  if (!plan->ok() || orders->giveUp) return;
  const Plan more = std::make_shared<const Result<KitPlan>>(withFindings(plan->value()));
  const auto tell = [this, run, plan, more] {
    if (run == run_) emit found(plan, more);
  };
  QMetaObject::invokeMethod(this, tell, Qt::QueuedConnection);
}

PlanOptions PlanWorker::optionsFor(double seconds, int run, const std::shared_ptr<Orders>& orders) {
  PlanOptions options;
  options.seconds = seconds;
  // The planner asks thousands of times; only what has changed is worth an event.
  options.goOn = [this, run, orders, last = PlanProgress()](const PlanProgress& now) mutable {
    if (now == last) return !orders->stop;
    last = now;
    const auto tell = [this, run, now] {
      if (run == run_) emit progressed(now.cost, now.bound);
    };
    QMetaObject::invokeMethod(this, tell, Qt::QueuedConnection);
    return !orders->stop;
  };
  return options;
}

void PlanWorker::stop() {
  if (orders_) orders_->stop = true;
}

void PlanWorker::giveUp() {
  stop();
  if (orders_) orders_->giveUp = true;
  running_ = false;
  ++run_;
}

void PlanWorker::finish(int run, const Plan& plan) {
  if (run != run_) return;
  running_ = false;
  emit done(plan);
}

}  // namespace creasewright
