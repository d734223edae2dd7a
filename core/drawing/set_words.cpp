#include "drawing/set_words.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "lettering/type_width.h"
#include "units/angle.h"

namespace creasewright {
namespace {

Point wayAt(double turnDegrees) {
  const double turn = Angle::degrees(turnDegrees).radians();
  return {std::cos(turn), std::sin(turn)};
}

PlaneMap upright(Point at, double turnDegrees) {
  const Point along = wayAt(turnDegrees);
  return {at, along, turnLeft(along)};
}

PlaneMap onDrawing(const TextItem& text, const PlaneMap& place) {
  return text.plane ? text.plane->after(place) : place;
}

/// From the middle of the column to where its words are anchored.
double shiftOf(const TextItem& text) {
  if (text.anchor == Anchor::Centre) return 0;
  return text.anchor == Anchor::Left ? -text.column / 2 : text.column / 2;
}

double widthOf(const TextItem& text, const std::string& words) {
  return text.bold ? typeWidth(words, text.height, true) : typeWidth(words, text.height, text.face);
}

/// Where a line that is bent stands, `along` mm from its middle and on its baseline.
PlaneMap onArc(const TextItem& text, double along) {
  const double degrees =
      180 / std::numbers::pi * along / text.arc->pace(text.height) * (text.arc->lower ? 1 : -1);
  const Point centre = text.arc->centre(text.at, text.turnDegrees);
  PlaneMap place = upright(centre, text.turnDegrees + degrees);
  place.origin = centre + place.y * (text.arc->lower ? -text.arc->radius : text.arc->radius);
  return place;
}

std::vector<WordsRun> bent(const TextItem& text, const std::string& words) {
  std::vector<WordsRun> runs;
  const std::vector<Letter> letters = lettersOf(words, text.height, text.face);
  double length = 0;
  for (const Letter& letter : letters) length += letter.closer + letter.width;
  double at = -length / 2;
  for (const Letter& letter : letters) {
    at += letter.closer;
    const PlaneMap place = onArc(text, at + letter.width / 2);
    at += letter.width;
    if (letter.words != " ")
      runs.push_back({letter.words, onDrawing(text, place), Anchor::Centre, letter.width});
  }
  return runs;
}

Polygon bentArea(const TextItem& text, const std::string& words, double beyond) {
  constexpr double kStep = 1.5;  // mm
  const double half = typeWidth(words, text.height, text.face) / 2 + beyond;
  const int steps = std::max(2, static_cast<int>(std::ceil(2 * half / kStep)));
  Polygon low;
  Polygon high;
  for (int i = 0; i <= steps; ++i) {
    const PlaneMap place = onDrawing(text, onArc(text, half * (2.0 * i / steps - 1)));
    low.push_back(place.apply({0, -kBelowBaseline * text.height - beyond}));
    high.push_back(place.apply({0, kAboveBaseline * text.height + beyond}));
  }
  low.insert(low.end(), high.rbegin(), high.rend());
  return low;
}

}  // namespace

std::vector<WordsRun> wordsRuns(const TextItem& text, const std::string& words) {
  if (text.arc) return bent(text, words);
  PlaneMap place = upright(text.at, text.turnDegrees);
  place.origin = place.apply({shiftOf(text), 0});
  const double longest = text.face == Typeface::Plain ? 0 : widthOf(text, words);
  return {{words, onDrawing(text, place), text.anchor, longest}};
}

Polygon wordsArea(const TextItem& text, const std::string& words, double beyond) {
  if (text.arc) return bentArea(text, words, beyond);
  const WordsRun run = wordsRuns(text, words).front();
  const double width = widthOf(text, words);
  const double from = text.anchor == Anchor::Left     ? 0
                      : text.anchor == Anchor::Centre ? -width / 2
                                                      : -width;
  const double low = -kBelowBaseline * text.height - beyond;
  const double high = kAboveBaseline * text.height + beyond;
  return {run.place.apply({from - beyond, low}), run.place.apply({from + width + beyond, low}),
          run.place.apply({from + width + beyond, high}), run.place.apply({from - beyond, high})};
}

void carry(TextItem& text, const PlaneMap& map) {
  for (Polygon& ring : text.shown)
    for (Point& p : ring) p = map.apply(p);
  if (text.plane)
    text.plane = map.after(*text.plane);
  else
    text.at = map.apply(text.at);
}

TextItem textOf(const Inscription& words, Point at, double turnDegrees) {
  const Anchor anchor = words.side == WordsSide::Left     ? Anchor::Left
                        : words.side == WordsSide::Centre ? Anchor::Centre
                                                          : Anchor::Right;
  return {.role = Role::Legend,
          .label = Label::plain(words.text),
          .at = at,
          .height = words.height,
          .anchor = anchor,
          .turnDegrees = turnDegrees,
          .face = words.face,
          .column = words.column,
          .arc = words.arc};
}

}  // namespace creasewright
