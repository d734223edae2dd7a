#include "preview/paint_shadow.h"

#include <QRectF>
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "preview/in_rows.h"

namespace creasewright {

namespace {

constexpr std::uint32_t kCellSteps = 65536;  // from one cell to the next

/// Where a pixel's middle lies between the middles of cells, in steps; within the first and last.
std::uint32_t stepsAt(double cells, int count) {
  return static_cast<std::uint32_t>(std::clamp(cells - 0.5, 0.0, count - 1.0) * kCellSteps);
}

/// A row of the shadow between two of its own, in 256ths; the last cell stands twice.
void mixRow(const GroundShadow& shadow, std::uint32_t at, std::vector<std::uint32_t>& row) {
  const int upper = static_cast<int>(at / kCellSteps);
  const int lower = std::min(upper + 1, shadow.rows - 1);
  const std::uint32_t share = at / 256 % 256;  // of kCellSteps
  const std::uint8_t* a = shadow.dark.data() + static_cast<std::ptrdiff_t>(upper) * shadow.columns;
  const std::uint8_t* b = shadow.dark.data() + static_cast<std::ptrdiff_t>(lower) * shadow.columns;
  row.resize(static_cast<std::size_t>(shadow.columns) + 1);
  for (int i = 0; i < shadow.columns; ++i)
    row[static_cast<std::size_t>(i)] = a[i] * (256 - share) + b[i] * share;
  row.back() = row[row.size() - 2];
}

}  // namespace

void paintShadow(QImage& canvas, const GroundShadow& shadow, const QTransform& place) {
  if (shadow.empty()) return;
  const double ratio = canvas.devicePixelRatio();
  const Bounds& extent = shadow.extent;
  const QRectF room =
      (place * QTransform::fromScale(ratio, ratio))
          .mapRect(QRectF(extent.low.x, extent.low.y, extent.width(), extent.height()));
  const QRect seen = room.toAlignedRect() & canvas.rect();
  if (seen.isEmpty()) return;
  const double cellsAcross = shadow.columns / room.width();
  const double cellsDown = shadow.rows / room.height();
  std::vector<std::uint32_t> columns;
  for (int x = seen.left(); x <= seen.right(); ++x)
    columns.push_back(stepsAt((x + 0.5 - room.left()) * cellsAcross, shadow.columns));
  uchar* bits = canvas.bits();
  const qsizetype bytesPerLine = canvas.bytesPerLine();
  inRows(seen.height(), [&](int from, int to) {
    std::vector<std::uint32_t> row;
    for (int y = seen.top() + from; y < seen.top() + to; ++y) {
      mixRow(shadow, stepsAt((y + 0.5 - room.top()) * cellsDown, shadow.rows), row);
      auto* pixel = reinterpret_cast<QRgb*>(bits + y * bytesPerLine) + seen.left();
      for (const std::uint32_t at : columns) {
        const std::uint32_t* cell = row.data() + at / kCellSteps;
        const std::uint32_t share = at / 256 % 256;
        *pixel++ = (cell[0] * (256 - share) + cell[1] * share) / 65536 << 24;
      }
    }
  });
}

}  // namespace creasewright
