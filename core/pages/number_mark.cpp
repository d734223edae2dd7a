#include "pages/number_mark.h"

#include <cmath>
#include <numbers>
#include <string>

namespace creasewright {
namespace {

Polygon disc(Point centre, double radius) {
  constexpr int kCorners = 48;
  Polygon ring;
  for (int i = 0; i < kCorners; ++i) {
    const double angle = 2 * std::numbers::pi * i / kCorners;
    ring.push_back(centre + Point{std::cos(angle), std::sin(angle)} * radius);
  }
  return ring;
}

/// `height` mm type.
TextItem signIn(std::string sign, Point centre, double height) {
  return {.role = Role::Legend,
          .label = Label::plain(std::move(sign)),
          .at = centre - Point{0, height * 0.365},  // half the height of a digit
          .height = height,
          .anchor = Anchor::Centre,
          .bold = true};
}

TextItem numberIn(int number, Point centre, double radius) {
  return signIn(std::to_string(number), centre, radius * (number < 10 ? 1.3 : 1.1));
}

}  // namespace

void addNumberMark(Drawing& drawing, int number, Point centre, double radius) {
  drawing.paths.push_back({.role = Role::Legend,
                           .rings = {disc(centre, radius)},
                           .closed = true,
                           .filled = true,
                           .like = Role::Valley});
  drawing.texts.push_back(numberIn(number, centre, radius));
  drawing.texts.back().reversed = true;
}

void addLineNumber(Drawing& drawing, int number, Point centre, double radius) {
  drawing.paths.push_back({.role = Role::Legend, .rings = {disc(centre, radius)}, .closed = true});
  drawing.texts.push_back(numberIn(number, centre, radius));
}

void addPanelLetter(Drawing& drawing, char letter, Point centre, double radius) {
  drawing.paths.push_back({.role = Role::Legend,
                           .rings = {disc(centre, radius)},
                           .closed = true,
                           .filled = true,
                           .like = Role::Sheet});
  drawing.paths.push_back({.role = Role::Legend, .rings = {disc(centre, radius)}, .closed = true});
  drawing.texts.push_back(signIn(std::string(1, letter), centre, radius * 1.45));
}

}  // namespace creasewright
