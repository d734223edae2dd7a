#include <algorithm>
#include <cmath>
#include <numbers>

#include "edits/kinds/crease_site.h"
#include "edits/kinds/edge_site.h"
#include "edits/kinds/flap_shape.h"
#include "edits/kinds/fold_measures.h"
#include "edits/kinds/kinds.h"
#include "edits/kinds/net_surgery.h"
#include "edits/kinds/place_measures.h"
#include "folding/edge_meetings.h"
#include "folding/fold_check.h"
#include "net/net_problems.h"
#include "net/pose.h"

namespace creasewright {
namespace {

enum FlapHold { Free, Glued, Tucked };

constexpr double kNear = 0.1;  // mm

/// The angles at which a flap on a fold lies flat in a panel's plane, the one that reaches into the
/// panel first.
std::optional<std::pair<Angle, Angle>> anglesOnto(const Transform& hinge, const Transform& target,
                                                  Point middleOfTarget, double width,
                                                  double caliper) {
  const Point3 normal = target.normal();
  const Point3 along = hinge.turn({1, 0, 0});
  const double away = dot(hinge.apply(Point{0, 0}) - target.apply(Point{0, 0}), normal);
  if (std::abs(dot(along, normal)) > 1e-3 || std::abs(away) > kNear + 2 * caliper)
    return std::nullopt;
  const Point3 y = hinge.turn({0, 1, 0});
  const Point3 z = hinge.turn({0, 0, 1});
  const double flat = std::atan2(-dot(y, normal), dot(z, normal));
  const double other = flat > 0 ? flat - std::numbers::pi : flat + std::numbers::pi;
  const Point3 way = target.apply(middleOfTarget) - hinge.apply(Point{width / 2, 0});
  const Point3 out = y * std::cos(flat) + z * std::sin(flat);
  const auto degrees = [](double turn) { return Angle::degrees(turn * 180 / std::numbers::pi); };
  if (dot(way, out) > 0) return std::pair{degrees(flat), degrees(other)};
  return std::pair{degrees(other), degrees(flat)};
}

/// Whether the last of a net's mates holds.
bool lastMateHolds(const Net& net, double caliper) {
  Net alone = net;
  alone.mates = {net.mates.back()};
  return checkMates(alone, pose(alone, 1.0), caliper).empty();
}

/// Folds the last panel so that it lies against the first panel that meets its edge in the folded
/// box; false where none does.
bool joinFlap(const EditSite& site, Method method, double width) {
  Net& net = site.net;
  const int flap = static_cast<int>(net.panels.size()) - 1;
  const Pose folded = pose(net, 1.0);
  const Transform hinge =
      folded[static_cast<std::size_t>(site.panel)].after(hingeFrame(net.creases.back().onParent));
  const Face face = site.measures.count("face") == 0 ? Face::Inside : Face::Outside;
  net.mates.push_back({flap, 0, face, method});
  for (int target = 0; target < flap; ++target) {
    if (target == site.panel) continue;
    const auto index = static_cast<std::size_t>(target);
    const auto angles =
        anglesOnto(hinge, folded[index], centroid(net.panels[index].outline), width, site.caliper);
    if (!angles) continue;
    net.mates.back().onto = target;
    net.creases.back().angle = angles->first;
    for (const bool rim : {true, false}) {
      net.mates.back().rim = rim;
      if (lastMateHolds(net, site.caliper)) return true;
    }
  }
  return false;
}

/// The stage of the last fold on the way between two panels.
int lastStageBetween(const Net& net, int one, int other) {
  int last = 1;
  while (one != other) {
    const Crease* crease = net.creaseOf(std::max(one, other));
    if (crease == nullptr) break;
    if (crease->moves()) last = std::max(last, crease->stage);
    (one > other ? one : other) = crease->parent;
  }
  return last;
}

/// What the flap is called beside its panel, so that other changes find it whatever is added or
/// switched off before it.
std::string flapName(const Edit& edit) {
  const auto given = edit.measures.find("name");
  std::string name = given == edit.measures.end() ? std::string() : given->second;
  const auto parts = [](unsigned char c) { return c <= ' ' || c == '/' || c == '#' || c == ':'; };
  std::ranges::replace_if(name, parts, '-');
  return name.empty() ? "flap" : name;
}

/// Joins the last panel as `hold` says.
std::optional<ProblemCode> holdFlap(const EditSite& site, double width) {
  const auto hold = site.measures.count("hold");
  if (hold == Free) return std::nullopt;
  if (site.measures.mm("depth") < minimumFlapWidth(site.caliper)) return ProblemCode::EditUnfit;
  if (!joinFlap(site, hold == Glued ? Method::Glue : Method::Tuck, width))
    return ProblemCode::EditUnfit;
  Net& net = site.net;
  if (hold == Tucked)
    net.bends.push_back(
        {lastStageBetween(net, site.panel, net.mates.back().onto), BendCode::TuckSlidesIn});
  return std::nullopt;
}

/// Edges of the last panel that meet others without being held there are meant to open.
void declareOpen(const EditSite& site) {
  Net& net = site.net;
  const int flap = static_cast<int>(net.panels.size()) - 1;
  for (const EdgeMeeting& m : looseEdges(net, pose(net, 1.0), site.caliper))
    if (m.panel == flap || m.other == flap)
      net.openEdges.push_back({m.panel, m.edge, m.other, m.otherEdge, "opens"});
}

std::optional<ProblemCode> applyFlap(const EditSite& site) {
  const std::optional<EdgeSite> edge = findEdge(site.net, site.panel, site.edge);
  if (!edge) return ProblemCode::EditPlaceGone;
  if (findFold(site.net, site.panel, site.edge)) return ProblemCode::EditUnfit;
  const Parameters& m = site.measures;
  const double margin = m.mm("margin");
  const double width = edge->length() - 2 * margin;
  std::optional<Panel> flap =
      width < 3 ? std::nullopt : flapShape({m.mm("depth"), m.mm("taper"), m.mm("radius")}, width);
  if (!flap) return ProblemCode::EditUnfit;
  Net& net = site.net;
  flap->id = freePanelId(net, site.on().id + '/' + flapName(site.edit));
  net.panels.push_back(std::move(*flap));
  const Point along = edge->along();
  Crease crease{site.panel,
                static_cast<int>(net.panels.size()) - 1,
                {edge->a + along * margin, edge->b - along * margin},
                Angle()};
  const int stage = addedStage(site);
  setFold(site, crease, stage);
  net.creases.push_back(std::move(crease));
  if (const auto fault = holdFlap(site, width)) return fault;
  if (m.count("sides") == 1) declareOpen(site);
  return std::nullopt;
}

}  // namespace

EditKind flapEdit() {
  EditMeasure name{"name", worded("styles", "Name"),
                   worded("styles", "By which other changes find it: one word, such as lid."),
                   ParameterKind::Length, ""};
  name.words = true;
  EditKind kind{
      "flap",
      worded("styles", "Flap"),
      worded("styles",
             "A flap on a cut edge: free, or glued or tucked to the panel that meets it."),
      EditPlace::Edge,
      {editLength("depth", worded("styles", "Depth"), worded("styles", "Away from the fold."),
                  "12 mm", mm(3)),
       editLength("taper", worded("styles", "Taper"),
                  worded("styles", "How much shorter it becomes at either end."), "3 mm", Length()),
       editLength("radius", worded("styles", "Corner radius"),
                  worded("styles", "Of its outer corners; 0 for sharp corners."), "0 mm", Length()),
       editLength("margin", worded("styles", "Margin"),
                  worded("styles", "Of the edge, left free at either end."), "0 mm", Length()),
       editChoice(
           "hold", worded("styles", "Held"),
           worded("styles", "A flap that is held takes its own angle."),
           {worded("styles", "Free"), worded("styles", "Glued"), worded("styles", "Tucked")}),
       editChoice("face", worded("styles", "Against"),
                  worded("styles", "The face of the other panel that a held flap lies against."),
                  {worded("styles", "Inside"), worded("styles", "Outside")}),
       editChoice("sides", worded("styles", "Sides"),
                  worded("styles",
                         "Where its cut edges meet others: to be held, or left open as a lid's."),
                  {worded("styles", "Held"), worded("styles", "Open")})},
      applyFlap,
      true};
  addFoldMeasures(kind.measures, "90");
  kind.measures.push_back(std::move(name));
  return kind;
}

}  // namespace creasewright
