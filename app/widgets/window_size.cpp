#include "widgets/window_size.h"

#include <QScreen>
#include <QWidget>

namespace creasewright {

QSize fittingScreen(const QWidget& window, QSize wanted) {
  constexpr QSize kFrame{16, 48};
  return wanted.boundedTo(window.screen()->availableSize() - kFrame);
}

}  // namespace creasewright
