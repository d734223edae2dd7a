#pragma once

#include <QObject>
#include <atomic>
#include <memory>
#include <vector>

#include "kits/plan_kit.h"

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

  /// `trimmer` as in PlanOptions. Takes about so many seconds a card at most. A plan `known` of the
  /// same kit comes back when none is better.
  void start(const BuiltKit& kit, double seconds, const Plan& known = nullptr,
             ToolGrid trimmer = {});
  /// Ends the planning soon, with the best plan so far.
  void stop();
  /// Ends soon, and nothing more is heard of it.
  void giveUp();
  [[nodiscard]] bool isRunning() const { return running_; }

 signals:
  /// The best so far of the card in work, and what no plan can beat; 0 = none yet.
  void progressed(qint64 cost, qint64 bound);
  void done(creasewright::PlanWorker::Plan plan);
  /// After done: `plan` again with its findings.
  void found(creasewright::PlanWorker::Plan plan, creasewright::PlanWorker::Plan withFindings);

 private:
  /// What a run listens to while it works.
  struct Orders {
    std::atomic<bool> stop = false;    ///< the planning
    std::atomic<bool> giveUp = false;  ///< all of it
  };

  void work(const BuiltKit& kit, const PlanOptions& options, const Plan& known, int run,
            const std::shared_ptr<Orders>& orders);
  [[nodiscard]] PlanOptions optionsFor(double seconds, int run,
                                       const std::shared_ptr<Orders>& orders);
  void finish(int run, const Plan& plan);

  std::vector<QThread*> threads_;  ///< those given up end when their solver comes back
  bool running_ = false;
  std::shared_ptr<Orders> orders_;
  int run_ = 0;  // counts the starts: what an older one still sends is not heard
};

}  // namespace creasewright
