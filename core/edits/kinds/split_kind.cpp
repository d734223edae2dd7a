#include <algorithm>
#include <cmath>

#include "edits/kinds/crease_site.h"
#include "edits/kinds/fold_measures.h"
#include "edits/kinds/kinds.h"
#include "edits/kinds/net_surgery.h"
#include "edits/kinds/panel_site.h"
#include "edits/kinds/place_measures.h"
#include "geometry/region.h"
#include "net/pose.h"

namespace creasewright {
namespace {

constexpr double kOn = 1e-6;  // mm

/// A directed line through a panel; `left` of it lies what is split off.
struct ScoreLine {
  Point from;
  Point along;  // unit

  [[nodiscard]] double beside(Point p) const { return cross(along, p - from); }
};

/// The new score as drawn, level or upright but for its slant, in the panel's own frame.
ScoreLine scoreLine(const EditSite& site) {
  const Parameters& m = site.measures;
  const DrawnPanel panel(site.net, site.panel);
  const Bounds& box = panel.box();
  const bool up = m.count("direction") == 1;
  const double low = up ? box.low.x : box.low.y;
  const double high = up ? box.high.x : box.high.y;
  double at = (low + high) / 2 + m.mm("at");
  if (m.count("from") == 1) at = low + m.mm("at");
  if (m.count("from") == 2) at = high - m.mm("at");
  const double end = at + m.mm("slant");
  const Point a = up ? Point{at, box.high.y} : Point{box.low.x, at};
  const Point b = up ? Point{end, box.low.y} : Point{box.high.x, end};
  const Point from = panel.own(a);
  return {from, unit(panel.own(b) - from)};
}

/// The two parts of an outline, each with its edges' names.
struct Parts {
  Panel left;
  Panel right;
  Segment line;  // as it runs along the right one
};

/// An outline with corners where the line crosses it.
Panel withCrossings(const Panel& panel, const ScoreLine& line) {
  Panel crossed;
  const std::size_t corners = panel.outline.size();
  for (std::size_t i = 0; i < corners; ++i) {
    const Point a = panel.outline[i];
    const Point b = panel.outline[(i + 1) % corners];
    crossed.outline.push_back(a);
    crossed.edges.push_back(panel.edges[i]);
    const double from = line.beside(a);
    const double to = line.beside(b);
    if (std::abs(from) < kOn || std::abs(to) < kOn || (from > 0) == (to > 0)) continue;
    crossed.outline.push_back(a + (b - a) * (from / (from - to)));
    crossed.edges.push_back(panel.edges[i]);
  }
  return crossed;
}

std::string freeEdgeName(const Panel& panel, std::string_view wanted) {
  std::string name(wanted);
  for (int i = 2; std::ranges::find(panel.edges, name) != panel.edges.end(); ++i)
    name = std::string(wanted) + "-" + std::to_string(i);
  return name;
}

/// Corners from one place of a ring up to another, and the names of the edges between them.
Panel arcOf(const Panel& ring, std::size_t from, std::size_t to) {
  Panel part;
  const std::size_t corners = ring.outline.size();
  for (std::size_t i = from; i != to; i = (i + 1) % corners) {
    part.outline.push_back(ring.outline[i]);
    part.edges.push_back(ring.edges[i]);
  }
  part.outline.push_back(ring.outline[to]);
  return part;
}

/// Nothing where the line does not part the outline in two.
std::optional<Parts> partsOf(const Panel& panel, const ScoreLine& line) {
  const Panel ring = withCrossings(panel, line);
  std::vector<std::size_t> on;
  for (std::size_t i = 0; i < ring.outline.size(); ++i)
    if (std::abs(line.beside(ring.outline[i])) < kOn) on.push_back(i);
  if (on.size() != 2) return std::nullopt;
  Panel one = arcOf(ring, on[0], on[1]);
  Panel other = arcOf(ring, on[1], on[0]);
  if (one.outline.size() < 3 || other.outline.size() < 3) return std::nullopt;
  if (line.beside(one.outline[1]) < 0) std::swap(one, other);
  one.edges.push_back(freeEdgeName(one, "inner"));
  other.edges.push_back(freeEdgeName(other, "split"));
  const Segment cut{other.outline.back(), other.outline.front()};
  return Parts{std::move(one), std::move(other), cut};
}

/// Which part of a panel a flap that lies against it meets, as patches of the flap.
struct Landing {
  Polygon near;  // in the flap's frame; empty = none of it
  Polygon far;
};

Polygon largest(const Region& region) {
  const auto found =
      std::ranges::max_element(region, {}, [](const Area& area) { return signedArea(area.outer); });
  return found == region.end() || area(region) < 0.5 ? Polygon() : found->outer;
}

Landing landingOf(const Polygon& flap, const Transform& seen, const Panel& near, const Panel& far) {
  Polygon shadow = placedBy(seen, flap);
  const bool turned = signedArea(shadow) < 0;
  if (turned) std::ranges::reverse(shadow);
  const auto back = [&](Polygon part) {
    if (turned) std::ranges::reverse(part);
    Polygon own;
    for (const Point& p : part) {
      const Point3 q = seen.inverse().apply(Point3{p.x, p.y, seen.apply(Point{0, 0}).z});
      own.push_back({q.x, q.y});
    }
    return own;
  };
  const Region whole = region(shadow);
  return {back(largest(intersect(whole, region(near.outline)))),
          back(largest(intersect(whole, region(far.outline))))};
}

/// The two parts of a panel: `near` keeps its number, `far` is another, seen from the old frame by
/// `toFar`.
class SplitPanel {
 public:
  SplitPanel(const Net& net, const Pose& folded, int near, int far, const Transform& toFar)
      : net_(net), folded_(folded), near_(near), far_(far), toFar_(toFar), there_(panel(far)) {
    there_.outline = placedBy(toFar.inverse(), there_.outline);
  }

