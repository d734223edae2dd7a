#pragma once

#include <string>
#include <vector>

#include "document/build.h"
#include "edits/kinds/crease_site.h"
#include "support/random.h"

namespace creasewright::testing {

/// An edge of a panel that no crease lies on; its first one where there is none.
inline std::string freeEdge(const BuiltPiece& piece, std::size_t panel) {
  const Panel& on = piece.net.panels[panel];
  for (std::size_t i = 0; i < on.outline.size(); ++i) {
    const Segment edge{
        piece.flat.place(static_cast<int>(panel), on.outline[i]),
        piece.flat.place(static_cast<int>(panel), on.outline[(i + 1) % on.outline.size()])};
    const Point middle = (edge.a + edge.b) / 2;
    bool free = length(edge) > 12;
    for (const Segment& crease : piece.flat.creases)
      free = free && distanceToSegment(middle, crease) > 1;
    if (free) return on.edges[i];
  }
  return on.edges.front();
}

/// Any kind of edit on any panel of a design, with some of its measures drawn: many of them cannot
/// be made.
inline Edit randomEdit(Random& random, const BuiltDesign& built) {
  const auto pick = [&](std::size_t count) {
    return static_cast<std::size_t>(random.whole(0, static_cast<int>(count) - 1));
  };
  const EditKind& kind = editKinds()[pick(editKinds().size())];
  const BuiltPiece& piece = built.pieces[pick(built.pieces.size())];
  std::size_t panel = pick(piece.net.panels.size());
  std::vector<std::size_t> tucks;  // of the few panels that a slit lock is for
  for (const Mate& mate : piece.net.mates)
    if (mate.method == Method::Tuck) tucks.push_back(static_cast<std::size_t>(mate.panel));
  if (kind.id == "slit-lock" && !tucks.empty()) panel = tucks[pick(tucks.size())];
  Edit edit{std::string(kind.id), piece.name, piece.net.panels[panel].id, {}, {}, true};
  if (kind.place == EditPlace::Edge) edit.edge = freeEdge(piece, panel);
  if (kind.place == EditPlace::Crease) {
    const auto edges = edgesWithFolds(piece.net, static_cast<int>(panel));
    edit.edge = edges.empty() ? freeEdge(piece, panel) : edges[pick(edges.size())];
  }
  if (kind.id == "fold") edit.measures["line"] = "Perforation";
  for (const EditMeasure& measure : kind.measures) {
    if (random.whole(0, 2) != 0) continue;
    std::string& text = edit.measures[std::string(measure.key)];
    if (measure.words)
      text = "Grüße & 3 > 2";
    else if (!measure.choices.empty())
      text = std::string(measure.choices[pick(measure.choices.size())]);
    else if (measure.kind == ParameterKind::Count)
      text = std::to_string(random.whole(1, 6));
    else
      text = "panel-width / " + std::to_string(random.whole(2, 9)) + " - 1 mm";
  }
  return edit;
}

}  // namespace creasewright::testing
