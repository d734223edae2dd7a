#include "shell/status_line.h"

#include <QStatusBar>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

TEST(StatusLine, ASentenceStaysWhileTheMouseMovesOn) {
  QStatusBar bar;
  StatusLine line(&bar);
  line.hover(QStringLiteral("front wall"));
  EXPECT_EQ(bar.currentMessage(), QStringLiteral("front wall"));
  line.tell(QStringLiteral("Two photos stay."));
  line.hover(QStringLiteral("lid"));
  line.hover({});
  EXPECT_EQ(bar.currentMessage(), QStringLiteral("Two photos stay."));
}

}  // namespace
}  // namespace creasewright
