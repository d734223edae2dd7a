#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "document/design.h"
#include "kits/pricing.h"
#include "patterns/pattern.h"
#include "stock/stock_list.h"

namespace creasewright {

inline constexpr int kKitVersion = 7;
inline constexpr int kMostTakers = 500;
inline constexpr int kMostPerPerson = 1000;
inline constexpr Length kSmallestLabel = Length::nanometres(20'000'000);  // a side
inline constexpr Length kLargestLabel = Length::nanometres(2'000'000'000);

/// Whether a card is printed with a pattern that forbids a quarter turn.
inline bool hasWay(const Card& card) {
  return card.colours.pattern && !mayTurnByQuarter(*card.colours.pattern);
}

/// Whether two cards may be cut from one sheet: colours are cards of their own. Those without an id
/// are told apart by their names and weights.
inline bool sameCard(const Card& a, const Card& b) {
  return a.id == b.id && a.caliper == b.caliper && a.colours == b.colours &&
         (!a.id.empty() || (a.name == b.name && a.grammage == b.grammage));
}

/// What the sheets of a class are planned for.
enum class PlanGoal {
  Fewest,  ///< fewest sheets, or least price
  Easy     ///< easy to cut (cutting/easy_plan.h)
};
inline constexpr PlanGoal kClassGoal = PlanGoal::Easy;  ///< of a class that is begun
/// `fewest` or `easy`, as files and the command line name them.
std::string_view planGoalText(PlanGoal goal);
std::optional<PlanGoal> findPlanGoal(std::string_view text);

/// A design that everybody makes, or one piece of it that is only cut.
struct KitItem {
  Design design;
  int perPerson = 1;
  std::string piece = {};  ///< its name; empty = the whole design and what goes with it

  /// Whether a piece of the design is cut.
  [[nodiscard]] bool cuts(std::string_view name) const { return piece.empty() || piece == name; }
  bool operator==(const KitItem&) const = default;
};

/// A rectangle without scores that goes into every bag: a strip, a panel of paper, a greeting card.
struct PlainBlank {
  std::string name;
  Length width;
  Length height;
  Card card;
  int perPerson = 1;
  bool operator==(const PlainBlank&) const = default;
};

/// What a class makes and what there is to cut it from: the content of a `.cwkit` file.
struct ClassKit {
  std::string title;
  int takers = 12;
  int spares = 0;          ///< sets more than takers
  bool keepGrain = false;  ///< every blank upright along the grain of its sheet
  bool noExtras = false;   ///< no blank is cut that nobody needs: the last sheets in part only
  PlanGoal goal = PlanGoal::Fewest;
  std::vector<StockSheet> stock;
  std::vector<SupplyItem> supplies;
  std::vector<KitItem> items;
  std::vector<PlainBlank> blanks;
  std::vector<std::string> names;                      ///< of the takers, for the bags
  Length labelWidth = Length::nanometres(90'000'000);  ///< of the bags' labels
  Length labelHeight = Length::nanometres(50'000'000);

  std::optional<Pricing> pricing = {};  ///< nothing where no prices are asked for

  [[nodiscard]] int sets() const { return takers + spares; }
  bool operator==(const ClassKit&) const = default;
};

/// Whether a class measures in inches: as its first design does, or, of blanks alone, as its first
/// sheet is sold.
bool measuresInInches(const ClassKit& kit);
/// The marks of the trimmer that a class cuts at: every 1/16 in, or every millimetre.
ToolGrid trimmerOf(const ClassKit& kit);

/// UTF-8 JSON; designs stand in it whole, lengths as exact texts.
std::string writeKit(const ClassKit& kit);

/// What writeKit makes, if readKit takes it back. `where` names the file in problems. Errors:
/// FileTooLarge and those of fileLimitProblem.
Result<std::string> kitFileText(const ClassKit& kit, std::string_view where);

/// What no kit file holds (base/file_limits.h). Errors: TooMany, TextTooLong, RollTooLong,
/// TakersWrong.
std::optional<Problem> fileLimitProblem(const ClassKit& kit);

/// Reads what writeKit wrote. `where` names the file in problems. Errors: FileTooLarge, NotAKit,
/// NewerVersion, FieldMissing, FieldUnreadable, those of fileLimitProblem and what readDesign
/// tells, its place before the field: `items/3/design/card/caliper`.
Result<ClassKit> readKit(std::string_view text, std::string_view where);
Result<ClassKit> readKitFile(const std::string& path);

}  // namespace creasewright
