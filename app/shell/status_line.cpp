#include "shell/status_line.h"

#include <QStatusBar>
#include <chrono>

namespace creasewright {

namespace {

constexpr std::chrono::seconds kToRead(8);

}  // namespace

StatusLine::StatusLine(QStatusBar* bar) : QObject(bar), bar_(bar) {}

void StatusLine::hover(const QString& words) {
  if (kept_.hasExpired()) bar_->showMessage(words);
}

void StatusLine::tell(const QString& sentence) {
  bar_->showMessage(sentence);
  kept_.setRemainingTime(kToRead);
}

}  // namespace creasewright
