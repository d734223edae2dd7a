#include <algorithm>
#include <cmath>

#include "edits/kinds/kinds.h"
#include "edits/kinds/panel_site.h"
#include "edits/kinds/place_measures.h"

namespace creasewright {
namespace {

constexpr std::string_view kSample = "For you";
constexpr double kWidthOfLetter = 0.62;  // of the height: wider than most letters of plain type
constexpr double kDescent = 0.25;        // of the height, below the line

std::string wordsOf(const EditSite& site) {
  const auto found = site.edit.measures.find("words");
  return found == site.edit.measures.end() ? std::string(kSample) : found->second;
}

std::size_t letters(std::string_view utf8) {
  return static_cast<std::size_t>(std::ranges::count_if(
      utf8, [](unsigned char c) { return (c & 0xC0U) != 0x80U; }));
}

Polygon box(Point middle, double width, double height) {
  const double x = width / 2;
  const double y = height / 2;
  return {middle + Point{-x, -y}, middle + Point{x, -y}, middle + Point{x, y},
          middle + Point{-x, y}};
}

bool liesDrawnOnCard(const EditSite& site, const DrawnPanel& panel, Polygon drawn) {
  for (Point& p : drawn) p = panel.own(p);
  return liesOnCard(site, drawn);
}

std::optional<ProblemCode> applyText(const EditSite& site) {
  const std::string words = wordsOf(site);
  if (std::ranges::all_of(words, [](char c) { return c == ' '; })) return ProblemCode::EditNoEffect;
  const Parameters& m = site.measures;
  const double height = m.mm("height");
  const double run = kWidthOfLetter * height * static_cast<double>(letters(words));
  const auto quarters = m.count("turn");
  const bool upright = quarters % 2 == 1;
  const double width = upright ? height : run;
  const double tall = upright ? run : height;
  const DrawnPanel panel(site.net, site.panel);
  const Point middle = placedMiddle(site, panel, width, tall);
  if (!liesDrawnOnCard(site, panel, box(middle, width, tall))) return ProblemCode::EditUnfit;
  Point down{0, -height * (0.5 - kDescent)};
  for (std::int64_t i = 0; i < quarters; ++i) down = turnLeft(down);
  site.net.inscriptions.push_back(
      {site.panel, panel.own(middle + down), height, words, 90.0 * static_cast<double>(quarters)});
  return std::nullopt;
}

std::vector<Polyline> markLines(std::int64_t shape, double size) {
  const double half = size / 2;
  const Polyline level{{-half, 0}, {half, 0}};
  const Polyline upright{{0, -half}, {0, half}};
  switch (shape) {
    case 1:
      return {level};
    case 2:
      return {upright};
    case 3: {
      Polyline ring = ellipse({0, 0}, half, half);
      ring.push_back(ring.front());
      return {ring};
    }
    default:
      return {level, upright};
  }
}

std::optional<ProblemCode> applyMark(const EditSite& site) {
  const double size = site.measures.mm("size");
  const auto shape = site.measures.count("shape");
  const DrawnPanel panel(site.net, site.panel);
  const double width = shape == 2 ? 0 : size;
  const double height = shape == 1 ? 0 : size;
  const Point middle = placedMiddle(site, panel, width, height);
  const double least = 0.02;  // mm; a line has no area
  if (!liesDrawnOnCard(site, panel, box(middle, std::max(width, least), std::max(height, least))))
    return ProblemCode::EditUnfit;
  for (Polyline line : markLines(shape, size)) {
    for (Point& p : line) p = panel.own(middle + p);
    site.net.marks.push_back({site.panel, std::move(line)});
  }
  return std::nullopt;
}

}  // namespace

EditKind textEdit() {
  EditMeasure words{"words", worded("styles", "Words"),
                    worded("styles", "To be written on the face that becomes the outside."),
                    ParameterKind::Length, kSample};
  words.words = true;
  EditKind kind{
      "text",
      worded("styles", "Text"),
      worded("styles", "A line of words on a panel, on the face that becomes the outside."),
      EditPlace::Panel,
      {std::move(words),
       editLength("height", worded("styles", "Height"), worded("styles", "Of the letters."), "4 mm",
                  mm(1), mm(100)),
       editChoice("turn", worded("styles", "Turned"),
                  worded("styles", "Against the clock, as the net is drawn."),
                  {worded("styles", "Not"), worded("styles", "Quarter"), worded("styles", "Half"),
                   worded("styles", "Three quarters")})},
      applyText,
      true};
  addPlace(kind.measures);
  return kind;
}

EditKind markEdit() {
  EditKind kind{"mark",
                worded("styles", "Guide mark"),
                worded("styles", "A thin mark that shows where something goes; no cut."),
                EditPlace::Panel,
                {editChoice("shape", worded("styles", "Shape"), worded("styles", "Of the mark."),
                            {worded("styles", "Cross"), worded("styles", "Level line"),
                             worded("styles", "Upright line"), worded("styles", "Ring")}),
                 editLength("size", worded("styles", "Size"), worded("styles", "Of the mark."),
                            "6 mm", mm(1))},
                applyMark,
                true};
  addPlace(kind.measures);
  return kind;
}

}  // namespace creasewright
