#include <QRegularExpression>
#include <algorithm>

#include <gtest/gtest.h>

#include "bridge/net_words.h"
#include "document/build.h"
#include "guide/make_guide.h"
#include "making/hand_folds.h"
#include "papers/guide/step_words.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

bool has(const Step& step, Method method) {
  return std::ranges::any_of(step.joins, [&](const Join& join) { return join.method == method; });
}

bool says(const QString& sentence, const char* word) {
  return sentence.contains(QRegularExpression(QStringLiteral("\\b%1\\b").arg(QLatin1String(word)),
                                              QRegularExpression::CaseInsensitiveOption));
}

/// Panels that the hand moves in a stage.
int moved(const ToldStage& step) {
  return static_cast<int>(
      std::ranges::count_if(step.folds, [](const Fold& fold) { return !fold.bend && !fold.loop; }));
}

/// Lines that the hand folds.
int lines(const ToldStage& step) {
  int count = 0;
  for (const HandFold& line : handFolds(step.folds))
    count += step.folds[line.folds.front()].loop ? 0 : 1;
  return count;
}

// Law: what a style says of a stage agrees with what the net does in it: something is pressed
// only where something is glued, tucked only where a flap is tucked, hooked only where one locks;
// "both" are an even number of panels or lines, "all four" are four panels.
TEST(StageWords, WhatIsSaidIsWhatTheNetDoes) {
  int looked = 0;
  for (const Style& style : styles()) {
    for (const char* product : {"box:60x42x35mm", "box:90x30x20mm", "cylinder:40x60mm"}) {
      const auto design = newDesign(style.id, *parseProduct(product), *findCard("300gsm"),
                                    Ease::Easy, ToolGrid::millimetre());
      const auto built = build(*design);
      if (!built) continue;
      for (const Step& step : makeGuide(*built).steps) {
        for (const ToldStage& stage : step.stages) {
          const QString sentence = stageSays(stage.code);
          if (sentence.isEmpty()) continue;
          ++looked;
          const std::string where =
              std::string(style.id) + ' ' + stage.code + ": " + sentence.toStdString();
          if (says(sentence, "press")) {
            EXPECT_TRUE(has(step, Method::Glue)) << where;
          }
          if (says(sentence, "tuck its flap")) {
            EXPECT_TRUE(has(step, Method::Tuck)) << where;
          }
          if (says(sentence, "hook")) {
            EXPECT_TRUE(has(step, Method::Lock)) << where;
          }
          if (says(sentence, "both")) {
            EXPECT_TRUE(moved(stage) % 2 == 0 || lines(stage) == 2) << where << moved(stage);
          }
          if (says(sentence, "all four")) {
            EXPECT_EQ(moved(stage), 4) << where;
          }
        }
      }
    }
  }
  EXPECT_GT(looked, 250);
}

}  // namespace
}  // namespace creasewright
