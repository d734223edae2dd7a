#include "printing/picture_dialog.h"

#include <QComboBox>
#include <QSpinBox>

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "commands/edits.h"
#include "pages/gift_strip.h"
#include "widgets/colour_button.h"

namespace creasewright {
namespace {

TEST(PictureDialog, BeginsWithWhatIsSeenNow) {
  DesignSession session;
  changeStyle(session, "two-piece-box");
  const View view{Angle::degrees(12), Angle::degrees(50)};
  for (const double done : {0.0, 1.5, 2.0, kFinished}) {
    PictureDialog dialog(session, {view, kAjar, done});
    const ExportChoices chosen = dialog.choices();
    EXPECT_TRUE(chosen.folded);
    EXPECT_EQ(chosen.sight.view.turn.degrees(), 12);
    EXPECT_EQ(chosen.sight.view.tilt.degrees(), 50);
    EXPECT_EQ(chosen.sight.opening, kAjar);
    EXPECT_EQ(chosen.sight.done, done);
    EXPECT_EQ(std::max(chosen.size.width, chosen.size.height), 1600);
    EXPECT_EQ(dialog.ending(), "png");
  }
}

TEST(PictureDialog, OffersSizeGroundViewAndStage) {
  DesignSession session;
  PictureDialog dialog(session);
  dialog.width().setValue(640);
  dialog.height().setValue(480);
  dialog.ground().setColour(std::nullopt);
  dialog.view().setCurrentIndex(1);
  dialog.moment().setCurrentIndex(1);
  const ExportChoices chosen = dialog.choices();
  EXPECT_EQ(chosen.size.width, 640);
  EXPECT_EQ(chosen.size.height, 480);
  EXPECT_EQ(chosen.ground.kind, PictureGround::Kind::Clear);
  EXPECT_EQ(chosen.sight.view.tilt.degrees(), 0) << "from the front";
  EXPECT_EQ(chosen.sight.done, 1) << "after the first stage";
  EXPECT_EQ(dialog.moment().count(), static_cast<int>(GiftStrip(session.built(), 0).end()) + 1)
      << "flat, the stops before the last one, finished";
}

TEST(PictureDialog, ShowsOnlyWhatTheFileHas) {
  DesignSession session;
  PictureDialog dialog(session);
  dialog.show();
  EXPECT_TRUE(dialog.width().isVisible());
  EXPECT_FALSE(dialog.paper().isVisible());
  EXPECT_TRUE(dialog.opening().isVisible());
  dialog.kind().setCurrentIndex(2);
  EXPECT_FALSE(dialog.width().isVisible());
  EXPECT_TRUE(dialog.paper().isVisible());
  dialog.moment().setCurrentIndex(0);
  EXPECT_FALSE(dialog.opening().isVisible()) << "only the finished gift is opened";
}

}  // namespace
}  // namespace creasewright
