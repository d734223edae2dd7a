#include "bridge/style_text.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "bridge/core_words.h"
#include "bridge/style_words.h"
#include "document/build.h"
#include "net/whole_panels.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

TEST(StyleText, EveryTextOfAStyleIsListedForTranslation) {
  const auto listed = styleWords();
  const std::set<std::string_view> words(listed.begin(), listed.end());
  for (const Style& style : styles()) {
    EXPECT_TRUE(words.contains(style.title)) << style.title;
    EXPECT_TRUE(words.contains(style.summary)) << style.summary;
    for (const ParameterSpec& spec : style.parameters) {
      EXPECT_TRUE(words.contains(spec.title)) << spec.title;
      EXPECT_TRUE(words.contains(spec.hint)) << spec.hint;
    }
  }
}

TEST(StyleText, EveryStagePanelAndPieceHasWords) {
  for (const Style& style : styles()) {
    const auto design = newDesign(style.id, std::nullopt, Card{}, Ease::Easy, ToolGrid::none());
    ASSERT_TRUE(design);
    const auto built = build(*design);
    ASSERT_TRUE(built);
    for (const BuiltPiece& piece : built->pieces) {
      EXPECT_TRUE(pieceWords(piece.piece.name)) << piece.piece.name;
      for (const std::string& stage : piece.piece.net.stages) {
        EXPECT_TRUE(stageWords(stage)) << stage;
      }
      std::set<QString> titles;
      std::set<std::string> ids;
      for (const Panel& panel : piece.piece.net.panels) {
        const std::string_view whole = wholeId(panel.id);  // strips of a bent panel share it
        EXPECT_TRUE(panelWords(whole.substr(whole.rfind('/') + 1))) << panel.id;
        if (ids.insert(std::string(whole)).second) {
          EXPECT_TRUE(titles.insert(panelTitle(panel.id)).second)
              << panelTitle(panel.id).toStdString() << " names two panels";
        }
      }
    }
  }
}

}  // namespace
}  // namespace creasewright
