#include "bridge/typefaces.h"

#include <QFontDatabase>
#include <QFontInfo>

namespace creasewright {

namespace {

/// What the platform gives for `cursive`, or nothing where it only gives what it gives for all.
QString handFamily() {
  static const QString family = [] {
    QFont wanted(QStringLiteral("cursive"));
    wanted.setStyleHint(QFont::Cursive);
    const QString given = QFontInfo(wanted).family();
    const bool fallsBack = given.startsWith(QStringLiteral("DejaVu")) ||
                           given == QFontInfo(QFont(QStringLiteral("no such face"))).family();
    return fallsBack ? QString() : given;
  }();
  return family;
}

}  // namespace

QFont fontOf(Typeface face, bool bold, int pixels) {
  QFont font(QStringLiteral("DejaVu Sans"));
  switch (face) {
    case Typeface::Plain:
      break;
    case Typeface::Serif:
      font = QFont(QStringLiteral("DejaVu Serif"));
      font.setStyleHint(QFont::Serif);
      break;
    case Typeface::Typewriter:
      font = QFont(QStringLiteral("DejaVu Sans Mono"));
      font.setStyleHint(QFont::TypeWriter);
      break;
    case Typeface::Hand:
      if (!handFamily().isEmpty()) {
        font = QFont(handFamily());
        font.setStyleHint(QFont::Cursive);
        break;
      }
      [[fallthrough]];
    case Typeface::Slanted:
      font = QFont(QStringLiteral("DejaVu Serif"));
      font.setStyleHint(QFont::Serif);
      font.setItalic(true);
      break;
  }
  font.setPixelSize(pixels);
  font.setBold(bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

}  // namespace creasewright
