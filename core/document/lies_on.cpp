#include "document/lies_on.h"

#include <algorithm>

#include "extras/ribbon_picture.h"
#include "geometry/region.h"

namespace creasewright {
namespace {

/// A flat shape on a panel of the box, in the panel's frame.
struct OnPanel {
  const FacePlace* face = nullptr;
  Polygon outline;

  OnPanel(const FacePlace& place, const Polygon& shape) : face(&place) {
    for (const Point& p : shape) {
      const Point3 at = place.place.apply(p);
      outline.push_back({at.x, at.y});
    }
    if (signedArea(outline) < 0) std::ranges::reverse(outline);
  }
  /// mm off the middle of the card, outwards
  [[nodiscard]] double height() const { return -face->place.apply(Point{}).z; }
  /// Whether most of another one lies over it.
  [[nodiscard]] bool isUnder(const OnPanel& other) const {
    constexpr double kLevel = 1e-3;  // mm: what lies flush is beside it
    if (face->piece != other.face->piece || face->panel != other.face->panel) return false;
    if (height() > other.height() - kLevel) return false;
    return area(intersect(region(other.outline), region(outline))) >
           area(region(other.outline)) / 2;
  }
};

/// The lowest of an extra's own pieces on the box, or a bow there.
std::optional<OnPanel> lowestOf(const BuiltDesign& built, int extra) {
  std::optional<OnPanel> lowest;
  for (const BuiltPiece& piece : built.pieces) {
    if (!piece.role || piece.role->extra != extra || piece.role->placing != Placing::OnFace ||
        piece.role->faces.empty())
      continue;
    OnPanel own(piece.role->faces.front(), piece.net.panels.front().outline);
    if (!lowest || own.height() < lowest->height()) lowest = std::move(own);
  }
  if (lowest) return lowest;
  for (const RibbonNeed& ribbon : built.ribbons)
    if (ribbon.extra == extra && ribbon.shape && ribbon.shape->face)
      return OnPanel(*ribbon.shape->face, bowOutline(*ribbon.shape, ribbon.width.mm()));
  return std::nullopt;
}

int hostOf(const BuiltDesign& built, int extra) {
  for (const BuiltPiece& piece : built.pieces)
    if (piece.role && piece.role->extra == extra) return piece.role->host;
  for (const RibbonNeed& ribbon : built.ribbons)
    if (ribbon.extra == extra) return ribbon.host;
  return kOnBox;
}

}  // namespace

std::optional<int> liesOn(const BuiltDesign& built, int extra) {
  if (const int host = hostOf(built, extra); host >= 0) return host;
  const std::optional<OnPanel> own = lowestOf(built, extra);
  if (!own) return std::nullopt;
  std::optional<int> below;
  double top = 0;
  for (const BuiltPiece& piece : built.pieces) {
    if (!piece.role || piece.role->extra == extra || piece.role->placing != Placing::OnFace)
      continue;
    for (const FacePlace& face : piece.role->faces) {
      const OnPanel mat(face, piece.net.panels.front().outline);
      if (!mat.isUnder(*own) || (below && mat.height() <= top)) continue;
      below = piece.role->extra;
      top = mat.height();
    }
  }
  return below;
}

}  // namespace creasewright
