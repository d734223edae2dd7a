#include "scene/line_pull.h"

#include <QCoreApplication>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "commands/edits.h"

namespace creasewright {

namespace {

struct PullSay {
  Q_DECLARE_TR_FUNCTIONS(pull)
};

}  // namespace

std::optional<LinePull> LinePull::take(DesignSession& session, const Handle& handle) {
  const auto place = placeOfHandle(session.design(), handle);
  std::vector<PullWay> ways = waysToPull(session.design(), handle);
  if (!place || ways.empty()) return std::nullopt;
  return LinePull(session, handle, std::move(ways), place->normal);
}

LinePull::LinePull(DesignSession& session, Handle handle, std::vector<PullWay> ways, Point normal)
    : session_(&session),
      handle_(std::move(handle)),
      ways_(std::move(ways)),
      normal_(normal),
      start_(session.design()) {
  static int count = 0;
  field_ = QStringLiteral("pull-%1").arg(++count);
}

const PullWay* LinePull::way(Grip grip) const {
  int index = 0;
  for (const PullWay& each : ways_) {
    if (grip.keepCavity && each.ofProduct) continue;
    if (index++ == chosen_) return &each;
  }
  return nullptr;
}

void LinePull::moveTo(double byMm, Grip grip) {
  by_ = byMm;
  grip_ = grip;
  const PullWay* by = way(grip);
  stopped_.reset();
  Design now = start_;
  if (by != nullptr) {
    Pulled pulled = pull(start_, handle_, *by, byMm, grip.offGrid);
    stopped_ = std::move(pulled.stopped);
    now = withValue(std::move(now), by->key, pulled.value.nm());
  }
  const QString words = by != nullptr ? parameterTitle(by->key) : QString();
  changeMeasures(*session_, now.parameters, words, field_);
}

void LinePull::choose(int way) {
  const int before = chosen_;
  chosen_ = way;
  if (this->way(grip_) == nullptr) {
    chosen_ = before;
    return;
  }
  moveTo(by_, grip_);
}

void LinePull::cancel() {
  stopped_.reset();
  changeMeasures(*session_, start_.parameters, {}, field_);
}

QString LinePull::measure() const { return parameterTitle(ways_.front().key); }

QStringList LinePull::words() const {
  const PullWay* by = way(grip_);
  if (by == nullptr) return {PullSay::tr("Only the product's own measures move this line.")};
  const Unit unit = session_->unit();
  QStringList lines{PullSay::tr("%1: %2").arg(
      parameterTitle(by->key), lengthText(session_->design().parameters.length(by->key), unit))};
  if (stopped_) lines += problemSentence(*stopped_, unit);
  int index = 0;
  for (const PullWay& other : ways_) {
    if (grip_.keepCavity && other.ofProduct) continue;
    ++index;
    if (&other != by) {
      lines += PullSay::tr("%1  %2", "a key and the measure it chooses")
                   .arg(QString::number(index), parameterTitle(other.key));
    }
  }
  return lines;
}

}  // namespace creasewright
