#include "cutting/plain_sheet.h"

#include <algorithm>
#include <set>
#include <utility>

namespace creasewright {
namespace {

constexpr std::size_t kMostSums = 100'000;
constexpr std::size_t kMostWork = 1'000'000'000;  // sums of one programme
constexpr std::size_t kMostCells = 4'000'000;
constexpr double kSum = 1;  // steps
constexpr double kCompare = 6;
constexpr double kPoint = 150;                // for a cut of a size
constexpr double kSorted = 60;                // for a sum
constexpr std::size_t kMostListed = 250'000;  // cells: each has a list of its own
constexpr std::size_t kMostKinds = 12;
constexpr std::size_t kMostKindsNear = 32;  // with a floor
constexpr std::size_t kMostVectors = 400'000;

using Counts = std::vector<int>;

bool covers(const Counts& a, const Counts& b) {
  for (std::size_t i = 0; i < a.size(); ++i)
    if (a[i] < b[i]) return false;
  return true;
}

/// The numbers of blanks that fit a part, none covered by another, none below the floor.
class CountCell {
 public:
  CountCell(std::size_t blanks, const PlainSheet::Floor* floor)
      : floor_(floor), all_{Counts(blanks, 0)} {}

  void add(const Counts& counts) {
    ++compared_;
    const std::int64_t worth = worthOf(counts);
    if (isCheap(worth)) return;
    best_ = std::max(best_, worth);
    compared_ += all_.size();
    if (std::ranges::any_of(all_, [&](const Counts& c) { return covers(c, counts); })) return;
    std::erase_if(all_, [&](const Counts& c) { return covers(counts, c); });
    all_.push_back(counts);
  }

  /// Since it was asked last.
  std::size_t takeCompared() { return std::exchange(compared_, 0); }

  std::vector<Counts> counts() {
    std::erase_if(all_, [&](const Counts& c) { return isCheap(worthOf(c)); });
    return std::move(all_);
  }

 private:
  [[nodiscard]] std::int64_t worthOf(const Counts& counts) const {
    std::int64_t sum = 0;
    for (std::size_t d = 0; floor_ != nullptr && d < counts.size(); ++d)
      sum += floor_->worth[d] * counts[d];
    return sum;
  }
  [[nodiscard]] bool isCheap(std::int64_t worth) const {
    return floor_ != nullptr && worth < best_ - floor_->slack;
  }

