#include "bridge/design_pixmap.h"

#include <QColor>

#include <gtest/gtest.h>

#include "document/build.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

bool hasInk(const QImage& image) {
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      if (qAlpha(image.pixel(x, y)) > 0) {
        return true;
      }
    }
  }
  return false;
}

// Pictures of styles whose parts are made twice carry a text; the gallery ended at the first.
TEST(DesignImage, EveryStyleHasAllPictures) {
  for (const Style& style : styles()) {
    Design design;
    design.styleId = style.id;
    design.parameters = standardParameters(style);
    const auto built = build(design);
    ASSERT_TRUE(built) << style.id;
    for (const DesignView view : {DesignView::Net, DesignView::Finished, DesignView::Ajar}) {
      EXPECT_TRUE(hasInk(designImage(*built, view, {188, 132}, 1))) << style.id;
    }
  }
}

}  // namespace
}  // namespace creasewright
