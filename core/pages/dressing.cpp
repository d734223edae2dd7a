#include "pages/dressing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

#include "document/halves.h"
#include "document/paper_way.h"
#include "pages/fold_words.h"
#include "pages/ribbon_picture.h"

namespace creasewright {
namespace {

int ownPieces(const BuiltDesign& built) {
  return static_cast<int>(std::ranges::count_if(
      built.pieces, [](const BuiltPiece& p) { return !p.role; }));
}

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

/// What lies on the faces of a piece whose panel 0 is at `place`, and what lies on that.
void addOnFaces(const BuiltDesign& built, const BuiltPiece& host, const Transform& place,
                Dressed& out) {
  const int onto = indexOf(built, host);
  const auto panelAt = [&](const FacePlace& face) {
    return place.after(host.folded[static_cast<std::size_t>(face.panel)]).after(face.place);
  };
  for (const BuiltPiece& part : built.pieces) {
    if (!part.role || part.role->placing == Placing::InFace) continue;
    for (const FacePlace& face : part.role->faces) {
      if (face.piece != onto) continue;
      addWords(part.net, static_cast<int>(out.net.panels.size()), out.words);
      out.net.panels.push_back(part.net.panels.front());
      out.pose.push_back(panelAt(face));
      out.looks.push_back(looksOf(built, part, part.net).front());
      addOnFaces(built, part, panelAt(face), out);
    }
  }
  for (const RibbonNeed& ribbon : built.ribbons) {
    if (!ribbon.shape || !ribbon.shape->face || ribbon.shape->face->piece != onto) continue;
    addBow(*ribbon.shape, ribbon.width.mm(), panelAt(*ribbon.shape->face), out.net, out.pose);
    const Extra& extra = built.design.extras[static_cast<std::size_t>(ribbon.extra)];
    out.looks.resize(out.net.panels.size(), {extra.card.colours});
  }
}

/// A whole folded piece, its panel 0 at `place` in the frame of panel 0.
void addWhole(const BuiltDesign& built, const BuiltPiece& part, const Transform& place,
              Dressed& out) {
  const int first = static_cast<int>(out.net.panels.size());
  addWords(part.net, first, out.words);
  for (std::size_t i = 0; i < part.net.panels.size(); ++i) {
    out.net.panels.push_back(part.net.panels[i]);
    out.pose.push_back(place.after(part.folded[i]));
  }
  std::ranges::move(looksOf(built, part, part.net), std::back_inserter(out.looks));
  for (Crease crease : part.net.creases) {
    crease.parent += first;
    crease.child += first;
    out.net.creases.push_back(crease);
  }
  for (Mate mate : part.net.mates) {
    mate.panel += first;
    mate.onto += first;
    out.net.mates.push_back(mate);
  }
}

bool isGluedOn(const BuiltPiece& piece) {
  return piece.held && piece.held->by == Hold::Glue && piece.held->place;
}

/// The pieces glued onto the one called `name`, which lies at `place`, and those glued onto them.
void addGlued(const BuiltDesign& built, const std::string& name, const Transform& place,
              Dressed& out) {
  for (const BuiltPiece& part : built.pieces) {
    if (!isGluedOn(part) || part.held->to != name) continue;
    const Transform there = place.after(*part.held->place);
    addWhole(built, part, there, out);
    addGlued(built, part.name, there, out);
  }
}

/// What joins a second half to the first, which was glued onto it: their layers follow from that.
void addMatesOfHalves(const BuiltDesign& built, const BuiltPiece& other, Dressed& out) {
  const auto half = std::ranges::find_if(
      built.pieces, [&](const BuiltPiece& each) { return areHalves(each, other); });
  if (half == built.pieces.end()) return;
  const auto first = static_cast<int>(half->net.panels.size());
  const auto own = static_cast<int>(other.net.panels.size());
  const auto there = [&](int panel) { return panel < first ? panel + own : panel - first; };
  for (Mate mate : wholeOf(built, *half)->net.mates) {
    if ((mate.panel < first) == (mate.onto < first)) continue;
    mate.panel = there(mate.panel);
    mate.onto = there(mate.onto);
    out.net.mates.push_back(std::move(mate));
  }
}

/// What lies flat by itself shows its outside, its own y away from who looks.
void turnOver(Pose& pose) {
  const Transform over = Transform::rotationY(Angle::degrees(180));
  for (Transform& placed : pose) placed = over.after(placed);
}

}  // namespace

Dressed undressed(const BuiltDesign& built, const BuiltPiece& piece, Pose pose) {
  Dressed out{piece.net, std::move(pose), looksOf(built, piece, piece.net)};
  addWords(piece.net, 0, out.words);
  return out;
}

Dressed dressed(const BuiltDesign& built, const BuiltPiece& piece) {
  Dressed out = undressed(built, piece, piece.folded);
  if (piece.role) {
    addOnFaces(built, piece, {}, out);
    if (piece.net.creases.empty()) turnOver(out.pose);
    return out;
  }
  if (const auto whole = wholeOf(built, piece)) {
    out = {whole->net, whole->folded, looksOf(built, piece, whole->net)};
    addWords(whole->net, 0, out.words);
  }
  addGlued(built, piece.name, {}, out);
  addMatesOfHalves(built, piece, out);
  const int index = indexOf(built, piece);
  addOnFaces(built, piece, {}, out);
  for (const BuiltPiece& part : built.pieces) {
    if (!part.role || index != 0 || !part.role->around) continue;
    addWhole(built, part, *part.role->around, out);
    addOnFaces(built, part, *part.role->around, out);
  }
  if (index == 0 && ownPieces(built) == 1)
    for (const RibbonNeed& ribbon : built.ribbons) {
      if (ribbon.shape && ribbon.shape->crossing)
        addBow(*ribbon.shape, ribbon.width.mm(), *ribbon.shape->crossing, out.net, out.pose);
      addRibbon(ribbon, out.net, out.pose);
      const Extra& extra = built.design.extras[static_cast<std::size_t>(ribbon.extra)];
      out.looks.resize(out.net.panels.size(), {extra.card.colours});
    }
  return out;
}

bool standsAlone(const BuiltDesign& built, const BuiltPiece& piece) {
  if (!piece.role) return !isGluedOn(piece);
  switch (piece.role->placing) {
    case Placing::Round:
      return !piece.role->around || ownPieces(built) > 1;
    case Placing::OnFace:
    case Placing::InFace:
      return false;
    case Placing::Inside:
    case Placing::Hanging:
      return true;
  }
  return true;
}

}  // namespace creasewright
