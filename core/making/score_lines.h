#pragma once

#include <array>
#include <vector>

#include "making/score_plan.h"
#include "making/spans.h"

namespace creasewright {

/// Lines that lie no farther apart are one, mm.
inline constexpr double kSameLine = 1e-3;

/// All scores that lie on one line parallel to a side.
struct ScoreLine {
  double at = 0;  ///< mm from the low side
  std::vector<Span> valleys;
  std::vector<Span> mountains;
  bool full = false;  ///< may run from edge to edge

  [[nodiscard]] bool isMixed() const { return !valleys.empty() && !mountains.empty(); }
  [[nodiscard]] bool valley() const { return mountains.empty(); }
};

/// The blank seen along one direction: lines of the view are x = `at`, running in y. For the
/// vertical lines of the blank this is the blank itself, for the horizontal ones x and y swapped.
struct LineView {
  bool swapped = false;
  double width = 0;   ///< across the lines
  double height = 0;  ///< along the lines
  std::vector<Polygon> panels;
  std::vector<bool> minds;       ///< panels that a full score must not cross
  std::vector<Segment> flats;    ///< creases along which the card runs on unscored
  std::vector<Segment> cuts;     ///< straight pieces of the outline
  std::vector<ScoreLine> lines;  ///< by position

  [[nodiscard]] SheetSide low() const { return swapped ? SheetSide::Bottom : SheetSide::Left; }
  [[nodiscard]] SheetSide high() const { return swapped ? SheetSide::Top : SheetSide::Right; }
  [[nodiscard]] SheetSide start() const { return swapped ? SheetSide::Left : SheetSide::Bottom; }
  [[nodiscard]] SheetSide end() const { return swapped ? SheetSide::Right : SheetSide::Top; }
  /// A point of the view in blank coordinates, and back.
  [[nodiscard]] Point turn(Point p) const { return swapped ? Point{p.y, p.x} : p; }
  /// Positions of the full scores (mm from the low side), ascending.
  [[nodiscard]] std::vector<double> fullPositions() const;
  /// Where the line x = `at` runs through panels that mind.
  [[nodiscard]] std::vector<Span> blocked(double at) const;
  /// Where it runs through any panel.
  [[nodiscard]] std::vector<Span> card(double at) const;
};

/// The views of the vertical and of the horizontal lines.
std::array<LineView, 2> lineViews(const Net& net, const FlatNet& flat);

/// Whether a crease is scored at all.
bool isScored(const Crease& crease);

/// Whether a segment is vertical within a micrometre.
bool isUpright(const Segment& s);

}  // namespace creasewright
