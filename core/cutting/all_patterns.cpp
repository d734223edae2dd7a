#include "cutting/all_patterns.h"

#include <algorithm>
#include <array>
#include <cstring>

#include "cutting/cut_tree.h"
#include "cutting/raster.h"

namespace creasewright {
namespace {

constexpr std::size_t kMostItems = 64;
constexpr int kMostOfAKind = 127;
constexpr std::size_t kMostGridWork =
    100'000'000;                      // cells times cuts; the listing has limits of its own
constexpr double kTinyWorth = 1e-7;   // of a worth
constexpr double kComparePacked = 1;  // steps that a comparison takes
constexpr double kCompareWord = 0.2;
constexpr std::size_t kTell = 1 << 20;  // comparisons, after which they are counted as work
constexpr std::uint64_t kHighBits = 0x8080808080808080U;

/// Counts as bytes, eight to a word: compared and added eight at a time, their high bits free.
template <std::size_t kWords>
using Packed = std::array<std::uint64_t, kWords>;

template <std::size_t kWords>
int countIn(const Packed<kWords>& counts, std::size_t item) {
  return static_cast<int>((counts[item / 8] >> (item % 8 * 8)) & 0x7FU);
}

template <std::size_t kWords>
void setCount(Packed<kWords>& counts, std::size_t item, int count) {
  counts[item / 8] |= static_cast<std::uint64_t>(count) << (item % 8 * 8);
}

/// Where a vector of a cell comes from: a blank, or one vector of each part of a cut.
struct Origin {
  enum Kind : std::uint8_t { Item, Turned, Upright, Level } kind = Item;
  std::uint32_t place = 0;   ///< item, or index of the cut in its size's cuts
  std::uint32_t first = 0;   ///< in the left or lower part
  std::uint32_t second = 0;  ///< in the other part
};

template <std::size_t kWords>
struct CountEntry {
  Packed<kWords> counts{};
  double worth = 0;
  Origin origin;
  std::uint32_t i = 0;  ///< the cell it was made in: a smaller one hands its vectors on
  std::uint32_t k = 0;
};

/// Whether every byte of `a` is at least that of `b`: then no subtraction takes its high bit.
template <std::size_t kWords>
bool covers(const Packed<kWords>& a, const Packed<kWords>& b) {
  for (std::size_t w = 0; w < kWords; ++w)
    if ((((a[w] | kHighBits) - b[w]) & kHighBits) != kHighBits) return false;
  return true;
}

/// Byte by byte the sum, but no more than `most`.
template <std::size_t kWords>
Packed<kWords> sumUpTo(const Packed<kWords>& a, const Packed<kWords>& b,
                       const Packed<kWords>& most) {
  Packed<kWords> sum{};
  for (std::size_t w = 0; w < kWords; ++w) {
    // Both are at most `most`, at most 127 each: no byte carries into the next.
    const std::uint64_t whole = a[w] + b[w];
    const std::uint64_t over = ((most[w] | kHighBits) - (whole & ~kHighBits)) & kHighBits;
    const std::uint64_t fits = over & ~(whole & kHighBits);  // high bit where the sum is kept
    const std::uint64_t mask = (fits >> 7) * 0xFFU;
    sum[w] = (whole & mask) | (most[w] & ~mask);
  }
  return sum;
}

/// How many of an item a pattern may count: as many as are wanted, no more than its area allows.
std::int64_t mostOf(const KnapsackItem& item, std::int64_t width, std::int64_t height) {
  const auto room = static_cast<long double>(width) * static_cast<long double>(height);
  const auto each = static_cast<long double>(item.width) * static_cast<long double>(item.height);
  return std::clamp<std::int64_t>(static_cast<std::int64_t>(room / each), 0,
                                  std::max(item.atMost, 0));
}

/// For up to eight items a word of counts. A cell that holds no more than the one beside it or
/// below it has the same list.
template <std::size_t kWords>
class Lister {
  using Counts = Packed<kWords>;
  using Entry = CountEntry<kWords>;

 public:
  Lister(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
         const ListingLimits& limits, const WorthFloor& floor, Work* work)
      : width_(width),
        height_(height),
        items_(items),
        limits_(limits),
        floor_(floor),
        work_(work),
        grid_(sheetGrid(width, height, items, kMostGridWork)) {
    for (std::size_t n = 0; n < items.size(); ++n) {
      const std::int64_t most = mostOf(items[n], width, height);
      countable_ = countable_ && most <= kMostOfAKind;
      setCount(most_, n, static_cast<int>(std::min<std::int64_t>(most, kMostOfAKind)));
    }
    cells_.resize(grid_.cells());
  }

