#include "guide/extra_steps.h"

#include <algorithm>

#include "extras/pull_shape.h"

namespace creasewright {
namespace {

bool liesOn(const BuiltPiece& part, int onto) {
  return part.role &&
         std::ranges::any_of(
             part.role->faces, [onto](const FacePlace& face) { return face.piece == onto; });
}

/// As it lies on the flat sheet of the piece it is glued to.
Polygon placedOn(const BuiltPiece& onto, const FacePlace& face, const Polygon& outline) {
  const Transform placed = onto.flat.frames[static_cast<std::size_t>(face.panel)].after(face.place);
  Polygon ring;
  for (const Point& p : outline) {
    const Point3 at = placed.apply(p);
    ring.push_back({at.x, at.y});
  }
  return ring;
}

}  // namespace

const ExtraKind& kindOf(const BuiltDesign& built, int extra) {
  return **findExtraKind(built.design.extras[static_cast<std::size_t>(extra)].kind);
}

std::vector<int> piecesOf(const BuiltDesign& built, int extra) {
  std::vector<int> pieces;
  for (std::size_t i = 0; i < built.pieces.size(); ++i)
    if (built.pieces[i].role && built.pieces[i].role->extra == extra)
      pieces.push_back(static_cast<int>(i));
  return pieces;
}

int extrasUnder(const BuiltDesign& built, int extra) {
  const auto hostOf = [&](int guest) {
    const std::vector<int> pieces = piecesOf(built, guest);
    return pieces.empty() ? -1 : built.pieces[static_cast<std::size_t>(pieces.front())].role->host;
  };
  int under = 0;
  for (int host = hostOf(extra); host >= 0; host = hostOf(host)) ++under;
  return under;
}

Step extraStep(const BuiltDesign& built, int extra) {
  Step step;
  step.code = StepCode::AddExtra;
  step.extra = extra;
  step.figure.kind = FigureKind::Finished;
  step.figure.progressFrom = step.figure.progress = 1;
  step.pieces = piecesOf(built, extra);
  return step;
}

Step flatExtraStep(const BuiltDesign& built, int extra, int onto) {
  Step step = extraStep(built, extra);
  step.piece = onto;
  step.figure.kind = FigureKind::Sheet;
  step.figure.scoresDone = step.figure.wasteGone = true;
  const BuiltPiece& host = built.pieces[static_cast<std::size_t>(onto)];
  for (const int index : step.pieces) {
    const BuiltPiece& part = built.pieces[static_cast<std::size_t>(index)];
    if (part.role->placing == Placing::OnFace) step.figure.turned = true;
    for (const FacePlace& face : part.role->faces) {
      if (face.piece != onto) continue;
      step.figure.put.push_back(placedOn(host, face, part.net.panels.front().outline));
      if (std::ranges::find(step.figure.panels, face.panel) == step.figure.panels.end())
        step.figure.panels.push_back(face.panel);
    }
  }
  std::erase_if(step.pieces, [&](int index) {
    return !liesOn(built.pieces[static_cast<std::size_t>(index)], onto);
  });
  return step;
}

std::vector<int> pullsThrough(const BuiltDesign& built, int piece) {
  std::vector<int> pulls;
  for (int i = 0; i < static_cast<int>(built.ribbons.size()); ++i)
    if (const auto& pull = built.ribbons[static_cast<std::size_t>(i)].pull;
        pull && pull->face.piece == piece)
      pulls.push_back(i);
  return pulls;
}

Step pullStep(const BuiltDesign& built, int ribbon) {
  const RibbonNeed& need = built.ribbons[static_cast<std::size_t>(ribbon)];
  const FacePlace& face = need.pull->face;
  Step step = extraStep(built, need.extra);
  step.piece = face.piece;
  step.figure.kind = FigureKind::Sheet;
  step.figure.scoresDone = step.figure.wasteGone = true;
  step.figure.panels.push_back(face.panel);
  const BuiltPiece& host = built.pieces[static_cast<std::size_t>(face.piece)];
  for (const Polygon& end : pullEnds(need, host.net.panels[static_cast<std::size_t>(face.panel)]))
    step.figure.put.push_back(placedOn(host, face, end));
  return step;
}

std::vector<int> flatExtrasOn(const BuiltDesign& built, int piece) {
  std::vector<int> extras;
  for (const BuiltPiece& part : built.pieces)
    if (liesOn(part, piece) && std::ranges::find(extras, part.role->extra) == extras.end())
      extras.push_back(part.role->extra);
  std::ranges::stable_sort(extras, {}, [&](int extra) { return kindOf(built, extra).turn; });
  return extras;
}

std::optional<Colour> ribbonColour(const BuiltDesign& built, int extra) {
  if (extra < 0 || kindOf(built, extra).act == ExtraAct::TieTagOn) return std::nullopt;
  return built.design.extras[static_cast<std::size_t>(extra)].card.colours.face;
}

std::vector<int> extrasPlaced(const BuiltDesign& built, Placing placing) {
  std::vector<int> extras;
  for (const BuiltPiece& part : built.pieces)
    if (part.role && part.role->placing == placing &&
        std::ranges::find(extras, part.role->extra) == extras.end())
      extras.push_back(part.role->extra);
  std::ranges::stable_sort(extras, {}, [&](int extra) { return kindOf(built, extra).turn; });
  return extras;
}

std::optional<int> pieceUnder(const BuiltDesign& built, int extra, const FacePlace& face,
                              Point at) {
  const auto before = [&](int other) {
    return std::pair(kindOf(built, other).turn, other) <
           std::pair(kindOf(built, extra).turn, extra);
  };
  const Point3 there = face.place.apply(at);
  std::optional<int> found;
  for (int i = 0; i < static_cast<int>(built.pieces.size()); ++i) {
    const BuiltPiece& part = built.pieces[static_cast<std::size_t>(i)];
    if (!part.role || part.role->placing != Placing::OnFace || part.role->extra == extra ||
        !before(part.role->extra))
      continue;
    for (const FacePlace& under : part.role->faces) {
      if (under.piece != face.piece || under.panel != face.panel) continue;
      const Point3 on = under.place.inverse().apply(there);
      if (locate({on.x, on.y}, part.net.panels.front().outline) != Side::Inside) continue;
      // What lies on it again is nearer.
      const FacePlace above{i, 0, under.place.inverse().after(face.place)};
      found = pieceUnder(built, extra, above, at).value_or(i);
    }
  }
  return found;
}

}  // namespace creasewright
