#include <gtest/gtest.h>

#include "core/cutting/every_cut.h"
#include "core/cutting/plan_check.h"
#include "cutting/all_patterns.h"
#include "cutting/plan_cutting.h"
#include "support/random.h"

// What the planner calls all patterns, and what it calls proven, against the enumeration of every
// whole cut position.

namespace creasewright {
namespace {

using testing::EveryCut;
using testing::SmallBlank;
using testing::SmallCounts;
using testing::SmallSheet;

struct SmallTask {
  std::vector<SmallBlank> blanks;
  std::vector<CutSheet> stock;
};

class Draw {
 public:
  explicit Draw(int stream) : random_(stream) {}
  int from(int low, int high) { return static_cast<int>(random_.whole(low, high)); }

  /// Of the kinds in which faults hide: a narrow strip among wide parts, sides near a half and a
  /// third, squares, anything.
  SmallBlank blank(int kind, int w, int h) {
    SmallBlank b;
    b.demand = from(1, 3);
    b.mayTurn = from(0, 1) == 1;
    const auto near = [&](int side, int parts) {
      return std::clamp(side / parts + from(-1, 1), 1, side);
    };
    switch (kind) {
      case 0:
        b.width = from(1, 3);
        b.height = from(1, h);
        b.demand = 1;
        break;
      case 1:
        b.width = near(w, 2);
        b.height = near(h, from(1, 3));
        break;
      case 2:
        b.width = near(w, 3);
        b.height = near(h, from(2, 3));
        break;
      case 3:
        b.width = b.height = from(1, std::min(w, h));
        break;
      default:
        b.width = from(1, w);
        b.height = from(1, h);
    }
    return b;
  }

  SmallTask task(int largest, std::size_t kinds) {
    SmallTask task;
    for (std::size_t s = 0; s < kinds; ++s) {
      CutSheet sheet;
      sheet.width = Length::nanometres(from(6, largest));
      sheet.height = Length::nanometres(from(6, largest));
      task.stock.push_back(sheet);
    }
    const int count = from(2, 4);
    for (int i = 0; i < count; ++i) {
      const CutSheet& sheet = task.stock[static_cast<std::size_t>(i) % kinds];
      task.blanks.push_back(blank(from(0, 4), static_cast<int>(sheet.width.nm()),
                                  static_cast<int>(sheet.height.nm())));
    }
    return task;
  }