  std::optional<std::vector<Pattern>> run() {
    if (!grid_.exact || !countable_) return std::nullopt;
    for (std::size_t i = 0; i < grid_.across.sizes.size(); ++i)
      for (std::size_t k = 0; k < grid_.up.sizes.size(); ++k)
        if (!fill(i, k)) return std::nullopt;
    const std::vector<Entry>& all = lists_[cells_.back()];
    if (all.size() > limits_.patterns) return std::nullopt;
    std::vector<Pattern> patterns;
    for (const Entry& entry : all) patterns.push_back(patternOf(entry));
    return patterns;
  }

 private:
  [[nodiscard]] std::uint32_t& listAt(std::size_t i, std::size_t k) {
    return cells_[i * grid_.up.sizes.size() + k];
  }
  [[nodiscard]] const std::vector<Entry>& at(std::size_t i, std::size_t k) const {
    return lists_[cells_[i * grid_.up.sizes.size() + k]];
  }

  /// False when a limit is reached.
  bool fill(std::size_t i, std::size_t k) {
    std::uint32_t smaller = 0;  // the list of the cell beside or below, whichever holds more
    std::uint32_t other = 0;
    if (i > 0) smaller = listAt(i - 1, k);
    if (k > 0) other = listAt(i, k - 1);
    if (lists_[other].size() > lists_[smaller].size()) std::swap(smaller, other);
    std::vector<Entry> cell = lists_[smaller];
    added_ = false;
    if (other != smaller)
      for (const Entry& entry : lists_[other]) add(entry, cell);
    addItems(i, k, cell);
    const std::vector<CutPair>& upright = grid_.across.cuts[i];
    for (std::size_t c = 0; c < upright.size(); ++c)
      if (!addSums(at(upright[c].first, k), at(upright[c].second, k),
                   {Origin::Upright, index(c), 0, 0}, i, k, cell))
        return false;
    const std::vector<CutPair>& level = grid_.up.cuts[k];
    for (std::size_t c = 0; c < level.size(); ++c)
      if (!addSums(at(i, level[c].first), at(i, level[c].second), {Origin::Level, index(c), 0, 0},
                   i, k, cell))
        return false;
    if (!added_) {
      listAt(i, k) = smaller;
      return true;
    }
    dropCheap(cell);
    kept_ += cell.size() * sizeof(Entry);
    cell.shrink_to_fit();
    listAt(i, k) = index(lists_.size());
    lists_.push_back(std::move(cell));
    return kept_ <= limits_.bytes;
  }

  [[nodiscard]] double worthOf(const Counts& counts) const {
    double sum = 0;
    for (std::size_t n = 0; n < floor_.worth.size(); ++n)
      sum += floor_.worth[n] * countIn(counts, n);
    return sum;
  }

  [[nodiscard]] static double dearest(const std::vector<Entry>& cell) {
    double most = 0;
    for (const Entry& entry : cell) most = std::max(most, entry.worth);
    return most;
  }

  void dropCheap(std::vector<Entry>& cell) const {
    if (floor_.worth.empty()) return;
    const double least = dearest(cell) - floor_.slack - kTinyWorth;
    std::erase_if(cell, [&](const Entry& entry) { return entry.worth < least; });
  }

  static std::uint32_t index(std::size_t n) { return static_cast<std::uint32_t>(n); }

  void addItems(std::size_t i, std::size_t k, std::vector<Entry>& cell) {
    const std::int64_t x = grid_.across.sizes[i];
    const std::int64_t y = grid_.up.sizes[k];
    for (std::size_t n = 0; n < items_.size(); ++n) {
      if (countIn(most_, n) == 0) continue;
      const bool straight = items_[n].width <= x && items_[n].height <= y;
      const bool turned = items_[n].mayTurn && items_[n].height <= x && items_[n].width <= y;
      if (!straight && !turned) continue;
      Entry entry;
      setCount(entry.counts, n, 1);
      entry.worth = worthOf(entry.counts);
      entry.origin = {straight ? Origin::Item : Origin::Turned, index(n), 0, 0};
      entry.i = index(i);
      entry.k = index(k);
      add(entry, cell);
    }
  }

