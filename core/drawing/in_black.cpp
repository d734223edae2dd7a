#include "drawing/in_black.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "drawing/role.h"
#include "drawing/spread.h"

namespace creasewright {
namespace {

constexpr double kStray = 0.05;  // of light, as in the contrast of WCAG 2.1

/// The grey of a luminance (IEC 61966-2-1).
Colour greyOf(double light) {
  const double value =
      light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
  const auto part = static_cast<std::uint8_t>(std::lround(255 * std::clamp(value, 0.0, 1.0)));
  return {part, part, part};
}

/// Of a line or a word.
Colour ink(Colour colour) {
  constexpr double kDark = 0.3;
  const double light = luminance(colour);
  return light < kDark ? Colour{0, 0, 0} : greyOf(light);
}

/// What a face has before light falls on it.
Colour ownColour(const PathItem& face) {
  const Surface lit = face.surface == Surface::Product ? Surface::Product : Surface::Outside;
  return face.colour.value_or(faceColour(1, lit, std::nullopt));
}

/// Of the faces of one drawing.
class Greys {
 public:
  explicit Greys(const Drawing& drawing) {
    const PathItem* before = nullptr;
    for (const PathItem& item : drawing.paths) {
      if (item.role != Role::Face || !item.filled) continue;
      if (item.printed) {
        add(ownColour(item));
        if (before != nullptr && !before->printed) add(ownColour(*before));
      }
      before = &item;
    }
    moveApart();
  }

  [[nodiscard]] Colour of(Colour colour) const {
    const auto known = found_.find(hexText(colour));
    return known == found_.end() ? greyOf(luminance(colour)) : known->second;
  }

 private:
  void add(Colour colour) { found_.emplace(hexText(colour), colour); }

  /// In steps of contrast, by which neighbours show from 1.2 on (common practice, no published
  /// source), or less where there are too many.
  void moveApart() {
    const double low = std::log(kStray);
    const double high = std::log(1 + kStray);
    const auto count = static_cast<double>(found_.size());
    const double gap = std::min(std::log(1.2), (high - low) / std::max(1.0, count - 1));
    std::vector<std::pair<double, Colour*>> inks;
    for (auto& [name, colour] : found_)
      inks.emplace_back(std::log(luminance(colour) + kStray), &colour);
    std::ranges::stable_sort(inks, {}, [](const auto& each) { return each.first; });
    std::vector<double> steps;
    for (const auto& [step, colour] : inks) steps.push_back(step);
    steps = spreadApart(steps, gap);
    for (std::size_t i = 0; i < steps.size(); ++i) {
      const auto place = static_cast<double>(i);
      const double least = low + gap * place;
      const double most = high - gap * (count - 1 - place);
      *inks[i].second = greyOf(std::exp(std::clamp(steps[i], least, most)) - kStray);
    }
  }

  std::map<std::string, Colour> found_;  // colour by its name, then its grey
};

}  // namespace

Drawing inBlack(Drawing drawing) {
  const Greys greys(drawing);
  for (PathItem& item : drawing.paths) {
    if (!item.filled) {
      item.colour = ink(item.colour.value_or(styleOf(item).colour));
      continue;
    }
    if (item.picture) item.picture->grey = true;
    const Role drawn = item.like.value_or(item.role);
    if (item.role == Role::Face)
      item.colour = greys.of(ownColour(item));
    else if (drawn == Role::Sheet || drawn == Role::Waste)
      item.colour = greyOf(luminance(fillColour(item)));
    else
      item.colour = ink(fillColour(item));
  }
  for (TextItem& item : drawing.texts)
    if (!item.reversed) item.colour = ink(textColour(item));
  return drawing;
}

}  // namespace creasewright
