#include "scene/net_pull.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "commands/edits.h"

namespace creasewright {

namespace {

constexpr double kMissed = 0.01;  // mm

struct PullSay {
  Q_DECLARE_TR_FUNCTIONS(pull)
};

/// Two lines shall go their own ways: measures that move only one of them come first.
void preferOwnWays(std::vector<PullWay>& first, std::vector<PullWay>& second) {
  const auto alone = [](std::vector<PullWay>& ways, const std::vector<PullWay>& others) {
    std::stable_partition(ways.begin(), ways.end(), [&](const PullWay& way) {
      return std::ranges::find(others, way.key, &PullWay::key) == others.end();
    });
  };
  alone(first, second);
  alone(second, first);
}

/// How far a thing lies from where it was in another design, mm.
double goneFrom(const Design& before, const Design& now, const Movable& thing) {
  if (const auto* distance = std::get_if<BlankDistance>(&thing))
    return distanceOf(now, *distance).value_or(0) - distanceOf(before, *distance).value_or(0);
  const auto& line = std::get<Handle>(thing);
  const auto from = placeOfHandle(before, line);
  const auto to = placeOfHandle(now, line);
  return from && to ? dot(to->middle - from->middle, from->normal) : 0;
}

}  // namespace

std::optional<NetPull> NetPull::take(DesignSession& session, const std::vector<Movable>& things) {
  std::vector<Held> held;
  for (const Movable& thing : things) {
    std::vector<PullWay> ways = waysToPull(session.design(), thing);
    if (ways.empty()) continue;
    const auto* line = std::get_if<Handle>(&thing);
    const auto place = line != nullptr ? placeOfHandle(session.design(), *line) : std::nullopt;
    held.push_back({thing, place ? place->normal : Point(), std::move(ways)});
  }
  if (held.empty()) return std::nullopt;
  if (held.size() == 2) preferOwnWays(held[0].ways, held[1].ways);
  return NetPull(session, std::move(held));
}

NetPull::NetPull(DesignSession& session, std::vector<Held> held)
    : session_(&session), held_(std::move(held)), start_(session.design()) {
  static int count = 0;
  field_ = QStringLiteral("pull-%1").arg(++count);
}

std::vector<const PullWay*> NetPull::openWays(const Held& held) const {
  std::vector<const PullWay*> open;
  for (const PullWay& way : held.ways) {
    const bool taken = std::ranges::any_of(
        held_, [&](const Held& other) { return &other != &held && other.used == way.key; });
    if (!taken && !(grip_.keepCavity && way.ofProduct)) open.push_back(&way);
  }
  return open;
}

void NetPull::moveTo(Point byMm, Grip grip) {
  for (Held& held : held_) held.by = dot(byMm, held.normal);
  grip_ = grip;
  move();
}

void NetPull::growBy(double byMm, Grip grip) {
  held_.front().by = byMm;
  grip_ = grip;
  move();
}

void NetPull::move() {
  Design now = start_;
  QStringList titles;
  for (Held& held : held_) held.used = {};
  for (Held& held : held_) {
    const std::vector<const PullWay*> open = openWays(held);
    const auto index = static_cast<std::size_t>(&held == &held_.front() ? chosen_ : 0);
    held.stopped.reset();
    if (index >= open.size()) continue;
    const PullWay& way = *open[index];
    held.used = way.key;
    titles += parameterTitle(way.key);
    // What another line's measure has done to this one counts.
    const bool first = titles.size() == 1;
    const double left = first ? held.by : held.by - goneFrom(start_, now, held.thing);
    Pulled pulled = pull(now, held.thing, way, left, grip_.offGrid);
    held.stopped = std::move(pulled.stopped);
    now = withValue(std::move(now), way.key, pulled.value.nm());
  }
  changeMeasures(*session_, now.parameters, titles.join(QStringLiteral(", ")), field_);
}

void NetPull::choose(int way) {
  if (way >= static_cast<int>(openWays(held_.front()).size())) return;
  chosen_ = way;
  move();
}

void NetPull::cancel() {
  for (Held& held : held_) held.stopped.reset();
  changeMeasures(*session_, start_.parameters, {}, field_);
}

QStringList NetPull::measures() const {
  QStringList titles;
  for (const PullWay* way : openWays(held_.front())) titles += parameterTitle(way->key);
  return titles;
}

QStringList NetPull::strongest() const {
  QStringList titles;
  for (const Held& held : held_) {
    const auto free = std::ranges::find_if(
        held.ways, [&](const PullWay& way) { return !titles.contains(parameterTitle(way.key)); });
    if (free != held.ways.end()) titles += parameterTitle(free->key);
  }
  return titles;
}

QStringList NetPull::limits() const {
  QStringList found;
  for (const Held& held : held_)
    if (held.stopped) found += problemSentence(*held.stopped, session_->unit());
  if (!found.isEmpty()) return found;
  for (const Held& held : held_) {
    const auto* distance = std::get_if<BlankDistance>(&held.thing);
    const auto now = distance != nullptr ? distanceOf(session_->design(), *distance) : std::nullopt;
    if (now && std::abs(goneFrom(start_, session_->design(), held.thing) - held.by) > kMissed)
      found += PullSay::tr("The nearest to it is %1.")
                   .arg(lengthText(Length::mm(*now), session_->unit()));
  }
  return found;
}

/// Where an upright or level line lies, as a board reads it from both sides.
void NetPull::addReadings(QStringList& lines) const {
  const Unit unit = session_->unit();
  for (const Held& held : held_) {
    const auto* line = std::get_if<Handle>(&held.thing);
    const bool upright = std::abs(held.normal.x) > 0.9999;
    if (line == nullptr || (!upright && std::abs(held.normal.y) < 0.9999)) continue;
    const auto near = distanceOf(session_->design(), {line->piece, upright, *line});
    const auto size = distanceOf(session_->design(), {line->piece, upright, {}});
    if (!near || !size) continue;
    const QString first = lengthText(Length::mm(*near), unit);
    const QString second = lengthText(Length::mm(*size - *near), unit);
    lines += upright ? PullSay::tr("%1 from the left, %2 from the right").arg(first, second)
                     : PullSay::tr("%1 from below, %2 from above").arg(first, second);
  }
}

QStringList NetPull::words() const {
  const Unit unit = session_->unit();
  QStringList lines;
  for (const Held& held : held_) {
    if (held.used.empty()) continue;
    lines += PullSay::tr("%1: %2").arg(
        parameterTitle(held.used),
        lengthText(session_->design().parameters.length(held.used), unit));
  }
  if (lines.isEmpty()) return {PullSay::tr("Only the product's own measures move this line.")};
  lines += limits();
  addReadings(lines);
  if (count() > 1) return lines;
  int index = 0;
  for (const PullWay* other : openWays(held_.front())) {
    ++index;
    if (other->key != held_.front().used)
      lines += PullSay::tr("%1  %2", "a key and the measure it chooses")
                   .arg(QString::number(index), parameterTitle(other->key));
  }
  return lines;
}

}  // namespace creasewright
