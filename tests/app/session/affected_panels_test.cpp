#include "session/affected_panels.h"

#include <gtest/gtest.h>

#include "session/design_session.h"

namespace creasewright {
namespace {

TEST(AffectedPanels, TheGlueStripIsAboutTheFourStrips) {
  const QStringList panels = AffectedPanels(freshDesign()).of("glue-strip");
  for (const char* side : {"front", "back", "left", "right"}) {
    EXPECT_TRUE(panels.contains(QString("base/%1/glue-strip").arg(side))) << side;
  }
  EXPECT_FALSE(panels.contains("base"));
  EXPECT_FALSE(panels.contains("base/front/wall"));
}

TEST(AffectedPanels, AKeyTheStyleDoesNotHaveIsAboutNothing) {
  EXPECT_TRUE(AffectedPanels(freshDesign()).of("no-such-measure").isEmpty());
}

}  // namespace
}  // namespace creasewright
