#include <algorithm>
#include <tuple>

#include "extras/flat_piece.h"
#include "extras/inside_room.h"
#include "extras/kinds.h"
#include "styles/parameter_rows.h"
#include "styles/parts/dividers.h"

namespace creasewright {
namespace {

constexpr double kLeastCell = 8;  // mm: narrower ones are not worth cutting

/// A divider as long as the box is inside, less the clearance, on the grid.
Divider dividerIn(double room, int cells, double height, const Workbench& bench) {
  const Length length = onGridBelow(room - kClearInside, bench.grid);
  return dividerOf(length.mm(), cells, height, bench.caliper.mm());
}

/// Between the faces of two dividers; a cell at a wall is no narrower.
double clearOf(const Divider& divider) { return divider.pitch - divider.caliper; }

/// The middles of its cells from the middle of the box.
std::vector<double> middlesOf(const Divider& divider) {
  std::vector<double> middles;
  for (int k = 0; k < divider.cells; ++k)
    middles.push_back(divider.slot(k) + divider.pitch / 2 - divider.length() / 2);
  return middles;
}

/// How high the product stands in the room; boxes may lay it on another side.
Length heightIn(const CavitySize& inside, const Product& product) {
  if (product.height.mm() <= inside.height) return product.height;
  Length most;
  for (const Length side : {product.length, product.width, product.height})
    if (side.mm() <= inside.height) most = std::max(most, side);
  return most > Length() ? most : product.height;
}

enum class ItemForm { Block, Cylinder, Ball };

ItemForm formOf(const Extra& extra, const Product& product) {
  const std::int64_t chosen = extra.parameters.count("piece-form");
  if (chosen > 0) return static_cast<ItemForm>(chosen - 1);
  if (product.shape == ProductShape::Sphere) return ItemForm::Ball;
  return product.shape == ProductShape::Cylinder ? ItemForm::Cylinder : ItemForm::Block;
}

/// One piece of the product in each cell: of the size that was chosen, or as large as its cell with
/// the clearance, and no higher than the product.
Result<Product> itemIn(const Extra& extra, const Product& product, double length, double width) {
  const Length chosen = extra.parameters.length("piece-size");
  const double smaller = std::min(length, width);
  if (chosen.mm() > smaller)
    return Problem{
        ProblemCode::ExtraTooLarge, extra.kind, {chosen, Length::mm(std::max(0.0, smaller))}};
  const Length round = chosen > Length() ? chosen : Length::mm(smaller - kClearInside);
  Product item = product;
  switch (formOf(extra, product)) {
    case ItemForm::Block:
      item.shape = ProductShape::Box;
      item.length = chosen > Length() ? chosen : Length::mm(length - kClearInside);
      item.width = chosen > Length() ? chosen : Length::mm(width - kClearInside);
      break;
    case ItemForm::Cylinder:
      item.shape = ProductShape::Cylinder;
      item.length = item.width = round;
      break;
    case ItemForm::Ball:
      item.shape = ProductShape::Sphere;
      item.length = chosen > Length() ? chosen : std::min(round, product.height);
      item.width = item.height = item.length;
      break;
  }
  return item;
}

Result<ExtraParts> buildPartition(const Extra& extra, const Host& host) {
  const std::optional<CavitySize> inside = insideOf(host);
  if (!inside) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const Workbench bench = host.benchOf(extra);
  Length height = extra.parameters.length("height");
  if (height.mm() > inside->height)
    return Problem{
        ProblemCode::ExtraTooLarge, extra.kind, {height, onGridBelow(inside->height, bench.grid)}};
  if (height == Length()) {
    const double whole = host.product ? heightIn(*inside, *host.product).mm() : inside->height;
    height = onGridBelow(std::min(whole * 3 / 4, inside->height), bench.grid);
  }
  const Divider along = dividerIn(
      inside->length, static_cast<int>(extra.parameters.count("columns")), height.mm(), bench);
  const Divider across = dividerIn(inside->width, static_cast<int>(extra.parameters.count("rows")),
                                   height.mm(), bench);
  for (const auto& [divider, room, side] :
       {std::tuple{&along, inside->length, "length"}, std::tuple{&across, inside->width, "width"}})
    if (clearOf(*divider) < kLeastCell)
      return Problem{
          ProblemCode::ExtraInsideSmall,
          extra.kind,
          {Length::mm(room), Length::mm(room + divider->cells * (kLeastCell - clearOf(*divider))),
           std::string(side)}};
  if (height < mm(5)) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  ExtraParts parts;
  for (Piece& piece : slottedDividers(along, across))
    parts.pieces.push_back({std::move(piece), Placing::Inside});
  if (!host.product) return parts;
  Product product = *host.product;
  product.height = heightIn(*inside, product);
  const Result<Product> item = itemIn(extra, product, clearOf(along), clearOf(across));
  if (!item) return item.problem();
  ProductCells cells{*item, {}};
  for (const double y : middlesOf(across))
    for (const double x : middlesOf(along)) cells.middles.push_back({x, y});
  parts.cells = std::move(cells);
  return parts;
}

}  // namespace

ExtraKind partitionExtra() {
  return {.id = "partition",
          .title = worded("styles", "Partition"),
          .summary = worded(
              "styles", "Slotted dividers that part the box, a piece of the product in each cell."),
          .act = ExtraAct::SetPartitionIn,
          .parameters = withCellCounts(
              {measure("height", worded("styles", "Height"),
                       worded("styles", "Of the dividers; 0 takes three quarters of the product."))
                   .from(Length())
                   .to(mm(500)),
               choice("piece-form", worded("styles", "Pieces"),
                      worded("styles", "Of the product, one in each cell."),
                      {worded("styles", "As the product"), worded("styles", "Blocks"),
                       worded("styles", "Cylinders"), worded("styles", "Balls")}),
               measure("piece-size", worded("styles", "Size of a piece"),
                       worded("styles", "Across; 0 fills its cell."))
                   .from(Length())
                   .to(mm(300))}),
          .build = buildPartition};
}

}  // namespace creasewright
