#include "lettering/type_width.h"

#include <QFontInfo>
#include <QFontMetricsF>

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

}  // namespace
}  // namespace creasewright
