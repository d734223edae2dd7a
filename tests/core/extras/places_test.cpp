#include <cmath>

#include "core/extras/built_extras.h"
#include "making/fold_plan.h"
#include "making/glue_tape.h"

// Judged by rays through the folded box: nothing here asks where the program looked.

namespace creasewright {
namespace {

using testing::built;
using testing::clearOf;
using testing::extraOf;
using testing::fitted;
using testing::hostOf;
using testing::onFace;
using testing::piecesOf;

constexpr double kAgainst = 3;  // mm: card lies against card

/// Where the line from `from` along `along` goes through a placed panel, or nothing.
std::optional<double> hit(const Panel& panel, const Transform& place, Point3 from, Point3 along) {
  const double rate = dot(place.normal(), along);
  if (std::abs(rate) < 0.3) return std::nullopt;
  const double at = dot(place.normal(), place.apply(Point{}) - from) / rate;
  const Point3 there = place.inverse().apply(from + along * at);
  const bool inside = locate({there.x, there.y}, panel.outline, 0.01) == Side::Inside;
  return inside ? std::optional(at) : std::nullopt;
}

/// How far it is into the room for the product, or only as far as card lies against card.
double wayIn(const BuiltPiece& piece, Point3 from, Point3 along) {
  if (!piece.cavity) return kAgainst;
  const auto owner = piece.net.find(piece.cavity->panel);
  const Transform to = piece.folded.at(static_cast<std::size_t>(*owner)).inverse();
  const Point3 start = to.apply(from);
  const Point3 way = to.turn(along);
  const CavityBox& box = piece.cavityBox;
  double in = 0;
  double out = 1e9;
  const auto slab = [&](double s, double w, double low, double high) {
    if (std::abs(w) < 1e-9) {
      if (s < low || s > high) out = -1;
      return;
    }
    in = std::max(in, std::min((low - s) / w, (high - s) / w));
    out = std::min(out, std::max((low - s) / w, (high - s) / w));
  };
  slab(start.x, way.x, box.low.x, box.high.x);
  slab(start.y, way.y, box.low.y, box.high.y);
  slab(start.z, way.z, box.low.z, box.high.z);
  return in < out ? std::max(kAgainst, in - 0.01) : kAgainst;
}

/// The panel that lies on the line of sight through a point of a face, close before it or between
/// it and the room; empty when nothing does.
std::string inTheWay(const BuiltPiece& piece, int face, Point p) {
  const Transform& place = piece.folded.at(static_cast<std::size_t>(face));
  const Point3 from = place.apply(p);
  const double most = wayIn(piece, from, place.normal());
  for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
    if (static_cast<int>(i) == face) continue;
    const auto at = hit(piece.net.panels[i], piece.folded[i], from, place.normal());
    if (at && *at > -kAgainst && *at < most) return piece.net.panels[i].id;
  }
  return {};
}

/// Points all over the bounds of a ring, grown by `margin`.
std::vector<Point> over(const Polygon& ring, double margin) {
  constexpr int kSteps = 14;
  const Bounds box = bounds(ring);
  std::vector<Point> points;
  for (int i = 0; i <= kSteps; ++i)
    for (int j = 0; j <= kSteps; ++j)
      points.push_back({box.low.x - margin + (box.width() + 2 * margin) * i / kSteps,
                        box.low.y - margin + (box.height() + 2 * margin) * j / kSteps});
  return points;
}

bool within(const Polygon& ring, Point p, double margin) {
  return locate(p, ring) != Side::Outside || clearOf(ring, p) < margin;
}

Design designOf(testing::Random& random, const Style& style, int round) {
  if (round > 0) return fitted(random, style);
  return *newDesign(style.id, std::nullopt, cards()[0], Ease::Easy, ToolGrid::millimetre());
}

/// A window as it comes, or of a size and on a face of the design's own choosing.
Extra someWindow(testing::Random& random, const Design& design, int round) {
  Extra window = extraOf("window", design);
  if (round < 2) return window;
  window.parameters.set("width", Length::mm(random.whole(10, 60)));
  window.parameters.set("height", Length::mm(random.whole(10, 60)));
  const BuiltDesign plain = built(design);
  const auto names = faceNames(plain);
  if (!names.empty())
    window.face =
        names.at(static_cast<std::size_t>(random.whole(0, static_cast<int>(names.size()) - 1)));
  return window;
}

void expectClear(const BuiltDesign& design, const BuiltPiece& film, double lap) {
  const FacePlace& face = film.role->faces.at(0);
  const BuiltPiece& host = hostOf(design, face);
  const Panel& panel = host.net.panels.at(static_cast<std::size_t>(face.panel));
  ASSERT_FALSE(panel.openings.empty());
  const Polygon sheet = onFace(film, face);
  for (const Point& p : panel.openings.back()) {
    EXPECT_EQ(locate(p, sheet), Side::Inside);
    EXPECT_GE(clearOf(sheet, p), lap - 1e-3);
  }
  for (const Point& p : over(sheet, 1.9)) {
    if (!within(sheet, p, 1.9)) continue;
    EXPECT_EQ(locate(p, panel.outline), Side::Inside);
    const std::string other = inTheWay(host, face.panel, p);
    ASSERT_EQ(other, "") << design.design.styleId << " window in " << panel.id << " at " << p.x
                         << ' ' << p.y;
  }
}

TEST(ExtraPlaces, NoWindowIsCutThroughGlueOrStandsBeforeCard) {
  testing::Random random(81);
  int cut = 0;
  int refused = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 6; ++round) {
      Design design = designOf(random, style, round);
      design.extras = {someWindow(random, design, round)};
      const BuiltDesign whole = built(design);
      const auto films = piecesOf(whole, 0);
      if (films.empty()) {
        ++refused;
        EXPECT_FALSE(whole.problems.empty()) << style.id;
        continue;
      }
      expectClear(whole, *films.front(), design.extras[0].parameters.mm("lap"));
      ++cut;
    }
  EXPECT_GT(cut, 100);
  EXPECT_GT(refused, 5);
}

