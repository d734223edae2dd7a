#pragma once

#include <QObject>
#include <atomic>
#include <memory>
#include <vector>

#include "kits/kit_pages.h"

class QThread;

namespace creasewright {

/// Plans a kit beside the window, so that numbers can be changed meanwhile: a new start gives up
/// the plan before it.
class PlanWorker : public QObject {
  Q_OBJECT

 public:
  using Plan = std::shared_ptr<const Result<KitPlan>>;

  explicit PlanWorker(QObject* parent = nullptr);
  ~PlanWorker() override;

  /// Takes about so many seconds a card at most.
  void start(const ClassKit& kit, double seconds);
  /// Ends soon, with the best plan so far.
  void stop();
  [[nodiscard]] bool isRunning() const { return running_; }

 signals:
  /// The best so far of the card in work, and what no plan can beat; 0 = none yet.
  void progressed(qint64 cost, qint64 bound);
  void done(creasewright::PlanWorker::Plan plan);
  /// After done, when it was not stopped: what is found out about the plan besides.
  void found(creasewright::PlanWorker::Plan plan, creasewright::KitFindings findings);

 private:
  void finish(int run, const Plan& plan);

  std::vector<QThread*> threads_;  ///< those given up end when their solver comes back
  bool running_ = false;
  std::shared_ptr<std::atomic<bool>> stopped_;
  int run_ = 0;  // counts the starts: what an older one still sends is not heard
};

}  // namespace creasewright
