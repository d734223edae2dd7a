#include "cutting/bitmap.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace creasewright {
namespace {

constexpr int kBits = 64;
constexpr double kTouch = 1e-9;  // cells

struct Crossing {
  double low;
  double high;
};

/// The part of an edge between two heights, as a stretch along x; nothing when it is not there.
bool stretchIn(Point a, Point b, double low, double high, Crossing& out) {
  if (a.y > b.y) std::swap(a, b);
  if (b.y < low || a.y > high) return false;
  const double rise = b.y - a.y;
  const auto at = [&](double y) {
    return rise < 1e-12 ? a.x : a.x + (b.x - a.x) * std::clamp((y - a.y) / rise, 0.0, 1.0);
  };
  const double from = rise < 1e-12 ? a.x : at(low);
  const double to = rise < 1e-12 ? b.x : at(high);
  out = {std::min(from, to), std::max(from, to)};
  return true;
}

}  // namespace

Bitmap::Bitmap(int width, int height)
    : width_(width),
      height_(height),
      stride_(static_cast<std::size_t>(width) / kBits + 2),
      words_(stride_ * static_cast<std::size_t>(std::max(height, 0)), 0) {}

bool Bitmap::taken(int x, int y) const { return ((row(y)[x / kBits] >> (x % kBits)) & 1U) != 0; }

void Bitmap::take(int x, int y) { row(y)[x / kBits] |= std::uint64_t{1} << (x % kBits); }

bool Bitmap::meets(const Bitmap& other, int x, int y) const {
  const auto first = static_cast<std::size_t>(x / kBits);
  const int shift = x % kBits;
  for (int r = 0; r < other.height_; ++r) {
    const std::uint64_t* mine = row(y + r);
    const std::uint64_t* theirs = other.row(r);
    for (std::size_t w = 0; w + 1 < other.stride_; ++w) {
      if (theirs[w] == 0) continue;
      if ((mine[first + w] & (theirs[w] << shift)) != 0) return true;
      if (shift > 0 && (mine[first + w + 1] & (theirs[w] >> (kBits - shift))) != 0) return true;
    }
  }
  return false;
}

int Bitmap::common(const Bitmap& other, int x, int y) const {
  const auto first = static_cast<std::size_t>(x / kBits);
  const int shift = x % kBits;
  int cells = 0;
  for (int r = 0; r < other.height_; ++r) {
    const std::uint64_t* mine = row(y + r);
    const std::uint64_t* theirs = other.row(r);
    for (std::size_t w = 0; w + 1 < other.stride_; ++w) {
      if (theirs[w] == 0) continue;
      cells += std::popcount(mine[first + w] & (theirs[w] << shift));
      if (shift > 0) cells += std::popcount(mine[first + w + 1] & (theirs[w] >> (kBits - shift)));
    }
  }
  return cells;
}

int Bitmap::count() const {
  int cells = 0;
  for (const std::uint64_t word : words_) cells += std::popcount(word);
  return cells;
}

void Bitmap::add(const Bitmap& other, int x, int y) {
  for (int r = 0; r < other.height_; ++r)
    for (int c = 0; c < other.width_; ++c)
      if (other.taken(c, r)) take(x + c, y + r);
}

Bitmap rasterized(const Polygon& outline, double cell) {
  const Bounds box = bounds(outline);
  Polygon cells = outline;
  for (Point& p : cells) p = p / cell;
  const auto size = [&](double mm) { return static_cast<int>(std::ceil(mm / cell - kTouch)); };
  Bitmap map(std::max(1, size(box.high.x)), std::max(1, size(box.high.y)));
  const auto fill = [&](int y, double low, double high) {
    const int from = std::max(0, static_cast<int>(std::floor(low + kTouch)));
    const int to = std::min(map.width() - 1, static_cast<int>(std::ceil(high - kTouch)) - 1);
    for (int x = from; x <= to; ++x) map.take(x, y);
  };
  for (int y = 0; y < map.height(); ++y) {
    std::vector<double> crossings;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const Point a = cells[i];
      const Point b = cells[(i + 1) % cells.size()];
      Crossing part{};
      if (stretchIn(a, b, y + kTouch, y + 1 - kTouch, part)) fill(y, part.low, part.high);
      const double middle = y + 0.5;
      if ((a.y <= middle) != (b.y <= middle))
        crossings.push_back(a.x + (b.x - a.x) * (middle - a.y) / (b.y - a.y));
    }
    std::ranges::sort(crossings);
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
      fill(y, crossings[i], crossings[i + 1]);
  }
  return map;
}

}  // namespace creasewright
