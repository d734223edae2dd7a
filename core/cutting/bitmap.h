#pragma once

#include <cstdint>
#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

/// Cells of one size in rows, each taken or free.
class Bitmap {
 public:
  Bitmap(int width, int height);

  [[nodiscard]] int width() const { return width_; }
  [[nodiscard]] int height() const { return height_; }
  [[nodiscard]] bool taken(int x, int y) const;
  void take(int x, int y);

  /// Whether `other`, its corner at (x, y), meets a taken cell here; it must lie inside.
  [[nodiscard]] bool meets(const Bitmap& other, int x, int y) const;
  /// How many cells are taken in both; `other` must lie inside.
  [[nodiscard]] int common(const Bitmap& other, int x, int y) const;
  /// How many cells are taken.
  [[nodiscard]] int count() const;
  /// Takes the cells of `other` with its corner at (x, y).
  void add(const Bitmap& other, int x, int y);

 private:
  [[nodiscard]] std::uint64_t* row(int y) { return &words_[static_cast<std::size_t>(y) * stride_]; }
  [[nodiscard]] const std::uint64_t* row(int y) const {
    return &words_[static_cast<std::size_t>(y) * stride_];
  }

  int width_;
  int height_;
  std::size_t stride_;  // words in a row, one of them spare so that a shifted word may be added
  std::vector<std::uint64_t> words_;
};

/// Every cell of `cell` mm that the polygon covers or touches, from (0, 0) on; the polygon must not
/// reach below 0.
Bitmap rasterized(const Polygon& outline, double cell);

}  // namespace creasewright
