#include "kits/cut_card.h"

#include <algorithm>

#include "cutting/easy_plan.h"
#include "fit/card_pattern.h"
#include "kits/cut_sheet.h"

namespace creasewright {
namespace {

/// The sheets a card may be cut from, and which of the kit's they are. Where the grain counts, all
/// stand with it upright; each has its own grain and pattern.
struct CardStock {
  std::vector<CutSheet> sheets;
  std::vector<int> of;
};

bool isColoured(const StockSheet& sheet) { return sheet.colours != CardColours(); }

/// Whether a sheet's colour lets it serve a card: one without a colour does for any.
bool mayServe(const StockSheet& sheet, const Card& card) {
  return !isColoured(sheet) || (!card.colours.pattern && sheet.colours.face == card.colours.face &&
                                sheet.colours.behind() == card.colours.behind());
}

/// Those of the card where some are listed for it, else those of any card; of these the ones of its
/// colours where there are some, else those without a colour, or `both`.
CardStock stockFor(const ClassKit& kit, const Card& card, const std::vector<int>& atHand,
                   bool both) {
  const auto serves = [&](const StockSheet& sheet, const std::string& id) {
    return sheet.card == id && mayServe(sheet, card);
  };
  const bool listed = !card.id.empty() && std::ranges::any_of(kit.stock, [&](const auto& sheet) {
    return serves(sheet, card.id);
  });
  const std::string id = listed ? card.id : std::string();
  const bool coloured = std::ranges::any_of(
      kit.stock, [&](const auto& sheet) { return serves(sheet, id) && isColoured(sheet); });
  CardStock stock;
  for (std::size_t i = 0; i < kit.stock.size(); ++i) {
    const StockSheet& of = kit.stock[i];
    if (!serves(of, id) || (coloured && !both && !isColoured(of))) continue;
    CutSheet sheet = cutSheet(of);
    sheet.atHand = atHand[i];
    const bool longUpright = sheet.height >= sheet.width;
    if (kit.keepGrain && of.grain != Grain::Unknown && (of.grain == Grain::Long) != longUpright)
      std::swap(sheet.width, sheet.height);
    sheet.mayTurn = !kit.keepGrain && !of.pattern;
    stock.sheets.push_back(sheet);
    stock.of.push_back(static_cast<int>(i));
  }
  return stock;
}

Problem noneOfColour(const Card& card) {
  const std::string pattern = patternText(card.colours);
  return {ProblemCode::NoSheetOfColour,
          card.name,
          {pattern.empty() ? cardColourText(card.colours) : pattern}};
}

/// The problem with a card whose blanks only fit against the grain.
Problem grainProblem(const Problem& problem, CardStock stock, const CardPlan& card) {
  if (problem.code != ProblemCode::BlankTooLarge) return problem;
  for (CutSheet& sheet : stock.sheets) sheet.mayTurn = true;
  const bool turned = std::ranges::all_of(card.demands(), [&](const BlankDemand& demand) {
    return std::ranges::any_of(stock.sheets,
                               [&](const CutSheet& sheet) { return holds(sheet, demand); });
  });
  if (!turned) return problem;
  return {ProblemCode::GrainConflict, problem.where, {problem.values[0], problem.values[1]}};
}

}  // namespace

std::vector<int> atHandOf(const ClassKit& kit) {
  std::vector<int> atHand;
  for (const StockSheet& sheet : kit.stock) atHand.push_back(sheet.atHand);
  return atHand;
}

std::optional<Problem> cutCard(PlanOptions options, const std::vector<int>& atHand,
                               CardPlan& card) {
  const CardStock stock = stockFor(card.kit(), card.card(), atHand, card.anyColour);
  if (stock.of.empty() && std::ranges::any_of(card.kit().stock, isColoured))
    return noneOfColour(card.card());
  options.noExtras = options.noExtras || card.kit().noExtras;
  Result<CuttingPlan> cutting = planCutting(stock.sheets, card.demands(), options);
  if (!cutting) return grainProblem(cutting.problem(), stock, card);
  card.plan = std::move(cutting).value();
  for (Layout& layout : card.plan.layouts)
    layout.stock = stock.of[static_cast<std::size_t>(layout.stock)];
  return std::nullopt;
}

std::optional<Problem> cutAnyhow(const PlanOptions& options, const std::vector<int>& atHand,
                                 CardPlan& card) {
  std::optional<Problem> problem = cutCard(options, atHand, card);
  if (!problem || card.anyColour) return problem;
  const ClassKit& kit = card.kit();
  if (stockFor(kit, card.card(), atHand, true).of == stockFor(kit, card.card(), atHand, false).of)
    return problem;
  card.anyColour = true;
  return cutCard(options, atHand, card);
}

void cutEasily(const PlanOptions& options, const std::vector<int>& atHand, CardPlan& card) {
  const double most = options.fewestLayouts ? 0.4 : 0.15;  // seconds; less for a quick answer
  CuttingPlan fewest = card.plan;
  const CardStock stock = stockFor(card.kit(), card.card(), atHand, card.anyColour);
  for (Layout& layout : fewest.layouts)
    layout.stock = static_cast<int>(std::ranges::find(stock.of, layout.stock) - stock.of.begin());
  Work work(std::min(most, options.seconds) * Work::kSecond, [&] {
    return !options.goOn || options.goOn({fewest.cost, fewest.bound});
  });
  const EasyOptions easy{options.trimmer, options.noExtras || card.kit().noExtras, options.seconds};
  std::optional<CuttingPlan> plan = easyPlan(stock.sheets, card.demands(), fewest, easy, work);
  if (!plan) return;
  for (Layout& layout : plan->layouts)
    layout.stock = stock.of[static_cast<std::size_t>(layout.stock)];
  card.fewest = FewestSheets{fewest.sheets, fewest.cost};
  card.plan = *std::move(plan);
}

}  // namespace creasewright
