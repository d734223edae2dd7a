#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

/// A stretch of a line between two coordinates (mm).
struct Span {
  double low = 0;
  double high = 0;
  [[nodiscard]] double length() const { return high - low; }
};

/// Sorted, and joined where they touch within a micrometre.
std::vector<Span> joined(std::vector<Span> spans);

/// The parts that lie in both of two joined lists.
std::vector<Span> common(const std::vector<Span>& a, const std::vector<Span>& b);

/// Whether a span of the list overlaps `low`..`high` by more than 0.05 mm.
bool overlaps(const std::vector<Span>& spans, double low, double high);

/// Where the line x = `at` runs through the inside of a polygon, as stretches of y. Running along
/// an edge is not inside; stretches within 0.01 mm of one count as on it.
std::vector<Span> insideOf(const Polygon& polygon, double at);

}  // namespace creasewright
