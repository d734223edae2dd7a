#include "bridge/style_text.h"

#include <map>
#include <set>

#include <gtest/gtest.h>

#include "bridge/net_words.h"
#include "core/laws/random_design.h"
#include "document/build.h"
#include "extras/extra_kind.h"
#include "net/whole_panels.h"
#include "styles/parts/common_words.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

void expectTexts(std::string_view owner, const std::vector<ParameterSpec>& specs) {
  for (const ParameterSpec& spec : specs) {
    EXPECT_FALSE(spec.title.empty()) << owner << ": " << spec.key;
    EXPECT_FALSE(spec.hint.empty()) << owner << ": " << spec.key;
    for (const Worded choice : spec.choices) {
      EXPECT_STREQ(choice.context(), "styles") << owner << ": " << spec.key;
    }
  }
}

/// That they are translated, and extracted from where they stand, is judged by
/// tests/source/translations.py; that they are there is judged here.
TEST(StyleText, EveryStyleAndExtraHasItsTexts) {
  for (const Style& style : styles()) {
    EXPECT_FALSE(style.title.empty()) << style.id;
    EXPECT_FALSE(style.summary.empty()) << style.id;
    expectTexts(style.id, style.parameters);
  }
  for (const ExtraKind& kind : extraKinds()) {
    EXPECT_FALSE(kind.title.empty()) << kind.id;
    EXPECT_FALSE(kind.summary.empty()) << kind.id;
    expectTexts(kind.id, kind.parameters);
  }
}

using Said = std::map<std::string_view, std::string_view>;

void expectOneMeaning(std::string_view owner, const std::vector<CodeWords>& words,
                      std::string_view context, Said& said) {
  for (const CodeWords& word : words) {
    EXPECT_EQ(word.words.context(), context) << owner << ": " << word.code;
    const auto [known, first] = said.emplace(word.code, word.words);
    EXPECT_EQ(known->second, std::string_view(word.words)) << owner << ": " << word.code;
  }
}

TEST(StyleText, OneCodeReadsTheSameWhereverItIsUsed) {
  Said stages;
  Said panels;
  Said pieces;
  const auto expect = [&](std::string_view owner, const NetWords& words) {
    expectOneMeaning(owner, words.stages, "stages", stages);
    expectOneMeaning(owner, words.panels, "panels", panels);
    expectOneMeaning(owner, words.pieces, "pieces", pieces);
  };
  expect("common", commonWords());
  for (const Style& style : styles()) {
    expect(style.id, style.words);
  }
  for (const ExtraKind& kind : extraKinds()) {
    expect(kind.id, kind.words);
  }
}

bool says(const std::vector<CodeWords>& words, std::string_view code) {
  return std::ranges::find(words, code, &CodeWords::code) != words.end();
}

/// `face` of `face-3`.
std::string_view unnumbered(std::string_view code) {
  const std::size_t dash = code.find_last_not_of("0123456789");
  return dash + 1 < code.size() && code[dash] == '-' ? code.substr(0, dash) : code;
}

/// What a piece's codes read, said by the style itself or by all.
void expectWords(const BuiltPiece& piece, const NetWords& own) {
  const NetWords words = commonWords() + own;
  EXPECT_TRUE(says(words.pieces, unnumbered(piece.name))) << piece.name;
  for (const std::string& stage : piece.net.stages) {
    EXPECT_TRUE(says(words.stages, stage)) << stage;
  }
  std::set<QString> titles;
  std::set<std::string> ids;
  for (const Panel& panel : piece.net.panels) {
    const std::string_view whole = wholeId(panel.id);  // strips of a bent panel share it
    for (std::size_t at = 0; at < whole.size();) {
      const std::size_t end = std::min(whole.find('/', at), whole.size());
      EXPECT_TRUE(says(words.panels, unnumbered(whole.substr(at, end - at)))) << panel.id;
      at = end + 1;
    }
    if (ids.insert(std::string(whole)).second) {
      EXPECT_TRUE(titles.insert(panelTitle(panel.id)).second)
          << panelTitle(panel.id).toStdString() << " names two panels";
    }
  }
}

TEST(StyleText, EveryStagePanelAndPieceHasWords) {
  testing::Random random(14);
  for (const Style& style : styles()) {
    SCOPED_TRACE(style.id);
    const auto standard = newDesign(style.id, std::nullopt, Card{}, Ease::Easy, ToolGrid::none());
    ASSERT_TRUE(standard);
    std::vector<Design> designs{*standard};
    for (int i = 0; i < 8; ++i) {
      if (const auto other = testing::randomInsideLimits(random, style)) {
        designs.push_back(*other);
      }
    }
    EXPECT_GT(designs.size(), 2U);
    for (const Design& design : designs) {
      const auto built = build(design);
      ASSERT_TRUE(built);
      for (const BuiltPiece& piece : built->pieces) {
        expectWords(piece, style.words);
      }
    }
  }
}

TEST(StyleText, EveryPieceOfAnExtraHasWords) {
  std::set<std::string_view> met;
  for (const ExtraKind& kind : extraKinds()) {
    SCOPED_TRACE(kind.id);
    const auto plain =
        newDesign("two-piece-box", Product{ProductShape::Box, mm(90), mm(70), mm(40)}, Card{},
                  Ease::Easy, ToolGrid::none());
    ASSERT_TRUE(plain);
    Design design = *plain;
    design.extras = {standardExtra(kind, design.card)};
    const auto built = build(design);
    ASSERT_TRUE(built);
    for (const BuiltPiece& piece : built->pieces) {
      if (!piece.role) {
        continue;
      }
      met.insert(kind.id);
      EXPECT_TRUE(pieceWords(unnumbered(piece.name))) << piece.name;
      for (const Panel& panel : piece.net.panels) {
        const std::string_view whole = wholeId(panel.id);
        EXPECT_TRUE(panelWords(whole.substr(whole.rfind('/') + 1))) << panel.id;
      }
    }
  }
  EXPECT_GE(met.size(), 7U);  // a ribbon has no piece; an insert may find no room
}

}  // namespace
}  // namespace creasewright
