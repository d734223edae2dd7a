#include "pages/free_space.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace creasewright {
namespace {

constexpr int kBits = 64;

}  // namespace

/// The cells that a box touches, the last ones excluded.
struct FreeSpace::Cells {
  int left = 0;
  int right = 0;
  int bottom = 0;
  int top = 0;
};

FreeSpace::FreeSpace(double width, double height)
    : columns_(std::max(1, static_cast<int>(std::ceil(width)))),
      rows_(std::max(1, static_cast<int>(std::ceil(height)))),
      stride_(static_cast<std::size_t>((columns_ + kBits - 1) / kBits)),
      taken_(stride_ * static_cast<std::size_t>(rows_), 0) {}

void FreeSpace::mark(int column, int row) {
  if (column < 0 || row < 0 || column >= columns_ || row >= rows_) return;
  taken_[static_cast<std::size_t>(row) * stride_ + static_cast<std::size_t>(column / kBits)] |=
      Word{1} << (column % kBits);
  doubled_.clear();
}

void FreeSpace::markRow(int row, int left, int right) {
  left = std::max(0, left);
  right = std::min(columns_, right);
  if (row < 0 || row >= rows_ || left >= right) return;
  doubled_.clear();
  Word* words = taken_.data() + static_cast<std::size_t>(row) * stride_;
  for (int column = left; column < right;) {
    const int from = column % kBits;
    const int count = std::min(kBits - from, right - column);
    words[column / kBits] |= (~Word{0} >> (kBits - count)) << from;
    column += count;
  }
}

void FreeSpace::blockLine(const Polyline& line) {
  constexpr double kStep = 0.25;  // a quarter of a cell: no cell on the way is missed by much
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const auto [low, high] = std::minmax(line[i].x, line[i + 1].x);
    const auto cell = [](double at) { return static_cast<int>(std::floor(at)); };
    if (line[i].y == line[i + 1].y) {
      markRow(cell(line[i].y), cell(low), cell(high) + 1);
      continue;
    }
    if (low == high) {
      const auto [bottom, top] = std::minmax(line[i].y, line[i + 1].y);
      for (int row = cell(bottom); row <= cell(top); ++row) mark(cell(low), row);
      continue;
    }
    const int steps = static_cast<int>(std::ceil(distance(line[i], line[i + 1]) / kStep));
    for (int k = 0; k <= steps; ++k) {
      const Point p = line[i] + (line[i + 1] - line[i]) * (steps == 0 ? 0.0 : double(k) / steps);
      mark(static_cast<int>(std::floor(p.x)), static_cast<int>(std::floor(p.y)));
    }
  }
}

FreeSpace::Cells FreeSpace::cellsOf(const Bounds& box) const {
  return {static_cast<int>(std::floor(box.low.x)), static_cast<int>(std::ceil(box.high.x)),
          static_cast<int>(std::floor(box.low.y)), static_cast<int>(std::ceil(box.high.y))};
}

void FreeSpace::block(const Bounds& box) {
  const Cells cells = cellsOf(box);
  for (int row = std::max(0, cells.bottom); row < std::min(rows_, cells.top); ++row)
    markRow(row, cells.left, cells.right);
}

void FreeSpace::blockArea(const Polygon& ring) {
  const Bounds box = bounds(ring);
  for (double low = std::floor(box.low.y); low < box.high.y; low += 1) {
    std::vector<double> crossings;
    const double y = low + 0.5001;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i];
      const Point b = ring[(i + 1) % ring.size()];
      if ((a.y > y) != (b.y > y)) crossings.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
    std::ranges::sort(crossings);
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
      block({{crossings[i], low}, {crossings[i + 1], low + 1}});
  }
}

void FreeSpace::rowsTaken(int bottom, int top, std::vector<Word>& all) const {
  all.assign(stride_, 0);
  for (int row = bottom; row < top; ++row)
    for (std::size_t i = 0; i < stride_; ++i)
      all[i] |= taken_[static_cast<std::size_t>(row) * stride_ + i];
}

void FreeSpace::manyRowsTaken(int bottom, int top, std::vector<Word>& all) const {
  constexpr int kFew = 8;
  if (top - bottom < kFew) return rowsTaken(bottom, top, all);
  std::size_t levels = 0;
  while ((4 << levels) <= top - bottom) ++levels;  // the last one holds 2^(levels + 1) rows
  while (doubled_.size() <= levels) {
    const std::vector<Word>& before = doubled_.empty() ? taken_ : doubled_.back();
    const std::size_t step = stride_ << doubled_.size();
    std::vector<Word> next = before;
    for (std::size_t i = 0; i + step < next.size(); ++i) next[i] |= before[i + step];
    doubled_.push_back(std::move(next));
  }
  const std::vector<Word>& rows = doubled_[levels];
  const Word* low = rows.data() + static_cast<std::size_t>(bottom) * stride_;
  const Word* high = rows.data() + static_cast<std::size_t>(top - (2 << levels)) * stride_;
  all.resize(stride_);
  Word* both = all.data();
  for (std::size_t i = 0; i < stride_; ++i) both[i] = low[i] | high[i];
}

bool FreeSpace::isFree(const Bounds& box) const {
  const Cells cells = cellsOf(box);
  if (cells.left < 0 || cells.bottom < 0 || cells.right > columns_ || cells.top > rows_)
    return false;
  std::vector<Word> all;
  rowsTaken(cells.bottom, cells.top, all);
  for (int column = cells.left; column < cells.right; ++column)
    if ((all[static_cast<std::size_t>(column / kBits)] >> (column % kBits) & 1) != 0) return false;
  return true;
}

