#include "bridge/fit_words.h"

#include <QRegularExpression>
#include <cmath>

#include <gtest/gtest.h>

#include "styles/registry.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// The numbers that stand before the equals sign, added and taken off as the signs say.
double added(const QString& sentence) {
  static const QRegularExpression part("(− )?[a-zA-Z]+ ([0-9.]+)");
  double sum = 0;
  for (auto match = part.globalMatch(sentence.section(QLatin1Char('='), 0, 0)); match.hasNext();) {
    const auto one = match.next();
    sum += one.captured(2).toDouble() * (one.captured(1).isEmpty() ? 1 : -1);
  }
  return sum;
}

/// Whatever the unit rounds away, the sum shown is the sum of what is shown.
TEST(FitWords, ReasonsAddUpAsPrinted) {
  testing::Random random(341);
  static const QRegularExpression total("= ([0-9.]+) (mm|in)");
  int judged = 0;
  for (const Style& style : styles())
    for (const Unit unit : {Unit::Millimetre, Unit::Inch}) {
      const Product product{ProductShape::Box, Length::mm(random.between(20, 120)),
                            Length::mm(random.between(20, 90)), Length::mm(random.between(5, 80))};
      const Fitted fitted = fit(style, product, Ease::Easy,
                                {Length::mm(random.between(0.2, 0.5)), ToolGrid::sixteenthInch()});
      for (const FitReason& reason : fitted.reasons) {
        const QString words = fitSentence(reason, unit);
        const auto match = total.match(words);
        ASSERT_TRUE(match.hasMatch()) << words.toStdString();
        EXPECT_NEAR(added(words), match.captured(1).toDouble(), 1e-9) << words.toStdString();
        EXPECT_EQ(words.contains("roduct"), reason.ofProduct) << words.toStdString();
        ++judged;
      }
    }
  EXPECT_GE(judged, 150);
}

}  // namespace
}  // namespace creasewright
