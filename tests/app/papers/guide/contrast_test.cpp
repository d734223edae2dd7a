#include <QRegularExpression>
#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "bridge/paint_drawing.h"
#include "core/laws/random_design.h"
#include "papers/guide/guide_html.h"
#include "papers/guide/write_guide.h"

// Contrast is computed here anew: WCAG 2.1, relative luminance and contrast ratio; 7:1 is
// its 1.4.6.
namespace creasewright::testing {
namespace {

constexpr double kWanted = 7;

double shareOf(int channel) {
  const double c = channel / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double lightOf(Colour c) {
  return 0.2126 * shareOf(c.red) + 0.7152 * shareOf(c.green) + 0.0722 * shareOf(c.blue);
}

double ratioOf(Colour a, Colour b) {
  const double light = std::max(lightOf(a), lightOf(b));
  return (light + 0.05) / (std::min(lightOf(a), lightOf(b)) + 0.05);
}

bool coveredBy(const PathItem& item, Point p) {
  bool in = false;
  for (const Polygon& ring : item.rings)
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      const Point a = ring[i];
      const Point b = ring[j];
      if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x)
        in = !in;
    }
  return in;
}

/// What a word stands on: the last fill painted below its middle, or white paper.
Colour groundOf(const Drawing& page, const TextItem& word) {
  const double up = word.height * 0.35;
  const double turn = word.turnDegrees * M_PI / 180;
  const Point middle = word.at + Point{-up * std::sin(turn), up * std::cos(turn)};
  Colour ground{255, 255, 255};
  for (const Role role : paintOrder())
    for (const PathItem& item : page.paths)
      if (item.role == role && item.filled && coveredBy(item, middle)) ground = fillColour(item);
  return ground;
}

TEST(Contrast, EveryWordOfLargePrintStandsOutSevenToOne) {
  int words = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(withItsExtras(style));
    ASSERT_TRUE(built.ok());
    for (const GuideKind kind : {GuideKind::Steps, GuideKind::Talk}) {
      GuideChoices choices;
      choices.kind = kind;
      choices.units = GuideUnits::Inch;
      choices.paper = *findPaper("letter");
      choices.form.size = GuideSize::Large;
      const PaintLook look = lookOf(choices.form);
      for (const Drawing& page : guideSheets(*built, choices)) {
        for (const TextItem& word : page.texts) {
          ++words;
          const Colour ground = groundOf(page, word);
          EXPECT_GE(ratioOf(wordColour(word, look), ground), kWanted)
              << word.label.literal << word.label.code << " of role " << static_cast<int>(word.role)
              << " on " << int{ground.red} << ' ' << int{ground.green} << ' ' << int{ground.blue};
          if (HasFailure()) return;
        }
      }
    }
  }
  EXPECT_GT(words, 5000);
  // Dark is not black: what is green or rust stays so.
  TextItem heading;
  heading.like = Role::Valley;
  const Colour green = wordColour(heading, lookOf({.size = GuideSize::Large}));
  EXPECT_GT(green.green, green.red + 40);
  EXPECT_LT(ratioOf(green, faceColour(1, Surface::Inside, {})), 7.6);
}

/// The same tones stand in the HTML guide: no picture of large print keeps a word that is paler.
TEST(Contrast, TheWebPageHasTheSameTones) {
  const auto built = build(asItComes(*styles().begin()));
  ASSERT_TRUE(built.ok());
  const QString page = QString::fromUtf8(
      guideHtml(*built, GuideUnits::Inch, QStringLiteral("en"), {.size = GuideSize::Large}));
  static const QRegularExpression word(QStringLiteral("<text [^>]*fill=\"(#[0-9A-F]{6})\""));
  int found = 0;
  for (auto it = word.globalMatch(page); it.hasNext();) {
    const QString usual = it.next().captured(1);
    const QRegularExpression rule(
        QStringLiteral("svg text\\[fill=\"%1\"\\] \\{ fill: (#[0-9A-F]{6}); \\}").arg(usual));
    const QRegularExpressionMatch match = rule.match(page);
    const QColor tone(match.hasMatch() ? match.captured(1) : usual);
    const auto channel = [](int value) { return static_cast<std::uint8_t>(value); };
    const Colour colour{channel(tone.red()), channel(tone.green()), channel(tone.blue())};
    ++found;
    if (usual == QLatin1String("#FFFFFF")) continue;
    EXPECT_GE(ratioOf(colour, faceColour(1, Surface::Inside, {})), kWanted) << usual.toStdString();
  }
  EXPECT_GT(found, 20);
}

}  // namespace
}  // namespace creasewright::testing
