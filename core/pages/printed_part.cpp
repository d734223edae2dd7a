#include "pages/printed_part.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "document/paper_way.h"
#include "drawing/arrange.h"
#include "drawing/contrast.h"
#include "drawing/net_drawing.h"
#include "drawing/role.h"
#include "geometry/grown.h"
#include "pages/paper_print.h"
#include "pages/printed_words.h"

namespace creasewright {
namespace {

// Corner marks 5 mm long and 0.25 mm wide, from 3 mm outside the cut or where the bleed ends
// (common practice, no published source).
constexpr double kCornerMark = 5;
constexpr double kMarkFrom = 3;
constexpr double kMarkLine = 0.25;  // mm wide
constexpr double kFoldTick = 3;     // mm: the end of a fold

/// Two lines at each corner of the blank, which go on from its sides.
PathItem cornerMarks(double width, double height, double bleed) {
  const double from = std::max(bleed, kMarkFrom);
  PathItem marks{
      .role = Role::Positions, .rings = {}, .width = kMarkLine / roleStyle(Role::Positions).width};
  for (const double x : {0.0, width})
    for (const double y : {0.0, height}) {
      const Point corner{x, y};
      const Point out{x > 0 ? 1.0 : -1.0, y > 0 ? 1.0 : -1.0};
      marks.rings.push_back(
          {corner + Point{out.x * from, 0}, corner + Point{out.x * (from + kCornerMark), 0}});
      marks.rings.push_back(
          {corner + Point{0, out.y * from}, corner + Point{0, out.y * (from + kCornerMark)}});
    }
  return marks;
}

/// Beyond the print, where a fold ends at the sides of the blank.
PathItem foldTicks(const TemplatePiece& piece, double bleed) {
  constexpr double kOnSide = 0.01;
  const FlatNet& flat = *piece.flat;
  const double from = std::max(bleed, kMarkFrom);
  PathItem ticks{.role = Role::Positions, .rings = {}, .like = Role::Dimension};
  for (std::size_t i = 0; i < flat.creases.size(); ++i) {
    if (piece.net->creases[i].kind == CreaseKind::Flat) continue;
    const Segment& fold = flat.creases[i];
    for (const auto& [end, other] : {std::pair{fold.a, fold.b}, {fold.b, fold.a}}) {
      const bool side = std::min({end.x, end.y, flat.width - end.x, flat.height - end.y}) < kOnSide;
      const Point out = unit(end - other);
      const bool straight = std::abs(out.x) < kOnSide || std::abs(out.y) < kOnSide;
      const Point tip = end + out * from;
      const bool leaves = tip.x < 0 || tip.y < 0 || tip.x > flat.width || tip.y > flat.height;
      if (side && straight && leaves) ticks.rings.push_back({tip, end + out * (from + kFoldTick)});
    }
  }
  return ticks;
}

Region panelRegion(const FlatNet& flat, std::size_t panel) {
  return cutOut(region(flat.panels[panel]), flat.openings[panel]);
}

void add(Region& all, Region more) { std::ranges::move(more, std::back_inserter(all)); }

Region joined(const Region& parts) { return intersect(parts, parts); }

/// Right angles keep their corners; sharper ones run no farther than those.
Region bledInto(const Region& shown, double bleed) {
  if (bleed <= 0) return shown;
  return intersect(offset(shown, bleed), grownRound(shown, bleed * std::numbers::sqrt2));
}

/// Cuts, and on the face that becomes the inside the folds too.
Drawing linesOf(const TemplatePiece& piece, bool behind) {
  NetDrawingOptions options;
  options.sheet = false;
  options.waste = false;
  Drawing lines = drawNetLines(*piece.net, *piece.flat, {}, options);
  std::erase_if(lines.paths, [behind](const PathItem& item) {
    return item.role != Role::Cut && (!behind || item.role == Role::Positions);
  });
  return lines;
}

}  // namespace

std::vector<bool> gluedPanels(const TemplatePiece& piece, Face face) {
  constexpr double kMost = 0.5;  // of the panel: else a patch of one that shows
  const FlatNet& flat = *piece.flat;
  std::vector<double> glued(flat.panels.size(), 0.0);
  for (const GlueArea& place : *piece.gluePlan)
    if (place.flapFace == face && place.area.size() > 2)
      glued[static_cast<std::size_t>(place.panel)] += std::abs(signedArea(place.area));
  std::vector<bool> out;
  for (std::size_t i = 0; i < flat.panels.size(); ++i)
    out.push_back(glued[i] > kMost * std::abs(signedArea(flat.panels[i])));
  return out;
}

Region printedArea(const TemplatePiece& piece, Face face, double bleed) {
  const FlatNet& flat = *piece.flat;
  const std::vector<bool> glued = gluedPanels(piece, face);
  Region shown;
  Region plain;
  for (std::size_t i = 0; i < flat.panels.size(); ++i)
    add(glued[i] ? plain : shown, panelRegion(flat, i));
  if (plain.empty()) shown = flat.outline;
  shown = joined(shown);
  Region grown = bledInto(shown, bleed);
  if (!plain.empty()) grown = subtract(grown, subtract(joined(plain), offset(shown, kIntoFlap)));
  // It stays on the part's own place.
  return intersect(grown, region({{-bleed, -bleed},
                                  {flat.width + bleed, -bleed},
                                  {flat.width + bleed, flat.height + bleed},
                                  {-bleed, flat.height + bleed}}));
}

double marksReach(double bleed) { return std::max(bleed, kMarkFrom) + kCornerMark - bleed; }

PartSheet printedPart(const TemplatePiece& piece, const PrintedForm& form, bool behind) {
  const FlatNet& flat = *piece.flat;
  const Face face = behind ? Face::Inside : Face::Outside;
  const Region area = printedArea(piece, face, form.bleed);
  PartSheet out;
  out.lines = Drawing{flat.width, flat.height, {}, {}};
  out.lines.paths =
      printOn(area, *piece.colours, behind, paperOnBlank(*piece.net, flat, piece.paperUp, behind));
  Drawing lines = linesOf(piece, behind);
  if (form.cuts) std::ranges::move(lines.paths, std::back_inserter(out.lines.paths));
  // What is written on a piece is written on the side that shows.
  if (!behind) append(out.lines, printedWords(lines.texts, *piece.colours, piece.stamped));
  out.lines.paths.push_back(cornerMarks(flat.width, flat.height, form.bleed));
  if (PathItem ticks = foldTicks(piece, form.bleed); !ticks.rings.empty())
    out.lines.paths.push_back(std::move(ticks));
  out.sheet = {flat.width, flat.height, flat.outline, {}};
  for (std::size_t i = 0; i < flat.creases.size(); ++i)
    if (piece.net->creases[i].kind != CreaseKind::Flat) out.sheet.scores.push_back(flat.creases[i]);
  out = bordered(std::move(out), form.bleed);
  return behind ? out : mirrored(std::move(out));
}

bool isPrinted(const TemplatePiece& piece) {
  return piece.colours != nullptr &&
         (isPrinted(*piece.colours, false) || isPrinted(*piece.colours, true));
}

}  // namespace creasewright
