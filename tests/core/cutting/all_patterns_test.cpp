#include "cutting/all_patterns.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

double worthOf(const Pattern& pattern, const std::vector<double>& values) {
  double sum = 0;
  for (std::size_t i = 0; i < values.size(); ++i) sum += pattern.counts[i] * values[i];
  return sum;
}

/// The dynamic programme finds the most valuable pattern for given values; among all patterns it
/// must be there, whatever the values.
TEST(AllPatterns, HoldTheBestForAnyValues) {
  testing::Random random(91);
  int listed = 0;
  for (int round = 0; round < 20; ++round) {
    std::vector<KnapsackItem> items;
    for (int i = 0; i < 5; ++i)
      items.push_back({random.whole(20, 70), random.whole(20, 70), random.whole(0, 1) == 1, 100});
    SheetKnapsack sheet(100, 120, items);
    const auto patterns = allPatterns(100, 120, items);
    if (!patterns) continue;  // too many
    ++listed;
    for (int v = 0; v < 30; ++v) {
      std::vector<double> values;
      for (int i = 0; i < 5; ++i) values.push_back(random.whole(0, 10'000));
      double best = 0;
      for (const Pattern& pattern : *patterns) best = std::max(best, worthOf(pattern, values));
      EXPECT_NEAR(best, sheet.best(values).value, 1e-9);
    }
  }
  EXPECT_GE(listed, 10);
}

/// The best value when no type may be cut more often than its limit; patterns worth more than
/// `slack` less than the best are left out.
double constrainedBest(long width, long height, const std::vector<KnapsackItem>& items,
                       const std::vector<double>& values, double slack) {
  const auto patterns = allPatterns(width, height, items, {}, {values, slack});
  double best = 0;
  if (!patterns) return best;
  for (const Pattern& pattern : *patterns) {
    double sum = 0;
    for (std::size_t i = 0; i < items.size(); ++i)
      sum += std::min(pattern.counts[i], items[i].atMost) * values[i];
    best = std::max(best, sum);
  }
  return best;
}

/// Christofides & Whitlock, Oper. Res. 25, 1977, 30-44: optima 244 and 2892 of their first two
/// constrained instances (published); the instances are typed from memory, and come to the
/// published optima. The third is not at hand.
TEST(AllPatterns, ComeToThePublishedOptimaOfSmallConstrainedInstances) {
  EXPECT_EQ(constrainedBest(15, 10,
                            {{8, 4, false, 2},
                             {3, 7, false, 1},
                             {8, 2, false, 3},
                             {3, 4, false, 5},
                             {3, 3, false, 2},
                             {3, 2, false, 2},
                             {2, 1, false, 1}},
                            {66, 35, 24, 17, 11, 8, 2}, 244),
            244);
  EXPECT_EQ(constrainedBest(40, 70,
                            {{21, 22, false, 1},
                             {31, 13, false, 1},
                             {9, 35, false, 3},
                             {9, 24, false, 3},
                             {30, 7, false, 2},
                             {11, 13, false, 3},
                             {10, 14, false, 3},
                             {14, 8, false, 3},
                             {12, 8, false, 3},
                             {13, 7, false, 3}},
                            {582, 403, 315, 216, 210, 143, 140, 110, 94, 90}, 120),
            2892);
}

TEST(AllPatterns, NoneCoversAnother) {
  const std::vector<KnapsackItem> items{
      {30, 40, true, 100}, {50, 20, true, 100}, {25, 25, true, 3}};
  const auto patterns = allPatterns(100, 100, items);
  ASSERT_TRUE(patterns);
  ASSERT_GT(patterns->size(), 3U);
  for (const Pattern& a : *patterns)
    for (const Pattern& b : *patterns) {
      if (&a == &b) continue;
      EXPECT_FALSE(std::ranges::equal(a.counts, b.counts));
    }
}

/// With a floor: exactly those of all patterns that waste no more than the slack.
TEST(AllPatterns, AFloorKeepsExactlyThosePatternsThatAreWorthIt) {
  testing::Random random(92);
  int listed = 0;
  for (int round = 0; round < 30; ++round) {
    std::vector<KnapsackItem> items;
    std::vector<double> worth;
    for (int i = 0; i < 5; ++i) {
      items.push_back({random.whole(20, 70), random.whole(20, 70), random.whole(0, 1) == 1, 100});
      worth.push_back(random.between(0.1, 1));
    }
    const auto all = allPatterns(100, 120, items);
    if (!all) continue;  // too many
    ++listed;
    double best = 0;
    for (const Pattern& pattern : *all) best = std::max(best, worthOf(pattern, worth));
    const double slack = best * random.between(0, 0.3);
    std::vector<std::vector<int>> wanted;
    for (const Pattern& pattern : *all)
      if (worthOf(pattern, worth) >= best - slack) wanted.push_back(pattern.counts);
    const auto near = allPatterns(100, 120, items, {}, {worth, slack});
    ASSERT_TRUE(near);
    std::vector<std::vector<int>> found;
    for (const Pattern& pattern : *near) found.push_back(pattern.counts);
    std::ranges::sort(wanted);
    std::ranges::sort(found);
    EXPECT_EQ(found, wanted) << round;
  }
  EXPECT_GE(listed, 15);
}

TEST(AllPatterns, GivesUpWhereThereAreTooMany) {
  std::vector<KnapsackItem> items;
  for (int i = 0; i < 12; ++i) items.push_back({11 + i, 17 + i, true, 100});
  EXPECT_FALSE(allPatterns(300, 300, items, {.compared = 10'000}));
  items.resize(65, {50, 50, true, 100});
  EXPECT_FALSE(allPatterns(300, 300, items));
}

}  // namespace
}  // namespace creasewright
