#include "pages/fold_letters.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <optional>

#include "guide/panel_groups.h"
#include "net/whole_panels.h"

namespace creasewright {
namespace {

constexpr int kTries = 9;  // places along each side of a facet
constexpr int kMostLetters = 12;

void addNew(std::vector<int>& panels, int panel) {
  if (std::ranges::find(panels, panel) == panels.end()) panels.push_back(panel);
}

void addSingles(const Net& net, const std::vector<int>& list, std::vector<int>& panels) {
  for (const PanelGroup& group : panelGroups(net, list))
    if (group.kind.empty()) addNew(panels, group.panels.front());
}

bool inBox(const Bounds& box, Point p) {
  return p.x >= box.low.x && p.x <= box.high.x && p.y >= box.low.y && p.y <= box.high.y;
}

double edgeDistance(Point at, const Polygon& outline) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < outline.size(); ++i)
    least = std::min(least, distanceToSegment(at, {outline[i], outline[(i + 1) % outline.size()]}));
  return least;
}

/// Where discs of one radius find room in a picture.
class DiscRoom {
 public:
  DiscRoom(const Net& net, const FoldPicture& picture, const std::vector<Polyline>& ways,
           double radius)
      : picture_(picture), whole_(wholePanels(net)), radius_(radius) {
    for (const Facet& facet : picture.facets) boxes_.push_back(bounds(facet.outline));
    for (const Polyline& way : ways) taken_.push_back(way.back());
  }

  /// The freest place on a panel for a disc; it is taken then.
  std::optional<Point> takeOn(int panel) {
    const auto found = freest(panel, radius_);
    if (found) taken_.push_back(*found);
    return found;
  }

  struct Beside {
    Point from;
    Point at;
  };
  /// A point on a panel that shows, and the nearest place for a disc that is beside everything.
  std::optional<Beside> takeBeside(int panel) {
    constexpr int kWays = 24;
    constexpr std::array kReaches{2.0, 2.6, 3.4, 4.4, 5.6, 7.0, 8.6};  // radii
    const auto from = freest(panel, radius_ * kLeastShare);
    if (!from) return std::nullopt;
    for (const double reach : kReaches)
      for (int way = 0; way < kWays; ++way) {
        const double angle = 2 * std::numbers::pi * way / kWays;
        const Point at = *from + Point{std::cos(angle), std::sin(angle)} * (reach * radius_);
        if (!isFree(at) || !isFreeLine(*from, at)) continue;
        taken_.push_back(at);
        lines_.push_back({*from, at});
        return Beside{*from, at};
      }
    return std::nullopt;
  }

 private:
  static constexpr double kLeastShare = 0.3;  // of the radius, to show a dot on the panel

  [[nodiscard]] std::optional<Point> freest(int panel, double radius) const {
    std::optional<Point> best;
    double most = radius;
    for (std::size_t i = 0; i < picture_.facets.size(); ++i) {
      const int shown = picture_.facets[i].panel;
      if (shown < 0 || whole_.at(static_cast<std::size_t>(shown)) != panel) continue;
      const Point size = boxes_[i].high - boxes_[i].low;
      if (std::min(size.x, size.y) < 2 * most) continue;
      for (int k = 0; k < kTries * kTries; ++k) {
        const Point share{(k % kTries + 0.5) / kTries, (k / kTries + 0.5) / kTries};
        const Point at = boxes_[i].low + Point{size.x * share.x, size.y * share.y};
        const double room = roomAt(i, at);
        if (room <= most || isCovered(i, at, radius)) continue;
        most = room;
        best = at;
      }
    }
    return best;
  }

  [[nodiscard]] double roomAt(std::size_t facet, Point at) const {
    const Polygon& outline = picture_.facets[facet].outline;
    if (locate(at, outline) != Side::Inside) return 0;
    double room = std::min(radius_ * 4, edgeDistance(at, outline));  // more is no better
    for (const Point& other : taken_) room = std::min(room, distance(at, other) - radius_);
    return room;
  }

