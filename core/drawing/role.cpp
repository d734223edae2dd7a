#include "drawing/role.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace creasewright {
namespace {

constexpr double kWide = 0.35;
constexpr double kNarrow = 0.18;

constexpr Colour kInk{0x23, 0x28, 0x2E};
constexpr Colour kQuiet{0x4A, 0x55, 0x60};
constexpr Colour kPine{0x00, 0x5F, 0x48};
constexpr Colour kRust{0xB3, 0x5A, 0x00};
constexpr Colour kViolet{0x6B, 0x46, 0x96};
constexpr Colour kGrey{0x9A, 0xA0, 0xA6};
constexpr Colour kCard{0xFF, 0xFD, 0xF8};
constexpr Colour kTint{0xEA, 0xEC, 0xEE};  // grey that a line and a word stand on

// Valley dashed, mountain dash-dot: the usual origami notation (Yoshizawa-Randlett), from memory.
constexpr std::array kValleyDashes{4.0, 2.0};
constexpr std::array kMountainDashes{4.0, 1.5, 0.5, 1.5};
constexpr std::array kPerforationDashes{1.0, 1.0};
constexpr std::array kMarkDashes{0.4, 1.6};

const RoleStyle kCut{"Cutting", "Structural", kWide, {}, kInk, 7, "legend-cut"};
const RoleStyle kValley{"Creasing", "Structural", kWide, kValleyDashes, kPine, 3, "legend-valley"};
const RoleStyle kMountain{"ReverseCreasing", "Structural", kWide, kMountainDashes, kRust, 30,
                          "legend-mountain"};
const RoleStyle kPerforation{"Perforating",       "Structural", kWide, kPerforationDashes, kInk, 4,
                             "legend-perforation"};
const RoleStyle kCutMark{"CutMarks", "Positions", kNarrow,          kMarkDashes,
                         kQuiet,     8,           "legend-cut-mark"};
const RoleStyle kGlue{"Gluing", "Structural", kNarrow, {}, kViolet, 6, "legend-glue"};
const RoleStyle kWaste{"Waste", "Positions", kNarrow, {}, kGrey, 9, "legend-waste"};
const RoleStyle kDimension{"Dimensions", "Dimensions", kNarrow, {}, kQuiet, 8, ""};
const RoleStyle kLegend{"Legend", "Legend", kNarrow, {}, kInk, 7, ""};
const RoleStyle kPositions{"Positions", "Positions", kNarrow, {}, kQuiet, 8, ""};
const RoleStyle kSheet{"Sheet", "", kNarrow, {}, kCard, 9, ""};
const RoleStyle kFace{"Faces", "", kNarrow, {}, kCard, 9, ""};
const RoleStyle kEdge{"Edges", "", kNarrow, {}, kInk, 7, ""};

std::uint8_t shade(double channel, double factor) {
  return static_cast<std::uint8_t>(std::lround(std::clamp(channel * factor, 0.0, 255.0)));
}

}  // namespace

const RoleStyle& roleStyle(Role role) {
  switch (role) {
    case Role::Cut:
      return kCut;
    case Role::Valley:
      return kValley;
    case Role::Mountain:
      return kMountain;
    case Role::Perforation:
      return kPerforation;
    case Role::CutMark:
      return kCutMark;
    case Role::Glue:
      return kGlue;
    case Role::Waste:
      return kWaste;
    case Role::Dimension:
      return kDimension;
    case Role::Legend:
      return kLegend;
    case Role::Positions:
      return kPositions;
    case Role::Sheet:
      return kSheet;
    case Role::Face:
      return kFace;
    case Role::Edge:
      return kEdge;
  }
  return kCut;
}

const RoleStyle& styleOf(const PathItem& item) { return roleStyle(item.like.value_or(item.role)); }

Colour textColour(const TextItem& text) {
  if (text.reversed) return {0xFF, 0xFF, 0xFF};
  return roleStyle(text.like.value_or(text.role)).colour;
}

Colour fillColour(const PathItem& item) {
  if (item.role == Role::Face) return faceColour(item.light, item.surface, item.colour);
  if (item.role == Role::Sheet && item.colour) return *item.colour;
  return item.like.value_or(item.role) == Role::Waste ? kTint : styleOf(item).colour;
}

double shadeOver(const PathItem& item) {
  return 1 - faceColour(item.light, item.surface, Colour{0xFF, 0xFF, 0xFF}).red / 255.0;
}

std::span<const Role> paintOrder() {
  static constexpr std::array kOrder{
      Role::Sheet,     Role::Face,        Role::Edge,   Role::Waste,    Role::Glue,
      Role::CutMark,   Role::Perforation, Role::Valley, Role::Mountain, Role::Cut,
      Role::Dimension, Role::Positions,   Role::Legend};
  return kOrder;
}

Colour faceColour(double light, Surface surface, const std::optional<Colour>& own) {
  constexpr Colour kPlain{0xF7, 0xEC, 0xD6};
  constexpr Colour kProduct{0xC9, 0xD9, 0xD3};
  constexpr double kWithin = 0.92;
  // A face turned away from the light keeps over half its brightness, as card does in a room.
  constexpr double kShadow = 0.58;
  const double bright = kShadow + (1 - kShadow) * std::clamp(light, 0.0, 1.0);
  const double factor = surface == Surface::Inside ? kWithin * bright : bright;
  const Colour base = own.value_or(surface == Surface::Product ? kProduct : kPlain);
  return {shade(base.red, factor), shade(base.green, factor), shade(base.blue, factor)};
}

}  // namespace creasewright
