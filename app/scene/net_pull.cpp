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
  for (const PullWay& way : held.ways)
    if (!(grip_.keepCavity && way.ofProduct)) open.push_back(&way);
  return open;
}

std::vector<std::string_view> NetPull::openKeys() const {
  std::vector<std::string_view> keys;
  for (const Held& held : held_)
    for (const PullWay* way : openWays(held))
      if (std::ranges::find(keys, way->key) == keys.end()) keys.push_back(way->key);
  return keys;
}

std::vector<std::string_view> NetPull::keysToChange() const {
  if (withAll_) return openKeys();
  std::vector<std::string_view> keys;
  for (const Held& held : held_) {
    const bool first = &held == &held_.front();
    int skipped = 0;
    for (const PullWay* way : openWays(held)) {
      if (std::ranges::find(keys, way->key) != keys.end()) continue;
      if (first && skipped++ < chosen_) continue;
      keys.push_back(way->key);
      break;
    }
  }
  return keys;
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
  used_ = keysToChange();
  stopped_.reset();
  if (used_.empty()) return changeTo(start_.parameters);
  if (held_.size() > 1 || used_.size() > 1) return moveTogether(used_);
  const auto way = std::ranges::find(held_.front().ways, used_.front(), &PullWay::key);
  moveAlone(*way);
}

void NetPull::moveAlone(const PullWay& way) {
  if (!alone_) alone_ = HeldThing::take(start_, held_.front().thing);
  if (!alone_) return;
  Pulled pulled = alone_->pull(way, held_.front().by, grip_.offGrid);
  stopped_ = std::move(pulled.stopped);
  changeTo(withValue(start_, way.key, pulled.value.nm()).parameters);
}

void NetPull::moveTogether(const std::vector<std::string_view>& keys) {
  std::vector<Aim> aims;
  for (const Held& held : held_) aims.push_back({held.thing, held.by});
  PulledTogether pulled = pullTogether(start_, aims, keys, grip_.offGrid);
  stopped_ = std::move(pulled.stopped);
  Design now = start_;
  for (const auto& [key, value] : pulled.values) now = withValue(std::move(now), key, value.nm());
  changeTo(now.parameters);
}

void NetPull::changeTo(const Parameters& measures) {
  QStringList titles;
  for (const std::string_view key : used_) titles += parameterTitle(key);
  session_->setInHand(true);
  changeMeasures(*session_, measures, titles.join(QStringLiteral(", ")), field_);
  session_->setInHand(false);
  words_ = wordsNow();
}

void NetPull::choose(int way) {
  if (way >= static_cast<int>(openWays(held_.front()).size())) return;
  chosen_ = way;
  withAll_ = false;
  move();
}

void NetPull::chooseAll() {
  if (!canPullWithAll()) return;
  withAll_ = true;
  move();
}

void NetPull::cancel() {
  stopped_.reset();
  used_.clear();
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
  if (stopped_) return {problemSentence(*stopped_, session_->unit())};
  QStringList found;
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
  if (!session_->isCurrent()) return;
  for (const Held& held : held_) {
    const auto* line = std::get_if<Handle>(&held.thing);
    const bool upright = std::abs(held.normal.x) > 0.9999;
    if (line == nullptr || (!upright && std::abs(held.normal.y) < 0.9999)) continue;
    const BuiltPiece& piece = session_->built().pieces.at(static_cast<std::size_t>(line->piece));
    const auto near = distanceOn(piece.net, piece.flat, {line->piece, upright, *line});
    if (!near) continue;
    const double size = upright ? piece.flat.width : piece.flat.height;
    const QString first = lengthText(Length::mm(*near), unit);
    const QString second = lengthText(Length::mm(size - *near), unit);
    lines += upright ? PullSay::tr("%1 from the left, %2 from the right").arg(first, second)
                     : PullSay::tr("%1 from below, %2 from above").arg(first, second);
  }
}

/// The keys that choose other measures.
void NetPull::addChoices(QStringList& lines) const {
  int index = 0;
  for (const PullWay* other : openWays(held_.front())) {
    ++index;
    if (index < 10 && (withAll_ || other->key != used_.front()))
      lines += PullSay::tr("%1  %2", "a key and the measure it chooses")
                   .arg(QString::number(index), parameterTitle(other->key));
  }
  if (!withAll_ && canPullWithAll())
    lines += PullSay::tr("%1  %2", "a key and the measure it chooses")
                 .arg(QStringLiteral("0"), PullSay::tr("all together, each a little"));
}

QStringList NetPull::wordsNow() const {
  const Unit unit = session_->unit();
  QStringList lines;
  for (const std::string_view key : used_) {
    const Length now = session_->design().parameters.length(key);
    if (used_.size() > 2 && now == start_.parameters.length(key)) continue;
    lines += PullSay::tr("%1: %2").arg(parameterTitle(key), lengthText(now, unit));
  }
  if (used_.empty()) return {PullSay::tr("Only the product's own measures move this line.")};
  lines += limits();
  addReadings(lines);
  addChoices(lines);
  return lines;
}

}  // namespace creasewright
