#pragma once

#include "cutting/cover.h"
#include "cutting/plan_cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// Of more columns than that, fewest layouts are not looked for.
inline constexpr std::size_t kMostColumnsToSimplify = 120;

/// Whole sheets or coins for a cost that arithmetic may have left a trace above a whole number.
std::int64_t roundedUp(double cost);

/// A plan in the making: what is asked for, the columns found so far, the best cover by them, and
/// what no plan can beat. Lengths of columns are whole units.
class PlanState {
 public:
  /// All three must outlive this.
  PlanState(const std::vector<CutSheet>& stockSheets, const std::vector<BlankDemand>& blanks,
            const PlanOptions& planOptions);
  PlanState(const PlanState&) = delete;
  PlanState& operator=(const PlanState&) = delete;

  [[nodiscard]] bool mayGoOn() const { return work.mayGoOn(); }
  /// Keeps worths from which a bound follows; those that say most stay.
  void keepProof(WorthProof proof, double cost);
  [[nodiscard]] std::int64_t costOf(std::size_t s) const { return priced ? stock[s].cost : 1; }
  /// Whether a blank fits a sheet, turned where it may be.
  [[nodiscard]] bool fits(std::size_t s, std::size_t d) const {
    return holds(stock[s], demands[d]);
  }
  /// The worth of each blank on a sheet: nothing where it does not fit.
  [[nodiscard]] std::vector<double> worthOn(std::size_t s, std::vector<double> worth) const;
  /// Of a sheet, in units.
  [[nodiscard]] std::int64_t widthOf(std::size_t s) const { return stock[s].width.nm() / unit; }
  [[nodiscard]] std::int64_t heightOf(std::size_t s) const { return stock[s].height.nm() / unit; }
  /// Whether only so many sheets of some stock are at hand.
  [[nodiscard]] bool limited() const;
  /// Whether the best plan costs no more than the bound.
  [[nodiscard]] bool proven() const { return best.found && best.cost <= bound; }

  /// The blanks as they may lie on a sheet.
  [[nodiscard]] std::vector<KnapsackItem> items(std::size_t s,
                                                const std::vector<int>& demand) const;
  [[nodiscard]] SheetKnapsack knapsack(std::size_t s, const std::vector<int>& demand,
                                       std::size_t mostWork);
  /// False when the column is there already.
  bool addColumn(std::size_t s, Pattern pattern);
  /// Takes a cover by all columns for the best where it costs less; columns that come later are not
  /// in it.
  void keep(const std::vector<int>& times);

  const std::vector<CutSheet>& stock;
  const std::vector<BlankDemand>& demands;
  const PlanOptions& options;
  bool priced = false;    ///< costs are prices, else sheets
  std::int64_t unit = 1;  ///< nanometres
  CoverRows rows;
  std::vector<CoverColumn> columns;
  std::int64_t bound = 0;
  WholeCover best;
  /// With each of these worths no sheet of a kind holds more than it says (cutting.h); the best
  /// bound's first.
  std::vector<WorthProof> proofs;
  std::vector<CountProof> tooFew;  ///< numbers of sheets for which there is no plan
  bool impossible = false;         ///< the sheets at hand cannot do
  bool listed = false;             ///< the columns are all patterns there are
  Work work;

 private:
  double bestProof_ = 0;
};

}  // namespace creasewright