  /// Joints of the panel are those of its parts; a part that is folded away holds nothing.
  [[nodiscard]] std::vector<Mate> mates(bool farStays) const {
    std::vector<Mate> mates;
    for (const Mate& mate : net_.mates)
      if (mate.panel == near_)
        addAsFlap(mate, farStays, mates);
      else if (mate.onto == near_)
        addAsTarget(mate, mates);
      else
        mates.push_back(mate);
    return mates;
  }

 private:
  [[nodiscard]] const Panel& panel(int index) const {
    return net_.panels[static_cast<std::size_t>(index)];
  }
  [[nodiscard]] const Transform& frame(int index) const {
    return folded_[static_cast<std::size_t>(index)];
  }

  void addAsFlap(const Mate& mate, bool farStays, std::vector<Mate>& mates) const {
    const auto part = [&](const Panel& of) {
      return mate.patch.empty() ? of.outline
                                : largest(intersect(region(mate.patch), region(of.outline)));
    };
    const Polygon nearPart = part(panel(near_));
    const Polygon farPart = part(there_);
    Mate held = mate;
    if (!mate.patch.empty()) held.patch = nearPart;
    if (!nearPart.empty()) mates.push_back(held);
    if (farPart.empty() || !farStays) return;
    held.panel = far_;
    held.rim = false;
    held.patch = mate.patch.empty() ? Polygon() : placedBy(toFar_, farPart);
    mates.push_back(std::move(held));
  }

  void addAsTarget(const Mate& mate, std::vector<Mate>& mates) const {
    const Polygon& flap = mate.patch.empty() ? panel(mate.panel).outline : mate.patch;
    const Landing landing =
        landingOf(flap, frame(near_).inverse().after(frame(mate.panel)), panel(near_), there_);
    const bool both = !landing.near.empty() && !landing.far.empty();
    Mate held = mate;
    if (both) held.patch = landing.near;
    if (!landing.near.empty() || landing.far.empty()) mates.push_back(held);
    if (landing.far.empty()) return;
    held.onto = far_;
    held.patch = both ? landing.far : mate.patch;
    mates.push_back(std::move(held));
  }

