#pragma once

#include <algorithm>

#include <gtest/gtest.h>

#include "document/build_extras.h"
#include "styles/registry.h"
#include "support/random.h"

namespace creasewright::testing {

inline Design fitted(Random& random, const Style& style) {
  Design design;
  design.styleId = style.id;
  design.card = {"test", "test card", Length::mm(random.between(0.2, 0.4)), 0};
  design.grid = random.whole(0, 1) == 0 ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
  design.product =
      Product{ProductShape::Box, Length::mm(random.between(40, 120)),
              Length::mm(random.between(30, 100)), Length::mm(random.between(15, 120))};
  design.parameters =
      fit(style, *design.product, design.ease, {design.card.caliper, design.grid}).parameters;
  return design;
}

inline Extra extraOf(std::string_view kind, const Design& design) {
  return standardExtra(**findExtraKind(kind), design.card);
}

inline BuiltDesign built(const Design& design) {
  Result<BuiltDesign> result = build(design);
  EXPECT_TRUE(result.ok()) << design.styleId;
  return std::move(result).value();
}

inline std::vector<const BuiltPiece*> piecesOf(const BuiltDesign& design, int extra) {
  std::vector<const BuiltPiece*> pieces;
  for (const BuiltPiece& piece : design.pieces)
    if (piece.role && piece.role->extra == extra) pieces.push_back(&piece);
  return pieces;
}

inline const BuiltPiece& hostOf(const BuiltDesign& design, const FacePlace& face) {
  return design.pieces.at(static_cast<std::size_t>(face.piece));
}

/// A flat piece's outline where it lies on its face, in the panel's frame.
inline Polygon onFace(const BuiltPiece& piece, const FacePlace& face) {
  Polygon there;
  for (const Point& p : piece.net.panels.front().outline) {
    const Point3 at = face.place.apply(p);
    there.push_back({at.x, at.y});
  }
  return there;
}

inline double clearOf(const Polygon& ring, Point p) {
  double least = 1e9;
  for (std::size_t i = 0; i < ring.size(); ++i)
    least = std::min(least, distanceToSegment(p, {ring[i], ring[(i + 1) % ring.size()]}));
  return least;
}

}  // namespace creasewright::testing