// A lid stands over the walls of its tray, a sleeve over the base of its drawer.
TEST(ExtraPlaces, NoWindowShowsThePieceInside) {
  struct Case {
    const char* style;
    const char* face;
    bool free;
  };
  for (const Case& each :
       {Case{"two-piece-box", "lid:base", true}, Case{"two-piece-box", "lid:base/left", false},
        Case{"drawer-box", "sleeve:front", true},
        Case{"drawer-box", "sleeve:front/right/back", false},
        Case{"drawer-box", "sleeve:front/right", false}}) {
    Design design = *newDesign(each.style, *parseProduct("box:80x60x40mm"), cards()[0], Ease::Easy,
                               ToolGrid::millimetre());
    design.extras = {extraOf("window", design)};
    design.extras[0].face = each.face;
    const BuiltDesign whole = built(design);
    EXPECT_EQ(piecesOf(whole, 0).size(), each.free ? 1U : 0U) << each.style << ' ' << each.face;
    if (each.free || whole.problems.empty()) continue;
    EXPECT_EQ(whole.problems.front().code, ProblemCode::ExtraInTheWay) << each.face;
  }
}

/// A point of a strip of tape, on the flap and on what it sticks to, keeps off their openings.
void expectSpared(const BuiltPiece& piece, const GlueArea& glue, Point p) {
  const auto flap = static_cast<std::size_t>(glue.panel);
  const Point3 own = piece.flat.frames[flap].inverse().apply(p);
  for (const Polygon& hole : piece.net.panels[flap].openings)
    EXPECT_FALSE(within(hole, {own.x, own.y}, 0.9)) << piece.net.panels[flap].id;
  if (glue.onto < 0) return;  // onto another piece
  const auto onto = static_cast<std::size_t>(glue.onto);
  const Point3 other = piece.folded[onto].inverse().apply(piece.folded[flap].apply(own));
  for (const Polygon& hole : piece.net.panels[onto].openings)
    EXPECT_FALSE(within(hole, {other.x, other.y}, 0.9)) << piece.net.panels[flap].id;
}

