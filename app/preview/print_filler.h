#pragma once

#include <QImage>
#include <QPolygonF>
#include <QTransform>
#include <cstdint>
#include <vector>

namespace creasewright {

/// A tile of print, repeated over faces turned in space: smooth inside, by whole pixels at the rim,
/// so that what goes on over two faces meets without a seam. A brush does the same in three times
/// as long, since it divides for each pixel and cannot share a face out as finely.
class PrintFiller {
 public:
  /// `tile`: opaque, 1 to 4096 pixels each way.
  explicit PrintFiller(const QImage& tile);

  /// What is to be filled, in pixels of the canvas; the outline by the even-odd rule.
  struct Face {
    QPolygonF outline;
    QTransform toTile;  ///< canvas to pixels of the tile
    int light = 255;    ///< what falls on it: 0 (none) to 255 (all)
  };

  /// Pixels of 32 bits, as QImage keeps them.
  struct Canvas {
    uchar* bits;
    qsizetype bytesPerLine;
    int wide;
  };

  /// Fills rows of the canvas from `from` to before `to`, both of which it has.
  void fill(const Face& face, const Canvas& canvas, int from, int to) const;

 private:
  class Walk;

  /// Four channels of 8 bits in 16 each, so that one multiplication weighs them all.
  using Spread = std::uint64_t;

  int wide_;
  int high_;
  // Lines of wide_ + 1, high_ + 1 of them: the first ones stand again behind the last.
  std::vector<Spread> pixels_;
};

}  // namespace creasewright
