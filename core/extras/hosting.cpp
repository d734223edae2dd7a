#include "extras/hosting.h"

#include <algorithm>
#include <charconv>

#include "base/excerpt.h"

namespace creasewright {
namespace {

const ExtraKind* kindOf(const std::vector<Extra>& extras, int index) {
  const Result<const ExtraKind*> kind = findExtraKind(extras[static_cast<std::size_t>(index)].kind);
  return kind ? *kind : nullptr;
}

bool isExtra(const std::vector<Extra>& extras, int host) {
  return host >= 0 && host < static_cast<int>(extras.size());
}

/// The extras from one to the box, or round a circle back to it.
std::vector<int> wayDown(const std::vector<Extra>& extras, int from) {
  std::vector<int> way;
  for (int at = from; isExtra(extras, at); at = extras[static_cast<std::size_t>(at)].host) {
    if (std::ranges::find(way, at) != way.end()) break;
    way.push_back(at);
  }
  return way;
}

bool isInCircle(const std::vector<Extra>& extras, int index) {
  return extras[static_cast<std::size_t>(wayDown(extras, index).back())].host == index;
}

Result<int> hostOf(const std::vector<Extra>& extras, int index) {
  const Extra& extra = extras[static_cast<std::size_t>(index)];
  const ExtraKind* kind = kindOf(extras, index);
  if (extra.host == kOutermost || kind == nullptr) return kOutermost;
  if (extra.host == kOnBox) {
    if (mayLieOnBox(*kind)) return kOnBox;
    return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  }
  if (!isExtra(extras, extra.host))
    return Problem{ProblemCode::ExtraHostUnknown, extra.kind, {std::to_string(extra.host + 1)}};
  if (isInCircle(extras, index)) {
    // The same for each of them.
    std::vector<int> around = wayDown(extras, index);
    std::ranges::rotate(around, std::ranges::min_element(around));
    Problem circle{
        ProblemCode::ExtraHostCircle, extras[static_cast<std::size_t>(around.front())].kind, {}};
    for (const int each : around)
      circle.values.push_back(extras[static_cast<std::size_t>(each)].kind);
    return circle;
  }
  const ExtraKind* host = kindOf(extras, extra.host);
  if (host == nullptr || !mayCarry(*host, *kind))
    return Problem{ProblemCode::ExtraHostUnfit,
                   extra.kind,
                   {extras[static_cast<std::size_t>(extra.host)].kind}};
  return extra.host;
}

/// Whether `text` names a kind: its id or the last word of it.
bool names(std::string_view kind, std::string_view text) {
  return kind == text || (kind.size() > text.size() + 1 && kind.ends_with(text) &&
                          kind[kind.size() - text.size() - 1] == '-');
}

std::optional<int> readNumber(std::string_view text) {
  int number = 0;
  const char* end = text.data() + text.size();
  const auto read = std::from_chars(text.data(), end, number);
  if (text.empty() || read.ec != std::errc() || read.ptr != end) return std::nullopt;
  return number;
}

}  // namespace

bool mayLieOnBox(const ExtraKind& guest) {
  return std::ranges::find(guest.carriers, Carrier::Box) != guest.carriers.end();
}

bool mayCarry(const ExtraKind& host, const ExtraKind& guest) {
  return std::ranges::any_of(
      guest.carriers,
      [&](Carrier carrier) {
        switch (carrier) {
          case Carrier::Box:
            return false;
          case Carrier::Face:
            return host.hasFaces;
          case Carrier::Wrap:
            return host.runs && host.ofCard;
          case Carrier::RibbonOn:
            return host.runs && !host.ofCard;
        }
        return false;
      });
}

std::vector<Result<int>> hostsOf(const std::vector<Extra>& extras) {
  std::vector<Result<int>> hosts;
  for (int i = 0; i < static_cast<int>(extras.size()); ++i) hosts.push_back(hostOf(extras, i));
  return hosts;
}

std::vector<int> possibleHosts(const std::vector<Extra>& extras, int guest) {
  std::vector<int> possible;
  const ExtraKind* kind = kindOf(extras, guest);
  if (kind == nullptr) return possible;
  for (int i = 0; i < static_cast<int>(extras.size()); ++i) {
    const ExtraKind* host = kindOf(extras, i);
    if (host == nullptr || !mayCarry(*host, *kind)) continue;
    const std::vector<int> below = wayDown(extras, i);
    if (std::ranges::find(below, guest) == below.end()) possible.push_back(i);
  }
  return possible;
}

std::vector<Extra> withoutExtra(std::vector<Extra> extras, int gone) {
  const int below = extras[static_cast<std::size_t>(gone)].host;
  for (int i = 0; i < static_cast<int>(extras.size()); ++i) {
    int& host = extras[static_cast<std::size_t>(i)].host;
    if (host != gone || i == gone) continue;
    const ExtraKind* kind = kindOf(extras, i);
    const bool onBox = below == kOnBox && kind != nullptr && mayLieOnBox(*kind);
    const ExtraKind* lower = isExtra(extras, below) && below != i ? kindOf(extras, below) : nullptr;
    const bool onLower = lower != nullptr && kind != nullptr && mayCarry(*lower, *kind);
    host = onBox || onLower ? below : kOutermost;
  }
  extras.erase(extras.begin() + gone);
  for (Extra& extra : extras)
    if (extra.host > gone) --extra.host;
  return extras;
}

Result<int> findHost(const std::vector<Extra>& extras, int self, std::string_view text) {
  const std::string kind =
      isExtra(extras, self) ? extras[static_cast<std::size_t>(self)].kind : std::string();
  const Problem unknown{ProblemCode::ExtraHostUnknown, kind, {excerpt(text)}};
  if (text == "box") return kOnBox;
  if (text == "outermost") return kOutermost;
  const int count = static_cast<int>(extras.size());
  if (const auto number = readNumber(text)) {
    if (*number < 1 || *number > count) return unknown;
    return *number - 1;
  }
  // The nearest one before it, else the first after it; the one that is counted where a number
  // stands behind.
  std::optional<int> which;
  const std::size_t dash = text.rfind('-');
  if (dash != std::string_view::npos && readNumber(text.substr(dash + 1))) {
    which = readNumber(text.substr(dash + 1));
    text = text.substr(0, dash);
  }
  std::vector<int> named;
  for (int i = 0; i < count; ++i)
    if (names(extras[static_cast<std::size_t>(i)].kind, text)) named.push_back(i);
  if (which) {
    if (*which < 1 || *which > static_cast<int>(named.size())) return unknown;
    return named[static_cast<std::size_t>(*which - 1)];
  }
  std::erase(named, self);
  if (named.empty()) return unknown;
  const auto after = std::ranges::upper_bound(named, self);
  return after == named.begin() ? named.front() : *(after - 1);
}

std::string hostText(int host) {
  if (host == kOnBox) return "box";
  return host < 0 ? "outermost" : std::to_string(host + 1);
}

}  // namespace creasewright
