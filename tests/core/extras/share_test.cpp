#include <cmath>
#include <regex>

#include "core/extras/built_extras.h"
#include "document/design_file.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;

Design labelled(double grown) {
  const Product product{ProductShape::Box, Length::mm(80 * grown), Length::mm(50 * grown),
                        Length::mm(120 * grown)};
  Design design = *newDesign("straight-tuck-box", product, *findCard("300gsm"), Ease::Easy,
                             ToolGrid::millimetre());
  Extra label = extraOf("label", design);
  label.face = "box:front";
  label.parameters.set("width", mm(20));
  label.parameters.set("height", mm(15));
  label.parameters.setCount("mat", 0);
  design.extras = {label};
  return design;
}

/// From the middle of the front to the middle of the label, right and up as they are seen.
Point offsetOf(const BuiltDesign& whole, Bounds& face) {
  const auto pieces = testing::piecesOf(whole, 0);
  EXPECT_EQ(pieces.size(), 1U);
  if (pieces.empty()) return {};
  const FacePlace& place = pieces[0]->role->faces.at(0);
  const Panel& panel =
      testing::hostOf(whole, place).net.panels.at(static_cast<std::size_t>(place.panel));
  face = bounds(panel.outline);
  const Bounds label = bounds(testing::onFace(*pieces[0], place));
  const Point off = (label.low + label.high) / 2 - (face.low + face.high) / 2;
  return {std::abs(off.x), std::abs(off.y)};
}

// Law: told in percents of its face, a label lies there whatever size the box has; told as a
// length, so far from the middle whatever size.
TEST(ExtraShares, FollowTheSizeOfTheFaceAndLengthsDoNot) {
  for (const double grown : {1.0, 1.3, 1.9}) {
    Design design = labelled(grown);
    design.extras[0].parameters.setCount("across-share", 20);
    design.extras[0].parameters.setCount("up-share", -15);
    Bounds face;
    const Point shared = offsetOf(built(design), face);
    // The front may lie on its side in the net.
    const bool upright = face.height() > face.width();
    EXPECT_NEAR(upright ? shared.x : shared.y, 0.2 * std::min(face.width(), face.height()), 1e-3);
    EXPECT_NEAR(upright ? shared.y : shared.x, 0.15 * std::max(face.width(), face.height()), 1e-3);
    design = labelled(grown);
    design.extras[0].parameters.set("across", mm(12));
    const Point fixed = offsetOf(built(design), face);
    EXPECT_NEAR(std::max(fixed.x, fixed.y), 12, 1e-3);
    EXPECT_NEAR(std::min(fixed.x, fixed.y), 0, 1e-3);
  }
}

TEST(ExtraShares, ADesignOfVersionEightHasNone) {
  Design design = labelled(1);
  design.extras[0].parameters.set("across", mm(12));
  std::string text =
      std::regex_replace(writeDesign(design), std::regex("\"(across|up)-share\": [^\n]*\n"), "");
  const std::string newest = "\"version\": " + std::to_string(kDesignVersion);
  text.replace(text.find(newest), newest.size(), "\"version\": 8");
  ASSERT_EQ(text.find("share"), std::string::npos);
  const Result<Design> read = readDesign(text, "x");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(*read, design);
}

}  // namespace
}  // namespace creasewright
