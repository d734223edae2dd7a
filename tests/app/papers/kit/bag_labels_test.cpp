#include "papers/kit/bag_labels.h"

#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "core/kits/plan_of.h"
#include "lettering/type_width.h"
#include "support/random.h"

namespace creasewright {
namespace {

constexpr double kSmallPrint = 6.5 * 25.4 / 72;  // mm

struct Box {
  Bounds bounds;
  std::string words;
};

std::vector<Box> wordsOn(const Drawing& page) {
  const Wording wording = wordingIn(Unit::Millimetre);
  std::vector<Box> all;
  for (const TextItem& item : page.texts) {
    const std::string words = wording(item.label);
    const double wide = typeWidth(words, item.height, item.bold);
    all.push_back(
        {{item.at - Point{0, 0.2 * item.height}, item.at + Point{wide, 0.75 * item.height}},
         words});
  }
  return all;
}

bool meet(const Bounds& a, const Bounds& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

std::vector<Bounds> labelsOn(const Drawing& page) {
  std::vector<Bounds> all;
  for (const PathItem& item : page.paths)
    if (item.role == Role::CutMark) all.push_back(bounds(item.rings.front()));
  return all;
}

/// Every word is read, in its label, on no other word and on no line; as many labels as bags.
void judge(const KitPlan& plan, const std::string& of) {
  std::size_t labels = 0;
  for (const Drawing& page : bagLabels(plan, Unit::Millimetre, *findPaper("a4"))) {
    const std::vector<Bounds> rims = labelsOn(page);
    labels += rims.size();
    for (const TextItem& item : page.texts) EXPECT_GE(item.height, kSmallPrint) << of;
    const std::vector<Box> words = wordsOn(page);
    for (std::size_t i = 0; i < words.size(); ++i) {
      const Bounds& box = words[i].bounds;
      EXPECT_EQ(std::ranges::count_if(rims,
                                      [&](const Bounds& rim) {
                                        return rim.low.x < box.low.x && box.high.x < rim.high.x &&
                                               rim.low.y < box.low.y && box.high.y < rim.high.y;
                                      }),
                1)
          << of << words[i].words;
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(meet(box, words[j].bounds)) << of << words[i].words << " / " << words[j].words;
      for (const PathItem& item : page.paths) {
        if (item.role != Role::Positions) continue;
        EXPECT_FALSE(meet(box, bounds(item.rings.front()))) << of << words[i].words;
      }
    }
  }
  EXPECT_EQ(labels, static_cast<std::size_t>(plan.kit().sets())) << of;
}

ClassKit kitOf(int blanks, testing::Random& random) {
  ClassKit kit;
  kit.title = "Gift evening in the old school";
  kit.takers = 3;
  kit.spares = 1;
  kit.stock = {{"A3", Length::mm(297), Length::mm(420)}};
  for (int i = 0; i < blanks; ++i)
    kit.blanks.push_back({std::string(random.whole(1, 4), 'n') + " panel of patterned paper",
                          Length::mm(random.whole(40, 90)), Length::mm(random.whole(40, 90)),
                          cards()[0], random.whole(1, 3)});
  return kit;
}

TEST(BagLabels, AreReadWhateverIsInTheBag) {
  testing::Random random(2406);
  for (int round = 0; round < 40; ++round) {
    const int blanks = random.whole(1, 30);
    ClassKit kit = kitOf(blanks, random);
    if (round % 2 == 1) kit.names = {"Ada", "Maximiliane von Hohenfels-Sommerau", "Bo"};
    kit.labelWidth = Length::mm(random.whole(20, 120));
    kit.labelHeight = Length::mm(random.whole(20, 80));
    const auto plan = testing::planOf(kit, {.seconds = 0.02, .fewestLayouts = false});
    ASSERT_TRUE(plan);
    judge(*plan, "round " + std::to_string(round) + ", " + std::to_string(blanks) + " blanks: ");
  }
}

/// The rule to write a name on stood across the list, and was as long as the words were wide.
TEST(BagLabels, TheLineForANameIsClearOfTheListAndInsideTheRim) {
  testing::Random random(2407);
  const auto plan = testing::planOf(kitOf(12, random), {.seconds = 0.1});
  ASSERT_TRUE(plan);
  const Drawing page = bagLabels(*plan, Unit::Millimetre, *findPaper("a4")).front();
  const std::vector<Bounds> rims = labelsOn(page);
  int lines = 0;
  for (const PathItem& item : page.paths) {
    if (item.role != Role::Positions || item.rings.front().size() != 2) continue;
    ++lines;
    const Bounds line = bounds(item.rings.front());
    EXPECT_TRUE(std::ranges::any_of(rims, [&](const Bounds& rim) {
      return line.low.x > rim.low.x + 4 && line.high.x < rim.high.x - 4 && line.low.y > rim.low.y &&
             line.high.y < rim.high.y;
    }));
    for (const Box& box : wordsOn(page)) EXPECT_FALSE(meet(box.bounds, line)) << box.words;
  }
  EXPECT_EQ(lines, 3);  // the spare set is called so
}

}  // namespace
}  // namespace creasewright
