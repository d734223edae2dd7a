#include "panels/product_panel.h"

#include <QAbstractButton>
#include <QTest>

#include <gtest/gtest.h>

#include "panels/product_fields.h"
#include "widgets/length_edit.h"

namespace creasewright {
namespace {

constexpr std::array kShapes{ProductShape::Box, ProductShape::Cylinder, ProductShape::Sphere,
                             ProductShape::Tube, ProductShape::Card};

TEST(ProductFields, TheFieldsOfAShapeSetEverySideOnce) {
  for (const ProductShape shape : kShapes) {
    std::vector<Length Product::*> set;
    for (const ProductField& field : productFields(shape)) {
      EXPECT_FALSE(field.label.isEmpty());
      set.insert(set.end(), field.members.begin(), field.members.end());
    }
    ASSERT_EQ(set.size(), 3U) << shapeTitle(shape).toStdString();
    for (const auto side : {&Product::length, &Product::width, &Product::height})
      EXPECT_EQ(std::ranges::count(set, side), 1) << shapeTitle(shape).toStdString();
  }
}

TEST(ProductFields, AnotherShapeKeepsTheSidesItCan) {
  const Product soap = *parseProduct("box:105x32x22mm");
  const Product round = reshaped(soap, ProductShape::Cylinder);
  EXPECT_EQ(round.length, soap.length);
  EXPECT_EQ(round.width, soap.length) << "as wide as long: it is round";
  EXPECT_EQ(round.height, soap.height);
  const Product ball = reshaped(soap, ProductShape::Sphere);
  EXPECT_EQ(ball.height, soap.length);
  EXPECT_EQ(reshaped(soap, ProductShape::Card).height, soap.height);
}

class ProductPanelTest : public ::testing::Test {
 protected:
  QAbstractButton* button(const QString& words) {
    for (auto* each : panel_.findChildren<QAbstractButton*>())
      if (each->text() == words) return each;
    return nullptr;
  }
  std::vector<LengthEdit*> fields() {
    std::vector<LengthEdit*> shown;
    for (auto* each : panel_.findChildren<LengthEdit*>())
      if (each->isVisibleTo(&panel_)) shown.push_back(each);
    return shown;
  }
  void type(LengthEdit& field, const QString& words) {
    field.selectAll();
    QTest::keyClicks(&field, words);
    QTest::keyClick(&field, Qt::Key_Return);
  }

  DesignSession session_;
  ProductPanel panel_{session_};
};

TEST_F(ProductPanelTest, EachFieldSetsItsOwnSide) {
  const std::vector<Length Product::*> sides{&Product::length, &Product::width, &Product::height};
  for (std::size_t i = 0; i < 3; ++i) {
    Product wanted = *session_.design().product;
    wanted.*sides[i] = Length::mm(40 + static_cast<double>(i));
    type(*fields().at(i), QString::number(40 + i) + QStringLiteral(" mm"));
    EXPECT_EQ(*session_.design().product, wanted);
    EXPECT_EQ(session_.history().count(), static_cast<int>(i) + 1);
  }
}

TEST_F(ProductPanelTest, ASideThatNoProductHasIsRefusedWithASentence) {
  const auto before = session_.design();
  for (const char* words : {"0.05 mm", "1001 mm"}) {
    type(*fields().front(), QString::fromLatin1(words));
    EXPECT_EQ(session_.design(), before) << words;
  }
  type(*fields().front(), QStringLiteral("0.1 mm"));
  EXPECT_EQ(session_.design().product->length, Length::mm(0.1));
  type(*fields().front(), QStringLiteral("1000 mm"));
  EXPECT_EQ(session_.design().product->length, Length::mm(1000));
}

TEST_F(ProductPanelTest, TheShapeDecidesTheFieldsAndNoneTakesThemAway) {
  ASSERT_NE(button(QStringLiteral("Cylinder")), nullptr);
  button(QStringLiteral("Cylinder"))->click();
  EXPECT_EQ(session_.design().product->shape, ProductShape::Cylinder);
  EXPECT_EQ(fields().size(), 2U);
  type(*fields().front(), QStringLiteral("50 mm"));
  EXPECT_EQ(session_.design().product->length, Length::mm(50));
  EXPECT_EQ(session_.design().product->width, Length::mm(50));
  button(QStringLiteral("None"))->click();
  EXPECT_FALSE(session_.design().product);
  EXPECT_TRUE(fields().empty());
  button(QStringLiteral("Ball"))->click();
  EXPECT_EQ(session_.design().product->height, Length::mm(50)) << "the last product comes back";
}

TEST_F(ProductPanelTest, EaseIsChosenByItsButton) {
  button(QStringLiteral("Loose"))->click();
  EXPECT_EQ(session_.design().ease, Ease::Loose);
  session_.history().undo();
  EXPECT_EQ(session_.design().ease, Ease::Easy);
}

}  // namespace
}  // namespace creasewright
