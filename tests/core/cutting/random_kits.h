#pragma once

#include <array>
#include <random>
#include <vector>

#include "cutting/cutting.h"

// Random class kits of the harder kind: two or three kinds of sheets with prices that share no
// step, some with few at hand, some printed with a direction, sizes in millimetres and in 1/16 in.

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
};

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

}  // namespace creasewright::testing
