#include "extras/flat_piece.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace creasewright {
Piece flatPiece(std::string name, Area area, const std::vector<std::string>& lines,
                const WordsLook& look) {
  const Point low = bounds(area.outer).low;
  for (Point& p : area.outer) p = p - low;
  for (Polygon& hole : area.holes)
    for (Point& p : hole) p = p - low;
  Panel panel;
  panel.id = name;
  panel.edges.assign(area.outer.size(), "edge");
  panel.outline = std::move(area.outer);
  panel.openings = std::move(area.holes);
  panel.shows = true;
  Piece piece;
  piece.name = std::move(name);
  piece.net.panels.push_back(std::move(panel));
  writeOn(lines, look, piece.net);
  return piece;
}

Length punchStep(ToolGrid grid) {
  const bool inches = !grid.isNone() && Length::inches(1, 4).nm() % grid.step().nm() == 0;
  return inches ? Length::inches(1, 4) : mm(5);
}

Length wholeSteps(double mm, ToolGrid grid) {
  return ToolGrid(punchStep(grid)).roundDown(Length::mm(std::max(0.0, mm)));
}

Length onGridBelow(double mm, ToolGrid grid) {
  return grid.roundDown(Length::mm(std::max(0.0, mm)));
}

Polygon roundedRectangle(double width, double height, double radius) {
  const double r = std::min({radius, width / 2 - 0.01, height / 2 - 0.01});
  if (r <= 0) return {{0, 0}, {width, 0}, {width, height}, {0, height}};
  Polygon outline;
  const auto corner = [&](Point from, Point centre) {
    outline.push_back(from);
    for (const Point& p : arc(from, centre, 90)) outline.push_back(p);
  };
  corner({width - r, 0}, {width - r, r});
  corner({width, height - r}, {width - r, height - r});
  corner({r, height}, {r, height - r});
  corner({0, r}, {r, r});
  return outline;
}

Polygon scallop(double width, double height, double wave) {
  // The tips of the waves lie on an ellipse; each wave is a half circle outwards.
  const double round = std::numbers::pi * (width + height) / 2;
  const int waves = std::max(8, 2 * static_cast<int>(round / wave / 2));
  const double reach = round / waves / 2;
  const Point half{width / 2 - reach, height / 2 - reach};
  const auto tip = [&](int i) {
    const double turn = 2 * std::numbers::pi * i / waves;
    return Point{width / 2 + half.x * std::cos(turn), height / 2 + half.y * std::sin(turn)};
  };
  Polygon outline;
  for (int i = 0; i < waves; ++i) {
    const Point from = tip(i);
    outline.push_back(from);
    Polyline way = arc(from, (from + tip(i + 1)) / 2, 180);
    way.pop_back();
    outline.insert(outline.end(), way.begin(), way.end());
  }
  const Bounds box = bounds(outline);
  for (Point& p : outline)
    p = {(p.x - box.low.x) * width / box.width(), (p.y - box.low.y) * height / box.height()};
  return outline;
}

}  // namespace creasewright
