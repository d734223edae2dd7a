#include <algorithm>

#include "edits/kinds/crease_site.h"
#include "edits/kinds/kinds.h"
#include "edits/kinds/net_surgery.h"
#include "edits/kinds/place_measures.h"
#include "net/pose.h"

namespace creasewright {
namespace {

enum Asked { AsItIs, FirstChoice, SecondChoice };

bool sameFold(const Crease& a, const Crease& b) {
  return a.angle.degrees() == b.angle.degrees() && a.kind == b.kind && a.isValley() == b.isValley();
}

void turnOver(Crease& crease) {
  crease.angle = Angle::degrees(-crease.angle.degrees());
  for (Waypoint& point : crease.way) point.angle = Angle::degrees(-point.angle.degrees());
}

std::optional<ProblemCode> applyFold(const EditSite& site) {
  const std::optional<FoldOn> fold = findFold(site.net, site.panel, site.edge);
  if (!fold) return ProblemCode::EditPlaceGone;
  Crease& crease = site.net.creases[fold->crease];
  if (crease.kind == CreaseKind::Flat || crease.loop) return ProblemCode::EditUnfit;
  const Crease before = crease;
  const Parameters& m = site.measures;
  const bool valley =
      m.count("fold") == AsItIs ? crease.isValley() : m.count("fold") == FirstChoice;
  if (m.count("turn") != AsItIs) {
    const auto degrees = static_cast<double>(m.count("angle"));
    crease.angle = Angle::degrees(crease.isValley() ? degrees : -degrees);
    crease.way.clear();
  }
  if (valley != before.isValley() && crease.angle.degrees() != 0) turnOver(crease);
  crease.sense = valley ? Sense::Valley : Sense::Mountain;
  if (m.count("line") == FirstChoice) crease.kind = CreaseKind::Score;
  if (m.count("line") == SecondChoice) crease.kind = CreaseKind::Perforated;
  if (sameFold(before, crease)) return ProblemCode::EditNoEffect;
  return std::nullopt;
}

/// Moves everything of a panel along its own fold.
void shiftPanel(Net& net, int panel, double by) {
  const Transform shift = Transform::translation({by, 0, 0});
  Panel& on = net.panels[static_cast<std::size_t>(panel)];
  on.outline = placedBy(shift, on.outline);
  for (Polygon& opening : on.openings) opening = placedBy(shift, opening);
  for (Slit& slit : net.slits)
    if (slit.panel == panel) slit.line = placedBy(shift, slit.line);
  for (GuideMark& mark : net.marks)
    if (mark.panel == panel) mark.line = placedBy(shift, mark.line);
  for (Inscription& line : net.inscriptions)
    if (line.panel == panel) line.at.x += by;
  for (Crease& crease : net.creases)
    if (crease.parent == panel) crease.onParent = placedBy(shift, crease.onParent);
  for (Mate& mate : net.mates)
    if (mate.panel == panel) mate.patch = placedBy(shift, mate.patch);
}

/// The fold becomes shorter at both ends; there the card is cut along it.
std::optional<ProblemCode> applySlitLock(const EditSite& site) {
  const std::optional<FoldOn> fold = findFold(site.net, site.panel, site.edge);
  if (!fold) return ProblemCode::EditPlaceGone;
  Crease& crease = site.net.creases[fold->crease];
  const double slit = site.measures.mm("length");
  const bool tucks = std::ranges::any_of(site.net.mates, [&](const Mate& mate) {
    return mate.panel == crease.child &&
           (mate.method == Method::Tuck || mate.method == Method::Lock);
  });
  // The hand folds what is left.
  if (!tucks || crease.loop || crease.kind == CreaseKind::Flat ||
      length(crease.onParent) - 2 * slit < site.measures.mm("least"))
    return ProblemCode::EditUnfit;
  const Point along = unit(crease.onParent.b - crease.onParent.a);
  const int child = crease.child;
  if (site.piece.cavity &&
      site.piece.cavity->panel == site.net.panels[static_cast<std::size_t>(child)].id)
    return ProblemCode::EditUnfit;  // the product's room is told in its frame
  crease.onParent = {crease.onParent.a + along * slit, crease.onParent.b - along * slit};
  shiftPanel(site.net, child, -slit);
  return std::nullopt;
}

/// A ring of corners with one more where `p` lies on it.
void addCorner(Panel& ring, Point p) {
  constexpr double kSame = 1e-6;
  const std::size_t corners = ring.outline.size();
  for (const Point& corner : ring.outline)
    if (distance(corner, p) < kSame) return;
  for (std::size_t i = 0; i < corners; ++i) {
    const Segment edge{ring.outline[i], ring.outline[(i + 1) % corners]};
    if (distanceToSegment(p, edge) > kSame) continue;
    const auto at = static_cast<std::ptrdiff_t>(i) + 1;
    ring.outline.insert(ring.outline.begin() + at, p);
    ring.edges.insert(ring.edges.begin() + at, ring.edges[i]);
    return;
  }
}

std::optional<std::size_t> cornerAt(const Panel& ring, Point p) {
  for (std::size_t i = 0; i < ring.outline.size(); ++i)
    if (distance(ring.outline[i], p) < 1e-6) return i;
  return std::nullopt;
}

/// Two panels on either side of a line from p to q as one ring; nothing where the line is no edge
/// of both.
std::optional<Panel> asOne(Panel one, Panel other, const Segment& line) {
  for (const Point end : {line.a, line.b}) {
    addCorner(one, end);
    addCorner(other, end);
  }
  const auto oneFrom = cornerAt(one, line.a);
  const auto oneTo = cornerAt(one, line.b);
  const auto otherFrom = cornerAt(other, line.a);
  const auto otherTo = cornerAt(other, line.b);
  if (!oneFrom || !oneTo || !otherFrom || !otherTo) return std::nullopt;
  if ((*oneFrom + 1) % one.outline.size() != *oneTo ||
      (*otherTo + 1) % other.outline.size() != *otherFrom)
    return std::nullopt;
  Panel whole;
  const auto append = [&whole](const Panel& ring, std::size_t from, std::size_t to) {
    for (std::size_t i = from; i != to; i = (i + 1) % ring.outline.size()) {
      whole.outline.push_back(ring.outline[i]);
      whole.edges.push_back(ring.edges[i]);
    }
  };
  append(one, *oneTo, *oneFrom);
  append(other, *otherFrom, *otherTo);
  return whole;
}

std::string lastName(const std::string& id) { return id.substr(id.rfind('/') + 1); }

/// The panels on either side of a fold become the parent: whatever names the child names it.
class Merge {
 public:
  Merge(Net& net, const Crease& fold)
      : net_(net),
        fold_(fold),
        toParent_(hingeFrame(fold.onParent)),
        prefix_(lastName(child().id)) {
    prefix_ += '-';
  }

