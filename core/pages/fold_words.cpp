#include "pages/fold_words.h"

#include <algorithm>
#include <cmath>

#include "drawing/set_words.h"
#include "drawing/words_on.h"
#include "drawing/words_on_panel.h"
#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kUnseen = 1e-4;  // mm2

bool overlap(const Bounds& a, const Bounds& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

class Seen {
 public:
  explicit Seen(const FoldPicture& picture) : picture_(picture) {
    for (const Facet& facet : picture.facets) bounds_.push_back(bounds(facet.outline));
  }

  /// The facets that show the outside of a panel within some bounds.
  [[nodiscard]] std::vector<std::size_t> facetsOf(int panel, const Bounds& within) const {
    std::vector<std::size_t> own;
    for (std::size_t i = 0; i < picture_.facets.size(); ++i) {
      const Facet& facet = picture_.facets[i];
      if (facet.panel == panel && facet.face == Face::Outside && overlap(bounds_[i], within))
        own.push_back(i);
    }
    return own;
  }

  /// What is seen of a place on these facets.
  [[nodiscard]] Region partOf(const Polygon& place, const std::vector<std::size_t>& own) const {
    const Bounds within = bounds(place);
    Region seen;
    std::vector<Polygon> parts;
    for (const std::size_t i : own) {
      Region part = intersect(region(place), region(picture_.facets[i].outline));
      for (std::size_t k = i + 1; k < picture_.facets.size() && !part.empty(); ++k)
        if (overlap(bounds_[k], within)) part = subtract(part, region(picture_.facets[k].outline));
      std::ranges::move(part, std::back_inserter(seen));
    }
    // Facets of one panel meet without a seam.
    return own.size() > 1 ? intersect(seen, seen) : seen;
  }

 private:
  const FoldPicture& picture_;
  std::vector<Bounds> bounds_;
};

std::vector<Polygon> ringsOf(const Region& shape) {
  std::vector<Polygon> rings;
  for (const Area& part : shape) {
    rings.push_back(part.outer);
    rings.insert(rings.end(), part.holes.begin(), part.holes.end());
  }
  return rings;
}

PathItem plateOf(const Region& shape, double light) {
  return {.role = Role::Face,
          .rings = ringsOf(shape),
          .closed = true,
          .filled = true,
          .light = light,
          .colour = Colour{0xFF, 0xFF, 0xFF},
          .printed = true};
}

}  // namespace

void addWords(const Net& net, int first, std::vector<Inscription>& words) {
  for (Inscription& line : wordsOfPanels(net)) {
    line.panel += first;
    words.push_back(std::move(line));
  }
}

Drawing wordsSeen(const FoldPicture& picture, std::span<const PanelLook> looks,
                  std::span<const Inscription> words) {
  Drawing out;
  if (words.empty()) return out;
  const Seen seen(picture);
  for (const Inscription& line : words) {
    const auto panel = static_cast<std::size_t>(line.panel);
    TextItem text = textOnPanel(line);
    text.role = Role::Face;
    text.like = Role::Legend;
    text.plane = picture.planes.at(panel).after(*text.plane);
    const CardColours colours = panel < looks.size() ? looks[panel].colours : CardColours{};
    text.reversed = wordsOn(colours).white;
    const PaperPattern* paper = colours.patternOf(false);
    const bool plated = paper != nullptr && paper->plate;
    const Polygon place = wordsArea(text, line.text, plated ? line.height / 2 : 0);
    const std::vector<std::size_t> own = seen.facetsOf(line.panel, bounds(place));
    if (own.empty()) continue;
    const Region part = seen.partOf(place, own);
    const double left = area(part);
    if (left < kUnseen) continue;
    if (plated) out.paths.push_back(plateOf(part, picture.facets[own.front()].light));
    const bool whole = left > std::abs(signedArea(place)) - kUnseen;
    if (!whole) text.shown = ringsOf(part);
    out.texts.push_back(std::move(text));
  }
  return out;
}

}  // namespace creasewright