  const Net& net_;
  const Pose& folded_;
  int near_;
  int far_;
  const Transform& toFar_;
  Panel there_;  // the far part in the frame of the near one
};

bool isEdgeOf(const Panel& panel, const std::string& name) {
  return std::ranges::find(panel.edges, name) != panel.edges.end();
}

/// What is said of open edges is said of the part that has them now.
void splitOpenEdges(Net& net, int near, int far) {
  std::vector<OpenEdges> more;
  const auto follow = [&](OpenEdges edges, int OpenEdges::*panel, const std::string& name,
                          std::vector<OpenEdges>& into) {
    if (edges.*panel != near || !isEdgeOf(net.panels[static_cast<std::size_t>(far)], name)) return;
    edges.*panel = far;
    into.push_back(std::move(edges));
  };
  for (const OpenEdges& edges : net.openEdges) {
    follow(edges, &OpenEdges::panel, edges.edge, more);
    follow(edges, &OpenEdges::other, edges.otherEdge, more);
  }
  std::erase_if(net.openEdges, [&](const OpenEdges& edges) {
    const Panel& left = net.panels[static_cast<std::size_t>(near)];
    return (edges.panel == near && !isEdgeOf(left, edges.edge)) ||
           (edges.other == near && !isEdgeOf(left, edges.otherEdge));
  });
  std::ranges::move(more, std::back_inserter(net.openEdges));
}

/// The near part holds the fold to the parent; of the first panel it is what lies left or below.
std::optional<bool> nearIsLeft(const EditSite& site, const ScoreLine& line) {
  const Crease* own = site.net.creaseOf(site.panel);
  if (own == nullptr) return false;
  const double a = line.beside({0, 0});
  const double b = line.beside({length(own->onParent), 0});
  if (std::abs(a) < kOn || std::abs(b) < kOn || (a > 0) != (b > 0)) return std::nullopt;
  return a > 0;
}

bool anyFoldAcross(const EditSite& site, const ScoreLine& line) {
  return std::ranges::any_of(
      foldsOn(site.net, site.panel),
      [&](const FoldOn& fold) {
        const double a = line.beside(fold.line.a);
        const double b = line.beside(fold.line.b);
        return (a > kOn && b < -kOn) || (a < -kOn && b > kOn);
      });
}

/// Whether a loop's other panel is this one, at a fold that lies on the far part.
bool anyLoopBeyond(const Net& net, int near, const ScoreLine& line) {
  return std::ranges::any_of(
      foldsOn(net, near),
      [&](const FoldOn& fold) {
        const Crease& crease = net.creases[fold.crease];
        return crease.loop && crease.child == near &&
               line.beside((fold.line.a + fold.line.b) / 2) > 0;
      });
}

std::optional<ProblemCode> applySplit(const EditSite& site) {
  ScoreLine line = scoreLine(site);
  const std::optional<bool> left = nearIsLeft(site, line);
  if (!left || anyFoldAcross(site, line)) return ProblemCode::EditUnfit;
  // What is split off lies left of the line.
  if (*left) line = {line.from, line.along * -1};
  std::optional<Parts> parts = partsOf(site.on(), line);
  if (!parts) return ProblemCode::EditUnfit;
  Net& net = site.net;
  const Pose folded = pose(net, 1.0);
  const int near = site.panel;
  const int far = near + 1;
  PanelNumbers numbers;
  for (int i = 0; i < static_cast<int>(net.panels.size()); ++i)
    numbers.push_back(i > near ? i + 1 : i);
  const std::string id = freePanelId(net, site.on().id + "/part");
  const Crease* own = net.creaseOf(near);
  const auto after = own == nullptr ? 0 : (own - net.creases.data()) + 1;
  const int stage = own == nullptr ? 1 : own->stage;
  renumberPanels(net, numbers);
  net.panels.resize(numbers.size() + 1);
  Pose placed = folded;
  placed.insert(placed.begin() + far, Transform());
  Crease crease{near, far, parts->line, Angle()};
  const Transform toFar = hingeFrame(crease.onParent).inverse();
  Panel& old = net.panels[static_cast<std::size_t>(near)];
  Panel fresh{
      id, placedBy(toFar, parts->left.outline), std::move(parts->left.edges), {}, old.shows};
  old.outline = std::move(parts->right.outline);
  old.edges = std::move(parts->right.edges);
  net.panels[static_cast<std::size_t>(far)] = std::move(fresh);
  if (!moveContents(net, near, far, toFar, [&](Point p) { return line.beside(p); }))
    return ProblemCode::EditUnfit;
  if (anyLoopBeyond(net, near, line)) return ProblemCode::EditUnfit;
  setFold(site, crease, stage);
  const bool moves = crease.angle.degrees() != 0;
  net.creases.insert(net.creases.begin() + after, std::move(crease));
  if (moves) net.creases[static_cast<std::size_t>(after)].stage = addedStage(site);
  net.mates = SplitPanel(net, placed, near, far, toFar).mates(!moves);
  splitOpenEdges(net, near, far);
  return std::nullopt;
}

}  // namespace

EditKind splitEdit() {
  EditKind kind{
      "split",
      worded("styles", "Score across"),
      worded("styles", "A new fold that makes two panels of one, level, upright or slanting."),
      EditPlace::Panel,
      {editChoice("direction", worded("styles", "Direction"),
                  worded("styles", "As the net is drawn on the sheet."),
                  {worded("styles", "Across"), worded("styles", "Up")}),
       editChoice("from", worded("styles", "From"),
                  worded("styles", "As the net is drawn on the sheet."),
                  {worded("styles", "Middle"), worded("styles", "Left or bottom"),
                   worded("styles", "Right or top")}),
       editLength("at", worded("styles", "At"),
                  worded("styles", "From the middle, or from that side."), "0 mm", -mm(1000)),
       editLength("slant", worded("styles", "Slant"),
                  worded("styles", "How much farther its right or lower end lies."), "0 mm",
                  -mm(1000))},
      applySplit,
      true};
  addFoldMeasures(kind.measures, "0");
  return kind;
}

}  // namespace creasewright
