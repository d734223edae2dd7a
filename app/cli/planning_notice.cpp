#include "cli/planning_notice.h"

#include <chrono>

#include "cli/output.h"

namespace creasewright {

namespace {

constexpr std::chrono::seconds kNoticePause{4};

QString noticeLine(int seconds, const PlanProgress& progress) {
  const QString start = Cli::tr("Planning for %1 s; Ctrl+C gives up.").arg(seconds);
  if (progress.cost <= 0 || progress.bound <= 0) return start;
  // Sheets or prices: told is how far the best so far is above what no plan can beat, rounded up.
  const auto above = ((progress.cost - progress.bound) * 100 + progress.bound - 1) / progress.bound;
  return start + QLatin1Char(' ') +
         Cli::tr("The card in work is at most %1 % above the best.")
             .arg(static_cast<qlonglong>(above));
}

}  // namespace

PlanningNotice::PlanningNotice() : thread_([this] { run(); }) {}

PlanningNotice::~PlanningNotice() {
  {
    const std::lock_guard lock(guard_);
    end_ = true;
  }
  ended_.notify_all();
  thread_.join();
}

PlanOptions PlanningNotice::options() {
  PlanOptions options;
  options.goOn = [this](const PlanProgress& now) {
    const std::lock_guard lock(guard_);
    progress_ = now;
    return true;
  };
  return options;
}

void PlanningNotice::run() {
  std::unique_lock lock(guard_);
  for (int told = 1; !ended_.wait_for(lock, kNoticePause, [this] { return end_; }); ++told)
    fail(noticeLine(told * static_cast<int>(kNoticePause.count()), progress_));
}

}  // namespace creasewright
