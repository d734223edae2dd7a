#include <algorithm>
#include <cmath>
#include <set>

#include "core/extras/built_extras.h"
#include "document/design_file.h"
#include "extras/hosting.h"
#include "extras/layer_stack.h"
#include "guide/make_guide.h"

// Judged in space: nothing here asks where the program looked.

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::piecesOf;

Design designFor(std::string_view style, const char* product = "box:90x60x30mm") {
  return *newDesign(style, *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

/// Panel 0 of a piece in the frame of the box's first piece, or nothing where it has no place
/// there.
std::optional<Transform> worldOf(const BuiltDesign& design, const BuiltPiece& piece) {
  if (!piece.role)
    return &piece == &design.pieces.front() ? std::optional(Transform()) : std::nullopt;
  if (piece.role->around) return piece.role->around;
  if (piece.role->faces.size() != 1) return std::nullopt;
  const FacePlace& face = piece.role->faces.front();
  const BuiltPiece& on = design.pieces.at(static_cast<std::size_t>(face.piece));
  const auto below = worldOf(design, on);
  if (!below) return std::nullopt;
  return below->after(on.folded.at(static_cast<std::size_t>(face.panel))).after(face.place);
}

/// A panel in space.
struct Sheet {
  const BuiltPiece* piece;
  const Panel* panel;
  Transform place;
};

std::vector<Sheet> sheetsOf(const BuiltDesign& design) {
  std::vector<Sheet> sheets;
  for (const BuiltPiece& piece : design.pieces) {
    const auto world = worldOf(design, piece);
    if (!world) continue;
    for (std::size_t i = 0; i < piece.net.panels.size(); ++i)
      sheets.push_back({&piece, &piece.net.panels[i], world->after(piece.folded[i])});
  }
  return sheets;
}

/// Points along an outline, and some inside.
std::vector<Point> pointsOn(const Polygon& ring) {
  std::vector<Point> points;
  const Point middle = centroid(ring);
  for (std::size_t i = 0; i < ring.size(); ++i)
    for (const double share : {0.0, 0.5}) {
      const Point edge = ring[i] + (ring[(i + 1) % ring.size()] - ring[i]) * share;
      for (const double in : {0.98, 0.6}) points.push_back(middle + (edge - middle) * in);
    }
  points.push_back(middle);
  return points;
}

/// Whether a piece lies on another one, through whatever is between them.
bool liesOver(const BuiltDesign& design, const BuiltPiece& upper, const BuiltPiece& lower) {
  if (!upper.role || !lower.role) return false;
  if (upper.role->extra == lower.role->extra) {
    const auto number = [](const BuiltPiece& p) {
      return p.role->layer ? p.role->layer->number : 0;
    };
    return number(upper) > number(lower);
  }
  for (const FacePlace& face : upper.role->faces) {
    const BuiltPiece& on = design.pieces.at(static_cast<std::size_t>(face.piece));
    if (&on == &lower || liesOver(design, on, lower)) return true;
  }
  return false;
}

bool warnsOfCover(const BuiltDesign& design) {
  return std::ranges::any_of(design.problems,
                             [](const Problem& p) { return p.code == ProblemCode::ExtraCovered; });
}

/// What a point of a flat piece looks at within a finger's breadth that may not be there.
std::string hiddenBy(const BuiltDesign& design, const std::vector<Sheet>& sheets,
                     const Sheet& shown, Point at) {
  constexpr double kNear = 12;
  const Point3 from = shown.place.apply(at);
  const Point3 out = shown.place.normal() * -1;
  for (const Sheet& other : sheets) {
    if (other.piece == shown.piece || liesOver(design, *other.piece, *shown.piece)) continue;
    const double rate = dot(other.place.normal(), out);
    if (std::abs(rate) < 0.5) continue;
    const double far = dot(other.place.normal(), other.place.apply(Point{}) - from) / rate;
    if (far < 0.02 || far > kNear) continue;
    const Point3 there = other.place.inverse().apply(from + out * far);
    if (locate({there.x, there.y}, other.panel->outline) == Side::Inside)
      return other.piece->name + ":" + other.panel->id;
  }
  for (const RibbonNeed& ribbon : design.ribbons)
    for (const RibbonWay& way : ribbon.ways) {
      const Point3 axis = ribbon.round.axes.at(way.axis);
      if (std::abs(dot(axis, out)) < 0.9 &&
          std::abs(dot(from - ribbon.round.centre, axis)) < ribbon.width.mm() / 2 - 0.05)
        return "ribbon";
    }
  return {};
}

ExtraLayer randomLayer(testing::Random& random, const Design& design) {
  ExtraLayer layer = standardLayer(design.card);
  layer.card.caliper = Length::mm(random.between(0.15, 0.4));
  layer.parameters.setCount("shape", random.whole(0, static_cast<int>(shapeWords().size()) - 1));
  layer.parameters.set("inset", Length::mm(random.between(1, 4)));
  layer.parameters.setCount("hold", random.whole(0, 2));
  if (random.whole(0, 3) == 0) layer.parameters.setCount("turn", random.whole(0, 359));
  return layer;
}

/// A band or two, a ribbon, a label with layers, a banner on it, a bow.
std::vector<Extra> randomStack(testing::Random& random, const Design& design) {
  std::vector<Extra> extras;
  const auto add = [&](const char* kind) -> Extra& {
    extras.push_back(extraOf(kind, design));
    extras.back().card.caliper = Length::mm(random.between(0.15, 0.4));
    return extras.back();
  };
  if (random.whole(0, 2) > 0) add("belly-band").parameters.setCount("full", random.whole(0, 1));
  if (random.whole(0, 3) == 0) add("sleeve");
  if (random.whole(0, 2) == 0) add("ribbon").parameters.setCount("cross", random.whole(0, 1));
  Extra& label = add("label");
  label.parameters.setCount("shape", random.whole(0, static_cast<int>(shapeWords().size()) - 1));
  label.parameters.setCount("mat", random.whole(0, 1));
  label.parameters.setCount("hold", random.whole(0, 2));
  if (random.whole(0, 3) == 0) label.parameters.setCount("anchor", random.whole(1, 9));
  if (random.whole(0, 4) == 0) label.host = kOnBox;
  const int layers = random.whole(0, 2);
  for (int i = 0; i < layers; ++i) label.layers.push_back(randomLayer(random, design));
  const int lower = static_cast<int>(extras.size()) - 1;
  if (random.whole(0, 2) == 0) {
    Extra& banner = add("label");
    banner.host = lower;
    banner.parameters.setCount("mat", 0);
    banner.parameters.setCount("shape", static_cast<int>(LabelShape::Banner));
  }
  if (random.whole(0, 2) == 0) add("made-bow");
  return extras;
}

struct Counts {
  int stacks = 0;
  int flat = 0;
  int onWraps = 0;
  int wraps = 0;
  int ribbons = 0;
  int refused = 0;
};

// Law: what is not told to be hidden is seen.
void expectSeen(const BuiltDesign& design, Counts& counts) {
  if (warnsOfCover(design)) return;
  const std::vector<Sheet> sheets = sheetsOf(design);
  for (const Sheet& sheet : sheets) {
    if (!sheet.piece->role || sheet.piece->role->placing != Placing::OnFace) continue;
    ++counts.flat;
    counts.onWraps += sheet.piece->role->host >= 0;
    for (const Point& p : pointsOn(sheet.panel->outline)) {
      if (locate(p, sheet.panel->outline) != Side::Inside) continue;
      const std::string by = hiddenBy(design, sheets, sheet, p);
      ASSERT_EQ(by, "") << design.design.styleId << ": " << sheet.piece->name;
    }
  }
}

// Law: each layer stays on what is under it.
void expectInside(const BuiltDesign& design) {
  const BuiltPiece* below = nullptr;
  for (const BuiltPiece& piece : design.pieces) {
    const bool flat = piece.role && piece.role->layer;
    const bool upper = flat && piece.role->layer->number > 0;
    if (flat && !upper) {
      const FacePlace& face = piece.role->faces.at(0);
      const Panel& panel = design.pieces.at(static_cast<std::size_t>(face.piece))
                               .net.panels.at(static_cast<std::size_t>(face.panel));
      for (const Point& p : testing::onFace(piece, face))
        EXPECT_NE(locate(p, panel.outline, 0.01), Side::Outside)
            << design.design.styleId << ' ' << piece.name << " on " << panel.id;
    }
    if (upper && !piece.role->layer->overhangs) {
      const Polygon own = testing::onFace(piece, piece.role->faces.at(0));
      const Polygon under = testing::onFace(*below, below->role->faces.at(0));
      for (std::size_t i = 0; i < own.size(); ++i)
        for (const double share : {0.0, 0.25, 0.5, 0.75}) {
          const Point p = own[i] + (own[(i + 1) % own.size()] - own[i]) * share;
          EXPECT_TRUE(locate(p, under) != Side::Outside || testing::clearOf(under, p) < 0.02)
              << design.design.styleId << ' ' << piece.name << " leaves " << below->name
              << " shape "
              << design.design.extras.at(static_cast<std::size_t>(piece.role->extra))
                     .parameters.count("shape")
              << " by " << testing::clearOf(under, p);
        }
    }
    below = &piece;
  }
}

// Law: a layer lies as high as card and foam below it, and its own card, make it.
void expectThickness(const BuiltDesign& design) {
  for (std::size_t e = 0; e < design.design.extras.size(); ++e) {
    double sum = 0;
    int layers = 0;
    double base = 0;
    for (const BuiltPiece* piece : piecesOf(design, static_cast<int>(e))) {
      if (!piece->role->layer) continue;
      const double lift = -piece->role->faces.at(0).place.apply(Point{}).z;
      if (layers == 0) base = lift - piece->card.caliper.mm() - piece->role->layer->foam.mm();
      sum += piece->card.caliper.mm() + piece->role->layer->foam.mm();
      const double drawn = lift - base;
      EXPECT_NEAR(drawn, sum + 0.1 * layers, 1e-6) << piece->name;
      ++layers;
    }
  }
}

/// What a wrap goes over by the time it is put on.
bool isUnderWrap(const BuiltDesign& design, const BuiltPiece& piece, const BuiltPiece& wrap) {
  if (!piece.role) return true;
  if (piece.role->around) {
    for (int at = wrap.role->host; at >= 0;) {
      if (at == piece.role->extra) return true;
      const auto below = piecesOf(design, at);
      at = below.empty() ? kOnBox : below.front()->role->host;
    }
    return false;
  }
  // What stands out from the box, and lies on no wrap.
  for (const BuiltPiece* at = &piece; at->role;
       at = &design.pieces.at(static_cast<std::size_t>(at->role->faces.at(0).piece))) {
    if (at->role->placing != Placing::OnFace) return false;
    if (at->role->host == kOnBox)
      return design.design.extras.at(static_cast<std::size_t>(at->role->extra)).host == kOnBox;
  }
  return false;
}

/// How far pictures draw a flat piece off the card that it lies on beyond where its middle is:
/// layers are drawn a hair apart.
double drawnTooHigh(const BuiltDesign& design, const BuiltPiece& piece) {
  double drawn = 0;
  double real = piece.card.caliper.mm() / -2;
  for (const BuiltPiece* at = &piece; at->role && !at->role->faces.empty();) {
    const FacePlace& face = at->role->faces.at(0);
    drawn -= face.place.apply(Point{}).z;
    for (const BuiltPiece* layer : piecesOf(design, at->role->extra))
      if (layer->role->layer->number <= at->role->layer->number)
        real += layer->card.caliper.mm() + layer->role->layer->foam.mm();
    at = &design.pieces.at(static_cast<std::size_t>(face.piece));
    if (!at->role) real += at->card.caliper.mm() / 2;
  }
  return std::max(0.0, drawn - real);
}

// Law: all that lies under a band or sleeve has room in it.
void expectRound(const BuiltDesign& design, Counts& counts) {
  for (const BuiltPiece& wrap : design.pieces) {
    if (!wrap.role || !wrap.role->around || !wrap.cavity) continue;
    ++counts.wraps;
    const Bounds front = bounds(wrap.net.panels.front().outline);
    double depth = 0;
    for (std::size_t i = 0; i < wrap.net.panels.size(); ++i)
      for (const Point& p : wrap.net.panels[i].outline)
        depth = std::max(depth, wrap.folded[i].apply(p).z);
    const Transform into = wrap.role->around->inverse();
    for (const Sheet& sheet : sheetsOf(design)) {
      if (sheet.piece == &wrap || !isUnderWrap(design, *sheet.piece, wrap)) continue;
      const double card = (wrap.card.caliper + sheet.piece->card.caliper).mm() / 2;
      const double lower = drawnTooHigh(design, *sheet.piece);
      for (const Point& p : pointsOn(sheet.panel->outline)) {
        const Point3 at = into.apply(sheet.place.apply(p) + sheet.place.normal() * lower);
        if (at.y < front.low.y || at.y > front.high.y) continue;
        EXPECT_GE(at.x, front.low.x + card - 0.02) << design.design.styleId << sheet.piece->name;
        EXPECT_LE(at.x, front.high.x - card + 0.02) << design.design.styleId << sheet.piece->name;
        EXPECT_GE(at.z, card - 0.02) << design.design.styleId << ' ' << sheet.piece->name;
        EXPECT_LE(at.z, depth - card + 0.02) << design.design.styleId << ' ' << sheet.piece->name;
      }
    }
  }
}

/// Where the edges of all sheets meet a plane, in coordinates of the plane.
std::vector<Point> sectionOf(const BuiltDesign& design, Point3 centre, Point3 axis, Point3 u,
                             Point3 v) {
  std::vector<Point> section;
  for (const Sheet& sheet : sheetsOf(design)) {
    if (sheet.piece->role && sheet.piece->role->placing == Placing::OnFace) continue;
    const Polygon& ring = sheet.panel->outline;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point3 a = sheet.place.apply(ring[i]) - centre;
      const Point3 b = sheet.place.apply(ring[(i + 1) % ring.size()]) - centre;
      const double da = dot(a, axis);
      const double db = dot(b, axis);
      if ((da > 0) == (db > 0) || da == db) continue;
      const Point3 at = a + (b - a) * (da / (da - db));
      section.push_back({dot(at, u), dot(at, v)});
    }
  }
  return section;
}

// Law: the ribbon is long enough for a string pulled tight round all that it lies on, and its bow.
void expectRibbonLongEnough(const BuiltDesign& design, Counts& counts) {
  for (const RibbonNeed& ribbon : design.ribbons) {
    if (ribbon.ways.empty()) continue;
    ++counts.ribbons;
    double tight = 0;
    for (const RibbonWay& way : ribbon.ways) {
      const auto& axes = ribbon.round.axes;
      const std::vector<Point> cut =
          sectionOf(design, ribbon.round.centre, axes.at(way.axis), axes.at((way.axis + 1) % 3),
                    axes.at((way.axis + 2) % 3));
      if (cut.size() > 2) tight += perimeter(convexHull(cut));
    }
    EXPECT_GE(ribbon.length.mm(), tight + ribbon.bow.mm() - 1e-6) << design.design.styleId;
  }
}

TEST(Hosts, RandomStacksAreSeenStayOnTheirHostsAndAreGoneRound) {
  testing::Random random(1701);
  Counts counts;
  for (const Style& style : styles())
    for (int round = 0; round < 4; ++round) {
      Design design = testing::fitted(random, style);
      design.extras = randomStack(random, design);
      const BuiltDesign whole = built(design);
      const auto own =
          std::ranges::count_if(whole.pieces, [](const BuiltPiece& p) { return !p.role; });
      counts.refused += !onlyWarnings(whole.problems);
      if (own != 1) continue;
      ++counts.stacks;
      expectSeen(whole, counts);
      expectInside(whole);
      expectThickness(whole);
      expectRound(whole, counts);
      expectRibbonLongEnough(whole, counts);
      if (HasFatalFailure()) return;
    }
  EXPECT_GT(counts.stacks, 80);
  EXPECT_GT(counts.flat, 100);
  EXPECT_GT(counts.onWraps, 20);
  EXPECT_GT(counts.wraps, 20);
  EXPECT_GT(counts.ribbons, 5);
}

TEST(Hosts, ALabelLiesOnTheBandOfATrayAndIsGluedToIt) {
  Design design = designFor("framed-tray");
  design.extras = {extraOf("belly-band", design), extraOf("label", design)};
  const BuiltDesign whole = built(design);
  EXPECT_TRUE(onlyWarnings(whole.problems) && !warnsOfCover(whole));
  const auto label = piecesOf(whole, 1);
  ASSERT_EQ(label.size(), 2U);
  EXPECT_EQ(label.front()->role->host, 0);
  const auto band = piecesOf(whole, 0).at(0);
  EXPECT_EQ(&testing::hostOf(whole, label.front()->role->faces.at(0)), band);
  // In the guide it is glued on while the band lies flat, before the band is slid on.
  const Guide guide = makeGuide(whole);
  const auto at = [&](int extra) {
    return std::ranges::find_if(guide.steps, [&](const Step& s) {
      return s.code == StepCode::AddExtra && s.extra == extra;
    });
  };
  ASSERT_NE(at(1), guide.steps.end());
  EXPECT_LT(at(1), at(0));
  EXPECT_EQ(&whole.pieces.at(static_cast<std::size_t>(at(1)->piece)), band);
  EXPECT_FALSE(at(1)->figure.put.empty());
}

TEST(Hosts, TheOrderOfTheListDoesNotHideALabel) {
  Design design = designFor("framed-tray");
  design.extras = {extraOf("label", design), extraOf("belly-band", design)};
  const BuiltDesign whole = built(design);
  EXPECT_FALSE(warnsOfCover(whole));
  EXPECT_EQ(piecesOf(whole, 0).at(0)->role->host, 1);
}

TEST(Hosts, APlaceFollowsWhenItsHostGrows) {
  Design design = designFor("straight-tuck-box", "box:60x35x120mm");
  design.extras = {extraOf("label", design)};
  Extra& label = design.extras[0];
  label.face = "box:front";
  label.parameters.set("width", Length::mm(20));
  label.parameters.set("height", Length::mm(12));
  label.parameters.setCount("mat", 0);
  label.parameters.setCount("anchor", 7);  // top right
  label.parameters.set("up", Length::mm(-5));
  const auto corner = [&](const Design& of) {
    const BuiltDesign whole = built(of);
    EXPECT_TRUE(whole.problems.empty());
    const BuiltPiece& piece = *piecesOf(whole, 0).at(0);
    const FacePlace& face = piece.role->faces.at(0);
    const Bounds panel = bounds(
        testing::hostOf(whole, face).net.panels.at(static_cast<std::size_t>(face.panel)).outline);
    const Bounds own = bounds(testing::onFace(piece, face));
    return std::array{panel.high.x - own.high.x, own.low.x - panel.low.x, panel.high.y - own.high.y,
                      own.low.y - panel.low.y};
  };
  const auto small = corner(design);
  design.product->length = Length::mm(85);
  design.product->height = Length::mm(140);
  const auto large = corner(refitted(design));
  // Of the two gaps on each axis one stays and the other grows with the box.
  for (const std::size_t axis : {0U, 2U}) {
    const double a = std::abs(large.at(axis) - small.at(axis));
    const double b = std::abs(large.at(axis + 1) - small.at(axis + 1));
    EXPECT_NEAR(std::min(a, b), 0, 1e-3);
    EXPECT_GT(std::max(a, b), 15);
  }
  label.parameters.set("across", Length::mm(30));
  design = refitted(design);
  const BuiltDesign off = built(design);
  ASSERT_EQ(off.problems.size(), 1U);
  EXPECT_EQ(off.problems[0].code, ProblemCode::ExtraOffFace);
  design.extras[0].parameters.setCount("overhang", 1);
  design.extras[0].parameters.set("across", Length::mm(8));  // its middle stays on the face
  EXPECT_TRUE(onlyWarnings(built(design).problems));
}

TEST(Hosts, CirclesAndHostsThatCannotCarryAreOneProblemEach) {
  Design design = designFor("straight-tuck-box");
  const auto only = [&](ProblemCode code) {
    const BuiltDesign whole = built(design);
    return std::ranges::count(whole.problems, code, &Problem::code);
  };
  design.extras = {extraOf("label", design), extraOf("label", design), extraOf("label", design)};
  design.extras[0].host = 1;
  design.extras[1].host = 2;
  design.extras[2].host = 0;
  EXPECT_EQ(only(ProblemCode::ExtraHostCircle), 1);
  design.extras = {extraOf("label", design), extraOf("belly-band", design)};
  design.extras[1].host = 0;
  EXPECT_EQ(only(ProblemCode::ExtraHostUnfit), 1);
  design.extras[1].host = 1;
  EXPECT_EQ(only(ProblemCode::ExtraHostCircle), 1);
  design.extras[1].host = 7;
  EXPECT_EQ(only(ProblemCode::ExtraHostUnknown), 1);
}

// Law: for any list of hosts, however wrong, nothing hangs and every extra is made or told of.
TEST(Hosts, AnyHostsAreMadeOrRefused) {
  testing::Random random(1702);
  for (int round = 0; round < 120; ++round) {
    Design design = designFor("straight-tuck-box");
    const int count = random.whole(1, 6);
    for (int i = 0; i < count; ++i) {
      const auto kinds = extraKinds();
      const auto& kind =
          kinds[static_cast<std::size_t>(random.whole(0, static_cast<int>(kinds.size()) - 1))];
      design.extras.push_back(extraOf(kind.id, design));
      design.extras.back().host = random.whole(-2, count);
    }
    const BuiltDesign whole = built(design);
    for (int i = 0; i < count; ++i) {
      const bool made = !piecesOf(whole, i).empty() ||
                        std::ranges::count(whole.ribbons, i, &RibbonNeed::extra) > 0;
      const std::string& kind = design.extras[static_cast<std::size_t>(i)].kind;
      const bool told = std::ranges::any_of(whole.problems, [&](const Problem& p) {
        return p.where == kind || p.code == ProblemCode::ExtraHostCircle ||
               p.code == ProblemCode::ParameterTooSmall || p.code == ProblemCode::ParameterTooLarge;
      });
      EXPECT_TRUE(made || told) << kind << ' ' << i;
    }
    // Whatever is taken out, the others keep their hosts or choose anew.
    const int gone = random.whole(0, count - 1);
    const std::vector<Extra> left = withoutExtra(design.extras, gone);
    for (int i = 0; i < static_cast<int>(left.size()); ++i) {
      const int was = design.extras[static_cast<std::size_t>(i < gone ? i : i + 1)].host;
      if (was == gone) continue;
      EXPECT_EQ(left[static_cast<std::size_t>(i)].host, was > gone ? was - 1 : was);
    }
  }
}

TEST(Hosts, WhatLayOnARemovedHostLiesOnWhatWasBeneath) {
  Design design = designFor("framed-tray");
  design.extras = {extraOf("belly-band", design), extraOf("label", design),
                   extraOf("label", design)};
  design.extras[1].host = 0;
  design.extras[2].host = 1;
  design.extras = withoutExtra(design.extras, 1);
  ASSERT_EQ(design.extras.size(), 2U);
  EXPECT_EQ(design.extras[1].host, 0);
  design.extras = withoutExtra(design.extras, 0);
  EXPECT_EQ(design.extras[0].host, kOutermost);
  EXPECT_EQ(piecesOf(built(design), 0).at(0)->role->host, kOnBox);
}

TEST(Hosts, AFullBandIsAsWideAsTheBoxAndSlidesWithItsEase) {
  for (const double ease : {0.5, 2.0}) {
    Design design = designFor("framed-tray");
    design.grid = ToolGrid::none();
    design.extras = {extraOf("belly-band", design)};
    design.extras[0].parameters.setCount("full", 1);
    design.extras[0].parameters.set("ease", Length::mm(ease));
    const BuiltDesign whole = built(design);
    EXPECT_TRUE(onlyWarnings(whole.problems));
    const BuiltPiece& band = *piecesOf(whole, 0).at(0);
    const BuiltPiece& box = whole.pieces.front();
    double length = 0;
    double width = 0;
    for (std::size_t i = 0; i < box.net.panels.size(); ++i)
      for (const Point& p : box.net.panels[i].outline) {
        const Point3 at =
            box.folded[i].apply(p) - box.folded[0].apply(centroid(box.net.panels[0].outline));
        length = std::max(length, 2 * std::abs(at.x));
        width = std::max(width, 2 * std::abs(at.y));
      }
    const double caliper = design.card.caliper.mm();
    const Bounds front = bounds(band.net.panels.front().outline);
    EXPECT_NEAR(front.height(), std::max(length, width) + caliper, 0.2);
    EXPECT_NEAR(front.width(), std::min(length, width) + caliper + ease + caliper, 0.2);
  }
}

TEST(Hosts, ARibbonOnATrayRunsOverTheBandOrIsRefused) {
  Design design = designFor("framed-tray");
  design.extras = {extraOf("ribbon", design)};
  const auto problem = [&] {
    const BuiltDesign whole = built(design);
    for (const Problem& p : whole.problems)
      if (p.severity == Severity::Error) return std::optional(p);
    return std::optional<Problem>();
  };
  ASSERT_TRUE(problem());
  EXPECT_EQ(problem()->code, ProblemCode::ExtraNoPlace);
  design.extras.push_back(extraOf("belly-band", design));
  ASSERT_TRUE(problem());
  EXPECT_EQ(problem()->code, ProblemCode::ExtraInAir);
  design.extras[0].parameters.setCount("cross", 0);
  EXPECT_FALSE(problem());
  const BuiltDesign along = built(design);
  ASSERT_EQ(along.ribbons.size(), 1U);
  // It goes the band's way, and its outside is the band's.
  const BuiltPiece& band = *piecesOf(along, 1).at(0);
  const Bounds front = bounds(band.net.panels.front().outline);
  const RibbonWay& way = along.ribbons[0].ways.at(0);
  const Bounds round = bounds(way.outline);
  const double widest = std::max(round.width(), round.height());
  EXPECT_NEAR(widest, front.width() + design.card.caliper.mm(), 1e-6);
  design.extras[0].parameters.setCount("cross", 1);
  design.extras[1].parameters.setCount("full", 1);
  EXPECT_FALSE(problem());
  // As it would be added it needs no band that is wider.
  Design tray = designFor("framed-tray");
  tray.extras = {extraOf("belly-band", tray)};
  EXPECT_FALSE(newExtra(**findExtraKind("ribbon"), tray).parameters.flag("cross"));
}

TEST(Hosts, NothingSlidesOverFoam) {
  Design design = designFor("straight-tuck-box", "box:60x35x120mm");
  design.extras = {extraOf("label", design), extraOf("belly-band", design)};
  design.extras[0].host = kOnBox;
  design.extras[0].parameters.setCount("anchor", 1);
  design.extras[0].face = "box:front";
  EXPECT_TRUE(onlyWarnings(built(design).problems));
  design.extras[0].parameters.setCount("hold", 2);
  const BuiltDesign whole = built(design);
  EXPECT_EQ(std::ranges::count(whole.problems, ProblemCode::ExtraOverFoam, &Problem::code), 1);
}

TEST(Hosts, AreSavedAndReadBack) {
  Design design = designFor("framed-tray");
  design.extras = {extraOf("belly-band", design), extraOf("label", design),
                   extraOf("label", design)};
  design.extras[1].host = 0;
  design.extras[2].host = 1;
  testing::Random random(1703);
  design.extras[1].layers = {randomLayer(random, design), randomLayer(random, design)};
  design.extras[1].layers[0].lines = {"Plum jam", "from the mill"};
  const Result<Design> read = readDesign(writeDesign(design), "x");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(*read, design);
}

/// A file as version 6 wrote it.
std::string asVersion6(Design design) {
  std::string text = writeDesign(design);
  const auto drop = [&](const std::string& from, const std::string& to) {
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at))
      text.replace(at, from.size(), to);
  };
  drop("\"version\": " + std::to_string(kDesignVersion), "\"version\": 6");
  for (const char* key : {"font", "align", "curve", "points"})
    for (const char* before : {",\n        ", "\n        "})
      drop(before + ("\"" + std::string(key) + "\": 0"), "");
  drop("      \"host\": \"outermost\",\n", "");
  for (const char* key : {"anchor", "turn", "hold"})
    drop("\n        \"" + std::string(key) + "\": 0,", "");
  for (const char* key : {"overhang", "full"})
    drop("\n        \"" + std::string(key) + "\": false,", "");
  for (const char* key : {"across", "up", "ease"})
    drop("\n        \"" + std::string(key) + "\": \"0 mm\",", "");
  drop(",\n        \"foam\": \"2 mm\",\n        \"punched\": false", "");
  drop("\n        \"foam\": \"2 mm\",\n        \"punched\": false", "");
  return text;
}

