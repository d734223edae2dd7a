#include "pages/sheet_figure.h"

#include <algorithm>
#include <array>

#include "drawing/arrange.h"
#include "drawing/hatching.h"
#include "drawing/spread.h"
#include "making/cut_plan.h"
#include "making/score_place.h"
#include "pages/number_mark.h"
#include "pages/pale_paper.h"

namespace creasewright {
namespace {

constexpr double kType = 2.8;        // mm
constexpr double kReadingRoom = 20;  // mm beside the sheet for readings
constexpr double kSizeRoom = 9;      // mm beside the sheet for its own measure
constexpr double kLegendRow = 5;     // mm
constexpr double kTick = 3;          // mm from the sheet to a reading
constexpr double kStepMark = 2.3;    // mm, radius of a step's number

/// Where the margin of a side lies in SheetFigure::labels_.
std::size_t index(SheetSide side) { return static_cast<std::size_t>(side); }

/// Of the letter on a piece of waste on the page; none on a very small one.
double wasteLetter(const Polygon& ring) {
  const Bounds box = bounds(ring);
  const double high = std::min(kType, box.height() * 0.8);
  return high < 1.5 || box.width() < 1.5 ? 0 : high;
}

class SheetFigure {
 public:
  SheetFigure(const BuiltPiece& piece, const Step& step, const FigureRoom& room)
      : piece_(piece), step_(step) {
    // The sheet's own measures stand at two sides only.
    const bool trim = step.code == StepCode::TrimBlank;
    const double near = step.figure.settings ? kReadingRoom : trim ? kSizeRoom : 2;
    const double away = trim ? 2 : near;
    const double below =
        step.figure.adhesive ? kLegendRow * (step.figure.behind.empty() ? 1 : 2) : 0;
    scale_ = std::min((room.width - near - away) / piece.flat.width,
                      (room.height - near - away - below) / piece.flat.height);
    origin_ = {left() ? away : near, near + below};
    out_.width = piece.flat.width * scale_ + near + away;
    out_.height = piece.flat.height * scale_ + near + away + below;
    if (trim) {  // a measure may be longer than the side it stands at
      constexpr double kHalfMeasure = 10;
      out_.width = std::max(out_.width, near + piece.flat.width * scale_ / 2 + kHalfMeasure);
      out_.height = std::max(out_.height, near + piece.flat.height * scale_ / 2 + kHalfMeasure);
    }
    if (below > 0 && out_.width < std::min(kGlueLegend, room.width)) {
      origin_.x += (std::min(kGlueLegend, room.width) - out_.width) / 2;
      out_.width = std::min(kGlueLegend, room.width);
    }
  }

  /// Marks groups of cuts with their numbers.
  void number(const std::vector<std::vector<Cut>>& groups, int first) {
    std::vector<Segment> busy;
    for (const std::vector<Cut>& group : groups)
      for (const Segment& stroke : strokesOf(group)) busy.push_back(stroke);
    for (const WastePiece& waste : piece_.waste) {
      const Point letter = inside(at(waste.area.outer));
      if (step_.figure.wasteHatched) busy.push_back({letter, letter});
    }
    for (const std::vector<Cut>& group : groups) {
      const Point spot = spotBeside(strokesOf(group), busy);
      busy.push_back({spot, spot});
      numbers_.emplace_back(first++, spot);
    }
  }

  Drawing draw() {
    card();
    if (step_.code == StepCode::TrimBlank) becomes();
    if (step_.figure.scoresDone) earlierScores();
    if (step_.figure.wasteHatched) waste();
    for (const ScoreSetup& setup : step_.settings)
      for (const SheetSide side : setup.sides)
        for (const ScoreReading& reading : setup.readings) score(side, reading);
    for (const FreeScore& free : step_.freeScores)
      line(free.valley ? Role::Valley : Role::Mountain, {free.line.a, free.line.b});
    for (const Fold& fold : step_.folds)
      line(fold.valley ? Role::Valley : Role::Mountain, {fold.line.a, fold.line.b});
    if (step_.figure.cuts) cuts();
    for (const Polygon& area : step_.figure.behind) glueBehind(area);
    for (const Adhesive& adhesive : step_.adhesive) glue(adhesive.area);
    for (const Polygon& shape : step_.figure.put) put(shape);
    if (step_.figure.adhesive) glueLegend();
    if (step_.code == StepCode::TrimBlank) size();
    readings();
    for (const auto& [number, spot] : numbers_) addNumberMark(out_, number, spot, kStepMark);
    return std::move(out_);
  }

 private:
  [[nodiscard]] bool left() const { return step_.figure.hand == Hand::Left; }

