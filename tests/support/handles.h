#pragma once

#include <gtest/gtest.h>

#include "document/build.h"
#include "edits/gauge.h"

namespace creasewright::testing {

/// The edge of a panel whose outward normal looks that way, on the blank.
inline Handle edgeOf(const Design& design, const std::string& panel, Point normal) {
  const Net net = build(design)->pieces.front().net;
  const auto corners =
      static_cast<int>(net.panels[static_cast<std::size_t>(*net.find(panel))].outline.size());
  for (int edge = 0; edge < corners; ++edge) {
    const Handle handle{0, panel, edge, corners};
    const auto place = placeOfHandle(design, handle);
    if (place && dot(place->normal, normal) > 0.99) return handle;
  }
  ADD_FAILURE() << "no such edge of " << panel;
  return {};
}

/// Where a line lies once the design is built as any other: apart from what core/edits works out.
inline double along(const BuiltDesign& built, const Handle& handle, Point normal) {
  const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(handle.piece)];
  const Polygon& outline =
      piece.flat.panels[static_cast<std::size_t>(*piece.net.find(handle.panel))];
  const auto edge = static_cast<std::size_t>(handle.edge);
  const Bounds first = bounds(piece.flat.panels.front());
  const Point middle = (outline[edge] + outline[(edge + 1) % outline.size()]) / 2;
  return dot(middle - (first.low + first.high) / 2, normal);
}

/// How long the line is, mm.
inline double lengthOf(const BuiltDesign& built, const Handle& handle) {
  const Net& net = built.pieces[static_cast<std::size_t>(handle.piece)].net;
  const Polygon& outline = net.panels[static_cast<std::size_t>(*net.find(handle.panel))].outline;
  const auto edge = static_cast<std::size_t>(handle.edge);
  return distance(outline[edge], outline[(edge + 1) % outline.size()]);
}

/// How many corners its panel has.
inline int cornersOf(const BuiltDesign& built, const Handle& handle) {
  const Net& net = built.pieces[static_cast<std::size_t>(handle.piece)].net;
  return static_cast<int>(
      net.panels[static_cast<std::size_t>(*net.find(handle.panel))].outline.size());
}

}  // namespace creasewright::testing
