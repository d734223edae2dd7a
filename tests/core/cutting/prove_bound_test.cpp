#include "cutting/prove_bound.h"

#include <gtest/gtest.h>

#include "core/cutting/every_cut.h"
#include "cutting/plain_sheet.h"
#include "cutting/plan_cutting.h"
#include "support/random.h"

// The bound that is found anew from a proof, against the enumeration of every whole cut position.

namespace creasewright {
namespace {

using testing::EveryCut;
using testing::Random;
using testing::SmallBlank;
using testing::SmallCounts;
using testing::SmallSheet;

struct Task {
  std::vector<CutSheet> stock;
  std::vector<BlankDemand> demands;
};

Task drawTask(Random& random) {
  Task task;
  const int kinds = random.whole(1, 3);
  const bool priced = random.whole(0, 1) == 1;
  for (int s = 0; s < kinds; ++s) {
    CutSheet sheet;
    sheet.width = Length::nanometres(random.whole(6, 13));
    sheet.height = Length::nanometres(random.whole(6, 13));
    if (priced) sheet.cost = random.whole(3, 17);
    if (s > 0 && random.whole(0, 1) == 1) sheet.atHand = random.whole(0, 3);
    sheet.mayTurn = random.whole(0, 2) > 0;
    task.stock.push_back(sheet);
  }
  const int count = random.whole(1, 4);
  const auto side = [&](Length sheet) { return random.whole(1, static_cast<int>(sheet.nm())); };
  for (int d = 0; d < count; ++d)
    task.demands.push_back({std::to_string(d), Length::nanometres(side(task.stock.front().width)),
                            Length::nanometres(side(task.stock.front().height)), random.whole(1, 3),
                            random.whole(0, 1) == 1});
  return task;
}

EveryCut oracleOf(const Task& task, const CutSheet& sheet) {
  std::vector<SmallBlank> blanks;
  for (const BlankDemand& d : task.demands)
    blanks.push_back({static_cast<int>(d.width.nm()), static_cast<int>(d.height.nm()),
                      d.mayTurn && sheet.mayTurn, d.quantity});
  return EveryCut(blanks);
}

int leastByPlan(const Task& task) {
  std::vector<SmallSheet> sheets;
  for (const CutSheet& sheet : task.stock)
    sheets.push_back(
        {sheet.cost > 0 ? static_cast<int>(sheet.cost) : 1, sheet.atHand,
         oracleOf(task, sheet)
             .of(static_cast<int>(sheet.width.nm()), static_cast<int>(sheet.height.nm()))});
  SmallCounts demand;
  for (const BlankDemand& d : task.demands) demand.push_back(d.quantity);
  return testing::leastCost(sheets, demand);
}

/// Whatever worths it is given and whatever they say a sheet holds: no bound above the least cost.
/// With all patterns of so small a sheet it is the least cost itself.
TEST(ProveBound, IsNeverAboveTheLeastCostWhateverItIsTold) {
  Random random(881);
  for (int round = 0; round < 400; ++round) {
    const Task task = drawTask(random);
    const int least = leastByPlan(task);
    ASSERT_LT(least, INT_MAX);
    std::vector<WorthProof> lies(static_cast<std::size_t>(random.whole(0, 4)));
    for (WorthProof& lie : lies) {
      for (std::size_t d = 0; d < task.demands.size(); ++d)
        lie.worth.push_back(random.whole(0, 50));
      lie.most.assign(task.stock.size(), 1);  // far too little
    }
    Work work(1e9);
    const bool priced = task.stock.front().cost > 0;
    EXPECT_EQ(recomputeBound(task.stock, task.demands, priced, {lies, {}}, least + 7, work), least)
        << "round " << round;
    Work none(0);
    EXPECT_LE(recomputeBound(task.stock, task.demands, priced, {lies, {}}, least + 7, none), least)
        << "round " << round;
  }
}

/// What a sheet holds, by value and by list, is what every whole cut position gives; a list with a
/// floor misses nothing that is worth enough.
TEST(ProveBound, PlainSheetsHoldWhatEveryCutPositionGives) {
  Random random(882);
  Work work(1e12);
  for (int round = 0; round < 1500; ++round) {
    const Task task = drawTask(random);
    const CutSheet& sheet = task.stock.front();
    const PlainSheet plain(sheet, task.demands, work);
    const auto list = plain.allCounts(work);
    ASSERT_TRUE(list);
    EveryCut oracle = oracleOf(task, sheet);
    const std::set<SmallCounts>& wanted =
        oracle.of(static_cast<int>(sheet.width.nm()), static_cast<int>(sheet.height.nm()));
    EXPECT_EQ(std::set<SmallCounts>(list->begin(), list->end()), wanted) << "round " << round;
    std::vector<std::int64_t> worth;
    for (std::size_t d = 0; d < task.demands.size(); ++d) worth.push_back(random.whole(1, 90));
    const auto most = plain.most(worth, work);
    ASSERT_TRUE(most);
    const PlainSheet::Floor floor{worth, random.whole(0, 60)};
    const auto near = plain.allCounts(work, &floor);
    ASSERT_TRUE(near);
    for (const SmallCounts& counts : wanted) {
      std::int64_t sum = 0;
      for (std::size_t d = 0; d < counts.size(); ++d) sum += worth[d] * counts[d];
      EXPECT_GE(*most, sum) << "round " << round;
      if (sum < *most - floor.slack) continue;
      EXPECT_TRUE(std::ranges::count(*near, counts) == 1) << "round " << round;
    }
  }
}

/// A plan's bound is the one found anew from the worths it carries, and they are needed.
TEST(ProveBound, FindsThePlansBoundAnewFromItsWorths) {
  CutSheet sheet;
  sheet.width = sheet.height = Length::inches(12);
  std::vector<BlankDemand> demands;
  Random random(883);
  for (int i = 0; i < 16; ++i)
    demands.push_back({std::to_string(i), Length::mm(random.whole(60, 210)),
                       Length::mm(random.whole(60, 210)), random.whole(5, 20), true});
  const auto plan = planCutting({sheet}, demands, {.seconds = 2});
  ASSERT_TRUE(plan);
  ASSERT_FALSE(plan->proof.worths.empty());
  Work work(5e9);
  EXPECT_EQ(recomputeBound({sheet}, demands, false, plan->proof, plan->cost, work), plan->bound);
  EXPECT_LT(recomputeBound({sheet}, demands, false, {}, plan->cost, work), plan->bound);
}

}  // namespace
}  // namespace creasewright
