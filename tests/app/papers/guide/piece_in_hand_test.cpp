#include <QRegularExpression>
#include <algorithm>
#include <array>

#include <gtest/gtest.h>

#include "bridge/style_text.h"
#include "document/build.h"
#include "extras/extra_kind.h"
#include "guide/make_guide.h"
#include "papers/guide/guide_words.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// Of the steps in which the hands hold one piece.
bool isOnOnePiece(StepCode code) {
  constexpr std::array kOthers{StepCode::TrimBlank, StepCode::GluePieces, StepCode::PutTogether,
                               StepCode::PutIn, StepCode::AddExtra};
  return std::ranges::find(kOthers, code) == kOthers.end();
}

/// The piece a reader has in hand after the words, who had `before`.
QString inHand(const QString& before, const StepWords& words) {
  static const QRegularExpression named(QStringLiteral("^(?:Cut|Take the piece) “([^”]+)”"));
  static const QRegularExpression joined(QStringLiteral("^(?:Glue the piece|Put the pieces)"));
  if (const auto cut = named.match(words.title); cut.hasMatch()) return cut.captured(1);
  if (joined.match(words.title).hasMatch()) return {};
  if (!words.sentences.isEmpty())
    if (const auto taken = named.match(words.sentences.first()); taken.hasMatch())
      return taken.captured(1);
  return before;
}

Design withExtras(const Style& style) {
  Design design =
      *newDesign(style.id, std::nullopt, *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  for (const ExtraKind& kind : extraKinds())
    design.extras.push_back(standardExtra(kind, design.card));
  return design;
}

// Law: who reads step after step knows at each which piece it speaks of.
TEST(PieceInHand, EveryStepIsReadOnTheRightPiece) {
  int looked = 0;
  for (const Style& style : styles()) {
    const auto built = build(withExtras(style));
    ASSERT_TRUE(built) << style.id;
    const Guide guide = makeGuide(*built);
    if (guide.pieces.size() < 2) continue;
    const GuideWords words = wordGuide(guide, *built, GuideUnits::Millimetre);
    QString hand;
    for (std::size_t i = 0; i < guide.steps.size(); ++i) {
      const Step& step = guide.steps[i];
      hand = inHand(hand, words.steps[i]);
      if (!isOnOnePiece(step.code)) continue;
      const auto piece = static_cast<std::size_t>(step.piece);
      EXPECT_EQ(hand, pieceTitle(guide.pieces.at(piece).name))
          << style.id << " step " << i + 1 << ": " << words.steps[i].title.toStdString();
      ++looked;
    }
  }
  EXPECT_GT(looked, 500);
}

}  // namespace
}  // namespace creasewright
