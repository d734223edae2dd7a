#include "edits/pull.h"

#include <algorithm>
#include <cmath>

#include "net/flat_net.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr double kProbe = 0.05;  // mm by which a measure is tried
constexpr double kMoves = 0.01;  // mm per mm: less is nothing

Workbench benchOf(const Design& design) { return {design.card.caliper, design.grid}; }

/// A line of a net as it is found, with what it is known by in another one.
struct Found {
  HandlePlace place;
  std::string name;
};

std::optional<Found> edgeAt(const FlatNet& flat, const Net& net, std::size_t panel,
                            std::size_t edge) {
  const Polygon& outline = flat.panels[panel];
  const Point a = outline[edge];
  const Point b = outline[(edge + 1) % outline.size()];
  if (distance(a, b) < 1e-9) return std::nullopt;
  const Bounds first = bounds(flat.panels.front());
  const Point origin = (first.low + first.high) / 2;
  const std::vector<std::string>& names = net.panels[panel].edges;
  // Corners run counter-clockwise: outwards is to the right.
  return Found{{(a + b) / 2 - origin, turnLeft(unit(b - a)) * -1},
               edge < names.size() ? names[edge] : std::string()};
}

/// The same line where the corners are others: it has its name and its direction.
std::optional<Found> edgeLike(const FlatNet& flat, const Net& net, std::size_t panel,
                              const Found& like) {
  std::optional<Found> best;
  for (std::size_t edge = 0; edge < flat.panels[panel].size(); ++edge) {
    const std::optional<Found> other = edgeAt(flat, net, panel, edge);
    if (!other || other->name != like.name || dot(other->place.normal, like.place.normal) < 0.9999)
      continue;
    const auto away = [&](const Found& f) { return distance(f.place.middle, like.place.middle); };
    if (!best || away(*other) < away(*best)) best = other;
  }
  return best;
}

/// The line in the net that these parameters make; nothing where it is not there. `like` is the
/// line before, if any.
std::optional<Found> findIn(const Style& style, const Parameters& parameters,
                            const Workbench& bench, const Handle& handle, const Found* like) {
  if (!checkLimits(style, parameters, bench).empty()) return std::nullopt;
  const std::vector<Piece> pieces = style.build(parameters, bench);
  if (handle.piece < 0 || handle.piece >= static_cast<int>(pieces.size())) return std::nullopt;
  const Net& net = pieces[static_cast<std::size_t>(handle.piece)].net;
  const std::optional<int> number = net.find(handle.panel);
  if (!number || handle.edge < 0 || handle.edge >= handle.corners) return std::nullopt;
  const FlatNet flat = flatten(net);
  const auto panel = static_cast<std::size_t>(*number);
  if (static_cast<int>(flat.panels[panel].size()) == handle.corners)
    return edgeAt(flat, net, panel, static_cast<std::size_t>(handle.edge));
  return like == nullptr ? std::nullopt : edgeLike(flat, net, panel, *like);
}

Parameters with(Parameters parameters, std::string_view key, std::int64_t raw) {
  parameters.setCount(key, raw);
  return parameters;
}

/// A line in the hand.
class Pulling {
 public:
  Pulling(const Style& style, const Design& design, const Handle& handle)
      : style_(style),
        design_(design),
        handle_(handle),
        start_(findIn(style, design.parameters, benchOf(design), handle, nullptr)) {}

  [[nodiscard]] bool isThere() const { return start_.has_value(); }

  /// How far the line lies along its normal from where it was, for a value of a measure (mm).
  /// Nothing beyond a limit, or where it is another line.
  [[nodiscard]] std::optional<double> goneAt(std::string_view key, double mm) const {
    const Parameters then = with(design_.parameters, key, Length::mm(mm).nm());
    const auto found = findIn(style_, then, benchOf(design_), handle_, &*start_);
    if (!found) return std::nullopt;
    return dot(found->place.middle - start_->place.middle, start_->place.normal);
  }

  /// The value at which the line has gone `by` mm, as near as it comes. It follows the measure in
  /// proportion, or nearly so: some steps of the secant find it.
  [[nodiscard]] double valueFor(std::string_view key, double perMm, double by) const {
    constexpr int kSteps = 12;
    double value = design_.parameters.mm(key);
    double gone = 0;
    for (int i = 0; i < kSteps && std::abs(by - gone) > 1e-6; ++i) {
      const double next = value + (by - gone) / perMm;
      const std::optional<double> there = goneAt(key, next);
      // Beyond a limit, which is found where limits are; or the line is lost: then it stays.
      if (!there) return isLost(key, next) ? value : next;
      if (std::abs(*there - gone) > 1e-9) perMm = (*there - gone) / (next - value);
      value = next;
      gone = *there;
    }
    return value;
  }

