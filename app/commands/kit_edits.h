#pragma once

#include <QString>

#include "kits/kit_plan.h"
#include "session/kit_session.h"

namespace creasewright {

// Every change a person can make to a class kit, each as one undo step.

/// Another kit in its place.
void changeKit(KitSession& session, ClassKit kit);
void changeKitTitle(KitSession& session, const QString& title);
void changeTakers(KitSession& session, int takers);
void changeSpares(KitSession& session, int spares);
void changeKeepGrain(KitSession& session, bool keepGrain);
void changeNoExtras(KitSession& session, bool noExtras);
void changeGoal(KitSession& session, PlanGoal goal);
void changeSheets(KitSession& session, std::vector<StockSheet> sheets);
/// Sheets and supplies together, when the person's lists have changed.
void changeStock(KitSession& session, std::vector<StockSheet> sheets,
                 std::vector<SupplyItem> supplies);

void changePricing(KitSession& session, std::optional<Pricing> pricing);

/// The takers' names, and the size of the labels they are printed on.
struct BagLabels {
  std::vector<std::string> names;
  Length width;
  Length height;
};
void changeNames(KitSession& session, BagLabels labels);

// Rows count the kit's designs first, then its plain blanks.

void addKitItem(KitSession& session, KitItem item);
void addKitBlank(KitSession& session, PlainBlank blank);
void removeKitRow(KitSession& session, int row);
void changePerPerson(KitSession& session, int row, int perPerson);
/// Which piece of a design is cut; empty = the whole design.
void changePiece(KitSession& session, int row, const std::string& piece);
/// Extras for the kit's copies of the designs, out of offcuts.
void addOffcutUses(KitSession& session, const std::vector<OffcutUse>& uses);

}  // namespace creasewright