  /// On the page; a sheet that was turned over is seen from its other face.
  [[nodiscard]] Point at(Point p) const {
    return origin_ + Point{step_.figure.turned ? piece_.flat.width - p.x : p.x, p.y} * scale_;
  }
  [[nodiscard]] Polygon at(const Polygon& ring) const {
    Polygon placed;
    for (const Point& p : ring) placed.push_back(at(p));
    return placed;
  }

  void line(Role role, const Polyline& points) {
    out_.paths.push_back({.role = role, .rings = {at(points)}});
  }

  /// Of the card that is left, on the page.
  [[nodiscard]] std::vector<Polygon> outlineRings() const {
    std::vector<Polygon> rings;
    for (const Area& part : piece_.flat.outline) {
      rings.push_back(at(part.outer));
      for (const Polygon& hole : part.holes) rings.push_back(at(hole));
    }
    return rings;
  }

  void card() {
    std::vector<Polygon> rings;
    if (step_.figure.wasteGone) {
      rings = outlineRings();
    } else {
      const double w = piece_.flat.width;
      const double h = piece_.flat.height;
      rings.push_back(at(Polygon{{0, 0}, {w, 0}, {w, h}, {0, h}}));
    }
    out_.paths.push_back({.role = Role::Face,
                          .rings = rings,
                          .closed = true,
                          .filled = true,
                          .colour = paleColour(piece_, step_.figure.turned)});
    out_.paths.push_back({.role = Role::Edge, .rings = rings, .closed = true});
  }

  /// What is made of the sheet, thin and dotted.
  void becomes() {
    out_.paths.push_back({.role = Role::CutMark, .rings = outlineRings(), .closed = true});
    earlierScores();
  }

  /// Thin and dotted, so that the step's own lines stand out.
  void earlierScores() {
    const Net& net = piece_.net;
    PathItem lines{.role = Role::CutMark, .rings = {}};
    for (std::size_t i = 0; i < net.creases.size(); ++i) {
      if (net.creases[i].kind == CreaseKind::Flat) continue;
      const Segment& crease = piece_.flat.creases[i];
      lines.rings.push_back({at(crease.a), at(crease.b)});
    }
    if (!lines.rings.empty()) out_.paths.push_back(std::move(lines));
  }

  void hatched(Role role, const std::vector<Polygon>& rings, double spacing, double degrees) {
    PathItem lines{.role = role, .rings = {}};
    for (const Segment& s : hatch(rings, spacing, degrees)) lines.rings.push_back({s.a, s.b});
    if (!lines.rings.empty()) out_.paths.push_back(std::move(lines));
  }

  void waste() {
    for (const WastePiece& waste : piece_.waste) {
      if (std::ranges::find(step_.waste, waste.letter) == step_.waste.end()) continue;
      std::vector<Polygon> rings{at(waste.area.outer)};
      for (const Polygon& hole : waste.area.holes) rings.push_back(at(hole));
      hatched(Role::Waste, rings, 1.6, -45);
      const double high = wasteLetter(rings[0]);
      if (high <= 0) continue;
      const Point middle = inside(rings[0]);
      text(middle - Point{0, high * 0.35}, Label::plain(waste.letter), high, Anchor::Centre);
    }
  }

