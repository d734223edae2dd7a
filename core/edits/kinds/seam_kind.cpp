#include <algorithm>
#include <iterator>

#include "edits/kinds/crease_site.h"
#include "edits/kinds/flap_shape.h"
#include "edits/kinds/halves.h"
#include "edits/kinds/kinds.h"
#include "edits/kinds/net_surgery.h"
#include "edits/kinds/place_measures.h"
#include "geometry/region.h"
#include "net/net_problems.h"
#include "net/pose.h"

namespace creasewright {
namespace {

constexpr std::string_view kOtherHalf = "other-half";

/// The net of some panels alone, in their order.
Net partOf(const Net& net, const std::vector<bool>& kept) {
  Net part = net;
  PanelNumbers numbers;
  int next = 0;
  for (const bool keep : kept) numbers.push_back(keep ? next++ : -1);
  renumberPanels(part, numbers);
  return part;
}

/// Glued joints between the halves: each is told of the half that has the flap.
void addJoints(const EditSite& site, const std::vector<bool>& beyond, const std::string& other) {
  const Net& net = site.net;
  const auto panel = [&net](int index) { return net.panels[static_cast<std::size_t>(index)].id; };
  const auto far = [&beyond](int index) { return beyond[static_cast<std::size_t>(index)]; };
  for (const Mate& mate : net.mates) {
    if (mate.method != Method::Glue || far(mate.panel) == far(mate.onto)) continue;
    const std::string& own = far(mate.panel) ? other : site.piece.name;
    const std::string& to = far(mate.panel) ? site.piece.name : other;
    site.adds.joints.push_back(
        {own, {Hold::Glue, to, panel(mate.panel), panel(mate.onto), mate.face}});
  }
}

bool anyLoopBetween(const Net& net, const std::vector<bool>& beyond) {
  return std::ranges::any_of(
      net.creases,
      [&](const Crease& crease) {
        return crease.loop && beyond[static_cast<std::size_t>(crease.parent)] !=
                                  beyond[static_cast<std::size_t>(crease.child)];
      });
}

std::string freePieceName(const std::vector<Piece>& pieces) {
  std::string name(kOtherHalf);
  for (int i = 2; std::ranges::find(pieces, name, &Piece::name) != pieces.end(); ++i)
    name = std::string(kOtherHalf) + "-" + std::to_string(i);
  return name;
}

/// The flap that the first half gets instead of the second one; nothing where it has no room.
std::optional<Panel> seamFlap(const EditSite& site, const Crease& fold) {
  const Parameters& m = site.measures;
  if (m.mm("depth") < minimumFlapWidth(site.caliper)) return std::nullopt;
  std::optional<Panel> flap = flapShape({m.mm("depth"), m.mm("taper"), 0}, length(fold.onParent));
  const Panel& under = site.net.panels[static_cast<std::size_t>(fold.child)];
  if (!flap || area(subtract(region(flap->outline), region(under.outline))) > 0.5)
    return std::nullopt;
  const std::string& wall = site.net.panels[static_cast<std::size_t>(fold.parent)].id;
  flap->id = freePanelId(site.net, wall + "/seam");
  return flap;
}

/// Whether a piece is held to another one, or another one to it, but loosely; or is a half already.
bool isJoined(const Piece& piece, const std::vector<Piece>& all) {
  const auto fast = [](const Piece& each) { return each.held && each.held->by != Hold::Loose; };
  return fast(piece) || isOtherHalf(piece.name) || std::ranges::any_of(all, [&](const Piece& each) {
           return fast(each) && each.held->to == piece.name;
         });
}

std::optional<ProblemCode> applySeam(const EditSite& site) {
  const std::optional<FoldOn> found = findFold(site.net, site.panel, site.edge);
  if (!found) return ProblemCode::EditPlaceGone;
  const Crease fold = site.net.creases[found->crease];
  Piece& piece = site.piece;
  if (fold.loop || fold.kind == CreaseKind::Flat || isJoined(piece, site.pieces))
    return ProblemCode::EditUnfit;
  std::optional<Panel> flap = seamFlap(site, fold);
  if (!flap) return ProblemCode::EditUnfit;
  std::vector<bool> beyond(site.net.panels.size());
  for (const int panel : withAllBeyond(site.net, fold.child)) {
    beyond[static_cast<std::size_t>(panel)] = true;
    // The product's room is told of the first half.
    if (isNeeded(piece, site.pieces, site.net.panels[static_cast<std::size_t>(panel)].id))
      return ProblemCode::EditUnfit;
  }
  if (anyLoopBetween(site.net, beyond)) return ProblemCode::EditUnfit;
  const Transform place = pose(site.net, 1.0)[static_cast<std::size_t>(fold.child)];
  Piece other;
  other.name = freePieceName(site.pieces);
  other.net = partOf(site.net, beyond);
  other.count = piece.count;
  other.held = piece.held;
  if (other.held && other.held->place) other.held->place = other.held->place->after(place);
  addJoints(site, beyond, other.name);
  const std::string meets = other.net.panels.front().id;
  beyond.flip();
  site.net = partOf(site.net, beyond);
  Crease own = fold;
  own.parent = static_cast<int>(std::count(beyond.begin(), beyond.begin() + fold.parent, true));
  own.child = static_cast<int>(site.net.panels.size());
  site.net.creases.push_back(own);
  const Face face = site.measures.count("face") == 0 ? Face::Outside : Face::Inside;
  piece.held = Holding{Hold::Glue, other.name, flap->id, meets, face, place.inverse()};
  site.net.panels.push_back(std::move(*flap));
  site.adds.pieces.push_back(std::move(other));
  return std::nullopt;
}

}  // namespace

bool isOtherHalf(std::string_view piece) { return piece.starts_with(kOtherHalf); }

Net wholeNet(const Net& half, const Net& otherHalf) {
  Net whole = half;
  const int first = static_cast<int>(half.panels.size());
  const Crease* flap = half.creaseOf(first - 1);
  if (flap == nullptr) return whole;
  Crease seam = *flap;
  seam.child = first;
  std::ranges::copy(otherHalf.panels, std::back_inserter(whole.panels));
  whole.creases.push_back(std::move(seam));
  for (Crease crease : otherHalf.creases) {
    crease.parent += first;
    crease.child += first;
    whole.creases.push_back(std::move(crease));
  }
  for (Mate mate : otherHalf.mates) {
    mate.panel += first;
    mate.onto += first;
    whole.mates.push_back(std::move(mate));
  }
  return whole;
}

EditKind seamEdit() {
  return {
      "seam",
      worded("styles", "Second seam"),
      worded("styles",
             "The blank is made in two halves, glued together at a fold: for a box that is "
             "larger than the sheet."),
      EditPlace::Crease,
      {editLength("depth", worded("styles", "Depth"), worded("styles", "Of the glue tab."), "12 mm",
                  mm(3)),
       editLength("taper", worded("styles", "Taper"),
                  worded("styles", "How much shorter it becomes at either end."), "3 mm", Length()),
       editChoice("face", worded("styles", "Against"),
                  worded("styles",
                         "The face of the other half that the glue tab lies against; inside it "
                         "takes its thickness of the room."),
                  {worded("styles", "Outside"), worded("styles", "Inside")})},
      applySeam,
      true,
      true};
}

}  // namespace creasewright
