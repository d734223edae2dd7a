#include "widgets/window_size.h"

#include <QScreen>
#include <QWidget>
#include <algorithm>

namespace creasewright {

QSize fittingScreen(const QWidget& window, QSize wanted) {
  constexpr QSize kFrame{16, 48};
  return wanted.boundedTo(window.screen()->availableSize() - kFrame);
}

void fitToWords(QWidget& column, int least) {
  constexpr int kMost = 380;
  column.setFixedWidth(std::clamp(column.sizeHint().width(), least, kMost));
}

}  // namespace creasewright
