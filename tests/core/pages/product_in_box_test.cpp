#include "pages/product_in_box.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "fit/fit.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

Design designOf(std::string_view style, const char* product) {
  return *newDesign(style, *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

struct Extent {
  Point3 low{1e9, 1e9, 1e9};
  Point3 high{-1e9, -1e9, -1e9};
  void add(Point3 p) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
  }
  [[nodiscard]] std::array<double, 3> sorted() const {
    std::array sizes{high.x - low.x, high.y - low.y, high.z - low.z};
    std::ranges::sort(sizes);
    return sizes;
  }
};

Extent extentOf(const std::vector<Solid>& solids) {
  Extent extent;
  for (const Solid& solid : solids)
    for (const auto& face : solid.faces)
      for (const Point3& p : face) extent.add(p);
  return extent;
}

// Law: in every style that holds a box without a complaint, the product lies within the free space
// that was measured, turned as the style wants it, in its true size.
TEST(ProductInBox, LiesWithinTheFreeSpaceOfEveryStyle) {
  int looked = 0;
  for (const char* words : {"box:60x42x35mm", "card:85x54x3mm", "tube:35x20x110mm"}) {
    const Product product = *parseProduct(words);
    std::array sizes{product.length.mm(), product.width.mm(), product.height.mm()};
    std::ranges::sort(sizes);
    for (const Style& style : styles()) {
      const auto built = build(designOf(style.id, words));
      if (!built || !built->problems.empty()) continue;
      const auto found = productInBox(*built);
      if (!found) continue;
      const BuiltPiece& piece = built->pieces[static_cast<std::size_t>(found->piece)];
      const Extent extent = extentOf(found->at);
      const CavityBox& room = piece.cavityBox;
      constexpr double kNear = 1e-6;
      EXPECT_GE(extent.low.x, room.low.x - kNear) << style.id << ' ' << words;
      EXPECT_GE(extent.low.y, room.low.y - kNear) << style.id << ' ' << words;
      EXPECT_GE(extent.low.z, room.low.z - kNear) << style.id << ' ' << words;
      EXPECT_LE(extent.high.x, room.high.x + kNear) << style.id << ' ' << words;
      EXPECT_LE(extent.high.y, room.high.y + kNear) << style.id << ' ' << words;
      EXPECT_LE(extent.high.z, room.high.z + kNear) << style.id << ' ' << words;
      // A tube's round foot has 24 sides: at most 1 % narrower than the circle.
      for (std::size_t i = 0; i < 3; ++i)
        EXPECT_NEAR(extent.sorted().at(i), sizes.at(i), 0.01 * sizes.at(i)) << style.id << words;
      ++looked;
    }
  }
  EXPECT_GT(looked, 50);
}

TEST(ProductInBox, ComesAtItsStageAndIntoItsPieceOnly) {
  const BuiltDesign built = *build(designOf("drawer-box", "box:60x42x35mm"));
  const auto found = productInBox(built);
  ASSERT_TRUE(found);
  const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(found->piece)];
  EXPECT_FALSE(productAt(found, found->piece, piece.folded, 1).empty());
  EXPECT_TRUE(productAt(found, found->piece, piece.folded, found->from - 0.1).empty());
  EXPECT_TRUE(productAt(found, 1 - found->piece, piece.folded, 1).empty());
  const BuiltDesign tuck = *build(designOf("straight-tuck-box", "box:60x42x35mm"));
  ASSERT_TRUE(productInBox(tuck));
  EXPECT_LT(productInBox(tuck)->from, 1) << "before the last flap closes";
  Design none = designOf("framed-tray", "box:60x42x35mm");
  none.product.reset();
  EXPECT_FALSE(productInBox(*build(none)));
}

TEST(ProductInBox, OneThatIsTooLargeSticksOut) {
  Design design = designOf("framed-tray", "box:60x42x35mm");
  design.product = *parseProduct("box:60x42x80mm");
  const BuiltDesign built = *build(design);
  EXPECT_FALSE(built.problems.empty());
  const auto found = productInBox(built);
  ASSERT_TRUE(found);
  const Extent extent = extentOf(found->at);
  const CavityBox& room = built.pieces[static_cast<std::size_t>(found->piece)].cavityBox;
  EXPECT_GT(extent.high.z - extent.low.z, room.high.z - room.low.z + 1);
}

}  // namespace
}  // namespace creasewright