TEST(Hosts, OlderDesignsLookAsBeforeButForLabelsThatABandHid) {
  Design box = designFor("straight-tuck-box", "box:60x35x120mm");
  box.extras = {extraOf("belly-band", box), extraOf("label", box)};
  const Result<Design> kept = readDesign(asVersion6(box), "x");
  ASSERT_TRUE(kept.ok()) << codeName(kept.problem().code) << kept.problem().where;
  EXPECT_EQ(kept->extras[1].host, kOnBox);  // beside the band, as it was
  EXPECT_FALSE(warnsOfCover(built(*kept)));
  Design tray = designFor("framed-tray");
  tray.extras = {extraOf("belly-band", tray), extraOf("label", tray)};
  tray.extras[1].face = "tray:base";
  tray.extras[1].parameters.set("width", Length::mm(40));
  tray.extras[1].parameters.set("height", Length::mm(25));
  const Result<Design> mended = readDesign(asVersion6(tray), "x");
  ASSERT_TRUE(mended.ok()) << codeName(mended.problem().code) << mended.problem().where;
  EXPECT_EQ(mended->extras[1].host, kOutermost);
}

TEST(Hosts, AreFoundByNameAndNumber) {
  Design design = designFor("framed-tray");
  const std::vector<Extra> extras = {extraOf("belly-band", design), extraOf("label", design),
                                     extraOf("label", design), extraOf("ribbon", design)};
  EXPECT_EQ(*findHost(extras, 3, "band"), 0);
  EXPECT_EQ(*findHost(extras, 3, "label"), 2);
  EXPECT_EQ(*findHost(extras, 3, "label-1"), 1);
  EXPECT_EQ(*findHost(extras, 2, "label"), 1);
  EXPECT_EQ(*findHost(extras, 0, "label"), 1);
  EXPECT_EQ(*findHost(extras, 0, "3"), 2);
  EXPECT_EQ(*findHost(extras, 0, "box"), kOnBox);
  EXPECT_EQ(*findHost(extras, 0, "outermost"), kOutermost);
  for (const char* wrong : {"", "9", "0", "-4", "hat", "label-5", "label-x"})
    EXPECT_EQ(findHost(extras, 3, wrong).problem().code, ProblemCode::ExtraHostUnknown) << wrong;
}

}  // namespace
}  // namespace creasewright
