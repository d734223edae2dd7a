#include <array>

#include "core/laws/law_book.h"

namespace creasewright::testing {
namespace {

/// Measures (mm) that do not grow with the rest and what they may shift in panels whose name ends
/// so; an empty style stands for any. All other panels double exactly.
struct FixedMeasure {
  std::string_view style;
  std::string_view ending;
  double mm;
  std::string_view why;
};
constexpr std::array kFixedMeasures{
    FixedMeasure{"framed-tray", "-tab", 25.4 / 16, "two tabs in one tube stay 1/16 in apart"},
    FixedMeasure{"pitched-roof-box", "/tuck", 12, "2 mm clear of the flaps, rounded corners"},
    FixedMeasure{"", "/tuck", 10, "corners rounded by 10 mm at most"},
    FixedMeasure{"", "dust-flap", 2, "set back by 2 mm at most"},
    FixedMeasure{"straight-tuck-box", "front", 8, "thumb notch, radius 8 mm at most"},
    FixedMeasure{"reverse-tuck-box", "front", 8, "thumb notch, radius 8 mm at most"},
    FixedMeasure{"reverse-tuck-box", "/back", 8, "thumb notch, radius 8 mm at most"},
    FixedMeasure{"hang-tab-tuck-box", "/doubling", 1.5, "1.5 mm clear of the lid"},
    FixedMeasure{"snap-lock-bottom-box", "/bottom-tongue", 8, "corners rounded by 6 mm at most"},
    FixedMeasure{"snap-lock-bottom-box", "/bottom-side", 14, "10 mm under the shoulder, set back"},
    FixedMeasure{"crash-lock-bottom-box", "/bottom", 1, "1 mm gap in the middle"},
    FixedMeasure{"crash-lock-bottom-box", "-hook", 11, "hooks reach 10 mm over the gap at most"},
    FixedMeasure{"crash-lock-bottom-box", "-glue-tab", 3, "the diagonals stop 2 mm short"},
    FixedMeasure{"crash-lock-bottom-box", "-side", 2, "the diagonals stop 2 mm short"},
    FixedMeasure{"two-piece-box", "base/front", 10, "thumb notch, radius 10 mm at most"},
    FixedMeasure{"two-piece-box", "base/back", 10, "thumb notch, radius 10 mm at most"},
    FixedMeasure{"hinged-lid-box", "-ear", 2, "set back by 2 mm at most"},
    FixedMeasure{"rolled-wall-tray", "-tongue", 20, "5 mm long, 20 mm wide at most"},
    FixedMeasure{"open-sleeve", "front", 10, "thumb notch, radius 10 mm at most"},
    FixedMeasure{"open-sleeve", "/back", 10, "thumb notch, radius 10 mm at most"},
    FixedMeasure{"", "/tab", 30, "6 to 10 mm deep whatever the wall, with slanting ends"},
    FixedMeasure{"crossed-seam-pouch", "seam", 4, "1 mm clear of the folds"},
    FixedMeasure{"", "seam", 1, "1 mm clear of the ends"},
    FixedMeasure{"pyramid-box", "/gap-flap", 25, "8 mm deep at most, with slanting ends"},
    FixedMeasure{"pyramid-box", "", 17, "walls end in a tip 10 mm wide"},
    FixedMeasure{"card-wallet", "/pocket", 10, "thumb notch, radius 10 mm at most"},
    FixedMeasure{"book-wrap", "/tuck", 6, "corners rounded by 6 mm at most, 0.5 mm clear"},
    FixedMeasure{"envelope", "/back", 10, "thumb notch, radius 10 mm at most"},
    FixedMeasure{"envelope", "/flap", 2, "pointed flaps end 1 mm before the middle"},
    FixedMeasure{"treat-scoop", "-tab", 1, "ends 1 mm below the edge"},
    FixedMeasure{"partition-insert", "divider", 1, "1 mm shorter than the box inside"},
    FixedMeasure{"pillow-box", "", 1.5, "the strip at the edge is 1 mm wider than the seam"},
    FixedMeasure{"gusseted-bag", "-flap", 1, "1 mm gap in the middle"},
    FixedMeasure{"gusseted-bag", "front", 20, "holes 10 mm below the edge"},
    FixedMeasure{"", "/bottom-flap", 1, "1 mm gap in the middle"},
    FixedMeasure{"milk-carton-top-box", "-fin", 4, "2 mm clear of the folds beside it at most"},
    FixedMeasure{"gable-box", "/hook", 44, "neck of 25 to 40 mm, hook 3 mm wider, 9 mm longer"},
    FixedMeasure{"wedge-box", "-flap", 2, "1 mm clear of the glued tabs"},
};

double fixedMeasuresOf(std::string_view style, std::string_view panel) {
  for (const FixedMeasure& fixed : kFixedMeasures)
    if ((fixed.style.empty() || fixed.style == style) && panel.ends_with(fixed.ending))
      return fixed.mm;
  return 0;
}

/// The same design with every length doubled, caliper and all, without a tool grid.
std::optional<BuiltDesign> scaled(const BuiltDesign& built, int factor) {
  Design design = built.design;
  design.product.reset();
  design.grid = ToolGrid::none();
  design.card.caliper = design.card.caliper * factor;
  for (const ParameterSpec& spec : built.style->parameters)
    if (spec.kind == ParameterKind::Length)
      design.parameters.setCount(spec.key, design.parameters.raw(spec.key) * factor);
  if (!limitProblems(design).empty()) return std::nullopt;
  Result<BuiltDesign> found = build(design);
  if (!found) return std::nullopt;
  return *found;
}

double farthest(Point a, Point b) { return std::max(std::abs(a.x - b.x), std::abs(a.y - b.y)); }

/// Arcs have as many corners as they need, so panels with arcs are compared by their boxes.
double difference(const Polygon& small, const Polygon& large, int factor) {
  double worst = 0;
  if (small.size() == large.size()) {
    for (std::size_t i = 0; i < small.size(); ++i)
      worst = std::max(worst, farthest(small[i] * factor, large[i]));
    return worst;
  }
  const Bounds a = bounds(small);
  const Bounds b = bounds(large);
  return std::max(farthest(a.low * factor, b.low), farthest(a.high * factor, b.high));
}

using Corners = std::vector<Point3>;

/// The corners of a placed panel in an order that does not depend on where they start.
Corners inOrder(Corners corners) {
  const auto rounded = [](double value) { return std::llround(value * 1e4); };
  std::ranges::sort(corners, {}, [&](const Point3& p) {
    return std::tuple(rounded(p.x), rounded(p.y), rounded(p.z));
  });
  return corners;
}

bool sameCorners(const Corners& a, const Corners& b) {
  if (a.size() != b.size()) return false;
  return std::ranges::all_of(a, [&](const Point3& p) {
    return std::ranges::any_of(b, [&](const Point3& q) { return distance(p, q) < 1e-5; });
  });
}

/// Mirrored at the middle of the root panel, along its x axis (0) or its y axis (1).
Corners mirrored(Corners corners, const Bounds& root, int axis) {
  for (Point3& p : corners) {
    if (axis == 0)
      p.x = root.low.x + root.high.x - p.x;
    else
      p.y = root.low.y + root.high.y - p.y;
  }
  return corners;
}

/// A panel without its mirror image among the panels; empty when each has one.
std::string panelWithoutTwin(const BuiltPiece& piece, int axis) {
  const Net& net = piece.net;
  std::vector<Corners> panels;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    Corners corners;
    for (const Point& corner : net.panels[i].outline)
      corners.push_back(piece.folded[i].apply(corner));
    panels.push_back(inOrder(std::move(corners)));
  }
  const Bounds root = bounds(net.panels[0].outline);
  for (std::size_t i = 0; i < panels.size(); ++i) {
    const Corners twin = mirrored(panels[i], root, axis);
    if (std::ranges::none_of(panels, [&](const Corners& p) { return sameCorners(p, twin); }))
      return net.panels[i].id;
  }
  return {};
}

/// Pieces that are the same left and right (x of the root panel), or front and back (y) as well.
struct Even {
  std::string_view style;
  std::string_view piece;
  bool alongX, alongY;
};
constexpr std::array kEven{
    Even{"framed-tray", "tray", true, true},          Even{"two-piece-box", "tray", true, true},
    Even{"two-piece-box", "lid", true, true},         Even{"drawer-box", "tray", true, true},
    Even{"exploding-box", "outer-cross", true, true}, Even{"exploding-box", "lid", true, true},
    Even{"platform-insert", "insert", true, true},    Even{"treat-scoop", "scoop", true, false},
    Even{"rolled-wall-tray", "tray", true, true},     Even{"hinged-lid-box", "box", true, false},
};

}  // namespace

