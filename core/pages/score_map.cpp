#include "pages/score_map.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "drawing/spread.h"
#include "lettering/type_width.h"
#include "making/score_place.h"
#include "pages/number_mark.h"
#include "pages/pale_paper.h"

namespace creasewright {
namespace {

constexpr double kReadingTick = 5;   // mm from the sheet to a reading
constexpr double kFence = 1.2;       // mm, the thick edge
constexpr double kRing = 2.2;        // mm, radius of a line's number
constexpr double kSizeType = 3.4;    // mm
constexpr double kMeasureRoom = 7;   // mm for a measure of the sheet
constexpr double kSameMark = 0.002;  // mm

bool has(const ScoreSetup& setup, SheetSide side) {
  return std::ranges::find(setup.sides, side) != setup.sides.end();
}

/// Readings in one margin, from left to right or from the foot up.
struct Margin {
  struct Mark {
    double place = 0;  // along the margin, blank coordinates in mm
    Length value;
    Role like = Role::Valley;
    int number = 0;  // of the full score, 0 = none
    std::string words;
  };
  std::vector<Mark> marks;
  bool turned = false;  // readings run along the lines
  double type = kReadingType;

  [[nodiscard]] double widest() const {
    double width = 0;
    for (const Mark& mark : marks) width = std::max(width, typeWidth(mark.words, type, true));
    return width;
  }
  [[nodiscard]] bool numbered() const {
    return std::ranges::any_of(
        marks, [](const Mark& mark) { return mark.number > 0; });
  }
};

class ScoreMap {
 public:
  ScoreMap(const BuiltPiece& piece, const std::vector<const Step*>& steps, const FigureRoom& room,
           const Wording& wording)
      : piece_(piece),
        steps_(steps),
        room_(room),
        wording_(wording),
        left_(steps.front()->figure.hand == Hand::Left),
        w_(piece.flat.width),
        h_(piece.flat.height) {}

  Drawing draw() {
    collect();
    layOut();
    sheet();
    for (const Step* step : steps_) {
      for (const ScoreSetup& setup : step->settings)
        for (const SheetSide side : setup.sides)
          for (const ScoreReading& reading : setup.readings)
            line(roleOf(reading), scoredLine(side, reading, w_, h_));
      for (const FreeScore& free : step->freeScores)
        line(free.valley ? Role::Valley : Role::Mountain, free.line);
    }
    for (const SheetSide side : kSides) readings(side);
    size();
    return std::move(out_);
  }

 private:
  static constexpr std::array kSides{SheetSide::Left, SheetSide::Right, SheetSide::Bottom,
                                     SheetSide::Top};

  static Role roleOf(const ScoreReading& reading) {
    return reading.purpose == ScorePurpose::CutMark ? Role::CutMark
           : reading.valley                         ? Role::Valley
                                                    : Role::Mountain;
  }
  /// A side as the right hand has it, for the hand that works.
  [[nodiscard]] SheetSide handed(SheetSide side) const { return left_ ? inMirror(side) : side; }
  Margin& margin(SheetSide side) { return margins_[static_cast<std::size_t>(side)]; }

  void collect() {
    for (const Step* step : steps_)
      for (const ScoreSetup& setup : step->settings)
        for (const ScoreReading& reading : setup.readings)
          for (const SheetSide side : shown(setup, reading)) add(side, reading);
    for (Margin& each : margins_) {
      std::ranges::stable_sort(each.marks, {}, &Margin::Mark::place);
      const auto same = [](const Margin::Mark& a, const Margin::Mark& b) {
        return a.value == b.value && std::abs(a.place - b.place) < kSameMark;
      };
      each.marks.erase(std::unique(each.marks.begin(), each.marks.end(), same), each.marks.end());
    }
  }

  /// The sides whose readings are written; the others of a setup read the same.
  [[nodiscard]] std::vector<SheetSide> shown(const ScoreSetup& setup,
                                             const ScoreReading& reading) const {
    using enum SheetSide;
    const bool full = reading.run == ScoreRun::Full;
    std::vector<SheetSide> sides;
    const auto first = [&](SheetSide one, SheetSide other) {
      if (has(setup, one))
        sides.push_back(one);
      else if (has(setup, other))
        sides.push_back(other);
    };
    if (full) {
      first(handed(Left), handed(Right));
      if (setup.sides.size() < kSides.size()) first(Bottom, Top);
    } else {
      first(Bottom, Top);
      if (setup.sides.size() < kSides.size()) first(handed(Right), handed(Left));
    }
    return sides;
  }

