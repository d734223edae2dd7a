#pragma once

#include "cutting/plan_cutting.h"
#include "guide/guide.h"
#include "kits/class_kit.h"

namespace creasewright {

/// Which piece of which design a demand stands for.
struct BlankSource {
  int item = 0;       ///< index into ClassKit::items; -1 = a plain blank
  std::string piece;  ///< of the item; empty for a plain blank
  int perSet = 1;     ///< blanks in one person's bag
  bool alone = true;  ///< the only piece of its design, so the design's title names it
};

/// Everything cut from one card.
struct CardPlan {
  Card card;
  std::vector<BlankDemand> demands;
  std::vector<BlankSource> sources;  ///< by demand
  CuttingPlan plan;
  int firstLetter = 0;  ///< demands of all cards together are lettered on: A, B, C ...
};

/// Tape or ribbon of one width for the whole class.
struct TapeNeed {
  Length width;
  Length length;
  int strips = 0;
};

struct KitPlan {
  std::vector<CardPlan> cards;
  std::vector<TapeNeed> tapes;    ///< by width
  std::vector<TapeNeed> ribbons;  ///< by width
  std::vector<int> minutes;       ///< of one taker, by item; 0 where only a piece is cut
  int gluePlaces = 0;
  int sheets = 0;
  bool proven = true;
  /// Sheets, or their prices where cards are planned by price.
  [[nodiscard]] std::int64_t cost() const;
};

/// Builds every design and plans the sheets of each card for all sets, from the stock of that card
/// or of any. On a sheet whose grain counts or whose pattern has a direction, blanks are not turned
/// against it. All cards together take at most four times the work of
/// `options.seconds`. Errors:
/// TakersWrong, NamesTooMany, NoDemand, GrainConflict, PieceUnknown, and those of build() and
/// planCutting().
Result<KitPlan> planKit(const ClassKit& kit, const PlanOptions& options = {});

/// What one more set would take beyond `plan`.
struct OneMore {
  int sheets = 0;
  std::int64_t price = 0;  ///< smallest coin; 0 where sheets have no prices
  bool proven = false;     ///< less cannot do; else at most so much
};
/// Plans one more set, anew and as a set of its own beside the plan at hand, and takes the better:
/// never more than one set costs alone. Nothing when it cannot be planned.
std::optional<OneMore> oneMoreFor(const ClassKit& kit, const KitPlan& plan);

/// The plan for other programs: per card its layouts (`count`, `stock`, `pieces` with x, y, w, h,
/// turned and design, `cuts` as a tree), `bound`, `proven`, supplies, and what one more takes.
/// Lengths in mm.
std::string kitJson(const ClassKit& kit, const KitPlan& plan,
                    const std::optional<OneMore>& oneMore = {});

}  // namespace creasewright
