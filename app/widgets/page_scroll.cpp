#include "widgets/page_scroll.h"

#include <algorithm>

#include "widgets/page_preview.h"

namespace creasewright {

namespace {

constexpr int kWidest = 1000;  // pixels: a whole line of words is still seen at a glance

}  // namespace

PageScroll::PageScroll(PagePreview* pages, int least, QWidget* parent)
    : QScrollArea(parent), pages_(pages), least_(least) {
  setWidget(pages);
  setAlignment(Qt::AlignHCenter | Qt::AlignTop);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
}

void PageScroll::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  pages_->setPageWidth(std::clamp(viewport()->width() - 2 * PagePreview::kGap, least_, kWidest));
}

}  // namespace creasewright
