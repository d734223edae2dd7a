#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "core/kits/plan_of.h"
#include "drawing/svg_writer.h"
#include "fit/card.h"
#include "kits/machine_layouts.h"
#include "papers/kit/kit_csv.h"
#include "papers/kit/kit_pages.h"
#include "styles/registry.h"
#include "support/accepted.h"

namespace creasewright {
namespace {

/// A class of three neighbours in the list of styles.
ClassKit classFrom(std::size_t first) {
  ClassKit kit;
  kit.title = "Evening class";
  kit.takers = 8 + static_cast<int>(first);
  kit.stock = {{"12x12", Length::inches(12), Length::inches(12)},
               {"a3", Length::mm(297), Length::mm(420)},
               {"large", Length::mm(500), Length::mm(700)}};
  for (std::size_t i = first; i < first + 3 && i < styles().size(); ++i) {
    const auto made = newDesign(styles()[i].id, *parseProduct("box:60x40x25mm"),
                                *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
    if (made && build(*made)) kit.items.push_back({*made, 1});
  }
  return kit;
}

// Class papers: plans, layouts, bags and lists, as they were when somebody last looked at them.
TEST(AcceptedClass, PapersAreAsBefore) {
  testing::Accepted accepted("class");
  int planned = 0;
  for (std::size_t first = 0; first < styles().size(); first += 5) {
    const auto plan = testing::planOf(classFrom(first));
    const std::string name = "class-" + std::to_string(first);
    if (!plan) {
      accepted.add(name + "-refused.txt", std::string(codeName(plan.problem().code)));
      continue;
    }
    ++planned;
    const Unit unit = first % 2 == 0 ? Unit::Millimetre : Unit::Inch;
    int page = 0;
    for (const Drawing& drawing : kitPages(*plan, unit, *findPaper("a4")))
      accepted.add(name + '-' + std::to_string(++page) + ".svg",
                   writeSvg(drawing, "page", wordingIn(unit)));
    accepted.add(name + ".csv", kitCsv(*plan).toStdString());
    const auto machine =
        planMachine(buildKit(classFrom(first)).value(), Length::mm(610), Length::mm(610));
    ASSERT_TRUE(machine) << name;
    for (const MachineCard& card : machine->cards)
      for (const Drawing& layout : card.drawings)
        accepted.add(name + "-machine.svg", writeSvg(layout, "machine", wordingIn(unit)));
  }
  EXPECT_GE(planned, 5);
  accepted.expectAsBefore();
}

}  // namespace
}  // namespace creasewright
