#include "making/cut_strokes.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace creasewright {
namespace {

constexpr double kSoftestTurn = 0.1;  // degrees between two pieces of a curve
constexpr double kSharpestTurn = 35;
constexpr std::size_t kFewestPieces = 3;

bool onBorder(const Segment& s, const FlatNet& flat) {
  const auto both = [](double a, double b, double at) {
    return std::abs(a - at) <= kSamePlace && std::abs(b - at) <= kSamePlace;
  };
  return both(s.a.x, s.b.x, 0) || both(s.a.x, s.b.x, flat.width) || both(s.a.y, s.b.y, 0) ||
         both(s.a.y, s.b.y, flat.height);
}

bool turnsSoftly(const Segment& from, const Segment& to) {
  const Point a = from.b - from.a;
  const Point b = to.b - to.a;
  const double turn = std::abs(std::atan2(cross(a, b), dot(a, b))) * 180 / std::numbers::pi;
  return turn > kSoftestTurn && turn < kSharpestTurn;
}

/// Shares a chain of pieces that turn softly: a curve, or single straight cuts.
void addChain(const std::vector<Segment>& chain, CutStrokes& strokes) {
  if (chain.size() < kFewestPieces) {
    strokes.straight.insert(strokes.straight.end(), chain.begin(), chain.end());
    return;
  }
  Polyline curve{chain.front().a};
  for (const Segment& piece : chain) curve.push_back(piece.b);
  strokes.curves.push_back(std::move(curve));
}

std::vector<Segment> piecesOf(const Polygon& ring) {
  std::vector<Segment> pieces;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Segment piece{ring[i], ring[(i + 1) % ring.size()]};
    if (length(piece) > kSamePlace) pieces.push_back(piece);
  }
  return pieces;
}

void addRing(const Polygon& ring, const FlatNet& flat, CutStrokes& strokes) {
  std::vector<Segment> pieces = piecesOf(ring);
  const std::size_t count = pieces.size();
  for (std::size_t i = 0; i < count; ++i) {
    if (turnsSoftly(pieces[(i + count - 1) % count], pieces[i])) continue;
    std::ranges::rotate(pieces, pieces.begin() + static_cast<std::ptrdiff_t>(i));
    break;
  }
  std::vector<Segment> chain;
  for (const Segment& piece : pieces) {
    const bool border = onBorder(piece, flat);
    if (!chain.empty() && (border || !turnsSoftly(chain.back(), piece))) {
      addChain(chain, strokes);
      chain.clear();
    }
    if (!border) chain.push_back(piece);
  }
  if (!chain.empty()) addChain(chain, strokes);
}

/// Makes `s` longer by `t` when both lie on one line and touch.
bool join(Segment& s, const Segment& t) {
  const double size = length(s);
  const Point along = (s.b - s.a) / size;
  if (std::abs(cross(along, t.a - s.a)) > kSamePlace ||
      std::abs(cross(along, t.b - s.a)) > kSamePlace)
    return false;
  const double from = std::min(dot(along, t.a - s.a), dot(along, t.b - s.a));
  const double to = std::max(dot(along, t.a - s.a), dot(along, t.b - s.a));
  if (from > size + kSamePlace || to < -kSamePlace) return false;
  const auto end = [&](double at) {
    return std::abs(at - dot(along, t.a - s.a)) < std::abs(at - dot(along, t.b - s.a)) ? t.a : t.b;
  };
  const Point low = from < 0 ? end(from) : s.a;
  s.b = to > size ? end(to) : s.b;
  s.a = low;
  return true;
}

std::vector<Segment> joinedCuts(std::vector<Segment> cuts) {
  for (bool again = true; again;) {
    again = false;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
      for (std::size_t j = i + 1; j < cuts.size();) {
        if (!join(cuts[i], cuts[j])) {
          ++j;
          continue;
        }
        cuts[j] = cuts.back();
        cuts.pop_back();
        again = true;
      }
    }
  }
  return cuts;
}

}  // namespace

CutStrokes cutStrokes(const FlatNet& flat) {
  CutStrokes strokes;
  for (const Area& area : flat.outline) {
    addRing(area.outer, flat, strokes);
    for (Polyline hole : area.holes) {
      hole.push_back(hole.front());
      strokes.openings.push_back(std::move(hole));
    }
  }
  strokes.straight.insert(strokes.straight.end(), flat.partings.begin(), flat.partings.end());
  strokes.straight = joinedCuts(std::move(strokes.straight));
  strokes.slits = flat.slits;
  return strokes;
}

}  // namespace creasewright