  void add(SheetSide side, const ScoreReading& reading) {
    const bool full = reading.run == ScoreRun::Full;
    const SheetSide measured = full ? side : reading.measuredFrom;
    const double across = isUpright(measured) ? w_ : h_;
    Margin::Mark mark;
    mark.place = isFar(measured) ? across - reading.at.mm() : reading.at.mm();
    mark.value = reading.at;
    mark.like = roleOf(reading);
    mark.number = full ? lineNumber(side, reading.at.mm()) : 0;
    mark.words = wording_(label(reading.at));
    const SheetSide at = !full ? side : isUpright(side) ? SheetSide::Top : handed(SheetSide::Left);
    if (full) fences_[static_cast<std::size_t>(side)] = true;
    margin(at).marks.push_back(std::move(mark));
  }

  static Label label(Length length) { return {"reading", {length}, {}}; }

  /// Which full score from `side` lies `at` mm from it: all of the piece count, from both sides.
  [[nodiscard]] int lineNumber(SheetSide side, double at) const {
    std::vector<double> before;
    const double across = isUpright(side) ? w_ : h_;
    for (const ScoreSetup& setup : piece_.scorePlan.setups)
      for (const SheetSide other : setup.sides)
        for (const ScoreReading& reading : setup.readings) {
          if (reading.run != ScoreRun::Full || isUpright(other) != isUpright(side)) continue;
          const double place = other == side ? reading.at.mm() : across - reading.at.mm();
          const bool known = std::ranges::any_of(
              before, [place](double each) { return std::abs(each - place) < kSameMark; });
          if (place < at - kSameMark && !known) before.push_back(place);
        }
    return static_cast<int>(before.size()) + 1;
  }

  /// Room of a margin outside the sheet.
  [[nodiscard]] double depth(SheetSide side) const {
    const Margin& each = margins_[static_cast<std::size_t>(side)];
    const double measure =
        side == handed(SheetSide::Left) || side == SheetSide::Bottom ? kMeasureRoom : 2;
    if (each.marks.empty()) return measure;
    const double words = isUpright(side) || each.turned ? each.widest() : each.type;
    return measure + kReadingTick + words + (each.numbered() ? 2 * kRing + 1.5 : 0.5);
  }

  [[nodiscard]] double gap(SheetSide side) const {
    const Margin& each = margins_[static_cast<std::size_t>(side)];
    const double least = each.numbered() ? 2 * kRing + 0.8 : 0;
    return std::max(least, isUpright(side) || each.turned ? each.type * 1.15 : each.widest() + 2.5);
  }

  void measure() {
    origin_ = {depth(SheetSide::Left), depth(SheetSide::Bottom)};
    const double besides = origin_.x + depth(SheetSide::Right);
    const double aboves = origin_.y + depth(SheetSide::Top);
    scale_ = std::min((room_.width - besides) / w_, (room_.height - aboves) / h_);
    out_.width = w_ * scale_ + besides;
    out_.height = h_ * scale_ + aboves;
  }

  /// Whether the readings of a margin stand side by side along the sheet.
  [[nodiscard]] bool fits(SheetSide side) const {
    const auto count = static_cast<double>(margins_[static_cast<std::size_t>(side)].marks.size());
    if (!isUpright(side)) return count * gap(side) <= out_.width;
    return count * gap(side) <= h_ * scale_ + 0.9 * gap(side);
  }

  /// Readings lie level where they have room, else along their lines, and last in smaller type.
  void layOut() {
    measure();
    for (const SheetSide side : {SheetSide::Top, SheetSide::Bottom})
      if (!fits(side)) margin(side).turned = true;
    measure();
    constexpr double kLeast = 2.6;  // mm
    for (const SheetSide side : kSides)
      while (!fits(side) && margin(side).type > kLeast) {
        margin(side).type *= 0.92;
        measure();
      }
  }

  [[nodiscard]] Point at(Point p) const { return origin_ + p * scale_; }
  void line(Role role, const Segment& line) {
    out_.paths.push_back({.role = role, .rings = {{at(line.a), at(line.b)}}});
  }
  void box(Role role, Point low, Point high, bool filled) {
    out_.paths.push_back({.role = role,
                          .rings = {{low, {high.x, low.y}, high, {low.x, high.y}}},
                          .closed = true,
                          .filled = filled});
  }

  void sheet() {
    const Point low = at({0, 0});
    const Point high = at({w_, h_});
    box(Role::Face, low, high, true);
    out_.paths.back().colour = paleColour(piece_);
    box(Role::Edge, low, high, false);
    const auto fence = [&](SheetSide side, Point from, Point to) {
      if (fences_[static_cast<std::size_t>(side)]) box(Role::Legend, from, to, true);
    };
    fence(SheetSide::Left, {low.x - kFence, low.y}, {low.x, high.y});
    fence(SheetSide::Right, {high.x, low.y}, {high.x + kFence, high.y});
    fence(SheetSide::Bottom, {low.x, low.y - kFence}, {high.x, low.y});
    fence(SheetSide::Top, {low.x, high.y}, {high.x, high.y + kFence});
  }

