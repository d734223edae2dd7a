#include "document/covered_words.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include <gtest/gtest.h>

#include "core/extras/built_extras.h"
#include "extras/layer_stack.h"
#include "lettering/type_width.h"
#include "units/millimetres.h"

// Judged by points of a fine raster, each asked by itself whether it lies in a line of words and
// whether some card is over it. Nothing here knows regions or how words are placed in pictures.
namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::piecesOf;
using testing::Random;

using Told = std::set<std::pair<std::string, std::string>>;  // words, what covers them

Told toldOf(const BuiltDesign& design) {
  Told told;
  for (const Problem& problem : coveredWords(design)) {
    EXPECT_EQ(problem.code, ProblemCode::TextCovered);
    EXPECT_EQ(problem.severity, Severity::Warning);
    told.insert(
        {std::get<std::string>(problem.values.at(0)), std::get<std::string>(problem.values.at(1))});
  }
  return told;
}

/// The straight words of a flat piece as they are seen on its front, which is the back of its
/// drawing: `x` to the right from the middle of the line, `y` up from its baseline.
Point seen(const Inscription& words, double x, double y) {
  return {words.at.x - x, words.at.y + y};
}

/// The share of a line, from its baseline to the top of its capitals, that a layer above lies over.
double coveredShare(const BuiltPiece& below, const Inscription& words, const BuiltPiece& above) {
  constexpr int kAcross = 100;
  constexpr int kUp = 100;
  const double half = typeWidth(words.text, words.height, words.face) / 2 - 0.22 * words.height;
  const Transform place =
      above.role->faces.at(0).place.inverse().after(below.role->faces.at(0).place);
  const Polygon& card = above.net.panels.front().outline;
  int covered = 0;
  for (int i = 0; i < kAcross; ++i)
    for (int k = 0; k < kUp; ++k) {
      const double y = words.height * (-0.03 + 0.76 * (k + 0.5) / kUp);
      const Point3 at = place.apply(seen(words, half * (2 * (i + 0.5) / kAcross - 1), y));
      covered += locate({at.x, at.y}, card) == Side::Outside ? 0 : 1;
    }
  return static_cast<double>(covered) / (kAcross * kUp);
}

Extra randomStack(Random& random, const Design& design) {
  Extra label = extraOf("label", design);
  label.parameters.set("width", Length::mm(random.between(40, 80)));
  label.parameters.set("height", Length::mm(random.between(30, 60)));
  label.parameters.setCount("shape", random.whole(0, 3));
  label.parameters.setCount("mat", random.whole(0, 1));
  label.parameters.setCount("turn", random.whole(0, 2) * 15);
  label.lines = {"first one", "and second"};
  for (int i = random.whole(1, 3); i > 0; --i) {
    ExtraLayer layer = standardLayer(design.card);
    layer.parameters.set("width", Length::mm(random.between(10, 35)));
    layer.parameters.set("height", Length::mm(random.between(6, 25)));
    layer.parameters.set("across", Length::mm(random.between(-15, 15)));
    layer.parameters.set("up", Length::mm(random.between(-15, 15)));
    layer.parameters.setCount("turn", random.whole(0, 3) * 20);
    layer.parameters.setCount("overhang", 1);
    layer.parameters.setCount("hold", random.whole(0, 2));
    layer.lines = {"layer " + std::to_string(i)};
    label.layers.push_back(layer);
  }
  return label;
}

TEST(CoveredWords, LayersOverThemAreToldAsARasterFindsThem) {
  Random random(2024);
  int told = 0;
  int free = 0;
  for (int round = 0; round < 120; ++round) {
    Design design = *newDesign("straight-tuck-box", *parseProduct("box:100x60x120mm"),
                               *findCard("300gsm"), Ease::Easy, ToolGrid::none());
    design.extras = {randomStack(random, design)};
    const BuiltDesign whole = built(design);
    const std::vector<const BuiltPiece*> stack = piecesOf(whole, 0);
    const Told found = toldOf(whole);
    Told expected;
    for (std::size_t low = 0; low < stack.size(); ++low)
      for (const Inscription& words : stack[low]->net.inscriptions)
        for (std::size_t high = low + 1; high < stack.size(); ++high) {
          const double share = coveredShare(*stack[low], words, *stack[high]);
          const std::pair pair{words.text, stack[high]->name};
          // Hardly touched: the raster is not fine enough to say.
          if (share > 0.002 && share < 0.03) {
            if (found.contains(pair)) expected.insert(pair);
            continue;
          }
          if (share > 0.01) expected.insert(pair);
          ++(share > 0.01 ? told : free);
        }
    EXPECT_EQ(found, expected) << round;
  }
  EXPECT_GT(told, 100);
  EXPECT_GT(free, 100);
}

/// A band slid over a label on the box, a ribbon round it, a label upon a label, a bow on it: each
/// is told, and nothing where they leave the words free.
TEST(CoveredWords, OtherExtrasOverThemAreTold) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:100x60x120mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  Extra label = extraOf("label", design);
  label.parameters.set("width", mm(60));
  label.parameters.set("height", mm(40));
  label.parameters.setCount("mat", 0);
  label.parameters.setCount("anchor", 1);
  label.lines = {"Plum jam"};
  label.host = kOnBox;
  const auto toldWith = [&](Extra over, int host) {
    over.host = host;
    design.extras = {label, std::move(over)};
    return toldOf(built(design));
  };
  design.extras = {label};
  EXPECT_EQ(toldOf(built(design)), Told());
  EXPECT_EQ(toldWith(extraOf("belly-band", design), kOnBox), (Told{{"Plum jam", "band"}}));
  EXPECT_EQ(toldWith(extraOf("ribbon", design), kOnBox), (Told{{"Plum jam", "ribbon"}}));

  Extra small = extraOf("label", design);
  small.parameters.set("width", mm(20));
  small.parameters.set("height", mm(10));
  small.parameters.setCount("mat", 0);
  small.parameters.setCount("anchor", 1);
  EXPECT_EQ(toldWith(small, 0), (Told{{"Plum jam", "label-2"}}));
  EXPECT_EQ(toldWith(small, kOnBox), (Told{{"Plum jam", "label-2"}}));
  small.parameters.set("up", mm(-12));
  EXPECT_EQ(toldWith(small, 0), Told());

  Extra bow = extraOf("made-bow", design);
  bow.parameters.set("span", mm(50));
  EXPECT_EQ(toldWith(bow, 0), (Told{{"Plum jam", "made-bow"}}));
  label.host = 1;  // on the band the words show
  EXPECT_EQ(toldWith(extraOf("belly-band", design), kOnBox), Told());
}

TEST(CoveredWords, AMakerReadsThemAmongTheWarnings) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:100x60x120mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.extras = {extraOf("label", design)};
  design.extras[0].lines = {"Soap"};
  design.extras[0].layers = {standardLayer(design.card)};
  const BuiltDesign whole = built(design);
  EXPECT_TRUE(whole.problems.empty());
  EXPECT_EQ(std::ranges::count(whole.warnings, ProblemCode::TextCovered, &Problem::code), 1);
}

}  // namespace
}  // namespace creasewright
