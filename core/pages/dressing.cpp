#include "pages/dressing.h"

#include <algorithm>
#include <iterator>

#include "document/halves.h"
#include "document/paper_way.h"
#include "extras/ribbon_picture.h"
#include "geometry/region.h"
#include "pages/fold_words.h"
#include "pages/pull_picture.h"

namespace creasewright {
namespace {

/// How the panels of a net cut from a piece's card look.
std::vector<PanelLook> looksOf(const BuiltDesign& built, const BuiltPiece& piece, const Net& net) {
  const CardColours& colours = piece.card.colours;
  if (!colours.pattern) return std::vector<PanelLook>(net.panels.size(), PanelLook{colours});
  std::vector<PanelLook> looks;
  for (const PlaneMap& place : paperPlaces(net, paperUp(built, piece), colours.patternBehind))
    looks.push_back({colours, place});
  return looks;
}

int indexOf(const BuiltDesign& built, const BuiltPiece& piece) {
  return static_cast<int>(&piece - built.pieces.data());
}

bool isGluedOn(const BuiltPiece& piece) {
  return piece.held && piece.held->by == Hold::Glue && piece.held->place;
}

/// A piece with what lies on it, and the pieces glued onto it.
void addWithGlued(const BuiltDesign& built, const BuiltPiece& piece, const Transform& place,
                  Dressing& out) {
  out.add(piece, place, piece.folded);
  out.addOnFaces(piece, place, piece.folded);
  for (const BuiltPiece& part : built.pieces)
    if (isGluedOn(part) && part.held->to == piece.name)
      addWithGlued(built, part, place.after(*part.held->place), out);
}

/// What lies flat by itself shows its outside, its own y away from who looks.
void turnOver(Pose& pose) {
  const Transform over = Transform::rotationY(Angle::degrees(180));
  for (Transform& placed : pose) placed = over.after(placed);
}

/// The outline of a layer's foam: so far inside, of few corners.
Polygon foamRim(const Polygon& outline) {
  constexpr double kRim = 2;            // mm
  constexpr std::size_t kCorners = 12;  // at most
  const Region inner = offset(region(outline), -kRim);
  if (inner.empty()) return {};
  const Polygon& ring = inner.front().outer;
  const std::size_t step = (ring.size() + kCorners - 1) / kCorners;
  Polygon rim;
  for (std::size_t i = 0; i < ring.size(); i += std::max<std::size_t>(1, step))
    rim.push_back(ring[i]);
  return rim.size() < 3 ? Polygon() : rim;
}

/// Where what is glued on comes from: so far before its face, mm.
constexpr double kBefore = 50;

}  // namespace

double Dressing::onWay(int extra) const {
  const auto index = static_cast<std::size_t>(extra);
  return index < extras_.size() ? extras_[index] : 1;
}

void Dressing::add(const BuiltPiece& piece, const Transform& place, const Pose& pose) {
  const int first = static_cast<int>(out_.net.panels.size());
  for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
    out_.net.panels.push_back(piece.net.panels[i]);
    out_.pose.push_back(place.after(pose[i]));
    out_.owners.push_back({indexOf(built_, piece), static_cast<int>(i)});
  }
  std::ranges::move(looksOf(built_, piece, piece.net), std::back_inserter(out_.looks));
  for (Crease crease : piece.net.creases) {
    crease.parent += first;
    crease.child += first;
    out_.net.creases.push_back(std::move(crease));
  }
  for (Mate mate : piece.net.mates) {
    mate.panel += first;
    mate.onto += first;
    out_.net.mates.push_back(std::move(mate));
  }
  for (Slit slit : piece.net.slits) {
    slit.panel += first;
    out_.net.slits.push_back(std::move(slit));
  }
  addWords(piece.net, first, out_.words);
}

void Dressing::addOnFaces(const BuiltPiece& piece, const Transform& place, const Pose& pose) {
  const int onto = indexOf(built_, piece);
  const auto panelAt = [&](const FacePlace& face, double share) {
    return place.after(pose[static_cast<std::size_t>(face.panel)])
        .after(face.place)
        .after(Transform::translation({0, 0, -kBefore * (1 - share)}));
  };
  for (const BuiltPiece& part : built_.pieces) {
    if (!part.role || part.role->placing == Placing::InFace) continue;
    const double share = onWay(part.role->extra);
    if (share <= 0) continue;
    for (const FacePlace& face : part.role->faces) {
      if (face.piece != onto) continue;
      addWords(part.net, static_cast<int>(out_.net.panels.size()), out_.words);
      out_.net.panels.push_back(part.net.panels.front());
      out_.pose.push_back(panelAt(face, share));
      out_.looks.push_back(looksOf(built_, part, part.net).front());
      out_.owners.push_back({indexOf(built_, part), 0});
      const Transform layer = out_.pose.back();
      addFoam(part, layer);
      addOnFaces(part, layer, part.folded);
    }
  }
  for (const RibbonNeed& ribbon : built_.ribbons) {
    const double share = onWay(ribbon.extra);
    if (share <= 0) continue;
    const std::size_t first = out_.net.panels.size();
    if (ribbon.shape && ribbon.shape->face && ribbon.shape->face->piece == onto)
      addBow(*ribbon.shape, ribbon.width.mm(), panelAt(*ribbon.shape->face, share), out_.net,
             out_.pose);
    if (ribbon.pull && ribbon.pull->face.piece == onto) {
      const auto panel = static_cast<std::size_t>(ribbon.pull->face.panel);
      addPull(ribbon, piece.net.panels[panel], panelAt(ribbon.pull->face, 1), share, out_.net,
              out_.pose);
    }
    addRibbonPanels(ribbon.extra, first);
  }
}

