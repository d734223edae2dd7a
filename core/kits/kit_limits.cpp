#include <tuple>

#include "kits/bundle.h"
#include "kits/class_kit.h"
#include "stock/list_limits.h"

namespace creasewright {
namespace {

std::optional<Problem> itemProblem(const KitItem& item) {
  if (auto problem = countWithin("per_person", item.perPerson, 1, kMostPerPerson)) return problem;
  if (auto problem = textsProblem({{"piece", item.piece}})) return problem;
  return inPart(fileLimitProblem(item.design), "design");
}

std::optional<Problem> blankProblem(const PlainBlank& blank) {
  if (auto problem = textsProblem({{"name", blank.name}})) return problem;
  if (auto problem = countWithin("per_person", blank.perPerson, 1, kMostPerPerson)) return problem;
  return fileLimitProblem(blank.card, "card");
}

std::optional<Problem> pricingProblem(const Pricing& pricing) {
  if (auto problem = longestOf("currency", pricing.currency, kLongestCurrency)) return problem;
  for (const auto& [field, number, most] :
       {std::tuple{"hourly_rate", pricing.hourlyRate, kDearest},
        {"class_costs", pricing.classCosts, kDearest},
        {"overhead", std::int64_t{pricing.overhead}, std::int64_t{kMostOverhead}},
        {"margin", std::int64_t{pricing.margin}, std::int64_t{kMostMargin}},
        {"fee", std::int64_t{pricing.fee}, std::int64_t{kMostFee}}})
    if (auto problem = countWithin(field, number, 0, most)) return problem;
  return std::nullopt;
}

}  // namespace

std::optional<Problem> fileLimitProblem(const ClassKit& kit) {
  if (auto problem = textsProblem({{"title", kit.title}})) return problem;
  if (auto problem = countWithin("takers", kit.takers, 1, kMostTakers)) return problem;
  if (auto problem = countWithin("spares", kit.spares, 0, kMostTakers)) return problem;
  if (kit.pricing)
    if (auto problem = inPart(pricingProblem(*kit.pricing), "pricing")) return problem;
  if (auto problem = fileLimitProblem(kit.stock)) return problem;
  if (auto problem = fileLimitProblem(kit.supplies)) return problem;
  if (auto problem = listProblem("items", kit.items, kMostItems, itemProblem)) return problem;
  if (auto problem = listProblem("blanks", kit.blanks, kMostBlanks, blankProblem)) return problem;
  return listProblem("names", kit.names, kMostNames,
                     [](const std::string& name) { return longestOf("", name, kLongestTitle); });
}

std::optional<Problem> fileLimitProblem(const Bundle& bundle) {
  const auto judge = [](const Design& design) { return fileLimitProblem(design); };
  if (auto problem = listProblem("designs", bundle.designs, kMostDesigns, judge)) return problem;
  if (auto problem = fileLimitProblem(bundle.stock)) return problem;
  return fileLimitProblem(bundle.supplies);
}

}  // namespace creasewright
