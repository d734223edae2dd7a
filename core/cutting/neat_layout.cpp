#include "cutting/neat_layout.h"

#include <algorithm>

#include "cutting/cut_tree.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

constexpr std::size_t kMostSets = 4'000;     // of blanks
constexpr std::size_t kMostRectangles = 12;  // kept for each set
constexpr std::int64_t kMostPairsTried = 300'000;
constexpr double kPairTry = 40;  // steps

/// Which rectangle of which set.
struct Ref {
  int set = -1;
  int index = -1;
  bool operator==(const Ref&) const = default;
};

/// A rectangle that holds a set: one blank, or two rectangles beside each other.
struct Rectangle {
  std::int64_t width = 0;
  std::int64_t height = 0;
  int work = 0;
  bool chain = false;    ///< cut into parts, else a blank
  bool upright = false;  ///< chain: by upright cuts
  int demand = -1;       ///< blank
  bool turned = false;
  Ref first, second;  ///< chain: a part, and the rest
};

class RectangleSearch {
 public:
  RectangleSearch(Length width, Length height, const std::vector<BlankDemand>& demands,
                  const std::vector<int>& counts)
      : width_(width.nm()), height_(height.nm()), demands_(demands) {
    for (std::size_t d = 0; d < counts.size(); ++d) {
      if (counts[d] == 0) continue;
      kinds_.push_back(static_cast<int>(d));
      counts_.push_back(counts[d]);
    }
  }

  std::optional<CutNode> run(Work& work) {
    if (!numberSets()) return std::nullopt;
    for (std::size_t set = 1; set < sets_.size(); ++set) {
      const std::int64_t before = tries_;
      if (!fill(static_cast<int>(set))) return std::nullopt;
      if (!work.add(kPairTry * static_cast<double>(tries_ - before + 1))) return std::nullopt;
    }
    const std::vector<Rectangle>& all = rectangles_.back();
    if (all.empty()) return std::nullopt;
    const auto least = std::ranges::min_element(
        all, {}, [&](const Rectangle& r) { return r.work + trims(r, width_, height_); });
    CutNode frame;
    frame.width = Length::nanometres(width_);
    frame.height = Length::nanometres(height_);
    CutNode trimmed = tidied(build(*least, frame, true));
    CutNode whole = tidied(build(*least, frame, false));
    return trimmingWork(whole) <= trimmingWork(trimmed) ? whole : trimmed;
  }

 private:
  /// Every set as its counts by kind; parts of a set come before it. False: too many.
  bool numberSets() {
    std::size_t sets = 1;
    for (const int count : counts_) {
      steps_.push_back(static_cast<int>(sets));
      sets *= static_cast<std::size_t>(count) + 1;
      if (sets > kMostSets) return false;
    }
    rectangles_.resize(sets);
    std::vector<int> set(counts_.size(), 0);
    for (std::size_t i = 0; i < sets; ++i) {
      sets_.push_back(set);
      for (std::size_t k = 0; k < set.size() && ++set[k] > counts_[k]; ++k) set[k] = 0;
    }
    return true;
  }

  bool fill(int set) {
    const std::vector<int>& counts = sets_[static_cast<std::size_t>(set)];
    int sum = 0;
    for (const int count : counts) sum += count;
    if (sum == 1) {
      addBlank(set);
      return true;
    }
    std::vector<int> part(counts.size(), 0);
    while (next(part, counts)) {
      const int first = indexOf(part);
      if (first != set) combine(set, first, set - first);
      if (tries_ > kMostPairsTried) return false;
    }
    return true;
  }

  /// Counts up within `limit`; false after the last.
  static bool next(std::vector<int>& part, const std::vector<int>& limit) {
    for (std::size_t k = 0; k < part.size(); ++k) {
      if (++part[k] <= limit[k]) return true;
      part[k] = 0;
    }
    return false;
  }

  [[nodiscard]] int indexOf(const std::vector<int>& part) const {
    int index = 0;
    for (std::size_t k = 0; k < part.size(); ++k) index += part[k] * steps_[k];
    return index;
  }

  void addBlank(int set) {
    const std::vector<int>& counts = sets_[static_cast<std::size_t>(set)];
    const auto kind = std::ranges::find(counts, 1) - counts.begin();
    const int d = kinds_[static_cast<std::size_t>(kind)];
    const BlankDemand& demand = demands_[static_cast<std::size_t>(d)];
    Rectangle blank;
    blank.width = demand.width.nm();
    blank.height = demand.height.nm();
    blank.demand = d;
    add(set, blank);
    if (!demand.mayTurn || demand.width == demand.height) return;
    std::swap(blank.width, blank.height);
    blank.turned = true;
    add(set, blank);
  }

  void combine(int set, int first, int second) {
    const auto& firsts = rectangles_[static_cast<std::size_t>(first)];
    const auto& seconds = rectangles_[static_cast<std::size_t>(second)];
    for (int a = 0; a < static_cast<int>(firsts.size()); ++a)
      for (int b = 0; b < static_cast<int>(seconds.size()); ++b)
        for (const bool upright : {true, false}) {
          ++tries_;
          // A chain grows part by part: what is put before it is no chain of its way.
          const Rectangle& part = firsts[static_cast<std::size_t>(a)];
          if (part.chain && part.upright == upright) continue;
          add(set, joined({first, a}, {second, b}, upright));
        }
  }