  /// The middle of the widest level cut through the middle of a ring.
  static Point inside(const Polygon& ring) {
    const Bounds box = bounds(ring);
    Point best = (box.low + box.high) / 2;
    double widest = 0;
    for (const double share : {0.5, 0.35, 0.65, 0.2, 0.8}) {
      const double y = box.low.y + box.height() * share + 1e-4;
      std::vector<double> crossings;
      for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i];
        const Point b = ring[(i + 1) % ring.size()];
        if ((a.y > y) == (b.y > y)) continue;
        crossings.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
      }
      std::ranges::sort(crossings);
      for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
        if (crossings[i + 1] - crossings[i] <= widest * 1.05) continue;
        widest = crossings[i + 1] - crossings[i];
        best = {(crossings[i] + crossings[i + 1]) / 2, y};
      }
    }
    return best;
  }

  /// One setting at one side; the line and its reading.
  void score(SheetSide side, const ScoreReading& reading) {
    const bool full = reading.run == ScoreRun::Full;
    const SheetSide measured = full ? side : reading.measuredFrom;
    const double w = piece_.flat.width;
    const double h = piece_.flat.height;
    const double across = isUpright(measured) ? w : h;
    const double along = isUpright(measured) ? h : w;
    const double place = isFar(measured) ? across - reading.at.mm() : reading.at.mm();
    const double low = full || !isFar(side) ? 0 : along - reading.to.mm();
    const double high = full || isFar(side) ? along : reading.to.mm();
    const Role role = reading.purpose == ScorePurpose::CutMark ? Role::CutMark
                      : reading.valley                         ? Role::Valley
                                                               : Role::Mountain;
    if (isUpright(measured))
      line(role, {{place, low}, {place, high}});
    else
      line(role, {{low, place}, {high, place}});
    // Full scores measured from left or right are read below or above the sheet, and so on.
    const SheetSide as = left() ? inMirror(side) : side;
    const SheetSide beside = as == SheetSide::Left     ? SheetSide::Bottom
                             : as == SheetSide::Right  ? SheetSide::Top
                             : as == SheetSide::Bottom ? SheetSide::Left
                                                       : SheetSide::Right;
    const SheetSide margin = !full ? side : left() ? inMirror(beside) : beside;
    labels_[index(margin)].push_back({at(Point{place, place}), reading.at, isUpright(measured)});
  }

  void cuts() {
    const double w = piece_.flat.width;
    const double h = piece_.flat.height;
    for (const Cut& cut : step_.cuts) {
      line(Role::Cut, cut.line);
      for (const CutRepeat repeat : cut.repeats) line(Role::Cut, repeated(cut.line, repeat, w, h));
    }
  }

  /// All straight parts of cuts and their repeats, on the page.
  [[nodiscard]] std::vector<Segment> strokesOf(const std::vector<Cut>& cuts) const {
    std::vector<Segment> strokes;
    const auto middle = [](const Segment& s) { return s.a.x + s.b.x; };
    const auto add = [&](const Polyline& points) {
      for (std::size_t i = 0; i + 1 < points.size(); ++i)
        strokes.push_back({at(points[i]), at(points[i + 1])});
    };
    for (const Cut& cut : cuts) {
      add(cut.line);
      for (const CutRepeat repeat : cut.repeats)
        add(repeated(cut.line, repeat, piece_.flat.width, piece_.flat.height));
    }
    if (left()) std::ranges::stable_sort(strokes, std::ranges::greater{}, middle);
    return strokes;
  }

  /// Room for a mark on the sheet beside one of `strokes`, as clear of all that is `busy` as a
  /// mark needs.
  [[nodiscard]] Point spotBeside(const std::vector<Segment>& strokes,
                                 const std::vector<Segment>& busy) const {
    constexpr double kBeside = kStepMark + 0.7;
    Point best = strokes.empty() ? origin_ : (strokes[0].a + strokes[0].b) / 2;
    double widest = -1;
    for (const Segment& stroke : strokes) {
      if (distance(stroke.a, stroke.b) < 1e-6) continue;
      const Point across = turnLeft(unit(stroke.b - stroke.a)) * kBeside;
      for (const double share : {0.5, 0.3, 0.7})
        for (const Point spot : {stroke.a + (stroke.b - stroke.a) * share + across,
                                 stroke.a + (stroke.b - stroke.a) * share - across}) {
          if (spot.x < kStepMark || spot.y < kStepMark || spot.x > out_.width - kStepMark ||
              spot.y > out_.height - kStepMark)
            continue;
          double room = 1e9;
          for (const Segment& other : busy)
            room = std::min(room,
                            distanceToSegment(spot, other) - (other.a == other.b ? kStepMark : 0));
          if (std::min(room, kBeside) > widest + 1e-3) {
            widest = std::min(room, kBeside);
            best = spot;
          }
        }
    }
    return best;
  }

  void glue(const Polygon& area) {
    const Polygon placed = at(area);
    out_.paths.push_back({.role = Role::Glue, .rings = {placed}, .closed = true});
    hatched(Role::Glue, {placed}, 1.0, 45);
  }

  /// Adhesive that shows through from the other face: hatched the other way and wider.
  void glueBehind(const Polygon& area) { hatched(Role::Glue, {at(area)}, 2.0, -45); }

  void put(const Polygon& shape) {
    const Polygon placed = at(shape);
    out_.paths.push_back({.role = Role::Legend, .rings = {placed}, .closed = true});
    hatched(Role::Waste, {placed}, 2.4, 45);
  }

  /// What the hatches mean, below the sheet.
  void glueLegend() {
    double low = origin_.y - 2 - kLegendRow;
    const auto row = [&](const char* code, double spacing, double degrees) {
      const Polygon swatch{{2, low + 0.6}, {8, low + 0.6}, {8, low + 3.6}, {2, low + 3.6}};
      out_.paths.push_back({.role = Role::Glue, .rings = {swatch}, .closed = true});
      hatched(Role::Glue, {swatch}, spacing, degrees);
      text({10, low + 1}, Label{code, {}, {}}, kType, Anchor::Left);
      low -= kLegendRow;
    };
    row(step_.figure.turned ? "glue-outside" : "glue-inside", 1.0, 45);
    if (!step_.figure.behind.empty()) row("glue-behind", 2.0, -45);
  }

  /// The sheet's own measures below and at the stop's side.
  void size() {
    const double low = origin_.y - kTick;
    const Point corner = at(Point{piece_.flat.width, piece_.flat.height});
    const double side = left() ? corner.x + kTick : origin_.x - kTick;
    out_.paths.push_back(
        {.role = Role::Dimension,
         .rings = {{{origin_.x, low}, {corner.x, low}}, {{side, origin_.y}, {side, corner.y}}}});
    text({(origin_.x + corner.x) / 2, low - kType * 1.2}, Label{"length", {step_.width}, {}}, kType,
         Anchor::Centre);
    text({left() ? side + kType * 1.2 : side - kType * 0.5, (origin_.y + corner.y) / 2},
         Label{"length", {step_.height}, {}}, kType, Anchor::Centre, 90);
  }

  void text(Point at, Label label, double height, Anchor anchor, double turn = 0) {
    out_.texts.push_back({Role::Legend, std::move(label), at, height, anchor, turn});
  }

  struct Mark {
    Point at;
    Length value;
    bool upright;
  };

  /// Readings of one margin, moved apart where they are close, each with a line to its place.
  void readings() {
    for (const SheetSide side :
         {SheetSide::Left, SheetSide::Right, SheetSide::Bottom, SheetSide::Top}) {
      std::vector<Mark>& marks = labels_[index(side)];
      const bool sideways = isUpright(side);
      const auto place = [&](const Mark& mark) { return sideways ? mark.at.y : mark.at.x; };
      std::ranges::sort(marks, {}, place);
      const auto same = [&](const Mark& a, const Mark& b) {
        return a.value == b.value && std::abs(place(a) - place(b)) < 0.01;
      };
      marks.erase(std::unique(marks.begin(), marks.end(), same), marks.end());
      std::vector<double> wanted;
      for (const Mark& mark : marks) wanted.push_back(place(mark));
      const std::vector<double> spread = spreadApart(wanted, kType * 1.25);
      for (std::size_t i = 0; i < marks.size(); ++i)
        put(side, wanted[i], spread[i], marks[i].value);
    }
  }

  void put(SheetSide side, double wanted, double spread, Length value) {
    const double edge = side == SheetSide::Left     ? origin_.x
                        : side == SheetSide::Bottom ? origin_.y
                        : side == SheetSide::Right  ? origin_.x + piece_.flat.width * scale_
                                                    : origin_.y + piece_.flat.height * scale_;
    const double out = isFar(side) ? 1 : -1;
    const auto point = [&](double along, double across) {
      return isUpright(side) ? Point{across, along} : Point{along, across};
    };
    out_.paths.push_back({.role = Role::Dimension,
                          .rings = {{point(wanted, edge), point(spread, edge + out * kTick)}}});
    const Label label{"length", {value}, {}};
    const double base = kType * 0.35;
    const double from = edge + out * (kTick + 0.6);
    if (isUpright(side))
      text({from, spread - base}, label, kType, isFar(side) ? Anchor::Left : Anchor::Right);
    else
      text({spread + base, from}, label, kType, isFar(side) ? Anchor::Left : Anchor::Right, 90);
  }

  const BuiltPiece& piece_;
  const Step& step_;
  double scale_ = 1;
  Point origin_;
  Drawing out_;
  std::array<std::vector<Mark>, 4> labels_;
  std::vector<std::pair<int, Point>> numbers_;
};

}  // namespace

