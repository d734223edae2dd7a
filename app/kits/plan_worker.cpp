#include "kits/plan_worker.h"

#include <QThread>

namespace creasewright {

PlanWorker::PlanWorker(QObject* parent) : QObject(parent) {}

PlanWorker::~PlanWorker() {
  stop();
  for (QThread* thread : threads_) {
    thread->wait();
    delete thread;
  }
}

void PlanWorker::start(const ClassKit& kit, double seconds) {
  stop();
  running_ = true;
  const int run = ++run_;
  const auto stopped = std::make_shared<std::atomic<bool>>(false);
  stopped_ = stopped;
  QThread* thread = QThread::create([this, kit, seconds, run, stopped] {
    PlanOptions options;
    options.seconds = seconds;
    // The planner asks thousands of times; only what has changed is worth an event.
    options.goOn = [this, run, stopped, last = PlanProgress()](const PlanProgress& now) mutable {
      if (now == last) {
        return !stopped->load();
      }
      last = now;
      const auto tell = [this, run, now] {
        if (run == run_) {
          emit progressed(now.cost, now.bound);
        }
      };
      QMetaObject::invokeMethod(this, tell, Qt::QueuedConnection);
      return !stopped->load();
    };
    const Plan plan = std::make_shared<const Result<KitPlan>>(planKit(kit, options));
    QMetaObject::invokeMethod(
        this, [this, run, plan] { finish(run, plan); }, Qt::QueuedConnection);
    if (!plan->ok() || stopped->load()) {
      return;
    }
    const KitFindings findings = findingsFor(kit, plan->value());
    const auto tell = [this, run, plan, findings] {
      if (run == run_) {
        emit found(plan, findings);
      }
    };
    QMetaObject::invokeMethod(this, tell, Qt::QueuedConnection);
  });
  threads_.push_back(thread);
  connect(thread, &QThread::finished, this, [this, thread] {
    std::erase(threads_, thread);
    thread->deleteLater();
  });
  thread->start();
}

void PlanWorker::stop() {
  if (stopped_) {
    stopped_->store(true);
  }
}

void PlanWorker::finish(int run, const Plan& plan) {
  if (run != run_) {
    return;
  }
  running_ = false;
  emit done(plan);
}

}  // namespace creasewright
