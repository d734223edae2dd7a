#include "cutting/fewer_settings.h"

#include <map>

#include <gtest/gtest.h>

#include "core/cutting/random_cuts.h"
#include "cutting/neat_layout.h"
#include "cutting/strip_layout.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

using testing::mm;

constexpr double kUnit = 30;  // mm: every offcut is one that is kept
constexpr std::size_t kMostTrees = 3'000;

/// All cut trees of a part of whole units: cuts at every whole place, blanks lying both ways. What
/// is left over is not cut, and lies last, as no step is told that cuts it off.
class EveryTree {
 public:
  explicit EveryTree(const std::vector<BlankDemand>& demands) : demands_(demands) {}

  /// `way`: 0 upright, 1 level: the part is not cut that way; -1 either.
  const std::vector<CutNode>& of(int width, int height, const std::vector<int>& counts, int way) {
    const auto [place, added] = trees_.try_emplace({width, height, counts, way});
    if (added) {
      std::vector<CutNode> made = make(width, height, counts, way);
      total_ += made.size();
      place->second = std::move(made);
    }
    return place->second;
  }
  [[nodiscard]] bool tooMany() const { return total_ > kMostTrees; }

 private:
  static CutNode part(int width, int height) {
    CutNode node;
    node.width = mm(width * kUnit);
    node.height = mm(height * kUnit);
    return node;
  }

  std::vector<CutNode> make(int width, int height, const std::vector<int>& counts, int way) {
    std::vector<CutNode> trees;
    const CutNode frame = part(width, height);
    int blanks = 0;
    for (const int count : counts) blanks += count;
    if (blanks == 0) return {frame};
    if (blanks == 1) {
      const auto d = static_cast<std::size_t>(std::ranges::find(counts, 1) - counts.begin());
      for (const bool turned : {false, true}) {
        const Length w = turned ? demands_[d].height : demands_[d].width;
        const Length h = turned ? demands_[d].width : demands_[d].height;
        if (w == frame.width && h == frame.height && (!turned || demands_[d].mayTurn))
          return {blankIn(frame, w, h, static_cast<int>(d), turned && w != h)};
      }
    }
    for (const bool upright : {true, false}) {
      if (way == (upright ? 0 : 1)) continue;
      for (int at = 1; at < (upright ? width : height); ++at)
        cutThere(width, height, counts, upright, at, trees);
    }
    return trees;
  }

  /// Every way to share the blanks out to both sides of a cut; the first part is not cut the same
  /// way again.
  void cutThere(int width, int height, const std::vector<int>& counts, bool upright, int at,
                std::vector<CutNode>& trees) {
    std::vector<int> first(counts.size(), 0);
    for (bool more = true; more;) {
      more = false;
      for (std::size_t k = 0; k < counts.size() && !more; ++k) {
        more = ++first[k] <= counts[k];
        if (!more) first[k] = 0;
      }
      if (!more || tooMany()) return;
      std::vector<int> second = counts;
      for (std::size_t k = 0; k < counts.size(); ++k) second[k] -= first[k];
      const std::vector<CutNode> ones =
          upright ? of(at, height, first, 0) : of(width, at, first, 1);
      if (ones.empty()) continue;
      const std::vector<CutNode> others =
          upright ? of(width - at, height, second, -1) : of(width, height - at, second, -1);
      if (ones.size() * others.size() > kMostTrees) total_ += kMostTrees + 1;
      if (tooMany()) return;
      for (const CutNode& one : ones)
        for (const CutNode& other : others) {
          CutNode node = cutAt(part(width, height), upright, mm(at * kUnit));
          node.parts = {one, other};
          trees.push_back(std::move(node));
        }
      if (trees.size() > kMostTrees) {
        total_ += trees.size();
        return;
      }
    }
  }

  const std::vector<BlankDemand>& demands_;
  std::map<std::tuple<int, int, std::vector<int>, int>, std::vector<CutNode>> trees_;
  std::size_t total_ = 0;
};

