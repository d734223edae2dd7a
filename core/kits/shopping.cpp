#include "kits/shopping.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace creasewright {
namespace {

bool sticks(SupplyItemKind kind) {
  return kind == SupplyItemKind::AdhesiveDots || kind == SupplyItemKind::Glue;
}

std::int64_t packsFor(std::int64_t needed, std::int64_t perPack) {
  return perPack <= 0 ? 1 : (needed + perPack - 1) / perPack;
}

void buy(ShoppingLine line, int atHand, std::int64_t price, ShoppingList& list) {
  line.atHand = std::min(line.needed, atHand);
  line.toBuy = line.needed - line.atHand;
  line.cost = line.toBuy * price;
  list.cost += line.cost;
  list.complete = list.complete && (line.toBuy == 0 || price > 0);
  list.lines.push_back(line);
}

void addSheets(const KitPlan& plan, ShoppingList& list) {
  const ClassKit& kit = plan.kit();
  std::vector<int> left;  // at hand, not yet given to a card
  for (const StockSheet& sheet : kit.stock) left.push_back(sheet.owned);
  for (std::size_t c = 0; c < plan.cards.size(); ++c) {
    std::map<int, int> sheets;
    for (const Layout& layout : plan.cards[c].plan.layouts) sheets[layout.stock] += layout.count;
    for (const auto& [stock, count] : sheets) {
      ShoppingLine line;
      line.card = static_cast<int>(c);
      line.stock = stock;
      line.needed = count;
      int& owned = left[static_cast<std::size_t>(stock)];
      buy(line, owned, kit.stock[static_cast<std::size_t>(stock)].price, list);
      owned -= list.lines.back().atHand;
    }
  }
}

/// All that one roll serves is one line, but a roll has one colour; widths that no listed roll has
/// stand for themselves.
void addRolls(const ClassKit& kit, const std::vector<TapeNeed>& needs, ShoppingLine::Kind kind,
              SupplyItemKind item, ShoppingList& list) {
  std::map<std::pair<int, std::string>, ShoppingLine> bySupply;
  for (const TapeNeed& need : needs) {
    ShoppingLine line;
    line.kind = kind;
    line.supply = supplyFor(kit, item, need.width);
    line.width = need.width;
    line.colour = need.colour;
    const std::pair key{line.supply, need.colour ? hexText(*need.colour) : std::string()};
    ShoppingLine& all = line.supply < 0 ? line : bySupply.try_emplace(key, line).first->second;
    all.length += need.length;
    all.strips += need.strips;
    if (line.supply >= 0) continue;
    list.complete = false;
    list.lines.push_back(line);
  }
  std::map<int, int> taken;  // of what is at hand
  for (auto& [key, line] : bySupply) {
    const SupplyItem& roll = kit.supplies[static_cast<std::size_t>(key.first)];
    line.width = roll.width;
    line.needed = static_cast<int>(packsFor(line.length.nm(), roll.length.nm()));
    int& gone = taken[key.first];
    buy(line, roll.atHand - gone, roll.price, list);
    gone += list.lines.back().atHand;
  }
}

void addGlue(const ClassKit& kit, int places, ShoppingList& list) {
  ShoppingLine line;
  line.kind = ShoppingLine::Kind::Glue;
  line.strips = places;
  line.supply = supplyFor(kit, SupplyItemKind::Glue, {});
  if (line.supply < 0) {
    list.complete = false;
    list.lines.push_back(line);
    return;
  }
  const SupplyItem& item = kit.supplies[static_cast<std::size_t>(line.supply)];
  line.needed = static_cast<int>(packsFor(places, item.pieces));
  buy(line, item.atHand, item.price, list);
}

void addFoam(const ClassKit& kit, const std::vector<TapeNeed>& needs, ShoppingList& list) {
  for (const TapeNeed& need : needs) {
    ShoppingLine line;
    line.kind = ShoppingLine::Kind::Foam;
    line.width = need.width;
    line.strips = need.strips;
    line.supply = supplyFor(kit, SupplyItemKind::FoamDots, need.width);
    if (line.supply < 0) {
      list.complete = false;
      list.lines.push_back(line);
      continue;
    }
    const SupplyItem& item = kit.supplies[static_cast<std::size_t>(line.supply)];
    line.needed = static_cast<int>(packsFor(need.strips, item.pieces));
    buy(line, item.atHand, item.price, list);
  }
}

}  // namespace

int supplyFor(const ClassKit& kit, SupplyItemKind kind, Length width) {
  constexpr double kSameWidth = 0.6;  // mm
  if (sticks(kind)) {
    const auto found = std::ranges::find_if(
        kit.supplies, [](const SupplyItem& item) { return sticks(item.kind); });
    return found == kit.supplies.end() ? -1 : static_cast<int>(found - kit.supplies.begin());
  }
  int best = -1;
  double nearest = kSameWidth;
  for (std::size_t i = 0; i < kit.supplies.size(); ++i) {
    const SupplyItem& item = kit.supplies[i];
    const double off = std::abs((item.width - width).mm());
    if (item.kind != kind || off > nearest) continue;
    nearest = off;
    best = static_cast<int>(i);
  }
  return best;
}

ShoppingList shoppingFor(const KitPlan& plan) {
  const BuiltKit& built = *plan.built;
  const ClassKit& kit = built.kit;
  ShoppingList list;
  addSheets(plan, list);
  addRolls(kit, built.tapes, ShoppingLine::Kind::Tape, SupplyItemKind::Tape, list);
  addRolls(kit, built.ribbons, ShoppingLine::Kind::Ribbon, SupplyItemKind::Ribbon, list);
  addFoam(kit, built.foams, list);
  if (built.gluePlaces > 0) addGlue(kit, built.gluePlaces, list);
  return list;
}

}  // namespace creasewright
