#pragma once

#include <QSize>

class QWidget;

namespace creasewright {

/// `wanted`, or less where the screen is small: room for the window's own frame stays.
QSize fittingScreen(const QWidget& window, QSize wanted);

}  // namespace creasewright
