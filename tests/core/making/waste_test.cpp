#include "making/waste.h"

#include <gtest/gtest.h>

#include "styles/registry.h"

namespace creasewright {
namespace {

TEST(Waste, LettersGoFromTheTopLeftRowByRow) {
  FlatNet flat;
  const auto square = [](double x, double y) {
    return Area{{{x, y}, {x + 5, y}, {x + 5, y + 5}, {x, y + 5}}, {}};
  };
  flat.waste = {square(50, 0), square(50, 50), square(0, 0), square(0, 50.2)};
  const std::vector<WastePiece> waste = findWaste(flat);
  ASSERT_EQ(waste.size(), 4u);
  const std::vector<Point> corners{{0, 50.2}, {50, 50}, {0, 0}, {50, 0}};
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_EQ(waste[i].letter, std::string(1, static_cast<char>('A' + i)));
    EXPECT_EQ(waste[i].area.outer.front(), corners[i]);
  }
}

TEST(Waste, TwoLettersFollowZ) {
  FlatNet flat;
  for (int i = 0; i < 28; ++i) {
    const double x = 10.0 * i;
    flat.waste.push_back({{{x, 0}, {x + 5, 0}, {x + 5, 5}, {x, 5}}, {}});
  }
  const std::vector<WastePiece> waste = findWaste(flat);
  EXPECT_EQ(waste[25].letter, "Z");
  EXPECT_EQ(waste[26].letter, "AA");
  EXPECT_EQ(waste[27].letter, "AB");
}

/// The blank is the outline, the waste and the openings, for every style.
TEST(Waste, AreasAddUpToTheBlank) {
  for (const Style& style : styles()) {
    for (const Piece& piece :
         style.build(standardParameters(style), {Length::mm(0.3), ToolGrid::none()})) {
      const FlatNet flat = flatten(piece.net);
      double sum = area(flat.outline);
      for (const WastePiece& waste : findWaste(flat)) sum += area({waste.area});
      for (const auto& openings : flat.openings)
        for (const Polygon& opening : openings) sum += std::abs(signedArea(opening));
      EXPECT_NEAR(sum, flat.width * flat.height, 0.01) << style.id;
    }
  }
}

}  // namespace
}  // namespace creasewright