  [[nodiscard]] const Rectangle& at(Ref ref) const {
    return rectangles_[static_cast<std::size_t>(ref.set)][static_cast<std::size_t>(ref.index)];
  }

  /// What it takes to cut a rectangle off at its upper edge, or at its right one: a setting of its
  /// own, or only one more cut where its parts run that way and its last one is cut off alike.
  static int trimming(const Rectangle& r, bool above) {
    return r.chain && r.upright != above ? 1 : kSettingWork + 1;
  }

  static int trims(const Rectangle& r, std::int64_t width, std::int64_t height) {
    return (r.width < width ? trimming(r, false) : 0) + (r.height < height ? trimming(r, true) : 0);
  }

  [[nodiscard]] Rectangle joined(Ref first, Ref second, bool upright) const {
    const Rectangle& a = at(first);
    const Rectangle& b = at(second);
    Rectangle r;
    r.chain = true;
    r.upright = upright;
    r.first = first;
    r.second = second;
    r.width = upright ? a.width + b.width : std::max(a.width, b.width);
    r.height = upright ? std::max(a.height, b.height) : a.height + b.height;
    const bool goesOn = b.chain && b.upright == upright;
    const bool again = first == (goesOn ? b.first : second);
    // Alike parts are cut up together with the settings that are counted already.
    r.work = b.work + 1 + (again ? 1 : a.work);
    if (!again || !goesOn) r.work += kSettingWork;
    const std::int64_t across = upright ? r.height : r.width;
    if ((upright ? a.height : a.width) < across) r.work += again ? 1 : trimming(a, upright);
    if (!again && !goesOn && (upright ? b.height : b.width) < across)
      r.work += trimming(b, upright);
    if (goesOn && (upright ? b.height : b.width) < across) r.work += kSettingWork + 1;
    return r;
  }

  void add(int set, const Rectangle& r) {
    if (r.width > width_ || r.height > height_) return;
    std::vector<Rectangle>& kept = rectangles_[static_cast<std::size_t>(set)];
    const auto covers = [](const Rectangle& a, const Rectangle& b) {
      return a.width <= b.width && a.height <= b.height && a.work <= b.work;
    };
    for (const Rectangle& other : kept)
      if (covers(other, r)) return;
    std::erase_if(kept, [&](const Rectangle& other) { return covers(r, other); });
    kept.push_back(r);
    if (kept.size() <= kMostRectangles) return;
    // The narrowest and the lowest stay; of the others the one of most work goes.
    const auto narrowest = std::ranges::min_element(kept, {}, &Rectangle::width) - kept.begin();
    const auto lowest = std::ranges::min_element(kept, {}, &Rectangle::height) - kept.begin();
    std::ptrdiff_t worst = -1;
    for (std::ptrdiff_t i = 0; i < std::ssize(kept); ++i)
      if (i != narrowest && i != lowest &&
          (worst < 0 ||
           kept[static_cast<std::size_t>(i)].work > kept[static_cast<std::size_t>(worst)].work))
        worst = i;
    kept.erase(kept.begin() + worst);
  }

  /// With `trimFirst` a chain is cut to its height or width before it is parted, else each of its
  /// parts is.
  [[nodiscard]] CutNode build(const Rectangle& r, const CutNode& frame, bool trimFirst) const {
    const Length width = Length::nanometres(r.width);
    const Length height = Length::nanometres(r.height);
    if (!r.chain) return blankIn(frame, width, height, r.demand, r.turned);
    if (trimFirst && (r.upright ? height < frame.height : width < frame.width)) {
      CutNode node = cutAt(frame, !r.upright, r.upright ? height : width);
      node.parts[0] = build(r, node.parts[0], trimFirst);
      return node;
    }
    const Rectangle& first = at(r.first);
    const Length place = Length::nanometres(r.upright ? first.width : first.height);
    CutNode node = cutAt(frame, r.upright, place);
    node.parts[0] = build(first, node.parts[0], trimFirst);
    node.parts[1] = build(at(r.second), node.parts[1], trimFirst);
    return node;
  }

  std::int64_t width_;
  std::int64_t height_;
  const std::vector<BlankDemand>& demands_;
  std::vector<int> kinds_;   // demands that occur
  std::vector<int> counts_;  // of these
  std::vector<int> steps_;   // by how much a set's number grows with one more of a kind
  std::vector<std::vector<int>> sets_;
  std::vector<std::vector<Rectangle>> rectangles_;  // by set
  std::int64_t tries_ = 0;
};

}  // namespace

std::optional<CutNode> neatLayout(Length width, Length height,
                                  const std::vector<BlankDemand>& demands,
                                  const std::vector<int>& counts, Work& work) {
  return RectangleSearch(width, height, demands, counts).run(work);
}

}  // namespace creasewright