  void readings(SheetSide side) {
    const Margin& each = margin(side);
    const double start = isUpright(side) ? origin_.y : origin_.x;
    const double extent = (isUpright(side) ? h_ : w_) * scale_;
    std::vector<double> wanted;
    for (const Margin::Mark& mark : each.marks) wanted.push_back(start + mark.place * scale_);
    std::vector<double> places = spreadApart(wanted, gap(side));
    if (places.empty()) return;
    // Moved as one where they would run off the picture or into the next margin.
    const double half = gap(side) / 2;
    const double lowest = isUpright(side) ? start + 0.05 * gap(side) : half;
    const double highest = isUpright(side) ? start + extent - 0.05 * gap(side) : out_.width - half;
    const double low = std::max(0.0, lowest - places.front());
    const double high = std::max(0.0, places.back() - highest);
    for (double& place : places) place += low > 0 ? low : -high;
    for (std::size_t i = 0; i < places.size(); ++i)
      put(side, each, each.marks[i], wanted[i], places[i]);
  }

  void put(SheetSide side, const Margin& each, const Margin::Mark& mark, double wanted,
           double place) {
    const double out = isFar(side) ? 1 : -1;
    const Point corner = at({w_, h_});
    const double edge = side == SheetSide::Left     ? origin_.x
                        : side == SheetSide::Bottom ? origin_.y
                        : side == SheetSide::Right  ? corner.x
                                                    : corner.y;
    const auto point = [&](double along, double across) {
      return isUpright(side) ? Point{across, along} : Point{along, across};
    };
    out_.paths.push_back(
        {.role = Role::Dimension,
         .rings = {{point(wanted, edge), point(wanted, edge + out * kReadingTick * 0.4),
                    point(place, edge + out * (kReadingTick - 0.6))}}});
    TextItem text{.role = Role::Legend,
                  .label = label(mark.value),
                  .at = {},
                  .height = each.type,
                  .bold = true,
                  .like = mark.like};
    const double half = each.type * 0.365;
    double reach = each.type;
    if (isUpright(side)) {
      text.at = {edge + out * kReadingTick, place - half};
      text.anchor = isFar(side) ? Anchor::Left : Anchor::Right;
      reach = each.widest();
    } else if (each.turned) {
      text.at = {place + half, edge + out * kReadingTick};
      text.anchor = isFar(side) ? Anchor::Left : Anchor::Right;
      text.turnDegrees = 90;
      reach = each.widest();
    } else {
      text.at = {place, edge + out * kReadingTick - (isFar(side) ? 0 : each.type * 0.75)};
      text.anchor = Anchor::Centre;
    }
    out_.texts.push_back(std::move(text));
    if (mark.number > 0)
      addLineNumber(out_, mark.number,
                    point(place, edge + out * (kReadingTick + reach + kRing + 0.8)), kRing);
  }

  /// The sheet's own measures below and at the fence's side, outside the readings.
  void size() {
    const Point high = at({w_, h_});
    const auto text = [&](double mm, Point where, double turn) {
      out_.texts.push_back({.role = Role::Legend,
                            .label = {"length", {Length::mm(mm)}, {}},
                            .at = where,
                            .height = kSizeType,
                            .anchor = Anchor::Centre,
                            .turnDegrees = turn});
    };
    const double low = kMeasureRoom - 1.8;
    const double beside = left_ ? out_.width - low : low;
    out_.paths.push_back(
        {.role = Role::Dimension,
         .rings = {{{origin_.x, low}, {high.x, low}}, {{beside, origin_.y}, {beside, high.y}}}});
    text(w_, {(origin_.x + high.x) / 2, low - 1.2 - kSizeType * 0.73}, 0);
    text(h_, {left_ ? out_.width - 1.2 : low - 1.2, (origin_.y + high.y) / 2}, 90);
  }

  const BuiltPiece& piece_;
  const std::vector<const Step*>& steps_;
  const FigureRoom& room_;
  const Wording& wording_;
  bool left_;
  double w_;
  double h_;
  double scale_ = 1;
  Point origin_;
  Drawing out_;
  std::array<Margin, 4> margins_;
  std::array<bool, 4> fences_{};
};

}  // namespace

Drawing scoreMap(const BuiltPiece& piece, const std::vector<const Step*>& steps,
                 const FigureRoom& room, const Wording& wording) {
  return ScoreMap(piece, steps, room, wording).draw();
}

}  // namespace creasewright
