#include "styles/partition_insert.h"

#include "styles/parameter_rows.h"
#include "styles/parts/dividers.h"

namespace creasewright {
namespace {

std::vector<Piece> buildInsert(const Parameters& p, const Workbench& bench) {
  const double t = bench.caliper.mm();
  return slottedDividers(
      {static_cast<int>(p.count("columns")), p.mm("cell-length"), p.mm("height"), t},
      {static_cast<int>(p.count("rows")), p.mm("cell-width"), p.mm("height"), t});
}

/// One product a cell. Dividers three quarters as high as the product hold it.
std::vector<Need> insertNeeds(const Room& room, const Parameters&, const Workbench& bench) {
  const Length t = bench.caliper;
  return {{"cell-length", Axis::Length, room.eased(Axis::Length) + t},
          {"cell-width", Axis::Width, room.eased(Axis::Width) + t},
          {"height", Axis::Height, room.product[2] * 3 / 4 + Length::nanometres(1)}};
}

ParameterSpec cellParameter(std::string_view key, Worded title) {
  return measure(key, title,
                 worded("styles", "From the middle of one divider to the middle of the next."))
      .standard(mm(35))
      .from(mm(10))
      .to(mm(300));
}

}  // namespace

Style partitionInsert() {
  return {
      .id = "partition-insert",
      .title = worded("styles", "Partition insert"),
      .summary =
          worded("styles", "Slotted dividers that part a box into cells, one product in each."),
      .traits = {.showsProduct = true,
                 .suitsRound = true,
                 .difficulty = 1,
                 .suits = worded("styles", "Small jars, bottles, baubles, truffles, cupcakes.")},
      .words = {.panels = {{"divider", worded("panels", "divider")}},
                .pieces = {{"long-divider", worded("pieces", "long divider")},
                           {"short-divider", worded("pieces", "short divider")}}},
      .parameters = withCellCounts(
          {cellParameter("cell-length", worded("styles", "Cell length")),
           cellParameter("cell-width", worded("styles", "Cell width")),
           measure("height", worded("styles", "Height"), worded("styles", "Of the dividers."))
               .standard(mm(40))
               .from(mm(10))
               .to(mm(500))}),
      .easeOn = {true, true, false},
      .needs = insertNeeds,
      .build = buildInsert,
  };
}

}  // namespace creasewright
