#include "patterns/pattern.h"

#include <algorithm>
#include <cmath>

#include "base/excerpt.h"
#include "base/near_texts.h"
#include "geometry/region.h"
#include "patterns/families.h"
#include "patterns/pattern_on.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

std::vector<Pattern> all() {
  return {stripes(),     pinDots(), dots(),     gingham(), tartan(),   chevron(),
          herringbone(), lattice(), scallops(), waves(),   confetti(), stars(),
          leaves(),      sprigs(),  snow(),     terrazzo()};
}

Colour mean(const std::vector<std::pair<Colour, double>>& parts) {
  double red = 0;
  double green = 0;
  double blue = 0;
  double whole = 0;
  for (const auto& [colour, share] : parts) {
    red += share * colour.red;
    green += share * colour.green;
    blue += share * colour.blue;
    whole += share;
  }
  if (whole <= 0) return {0xFF, 0xFF, 0xFF};
  const auto channel = [whole](double sum) {
    return static_cast<std::uint8_t>(std::clamp(std::lround(sum / whole), 0L, 255L));
  };
  return {channel(red), channel(green), channel(blue)};
}

}  // namespace

std::span<const Pattern> patterns() {
  static const std::vector<Pattern> list = all();
  return list;
}

const Pattern* patternCalled(std::string_view id) {
  const auto found = std::ranges::find(patterns(), id, &Pattern::id);
  return found == patterns().end() ? nullptr : &*found;
}

Result<const Pattern*> findPattern(std::string_view id) {
  if (const Pattern* pattern = patternCalled(id)) return pattern;
  std::vector<Spelled> known;
  for (const Pattern& pattern : patterns()) known.push_back({pattern.id, pattern.title});
  return unknownAmong(ProblemCode::PatternUnknown, id, known);
}

PaperPattern usualPaper(const Pattern& pattern) {
  return {std::string(pattern.id), pattern.usual, 0, {}};
}

std::vector<Colour> coloursOf(const PaperPattern& paper) {
  const Pattern* pattern = patternCalled(paper.id);
  if (pattern == nullptr) return {};
  std::vector<Colour> colours = pattern->colours;
  for (std::size_t i = 0; i < std::min(colours.size(), paper.colours.size()); ++i)
    colours[i] = paper.colours[i];
  return colours;
}

Colour inkOf(const PatternLayer& layer, const std::vector<Colour>& colours) {
  const Colour own = colours.at(static_cast<std::size_t>(layer.ink));
  if (layer.mixed < 0) return own;
  return mean({{own, 1}, {colours.at(static_cast<std::size_t>(layer.mixed)), 1}});
}

Colour meanColour(const PaperPattern& paper) {
  const Pattern* pattern = patternCalled(paper.id);
  if (pattern == nullptr) return mean({});
  // One repeat, a hundred wide; what lies over another layer takes its place.
  PaperPattern large = paper;
  large.scale = mm(100);
  large.turn = 0;
  const double high = 100 * pattern->height;
  const std::vector<Inked> layers =
      patternOn(region(Polygon{{0, 0}, {100, 0}, {100, high}, {0, high}}), large);
  std::vector<std::pair<Colour, double>> parts;
  for (std::size_t i = 0; i < layers.size(); ++i) {
    Region seen = layers[i].shape;
    for (std::size_t k = i + 1; k < layers.size(); ++k) seen = subtract(seen, layers[k].shape);
    parts.emplace_back(layers[i].colour, area(seen));
  }
  return mean(parts);
}

bool mayTurnByQuarter(const PaperPattern& paper) {
  const Pattern* pattern = patternCalled(paper.id);
  return pattern == nullptr || pattern->turns == Turns::Any || pattern->turns == Turns::Quarter;
}

Result<Length> patternScale(std::string_view text) {
  const Result<Length> scale = parseLength(text, Unit::Millimetre);
  if (scale && *scale >= kSmallestPattern && *scale <= kLargestPattern) return *scale;
  return Problem{
      ProblemCode::PatternScaleOff, "scale", {excerpt(text), kSmallestPattern, kLargestPattern}};
}

Result<PaperPattern> checkedPaper(PaperPattern paper) {
  const Result<const Pattern*> pattern = findPattern(paper.id);
  if (!pattern) return pattern.problem();
  const Result<Length> scale = patternScale(exactText(paper.scale));
  if (!scale) return scale.problem();
  const std::size_t most = (*pattern)->colours.size();
  if (paper.colours.size() > most)
    return Problem{
        ProblemCode::PatternColours,
        paper.id,
        {static_cast<std::int64_t>(paper.colours.size()), static_cast<std::int64_t>(most)}};
  paper.turn = (paper.turn % 360 + 360) % 360;
  return paper;
}

}  // namespace creasewright
