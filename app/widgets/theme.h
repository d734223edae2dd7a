#pragma once

#include <QColor>
#include <QString>

class QApplication;

namespace creasewright {

enum class ThemeChoice { System, Light, Dark };

/// Every colour of the window. On paper and sheet the line colours stay the same in both palettes,
/// because the sheet stays white.
struct Theme {
  bool dark = false;
  QColor bench;    ///< the window behind everything
  QColor surface;  ///< panels and fields
  QColor raised;   ///< buttons and hovered rows
  QColor hairline;
  QColor ink;
  QColor quietInk;
  QColor accent;    ///< text and primary button
  QColor onAccent;  ///< text on the primary button
  QColor halo;      ///< selection and highlighted panels
  QColor problem;
  QColor fine;  ///< "all checks hold"
  QColor shadow;
};

const Theme& lightTheme();
const Theme& darkTheme();

/// The theme in use.
const Theme& theme();

/// Sets palette, style sheet and fonts. With `System`, a dark palette of the desktop asks for ours.
void applyTheme(QApplication& app, ThemeChoice choice);

/// The style sheet for a theme; exposed so that a test can look for every colour.
QString styleSheetFor(const Theme& theme);

}  // namespace creasewright
