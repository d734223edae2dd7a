#include "styles/partition_insert.h"

#include <string>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

/// An insert is 1 mm smaller than the inside of its box (common practice, no published source).
constexpr double kInsertEase = 1;
/// A slot is as wide as the card and 0.1 mm (card to card and 0.2 mm: common practice, no published
/// source); each goes a little beyond half the height, so that the edges come level.
constexpr double kSlotEase = 0.1;
constexpr double kBeyondHalf = 0.25;

/// Dividers that slot into one another; mm. Cells are measured from the middle of one divider to
/// the middle of the next, those at the walls from where the next divider would be.
struct Divider {
  int cells;
  double pitch, height, caliper;

  [[nodiscard]] double length() const { return cells * pitch - caliper - kInsertEase; }
  /// The middle of the k-th slot.
  [[nodiscard]] double slot(int k) const { return k * pitch - (caliper + kInsertEase) / 2; }
};

Shape dividerPanel(const Divider& d, bool slotsAbove) {
  const double half = (d.caliper + kSlotEase) / 2;
  const double depth = d.height / 2 + kBeyondHalf;
  Shape shape;
  const auto corner = [&](double x, double y, std::string edge) {
    shape.outline.push_back({x, y});
    shape.edges.push_back(std::move(edge));
  };
  const auto notch = [&](double from, double to, double edge, double end, const char* after) {
    corner(from, edge, "slot");
    corner(from, end, "slot");
    corner(to, end, "slot");
    corner(to, edge, after);
  };
  corner(0, 0, "bottom");
  if (!slotsAbove)
    for (int k = 1; k < d.cells; ++k) notch(d.slot(k) - half, d.slot(k) + half, 0, depth, "bottom");
  corner(d.length(), 0, "right");
  corner(d.length(), d.height, "top");
  if (slotsAbove)
    for (int k = d.cells - 1; k >= 1; --k)
      notch(d.slot(k) + half, d.slot(k) - half, d.height, d.height - depth, "top");
  corner(0, d.height, "left");
  return shape;
}

Piece dividerPiece(const Divider& d, bool slotsAbove, const std::string& name, int count) {
  NetBuilder net({});
  net.root("divider", dividerPanel(d, slotsAbove)).showing({"divider"});
  Piece piece{name, net.take(), std::nullopt};
  piece.count = count;
  return piece;
}

std::vector<Piece> buildInsert(const Parameters& p, const Workbench& bench) {
  const double t = bench.caliper.mm();
  const auto columns = static_cast<int>(p.count("columns"));
  const auto rows = static_cast<int>(p.count("rows"));
  const Divider along{columns, p.mm("cell-length"), p.mm("height"), t};
  const Divider across{rows, p.mm("cell-width"), p.mm("height"), t};
  Piece longDivider = dividerPiece(along, true, "long-divider", rows - 1);
  // The first cell, between the wall, this divider, the first one across and the next wall.
  Cavity cell{"divider", {along.pitch / 2, along.height / 2, across.pitch / 2}, {0, 2, 1}};
  cell.low.x = -kInsertEase / 2;
  cell.high.x = along.slot(1) - t / 2;
  cell.low.y = 0;
  cell.high.y = along.height * 4 / 3;
  cell.high.z = across.pitch - t / 2;
  longDivider.cavity = cell;
  Piece shortDivider = dividerPiece(across, false, "short-divider", columns - 1);
  shortDivider.held = Holding{Hold::Slot, longDivider.name};
  shortDivider.held->place =
      Transform::frame({along.slot(1), 0, -across.slot(1)}, {0, 0, 1}, {0, 1, 0});
  return {std::move(longDivider), std::move(shortDivider)};
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
      .parameters = {number("columns", worded("styles", "Columns"),
                            worded("styles", "Cells along the length."))
                         .standard(3)
                         .from(2)
                         .to(8),
                     number("rows", worded("styles", "Rows"),
                            worded("styles", "Cells along the width."))
                         .standard(2)
                         .from(2)
                         .to(8),
                     cellParameter("cell-length", worded("styles", "Cell length")),
                     cellParameter("cell-width", worded("styles", "Cell width")),
                     measure("height", worded("styles", "Height"),
                             worded("styles", "Of the dividers."))
                         .standard(mm(40))
                         .from(mm(10))
                         .to(mm(500))},
      .easeOn = {true, true, false},
      .needs = insertNeeds,
      .build = buildInsert,
  };
}

}  // namespace creasewright
