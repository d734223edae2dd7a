#include "preview/print_filler.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>

namespace creasewright {

namespace {

constexpr std::uint64_t kChannels = 0x00FF00FF00FF00FF;
constexpr int kTileSteps = 65536;  // to a pixel of the tile

/// A way through the tile in whole steps from 0 to below `length`.
int stepsIn(double pixels, int length) {
  const double within = pixels - length * std::floor(pixels / length);
  return std::min(static_cast<int>(within * kTileSteps), length * kTileSteps - 1);
}

/// The same way, forwards or back.
int shortestStep(double pixels, int length) {
  const int steps = stepsIn(pixels, length);
  return 2 * steps > length * kTileSteps ? steps - length * kTileSteps : steps;
}

/// How many places there are from `at`, one for each `step`, before 0 or `end` is passed.
int stepsBefore(int at, int step, int end) {
  if (step == 0) return std::numeric_limits<int>::max();
  return step > 0 ? (end - 1 - at) / step + 1 : at / -step + 1;
}

int within(int at, int end) {
  if (at < 0) return at + end;
  return at < end ? at : at - end;
}

/// Where a line of pixel middles enters and leaves the outline, from left to right.
void crossings(const QPolygonF& outline, double y, std::vector<double>& out) {
  out.clear();
  QPointF a = outline.back();
  for (const QPointF& b : outline) {
    if ((a.y() <= y) != (b.y() <= y))
      out.push_back(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
    a = b;
  }
  std::ranges::sort(out);
}

}  // namespace

/// Along a line of pixels, from each to the next by the same step.
class PrintFiller::Walk {
 public:
  Walk(const PrintFiller& filler, const Face& face)
      : filler_(filler),
        face_(face),
        light_(static_cast<Spread>(face.light + 1)),
        across_(shortestStep(face.toTile.m11(), filler.wide_)),
        down_(shortestStep(face.toTile.m12(), filler.high_)) {}

  void fill(QRgb* first, int count, QPointF middle) const {
    const QPointF at = face_.toTile.map(middle) - QPointF(0.5, 0.5);
    const int wide = filler_.wide_ * kTileSteps;
    const int high = filler_.high_ * kTileSteps;
    int x = stepsIn(at.x(), filler_.wide_);
    int y = stepsIn(at.y(), filler_.high_);
    // From one edge of the tile to the next without a look whether there is one.
    for (int left = count; left > 0;) {
      const int run = std::min({left, stepsBefore(x, across_, wide), stepsBefore(y, down_, high)});
      for (const QRgb* end = first + run; first != end; ++first) {
        *first = seenAt(x, y);
        x += across_;
        y += down_;
      }
      left -= run;
      x = within(x, wide);
      y = within(y, high);
    }
  }

 private:
  /// Between four pixels, weighed in sixteenths.
  [[nodiscard]] QRgb seenAt(int x, int y) const {
    const auto line = static_cast<std::size_t>(filler_.wide_) + 1;
    const Spread* at =
        filler_.pixels_.data() + static_cast<std::size_t>(y >> 16) * line + (x >> 16);
    const auto right = static_cast<Spread>((x >> 12) & 15);
    const auto below = static_cast<Spread>((y >> 12) & 15);
    const Spread upper = at[0] * (16 - right) + at[1] * right;
    const Spread lower = at[line] * (16 - right) + at[line + 1] * right;
    const Spread mixed = ((upper * (16 - below) + lower * below) >> 8) & kChannels;
    const Spread lit = ((mixed * light_) >> 8) & kChannels;
    return static_cast<QRgb>(lit) | static_cast<QRgb>(lit >> 24) | 0xFF000000;
  }

  const PrintFiller& filler_;
  const Face& face_;
  Spread light_;
  int across_;
  int down_;
};

PrintFiller::PrintFiller(const QImage& tile) : wide_(tile.width()), high_(tile.height()) {
  pixels_.reserve(static_cast<std::size_t>(wide_ + 1) * static_cast<std::size_t>(high_ + 1));
  const QImage opaque = tile.convertToFormat(QImage::Format_RGB32);
  const auto spread = [](QRgb pixel) {
    return static_cast<Spread>(qBlue(pixel)) | static_cast<Spread>(qRed(pixel)) << 16 |
           static_cast<Spread>(qGreen(pixel)) << 32;
  };
  for (int y = 0; y <= high_; ++y) {
    const auto* line = reinterpret_cast<const QRgb*>(opaque.constScanLine(y % high_));
    for (int x = 0; x <= wide_; ++x) pixels_.push_back(spread(line[x % wide_]));
  }
}

void PrintFiller::fill(const Face& face, const Canvas& canvas, int from, int to) const {
  const QRectF room = face.outline.boundingRect();
  from = std::max(from, static_cast<int>(std::floor(room.top())));
  to = std::min(to, static_cast<int>(std::ceil(room.bottom())));
  const Walk walk(*this, face);
  std::vector<double> ends;
  for (int y = from; y < to; ++y) {
    crossings(face.outline, y + 0.5, ends);
    auto* line = reinterpret_cast<QRgb*>(canvas.bits + y * canvas.bytesPerLine);
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
      const int first = static_cast<int>(std::ceil(std::max(ends[i], 0.0) - 0.5));
      const int end = static_cast<int>(std::ceil(std::min(ends[i + 1], 1.0 * canvas.wide) - 0.5));
      if (first < end) walk.fill(line + first, end - first, QPointF(first + 0.5, y + 0.5));
    }
  }
}

}  // namespace creasewright
