#include "walk/editor_walk.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "edits/kinds/edit_kind.h"

namespace creasewright {
namespace {

// tests/bench/run --walk N SEED walks farther.
TEST(EditorWalk, FiveHundredActionsLoseNothingAndCanAllBeUndone) {
  const QTemporaryDir folder;
  testing::Random random(1506);
  const testing::WalkReport report = testing::walkEditor(500, random, folder.path().toStdString());
  for (const std::string& fault : report.faults) ADD_FAILURE() << fault;
  EXPECT_GE(report.actions.size(), 12U);
  int made = 0;
  for (const auto& [kind, count] : report.made) {
    std::cout << kind << ": " << count << " made\n";
    made += count;
  }
  EXPECT_GT(made, 20);
  EXPECT_GT(report.made.size(), editKinds().size() / 2);
}

}  // namespace
}  // namespace creasewright
