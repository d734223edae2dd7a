#include "widgets/window_size.h"

#include <QScreen>
#include <QWidget>

namespace creasewright {

QSize fittingScreen(const QWidget& window, QSize wanted) {
  constexpr QSize frame{16, 48};
  return wanted.boundedTo(window.screen()->availableSize() - frame);
}

}  // namespace creasewright
