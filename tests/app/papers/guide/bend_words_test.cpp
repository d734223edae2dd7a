#include <array>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "core/laws/random_design.h"
#include "folding/motion/needed_bends.h"
#include "guide/make_guide.h"
#include "pages/guide_figure.h"
#include "papers/guide/guide_words.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr int kSets = 12;

/// Runs `judge` over every style at its standard measures and at random ones.
template <class Judge>
void overDesigns(std::uint64_t seed, const Judge& judge) {
  testing::Random random(seed);
  for (const Style& style : styles()) {
    std::vector<Design> designs{*newDesign(style.id, std::nullopt,
                                           {"test", "test card", Length::mm(0.3), 0}, Ease::Easy,
                                           ToolGrid::none())};
    for (int i = 0; i < kSets; ++i) {
      if (auto design = testing::randomInsideLimits(random, style)) {
        designs.push_back(std::move(*design));
      }
    }
    for (const Design& design : designs) {
      const auto built = build(design);
      ASSERT_TRUE(built.ok()) << style.id;
      judge(*built);
      if (::testing::Test::HasFailure()) {
        return;
      }
    }
  }
}

/// The stages of a piece that declare a bend, by their code.
std::multimap<std::string, BendCode> bendsOf(const Net& net) {
  std::multimap<std::string, BendCode> bends;
  for (const Bend& bend : net.bends) {
    bends.emplace(net.stages[static_cast<std::size_t>(bend.stage - 1)], bend.why);
  }
  return bends;
}

/// What the worded steps say only because of a bend: the sentences that go when it does.
QStringList sentencesOfBend(Guide guide, std::size_t step, const BuiltDesign& built) {
  QStringList told = wordGuide(guide, built, GuideUnits::Both).steps[step].sentences;
  guide.steps[step].bends.clear();
  const QStringList others = wordGuide(guide, built, GuideUnits::Both).steps[step].sentences;
  for (const QString& other : others) {
    told.removeOne(other);
  }
  return told;
}

/// Wherever a bend is declared, the guide says at that stage what the hand does: one sentence a
/// code, another for every code, in both languages.
TEST(BendWords, EveryBendIsToldAtItsStageInBothLanguages) {
  loadResources();
  std::map<BendCode, std::array<QString, 2>> words;
  int told = 0;
  for (const int language : {0, 1}) {
    useLanguage(language == 0 ? QStringLiteral("en") : QStringLiteral("de"));
    overDesigns(91, [&](const BuiltDesign& built) {
      const Guide guide = makeGuide(built);
      for (std::size_t piece = 0; piece < built.pieces.size(); ++piece) {
        auto declared = bendsOf(
            withNeededBends(built.pieces[piece].net, built.pieces[piece].card.caliper.mm()));
        for (std::size_t i = 0; i < guide.steps.size(); ++i) {
          const Step& step = guide.steps[i];
          if (step.piece != static_cast<int>(piece) || step.code != StepCode::FoldStage) {
            continue;
          }
          const auto found = declared.find(step.stage);
          if (found == declared.end()) {
            continue;
          }
          const QStringList sentences = sentencesOfBend(guide, i, built);
          ASSERT_EQ(sentences.size(), 1) << built.design.styleId << ' ' << step.stage;
          EXPECT_GT(sentences[0].size(), 20) << built.design.styleId << ' ' << step.stage;
          QString& known = words[found->second].at(static_cast<std::size_t>(language));
          EXPECT_TRUE(known.isEmpty() || known == sentences[0]);
          known = sentences[0];
          declared.erase(found);
          ++told;
        }
        EXPECT_TRUE(declared.empty())
            << built.design.styleId << ": no step tells of " << bendName(declared.begin()->second);
      }
    });
  }
  useLanguage(QStringLiteral("en"));
  EXPECT_GT(told, 2 * 100);
  EXPECT_GE(words.size(), 6u);
  std::set<QString> different;
  for (const auto& [code, both] : words) {
    EXPECT_NE(both[0], both[1]) << bendName(code);
    different.insert(both[0]);
    different.insert(both[1]);
  }
  EXPECT_EQ(different.size(), 2 * words.size());
}

}  // namespace
}  // namespace creasewright
