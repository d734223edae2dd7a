#include "own_styles/prove_style.h"

#include <array>

#include "units/millimetres.h"

namespace creasewright {
namespace {

using BoxSizes = std::array<Length, 3>;

Product boxOf(const BoxSizes& sizes) { return {ProductShape::Box, sizes[0], sizes[1], sizes[2]}; }

Problems problemsFor(const OwnStyle& style, const Product& product, const Card& card, Ease ease,
                     ToolGrid grid) {
  const Result<Design> design = newDesign(style, product, card, ease, grid);
  if (!design) return {design.problem()};
  if (Problems limits = limitProblems(*design); !limits.empty()) return limits;
  const Result<BuiltDesign> built = build(*design);
  return built ? everyProblem(*built) : Problems{built.problem()};
}

}  // namespace

std::vector<Product> productsToTry(const OwnStyle& style) {
  if (!style.suits) {
    return {boxOf({mm(60), mm(40), mm(30)}), boxOf({mm(90), mm(90), mm(25)}),
            boxOf({mm(60), mm(35), mm(120)}), boxOf({mm(105), mm(74), mm(40)})};
  }
  const BoxSizes& least = style.suits->least;
  const BoxSizes& most = style.suits->most;
  BoxSizes middle;
  for (std::size_t i = 0; i < 3; ++i) middle.at(i) = (least.at(i) + most.at(i)) / 2;
  std::vector<Product> products{boxOf(least), boxOf(middle), boxOf(most)};
  for (std::size_t i = 0; i < 3; ++i) {
    BoxSizes longest = least;
    longest.at(i) = most.at(i);
    if (longest != least && longest != most) products.push_back(boxOf(longest));
  }
  return products;
}

std::vector<StyleTrial> tryStyle(const OwnStyle& style, const std::vector<Product>& products,
                                 const Card& card, Ease ease, ToolGrid grid) {
  std::vector<StyleTrial> trials;
  for (const Product& product : products)
    trials.push_back({product, problemsFor(style, product, card, ease, grid)});
  return trials;
}

}  // namespace creasewright
