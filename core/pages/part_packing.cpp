#include "pages/part_packing.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numeric>

namespace creasewright {
namespace {

constexpr double kTight = 1e-6;

bool holds(const Bounds& outer, const Bounds& inner) {
  return outer.low.x <= inner.low.x + kTight && outer.low.y <= inner.low.y + kTight &&
         outer.high.x >= inner.high.x - kTight && outer.high.y >= inner.high.y - kTight;
}

bool meet(const Bounds& a, const Bounds& b) {
  return a.low.x < b.high.x - kTight && b.low.x < a.high.x - kTight &&
         a.low.y < b.high.y - kTight && b.low.y < a.high.y - kTight;
}

enum class PlaceRule { TopLeft, ShortSide };

/// The largest free rectangles of a page, as they overlap.
class FreeRoom {
 public:
  FreeRoom(const PartPage& page, double gap) : gap_(gap), free_{page.room} {
    for (const Bounds& box : page.taken) take(box);
  }

  struct Choice {
    Bounds box;
    bool turned = false;
    double worth = std::numeric_limits<double>::infinity();  ///< the less the better
  };

  [[nodiscard]] std::optional<Choice> choose(const PartSize& part, PlaceRule rule) const {
    std::optional<Choice> best;
    for (const bool turned : {false, true}) {
      const double width = turned ? part.height : part.width;
      const double height = turned ? part.width : part.height;
      for (const Bounds& room : free_) {
        if (width > room.width() + kTight || height > room.height() + kTight) continue;
        const Bounds box{{room.low.x, room.high.y - height}, {room.low.x + width, room.high.y}};
        const double rest = std::min(room.width() - width, room.height() - height);
        double worth = rule == PlaceRule::ShortSide ? rest : box.low.x * 0.01 - box.low.y;
        if (turned) worth += 0.5;
        if (!best || worth < best->worth - kTight) best = Choice{box, turned, worth};
      }
    }
    return best;
  }

  void take(const Bounds& box) {
    const Bounds wide{box.low - Point{gap_, gap_}, box.high + Point{gap_, gap_}};
    std::vector<Bounds> next;
    for (const Bounds& room : free_) {
      if (!meet(room, wide)) {
        next.push_back(room);
        continue;
      }
      if (wide.low.x > room.low.x) next.push_back({room.low, {wide.low.x, room.high.y}});
      if (wide.high.x < room.high.x) next.push_back({{wide.high.x, room.low.y}, room.high});
      if (wide.low.y > room.low.y) next.push_back({room.low, {room.high.x, wide.low.y}});
      if (wide.high.y < room.high.y) next.push_back({{room.low.x, wide.high.y}, room.high});
    }
    free_.clear();
    for (std::size_t i = 0; i < next.size(); ++i) {
      bool inside = false;
      for (std::size_t k = 0; k < next.size() && !inside; ++k)
        inside = k != i && holds(next[k], next[i]) && (k < i || !holds(next[i], next[k]));
      if (!inside) free_.push_back(next[i]);
    }
  }

 private:
  double gap_;
  std::vector<Bounds> free_;
};

struct PackingTask {
  const std::vector<PartSize>& parts;
  const std::vector<PartPage>& given;
  const Bounds& room;
  double gap;
};

std::optional<PartPacking> packedIn(const PackingTask& task, const std::vector<std::size_t>& order,
                                    PlaceRule rule) {
  PartPacking out;
  out.parts.resize(task.parts.size());
  std::vector<FreeRoom> pages;
  for (const PartPage& page : task.given) pages.emplace_back(page, task.gap);
  for (const std::size_t part : order) {
    const PartSize& size = task.parts[part];
    std::optional<FreeRoom::Choice> choice;
    std::size_t page = 0;
    for (; page < pages.size() && !choice; ++page) choice = pages[page].choose(size, rule);
    if (choice) {
      --page;
    } else {
      pages.emplace_back(PartPage{task.room}, task.gap);
      page = pages.size() - 1;
      choice = pages.back().choose(size, rule);
      if (!choice) return std::nullopt;
      ++out.newPages;
    }
    pages[page].take(choice->box);
    out.parts[part] = {page, choice->box, choice->turned};
    if (choice->turned) out.turnedArea += size.width * size.height;
  }
  return out;
}

/// By area: what no packing takes less than, but for one.
std::size_t leastNewPages(const PackingTask& task) {
  double area = 0;
  for (const PartSize& part : task.parts) area += part.width * part.height;
  for (const PartPage& page : task.given) area -= page.room.width() * page.room.height();
  const double pages = std::ceil(area / (task.room.width() * task.room.height()));
  return std::max<std::size_t>(1, pages > 0 ? static_cast<std::size_t>(pages) : 0);
}

std::vector<std::vector<std::size_t>> usualOrders(const std::vector<PartSize>& parts) {
  const std::vector<std::function<double(const PartSize&)>> keys{
      [](const PartSize& p) { return p.width * p.height; },
      [](const PartSize& p) { return std::max(p.width, p.height); },
      [](const PartSize& p) { return p.height; }, [](const PartSize& p) { return p.width; },
      [](const PartSize& p) { return std::min(p.width, p.height); }};
  std::vector<std::vector<std::size_t>> orders;
  for (const auto& key : keys) {
    std::vector<std::size_t> order(parts.size());
    std::iota(order.begin(), order.end(), 0U);
    std::ranges::stable_sort(
        order, [&](std::size_t a, std::size_t b) { return key(parts[a]) > key(parts[b]); });
    orders.push_back(std::move(order));
  }
  return orders;
}

}  // namespace

std::optional<PartPacking> packParts(const std::vector<PartSize>& parts,
                                     const std::vector<PartPage>& given, const Bounds& room,
                                     double gap) {
  constexpr std::size_t kAllOrders = 5;  // parts: 120 orders
  const PackingTask task{parts, given, room, gap};
  std::optional<PartPacking> best;
  const auto attempt = [&](const std::vector<std::size_t>& order) {
    for (const PlaceRule rule : {PlaceRule::TopLeft, PlaceRule::ShortSide}) {
      std::optional<PartPacking> packing = packedIn(task, order, rule);
      if (!packing) return;
      if (!best || packing->newPages < best->newPages ||
          (packing->newPages == best->newPages && packing->turnedArea < best->turnedArea))
        best = std::move(packing);
    }
  };
  for (const std::vector<std::size_t>& order : usualOrders(parts)) attempt(order);
  if (!best || best->newPages <= leastNewPages(task) || parts.size() > kAllOrders) return best;
  std::vector<std::size_t> order(parts.size());
  std::iota(order.begin(), order.end(), 0U);
  do attempt(order);
  while (std::ranges::next_permutation(order).found);
  return best;
}

}  // namespace creasewright
