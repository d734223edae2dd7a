#pragma once

#include <QColor>
#include <QFontMetricsF>
#include <QPainter>
#include <map>

#include "drawing/drawing.h"

namespace creasewright {

/// Paints words with a painter whose units are a drawing's millimetres, y up; each font is made
/// once.
class WordsPainter {
 public:
  explicit WordsPainter(QPaintDevice* device) : device_(device) {}

  void paint(QPainter& painter, const TextItem& item, const std::string& words, const QColor& ink);

 private:
  struct Face {
    QFont font;
    QFontMetricsF metrics;  ///< of the device
  };
  const Face& face(Typeface face, bool bold);

  QPaintDevice* device_;
  std::map<std::pair<Typeface, bool>, Face> faces_;
};

}  // namespace creasewright