  const PlainSheet::Floor* floor_;
  std::vector<Counts> all_;
  std::int64_t best_ = 0;
  std::size_t compared_ = 0;
};

}  // namespace

PlainSheet::PlainSheet(const CutSheet& sheet, const std::vector<BlankDemand>& demands, Work& work)
    : demands_(demands) {
  const std::int64_t longer = std::max(sheet.width.nm(), sheet.height.nm());
  for (const std::int64_t parts : {std::int64_t{0}, std::int64_t{800}, std::int64_t{400}}) {
    if (!work.mayGoOn()) return;
    if (lay(sheet, parts == 0 ? 1 : (longer + parts - 1) / parts, work)) break;
  }
}

/// The blanks as they may lie, in whole steps: blanks and sheet rounded down. What fits still fits:
/// rounded down, two sizes are together no larger than their sum rounded down.
bool PlainSheet::lay(const CutSheet& sheet, std::int64_t step, Work& work) {
  lying_.clear();
  const auto add = [&](std::size_t d, Length width, Length height) {
    if (width <= sheet.width && height <= sheet.height)
      lying_.push_back({d, width.nm() / step, height.nm() / step});
  };
  for (std::size_t d = 0; d < demands_.size(); ++d) {
    const BlankDemand& demand = demands_[d];
    add(d, demand.width, demand.height);
    if (sheet.mayTurn && demand.mayTurn && demand.width != demand.height)
      add(d, demand.height, demand.width);
  }
  for (const Lying& lying : lying_)
    if (lying.width == 0 || lying.height == 0) return false;
  across_ = axis(true, sheet.width.nm() / step, work);
  up_ = axis(false, sheet.height.nm() / step, work);
  small_ = !across_.sizes.empty() && !up_.sizes.empty() &&
           across_.sizes.size() * up_.sizes.size() <= kMostCells &&
           across_.cutsInAll * up_.sizes.size() + up_.cutsInAll * across_.sizes.size() <= kMostWork;
  return small_;
}

/// A part needs a sum of sides of different blanks, so it may be taken for the largest sum not
/// above its size. A cut leaves one part that needs no more than half: it may have just its sum.
PlainSheet::Axis PlainSheet::axis(bool upright, std::int64_t side, Work& work) const {
  std::vector<std::int64_t> sums{0};
  for (const Lying& lying : lying_) {
    const std::int64_t length = upright ? lying.width : lying.height;
    const std::vector<std::int64_t> before = sums;
    for (const std::int64_t sum : before)
      for (int n = 1; n <= demands_[lying.demand].quantity && sum + n * length <= side; ++n)
        sums.push_back(sum + n * length);
    if (!work.add(kSorted * static_cast<double>(sums.size()))) return {};
    std::ranges::sort(sums);
    sums.erase(std::ranges::unique(sums).begin(), sums.end());
    if (sums.size() > kMostSums) return {};
  }
  const auto down = [&](std::int64_t size) {
    return *std::prev(std::ranges::upper_bound(sums, size));
  };
  std::set<std::int64_t> reached{0};
  std::set<std::int64_t> open{down(side)};
  while (!open.empty()) {
    const std::int64_t x = *open.rbegin();
    open.erase(x);
    if (!reached.insert(x).second) continue;
    std::size_t tried = 0;
    for (const std::int64_t a : sums) {
      if (a == 0) continue;
      if (2 * a > x) break;
      open.insert(a);
      open.insert(down(x - a));
      ++tried;
    }
    if (!work.add(kPoint * static_cast<double>(tried))) return {};
  }
  Axis axis;
  axis.sizes.assign(reached.begin(), reached.end());
  const auto place = [&](std::int64_t size) {
    return static_cast<std::size_t>(std::ranges::lower_bound(axis.sizes, size) -
                                    axis.sizes.begin());
  };
  for (const std::int64_t x : axis.sizes) {
    std::vector<Cut> cuts;
    for (const std::int64_t a : sums) {
      if (a == 0) continue;
      if (2 * a > x) break;
      cuts.push_back({place(a), place(down(x - a))});
    }
    axis.cutsInAll += cuts.size();
    axis.cuts.push_back(std::move(cuts));
  }
  return axis;
}

std::optional<std::int64_t> PlainSheet::most(const std::vector<std::int64_t>& worth,
                                             Work& work) const {
  if (!small_) return std::nullopt;
  const std::size_t columns = across_.sizes.size();
  const std::size_t rows = up_.sizes.size();
  std::vector<std::int64_t> value(columns * rows, 0);
  for (std::size_t i = 1; i < columns; ++i) {
    const auto steps = static_cast<double>(across_.cuts[i].size() * rows + up_.cutsInAll);
    if (!work.add(kSum * steps + static_cast<double>(rows * lying_.size()))) return std::nullopt;
    for (std::size_t k = 1; k < rows; ++k) {
      std::int64_t best = 0;
      for (const Lying& lying : lying_)
        if (lying.width <= across_.sizes[i] && lying.height <= up_.sizes[k])
          best = std::max(best, worth[lying.demand]);
      for (const Cut& cut : across_.cuts[i])
        best = std::max(best, value[cut.first * rows + k] + value[cut.second * rows + k]);
      for (const Cut& cut : up_.cuts[k])
        best = std::max(best, value[i * rows + cut.first] + value[i * rows + cut.second]);
      value[i * rows + k] = best;
    }
  }
  return value.back();
}

std::optional<std::vector<Counts>> PlainSheet::allCounts(Work& work, const Floor* floor) const {
  if (!small_ || demands_.size() > (floor == nullptr ? kMostKinds : kMostKindsNear))
    return std::nullopt;
  const std::size_t rows = up_.sizes.size();
  if (across_.sizes.size() * rows > kMostListed) return std::nullopt;
  std::vector<std::vector<Counts>> cells(across_.sizes.size() * rows);
  for (std::vector<Counts>& cell : cells) cell = {Counts(demands_.size(), 0)};
  std::size_t vectors = 0;
  for (std::size_t i = 1; i < across_.sizes.size(); ++i)
    for (std::size_t k = 1; k < rows; ++k) {
      CountCell cell(demands_.size(), floor);
      for (const Lying& lying : lying_)
        if (lying.width <= across_.sizes[i] && lying.height <= up_.sizes[k]) {
          Counts one(demands_.size(), 0);
          one[lying.demand] = 1;
          cell.add(one);
        }
      const auto join = [&](const std::vector<Counts>& a, const std::vector<Counts>& b) {
        for (const Counts& x : a) {
          for (const Counts& y : b) {
            Counts sum = x;
            for (std::size_t d = 0; d < sum.size(); ++d)
              sum[d] = std::min(sum[d] + y[d], demands_[d].quantity);
            cell.add(sum);
          }
          if (!work.add(kCompare * static_cast<double>(cell.takeCompared()))) return false;
        }
        return true;
      };
      for (const Cut& cut : across_.cuts[i])
        if (!join(cells[cut.first * rows + k], cells[cut.second * rows + k])) return std::nullopt;
      for (const Cut& cut : up_.cuts[k])
        if (!join(cells[i * rows + cut.first], cells[i * rows + cut.second])) return std::nullopt;
      cells[i * rows + k] = cell.counts();
      vectors += cells[i * rows + k].size();
      if (vectors > kMostVectors) return std::nullopt;
    }
  return cells.back();
}

}  // namespace creasewright