  bool addSums(const std::vector<Entry>& a, const std::vector<Entry>& b, Origin origin,
               std::size_t i, std::size_t k, std::vector<Entry>& cell) {
    const bool floored = !floor_.worth.empty();
    double least = dearest(cell) - floor_.slack - kTinyWorth;
    for (std::size_t x = 0; x < a.size(); ++x)
      for (std::size_t y = 0; y < b.size(); ++y) {
        if (floored && a[x].worth + b[y].worth < least) continue;
        Entry entry;
        entry.counts = sumUpTo(a[x].counts, b[y].counts, most_);
        entry.worth = floored ? worthOf(entry.counts) : 0;
        if (floored && entry.worth < least) continue;
        least = std::max(least, entry.worth - floor_.slack - kTinyWorth);
        entry.origin = origin;
        entry.origin.first = index(x);
        entry.origin.second = index(y);
        entry.i = index(i);
        entry.k = index(k);
        if (!count(cell.size() + 1)) return false;
        add(entry, cell);
      }
    return true;
  }

  /// False when a limit is reached.
  bool count(std::size_t comparisons) {
    compared_ += comparisons;
    if (compared_ > limits_.compared) return false;
    if (work_ == nullptr || compared_ - told_ < kTell) return true;
    const double steps =
        (kComparePacked + kCompareWord * kWords) * static_cast<double>(compared_ - told_);
    told_ = compared_;
    return work_->add(steps);
  }

  /// Unless another one covers it; those it covers go.
  void add(const Entry& entry, std::vector<Entry>& cell) {
    for (const Entry& other : cell)
      if (covers(other.counts, entry.counts)) return;
    std::erase_if(cell, [&](const Entry& other) { return covers(entry.counts, other.counts); });
    cell.push_back(entry);
    added_ = true;
  }

  [[nodiscard]] CutNode build(const Entry& entry, const CutNode& frame) const {
    const Origin& o = entry.origin;
    if (o.kind == Origin::Item || o.kind == Origin::Turned) {
      const KnapsackItem& item = items_[o.place];
      const bool turned = o.kind == Origin::Turned;
      return blankIn(frame, Length::nanometres(turned ? item.height : item.width),
                     Length::nanometres(turned ? item.width : item.height),
                     static_cast<int>(o.place), turned);
    }
    const bool upright = o.kind == Origin::Upright;
    const std::size_t i = entry.i;
    const std::size_t k = entry.k;
    const CutGrid& grid = upright ? grid_.across : grid_.up;
    const CutPair cut = grid.cuts[upright ? i : k][o.place];
    CutNode node = cutAt(frame, upright, Length::nanometres(grid.sizes[cut.first]));
    const std::vector<Entry>& first = upright ? at(cut.first, k) : at(i, cut.first);
    const std::vector<Entry>& second = upright ? at(cut.second, k) : at(i, cut.second);
    node.parts[0] = build(first[o.first], node.parts[0]);
    node.parts[1] = build(second[o.second], node.parts[1]);
    return node;
  }

  [[nodiscard]] Pattern patternOf(const Entry& entry) const {
    Pattern pattern;
    CutNode frame;
    frame.width = Length::nanometres(width_);
    frame.height = Length::nanometres(height_);
    pattern.sheet = build(entry, frame);
    pattern.counts.assign(items_.size(), 0);
    eachNode(pattern.sheet, [&](const CutNode& node) {
      if (node.kind == CutNode::Kind::Blank)
        ++pattern.counts[static_cast<std::size_t>(node.demand)];
    });
    return pattern;
  }

  std::int64_t width_;
  std::int64_t height_;
  const std::vector<KnapsackItem>& items_;
  const ListingLimits& limits_;
  const WorthFloor& floor_;
  Work* work_;
  SheetGrid grid_;
  bool countable_ = true;  ///< whether a byte holds every count
  Counts most_{};
  std::vector<std::vector<Entry>> lists_{{}};
  std::vector<std::uint32_t> cells_;  // the list of each
  bool added_ = false;                // something to the cell that is being filled
  std::size_t kept_ = 0;              // bytes
  std::size_t compared_ = 0;
  std::size_t told_ = 0;  // of them
};

}  // namespace

std::optional<std::vector<Pattern>> allPatterns(std::int64_t width, std::int64_t height,
                                                const std::vector<KnapsackItem>& items,
                                                const ListingLimits& limits,
                                                const WorthFloor& floor, Work* work) {
  if (items.size() > kMostItems) return std::nullopt;
  const auto list = [&]<std::size_t kWords>() {
    return Lister<kWords>(width, height, items, limits, floor, work).run();
  };
  if (items.size() <= 8) return list.template operator()<1>();
  if (items.size() <= 16) return list.template operator()<2>();
  if (items.size() <= 32) return list.template operator()<4>();
  return list.template operator()<8>();
}

}  // namespace creasewright