namespace {

/// Rows from the one nearest to `wish` outwards, the lower one first where two are as far.
class RowsOutwards {
 public:
  RowsOutwards(double low, double most, double wish) : wish_(wish) {
    rows_.reserve(static_cast<std::size_t>(std::max(0.0, most - low)) + 2);
    for (double y = low; y <= most; y += 1) rows_.push_back(y);
    above_ = static_cast<std::size_t>(std::ranges::lower_bound(rows_, wish) - rows_.begin());
    below_ = above_;
  }

  std::optional<double> next() {
    const bool up = above_ < rows_.size();
    if (below_ == 0) return up ? std::optional(rows_[above_++]) : std::nullopt;
    if (up && rows_[above_] - wish_ < wish_ - rows_[below_ - 1]) return rows_[above_++];
    return rows_[--below_];
  }

 private:
  double wish_;
  std::vector<double> rows_;
  std::size_t above_ = 0;  ///< the next one, going up
  std::size_t below_ = 0;  ///< one more than the next one, going down
};

/// Of each run of `wide` free cells the first one: bit c stays where c to c + wide - 1 are free.
/// False: there is none.
bool keepStarts(std::uint64_t* free, std::size_t count, int wide) {
  std::uint64_t any = 1;
  for (int known = 1; known < wide && any != 0;) {
    const int by = std::min(known, wide - known);
    const auto words = static_cast<std::size_t>(by / kBits);
    const int bits = by % kBits;
    any = 0;
    for (std::size_t i = 0; i < count; ++i) {
      const std::size_t from = i + words;
      std::uint64_t shifted = from < count ? free[from] >> bits : 0;
      if (bits > 0 && from + 1 < count) shifted |= free[from + 1] << (kBits - bits);
      free[i] &= shifted;
      any |= free[i];
    }
    known += by;
  }
  return any != 0;
}

/// The last set bit from `low` to `from`, going down; nothing where none is.
std::optional<int> bitDown(const std::vector<std::uint64_t>& bits, int from, int low) {
  for (int at = from; at >= low;) {
    const int inWord = at % kBits;
    const std::uint64_t word = bits[static_cast<std::size_t>(at / kBits)] << (kBits - 1 - inWord);
    if (word != 0) {
      const int found = at - std::countl_zero(word);
      return found >= low ? std::optional(found) : std::nullopt;
    }
    at -= inWord + 1;
  }
  return std::nullopt;
}

/// The first set bit from `from` to `high`.
std::optional<int> bitUp(const std::vector<std::uint64_t>& bits, int from, int high) {
  for (int at = from; at <= high;) {
    const int inWord = at % kBits;
    const std::uint64_t word = bits[static_cast<std::size_t>(at / kBits)] >> inWord;
    if (word != 0) {
      const int found = at + std::countr_zero(word);
      return found <= high ? std::optional(found) : std::nullopt;
    }
    at += kBits - inWord;
  }
  return std::nullopt;
}

}  // namespace

std::vector<bool> FreeSpace::openBlocks(int size, int wide, int first, int last) const {
  std::vector<bool> open;
  std::vector<Word> free;
  for (int bottom = 0; bottom + size <= rows_; bottom += size) {
    manyRowsTaken(bottom, bottom + size, free);
    for (Word& word : free) word = ~word;
    open.push_back(keepStarts(free.data(), free.size(), wide) &&
                   bitUp(free, first, last).has_value());
  }
  return open;
}

std::optional<Point> FreeSpace::find(double width, double height, const Bounds& within,
                                     Point wish) const {
  std::optional<Point> best;
  double nearest = 0;  // squared distance of the best
  const auto judge = [&](Point low) {
    const Point away = low - wish;
    const double far = dot(away, away);
    if (best && (far > nearest || (far == nearest && low.y >= best->y))) return;
    best = low;
    nearest = far;
  };
  const Cells across = cellsOf({within.low, {within.low.x + width, within.high.y}});
  const int wide = across.right - across.left;
  const int first = std::max(0, across.left);
  int last = std::min(columns_ - wide,
                      across.left + static_cast<int>(within.high.x - within.low.x - width) + 1);
  const auto placeOf = [&](int column) { return within.low.x + (column - across.left); };
  while (last >= first && placeOf(last) + width > within.high.x) --last;
  if (last < first) return std::nullopt;
  const int wished = std::clamp(across.left + static_cast<int>(std::floor(wish.x - within.low.x)),
                                first - 1, last);
  RowsOutwards rows(within.low.y, within.high.y - height, wish.y);
  // A place holds a whole block of half its rows: most are ruled out by the few blocks of a page.
  const int block = static_cast<int>(height) / 2;
  const std::vector<bool> open =
      block > 1 ? openBlocks(block, wide, first, last) : std::vector<bool>();
  if (block > 1 && std::ranges::find(open, true) == open.end()) return std::nullopt;
  std::vector<Word> free;
  while (const std::optional<double> y = rows.next()) {
    if (best && (*y - wish.y) * (*y - wish.y) > nearest) break;
    const int bottom = static_cast<int>(std::floor(*y));
    const int top = static_cast<int>(std::ceil(*y + height));
    if (bottom < 0 || top > rows_) continue;
    if (block > 1 && !open[static_cast<std::size_t>((bottom + block - 1) / block)]) continue;
    manyRowsTaken(bottom, top, free);
    for (Word& word : free) word = ~word;
    if (!keepStarts(free.data(), free.size(), wide)) continue;
    if (const auto column = bitDown(free, wished, first)) judge({placeOf(*column), *y});
    if (const auto column = bitUp(free, wished + 1, last)) judge({placeOf(*column), *y});
  }
  return best;
}

}  // namespace creasewright
