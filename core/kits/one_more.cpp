#include <algorithm>

#include "kits/offcut_uses.h"
#include "kits/plan_kit.h"

namespace creasewright {
namespace {

ClassKit oneLarger(const KitPlan& plan) {
  ClassKit larger = plan.kit();
  ++larger.takers;
  return larger;
}

/// One set, cut from the sheets that the plan leaves.
ClassKit oneBeside(const KitPlan& plan) {
  ClassKit one = plan.kit();
  one.takers = 1;
  one.spares = 0;
  one.names.clear();
  for (const CardPlan& card : plan.cards)
    for (const Layout& layout : card.plan.layouts) {
      int& atHand = one.stock[static_cast<std::size_t>(layout.stock)].atHand;
      if (atHand >= 0) atHand = std::max(0, atHand - layout.count);
    }
  return one;
}

/// The plan of another class of the same designs, which are not built again.
Result<KitPlan> planAs(ClassKit kit, const BuiltKit& known, ToolGrid trimmer) {
  Result<BuiltKit> built = buildKit(std::move(kit), &known);
  if (!built) return built.problem();
  return planKit(std::move(built).value(),
                 {.seconds = 1, .fewestLayouts = false, .trimmer = trimmer});
}

}  // namespace

std::optional<OneMore> oneMoreFor(const KitPlan& plan) {
  const Result<KitPlan> anew = planAs(oneLarger(plan), *plan.built, plan.trimmer);
  const Result<KitPlan> beside = planAs(oneBeside(plan), *plan.built, plan.trimmer);
  if (!anew && !beside) return std::nullopt;
  OneMore more{0, 0, true};
  bool priced = true;
  for (std::size_t c = 0; c < plan.cards.size(); ++c) {
    const CuttingPlan& now = plan.cards[c].plan;
    const CuttingPlan* whole = anew ? &anew->cards[c].plan : nullptr;
    const CuttingPlan* part = beside ? &beside->cards[c].plan : nullptr;
    const bool cheaper =
        part == nullptr || (whole != nullptr && whole->cost <= now.cost + part->cost);
    // What is planned for more people does for fewer, so nothing is ever saved by one more.
    const std::int64_t cost =
        std::max<std::int64_t>(0, cheaper ? whole->cost - now.cost : part->cost);
    more.sheets += std::max(0, cheaper ? whole->sheets - now.sheets : part->sheets);
    more.price += cost;
    more.proven =
        more.proven && whole != nullptr && now.proven() && now.cost + cost == whole->bound;
    priced = priced && now.priced;
  }
  if (!priced) more.price = 0;
  return more;
}

KitPlan withFindings(KitPlan plan) {
  plan.findings = KitFindings{oneMoreFor(plan), offcutUses(plan)};
  return plan;
}

}  // namespace creasewright
