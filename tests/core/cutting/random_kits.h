#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <string>
#include <vector>

#include "cutting/cutting.h"

// Random kits of the harder kinds. All depend on their seed alone, on every system alike.

namespace creasewright::testing {

/// Whole numbers alike on every system.
class KitDraw {
 public:
  explicit KitDraw(unsigned seed) : engine_(seed * 2654435761U + 17) {}
  int from(int low, int high) {
    return low + static_cast<int>(engine_() % static_cast<unsigned>(high - low + 1));
  }
  bool one(int of) { return from(1, of) == 1; }

 private:
  std::mt19937 engine_;
};

struct RandomKit {
  std::vector<CutSheet> stock;
  std::vector<BlankDemand> demands;
  std::int64_t least = 0;  ///< what they cost at least and can be cut for; 0 = not known
};

/// Two or three kinds of sheets with prices that share no step, some with few at hand, some printed
/// with a direction; sizes in millimetres and in 1/16 in.
inline RandomKit randomKit(unsigned seed, int fewest, int most) {
  KitDraw draw(seed);
  RandomKit kit;
  const std::array<std::array<double, 2>, 6> sizes{
      {{304.8, 304.8}, {210, 297}, {215.9, 279.4}, {297, 420}, {279.4, 431.8}, {250, 250}}};
  const int kinds = draw.from(2, 3);
  for (int s = 0; s < kinds; ++s) {
    const auto& size = sizes.at(static_cast<std::size_t>(draw.from(0, 5)));
    CutSheet sheet{Length::mm(size[0]), Length::mm(size[1])};
    sheet.cost = static_cast<std::int64_t>(size[0] * size[1] / 1000 * draw.from(70, 130) / 100);
    if (s > 0 && draw.one(2)) sheet.atHand = draw.from(1, 12);
    sheet.mayTurn = !draw.one(3);  // a pattern
    kit.stock.push_back(sheet);
  }
  const int count = draw.from(fewest, most);
  const int takers = draw.from(6, 30);
  while (static_cast<int>(kit.demands.size()) < count) {
    const bool inches = draw.one(2);
    const auto side = [&] {
      return inches ? Length::inches(draw.from(20, 140), 16) : Length::mm(draw.from(30, 220));
    };
    const Length width = side();
    const Length height = side();
    const BlankDemand blank{"blank " + std::to_string(kit.demands.size()), width, height,
                            takers * draw.from(1, 2), true};
    if (holds(kit.stock.front(), blank)) kit.demands.push_back(blank);
  }
  return kit;
}

/// Sizes in mm of the parts of a rectangle after random cuts from edge to edge; nothing is left.
inline std::vector<std::array<int, 2>> partedSheet(KitDraw& draw, int width, int height,
                                                   std::size_t most) {
  constexpr int kLeast = 20;
  std::vector<std::array<int, 2>> parts{{width, height}};
  for (std::size_t turn = 0; turn < 4 * most && parts.size() < most; ++turn) {
    const auto chosen = parts.begin() + draw.from(0, static_cast<int>(parts.size()) - 1);
    const std::array<int, 2> part = *chosen;
    const bool upright = draw.from(1, part[0] + part[1]) <= part[0];
    const int side = upright ? part[0] : part[1];
    if (side < 2 * kLeast) continue;
    const std::array<int, 3> places{side / 2, side / 3, draw.from(kLeast, side - kLeast)};
    const int at =
        std::clamp(places.at(static_cast<std::size_t>(draw.from(0, 2))), kLeast, side - kLeast);
    *chosen = upright ? std::array{at, part[1]} : std::array{part[0], at};
    parts.push_back(upright ? std::array{side - at, part[1]} : std::array{part[0], side - at});
  }
  return parts;
}

/// What whole sheets of one or two kinds were cut into without any waste, for some people: no plan
/// costs less than these sheets, as two kinds have prices by their area.
inline RandomKit wholeSheetsKit(unsigned seed) {
  constexpr std::array<std::array<int, 2>, 5> kSizes{
      {{200, 300}, {300, 400}, {240, 320}, {300, 300}, {400, 600}}};
  KitDraw draw(seed);
  RandomKit kit;
  const int takers = draw.from(1, 12);
  const int kinds = draw.from(1, 2);
  const int first = draw.from(0, 4);
  const bool turns = draw.from(1, 5) > 2;
  for (int s = 0; s < kinds; ++s) {
    const auto& size = kSizes.at(static_cast<std::size_t>((first + 2 * s) % 5));
    CutSheet sheet{Length::mm(size[0]), Length::mm(size[1])};
    sheet.cost = kinds > 1 ? size[0] * size[1] / 100 : 0;
    sheet.mayTurn = turns;
    kit.stock.push_back(sheet);
  }
  for (int n = draw.from(1, 3); n > 0; --n) {
    const CutSheet& sheet = kit.stock.at(static_cast<std::size_t>(draw.from(0, kinds - 1)));
    kit.least += takers * std::max<std::int64_t>(1, sheet.cost);
    for (const auto& part :
         partedSheet(draw, static_cast<int>(sheet.width.mm()), static_cast<int>(sheet.height.mm()),
                     static_cast<std::size_t>(draw.from(2, 12)))) {
      const Length width = Length::mm(part[0]);
      const Length height = Length::mm(part[1]);
      const auto known = std::ranges::find_if(kit.demands, [&](const BlankDemand& d) {
        return d.width == width && d.height == height;
      });
      if (known != kit.demands.end())
        known->quantity += takers;
      else
        kit.demands.push_back(
            {"blank " + std::to_string(kit.demands.size()), width, height, takers, true});
    }
  }
  return kit;
}

/// 20 to 50 sizes on some hundreds of one large sheet, some seeds with few large blanks to a sheet,
/// some with many small ones; every other one may be turned.
inline RandomKit largeSheetKit(unsigned seed) {
  KitDraw draw(seed);
  RandomKit kit;
  CutSheet sheet{Length::mm(draw.from(1200, 2600)), Length::mm(draw.from(900, 1800))};
  sheet.mayTurn = seed % 2 == 0;
  kit.stock.push_back(sheet);
  const int sizes = 20 + 10 * static_cast<int>(seed % 4);
  constexpr std::array<std::array<int, 2>, 3> kShares{{{10, 65}, {8, 45}, {5, 30}}};  // of a side
  const auto& share = kShares.at(seed % 3);
  while (static_cast<int>(kit.demands.size()) < sizes) {
    const auto side = [&](Length whole) {
      return Length::mm(std::floor(whole.mm() * draw.from(10 * share[0], 10 * share[1]) / 1000));
    };
    const Length width = side(sheet.width);
    const Length height = side(sheet.height);
    kit.demands.push_back(
        {"blank " + std::to_string(kit.demands.size()), width, height, draw.from(1, 400), true});
  }
  return kit;
}

}  // namespace creasewright::testing