TEST(ExtraPlaces, TapeSparesEveryOpening) {
  testing::Random random(82);
  int strips = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 4; ++round) {
      Design design = designOf(random, style, round);
      design.extras = {someWindow(random, design, round)};
      for (const BuiltPiece& piece : built(design).pieces) {
        const AdhesivePlan plan =
            planAdhesive(piece.net, piece.gluePlan, planFolds(piece.net, piece.flat), design.grid);
        for (const GlueStrip& strip : plan.strips) {
          const Point along = unit(strip.middle.b - strip.middle.a);
          for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0})
            for (const double side : {-0.5, 0.0, 0.5})
              expectSpared(piece, piece.gluePlan.at(static_cast<std::size_t>(strip.area)),
                           strip.middle.a + (strip.middle.b - strip.middle.a) * share +
                               turnLeft(along) * (side * strip.width.mm()));
          ++strips;
        }
      }
    }
  EXPECT_GT(strips, 300);
}

bool isTold(const BuiltDesign& design, const char* hidden, const char* by) {
  return std::ranges::any_of(design.problems, [&](const Problem& problem) {
    return problem.code == ProblemCode::ExtraCovered && problem.where == hidden &&
           problem.severity == Severity::Warning && problem.values.size() == 2 &&
           std::get<std::string>(problem.values[1]) == by;
  });
}

/// Whether a band hides a point of a face: it meets a panel of the band on the way out.
bool isUnder(const BuiltPiece& band, const BuiltPiece& host, int face, Point p) {
  const Transform& place = host.folded.at(static_cast<std::size_t>(face));
  const Point3 from = place.apply(p);
  for (std::size_t i = 0; i < band.net.panels.size(); ++i) {
    const Transform there = band.role->around->after(band.folded[i]);
    const auto at = hit(band.net.panels[i], there, from, place.normal() * -1);
    if (at && *at > -1 && *at < 8) return true;
  }
  return false;
}

bool isUnder(const RibbonNeed& ribbon, const BuiltPiece& host, int face, Point p) {
  const Transform& place = host.folded.at(static_cast<std::size_t>(face));
  const Point3 at = place.apply(p) - ribbon.round.centre;
  for (const std::size_t axis : {0U, 1U})
    if ((axis == 0 || ribbon.cross) &&
        std::abs(dot(place.normal(), ribbon.round.axes[axis])) < 0.9 &&
        std::abs(dot(at, ribbon.round.axes[axis])) < ribbon.width.mm() / 2 - 0.01)
      return true;
  return false;
}

// A box of one piece: there the band and the ribbon have their place in space.
TEST(ExtraPlaces, NothingIsHiddenUnsaid) {
  testing::Random random(83);
  int free = 0;
  int told = 0;
  for (const Style& style : styles())
    for (const char* wrap : {"belly-band", "sleeve", "ribbon"})
      for (const char* kind : {"label", "window"})
        for (int round = 0; round < 2; ++round) {
          Design design = designOf(random, style, round);
          design.extras = {extraOf(wrap, design), extraOf(kind, design)};
          design.extras[1].host = kOnBox;  // it would lie on the band
          const BuiltDesign whole = built(design);
          const auto shown = piecesOf(whole, 1);
          const auto bands = piecesOf(whole, 0);
          const bool isOneBox =
              std::ranges::count_if(whole.pieces, [](const BuiltPiece& p) { return !p.role; }) == 1;
          if (shown.empty() || !isOneBox || (bands.empty() && whole.ribbons.empty())) continue;
          const FacePlace& face = shown.front()->role->faces.at(0);
          const BuiltPiece& host = hostOf(whole, face);
          const Panel& panel = host.net.panels.at(static_cast<std::size_t>(face.panel));
          const bool window = !panel.openings.empty() && std::string_view(kind) == "window";
          const Polygon shape = window ? panel.openings.back() : onFace(*shown.front(), face);
          bool hidden = false;
          for (const Point& p : over(shape, 0))
            if (locate(p, shape) == Side::Inside)
              hidden |= bands.empty() ? isUnder(whole.ribbons.front(), host, face.panel, p)
                                      : isUnder(*bands.front(), host, face.panel, p);
          EXPECT_EQ(hidden, isTold(whole, kind, wrap))
              << style.id << ' ' << kind << " under " << wrap << " on " << panel.id;
          (hidden ? told : free)++;
        }
  EXPECT_GT(free, 60);
  EXPECT_GT(told, 5);
}

