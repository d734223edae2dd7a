#include "cutting/cut_tree.h"

#include <gtest/gtest.h>

#include "core/cutting/random_cuts.h"

namespace creasewright {
namespace {

using testing::blanksIn;
using testing::cutAtRandom;
using testing::cutsOf;
using testing::sheetOf;
using testing::treeFault;

TEST(CutTree, TidyingKeepsTheBlanksAndNeverAddsACut) {
  testing::Random random(611);
  int shorter = 0;
  for (int round = 0; round < 400; ++round) {
    const CutNode before = cutAtRandom(sheetOf(200, 320), 5, random);
    const CutNode after = tidied(before);
    EXPECT_EQ(treeFault(after), "");
    EXPECT_EQ(blanksIn(after), blanksIn(before));
    EXPECT_LE(cutsOf(after), cutsOf(before));
    shorter += cutsOf(after) < cutsOf(before);
  }
  EXPECT_GT(shorter, 50);
}

/// Along each direction alike parts lie together and one offcut comes last.
TEST(CutTree, AlikePartsLieSideBySide) {
  testing::Random random(612);
  for (int round = 0; round < 200; ++round) {
    const CutNode sheet = tidied(cutAtRandom(sheetOf(240, 240), 4, random));
    eachNode(sheet, [](const CutNode& node) {
      if (node.kind != CutNode::Kind::Cut) return;
      const std::vector<const CutNode*> parts = partsAlong(node);
      for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        EXPECT_NE(parts[i]->kind, CutNode::Kind::Offcut);
        for (std::size_t k = i + 2; k < parts.size(); ++k)
          EXPECT_TRUE(!cutAlike(*parts[i], *parts[k]) || cutAlike(*parts[i], *parts[i + 1]));
      }
    });
  }
}

}  // namespace
}  // namespace creasewright