Drawing sheetFigure(const BuiltPiece& piece, const Step& step, const FigureRoom& room) {
  return SheetFigure(piece, step, room).draw();
}

Drawing cutMap(const BuiltPiece& piece, const std::vector<const Step*>& steps, int firstNumber,
               const FigureRoom& room) {
  Step all = *steps.front();
  all.cuts.clear();
  for (const Step* step : steps) {
    all.cuts.insert(all.cuts.end(), step->cuts.begin(), step->cuts.end());
    all.waste.insert(all.waste.end(), step->waste.begin(), step->waste.end());
    all.figure.wasteHatched = all.figure.wasteHatched || step->figure.wasteHatched;
  }
  SheetFigure figure(piece, all, room);
  std::vector<std::vector<Cut>> groups;
  for (const Step* step : steps) groups.push_back(step->cuts);
  figure.number(groups, firstNumber);
  return figure.draw();
}

bool lettersShow(const BuiltPiece& piece, const std::vector<std::string>& letters) {
  constexpr double kSmallWidth = 52;  // mm of the sheet in a small figure
  constexpr double kSmallHeight = 30;
  const double scale = std::min(kSmallWidth / piece.flat.width, kSmallHeight / piece.flat.height);
  return std::ranges::all_of(piece.waste, [&](const WastePiece& waste) {
    if (std::ranges::find(letters, waste.letter) == letters.end()) return true;
    Polygon ring = waste.area.outer;
    for (Point& p : ring) p = p * scale;
    return wasteLetter(ring) > 0;
  });
}

}  // namespace creasewright
