#include "pages/product_in_box.h"

#include <array>
#include <cmath>

#include "fit/fit.h"
#include "folding/surfaces/upright.h"
#include "guide/putting_in.h"

namespace creasewright {
namespace {

Solid solidOf(const Product& product, int zones = kGlobeZones) {
  const double length = product.length.mm();
  const double width = product.width.mm();
  const double height = product.height.mm();
  switch (product.shape) {
    case ProductShape::Box:
    case ProductShape::Card:
      return boxSolid(length, width, height);
    case ProductShape::Cylinder:
      return cylinderSolid(length, height);
    case ProductShape::Sphere:
      return sphereSolid(length, zones);
    case ProductShape::Tube:
      return tubeSolid(length, width, height);
  }
  return {};
}

/// The product's axes turned to those of the room it lies in; on the plane z = 0 as before.
Solid laid(Solid solid, const std::array<Axis, 3>& order, const Product& product,
           double lyingHeight) {
  const bool mirrored = order != std::array{Axis::Length, Axis::Width, Axis::Height} &&
                        order != std::array{Axis::Width, Axis::Height, Axis::Length} &&
                        order != std::array{Axis::Height, Axis::Length, Axis::Width};
  for (auto& face : solid.faces)
    for (Point3& corner : face) {
      const std::array<double, 3> own{corner.x, corner.y, corner.z - product.height.mm() / 2};
      const auto along = [&](std::size_t axis) {
        return own.at(static_cast<std::size_t>(order.at(axis)));
      };
      // The other way along one axis, or the solid would be turned inside out.
      corner = {mirrored ? -along(0) : along(0), along(1), along(2) + lyingHeight / 2};
    }
  return solid;
}

/// A frame at the foot of a round product with z along it.
Transform standing(const RoundRoom& room) {
  const Point3 z = unit(room.along);
  const Point3 other = std::abs(z.x) < 0.9 ? Point3{1, 0, 0} : Point3{0, 1, 0};
  const Point3 x = unit(cross(other, z));
  return Transform::frame(room.foot, x, cross(z, x));
}

/// In the frame of the cavity's panel.
Solid restingIn(const BuiltDesign& built, const BuiltPiece& piece, int panel) {
  const Product& product = *built.design.product;
  Solid upright = solidOf(product);
  upright.colour = product.colour;
  if (piece.roundRoom) return placed(upright, standing(*piece.roundRoom));
  const Room room = roomFor(product, *built.style, built.design.ease);
  const CavitySize size{room.product[0].mm(), room.product[1].mm(), room.product[2].mm()};
  const Solid lying = laid(upright, lyingOf(product, *built.style), product, size.height);
  const Transform& frame = piece.folded[static_cast<std::size_t>(panel)];
  return placed(lying,
                frame.inverse().after(restingPlace(piece.net, piece.folded, *piece.cavity,
                                                   piece.cavityBox, size, uprightOf(piece))));
}

/// Its pieces, one in each cell, in the frame of the cavity's panel.
std::vector<Solid> restingInCells(const BuiltDesign& built, const BuiltPiece& piece, int panel) {
  const Product& item = built.cells->item;
  const CavitySize size{item.length.mm(), item.width.mm(), item.height.mm()};
  const Transform& frame = piece.folded[static_cast<std::size_t>(panel)];
  const Transform floor = frame.inverse().after(restingPlace(
      piece.net, piece.folded, *piece.cavity, piece.cavityBox, size, uprightOf(piece)));
  constexpr int kZones = 10;  // of a small one among several, which a frame has to paint in time
  Solid one = solidOf(item, kZones);
  one.colour = item.colour;
  std::vector<Solid> solids;
  for (const Point& middle : built.cells->middles)
    solids.push_back(placed(one, floor.after(Transform::translation({middle.x, middle.y, 0}))));
  return solids;
}

/// In a piece from a progress of its fold on.
ProductInBox lyingIn(const BuiltDesign& built, int index, double from) {
  const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(index)];
  ProductInBox out;
  out.piece = index;
  out.from = from;
  out.panel = *piece.net.find(piece.cavity->panel);
  if (built.cells)
    out.at = restingInCells(built, piece, out.panel);
  else
    out.at.push_back(restingIn(built, piece, out.panel));
  return out;
}

}  // namespace

std::optional<ProductInBox> productInBox(const BuiltDesign& built) {
  if (!built.design.product) return std::nullopt;
  const auto holder = productHolder(built);
  if (!holder) return std::nullopt;
  const int stages = built.pieces[static_cast<std::size_t>(holder->piece)].net.stageCount();
  return lyingIn(built, holder->piece,
                 stages == 0 ? 1 : static_cast<double>(holder->putting.after) / stages);
}

std::optional<ProductInBox> productInFinished(const BuiltDesign& built) {
  const std::optional<int> piece = built.design.product ? productPiece(built) : std::nullopt;
  if (!piece) return std::nullopt;
  return lyingIn(built, *piece, 1);
}

std::vector<Solid> productAt(const std::optional<ProductInBox>& product, int piece,
                             const Pose& pose, double progress) {
  constexpr double kSame = 1e-9;
  std::vector<Solid> solids;
  if (!product || product->piece != piece || progress < product->from - kSame) return solids;
  for (const Solid& solid : product->at)
    solids.push_back(placed(solid, pose[static_cast<std::size_t>(product->panel)]));
  return solids;
}

}  // namespace creasewright
