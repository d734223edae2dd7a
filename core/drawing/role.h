#pragma once

#include <span>
#include <string_view>

#include "drawing/drawing.h"

namespace creasewright {

/// How a role looks on paper, and what it is called in files. The names are ISO 19593-1 processing
/// steps; roles outside that list have plain names of our own.
struct RoleStyle {
  std::string_view id;             ///< `Cutting`, `Creasing`: group and layer name, unique
  std::string_view group;          ///< `Structural`, `Dimensions`, `Legend`, `Positions`, or empty
  double width = 0.18;             ///< line width in mm (ISO 128 series, wide to narrow 2:1)
  std::span<const double> dashes;  ///< mm on, off, on, off …; empty = continuous
  Colour colour;
  int cadColour = 7;        ///< AutoCAD colour index for DXF
  std::string_view legend;  ///< code of its line in the legend, or empty
};

const RoleStyle& roleStyle(Role role);

/// How an item is drawn: as its role, or like another one. Its layer is always its role's.
const RoleStyle& styleOf(const PathItem& item);

/// White, or the colour of the text's role or of the one it is like.
Colour textColour(const TextItem& text);

/// What a filled item is filled with: a face by its light, waste by a light tint, a sheet by its
/// own colour, else the colour of its lines.
Colour fillColour(const PathItem& item);

/// How much black lies over a picture on a face, 0 to 1: what its light leaves of white.
double shadeOver(const PathItem& item);

/// Every role in the order in which layers are painted, lowest first.
std::span<const Role> paintOrder();

/// Fill of a lit face of the folded card: `light` from 0 to 1; the inside a little darker. Card
/// without a colour of its own is a warm white.
Colour faceColour(double light, Surface surface, const std::optional<Colour>& own);

}  // namespace creasewright
