#include "pages/part_sheet.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "drawing/arrange.h"
#include "drawing/hatching.h"
#include "drawing/net_drawing.h"
#include "making/score_place.h"

namespace creasewright {
namespace {

constexpr double kOne = 0.01;  // mm: closer is one place

Role roleOf(const ScoreReading& reading) {
  if (reading.purpose == ScorePurpose::CutMark) return Role::CutMark;
  return reading.valley ? Role::Valley : Role::Mountain;
}

bool onSide(Point p, SheetSide side, double width, double height) {
  switch (side) {
    case SheetSide::Left:
      return p.x < kOne;
    case SheetSide::Right:
      return p.x > width - kOne;
    case SheetSide::Bottom:
      return p.y < kOne;
    case SheetSide::Top:
      return p.y > height - kOne;
  }
  return false;
}

/// Everything of a part under a map of its plane; texts are turned by `turn`, or stand as in a
/// mirror.
template <typename Map>
void carry(PartSheet& part, Map map, std::optional<double> turn) {
  const auto each = [&](Polygon& ring) { std::ranges::transform(ring, ring.begin(), map); };
  for (PathItem& item : part.lines.paths) carry(item, map);
  for (PathItem& item : part.paper.paths) carry(item, map);
  for (TextItem& text : part.lines.texts) {
    text.at = map(text.at);
    text.turnDegrees = turn ? text.turnDegrees + *turn : -text.turnDegrees;
  }
  for (Area& area : part.sheet.card) {
    each(area.outer);
    std::ranges::for_each(area.holes, each);
  }
  for (PartGlue& glue : part.glue) each(glue.area);
  for (Segment& score : part.sheet.scores) score = {map(score.a), map(score.b)};
  for (EdgeReading& reading : part.readings) {
    const Point tip = map(reading.at + reading.out);
    reading.at = map(reading.at);
    reading.out = tip - reading.at;
  }
  for (PanelName& name : part.names) each(name.outline);
  part.up = map(part.up) - map({0, 0});
}

/// Seen from the other face: folds towards the reader fold away.
void mirror(PartSheet& part) {
  const double width = part.sheet.width;
  carry(
      part,
      [width](Point p) {
        return Point{width - p.x, p.y};
      },
      std::nullopt);
  const auto swapped = [](Role role) {
    return role == Role::Valley ? Role::Mountain : role == Role::Mountain ? Role::Valley : role;
  };
  for (PathItem& item : part.lines.paths) item.role = swapped(item.role);
  for (EdgeReading& reading : part.readings) reading.like = swapped(reading.like);
}

void addTint(Drawing& lines, const Region& waste) {
  for (const Area& area : waste) {
    PathItem tint{.role = Role::Waste, .rings = {area.outer}, .closed = true, .filled = true};
    tint.rings.insert(tint.rings.end(), area.holes.begin(), area.holes.end());
    lines.paths.insert(lines.paths.begin(), std::move(tint));
  }
}

/// Angles drawn a little inside the corners of waste.
void addCornerMarks(Drawing& lines, const Region& waste) {
  constexpr double kFromEdge = 1.5;
  constexpr double kArm = 4;
  PathItem marks{.role = Role::Waste, .rings = {}};
  for (const Area& area : offset(waste, -kFromEdge)) {
    const Polygon& ring = area.outer;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point corner = ring[i];
      const Point before = ring[(i + ring.size() - 1) % ring.size()] - corner;
      const Point after = ring[(i + 1) % ring.size()] - corner;
      if (norm(before) < kArm || norm(after) < kArm || cross(after, before) <= 0) continue;
      marks.rings.push_back({corner + unit(before) * kArm, corner, corner + unit(after) * kArm});
    }
  }
  if (!marks.rings.empty()) lines.paths.push_back(std::move(marks));
}

Polygon circle(Point centre, double radius) {
  constexpr int kCorners = 24;
  Polygon ring;
  for (int i = 0; i < kCorners; ++i) {
    const double angle = 2 * std::numbers::pi * i / kCorners;
    ring.push_back(centre + Point{std::cos(angle), std::sin(angle)} * radius);
  }
  return ring;
}

/// Points to prick through at the ends of scores, in place of the scores themselves.
void prick(Drawing& lines, const std::vector<Segment>& scores) {
  std::erase_if(lines.paths, [](const PathItem& item) {
    return item.role != Role::Cut && item.role != Role::Positions;
  });
  std::vector<Point> points;
  for (const Segment& score : scores)
    for (const Point end : {score.a, score.b})
      if (std::ranges::none_of(points, [&](Point p) { return distance(p, end) < 0.1; }))
        points.push_back(end);
  PathItem dots{.role = Role::CutMark, .rings = {}, .closed = true, .filled = true};
  PathItem rings{.role = Role::CutMark, .rings = {}, .closed = true, .like = Role::Dimension};
  for (const Point point : points) {
    dots.rings.push_back(circle(point, 0.35));
    rings.rings.push_back(circle(point, 1.2));
  }
  if (points.empty()) return;
  lines.paths.push_back(std::move(rings));
  lines.paths.push_back(std::move(dots));
}

Drawing linesOf(const TemplatePiece& piece, TemplateKind kind) {
  NetDrawingOptions options;
  options.sheet = false;
  options.waste = false;
  Drawing lines = drawNetLines(*piece.net, *piece.flat, {}, options);
  const double width = piece.flat->width;
  const double height = piece.flat->height;
  if (kind == TemplateKind::InkSaving)
    addCornerMarks(lines, piece.flat->waste);
  else if (kind != TemplateKind::Tracing)
    addTint(lines, piece.flat->waste);
  // The blank's own border: cut it first to score on a board.
  if (kind != TemplateKind::Tracing)
    lines.paths.push_back({.role = Role::Positions,
                           .rings = {{{0, 0}, {width, 0}, {width, height}, {0, height}}},
                           .closed = true});
  return lines;
}

}  // namespace