 private:
  [[nodiscard]] bool isLost(std::string_view key, double mm) const {
    const Parameters then = with(design_.parameters, key, Length::mm(mm).nm());
    return checkLimits(style_, then, benchOf(design_)).empty();
  }

  const Style& style_;
  const Design& design_;
  const Handle& handle_;
  std::optional<Found> start_;
};

bool isOfProduct(const Style& style, const Design& design, std::string_view key) {
  if (!style.needs) return false;
  const Room room{};
  const std::vector<Need> needs = style.needs(room, design.parameters, benchOf(design));
  return std::ranges::find(needs, key, &Need::key) != needs.end();
}

/// The raw value nearest to `wanted` that the limits allow, going from one they allow; the limit.
std::pair<std::int64_t, std::optional<Problem>> allowed(const Style& style, const Design& design,
                                                        std::string_view key, std::int64_t from,
                                                        std::int64_t wanted) {
  const Workbench bench = benchOf(design);
  const auto problemAt = [&](std::int64_t raw) -> std::optional<Problem> {
    const Problems found = checkLimits(style, with(design.parameters, key, raw), bench);
    return found.empty() ? std::nullopt : std::optional(found.front());
  };
  const std::optional<Problem> limit = problemAt(wanted);
  if (!limit) return {wanted, std::nullopt};
  std::int64_t good = from;
  std::int64_t bad = wanted;
  while (std::abs(bad - good) > 1) {
    const std::int64_t middle = good + (bad - good) / 2;
    (problemAt(middle) ? bad : good) = middle;
  }
  return {good, limit};
}

}  // namespace

std::optional<HandlePlace> placeOfHandle(const Design& design, const Handle& handle) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return std::nullopt;
  const auto found = findIn(**style, design.parameters, benchOf(design), handle, nullptr);
  return found ? std::optional(found->place) : std::nullopt;
}

std::vector<PullWay> waysToPull(const Design& design, const Handle& handle) {
  const Result<const Style*> style = findStyle(design.styleId);
  std::vector<PullWay> ways;
  if (!style) return ways;
  const Pulling pulling(**style, design, handle);
  if (!pulling.isThere()) return ways;
  for (const ParameterSpec& spec : (*style)->parameters) {
    if (spec.kind != ParameterKind::Length) continue;
    const double now = design.parameters.mm(spec.key);
    for (const double by : {kProbe, -kProbe}) {
      const std::optional<double> gone = pulling.goneAt(spec.key, now + by);
      if (!gone) continue;
      if (std::abs(*gone / by) > kMoves)
        ways.push_back({spec.key, *gone / by, isOfProduct(**style, design, spec.key)});
      break;
    }
  }
  std::ranges::stable_sort(ways, [](const PullWay& a, const PullWay& b) {
    return std::abs(a.perMm) > std::abs(b.perMm) + 1e-6;
  });
  return ways;
}

Pulled pull(const Design& design, const Handle& handle, const PullWay& way, double byMm,
            bool offGrid) {
  const std::string_view key = way.key;
  const std::int64_t from = design.parameters.raw(key);
  const Pulled still{Length::nanometres(from), 0, std::nullopt};
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return still;
  const Pulling pulling(**style, design, handle);
  if (!pulling.isThere()) return still;
  Length wanted = Length::mm(pulling.valueFor(key, way.perMm, byMm));
  const bool onGrid = !offGrid && !design.grid.isNone();
  if (onGrid) wanted = design.grid.nearest(wanted);
  auto [raw, stopped] = allowed(**style, design, key, from, wanted.nm());
  Length reached = Length::nanometres(raw);
  if (stopped && onGrid) {
    // Onto the grid again, on the side that is allowed.
    const bool grew = raw > from;
    reached = grew ? design.grid.roundDown(reached) : design.grid.roundUp(reached);
    if (grew != (reached.nm() > from)) reached = Length::nanometres(from);
  }
  return {reached, pulling.goneAt(key, reached.mm()).value_or(0), std::move(stopped)};
}

}  // namespace creasewright