  /// False where the two are no single outline.
  bool make() {
    Panel beyond = child();
    beyond.outline = placedBy(toParent_, beyond.outline);
    for (std::string& name : beyond.edges) name = prefixed(name);
    std::optional<Panel> whole = asOne(parent(), std::move(beyond), fold_.onParent);
    if (!whole) return false;
    moveMates();
    moveOpenEdges();
    moveFolds();
    parent().outline = std::move(whole->outline);
    parent().edges = std::move(whole->edges);
    PanelNumbers numbers;
    for (int i = 0; i < static_cast<int>(net_.panels.size()); ++i)
      numbers.push_back(i == fold_.child ? -1 : i > fold_.child ? i - 1 : i);
    renumberPanels(net_, numbers);
    return true;
  }

 private:
  Panel& parent() { return net_.panels[static_cast<std::size_t>(fold_.parent)]; }
  [[nodiscard]] const Panel& child() const {
    return net_.panels[static_cast<std::size_t>(fold_.child)];
  }
  [[nodiscard]] std::string prefixed(const std::string& name) const {
    std::string longer = prefix_;
    longer += name;
    return longer;
  }
  void toParent(int& panel) const {
    if (panel == fold_.child) panel = fold_.parent;
  }

  void moveMates() {
    for (Mate& mate : net_.mates) {
      if (mate.panel == fold_.child)
        mate.patch = placedBy(toParent_, mate.patch.empty() ? child().outline : mate.patch);
      toParent(mate.panel);
      toParent(mate.onto);
    }
    std::erase_if(net_.mates, [](const Mate& mate) { return mate.panel == mate.onto; });
  }