 private:
  testing::Random random_;
};

std::string taskTold(const SmallTask& task) {
  std::string words;
  for (const CutSheet& sheet : task.stock)
    words += std::to_string(sheet.width.nm()) + "x" + std::to_string(sheet.height.nm()) + " at " +
             std::to_string(sheet.cost) + (sheet.mayTurn ? "" : " grained") + " hand " +
             std::to_string(sheet.atHand) + "; ";
  for (const SmallBlank& b : task.blanks)
    words += std::to_string(b.demand) + " of " + std::to_string(b.width) + "x" +
             std::to_string(b.height) + (b.mayTurn ? " turning, " : ", ");
  return words;
}

std::set<SmallCounts> listed(const SmallTask& task) {
  std::vector<KnapsackItem> items;
  for (const SmallBlank& b : task.blanks) items.push_back({b.width, b.height, b.mayTurn, b.demand});
  std::set<SmallCounts> counts;
  const auto patterns = allPatterns(task.stock[0].width.nm(), task.stock[0].height.nm(), items);
  EXPECT_TRUE(patterns) << taskTold(task);
  if (patterns)
    for (const Pattern& pattern : *patterns) {
      SmallCounts capped = pattern.counts;
      for (std::size_t i = 0; i < capped.size(); ++i)
        capped[i] = std::min(capped[i], task.blanks[i].demand);
      counts.insert(capped);
    }
  return EveryCut::maximal(counts);
}

TEST(ExactPlans, AllPatternsAreThoseOfEveryCutPosition) {
  Draw draw(421);
  for (int round = 0; round < 4000; ++round) {
    const SmallTask task = draw.task(18, 1);
    EveryCut oracle(task.blanks);
    const auto& wanted = oracle.of(static_cast<int>(task.stock[0].width.nm()),
                                   static_cast<int>(task.stock[0].height.nm()));
    ASSERT_EQ(listed(task), wanted) << "round " << round << ": " << taskTold(task);
  }
}

/// The least cost by the oracle, each sheet with its own turning, price and number at hand.
int leastCostOf(const SmallTask& task) {
  std::vector<SmallSheet> sheets;
  SmallCounts demand;
  for (const SmallBlank& b : task.blanks) demand.push_back(b.demand);
  const bool priced = std::ranges::all_of(task.stock, [](const CutSheet& s) { return s.cost > 0; });
  for (const CutSheet& stock : task.stock) {
    std::vector<SmallBlank> lying = task.blanks;
    for (SmallBlank& b : lying) b.mayTurn = b.mayTurn && stock.mayTurn;
    EveryCut oracle(lying);
    sheets.push_back(
        {priced ? static_cast<int>(stock.cost) : 1, stock.atHand,
         oracle.of(static_cast<int>(stock.width.nm()), static_cast<int>(stock.height.nm()))});
  }
  return testing::leastCost(sheets, demand);
}

std::vector<BlankDemand> demandsOf(const SmallTask& task) {
  std::vector<BlankDemand> demands;
  for (const SmallBlank& b : task.blanks)
    demands.push_back({"blank " + std::to_string(demands.size()), Length::nanometres(b.width),
                       Length::nanometres(b.height), b.demand, b.mayTurn});
  return demands;
}

void expectBest(const SmallTask& task, const std::string& where) {
  const auto demands = demandsOf(task);
  const auto plan = planCutting(task.stock, demands);
  const int least = leastCostOf(task);
  if (!plan) {
    const bool tooLarge = plan.problem().code == ProblemCode::BlankTooLarge;
    EXPECT_TRUE(tooLarge || plan.problem().code == ProblemCode::StockTooFew);
    EXPECT_EQ(least, INT_MAX) << where << taskTold(task);
    return;
  }
  EXPECT_EQ(testing::planFault(*plan, task.stock, demands), "") << where << taskTold(task);
  EXPECT_EQ(plan->cost, least) << where << taskTold(task);
  EXPECT_LE(plan->bound, least) << where << taskTold(task);
  EXPECT_TRUE(plan->proven()) << where << taskTold(task);
}

TEST(ExactPlans, SmallPlansOfOneSheetAreTheBestThereAre) {
  Draw draw(422);
  for (int round = 0; round < 700; ++round)
    expectBest(draw.task(16, 1), "round " + std::to_string(round) + ": ");
}

TEST(ExactPlans, SmallPlansOfScarcePricedAndGrainedSheetsAreTheBestThereAre) {
  Draw draw(423);
  for (int round = 0; round < 700; ++round) {
    SmallTask task = draw.task(14, static_cast<std::size_t>(draw.from(2, 3)));
    const bool priced = draw.from(0, 1) == 1;
    for (CutSheet& sheet : task.stock) {
      if (priced) sheet.cost = draw.from(3, 29);
      if (draw.from(0, 2) == 0) sheet.atHand = draw.from(0, 3);
      sheet.mayTurn = draw.from(0, 2) > 0;
    }
    expectBest(task, "round " + std::to_string(round) + ": ");
  }
}

/// Cut 7 from 12 and the rest of 5 must still hold a 5, though 7 stands for a part with one 5.
TEST(ExactPlans, APartIsNotRoundedDownToASizeThatIsMissing) {
  SmallTask task;
  task.blanks = {{7, 5, false, 1}, {5, 9, false, 2}};
  CutSheet sheet;
  sheet.width = Length::nanometres(14);
  sheet.height = Length::nanometres(15);
  task.stock = {sheet};
  expectBest(task, {});
  EXPECT_EQ(planCutting(task.stock, demandsOf(task))->sheets, 1);
}

BlankDemand blank(const char* name, Length width, Length height, int quantity) {
  return {name, width, height, quantity, true};
}

TEST(ExactPlans, ANarrowStripDoesNotHideThatTwoCardsLieSideBySide) {
  CutSheet a4;
  a4.width = Length::mm(210);
  a4.height = Length::mm(297);
  a4.mayTurn = false;
  const auto plan = planCutting({a4}, {blank("Strip", Length::mm(21), Length::mm(78), 8),
                                       blank("Panel", Length::mm(120), Length::mm(72), 8),
                                       blank("Card", Length::mm(101), Length::mm(165), 8)});
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->sheets, 5);
  EXPECT_TRUE(plan->proven());
}

TEST(ExactPlans, ThreeCardsInEighthsAndSixteenthsComeOutOfOneSheet) {
  CutSheet square;
  square.width = square.height = Length::inches(12);
  const auto plan =
      planCutting({square}, {blank("A", Length::inches(86, 16), Length::inches(51, 16), 1),
                             blank("B", Length::inches(98, 16), Length::inches(110, 16), 1),
                             blank("C", Length::inches(122, 16), Length::inches(50, 16), 1)});
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->sheets, 1);
}

/// 15 times 15 of them fit, more than a byte of counts holds.
TEST(ExactPlans, ManyTinyBlanksAreCountedRight) {
  CutSheet square;
  square.width = square.height = Length::inches(12);
  const auto plan = planCutting({square}, {blank("A", Length::mm(20), Length::mm(20), 450)});
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->sheets, 2);
  EXPECT_TRUE(plan->proven());
}

/// One patterned sheet on the list must not forbid turning on the others.
TEST(ExactPlans, EachSheetHasItsOwnGrain) {
  CutSheet plain;
  plain.width = Length::mm(210);
  plain.height = Length::mm(297);
  CutSheet patterned = plain;
  patterned.mayTurn = false;
  const std::vector<BlankDemand> demands{blank("A", Length::mm(140), Length::mm(100), 24)};
  const auto alone = planCutting({plain}, demands);
  const auto both = planCutting({plain, patterned}, demands);
  ASSERT_TRUE(alone && both);
  EXPECT_LE(both->sheets, alone->sheets);
}

}  // namespace
}  // namespace creasewright
