#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

#include "document/build.h"
#include "extras/extra_kind.h"
#include "styles/registry.h"
#include "support/random.h"

namespace creasewright::testing {

inline ToolGrid randomGrid(Random& random) {
  const std::array<ToolGrid, 4> grids{ToolGrid::none(), ToolGrid::eighthInch(),
                                      ToolGrid::sixteenthInch(), ToolGrid::millimetre()};
  return grids.at(static_cast<std::size_t>(random.whole(0, 3)));
}

/// A style's design as it comes, without a product.
inline Design asItComes(const Style& style) {
  Design design;
  design.styleId = style.id;
  design.parameters = standardParameters(style);
  return design;
}

/// The same with every kind of extra that fits beside those before it.
inline Design withItsExtras(const Style& style) {
  Design design = asItComes(style);
  for (const ExtraKind& kind : extraKinds()) {
    Design more = design;
    more.extras.push_back(standardExtra(kind, more.card));
    if (const auto built = build(more); built && built->problems.empty()) design = more;
  }
  return design;
}

/// A design without a product whose parameters are drawn one after the other between their limits
/// (lengths up to 300 mm, small ones as likely as large ones); nothing when a later choice put an
/// earlier one outside.
inline std::optional<Design> randomInsideLimits(Random& random, const Style& style) {
  Design design;
  design.styleId = style.id;
  design.card = {"test", "test card", Length::mm(random.between(0.15, 0.6)), 0};
  design.grid = randomGrid(random);
  const Workbench bench{design.card.caliper, design.grid};
  design.parameters = standardParameters(style);
  for (int round = 0; round < 3; ++round) {
    for (const ParameterSpec& spec : style.parameters) {
      const std::int64_t low = spec.minimum(design.parameters, bench);
      std::int64_t high = spec.maximum(design.parameters, bench);
      if (spec.kind == ParameterKind::Length)
        high = std::min(high, std::max<std::int64_t>(low, 300'000'000));
      if (high < low) continue;
      if (spec.kind != ParameterKind::Length) {
        design.parameters.setCount(spec.key,
                                   random.whole(static_cast<int>(low), static_cast<int>(high)));
        continue;
      }
      const double from = std::log(static_cast<double>(low) + 1e5);
      const double to = std::log(static_cast<double>(high) + 1e5);
      const auto raw = static_cast<std::int64_t>(std::exp(random.between(from, to)) - 1e5);
      design.parameters.setCount(spec.key, std::clamp(raw, low, high));
    }
    if (limitProblems(design).empty()) return design;
  }
  return std::nullopt;
}

}  // namespace creasewright::testing