bool foldsToMirrorImages(std::string_view styleId) {
  return std::ranges::any_of(kEven, [&](const Even& even) { return even.style == styleId; });
}

bool canBeDoubled(const BuiltDesign& built) {
  const auto single = scaled(built, 1);
  return single && scaled(*single, 2);
}

/// A net whose lengths are all doubled, caliper and all, has doubled panels, but for the fixed
/// measures listed above. Twice the size may be outside the limits: then there is nothing to judge.
Verdict doubledMeasuresDoubleTheNet(const BuiltDesign& built) {
  constexpr int kFactor = 2;
  const auto single = scaled(built, 1);
  const auto twice = single ? scaled(*single, kFactor) : std::nullopt;
  if (!twice) return {};
  for (std::size_t k = 0; k < single->pieces.size(); ++k) {
    const Net& small = single->pieces[k].net;
    const Net& large = twice->pieces[k].net;
    if (small.panels.size() != large.panels.size()) return "other panels at twice the size";
    for (std::size_t i = 0; i < small.panels.size(); ++i) {
      const double off = difference(small.panels[i].outline, large.panels[i].outline, kFactor);
      if (off > fixedMeasuresOf(built.design.styleId, small.panels[i].id) + 1e-5)
        return small.panels[i].id + " differs by " + std::to_string(off) + " mm at twice the size";
    }
  }
  return {};
}

/// The folded panels of an even piece are their own mirror image.
Verdict evenStylesFoldToMirrorImages(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces)
    for (const Even& even : kEven) {
      if (even.style != built.design.styleId || even.piece != piece.name) continue;
      std::string alone = even.alongX ? panelWithoutTwin(piece, 0) : "";
      if (alone.empty() && even.alongY) alone = panelWithoutTwin(piece, 1);
      if (!alone.empty()) return piece.name + ": " + alone + " has no mirror image";
    }
  return {};
}

}  // namespace creasewright::testing
