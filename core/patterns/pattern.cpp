#include "patterns/pattern.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <mutex>

#include "base/excerpt.h"
#include "base/near_texts.h"
#include "geometry/region.h"
#include "patterns/families.h"
#include "patterns/pattern_on.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

std::vector<PatternKind> all() {
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

/// The areas of one repeat that are seen of the ground and of each layer.
std::vector<double> measuredShares(const PatternKind& pattern) {
  PaperPattern large = usualPaper(pattern);
  large.scale = mm(100);
  const double high = 100 * pattern.height;
  const Region repeat = region(Polygon{{0, 0}, {100, 0}, {100, high}, {0, high}});
  std::vector<double> shares;
  Region over;
  const std::vector<Inked> inks = patternOn(repeat, large);
  for (auto ink = inks.rbegin(); ink != inks.rend(); ++ink) {
    // What is hidden has few holes; what is left of a ground would have many, and take seconds.
    shares.insert(shares.begin(), area(ink->shape) - area(intersect(ink->shape, over)));
    std::ranges::copy(ink->shape, std::back_inserter(over));
  }
  return shares;
}

/// Measured once: that takes some milliseconds.
const std::vector<double>& sharesOf(const PatternKind& pattern) {
  static std::mutex guard;
  static std::map<std::string_view, std::vector<double>> known;
  const std::scoped_lock lock(guard);
  const auto found = known.find(pattern.id);
  if (found != known.end()) return found->second;
  return known.emplace(pattern.id, measuredShares(pattern)).first->second;
}

}  // namespace

std::span<const PatternKind> patterns() {
  static const std::vector<PatternKind> list = all();
  return list;
}

const PatternKind* patternCalled(std::string_view id) {
  const auto found = std::ranges::find(patterns(), id, &PatternKind::id);
  return found == patterns().end() ? nullptr : &*found;
}

Result<const PatternKind*> findPattern(std::string_view id) {
  if (const PatternKind* pattern = patternCalled(id)) return pattern;
  std::vector<Spelled> known;
  for (const PatternKind& pattern : patterns()) known.push_back({pattern.id, pattern.title});
  return unknownAmong(ProblemCode::PatternUnknown, id, known);
}

PaperPattern usualPaper(const PatternKind& pattern) {
  return {std::string(pattern.id), pattern.usual, 0, {}};
}

std::vector<Colour> coloursOf(const PaperPattern& paper) {
  if (paper.picture)
    return paper.colours.empty() ? std::vector{Colour{0xFF, 0xFF, 0xFF}} : paper.colours;
  const PatternKind* pattern = patternCalled(paper.id);
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
  if (paper.picture) return coloursOf(paper).front();
  const PatternKind* pattern = patternCalled(paper.id);
  if (pattern == nullptr) return mean({});
  const std::vector<Colour> colours = coloursOf(paper);
  const std::vector<double>& shares = sharesOf(*pattern);
  std::vector<std::pair<Colour, double>> parts{{colours.front(), shares.front()}};
  for (std::size_t i = 0; i < pattern->layers.size(); ++i)
    parts.emplace_back(inkOf(pattern->layers[i], colours), shares[i + 1]);
  return mean(parts);
}

Turns turnsOf(const PaperPattern& paper) {
  if (paper.picture) return Turns::None;
  const PatternKind* pattern = patternCalled(paper.id);
  return pattern == nullptr ? Turns::Any : pattern->turns;
}

bool mayTurnByQuarter(const PaperPattern& paper) {
  const Turns turns = turnsOf(paper);
  return turns == Turns::Any || turns == Turns::Quarter;
}

Result<Length> patternScale(std::string_view text) {
  const Result<Length> scale = parseLength(text, Unit::Millimetre);
  if (scale && *scale >= kSmallestPattern && *scale <= kLargestPattern) return *scale;
  return Problem{
      ProblemCode::PatternScaleOff, "scale", {excerpt(text), kSmallestPattern, kLargestPattern}};
}

Result<PaperPattern> checkedPaper(PaperPattern paper) {
  paper.turn = (paper.turn % 360 + 360) % 360;
  const Result<Length> scale = patternScale(exactText(paper.scale));
  if (paper.id == kPicturePaper) {
    if (!paper.picture) return Problem{ProblemCode::PictureNoFile, {}, {}};
    if (!pixelsOf(paper.picture->file.bytes()))
      return Problem{ProblemCode::NotAPaper, kPicturePaper, {}};
    return scale ? Result<PaperPattern>(std::move(paper)) : scale.problem();
  }
  const Result<const PatternKind*> pattern = findPattern(paper.id);
  if (!pattern) return pattern.problem();
  if (!scale) return scale.problem();
  const std::size_t most = (*pattern)->colours.size();
  if (paper.colours.size() > most)
    return Problem{
        ProblemCode::PatternColours,
        paper.id,
        {static_cast<std::int64_t>(paper.colours.size()), static_cast<std::int64_t>(most)}};
  return paper;
}

}  // namespace creasewright