/// Whether a sheet leaves an offcut over that holds the largest one of another.
bool keepsOffcut(const CutNode& sheet, const CutNode& other) {
  const std::vector<Offcut> wanted = offcutsOf({0, 1, other}, mm(30));
  if (wanted.empty()) return true;
  const auto [shorter, longer] = std::minmax(wanted.front().width, wanted.front().height);
  return std::ranges::any_of(offcutsOf({0, 1, sheet}, mm(30)), [&](const Offcut& offcut) {
    const auto [low, high] = std::minmax(offcut.width, offcut.height);
    return low >= shorter && high >= longer;
  });
}

/// Small layouts against plain enumeration of every cut tree: the fewest settings, then the fewest
/// cuts, and an offcut as large as the given tree's.
TEST(FewerSettings, NoCutTreeOfASmallLayoutTakesFewer) {
  testing::Random random(618);
  int judged = 0;
  int found = 0;
  for (int round = 0; round < 300; ++round) {
    const int width = random.whole(4, 9);
    const int height = random.whole(4, 9);
    std::vector<BlankDemand> demands;
    std::vector<int> counts;
    int blanks = 0;
    for (int k = random.whole(1, 3); k > 0; --k) {
      counts.push_back(random.whole(1, 4));
      blanks += counts.back();
      demands.push_back({std::to_string(k), mm(random.whole(1, 4) * kUnit),
                         mm(random.whole(1, 4) * kUnit), counts.back(), random.whole(0, 1) == 1});
    }
    if (blanks > 6) continue;
    EveryTree every(demands);
    const std::vector<CutNode> trees = every.of(width, height, counts, -1);
    if (every.tooMany() || trees.empty()) continue;
    const CutNode given =
        trees[static_cast<std::size_t>(random.whole(0, static_cast<int>(trees.size()) - 1))];
    TrimEffort least = trimEffort(given);
    for (const CutNode& tree : trees)
      if (keepsOffcut(tree, given)) least = std::min(least, trimEffort(tree));
    Work work(1e12);
    const auto fewer = fewerSettings(given, demands, true, work);
    const CutNode& best = fewer ? *fewer : given;
    if (fewer) {
      ++found;
      testing::expectExactly(*fewer, given.width, given.height, demands);
      EXPECT_TRUE(keepsOffcut(*fewer, given)) << round;
    }
    EXPECT_EQ(trimEffort(best).settings, least.settings) << round;
    EXPECT_EQ(trimEffort(best).cuts, least.cuts) << round;
    ++judged;
  }
  std::cout << judged << " layouts, " << found << " of them better than given\n";
  EXPECT_GT(judged, 60);
  EXPECT_GT(found, 40);
}

/// Layouts of the size of a class's: nothing is lost, nothing gets worse.
TEST(FewerSettings, KeepsBlanksAndOffcutOfLargerLayouts) {
  testing::Random random(619);
  Work work(1e12);
  int layouts = 0;
  int before = 0;
  int after = 0;
  for (int round = 0; round < 60; ++round) {
    std::vector<BlankDemand> demands;
    std::vector<int> counts;
    for (int k = random.whole(1, 4); k > 0; --k) {
      counts.push_back(random.whole(1, 4));
      demands.push_back({std::to_string(k), mm(random.whole(30, 140)), mm(random.whole(30, 140)),
                         counts.back(), random.whole(0, 1) == 1});
    }
    std::optional<CutNode> now = stripLayout(mm(300), mm(300), demands, counts, work);
    const auto neat = neatLayout(mm(300), mm(300), demands, counts, work);
    if (neat && (!now || trimmingWork(*neat) < trimmingWork(*now))) now = neat;
    if (!now) continue;
    ++layouts;
    const WorkShare share(work, 0.1 * Work::kSecond);  // as a plan gives each layout
    const auto fewer = fewerSettings(*now, demands, true, work);
    before += trimEffort(*now).settings;
    after += trimEffort(fewer ? *fewer : *now).settings;
    if (!fewer) continue;
    EXPECT_LT(trimEffort(*fewer), trimEffort(*now));
    EXPECT_TRUE(keepsOffcut(*fewer, *now)) << round;
    testing::expectExactly(*fewer, mm(300), mm(300), demands);
  }
  std::cout << layouts << " layouts, " << before << " settings before, " << after << " after\n";
  EXPECT_GT(layouts, 20);
  EXPECT_LE(after, before);
}

}  // namespace
}  // namespace creasewright
