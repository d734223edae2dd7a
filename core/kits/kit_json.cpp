#include <nlohmann/json.hpp>

#include "cutting/trim_steps.h"
#include "document/card_json.h"
#include "kits/cost_sheet.h"
#include "kits/plan_kit.h"
#include "stock/punches.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

double mm(Length length) { return length.mm(); }

/// The item a blank belongs to; a plain blank belongs to none.
Json itemJson(const BlankSource& source) {
  return source.item < 0 ? Json(nullptr) : Json(source.item);
}

Json pieceJson(const CutNode& node, const CardPlan& card) {
  const auto demand = static_cast<std::size_t>(node.demand);
  return {{"x", mm(node.x)},
          {"y", mm(node.y)},
          {"w", mm(node.width)},
          {"h", mm(node.height)},
          {"turned", node.turned},
          {"design", itemJson(card.sources()[demand])},
          {"piece", card.sources()[demand].piece},
          {"name", card.demands()[demand].name}};
}

Json punchJson(const std::optional<Punch>& punch) {
  if (!punch) return nullptr;
  return {{"shape", punchShapeName(punch->shape)},
          {"width", mm(punch->width)},
          {"height", mm(punch->height)}};
}

Json treeJson(const CutNode& node) {
  switch (node.kind) {
    case CutNode::Kind::Offcut:
      return {{"offcut", {mm(node.width), mm(node.height)}}};
    case CutNode::Kind::Blank:
      return {{"blank", node.demand}};
    case CutNode::Kind::Cut:
      return {{"cut", node.upright ? "upright" : "level"},
              {"at", mm(node.at)},
              {"parts", {treeJson(node.parts[0]), treeJson(node.parts[1])}}};
  }
  return {};
}

Json layoutJson(const Layout& layout, const CardPlan& card) {
  Json pieces = Json::array();
  Json offcuts = Json::array();
  eachNode(layout.sheet, [&](const CutNode& node) {
    if (node.kind == CutNode::Kind::Blank) pieces.push_back(pieceJson(node, card));
  });
  for (const Offcut& offcut : offcutsOf(layout, Length::nanometres(20'000'000)))
    offcuts.push_back({{"w", mm(offcut.width)}, {"h", mm(offcut.height)}, {"count", offcut.count}});
  return {{"count", layout.count},
          {"stock", card.sheetOf(layout).name},
          {"sheet", {{"w", mm(layout.sheet.width)}, {"h", mm(layout.sheet.height)}}},
          {"pieces", std::move(pieces)},
          {"offcuts", std::move(offcuts)},
          {"cuts", treeJson(layout.sheet)}};
}

Json cardJson(const CardPlan& card) {
  Json layouts = Json::array();
  for (const Layout& layout : card.plan.layouts) layouts.push_back(layoutJson(layout, card));
  Json demands = Json::array();
  const std::vector<int> over = leftOver(card.plan, card.demands());
  for (std::size_t d = 0; d < card.demands().size(); ++d)
    demands.push_back({{"name", card.demands()[d].name},
                       {"w", mm(card.demands()[d].width)},
                       {"h", mm(card.demands()[d].height)},
                       {"quantity", card.demands()[d].quantity},
                       {"left_over", over[d]},
                       {"punch", punchJson(card.sources()[d].punch)}});
  Json fewest = nullptr;
  if (card.fewest) fewest = {{"sheets", card.fewest->sheets}, {"cost", card.fewest->cost}};
  Json json{{"card", card.card().name}, {"colour", cardColourText(card.card().colours)}};
  putColours(json, card.card().colours);
  json.update(Json{{"plan", planGoalText(card.goal())},
                   {"fewest", std::move(fewest)},
                   {"demands", std::move(demands)},
                   {"layouts", std::move(layouts)},
                   {"sheets", card.plan.sheets},
                   {"cost", card.plan.cost},
                   {"bound", card.plan.bound},
                   {"proven", card.plan.proven()}});
  return json;
}

Json rollJson(const TapeNeed& need) {
  return {{"width", mm(need.width)}, {"length", mm(need.length)}, {"strips", need.strips}};
}

Json ribbonJson(const TapeNeed& need) {
  return {{"width", mm(need.width)},
          {"length", mm(need.length)},
          {"pieces", need.strips},
          {"colour", need.colour ? Json(colourText(*need.colour)) : Json(nullptr)}};
}

Json priceJson(const KitPlan& plan) {
  const std::optional<CostSheet> costs = costSheetOf(plan);
  if (!costs) return nullptr;
  Json boxes = Json::array();
  for (const BoxPrice& box : costs->boxes)
    boxes.push_back({{"design", box.item},
                     {"minutes", box.minutes},
                     {"card", box.card},
                     {"tape_and_glue", box.sticky},
                     {"ribbon", box.ribbon},
                     {"work", box.work},
                     {"overhead", box.overhead},
                     {"cost", box.cost},
                     {"price", box.price}});
  Json breakEven = nullptr;
  if (costs->seat.breakEven) breakEven = *costs->seat.breakEven;
  return {{"currency", plan.kit().pricing->currency},
          {"complete", costs->complete},
          {"boxes", std::move(boxes)},
          {"seat",
           {{"material", costs->seat.material},
            {"share_of_class", costs->seat.share},
            {"price", costs->seat.price},
            {"break_even", std::move(breakEven)}}}};
}

}  // namespace

std::string kitJson(const KitPlan& plan) {
  const ClassKit& kit = plan.kit();
  Json cards = Json::array();
  for (const CardPlan& card : plan.cards) cards.push_back(cardJson(card));
  Json tapes = Json::array();
  for (const TapeNeed& tape : plan.built->tapes) tapes.push_back(rollJson(tape));
  Json ribbons = Json::array();
  for (const TapeNeed& ribbon : plan.built->ribbons) ribbons.push_back(ribbonJson(ribbon));
  Json foams = Json::array();
  for (const TapeNeed& foam : plan.built->foams)
    foams.push_back({{"thickness", mm(foam.width)}, {"dots", foam.strips}});
  Json more = nullptr;
  if (plan.findings && plan.findings->oneMore) {
    const OneMore& one = *plan.findings->oneMore;
    more = {{"sheets", one.sheets}, {"price", one.price}, {"proven", one.proven}};
  }
  Json trimmer = nullptr;
  if (kit.goal == PlanGoal::Easy) trimmer = mm(plan.trimmer.step());
  const Json json{{"format", "creasewright-kit-plan"},
                  {"version", 1},
                  {"units", "mm"},
                  {"title", kit.title},
                  {"takers", kit.takers},
                  {"spares", kit.spares},
                  {"plan", planGoalText(kit.goal)},
                  {"trimmer_mm", std::move(trimmer)},
                  {"sheets", plan.sheets},
                  {"proven", plan.proven},
                  {"one_more", std::move(more)},
                  {"cards", std::move(cards)},
                  {"tape", std::move(tapes)},
                  {"ribbon", std::move(ribbons)},
                  {"foam", std::move(foams)},
                  {"glue_places", plan.built->gluePlaces},
                  {"prices", priceJson(plan)}};
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace creasewright
