#include "drawing/net_drawing.h"

#include <algorithm>
#include <optional>

#include "drawing/arrange.h"
#include "drawing/dimensions.h"
#include "drawing/hatching.h"
#include "drawing/set_words.h"

namespace creasewright {
namespace {

constexpr double kWasteSpacing = 4;

std::optional<Role> creaseRole(const Crease& crease) {
  switch (crease.kind) {
    case CreaseKind::Flat:
      return std::nullopt;
    case CreaseKind::Perforated:
      return Role::Perforation;
    case CreaseKind::Score:
      break;
  }
  return crease.isValley() ? Role::Valley : Role::Mountain;
}

PathItem hatching(Role role, const std::vector<Polygon>& rings, double spacing, double degrees) {
  PathItem item{.role = role, .rings = {}};
  for (const Segment& line : hatch(rings, spacing, degrees)) item.rings.push_back({line.a, line.b});
  return item;
}

void addGlue(Drawing& out, const Polygon& area, double degrees) {
  if (area.size() > 2) {
    out.paths.push_back({.role = Role::Glue, .rings = {area}, .closed = true});
    out.paths.push_back(hatching(Role::Glue, {area}, kGlueSpacing, degrees));
  } else if (area.size() == 2) {
    out.paths.push_back({.role = Role::Glue, .rings = {area}});
  }
}

void addAreas(Drawing& out, const FlatNet& flat, const std::vector<Polygon>& glue,
              const NetDrawingOptions& options) {
  if (options.sheet) {
    out.paths.push_back(
        {.role = Role::Sheet,
         .rings = {{{0, 0}, {flat.width, 0}, {flat.width, flat.height}, {0, flat.height}}},
         .closed = true,
         .filled = true});
  }
  if (options.waste) {
    for (const Area& area : flat.waste) {
      std::vector<Polygon> rings{area.outer};
      rings.insert(rings.end(), area.holes.begin(), area.holes.end());
      out.paths.push_back(hatching(Role::Waste, rings, kWasteSpacing, -45));
    }
  }
  for (const Polygon& area : glue) addGlue(out, area, kGlueDegrees);
  for (const Polygon& area : options.glueBehind) addGlue(out, area, kGlueBehindDegrees);
}

void addCuts(Drawing& out, const FlatNet& flat) {
  PathItem closed{.role = Role::Cut, .rings = {}, .closed = true};
  PathItem open{.role = Role::Cut, .rings = {}};
  for (Polyline line : cutLines(flat)) {
    if (line.size() > 3 && line.front() == line.back()) {
      line.pop_back();
      closed.rings.push_back(std::move(line));
    } else {
      open.rings.push_back(std::move(line));
    }
  }
  if (!closed.rings.empty()) out.paths.push_back(std::move(closed));
  if (!open.rings.empty()) out.paths.push_back(std::move(open));
}

void addInscriptions(Drawing& out, const Net& net, const FlatNet& flat) {
  for (const Inscription& line : net.inscriptions)
    out.texts.push_back(textOf(line, flat.place(line.panel, line.at), line.turnDegrees));
}

void addMarks(Drawing& out, const Net& net, const FlatNet& flat) {
  PathItem marks{.role = Role::Positions, .rings = {}};
  for (const GuideMark& mark : net.marks) {
    Polyline line;
    for (const Point& p : mark.line) line.push_back(flat.place(mark.panel, p));
    marks.rings.push_back(std::move(line));
  }
  if (!marks.rings.empty()) out.paths.push_back(std::move(marks));
}

void addNames(Drawing& out, const Net& net, const FlatNet& flat, double height) {
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Bounds box = bounds(flat.panels[i]);
    const double length = textWidth(net.panels[i].id, height);
    TextItem text{.role = Role::Dimension,
                  .label = Label::plain(net.panels[i].id),
                  .at = (box.low + box.high) / 2 - Point{0, height / 3},
                  .height = height,
                  .anchor = Anchor::Centre};
    if (length > box.width() || 1.2 * height > box.height()) {
      if (length > box.height() || 1.2 * height > box.width()) continue;
      text.turnDegrees = 90;
      text.at = (box.low + box.high) / 2 + Point{height / 3, 0};
    }
    out.texts.push_back(std::move(text));
  }
}

}  // namespace

Drawing drawNetLines(const Net& net, const FlatNet& flat, const std::vector<Polygon>& glue,
                     const NetDrawingOptions& options) {
  Drawing out{flat.width, flat.height, {}, {}};
  addAreas(out, flat, glue, options);
  for (const Role role : {Role::Perforation, Role::Valley, Role::Mountain}) {
    PathItem item{.role = role, .rings = {}};
    for (std::size_t i = 0; i < net.creases.size(); ++i)
      if (creaseRole(net.creases[i]) == role)
        item.rings.push_back({flat.creases[i].a, flat.creases[i].b});
    if (!item.rings.empty()) out.paths.push_back(std::move(item));
  }
  addCuts(out, flat);
  addInscriptions(out, net, flat);
  addMarks(out, net, flat);
  if (options.names) addNames(out, net, flat, options.textHeight);
  return out;
}

NetDrawing drawNet(const Net& net, const FlatNet& flat, const std::vector<Polygon>& glue,
                   const NetDrawingOptions& options) {
  Drawing lines = drawNetLines(net, flat, glue, options);
  Border border;
  if (options.dimensions) border = addDimensions(lines, net, flat, options.textHeight);
  const Point origin{border.left + options.margin, border.bottom + options.margin};
  lines = moved(std::move(lines), origin);
  lines.width = origin.x + flat.width + border.right + options.margin;
  lines.height = origin.y + flat.height + border.top + options.margin;
  return {std::move(lines), origin};
}

}  // namespace creasewright
