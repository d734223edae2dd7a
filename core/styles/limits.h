#pragma once

#include <algorithm>

#include "styles/parameter_spec.h"

namespace creasewright {

// Limits that styles share.

inline Limit fixedCount(std::int64_t count) {
  return [count](const Parameters&, const Workbench&) { return count; };
}

/// Another parameter's value plus `extra`.
inline Limit otherPlus(std::string_view key, Length extra = {}) {
  return
      [key, extra](const Parameters& p, const Workbench&) { return (p.length(key) + extra).nm(); };
}

/// The smallest flap that holds: 6 mm or ten calipers (common practice, no published source).
inline Limit smallestFlap() {
  return [](const Parameters&, const Workbench& m) { return std::max(mm(6), m.caliper * 10).nm(); };
}

/// So many thicknesses of the card.
inline Limit calipers(std::int64_t count) {
  return [count](const Parameters&, const Workbench& m) { return m.caliper.nm() * count; };
}

/// The smaller of two limits.
inline Limit least(Limit a, Limit b) {
  return [a = std::move(a), b = std::move(b)](const Parameters& p, const Workbench& m) {
    return std::min(a(p, m), b(p, m));
  };
}

/// The larger of two limits.
inline Limit greatest(Limit a, Limit b) {
  return [a = std::move(a), b = std::move(b)](const Parameters& p, const Workbench& m) {
    return std::max(a(p, m), b(p, m));
  };
}

/// A limit plus `extra`.
inline Limit plus(Limit limit, Length extra) {
  return [limit = std::move(limit), extra](const Parameters& p, const Workbench& m) {
    return limit(p, m) + extra.nm();
  };
}

/// `count` times a limit.
inline Limit times(std::int64_t count, Limit limit) {
  return [count, limit = std::move(limit)](const Parameters& p, const Workbench& m) {
    return count * limit(p, m);
  };
}

/// A part of another parameter's value, less `gap`.
inline Limit partOf(std::string_view key, std::int64_t divisor, Length gap = {}) {
  return [key, divisor, gap](const Parameters& p, const Workbench&) {
    return p.length(key).nm() / divisor - gap.nm();
  };
}

/// A share of the width, in hundredths.
inline Limit shareOfWidth(std::int64_t hundredths) {
  return [hundredths](const Parameters& p, const Workbench&) {
    return p.length("width").nm() / 100 * hundredths;
  };
}

inline constexpr Length kLargestSide = mm(1000);

}  // namespace creasewright
