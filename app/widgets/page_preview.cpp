#include "widgets/page_preview.h"

#include <QPaintEvent>
#include <QPainter>

#include "bridge/label_text.h"
#include "bridge/paint_drawing.h"
#include "widgets/theme.h"

namespace creasewright {

PagePreview::PagePreview(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Preview of the pages"));
}

void PagePreview::showPages(std::vector<Drawing> pages, Unit unit, const PaintLook& look) {
  look_ = look;
  pages_ = std::move(pages);
  unit_ = unit;
  fitHeight();
  update();
}

void PagePreview::setPageWidth(int pixels) {
  pageWidth_ = pixels;
  fitHeight();
  update();
}

void PagePreview::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  double top = kGap;
  for (const Drawing& page : pages_) {
    const double k = scale(page);
    const QRectF sheet(kGap, top, page.width * k, page.height * k);
    top = sheet.bottom() + kGap;
    if (!sheet.intersects(event->rect())) continue;
    painter.setPen(QPen(theme().hairline, 1));
    painter.setBrush(Qt::white);
    painter.drawRect(sheet);
    PaintOptions options;
    options.scale = k;
    options.topLeft = sheet.topLeft();
    options.thinnest = 0.6;
    options.look = look_;
    paintDrawing(painter, page, wordingIn(unit_), options);
  }
}

void PagePreview::fitHeight() {
  double height = kGap;
  for (const Drawing& page : pages_) height += page.height * scale(page) + kGap;
  setFixedSize(pageWidth_ + 2 * kGap, static_cast<int>(height));
}

double PagePreview::scale(const Drawing& page) const { return pageWidth_ / page.width; }

}  // namespace creasewright
