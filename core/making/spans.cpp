#include "making/spans.h"

#include <algorithm>

namespace creasewright {
namespace {

constexpr double kTouch = 1e-3;         // mm
constexpr double kProbe = 1e-2;         // mm beside the line
constexpr double kLeastOverlap = 5e-2;  // mm, shorter overlaps do not count

/// Stretches of y in which the line x = `at` is inside, by the even-odd rule.
std::vector<Span> scan(const Polygon& polygon, double at) {
  std::vector<double> crossings;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Point a = polygon[i];
    const Point b = polygon[(i + 1) % polygon.size()];
    if ((a.x <= at) == (b.x <= at)) continue;
    crossings.push_back(a.y + (b.y - a.y) * (at - a.x) / (b.x - a.x));
  }
  std::ranges::sort(crossings);
  std::vector<Span> spans;
  for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
    spans.push_back({crossings[i], crossings[i + 1]});
  return spans;
}

}  // namespace

std::vector<Span> joined(std::vector<Span> spans) {
  std::ranges::sort(spans, {}, &Span::low);
  std::vector<Span> result;
  for (const Span& span : spans)
    if (!result.empty() && span.low <= result.back().high + kTouch)
      result.back().high = std::max(result.back().high, span.high);
    else
      result.push_back(span);
  return result;
}

std::vector<Span> common(const std::vector<Span>& a, const std::vector<Span>& b) {
  std::vector<Span> result;
  for (const Span& s : a)
    for (const Span& t : b) {
      const Span both{std::max(s.low, t.low), std::min(s.high, t.high)};
      if (both.length() > 0) result.push_back(both);
    }
  return joined(std::move(result));
}

bool overlaps(const std::vector<Span>& spans, double low, double high) {
  return std::ranges::any_of(
      spans,
      [&](const Span& span) {
        return std::min(span.high, high) - std::max(span.low, low) > kLeastOverlap;
      });
}

std::vector<Span> insideOf(const Polygon& polygon, double at) {
  return common(scan(polygon, at - kProbe), scan(polygon, at + kProbe));
}

}  // namespace creasewright
