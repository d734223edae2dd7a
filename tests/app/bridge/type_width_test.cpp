#include "lettering/type_width.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <algorithm>
#include <tuple>

#include <gtest/gtest.h>

#include "bridge/text.h"

namespace creasewright {
namespace {

/// The painter's own font is the judge: no line is measured narrower than it is painted, and none
/// by more than a few hundredths (kerning).
TEST(TypeWidthAsPainted, TheTableIsTheFont) {
  for (const bool bold : {false, true}) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(1000);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    ASSERT_EQ(QFontInfo(font).family(), QStringLiteral("DejaVu Sans"));
    const QFontMetricsF metrics(font);
    for (const char* words :
         {"Press “left front tab” onto the inside of “front wall”.", "2⁵⁄₁₆ in × ~10³⁄₁₆ in",
          "Die Schutzfolie noch nicht abziehen: „Lasche“ für Größe ÄÖÜ äöüß",
          "✓ 4 pieces have come off. · A → B; 58,7 mm … – ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞", "WWWW MMMM iiii llll"}) {
      const double painted = metrics.horizontalAdvance(QString::fromUtf8(words)) / 1000;
      const double told = typeWidth(words, 1, bold);
      EXPECT_GE(told, painted - 0.005) << words;
      EXPECT_LE(told, painted * 1.03 + 0.1) << words;
    }
  }
}

/// Pair by pair the painter's own font is the judge of how close letters of bent words stand.
TEST(TypeWidthAsPainted, PairsStandAsCloseAsInTheFont) {
  QString letters;
  for (char16_t code = u' ' + 1; code < 0x7F; ++code) letters += QChar(code);
  for (char16_t code = 0xA1; code < 0x100; ++code)
    if (code != 0xAD) letters += QChar(code);
  letters += QStringLiteral("–—‘’‚“”„…");
  for (const auto& [face, family, leeway] : {std::tuple{Typeface::Plain, "DejaVu Sans", 0.002},
                                             {Typeface::Serif, "DejaVu Serif", 0.002},
                                             {Typeface::Typewriter, "DejaVu Sans Mono", 0.002}}) {
    QFont font(QString::fromLatin1(family));
    font.setPixelSize(1000);
    font.setHintingPreference(QFont::PreferNoHinting);
    ASSERT_EQ(QFontInfo(font).family(), QString::fromLatin1(family));
    QFont apart = font;
    apart.setKerning(false);
    const QFontMetricsF kerned(font);
    const QFontMetricsF plain(apart);
    int closer = 0;
    for (const QChar a : letters)
      for (const QChar b : letters) {
        const QString pair = QString(a) + b;
        const double painted =
            std::min(0.0, kerned.horizontalAdvance(pair) - plain.horizontalAdvance(pair)) / 1000;
        const double told = lettersOf(pair.toStdString(), 1, face).at(1).closer;
        EXPECT_NEAR(told, painted, leeway) << family << ' ' << pair.toStdString();
        closer += told < 0 ? 1 : 0;
      }
    EXPECT_EQ(closer > 500, face != Typeface::Typewriter) << family << closer;
  }
}

}  // namespace
}  // namespace creasewright
