#pragma once

#include <optional>
#include <vector>

#include "cutting/bitmap.h"

namespace creasewright {

/// A part in one of its quarter turns, with half its gap all round.
struct Stamp {
  int quarters = 0;
  Bitmap cells{1, 1};
  Bitmap halo{1, 1};  ///< the cells beside these, one row and column farther to the lower left
};

/// The cells that lie beside those of a bitmap, each once.
Bitmap haloOf(const Bitmap& cells);

struct Spot {
  int x = 0;
  int y = 0;
  std::size_t stamp = 0;
};

/// Where a part goes on a mat.
enum class SpotRule {
  Lowest,   ///< as low, then as far left as it goes, in the turn whose top stays lowest
  Corner,   ///< nearest to the lower left corner, counting both ways alike
  Touching  ///< into a corner of what lies there, where it touches along the greatest length
};

/// A mat that fills up. Counts its work: rows of cells that were compared.
class NestMat {
 public:
  NestMat(int width, int height) : cells_(width + 2, height + 2), width_(width), height_(height) {
    for (int x = 0; x < width + 2; ++x) {
      cells_.take(x, 0);
      cells_.take(x, height + 1);
    }
    for (int y = 0; y < height + 2; ++y) {
      cells_.take(0, y);
      cells_.take(width + 1, y);
    }
  }

  std::optional<Spot> spotFor(const std::vector<Stamp>& stamps, SpotRule rule);
  void put(const Stamp& stamp, const Spot& spot) {
    cells_.add(stamp.cells, spot.x + 1, spot.y + 1);
  }
  [[nodiscard]] double work() const { return work_; }

 private:
  bool isFree(const Bitmap& cells, int x, int y);
  std::optional<Spot> lowest(const std::vector<Stamp>& stamps);
  std::optional<Spot> nearCorner(const std::vector<Stamp>& stamps);
  std::optional<Spot> touching(const std::vector<Stamp>& stamps);

  Bitmap cells_;  // with a taken rim of one cell
  int width_;
  int height_;
  double work_ = 0;
};

}  // namespace creasewright
