#include "cutting/work.h"

#include <algorithm>
#include <utility>

namespace creasewright {
namespace {

constexpr double kAskEvery = 3e6;

}  // namespace

Work::Work(double limit, std::function<bool()> goOn) : limit_(limit), goOn_(std::move(goOn)) {
  if (goOn_) stopped_ = !goOn_();
}

bool Work::add(double steps) {
  spent_ += steps;
  if (goOn_ && !stopped_ && spent_ - asked_ >= kAskEvery) {
    asked_ = spent_;
    stopped_ = !goOn_();
  }
  return mayGoOn();
}

WorkShare::WorkShare(Work& work, double steps) : work_(work), outer_(work.limit_) {
  work.limit_ = std::min(outer_, work.spent_ + steps);
}

WorkShare::~WorkShare() { work_.limit_ = outer_; }

WorkBeyond::WorkBeyond(Work& work, double steps) : work_(work), outer_(work.limit_) {
  work.limit_ = work.spent_ + steps;
}

WorkBeyond::~WorkBeyond() { work_.limit_ = outer_; }

}  // namespace creasewright
