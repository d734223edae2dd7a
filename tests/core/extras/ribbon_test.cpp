#include <cmath>
#include <numbers>

#include "core/extras/built_extras.h"
#include "net/standing.h"
#include "pages/gift.h"

namespace creasewright {
namespace {

using testing::extraOf;

constexpr double kThrough = 1e-3;

/// Whether the outside of the card is the first thing that a line down from `from` meets.
bool meetsOutside(const BuiltPiece& box, Point3 from, Point3 down) {
  double first = 1e9;
  bool outside = false;
  for (std::size_t i = 0; i < box.net.panels.size(); ++i) {
    const Transform& place = box.folded[i];
    const double rate = dot(place.normal(), down);
    if (std::abs(rate) < 0.05) continue;
    const double at = dot(place.normal(), place.apply(Point{}) - from) / rate;
    const Point3 there = place.inverse().apply(from + down * at);
    const Point on{there.x, there.y};
    if (locate(on, box.net.panels[i].outline) != Side::Inside) continue;
    // Of layers in one plane either will do: a glued flap lies under the panel that shows.
    const bool shows = rate > 0;
    if (at > first + kThrough) continue;
    outside = at < first - kThrough ? shows : outside || shows;
    first = std::min(first, at);
  }
  return outside;
}

/// The share of a way over the top that lies on the outside of the card.
double shareOf(const BuiltPiece& box, const OutsideBox& about, std::size_t along) {
  const double sign = dot(about.axes[2], about.up) < 0 ? -1 : 1;
  const Point3 up = about.axes[2] * sign;
  int met = 0;
  constexpr int kRays = 50;
  for (int i = 0; i < kRays; ++i) {
    const double share = (i + 0.5) / kRays - 0.5;
    // A little beside the middle, where ridges and seams are.
    const Point3 from = about.centre + up * (about.sizes[2] + 50) +
                        about.axes.at(along) * (share * about.sizes.at(along)) +
                        about.axes.at(1 - along) * 0.4;
    met += meetsOutside(box, from, up * -1);
  }
  return static_cast<double>(met) / kRays;
}

// Law: a ribbon goes round a box of one piece where, by rays cast from above, most of both its ways
// over the top lies on card; over an open one it is refused, and goes round once a band is there.
TEST(Ribbon, LiesOnCardOrOnABandAndNeverInTheAir) {
  int taken = 0;
  int refused = 0;
  for (const Style& style : styles()) {
    const auto made = newDesign(style.id, *parseProduct("box:70x50x30mm"), *findCard("300gsm"),
                                Ease::Easy, ToolGrid::millimetre());
    if (!made) continue;
    const Design& bare = *made;
    const auto alone = build(bare);
    if (!alone || !onlyWarnings(alone->problems)) continue;
    if (alone->pieces.size() != 1 || !alone->pieces.front().cavity) continue;
    const BuiltPiece& box = alone->pieces.front();
    Host host;
    host.pieces.push_back({&box, &box.folded, box.cavityBox});
    host.bench = benchOf(bare);
    const auto about = outsideOf(host);
    if (!about) continue;
    const double least = std::min(shareOf(box, *about, 0), shareOf(box, *about, 1));
    Design tied = bare;
    tied.extras = {extraOf("ribbon", bare)};
    const auto built = build(tied);
    ASSERT_TRUE(built) << style.id;
    const bool goes = built->ribbons.size() == 1;
    if (std::abs(least - 0.6) > 0.1) {
      EXPECT_EQ(goes, least > 0.6) << style.id << ' ' << least;
    }
    (goes ? taken : refused) += 1;
    if (goes) continue;
    const auto said = std::ranges::find(built->problems, ProblemCode::ExtraNoPlace, &Problem::code);
    const bool oneWay =
        std::ranges::count(built->problems, ProblemCode::ExtraInAir, &Problem::code) == 1;
    ASSERT_TRUE(said != built->problems.end() || oneWay) << style.id;
    if (!oneWay) {
      EXPECT_EQ(said->values, (std::vector<ProblemValue>{std::string("open")})) << style.id;
    }
    tied.extras.push_back(extraOf("belly-band", bare));
    const auto banded = build(tied);
    ASSERT_TRUE(banded);
    if (onlyWarnings(banded->problems)) {
      EXPECT_EQ(banded->ribbons.size(), 1U) << style.id;
    }
  }
  EXPECT_GE(taken, 10);
  EXPECT_GE(refused, 3);
}

/// Points along all edges of the box's pieces that lie in a slab about the middle, as they are
/// seen along its axis.
std::vector<Point> pointsUnder(const BuiltDesign& whole, const RibbonNeed& ribbon,
                               const RibbonWay& way) {
  std::vector<const Piece*> parts;
  for (const BuiltPiece& piece : whole.pieces)
    if (!piece.role) parts.push_back(&piece);
  const auto first = standingOf(*parts.front(), parts);
  const OutsideBox& box = ribbon.round;
  std::vector<Point> points;
  for (const BuiltPiece& piece : whole.pieces) {
    const auto stands = piece.role ? std::nullopt : standingOf(piece, parts);
    if (!stands || !first || !piece.cavity) continue;
    const Transform place = first->place.inverse().after(stands->place);
    for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
      const Polygon& ring = piece.net.panels[i].outline;
      for (std::size_t k = 0; k < ring.size(); ++k) {
        const Point a = ring[k];
        const Point step = ring[(k + 1) % ring.size()] - a;
        const int count = 1 + static_cast<int>(norm(step) / 0.1);
        for (int n = 0; n < count; ++n) {
          const Point3 p =
              place.after(piece.folded[i]).apply(a + step * (1.0 * n / count)) - box.centre;
          if (std::abs(dot(p, box.axes.at(way.axis))) > ribbon.width.mm() / 2) continue;
          points.push_back(
              {dot(p, box.axes.at((way.axis + 1) % 3)), dot(p, box.axes.at((way.axis + 2) % 3))});
        }
      }
    }
  }
  return points;
}

double reachIn(const std::vector<Point>& points, Point way) {
  double most = -1e9;
  for (const Point& p : points) most = std::max(most, dot(p, way));
  return most;
}

// Law: a ribbon is as long as the convex outline of what it goes round; its perimeter is found from
// how far that reaches in all directions (Cauchy), with no outline made.
TEST(Ribbon, FollowsTheOutlineOfWhatItGoesRound) {
  int ways = 0;
  int slimmer = 0;
  const auto judge = [&](const Design& design) {
    const auto whole = build(design);
    if (!whole || whole->ribbons.empty()) return;
    const RibbonNeed& ribbon = whole->ribbons[0];
    const double caliper = design.card.caliper.mm();
    double all = 0;
    for (const RibbonWay& way : ribbon.ways) {
      const std::vector<Point> points = pointsUnder(*whole, ribbon, way);
      constexpr int kDirections = 720;
      double round = 0;
      for (int i = 0; i < kDirections; ++i) {
        const double turn = 2 * std::numbers::pi * i / kDirections;
        const Point out{std::cos(turn), std::sin(turn)};
        const double reach = reachIn(points, out);
        round += reach * 2 * std::numbers::pi / kDirections;
        // It lies outside the card everywhere, and close to it.
        EXPECT_GT(reachIn(way.outline, out), reach + caliper / 2 - 0.01);
        EXPECT_LT(reachIn(way.outline, out), reach + 1.2 * caliper + 0.2);
      }
      all += round;
      const auto [wide, high] =
          std::pair{bounds(way.outline).width(), bounds(way.outline).height()};
      slimmer += round < 2 * (wide + high) - 4;
      ++ways;
    }
    const double bow = ribbon.bow.mm();
    EXPECT_GT(ribbon.length.mm(), all + bow);
    EXPECT_LT(ribbon.length.mm(),
              all + bow + 10 + 7 * caliper * static_cast<double>(ribbon.ways.size()));
  };
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    for (const int cross : {0, 1}) {
      const auto made = newDesign(style.id, *parseProduct("box:70x50x30mm"), *findCard("300gsm"),
                                  Ease::Easy, ToolGrid::millimetre());
      if (!made) continue;
      Design design = *made;
      design.extras = {extraOf("ribbon", design)};
      design.extras[0].parameters.setCount("cross", cross);
      judge(design);
    }
  }
  for (const int sides : {3, 4, 5, 6, 8}) {
    SCOPED_TRACE(sides);
    Design design = *newDesign("prism-box-with-lid", *parseProduct("cylinder:70x60mm"),
                               *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
    design.parameters.setCount("sides", sides);
    design.extras = {extraOf("ribbon", design)};
    judge(design);
  }
  EXPECT_GE(ways, 30);
  EXPECT_GE(slimmer, 4) << "outlines that are no rectangles";
}

}  // namespace
}  // namespace creasewright
