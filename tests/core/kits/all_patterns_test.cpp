#include "kits/all_patterns.h"

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
  for (int round = 0; round < 20; ++round) {
    std::vector<KnapsackItem> items;
    for (int i = 0; i < 5; ++i)
      items.push_back({random.whole(20, 70), random.whole(20, 70), random.whole(0, 1) == 1, 100});
    SheetKnapsack sheet(100, 120, items);
    const auto patterns = allPatterns(100, 120, items);
    ASSERT_TRUE(patterns);
    for (int v = 0; v < 30; ++v) {
      std::vector<double> values;
      for (int i = 0; i < 5; ++i) values.push_back(random.between(0, 1));
      double best = 0;
      for (const Pattern& pattern : *patterns) best = std::max(best, worthOf(pattern, values));
      EXPECT_NEAR(best, sheet.best(values).value, 1e-9);
    }
  }
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
  for (int round = 0; round < 30; ++round) {
    std::vector<KnapsackItem> items;
    std::vector<double> worth;
    for (int i = 0; i < 5; ++i) {
      items.push_back({random.whole(20, 70), random.whole(20, 70), random.whole(0, 1) == 1, 100});
      worth.push_back(random.between(0.1, 1));
    }
    const auto all = allPatterns(100, 120, items);
    ASSERT_TRUE(all);
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
