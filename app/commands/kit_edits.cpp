#include "commands/kit_edits.h"

#include <QCoreApplication>

#include "commands/value_change.h"

namespace creasewright {

namespace {

struct KitSay {
  Q_DECLARE_TR_FUNCTIONS(edits)
};

void push(KitSession& session, ClassKit kit, const QString& words, const QString& field = {}) {
  pushChange(session, session.kit(), std::move(kit), words, field);
}

/// The kit with one change made by `edit`.
template <class Edit>
ClassKit with(const KitSession& session, const Edit& edit) {
  ClassKit kit = session.kit();
  edit(kit);
  return kit;
}

bool isDesign(const ClassKit& kit, int row) { return row < static_cast<int>(kit.items.size()); }

KitItem& itemAt(ClassKit& kit, int row) { return kit.items.at(static_cast<std::size_t>(row)); }

std::size_t blankAt(const ClassKit& kit, int row) {
  return static_cast<std::size_t>(row) - kit.items.size();
}

}  // namespace

void changeKit(KitSession& session, ClassKit kit) {
  push(session, std::move(kit), KitSay::tr("another kit"));
}

void changeKitTitle(KitSession& session, const QString& title) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.title = title.toStdString(); }),
       KitSay::tr("title"));
}

void changeTakers(KitSession& session, int takers) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.takers = takers; }),
       KitSay::tr("people"), QStringLiteral("takers"));
}

void changeSpares(KitSession& session, int spares) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.spares = spares; }),
       KitSay::tr("spare sets"), QStringLiteral("spares"));
}

void changeKeepGrain(KitSession& session, bool keepGrain) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.keepGrain = keepGrain; }),
       KitSay::tr("grain"));
}

void changeNoExtras(KitSession& session, bool noExtras) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.noExtras = noExtras; }),
       KitSay::tr("extra blanks"));
}

void changeGoal(KitSession& session, PlanGoal goal) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.goal = goal; }),
       KitSay::tr("plan"));
}

void changeSheets(KitSession& session, std::vector<StockSheet> sheets) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.stock = std::move(sheets); }),
       KitSay::tr("sheets"));
}

void changeStock(KitSession& session, std::vector<StockSheet> sheets,
                 std::vector<SupplyItem> supplies) {
  push(session,
       with(
           session,
           [&](ClassKit& kit) {
             kit.stock = std::move(sheets);
             kit.supplies = std::move(supplies);
           }),
       KitSay::tr("stock and supplies"));
}

void changePricing(KitSession& session, std::optional<Pricing> pricing) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.pricing = std::move(pricing); }),
       KitSay::tr("prices"));
}

void changeNames(KitSession& session, BagLabels labels) {
  push(session,
       with(
           session,
           [&](ClassKit& kit) {
             kit.names = std::move(labels.names);
             kit.labelWidth = labels.width;
             kit.labelHeight = labels.height;
           }),
       KitSay::tr("names and labels"));
}

void addKitItem(KitSession& session, KitItem item) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.items.push_back(std::move(item)); }),
       KitSay::tr("add a design"));
}

void addKitBlank(KitSession& session, PlainBlank blank) {
  push(session,
       with(
           session, [&](ClassKit& kit) { kit.blanks.push_back(std::move(blank)); }),
       KitSay::tr("add a plain blank"));
}

void removeKitRow(KitSession& session, int row) {
  push(
      session,
      with(
          session,
          [&](ClassKit& kit) {
            if (isDesign(kit, row))
              kit.items.erase(kit.items.begin() + row);
            else
              kit.blanks.erase(kit.blanks.begin() + static_cast<std::ptrdiff_t>(blankAt(kit, row)));
          }),
      KitSay::tr("remove a row"));
}

void changePerPerson(KitSession& session, int row, int perPerson) {
  push(session,
       with(
           session,
           [&](ClassKit& kit) {
             (isDesign(kit, row) ? itemAt(kit, row).perPerson
                                 : kit.blanks.at(blankAt(kit, row)).perPerson) = perPerson;
           }),
       KitSay::tr("how many each gets"), QStringLiteral("count %1").arg(row));
}

void changePiece(KitSession& session, int row, const std::string& piece) {
  push(session,
       with(
           session, [&](ClassKit& kit) { itemAt(kit, row).piece = piece; }),
       KitSay::tr("what is cut"));
}

void addOffcutUses(KitSession& session, const std::vector<OffcutUse>& uses) {
  push(session,
       with(
           session,
           [&](ClassKit& kit) {
             for (const OffcutUse& use : uses)
               itemAt(kit, use.item).design.extras.push_back(use.extra);
           }),
       KitSay::tr("offcuts"));
}

}  // namespace creasewright
