#include <cmath>

#include "core/extras/in_space.h"
#include "extras/ribbon_picture.h"

// The bow of a ribbon round a box, judged by its panels in space: rays and distances, with no
// outline made and no place asked for.
namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::inSpace;

/// Panels of one bow, its tails first.
struct BowInSpace {
  Net net;
  Pose pose;
  std::size_t tails = 0;  ///< panels of tails
};

BowInSpace bowOf(const RibbonNeed& ribbon) {
  BowInSpace bow;
  addTiedBow(*ribbon.tied, ribbon.width.mm(), bow.net, bow.pose);
  BowInSpace bare;
  TiedBow loops = *ribbon.tied;
  loops.drape.clear();
  addTiedBow(loops, ribbon.width.mm(), bare.net, bare.pose);
  bow.tails = bow.net.panels.size() - bare.net.panels.size();
  return bow;
}

struct CardInSpace {
  const Panel* panel;
  Transform place;
  double half;  // mm of its thickness
};

/// All card that stands together, but what hangs.
std::vector<CardInSpace> cardOfGift(const BuiltDesign& whole) {
  std::vector<CardInSpace> cards;
  for (const BuiltPiece& piece : whole.pieces) {
    if (piece.role && piece.role->placing != Placing::OnFace &&
        piece.role->placing != Placing::Round)
      continue;
    const auto place = inSpace(whole, piece);
    if (!place) continue;
    for (std::size_t i = 0; i < piece.net.panels.size(); ++i)
      cards.push_back(
          {&piece.net.panels[i], place->after(piece.folded[i]), piece.card.caliper.mm() / 2});
  }
  return cards;
}

/// Where a ray first meets the middle of card, mm along it; 1e9 where it meets none.
double firstMet(const std::vector<CardInSpace>& cards, Point3 from, Point3 way) {
  double first = 1e9;
  for (const CardInSpace& card : cards) {
    const double rate = dot(card.place.normal(), way);
    if (std::abs(rate) < 0.05) continue;
    const double at = dot(card.place.normal(), card.place.apply(Point{}) - from) / rate;
    if (at < 0 || at > first) continue;
    const Point3 there = card.place.inverse().apply(from + way * at);
    if (locate({there.x, there.y}, card.panel->outline) == Side::Inside) first = at;
  }
  return first;
}

/// Places on a panel: some along its outline, drawn in by a hair.
std::vector<Point3> placesOn(const Panel& panel, const Transform& place) {
  const Point middle = centroid(panel.outline);
  std::vector<Point3> places;
  for (std::size_t i = 0; i < panel.outline.size(); ++i) {
    const Point a = panel.outline[i];
    const Point b = panel.outline[(i + 1) % panel.outline.size()];
    for (const double share : {0.0, 0.5})
      places.push_back(place.apply(middle + (a + (b - a) * share - middle) * 0.98));
  }
  return places;
}

Design tied(testing::Random& random, const Style& style) {
  Design design = testing::fitted(random, style);
  if (random.whole(0, 2) == 0) design.extras.push_back(extraOf("mats", design));
  if (random.whole(0, 1) == 0) {
    design.extras.push_back(extraOf("label", design));
    design.extras.back().layers = {standardLayer(design.card)};
    design.extras.back().layers[0].parameters.setCount("hold", 2);
  }
  design.extras.push_back(extraOf("ribbon", design));
  Parameters& own = design.extras.back().parameters;
  own.set("width", Length::mm(random.whole(3, 20)));
  own.set("bow", Length::mm(random.whole(150, 420)));
  own.setCount("cross", random.whole(0, 1));
  return design;
}

/// Area of the ribbon of all panels that share a bow, mm2.
double areaOf(const BowInSpace& bow, std::size_t first, std::size_t end) {
  double sum = 0;
  for (std::size_t i = first; i < end; ++i) sum += std::abs(signedArea(bow.net.panels[i].outline));
  return sum;
}

