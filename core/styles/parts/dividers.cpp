#include "styles/parts/dividers.h"

#include <iterator>
#include <string>
#include <utility>

#include "net/net_builder.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

/// A slot is as wide as the card and 0.1 mm (card to card and 0.2 mm: common practice, no published
/// source); each goes a little beyond half the height, so that the edges come level.
constexpr double kSlotEase = 0.1;
constexpr double kBeyondHalf = 0.25;

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

}  // namespace

std::vector<ParameterSpec> withCellCounts(std::vector<ParameterSpec> others) {
  std::vector<ParameterSpec> all{
      number("columns", worded("styles", "Columns"), worded("styles", "Cells along the length."))
          .standard(3)
          .from(2)
          .to(8),
      number("rows", worded("styles", "Rows"), worded("styles", "Cells along the width."))
          .standard(2)
          .from(2)
          .to(8)};
  std::ranges::move(others, std::back_inserter(all));
  return all;
}

Divider dividerOf(double length, int cells, double height, double caliper) {
  return {cells, (length + caliper + kInsertEase) / cells, height, caliper};
}

std::vector<Piece> slottedDividers(const Divider& along, const Divider& across) {
  const double t = along.caliper;
  Piece longDivider = dividerPiece(along, true, "long-divider", across.cells - 1);
  // The first cell, between the wall, this divider, the first one across and the next wall.
  Cavity cell{"divider", {along.pitch / 2, along.height / 2, across.pitch / 2}, {0, 2, 1}};
  cell.low.x = -kInsertEase / 2;
  cell.high.x = along.slot(1) - t / 2;
  cell.low.y = 0;
  cell.high.y = along.height * 4 / 3;
  cell.high.z = across.pitch - t / 2;
  longDivider.cavity = cell;
  Piece shortDivider = dividerPiece(across, false, "short-divider", along.cells - 1);
  shortDivider.held = Holding{Hold::Slot, longDivider.name};
  shortDivider.held->place =
      Transform::frame({along.slot(1), 0, -across.slot(1)}, {0, 0, 1}, {0, 1, 0});
  return {std::move(longDivider), std::move(shortDivider)};
}

}  // namespace creasewright