std::vector<EdgeReading> edgeReadings(const ScorePlan& plan, double width, double height) {
  std::vector<EdgeReading> out;
  const auto add = [&out](Point at, Point away, const ScoreReading& reading, SheetSide measured) {
    const Label label{"reading", {reading.at}, {}};
    const bool told = std::ranges::any_of(out, [&](const EdgeReading& each) {
      return distance(each.at, at) < kOne && std::get<Length>(each.label.values[0]) == reading.at;
    });
    if (!told) out.push_back({at, away, label, roleOf(reading), reading, measured});
  };
  for (const ScoreSetup& setup : plan.setups)
    for (const SheetSide side : setup.sides)
      for (const ScoreReading& reading : setup.readings) {
        const Segment line = scoredLine(side, reading, width, height);
        if (length(line) < kOne) continue;
        const Point run = unit(line.b - line.a);
        const bool full = reading.run == ScoreRun::Full;
        if (full || onSide(line.a, side, width, height))
          add(line.a, run * -1, reading, full ? side : reading.measuredFrom);
        if (full || onSide(line.b, side, width, height))
          add(line.b, run, reading, full ? side : reading.measuredFrom);
      }
  return out;
}

PartSheet partSheet(const TemplatePiece& piece, TemplateKind kind) {
  const FlatNet& flat = *piece.flat;
  PartSheet out;
  out.lines = linesOf(piece, kind);
  if (kind == TemplateKind::Coloured) out.paper = {flat.width, flat.height, piece.paper, {}};
  out.sheet = {flat.width, flat.height, flat.outline, {}};
  for (std::size_t i = 0; i < flat.creases.size(); ++i)
    if (piece.net->creases[i].kind != CreaseKind::Flat) out.sheet.scores.push_back(flat.creases[i]);
  const Face front = kind == TemplateKind::Mirrored ? Face::Outside : Face::Inside;
  out.glueOutlined = kind == TemplateKind::InkSaving;
  if (kind != TemplateKind::Tracing)
    for (const GlueArea& area : *piece.gluePlan)
      out.glue.push_back({area.area, area.flapFace != front});
  if (kind == TemplateKind::Tracing)
    prick(out.lines, out.sheet.scores);
  else
    out.readings = edgeReadings(*piece.scorePlan, flat.width, flat.height);
  if (kind != TemplateKind::InkSaving)
    for (std::size_t i = 0; i < piece.panelNames.size() && i < flat.panels.size(); ++i)
      out.names.push_back({flat.panels[i], piece.panelNames[i]});
  if (kind == TemplateKind::Mirrored) mirror(out);
  return out;
}

Drawing glueLines(const PartSheet& part) {
  Drawing out = {part.sheet.width, part.sheet.height, {}, {}};
  for (const PartGlue& glue : part.glue) {
    const bool area = glue.area.size() > 2;
    out.paths.push_back({.role = Role::Glue, .rings = {glue.area}, .closed = area});
    if (!area || part.glueOutlined) continue;
    PathItem hatching{.role = Role::Glue, .rings = {}};
    const double degrees = glue.behind ? kGlueBehindDegrees : kGlueDegrees;
    for (const Segment& line : hatch({glue.area}, kGlueSpacing, degrees))
      hatching.rings.push_back({line.a, line.b});
    out.paths.push_back(std::move(hatching));
  }
  return out;
}

PartSheet bordered(PartSheet part, double by) {
  carry(
      part,
      [by](Point p) {
        return p + Point{by, by};
      },
      0);
  for (double* side :
       {&part.lines.width, &part.lines.height, &part.sheet.width, &part.sheet.height})
    *side += 2 * by;
  return part;
}

PartSheet mirrored(PartSheet part) {
  mirror(part);
  return part;
}

PartSheet turnedLeft(PartSheet part) {
  const double height = part.sheet.height;
  carry(
      part,
      [height](Point p) {
        return Point{height - p.y, p.x};
      },
      90);
  std::swap(part.lines.width, part.lines.height);
  std::swap(part.sheet.width, part.sheet.height);
  return part;
}

}  // namespace creasewright
