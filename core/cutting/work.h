#pragma once

#include <functional>

namespace creasewright {

/// Counts the work of a plan in steps, so that the same kit gets the same plan on every machine,
/// busy or not: no decision looks at a clock. A step takes about a nanosecond of an ordinary
/// machine; what each kind of work weighs was measured once and is part of the plan. Whoever wants
/// the plan to stop is asked after every few million steps.
class Work {
 public:
  static constexpr double kSecond = 1e9;  ///< steps

  /// `goOn` is asked now and then; false stops. Empty = never.
  explicit Work(double limit, std::function<bool()> goOn = {});

  /// Counts steps that were done; whether there may be more.
  bool add(double steps);
  [[nodiscard]] bool mayGoOn() const { return !stopped_ && spent_ < limit_; }
  /// Somebody wants no more, however much is left.
  [[nodiscard]] bool stopped() const { return stopped_; }
  [[nodiscard]] double spent() const { return spent_; }
  [[nodiscard]] double left() const { return limit_ > spent_ ? limit_ - spent_ : 0; }

 private:
  friend class WorkShare;
  friend class WorkBeyond;
  double limit_;
  double spent_ = 0;
  double asked_ = 0;  // at so many steps
  bool stopped_ = false;
  std::function<bool()> goOn_;
};

/// While it lives only so many more steps may be done.
class WorkShare {
 public:
  WorkShare(Work& work, double steps);
  WorkShare(const WorkShare&) = delete;
  WorkShare& operator=(const WorkShare&) = delete;
  ~WorkShare();

 private:
  Work& work_;
  double outer_;
};

/// While it lives so many more steps may be done, beyond the limit too.
class WorkBeyond {
 public:
  WorkBeyond(Work& work, double steps);
  WorkBeyond(const WorkBeyond&) = delete;
  WorkBeyond& operator=(const WorkBeyond&) = delete;
  ~WorkBeyond();

 private:
  Work& work_;
  double outer_;
};

}  // namespace creasewright