/// What is said of an extra alone on a box, and what is said where it takes the size advised.
struct Advice {
  std::optional<Problem> first;
  std::optional<Problem> second;
};

Advice adviceOn(Design design, const char* kind, Length width, Length height) {
  const auto tried = [&](Length w, Length h) -> std::optional<Problem> {
    design.extras = {extraOf(kind, design)};
    design.extras[0].parameters.set("width", w);
    design.extras[0].parameters.set("height", h);
    const BuiltDesign whole = built(design);
    for (const Problem& problem : whole.problems)
      if (problem.where == kind) return problem;
    return std::nullopt;
  };
  Advice advice{tried(width, height), {}};
  if (!advice.first || advice.first->code != ProblemCode::ExtraTooLarge) return advice;
  const double part = std::get<Length>(advice.first->values[1]).mm() /
                      std::get<Length>(advice.first->values[0]).mm();
  advice.second = tried(Length::mm(width.mm() * part), Length::mm(height.mm() * part));
  return advice;
}

TEST(ExtraPlaces, AnExtraTooLargeFitsWithTheSizeAdvised) {
  testing::Random random(91);
  int advised = 0;
  for (const Style& style : styles())
    for (const char* kind : {"label", "window"})
      for (int round = 0; round < 3; ++round) {
        const Design design = designOf(random, style, round);
        const Length width = Length::mm(random.between(30, 150));
        const Length height = Length::mm(random.between(30, 150));
        const Advice advice = adviceOn(design, kind, width, height);
        if (!advice.first || advice.first->code != ProblemCode::ExtraTooLarge) continue;
        EXPECT_GT(std::get<Length>(advice.first->values[0]),
                  std::get<Length>(advice.first->values[1]))
            << style.id << ' ' << kind;
        EXPECT_FALSE(advice.second) << style.id << ' ' << kind << ' ' << width.mm() << " x "
                                    << height.mm() << ": " << codeName(advice.second->code);
        ++advised;
      }
  EXPECT_GT(advised, 40);
}

TEST(ExtraPlaces, WhereNoSizeFitsNoneIsAdvised) {
  for (const char* style : {"platform-insert", "pillow-box", "tetrahedron"}) {
    Design design =
        *newDesign(style, std::nullopt, cards()[0], Ease::Easy, ToolGrid::sixteenthInch());
    design.extras = {extraOf("window", design)};
    const BuiltDesign whole = built(design);
    ASSERT_EQ(whole.problems.size(), 1U) << style;
    EXPECT_EQ(whole.problems[0].code, ProblemCode::ExtraNoPlace) << style;
  }
}

TEST(ExtraPlaces, TwoLabelsDoNotLieOnOneAnother) {
  for (const Style& style : styles()) {
    Design design =
        *newDesign(style.id, std::nullopt, cards()[0], Ease::Easy, ToolGrid::millimetre());
    design.extras = {extraOf("label", design), extraOf("label", design)};
    const BuiltDesign whole = built(design);
    const auto first = piecesOf(whole, 0);
    const auto second = piecesOf(whole, 1);
    if (first.empty() || second.empty()) continue;
    const FacePlace& a = first.front()->role->faces.at(0);
    const FacePlace& b = second.front()->role->faces.at(0);
    const bool onOne =
        a.piece == b.piece && a.panel == b.panel &&
        area(intersect(region(onFace(*first.front(), a)), region(onFace(*second.front(), b)))) > 1;
    EXPECT_EQ(onOne, isTold(whole, "label", "label")) << style.id;
  }
}

}  // namespace
}  // namespace creasewright
