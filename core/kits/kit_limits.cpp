#include "base/file_limits.h"
#include "document/limit_problems.h"
#include "kits/bundle.h"
#include "kits/class_kit.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

std::optional<Problem> textsProblem(
    std::initializer_list<std::pair<const char*, std::string>> all) {
  for (const auto& [field, text] : all)
    if (auto problem = longestOf(field, text, kLongestTitle)) return problem;
  return std::nullopt;
}

std::optional<Problem> sheetProblem(const StockSheet& sheet) {
  if (auto problem = textsProblem({{"name", sheet.name},
                                   {"code", sheet.code},
                                   {"card", sheet.card},
                                   {"basis", sheet.basis}}))
    return problem;
  if (auto problem = countWithin("price", sheet.price, 0, kDearest)) return problem;
  if (auto problem = countWithin("owned", sheet.owned, 0, kMostCounted)) return problem;
  return countWithin("at_hand", sheet.atHand, -1, kMostCounted);
}

std::optional<Problem> supplyProblem(const SupplyItem& item) {
  if (auto problem = textsProblem({{"name", item.name}, {"code", item.code}})) return problem;
  if (item.length > kLongestRoll) {
    constexpr std::int64_t metre = 1'000'000'000;
    return Problem{
        ProblemCode::RollTooLong, item.name, {item.length.mm() / 1000, kLongestRoll.nm() / metre}};
  }
  if (auto problem = countWithin("pieces", item.pieces, 0, kMostCounted)) return problem;
  if (auto problem = countWithin("price", item.price, 0, kDearest)) return problem;
  return countWithin("at_hand", item.atHand, 0, kMostCounted);
}

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

template <class Item, class Judge>
std::optional<Problem> listProblem(const char* list, const std::vector<Item>& items,
                                   std::size_t most, const Judge& judge) {
  if (auto problem = mostOf(list, items.size(), most)) return problem;
  for (std::size_t i = 0; i < items.size(); ++i)
    if (auto problem = inPart(judge(items[i]), std::string(list) + "/" + std::to_string(i + 1)))
      return problem;
  return std::nullopt;
}

}  // namespace

std::optional<Problem> fileLimitProblem(const std::vector<StockSheet>& stock) {
  return listProblem("stock", stock, kMostSheets, sheetProblem);
}

std::optional<Problem> fileLimitProblem(const std::vector<SupplyItem>& supplies) {
  return listProblem("supplies", supplies, kMostSupplies, supplyProblem);
}

std::optional<Problem> fileLimitProblem(const ClassKit& kit) {
  if (auto problem = textsProblem({{"title", kit.title}})) return problem;
  if (auto problem = countWithin("takers", kit.takers, 1, kMostTakers)) return problem;
  if (auto problem = countWithin("spares", kit.spares, 0, kMostTakers)) return problem;
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
