#include "styles/limits_search.h"

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "styles/limits.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

/// Both ends of what is possible are possible, and a nanometre beyond them is not, judged by the
/// limits themselves.
TEST(PossibleRange, EndsArePossibleAndBeyondThemNothingIs) {
  testing::Random random(321);
  int tried = 0;
  for (const Style& style : styles())
    for (int i = 0; i < 40; ++i) {
      const auto design = testing::randomInsideLimits(random, style);
      if (!design) continue;
      const Workbench bench{design->card.caliper, design->grid};
      for (const ParameterSpec& spec : style.parameters) {
        const RawRange range = possibleRange(style.parameters, design->parameters, bench, spec.key);
        const auto possible = [&](std::int64_t value) {
          Parameters p = design->parameters;
          p.setCount(spec.key, value);
          return checkLimits(style, p, bench).empty();
        };
        EXPECT_TRUE(possible(range.least)) << style.id << ' ' << spec.key;
        EXPECT_TRUE(possible(range.most)) << style.id << ' ' << spec.key;
        EXPECT_FALSE(possible(range.least - 1)) << style.id << ' ' << spec.key;
        EXPECT_FALSE(possible(range.most + 1)) << style.id << ' ' << spec.key;
        ++tried;
      }
    }
  EXPECT_GE(tried, 3000);
}

/// What the product asks for holds upwards only: a length above it may come down to it, and one
/// that the person made shorter need not grow.
TEST(MovedWithinLimits, GoesNotBelowWhatTheProductAsksFor) {
  const Workbench bench{Length::mm(0.3), ToolGrid::millimetre()};
  const auto moved = [&](int length, int most, int floor) -> double {
    const std::vector<ParameterSpec> specs{measure("length", {}, {})
                                               .from(fixedCount(Length::mm(10).nm()))
                                               .to(fixedCount(Length::mm(most).nm()))};
    Parameters p;
    p.set("length", Length::mm(length));
    const auto found =
        movedWithinLimits(specs, p, bench, Floors{{"length", Length::mm(floor).nm()}});
    return found ? found->mm("length") : 0;
  };
  EXPECT_EQ(moved(100, 80, 60), 80);
  EXPECT_EQ(moved(100, 80, 90), 0) << "the product would not go in";
  EXPECT_EQ(moved(70, 200, 90), 70) << "the person went below";
}

/// A strip wider than its frame on thin card: told once what is right together, not one limit
/// after the other in a circle.
TEST(Advice, LinkedLimitsAreToldTogether) {
  const Style& tray = **findStyle("framed-tray");
  const Workbench bench{Length::mm(0.3), ToolGrid::eighthInch()};
  Parameters p = standardParameters(tray);
  p.set("frame", Length::inches(1, 8));
  p.set("glue-strip", Length::inches(1, 4));
  for (const Problem& problem : checkLimits(tray, p, bench)) {
    ASSERT_EQ(problem.values.size(), 3U);
    p.set(problem.where, std::get<Length>(problem.values[1]));
  }
  EXPECT_TRUE(checkLimits(tray, p, bench).empty());
  EXPECT_EQ(p.length("frame"), Length::inches(1, 4));
  EXPECT_EQ(p.length("glue-strip"), Length::inches(1, 4));
}

}  // namespace
}  // namespace creasewright
