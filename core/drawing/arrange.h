#pragma once

#include "drawing/drawing.h"

namespace creasewright {

/// Takes a path through an affine map of the plane, its picture along with it.
template <typename Map>
void carry(PathItem& item, const Map& map) {
  for (Polygon& ring : item.rings)
    for (Point& p : ring) p = map(p);
  if (!item.picture) return;
  PlaneMap& place = item.picture->place;
  const Point origin = map(place.origin);
  place = {origin, map(place.origin + place.x) - origin, map(place.origin + place.y) - origin};
}

/// Everything shifted by `by`; width and height stay.
Drawing moved(Drawing drawing, Point by);

/// The whole picture turned left by a quarter: width and height change places, texts turn along.
Drawing turnedLeft(Drawing drawing);

/// The part inside `window`, still at the same place; width and height stay. Lines end exactly on
/// the window's border, closed outlines that are cut become open lines, fills are cut (a concave
/// fill may keep a doubled edge on the border). A text stays when its start lies inside.
Drawing clipped(const Drawing& drawing, const Bounds& window);

/// Puts `other` on top of `drawing`.
void append(Drawing& drawing, const Drawing& other);

/// The parts of an open line inside `window`.
std::vector<Polyline> clippedLine(const Polyline& line, const Bounds& window);

/// Room a text takes, generously estimated: 0.62 of the type size for each character of `words`
/// (wide enough for DejaVu Sans, a wide face), 0.95 above and 0.25 below the baseline. The corners
/// run counter-clockwise.
Polygon textBox(const TextItem& text, const std::string& words);

/// The bounds of that room for a text as it is worded.
Bounds boxOf(const TextItem& text, const Wording& wording);

/// Estimated width in mm of `words` set at `height` mm.
double textWidth(const std::string& words, double height);

}  // namespace creasewright
