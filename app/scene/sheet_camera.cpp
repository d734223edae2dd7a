#include "scene/sheet_camera.h"

#include <algorithm>

namespace creasewright {

namespace {

constexpr double kSmallest = 0.2;
constexpr double kLargest = 60;

}  // namespace

QPointF SheetCamera::toScreen(Point p) const {
  return {origin_.x() + p.x * scale_, origin_.y() - p.y * scale_};
}

Point SheetCamera::toSheet(QPointF pixel) const {
  return {(pixel.x() - origin_.x()) / scale_, (origin_.y() - pixel.y()) / scale_};
}

QPolygonF SheetCamera::toScreen(const Polygon& polygon) const {
  QPolygonF out;
  out.reserve(static_cast<qsizetype>(polygon.size()));
  for (const Point& p : polygon) out << toScreen(p);
  return out;
}

void SheetCamera::zoom(double factor, QPointF pixel) {
  const double next = std::clamp(scale_ * factor, kSmallest, kLargest);
  origin_ = pixel + (origin_ - pixel) * (next / scale_);
  scale_ = next;
}

void SheetCamera::fit(double width, double height, const QRectF& room) {
  if (width <= 0 || height <= 0 || room.isEmpty()) return;
  scale_ = std::clamp(std::min(room.width() / width, room.height() / height), kSmallest, kLargest);
  origin_ = {room.center().x() - width * scale_ / 2, room.center().y() + height * scale_ / 2};
}

}  // namespace creasewright
