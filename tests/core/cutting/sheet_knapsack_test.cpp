#include "cutting/sheet_knapsack.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <gtest/gtest.h>

#include "core/cutting/instances.h"
#include "cutting/raster.h"
#include "support/random.h"

namespace creasewright {
namespace {

double bestOf(const testing::CuttingInstance& instance, bool mayTurn) {
  std::vector<KnapsackItem> items;
  std::vector<double> values;
  for (const auto& type : instance.types) {
    items.push_back({type.width, type.height, mayTurn, 1000});
    values.push_back(static_cast<double>(type.number));
  }
  SheetKnapsack sheet(instance.width, instance.height, std::move(items));
  return sheet.best(values).value;
}

// Optima as published by G. Cintra, University of Sao Paulo, for gcut1 .. gcut12 (Beasley 1985).
constexpr std::array<double, 12> kFixed{56460,  60536,  61036,  61698,  246000, 238998,
                                        242567, 246633, 971100, 982025, 980096, 979986};
constexpr std::array<double, 12> kTurned{58136,  60611,  61626,  62265,  246000, 240951,
                                         245866, 247787, 971100, 982025, 980096, 988694};

/// gcut1, typed in: it runs wherever the tests run.
TEST(SheetKnapsack, FindsThePublishedOptimumOfTheFirstInstance) {
  const testing::CuttingInstance gcut1{250,
                                       250,
                                       {{167, 184, 30728},
                                        {114, 118, 13452},
                                        {167, 152, 25384},
                                        {83, 140, 11620},
                                        {70, 86, 6020},
                                        {143, 166, 23738},
                                        {120, 160, 19200},
                                        {66, 148, 9768},
                                        {87, 141, 12267},
                                        {69, 165, 11385}}};
  const auto read = testing::readInstance("gcut1.txt");
  if (read) {  // what was typed is what was published
    ASSERT_EQ(read->types.size(), gcut1.types.size());
    for (std::size_t i = 0; i < gcut1.types.size(); ++i) {
      EXPECT_EQ(read->types[i].width, gcut1.types[i].width) << i;
      EXPECT_EQ(read->types[i].height, gcut1.types[i].height) << i;
    }
  }
  EXPECT_EQ(bestOf(gcut1, false), kFixed[0]);
  EXPECT_EQ(bestOf(gcut1, true), kTurned[0]);
}

// As no sheet is worth more than its area of the blank that is worth most by area, scaled sums stay
// in 31 bits; blanks worth nothing may be scaled by anything, but not without end.
TEST(SheetKnapsack, ScaledSumsStayIn31BitsAndTheScaleIsFinite) {
  const SheetKnapsack sheet(100, 100, {{50, 50, true, 9}, {20, 10, true, 9}});
  const double scale = sheet.mostScale({3.5, 0.2});
  const double dearest = std::max(3.5 / 2500, 0.2 / 200) * 10'000;
  EXPECT_LE(scale * dearest, 2147483647.0);
  EXPECT_GE(scale * dearest, 1e6) << "and keep some digits";
  const double free = sheet.mostScale({0, 0});
  EXPECT_TRUE(std::isfinite(free));
  EXPECT_GT(free, 0);
}

TEST(SheetKnapsack, FindsAllPublishedOptima) {
  for (std::size_t n = 0; n < kFixed.size(); ++n) {
    const auto instance = testing::readInstance("gcut" + std::to_string(n + 1) + ".txt");
    if (!instance)
      GTEST_SKIP() << "The folder " << testing::instanceFolder()
                   << " has no gcut instances: 22 published optima were NOT checked. Set "
                      "CREASEWRIGHT_CUTTING_INSTANCES to a folder that has them.";
    EXPECT_EQ(bestOf(*instance, false), kFixed[n]) << n + 1;
    EXPECT_EQ(bestOf(*instance, true), kTurned[n]) << n + 1;
  }
}

/// The definition itself: the best of all items and all cuts at whole places.
double bruteForce(long w, long h, const std::vector<KnapsackItem>& items,
                  const std::vector<double>& values) {
  std::vector<double> best(static_cast<std::size_t>((w + 1) * (h + 1)), 0);
  const auto at = [&](long x, long y) -> double& {
    return best[static_cast<std::size_t>(x * (h + 1) + y)];
  };
  for (long x = 1; x <= w; ++x)
    for (long y = 1; y <= h; ++y) {
      for (std::size_t i = 0; i < items.size(); ++i) {
        const bool straight = items[i].width <= x && items[i].height <= y;
        const bool turned = items[i].mayTurn && items[i].height <= x && items[i].width <= y;
        if (straight || turned) at(x, y) = std::max(at(x, y), values[i]);
      }
      for (long a = 1; a < x; ++a) at(x, y) = std::max(at(x, y), at(a, y) + at(x - a, y));
      for (long a = 1; a < y; ++a) at(x, y) = std::max(at(x, y), at(x, a) + at(x, y - a));
    }
  return at(w, h);
}

/// Rounded down, blanks are never worth less; with lengths below the step's parts, exactly as much.
TEST(SheetKnapsack, MostWorthIsAboveEveryPattern) {
  testing::Random random(302);
  int above = 0;
  Work work(1e12);
  for (int round = 0; round < 12; ++round) {
    std::vector<KnapsackItem> items;
    std::vector<double> values;
    for (int i = 0; i < 5; ++i) {
      items.push_back({random.whole(200, 900), random.whole(200, 900), random.whole(0, 1) == 1, 9});
      values.push_back(random.whole(500, 9000));
    }
    const double best = SheetKnapsack(2000, 1500, items).best(values).value;
    const double most = mostWorth(2000, 1500, items, values, work);
    EXPECT_GE(most, best - 1e-9);
    above += most > best + 1e-9;
    EXPECT_NEAR(mostWorth(200, 150, {{30, 40, true, 9}, {25, 70, false, 9}}, {1, 2}, work),
                SheetKnapsack(200, 150, {{30, 40, true, 9}, {25, 70, false, 9}}).best({1, 2}).value,
                1e-9);
  }
  EXPECT_LT(above, 12);
}

/// The loops for machines with wider whole numbers give what the others do.
TEST(SheetKnapsack, RowsAreJoinedAlikeOnEveryMachine) {
#if defined(__x86_64__)
  if (__builtin_cpu_supports("avx2") == 0) GTEST_SKIP() << "This machine has no wide numbers.";
#endif
  testing::Random random(305);
  const auto draw = [&](std::size_t count) {
    std::vector<std::int32_t> numbers;
    for (std::size_t i = 0; i < count; ++i) numbers.push_back(random.whole(0, 1 << 29));
    return numbers;
  };
  for (int round = 0; round < 50; ++round) {
    const std::vector<std::int32_t> first = draw(64);
    const std::vector<std::int32_t> second = draw(64);
    std::vector<std::int32_t> plain = draw(64);
    std::vector<std::int32_t> wide = plain;
    plainKernels().rows(plain.data(), first.data(), second.data(), plain.size());
    wideKernels().rows(wide.data(), first.data(), second.data(), wide.size());
    EXPECT_EQ(plain, wide);
    const std::vector<CutPair> cuts{{1, 6}, {2, 5}, {3, 4}};
    plainKernels().cuts(plain.data(), 7, cuts.data(), cuts.size());
    wideKernels().cuts(wide.data(), 7, cuts.data(), cuts.size());
    EXPECT_EQ(plain, wide);
  }
}

TEST(SheetKnapsack, AgreesWithTheDefinitionOnSmallSheets) {
  testing::Random random(301);
  for (int round = 0; round < 60; ++round) {
    const long w = random.whole(5, 24);
    const long h = random.whole(5, 24);
    std::vector<KnapsackItem> items;
    std::vector<double> values;
    const int count = random.whole(1, 5);
    for (int i = 0; i < count; ++i) {
      items.push_back({random.whole(2, 12), random.whole(2, 12), random.whole(0, 1) == 1, 1000});
      values.push_back(random.whole(500, 9000));
    }
    SheetKnapsack sheet(w, h, items);
    const Pattern pattern = sheet.best(values);
    EXPECT_NEAR(pattern.value, bruteForce(w, h, items, values), 1e-9);
    double sum = 0;
    for (std::size_t i = 0; i < items.size(); ++i) sum += pattern.counts[i] * values[i];
    EXPECT_NEAR(sum, pattern.value, 1e-9);
  }
}

}  // namespace
}  // namespace creasewright