  /// Whether something of another panel that is painted later lies over the disc.
  [[nodiscard]] bool isCovered(std::size_t facet, Point at, double radius) const {
    const int own = whole_.at(static_cast<std::size_t>(picture_.facets[facet].panel));
    for (std::size_t i = facet + 1; i < picture_.facets.size(); ++i) {
      const int panel = picture_.facets[i].panel;
      if (panel >= 0 && whole_.at(static_cast<std::size_t>(panel)) == own) continue;
      const Point reach{radius, radius};
      if (!inBox({boxes_[i].low - reach, boxes_[i].high + reach}, at)) continue;
      if (locate(at, picture_.facets[i].outline) != Side::Outside) return true;
      if (edgeDistance(at, picture_.facets[i].outline) < radius) return true;
    }
    return false;
  }

  /// Whether a disc lies on nothing.
  [[nodiscard]] bool isFree(Point at) const {
    constexpr double kApart = 2.3;  // radii between two discs
    for (const Point& other : taken_)
      if (distance(other, at) < kApart * radius_) return false;
    for (const Segment& line : lines_)
      if (distanceToSegment(at, line) < 1.2 * radius_) return false;
    for (const Point& p : discAt(at, radius_))
      for (std::size_t i = 0; i < picture_.facets.size(); ++i)
        if (inBox(boxes_[i], p) && locate(p, picture_.facets[i].outline) != Side::Outside)
          return false;
    return true;
  }

  /// Whether a line to a disc passes no other disc.
  [[nodiscard]] bool isFreeLine(Point from, Point to) const {
    return std::ranges::none_of(
        taken_,
        [&](const Point& other) {
          return distanceToSegment(other, {from, to}) < 1.2 * radius_;
        });
  }

  /// Its middle and points round its rim.
  static std::vector<Point> discAt(Point at, double radius) {
    constexpr int kRound = 8;
    std::vector<Point> points{at};
    for (int k = 0; k < kRound; ++k) {
      const double angle = 2 * std::numbers::pi * k / kRound;
      points.push_back(at + Point{std::cos(angle), std::sin(angle)} * radius);
    }
    return points;
  }

  const FoldPicture& picture_;
  std::vector<int> whole_;
  double radius_;
  std::vector<Bounds> boxes_;
  std::vector<Point> taken_;
  std::vector<Segment> lines_;
};

}  // namespace

std::vector<int> panelsTold(const Net& net, const Step& step) {
  std::vector<int> moved;
  for (const Fold& fold : step.folds)
    if (!fold.bend && !fold.loop) moved.push_back(fold.child);
  std::vector<int> panels;
  addSingles(net, moved, panels);
  for (const Join& first : step.joins) {
    std::vector<int> flaps;
    for (const Join& join : step.joins)
      if (join.onto == first.onto && join.method == first.method && join.face == first.face)
        flaps.push_back(join.panel);
    addSingles(net, flaps, panels);
    addNew(panels, first.onto);
  }
  const std::vector<int> whole = wholePanels(net);
  std::vector<int> once;
  for (const int panel : panels) addNew(once, whole.at(static_cast<std::size_t>(panel)));
  return once;
}

/// Large panels first: what lies on them leaves the room beside to the small ones.
std::vector<PanelLetter> placeLetters(const Net& net, const FoldPicture& picture,
                                      const std::vector<int>& panels,
                                      const std::vector<Polyline>& ways) {
  const double size = std::max(picture.extent.width(), picture.extent.height());
  DiscRoom room(net, picture, ways, size * kLetterShare);
  std::map<int, PanelLetter> found;
  for (const int panel : panels)
    if (const auto at = room.takeOn(panel)) found[panel] = {panel, ' ', *at};
  for (const int panel : panels) {
    if (found.contains(panel)) continue;
    if (const auto beside = room.takeBeside(panel))
      found[panel] = {panel, ' ', beside->at, beside->from};
  }
  std::vector<PanelLetter> letters;
  for (const int panel : panels) {
    const auto letter = found.find(panel);
    if (letter == found.end() || std::ssize(letters) == kMostLetters) continue;
    letters.push_back(letter->second);
    letters.back().letter = static_cast<char>('a' + std::ssize(letters) - 1);
  }
  return letters;
}

}  // namespace creasewright
