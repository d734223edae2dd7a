#pragma once

#include <QWidget>

#include "bridge/paint_drawing.h"
#include "drawing/drawing.h"

namespace creasewright {

/// Pixels from which on the text of a page can be read.
inline constexpr int kPreviewWidth = 480;

/// Pages as they will come out of the printer, one below the other, white on the bench.
class PagePreview : public QWidget {
  Q_OBJECT

 public:
  static constexpr int kGap = 16;  ///< pixels around a page

  explicit PagePreview(QWidget* parent = nullptr);

  void showPages(std::vector<Drawing> pages, Unit unit, const PaintLook& look = {});
  [[nodiscard]] const std::vector<Drawing>& pages() const { return pages_; }
  [[nodiscard]] int pageCount() const { return static_cast<int>(pages_.size()); }
  /// Pages become this wide (pixels); the height follows.
  void setPageWidth(int pixels);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void fitHeight();
  [[nodiscard]] double scale(const Drawing& page) const;

  std::vector<Drawing> pages_;
  Unit unit_ = Unit::Millimetre;
  PaintLook look_;
  int pageWidth_ = 380;
};

}  // namespace creasewright
