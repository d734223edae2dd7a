#pragma once

#include <condition_variable>
#include <mutex>
#include <thread>

#include "cutting/plan_cutting.h"

namespace creasewright {

/// While it lives, says on standard error every few seconds that a kit is still being planned, and
/// how far that is; nothing of what is ready sooner.
class PlanningNotice {
 public:
  PlanningNotice();
  PlanningNotice(const PlanningNotice&) = delete;
  PlanningNotice& operator=(const PlanningNotice&) = delete;
  ~PlanningNotice();

  /// Options for planKit that tell this how far it is.
  [[nodiscard]] PlanOptions options();

 private:
  void run();

  std::mutex guard_;
  std::condition_variable ended_;
  bool end_ = false;
  PlanProgress progress_;
  std::thread thread_;
};

}  // namespace creasewright
