#include "document/covered_words.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "drawing/set_words.h"
#include "drawing/words_on_panel.h"
#include "extras/ribbon_picture.h"
#include "geometry/region.h"
#include "net/standing.h"

namespace creasewright {
namespace {

constexpr double kNear = 20;      // mm over the words: what is farther is not on their face
constexpr double kFlush = 0.05;   // mm: one lies on the other, whatever the picture says
constexpr double kFacing = 0.8;   // cosine: loops of a bow lean out
constexpr double kCounts = 0.01;  // of the words' area
constexpr double kAround = 0.22;  // of the type size: room round letters for accents and tails

/// A panel of card or ribbon on the finished gift.
struct Cover {
  const Panel* panel = nullptr;
  Transform place;  ///< in the frame of the piece that the box is held to
};

class Finished {
 public:
  explicit Finished(const BuiltDesign& built) : built_(built) {
    for (const BuiltPiece& piece : built.pieces)
      if (!piece.role) own_.push_back(&piece);
    if (own_.empty()) return;
    if (const auto first = standingOf(*own_.front(), own_)) root_ = first->root;
  }

  /// Panel 0 of a piece wherever it stands.
  [[nodiscard]] std::vector<Transform> placesOf(const BuiltPiece& piece) const {
    if (!piece.role) {
      const auto standing = standingOf(piece, own_);
      const bool together = standing && standing->root == root_;
      return together ? std::vector{standing->place} : std::vector<Transform>();
    }
    std::vector<Transform> places;
    if (piece.role->around)
      for (const Transform& box : placesOf(built_.pieces.front()))
        places.push_back(box.after(*piece.role->around));
    if (piece.role->placing == Placing::OnFace || piece.role->placing == Placing::OnInside)
      for (const FacePlace& face : piece.role->faces)
        for (const Transform& on : placesOn(face)) places.push_back(on);
    return places;
  }

  /// The extra that the piece lies on in the end: what goes round, or the box.
  [[nodiscard]] int baseOf(const BuiltPiece& piece) const {
    if (!piece.role) return kOnBox;
    int extra = piece.role->extra;
    while (hostOf(extra) >= 0 && !goesRound(extra)) extra = hostOf(extra);
    return goesRound(extra) ? extra : kOnBox;
  }

  /// Whether an extra lies on another one, or on what lies on it.
  [[nodiscard]] bool isOver(int extra, int other) const {
    for (int host = hostOf(extra); host >= 0; host = hostOf(host))
      if (host == other) return true;
    return false;
  }

 private:
  [[nodiscard]] std::vector<Transform> placesOn(const FacePlace& face) const {
    const BuiltPiece& host = built_.pieces.at(static_cast<std::size_t>(face.piece));
    std::vector<Transform> places;
    for (const Transform& on : placesOf(host))
      places.push_back(
          on.after(host.folded[static_cast<std::size_t>(face.panel)]).after(face.place));
    return places;
  }

  [[nodiscard]] int hostOf(int extra) const {
    for (const BuiltPiece& piece : built_.pieces)
      if (piece.role && piece.role->extra == extra) return piece.role->host;
    for (const RibbonNeed& ribbon : built_.ribbons)
      if (ribbon.extra == extra) return ribbon.host;
    return kOnBox;
  }

  [[nodiscard]] bool goesRound(int extra) const {
    return std::ranges::any_of(
        built_.pieces,
        [extra](const BuiltPiece& piece) {
          return piece.role && piece.role->extra == extra && piece.role->around;
        });
  }

  const BuiltDesign& built_;
  std::vector<const Piece*> own_;
  const Piece* root_ = nullptr;  ///< that the first piece is held to
};

/// A line of words in the frame of its panel.
struct Line {
  const BuiltPiece* piece = nullptr;
  const Inscription* words = nullptr;
  Region place;
  std::vector<Transform> panels;  ///< wherever its panel stands

