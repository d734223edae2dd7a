#pragma once

#include "cutting/cutting.h"
#include "extras/extra.h"
#include "kits/build_kit.h"

namespace creasewright {

/// What the plan of fewest sheets comes to, beside an easy one.
struct FewestSheets {
  int sheets = 0;
  std::int64_t cost = 0;
};

/// How everything of one card is cut.
struct CardPlan {
  std::shared_ptr<const BuiltKit> built;  ///< whose card it is; never null in a plan
  std::size_t index = 0;                  ///< of BuiltKit::cards
  CuttingPlan plan;                       ///< its layouts count ClassKit::stock
  /// Whether sheets without a colour help out those of its colours; without such, they always do.
  bool anyColour = false;
  std::optional<FewestSheets> fewest = {};  ///< where `plan` is an easy one
  /// The plan's layouts as they are cut at a trimmer that is read in inches (trimmer_grid.h).
  std::vector<Layout> inchLayouts = {};

  /// What the plan was made for.
  [[nodiscard]] PlanGoal goal() const { return fewest ? PlanGoal::Easy : PlanGoal::Fewest; }
  [[nodiscard]] const ClassKit& kit() const { return built->kit; }
  [[nodiscard]] const CardBlanks& blanks() const { return built->cards[index]; }
  [[nodiscard]] const Card& card() const { return blanks().card; }
  [[nodiscard]] const std::vector<BlankDemand>& demands() const { return blanks().demands; }
  [[nodiscard]] const std::vector<BlankSource>& sources() const { return blanks().sources; }
  [[nodiscard]] int firstLetter() const { return blanks().firstLetter; }
  /// The plan's layouts as a trimmer of that unit is set.
  [[nodiscard]] const std::vector<Layout>& layoutsIn(Unit unit) const {
    return unit == Unit::Inch ? inchLayouts : plan.layouts;
  }
  /// The sheet a layout is cut from.
  [[nodiscard]] const StockSheet& sheetOf(const Layout& layout) const {
    return built->kit.stock[static_cast<std::size_t>(layout.stock)];
  }
};

/// What one more set would take beyond a plan.
struct OneMore {
  int sheets = 0;
  std::int64_t price = 0;  ///< smallest coin; 0 where sheets have no prices
  bool proven = false;     ///< less cannot do; else at most so much
};

/// Something that all sets could have from what is left over.
struct OffcutUse {
  int card = 0;    ///< of KitPlan::cards: whose offcuts
  int item = 0;    ///< of ClassKit::items: what it goes onto
  Extra extra;     ///< mats or a label, of the offcuts' card
  int blanks = 0;  ///< in all
};

/// What is found out about a plan besides.
struct KitFindings {
  std::optional<OneMore> oneMore = {};
  std::vector<OffcutUse> offcuts = {};  ///< what they could give
};

/// A class and how its sheets are cut: all that is shown, printed and saved comes from this. Copies
/// share what is built.
struct KitPlan {
  std::shared_ptr<const BuiltKit> built;  ///< never null
  std::vector<CardPlan> cards;            ///< by BuiltKit::cards
  int sheets = 0;
  bool proven = true;
  ToolGrid trimmer = {};                ///< for which an easy plan is made
  std::optional<KitFindings> findings;  ///< once they are looked for

  [[nodiscard]] const ClassKit& kit() const { return built->kit; }
  /// Sheets, or their prices where cards are planned by price.
  [[nodiscard]] std::int64_t cost() const;
  /// Whether any card is cut by an easy plan. For a class that wants one, a card is cut by the plan
  /// of fewest sheets only where the sheets at hand do for no other.
  [[nodiscard]] bool isEasy() const;
  /// What the plan of fewest sheets comes to, of all cards.
  [[nodiscard]] FewestSheets fewest() const;
  /// Whether no plan of fewer sheets, or a lower price, can be looked for: that of fewest is
  /// proven.
  [[nodiscard]] bool fewestProven() const;
};

}  // namespace creasewright
