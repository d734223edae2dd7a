#pragma once

#include <QSize>

class QWidget;

namespace creasewright {

/// `wanted`, or less where the screen is small: room for the window's own frame stays.
QSize fittingScreen(const QWidget& window, QSize wanted);

/// Makes a dialog's column of settings as wide as its words need in the language it is in, at least
/// `least` and at most 380 pixels.
void fitToWords(QWidget& column, int least);

}  // namespace creasewright