  [[nodiscard]] int extra() const { return piece->role ? piece->role->extra : kOnBox; }
};

Region upright(Polygon outer, std::vector<Polygon> openings) {
  if (signedArea(outer) < 0) std::ranges::reverse(outer);
  return cutOut(region(outer), openings);
}

/// Whether a cover lies from `least` to kNear mm over the words, and over so much of them that it
/// counts.
bool liesOver(const Cover& cover, const Line& line, double least) {
  for (const Transform& panel : line.panels) {
    const Transform there = panel.inverse().after(cover.place);
    if (there.normal().z < kFacing) continue;
    // Panels are drawn from the inside: out is down.
    const auto onWords = [&](const Polygon& ring) {
      Polygon flat;
      for (const Point& p : ring) {
        const Point3 at = there.apply(p);
        flat.push_back({at.x, at.y});
      }
      return flat;
    };
    const Bounds box = bounds(cover.panel->outline);
    const double lift = -there.apply((box.low + box.high) / 2).z;
    if (lift < least || lift > kNear) continue;
    std::vector<Polygon> openings;
    for (const Polygon& ring : cover.panel->openings) openings.push_back(onWords(ring));
    const Region card = upright(onWords(cover.panel->outline), std::move(openings));
    if (area(intersect(line.place, card)) > kCounts * area(line.place)) return true;
  }
  return false;
}

std::vector<Line> linesOf(const BuiltPiece& piece, const Finished& gift) {
  std::vector<Line> lines;
  const std::vector<Inscription> turned = wordsOfPanels(piece.net);
  if (turned.empty()) return lines;
  const std::vector<Transform> places = gift.placesOf(piece);
  for (std::size_t i = 0; i < turned.size(); ++i) {
    Line line{&piece, &piece.net.inscriptions[i], {}, {}};
    const double round = kAround * turned[i].height;
    line.place = upright(wordsArea(textOnPanel(turned[i]), turned[i].text, -round), {});
    for (const Transform& place : places)
      line.panels.push_back(place.after(piece.folded[static_cast<std::size_t>(turned[i].panel)]));
    lines.push_back(std::move(line));
  }
  return lines;
}

bool coveredBy(const BuiltPiece& card, const Line& line, const Finished& gift) {
  if (!card.role || &card == line.piece || card.role->placing == Placing::InFace) return false;
  // Of two that lie flush the later one was put on last.
  const double least = card.role->extra > line.extra() ? -kFlush : kFlush;
  for (const Transform& place : gift.placesOf(card))
    for (std::size_t i = 0; i < card.net.panels.size(); ++i)
      if (liesOver({&card.net.panels[i], place.after(card.folded[i])}, line, least)) return true;
  return false;
}

/// Ribbon that is tied round goes over all that lies on what is under it; a bow is glued onto a
/// face in the order of the design.
bool isPutOver(const RibbonNeed& ribbon, const Line& line, const Finished& gift) {
  const bool onFace = ribbon.shape && ribbon.shape->face;
  if (onFace) return ribbon.extra > line.extra() || gift.isOver(ribbon.extra, line.extra());
  const int base = gift.baseOf(*line.piece);
  return base < 0 || gift.isOver(ribbon.extra, base);
}

bool coveredBy(const RibbonNeed& ribbon, const Line& line, const Finished& gift,
               const BuiltDesign& built) {
  if (!isPutOver(ribbon, line, gift)) return false;
  Net net;
  Pose pose;
  std::vector<Transform> places = gift.placesOf(built.pieces.front());
  if (ribbon.shape && ribbon.shape->face) {
    const FacePlace& face = *ribbon.shape->face;
    const BuiltPiece& host = built.pieces.at(static_cast<std::size_t>(face.piece));
    places = gift.placesOf(host);
    addBow(*ribbon.shape, ribbon.width.mm(),
           host.folded[static_cast<std::size_t>(face.panel)].after(face.place), net, pose);
  } else if (ribbon.shape && ribbon.shape->crossing) {
    addBow(*ribbon.shape, ribbon.width.mm(), *ribbon.shape->crossing, net, pose);
  }
  addRibbon(ribbon, 1, net, pose);
  for (const Transform& place : places)
    for (std::size_t i = 0; i < net.panels.size(); ++i)
      if (liesOver({&net.panels[i], place.after(pose[i])}, line, -kNear)) return true;
  return false;
}

}  // namespace

Problems coveredWords(const BuiltDesign& built) {
  Problems found;
  const Finished gift(built);
  const auto tell = [&](const Line& line, const std::string& cover) {
    Problem problem{
        ProblemCode::TextCovered, line.piece->name, {line.words->text, cover}, Severity::Warning};
    if (std::ranges::find(found, problem) == found.end()) found.push_back(std::move(problem));
  };
  for (const BuiltPiece& piece : built.pieces)
    for (const Line& line : linesOf(piece, gift)) {
      for (const BuiltPiece& card : built.pieces)
        if (coveredBy(card, line, gift)) tell(line, card.name);
      for (const RibbonNeed& ribbon : built.ribbons)
        if (coveredBy(ribbon, line, gift, built))
          tell(line, built.design.extras[static_cast<std::size_t>(ribbon.extra)].kind);
    }
  return found;
}

}  // namespace creasewright