/// The foam under a layer, as a dark rim a little inside of its edge: no air is seen between them.
void Dressing::addFoam(const BuiltPiece& layer, const Transform& place) {
  if (!layer.role->layer || layer.role->layer->hold != LayerHold::Foam) return;
  constexpr Colour kInTheGap{0x5E, 0x58, 0x50};
  const double thick = layer.role->layer->foam.mm();
  const Polygon ring = foamRim(layer.net.panels.front().outline);
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point from = ring[i];
    const Point to = ring[(i + 1) % ring.size()];
    const double length = distance(from, to);
    if (length < 1e-6) continue;
    const Point along = (to - from) / length;
    Panel side;
    side.id = layer.net.panels.front().id;
    side.outline = {{0, 0}, {length, 0}, {length, thick}, {0, thick}};
    side.edges.assign(side.outline.size(), "edge");
    out_.net.panels.push_back(std::move(side));
    out_.pose.push_back(
        place.after(Transform::frame({from.x, from.y, 0}, {along.x, along.y, 0}, {0, 0, 1})));
    out_.looks.push_back({CardColours{.face = kInTheGap, .back = kInTheGap}});
    out_.owners.push_back({indexOf(built_, layer), 0});
  }
}

/// Looks and owners of the panels of ribbon from `first` on.
void Dressing::addRibbonPanels(int extra, std::size_t first) {
  const CardColours& colours = built_.design.extras[static_cast<std::size_t>(extra)].card.colours;
  out_.looks.resize(out_.net.panels.size(), {colours});
  for (std::size_t i = first; i < out_.net.panels.size(); ++i)
    out_.owners.push_back({-1, static_cast<int>(i - first)});
}

void Dressing::addRibbons(const Transform& place) {
  for (const RibbonNeed& ribbon : built_.ribbons) {
    const double share = onWay(ribbon.extra);
    if (share <= 0) continue;
    const std::size_t first = out_.net.panels.size();
    if (ribbon.shape && ribbon.shape->crossing)
      addBow(*ribbon.shape, ribbon.width.mm(), *ribbon.shape->crossing, out_.net, out_.pose);
    addRibbon(ribbon, share, out_.net, out_.pose);
    for (std::size_t i = first; i < out_.pose.size(); ++i) out_.pose[i] = place.after(out_.pose[i]);
    addRibbonPanels(ribbon.extra, first);
  }
}

void Dressing::addMatesOfHalves() {
  const auto firstOf = [&](const BuiltPiece& piece) {
    const int index = indexOf(built_, piece);
    const auto found = std::ranges::find(out_.owners, index, &PanelOwner::piece);
    return static_cast<int>(found - out_.owners.begin());
  };
  for (const BuiltPiece& half : built_.pieces)
    for (const BuiltPiece& other : built_.pieces) {
      if (!areHalves(half, other)) continue;
      const auto own = static_cast<int>(half.net.panels.size());
      const auto there = [&](int panel) {
        return panel < own ? firstOf(half) + panel : firstOf(other) + panel - own;
      };
      const std::optional<Whole> whole = wholeOf(built_, half);
      for (Mate mate : whole->net.mates) {
        if ((mate.panel < own) == (mate.onto < own)) continue;
        mate.panel = there(mate.panel);
        mate.onto = there(mate.onto);
        out_.net.mates.push_back(std::move(mate));
      }
    }
}

Dressed undressed(const BuiltDesign& built, const BuiltPiece& piece, Pose pose) {
  Dressed out{piece.net, std::move(pose), looksOf(built, piece, piece.net), {}};
  for (std::size_t i = 0; i < piece.net.panels.size(); ++i)
    out.owners.push_back({indexOf(built, piece), static_cast<int>(i)});
  addWords(piece.net, 0, out.words);
  return out;
}

Dressed dressed(const BuiltDesign& built, const BuiltPiece& piece) {
  Dressing out(built);
  if (isGluedOn(piece)) {
    out.add(piece, {}, piece.folded);
    const auto other = std::ranges::find_if(
        built.pieces, [&](const BuiltPiece& each) { return areHalves(piece, each); });
    if (other != built.pieces.end()) out.add(*other, piece.held->place->inverse(), other->folded);
    out.addOnFaces(piece, {}, piece.folded);
  } else {
    addWithGlued(built, piece, {}, out);
  }
  const bool halves = std::ranges::any_of(built.pieces, [&](const BuiltPiece& each) {
    return areHalves(each, piece) || areHalves(piece, each);
  });
  if (halves) out.addMatesOfHalves();
  Dressed shown = out.take();
  if (piece.role && piece.net.creases.empty()) turnOver(shown.pose);
  return shown;
}

}  // namespace creasewright