// Law: nothing of the bow lies under card, its tails lie close on what is under them, none leaves
// the box at its sides, and none goes below its foot.
TEST(TiedBow, LiesOverAllThatIsOnTheBoxOnEveryStyle) {
  testing::Random random(4177);
  int judged = 0;
  int draped = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 4; ++round) {
      SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(round));
      const BuiltDesign whole = built(tied(random, style));
      if (whole.ribbons.empty() || !whole.ribbons[0].tied) continue;
      const RibbonNeed& ribbon = whole.ribbons[0];
      const BowInSpace bow = bowOf(ribbon);
      const std::vector<CardInSpace> cards = cardOfGift(whole);
      const OutsideBox& box = ribbon.round;
      double foot = 1e9;
      for (const CardInSpace& card : cards)
        for (const Point& p : card.panel->outline)
          foot = std::min(foot, dot(card.place.apply(p), box.up));
      const Point3 top = ribbon.tied->knot.normal() * -1;
      ASSERT_GT(bow.tails, 1U);
      // Its loops lie along a side of the box, across for who looks; its tails come towards them.
      const Point3 x = ribbon.tied->knot.turn({1, 0, 0});
      std::size_t side = 0;
      for (std::size_t k = 1; k < 3; ++k)
        if (std::abs(dot(box.axes.at(k), x)) > std::abs(dot(box.axes.at(side), x))) side = k;
      EXPECT_NEAR(std::abs(dot(box.axes.at(side), x)), 1, 1e-6);
      const Point3 front = testing::roomOf(whole).front;
      EXPECT_LT(std::abs(dot(x, front)), 0.75);
      if (std::abs(dot(top, box.up)) > 0.9) {
        EXPECT_LT(dot(ribbon.tied->knot.turn({0, 1, 0}), front), 0);
      }
      for (std::size_t i = 0; i < bow.net.panels.size(); ++i) {
        const Point3 out = i < bow.tails ? bow.pose[i].normal() * -1 : top;
        draped += i < bow.tails && dot(out, top) < 0.5;
        for (const Point3& p : placesOn(bow.net.panels[i], bow.pose[i])) {
          ++judged;
          EXPECT_GT(firstMet(cards, p, out), 60) << "card over panel " << i;
          EXPECT_GT(dot(p, box.up), foot);
          if (i < bow.tails) {
            const double aside = std::abs(dot(p - box.centre, box.axes.at(side)));
            EXPECT_LE(aside, box.sizes.at(side) / 2 + 0.1);
          }
        }
      }
    }
  EXPECT_GT(judged, 3000);
  EXPECT_GT(draped, 10);
}

// The length that is cut for the bow is the length that is drawn: two loops, two tails to their
// tips, and about four widths for the knot (2B + 2T + 4w).
TEST(TiedBow, IsDrawnAsLongAsItsRibbon) {
  testing::Random random(92);
  int judged = 0;
  for (int round = 0; round < 40; ++round) {
    const double width = random.whole(4, 24);
    Design design = *newDesign("two-piece-box", *parseProduct("box:200x180x60mm"),
                               *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
    design.extras = {extraOf("ribbon", design)};
    Parameters& own = design.extras[0].parameters;
    own.set("width", Length::mm(width));
    own.set("bow", Length::mm(random.whole(120, 420)));
    const BuiltDesign whole = built(design);
    ASSERT_EQ(whole.ribbons.size(), 1U);
    const RibbonNeed& ribbon = whole.ribbons[0];
    // Less than twelve widths make no loops worth the name.
    if (ribbon.bow.mm() > 12 * width) {
      EXPECT_TRUE(ribbon.tied.has_value()) << width << ' ' << ribbon.bow.mm();
    }
    if (!ribbon.tied) continue;
    ++judged;
    const BowInSpace bow = bowOf(ribbon);
    // Strips of the loops: each runs from edge to edge, half of its sides' lengths on its way.
    double loops = 0;
    double widest = 0;
    for (std::size_t i = bow.tails; i < bow.net.panels.size(); ++i) {
      const Polygon& strip = bow.net.panels[i].outline;
      const Bounds size = bounds(strip);
      widest = std::max(widest, size.width());
      if (i + 8 < bow.net.panels.size()) loops += size.height();
    }
    EXPECT_NEAR(widest, width, 0.2 * width);
    double reach = 0;
    for (std::size_t i = 0; i < bow.tails; ++i)
      for (const Point& p : bow.net.panels[i].outline) {
        const Point3 at = ribbon.tied->knot.inverse().apply(bow.pose[i].apply(p));
        reach = std::max(reach, std::hypot(at.x, at.y));
      }
    const double tip = std::sqrt(std::max(0.0, reach * reach - width * width / 4));
    EXPECT_NEAR(loops + 2 * tip + 4 * width, ribbon.bow.mm(), 0.5);
    // As wide as the ribbon but for their notches and where they leave the knot.
    EXPECT_GT(areaOf(bow, 0, bow.tails), 1.6 * (tip * width - width * width / 4));
  }
  EXPECT_GT(judged, 20);
}

// What only laps under a bow that is made for itself is tied in none.
TEST(TiedBow, IsNoneUnderABowThatIsGluedOn) {
  Design design = *newDesign("two-piece-box", *parseProduct("box:90x60x30mm"), *findCard("300gsm"),
                             Ease::Easy, ToolGrid::millimetre());
  design.extras = {extraOf("ribbon", design)};
  EXPECT_TRUE(built(design).ribbons.at(0).tied.has_value());
  design.extras.push_back(extraOf("made-bow", design));
  for (const RibbonNeed& ribbon : built(design).ribbons) EXPECT_FALSE(ribbon.tied.has_value());
}

}  // namespace
}  // namespace creasewright
