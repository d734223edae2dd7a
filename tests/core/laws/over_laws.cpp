#include <array>

#include "core/laws/law_book.h"

namespace creasewright::testing {
namespace {

double at(Point3 p, int axis) { return axis == 0 ? p.x : axis == 1 ? p.y : p.z; }

/// Where panels square to an axis of the cavity's frame lie, and how many layers of card are there.
struct Wall {
  double place;
  std::size_t panel;
};

/// A piece seen along one of the product's axes (0 length, 1 width, 2 height), card layers counted
/// from the mates rather than measured by the cavity check.
class AlongAxis {
 public:
  AlongAxis(const BuiltPiece& piece, int axisOfProduct, double caliper)
      : net_(piece.net), caliper_(caliper) {
    const Cavity& cavity = *piece.cavity;
    axis_ = cavity.axes.at(static_cast<std::size_t>(axisOfProduct));
    middle_ = at(cavity.seed, axis_);
    const Transform toCavity =
        piece.folded[static_cast<std::size_t>(*net_.find(cavity.panel))].inverse();
    for (std::size_t i = 0; i < net_.panels.size(); ++i) {
      const Transform place = toCavity.after(piece.folded[i]);
      if (std::abs(at(place.normal(), axis_)) > 0.999)
        walls_.push_back({at(place.apply(net_.panels[i].outline[0]), axis_), i});
      for (const Point& corner : net_.panels[i].outline) {
        low_ = std::min(low_, at(place.apply(corner), axis_));
        high_ = std::max(high_, at(place.apply(corner), axis_));
      }
    }
  }

  /// Between the innermost faces on both sides of the middle; infinite where a side is open.
  [[nodiscard]] double clear() const {
    double below = -1e9;
    double above = 1e9;
    for (const Wall& wall : walls_)
      (wall.place < middle_ ? below = std::max(below, wall.place)
                            : above = std::min(above, wall.place));
    return above - below - caliper_ - caliper_ * (extraLayers(below) + extraLayers(above));
  }

  /// From the outermost face on one side to that on the other.
  [[nodiscard]] double over() const { return high_ - low_ + caliper_; }

 private:
  /// Panels drawn in the same plane as the one they are held to take a caliper more.
  [[nodiscard]] int extraLayers(double place) const {
    const auto liesThere = [&](int panel) {
      return std::ranges::any_of(walls_, [&](const Wall& wall) {
        return wall.panel == static_cast<std::size_t>(panel) && std::abs(wall.place - place) < 1e-6;
      });
    };
    return std::ranges::any_of(net_.mates, [&](const Mate& mate) {
      return mate.face == Face::Inside && liesThere(mate.panel) && liesThere(mate.onto);
    });
  }

  const Net& net_;
  double caliper_;
  int axis_ = 0;
  double middle_ = 0;
  double low_ = 1e9;
  double high_ = -1e9;
  std::vector<Wall> walls_;
};

/// Room of a lid's inside over its tray's outside, both sides together, for a design made for a
/// product: 0.5 mm snug, 1.0 easy, 1.6 loose; a drawer in its sleeve 1/16 in on the width (all
/// common practice, no published source). Else what the piece itself states.
double promisedEase(const BuiltDesign& built, const GoesOver& over, int axis) {
  if (built.design.product && built.design.styleId == "two-piece-box") {
    const Ease ease = built.design.ease;
    return ease == Ease::Snug ? 0.5 : ease == Ease::Easy ? 1.0 : 1.6;
  }
  if (built.design.product && built.design.styleId == "drawer-box" && axis == 1) return 25.4 / 16;
  return over.ease.at(static_cast<std::size_t>(axis)).mm();
}

}  // namespace

Verdict outerPiecesGoOverInnerOnes(const BuiltDesign& built) {
  const double caliper = built.design.card.caliper.mm();
  for (const BuiltPiece& outer : built.pieces) {
    if (!outer.over || !outer.cavity) continue;
    const auto inner = std::ranges::find_if(
        built.pieces, [&](const BuiltPiece& piece) { return piece.name == outer.over->piece; });
    if (inner == built.pieces.end() || !inner->cavity) return "goes over a piece not there";
    for (const int axis : {0, 1, 2}) {
      if (!outer.over->axes.at(static_cast<std::size_t>(axis))) continue;
      const double have = AlongAxis(outer, axis, caliper).clear();
      const double inside = AlongAxis(*inner, axis, caliper).over();
      const double ease = promisedEase(built, *outer.over, axis);
      if (have < inside + ease - 1e-6)
        return outer.name + " has " + std::to_string(have) + " mm along axis " +
               std::to_string(axis) + " for " + std::to_string(inside) + " mm and " +
               std::to_string(ease) + " mm ease";
    }
  }
  return {};
}

}  // namespace creasewright::testing
