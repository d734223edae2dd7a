#pragma once

#include <QScrollArea>

namespace creasewright {

class PagePreview;

/// Pages to scroll through, as wide as there is room: the larger the window, the better they are
/// read.
class PageScroll : public QScrollArea {
  Q_OBJECT

 public:
  /// Pages are never narrower than `least` pixels: then they scroll sideways too.
  PageScroll(PagePreview* pages, int least, QWidget* parent = nullptr);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  PagePreview* pages_;
  int least_;
};

}  // namespace creasewright