  void moveOpenEdges() {
    for (OpenEdges& edges : net_.openEdges) {
      if (edges.panel == fold_.child) edges.edge = prefixed(edges.edge);
      if (edges.other == fold_.child) edges.otherEdge = prefixed(edges.otherEdge);
      toParent(edges.panel);
      toParent(edges.other);
    }
    std::erase_if(net_.openEdges,
                  [](const OpenEdges& edges) { return edges.panel == edges.other; });
  }

  void moveFolds() {
    moveContents(net_, fold_.child, fold_.parent, toParent_, [](Point) { return 1.0; });
    for (Crease& other : net_.creases)
      if (other.loop) toParent(other.child);
    std::erase_if(net_.creases, [&](const Crease& other) { return other.parent == other.child; });
  }

  Net& net_;
  const Crease fold_;
  const Transform toParent_;
  std::string prefix_;
};

std::optional<ProblemCode> applyMerge(const EditSite& site) {
  const std::optional<FoldOn> found = findFold(site.net, site.panel, site.edge);
  if (!found) return ProblemCode::EditPlaceGone;
  const Crease fold = site.net.creases[found->crease];
  const std::string& child = site.net.panels[static_cast<std::size_t>(fold.child)].id;
  if (fold.loop || isNeeded(site.piece, site.pieces, child)) return ProblemCode::EditUnfit;
  const Net before = site.net;
  if (!Merge(site.net, fold).make()) return ProblemCode::EditUnfit;
  dropEmptyStages(site.net, before);
  return std::nullopt;
}

std::optional<ProblemCode> applyRemove(const EditSite& site) {
  Net& net = site.net;
  if (site.panel == 0) return ProblemCode::EditUnfit;
  const Net before = net;
  const std::vector<int> gone = withAllBeyond(net, site.panel);
  for (const int panel : gone) {
    const std::string& id = net.panels[static_cast<std::size_t>(panel)].id;
    if (isNeeded(site.piece, site.pieces, id)) return ProblemCode::EditUnfit;
    if (site.piece.cavity) std::erase(site.piece.cavity->through, id);
  }
  PanelNumbers numbers;
  int next = 0;
  for (int i = 0; i < static_cast<int>(net.panels.size()); ++i)
    numbers.push_back(std::ranges::find(gone, i) == gone.end() ? next++ : -1);
  renumberPanels(net, numbers);
  dropEmptyStages(net, before);
  return std::nullopt;
}

}  // namespace

EditKind foldEdit() {
  return {"fold",
          worded("styles", "Changed fold"),
          worded("styles", "Another angle of a fold, the other way, or a perforation."),
          EditPlace::Crease,
          {editChoice("fold", worded("styles", "Fold"),
                      worded("styles", "Towards you or away, the net lying as drawn."),
                      {worded("styles", "As it is"), worded("styles", "Valley"),
                       worded("styles", "Mountain")}),
           editChoice("turn", worded("styles", "Turn"),
                      worded("styles", "Whether the angle below holds."),
                      {worded("styles", "As it is"), worded("styles", "By an angle")}),
           editCount("angle", worded("styles", "Angle"),
                     worded("styles", "Degrees; 0 for a fold that is opened again."), "90", 0, 180),
           editChoice("line", worded("styles", "Line"),
                      worded("styles", "How the card is made to fold."),
                      {worded("styles", "As it is"), worded("styles", "Score"),
                       worded("styles", "Perforation")})},
          applyFold,
          true};
}

EditKind slitLockEdit() {
  return {"slit-lock",
          worded("styles", "Slit lock"),
          worded("styles",
                 "Two slits at the ends of a tuck flap's fold, in which the dust flaps catch."),
          EditPlace::Crease,
          {editLength("length", worded("styles", "Length"), worded("styles", "Of each slit."),
                      "8 mm", mm(2), mm(100)),
           editLength("least", worded("styles", "Fold left"),
                      worded("styles", "How much of the fold must stay between the slits."),
                      "10 mm", mm(3))},
          applySlitLock,
          true};
}

EditKind mergeEdit() {
  return {"merge",
          worded("styles", "Panels made one"),
          worded("styles", "The two panels beside a fold become one; the fold goes."),
          EditPlace::Crease,
          {},
          applyMerge,
          true};
}

EditKind removeEdit() {
  return {"remove",
          worded("styles", "Panel left out"),
          worded("styles", "A panel and all that hangs on it is cut away."),
          EditPlace::Panel,
          {},
          applyRemove,
          true};
}

}  // namespace creasewright
