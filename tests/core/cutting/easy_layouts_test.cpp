#include "cutting/easy_layouts.h"

#include <set>

#include <gtest/gtest.h>

#include "core/cutting/random_cuts.h"

namespace creasewright {
namespace {

using testing::mm;

/// So many whole strips of each blank as fit side by side, by plain enumeration of one kind of
/// strip at a time.
std::set<std::vector<int>> sheetsOfOneStrip(const CutSheet& sheet,
                                            const std::vector<BlankDemand>& demands) {
  std::set<std::vector<int>> all;
  for (const bool upright : {false, true})
    for (std::size_t d = 0; d < demands.size(); ++d)
      for (const bool turned : {false, true}) {
        const Length w = turned ? demands[d].height : demands[d].width;
        const Length h = turned ? demands[d].width : demands[d].height;
        const auto across = static_cast<int>(sheet.width.nm() / w.nm());
        const auto along = static_cast<int>(sheet.height.nm() / h.nm());
        if (across == 0 || along == 0) continue;
        const int each = upright ? along : across;
        const int room = upright ? across : along;
        const int wanted = (demands[d].quantity + each - 1) / each;
        std::vector<int> counts(demands.size(), 0);
        counts[d] = std::min(demands[d].quantity, each * std::min(room, wanted));
        all.insert(counts);
      }
  return all;
}

TEST(EasyLayouts, HoldEveryFullSheetOfStripsOfOneBlank) {
  testing::Random random(91);
  for (int round = 0; round < 20; ++round) {
    const std::vector<CutSheet> stock{{mm(304), mm(304)}};
    std::vector<BlankDemand> demands;
    for (int d = random.whole(1, 3); d > 0; --d)
      demands.push_back({"b" + std::to_string(d), mm(random.whole(40, 150)),
                         mm(random.whole(40, 150)), random.whole(3, 30)});
    Work work(1e12);
    const std::vector<EasyLayout> found = easyLayouts(stock, demands, {}, work);
    std::set<std::vector<int>> counts;
    for (const EasyLayout& layout : found) {
      EXPECT_TRUE(counts.insert(layout.counts).second) << "no two of the same blanks";
      std::vector<BlankDemand> held = demands;
      for (std::size_t d = 0; d < held.size(); ++d) held[d].quantity = layout.counts[d];
      testing::expectExactly(layout.sheet, mm(304), mm(304), held);
    }
    for (const std::vector<int>& wanted : sheetsOfOneStrip(stock.front(), demands))
      EXPECT_TRUE(counts.contains(wanted))
          << round << ": " << ::testing::PrintToString(wanted) << " is missing";
  }
}

}  // namespace
}  // namespace creasewright
