#include "fit/product.h"

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

struct Reads {
  const char* text;
  Product product;
};

Product box(double length, double width, double height) {
  return {ProductShape::Box, Length::mm(length), Length::mm(width), Length::mm(height)};
}

Product shaped(ProductShape shape, double length, double width, double height) {
  return {shape, Length::mm(length), Length::mm(width), Length::mm(height)};
}

TEST(Product, ReadsEveryShape) {
  const Reads rows[] = {
      {"box:60x35x120mm", box(60, 35, 120)},
      {"cylinder:40x120mm", shaped(ProductShape::Cylinder, 40, 40, 120)},
      {"sphere:42.7mm", shaped(ProductShape::Sphere, 42.7, 42.7, 42.7)},
      {"tube:35x20x110mm", shaped(ProductShape::Tube, 35, 20, 110)},
      {"card:85.6x54x0.76mm", shaped(ProductShape::Card, 85.6, 54, 0.76)},
  };
  for (const Reads& row : rows) {
    const Result<Product> product = parseProduct(row.text);
    ASSERT_TRUE(product.ok()) << row.text;
    EXPECT_EQ(*product, row.product) << row.text;
  }
}

TEST(Product, ReadsLengthsInEveryForm) {
  EXPECT_EQ(*parseProduct("box:60 x 35 x 120 mm"), box(60, 35, 120));
  EXPECT_EQ(*parseProduct("box:60\u00D735\u00D7120mm"), box(60, 35, 120));
  EXPECT_EQ(*parseProduct("box:60X35X120"), box(60, 35, 120));
  EXPECT_EQ(*parseProduct("box:6,0x3.5x12cm"), box(60, 35, 120));
  EXPECT_EQ(*parseProduct("box:2 1/2 x 1-1/4 x 4in"), box(63.5, 31.75, 101.6));
  EXPECT_EQ(*parseProduct("box:60mm x 1in x 12cm"), box(60, 25.4, 120));
  EXPECT_EQ(*parseProduct("box:1\" x 1\" x 1\""), box(25.4, 25.4, 25.4));
}

TEST(Product, RefusesNonsense) {
  for (const char* text : {"",
                           "box",
                           "box:",
                           ":60x35x120",
                           "Box:60x35x120",
                           "crate:1x2x3",
                           "box:60x35",
                           "box:1x2x3x4",
                           "box:60xx120",
                           "box:x",
                           "sphere:",
                           "sphere:1x2",
                           "cylinder:40",
                           "box:60x35x1e2",
                           "box:axbxc",
                           "box:1/0x2x3",
                           "tube:35x20mm",
                           "card:85x54",
                           "box:60x35x120mm extra",
                           "box:nanxnanxnan",
                           "box:99999999999999999999x1x1"}) {
    const Result<Product> product = parseProduct(text);
    ASSERT_FALSE(product.ok()) << text;
    EXPECT_EQ(product.problem(),
              (Problem{ProblemCode::ProductUnreadable, {}, {std::string(text)}}));
  }
}

TEST(Product, SidesRunFromATenthOfAMillimetreToAMetre) {
  EXPECT_TRUE(parseProduct("box:0.1x1000x1mm").ok());
  const Result<Product> small = parseProduct("box:0.099999x10x10mm");
  ASSERT_FALSE(small.ok());
  EXPECT_EQ(small.problem(), (Problem{ProblemCode::ProductTooSmall,
                                      {},
                                      {Length::nanometres(99'999), Length::nanometres(100'000)}}));
  const Result<Product> large = parseProduct("sphere:1000.000001mm");
  ASSERT_FALSE(large.ok());
  EXPECT_EQ(large.problem().code, ProblemCode::ProductTooLarge);
  EXPECT_EQ(parseProduct("box:0x10x10").problem().code, ProblemCode::ProductTooSmall);
  EXPECT_EQ(parseProduct("box:10x-5x10").problem().code, ProblemCode::ProductTooSmall);
}

TEST(Product, WritesShortExactText) {
  EXPECT_EQ(productText(box(60, 35, 120)), "box:60x35x120mm");
  EXPECT_EQ(productText(*parseProduct("cylinder:40x120mm")), "cylinder:40x120mm");
  EXPECT_EQ(productText(*parseProduct("sphere:42.67mm")), "sphere:42.67mm");
  EXPECT_EQ(productText(*parseProduct("box:4 1/2x1 1/2x1in")), "box:4 1/2x1 1/2x1in");
  EXPECT_EQ(productText(box(127, 35, 120)), "box:127x35x120mm");
}

TEST(Product, EveryTextReadsBackToTheNanometre) {
  testing::Random random(1602);
  constexpr ProductShape kShapes[] = {ProductShape::Box, ProductShape::Cylinder,
                                      ProductShape::Sphere, ProductShape::Tube, ProductShape::Card};
  for (int i = 0; i < 3000; ++i) {
    Product product = shaped(kShapes[random.whole(0, 4)], random.between(0.1, 1000),
                             random.between(0.1, 1000), random.between(0.1, 1000));
    if (product.shape == ProductShape::Cylinder) product.length = product.width;
    if (product.shape == ProductShape::Sphere) product.length = product.width = product.height;
    const Result<Product> read = parseProduct(productText(product));
    ASSERT_TRUE(read.ok()) << productText(product);
    EXPECT_EQ(*read, product) << productText(product);
  }
}

}  // namespace
}  // namespace creasewright
