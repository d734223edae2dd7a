#include "pages/gift_strip.h"

#include <set>
#include <string>
#include <tuple>

#include <gtest/gtest.h>

#include "core/extras/built_extras.h"
#include "guide/make_guide.h"
#include "pages/fold_drawing.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

using testing::extraOf;

BuiltDesign giftFor(std::string_view style, std::initializer_list<const char*> extras = {},
                    const char* product = "box:90x60x30mm") {
  Design design = *newDesign(style, *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                             ToolGrid::millimetre());
  for (const char* kind : extras) design.extras.push_back(extraOf(kind, design));
  return *build(design);
}

/// What a step of the guide or a stop of the strip does, told alike.
using Told = std::tuple<std::string, int, int>;

/// The guide's steps that the strip has too; stages that are told in one step one by one.
std::vector<Told> toldByGuide(const BuiltDesign& built) {
  std::vector<Told> told;
  for (const Step& step : makeGuide(built).steps) {
    if (step.code == StepCode::PutIn || step.putIn) told.emplace_back("product", 0, 0);
    if (step.code == StepCode::GluePieces) told.emplace_back("glue", step.piece, 0);
    if (step.code == StepCode::PutTogether) told.emplace_back("together", 0, 0);
    if (step.code == StepCode::AddExtra) {
      const bool flat = step.figure.kind == FigureKind::Sheet;
      told.emplace_back(flat ? "extra on flat" : "extra", flat ? step.piece : 0, step.extra);
    }
    for (const ToldStage& stage : step.stages) {
      const int count = built.pieces[static_cast<std::size_t>(step.piece)].net.stageCount();
      told.emplace_back("fold", step.piece, static_cast<int>(stage.to * count + 0.5));
    }
  }
  return told;
}

std::vector<Told> toldByStrip(const BuiltDesign& built) {
  std::vector<Told> told;
  for (const StripStop& stop : giftStops(built)) switch (stop.code) {
      case StopCode::Fold:
        told.emplace_back("fold", stop.piece, stop.stage);
        break;
      case StopCode::GluePieces:
        told.emplace_back("glue", stop.piece, 0);
        break;
      case StopCode::GlueOn:
        told.emplace_back("extra on flat", stop.piece, stop.extra);
        break;
      case StopCode::LayInside:
      case StopCode::AddExtra:
        told.emplace_back("extra", 0, stop.extra);
        break;
      case StopCode::PutIn:
        told.emplace_back("product", 0, 0);
        break;
      case StopCode::Close:
        told.emplace_back("together", 0, 0);
        break;
    }
  return told;
}

// Law: strip and guide tell the same things in the same order, whatever is on the box.
TEST(GiftStrip, IsInTheOrderOfTheGuideForAllStylesAndRandomExtras) {
  testing::Random random(2417);
  for (const Style& style : styles())
    for (int round = 0; round < 4; ++round) {
      SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(round));
      Design design = testing::fitted(random, style);
      for (const char* kind : {"ribbon", "tag", "belly-band", "greeting-slip", "label", "platform",
                               "partition", "ribbon-pull", "mats", "window", "sleeve"}) {
        if (round == 0 || random.whole(0, 2) > 0) continue;
        Design more = design;
        more.extras.insert(more.extras.begin() + random.whole(0, std::ssize(more.extras)),
                           extraOf(kind, more));
        if (build(more)) design = more;
      }
      const BuiltDesign built = testing::built(design);
      EXPECT_EQ(toldByStrip(built), toldByGuide(built));
    }
}

TEST(GiftStrip, ALabelIsGluedOnBeforeTheBandSlidesOn) {
  Design design = *newDesign("framed-tray", *parseProduct("box:90x60x30mm"), *findCard("300gsm"),
                             Ease::Easy, ToolGrid::millimetre());
  for (const char* kind : {"label", "belly-band"}) design.extras.push_back(extraOf(kind, design));
  design.extras[1].parameters.setCount("full", 1);
  const std::vector<StripStop> stops = giftStops(*build(design));
  const auto at = [&](StopCode code, int extra) {
    return std::ranges::find_if(
        stops, [&](const StripStop& stop) { return stop.code == code && stop.extra == extra; });
  };
  ASSERT_NE(at(StopCode::GlueOn, 0), stops.end());
  ASSERT_NE(at(StopCode::AddExtra, 1), stops.end());
  EXPECT_LT(at(StopCode::GlueOn, 0), at(StopCode::AddExtra, 1));
}

std::set<int> piecesIn(const GiftScene& scene) {
  std::set<int> pieces;
  for (const PanelOwner& owner : scene.shown.owners) pieces.insert(owner.piece);
  return pieces;
}

// Law: every style ends with the finished gift, a piece is seen folded only after its stages, and
// what is put on or in is there from its stop on.
TEST(GiftStrip, NothingIsThereBeforeItIsMade) {
  for (const Style& style : styles()) {
    SCOPED_TRACE(style.id);
    const BuiltDesign built = giftFor(style.id, {"belly-band", "label", "greeting-slip"});
    const GiftStrip strip(built, 0);
    ASSERT_GT(strip.end(), 0);
    std::vector<int> folded(built.pieces.size(), 0);
    bool product = false;
    std::set<int> extras;
    for (std::size_t i = 0; i < strip.stops().size(); ++i) {
      const StripStop& stop = strip.stops()[i];
      if (stop.code == StopCode::Fold) folded[static_cast<std::size_t>(stop.piece)] = stop.stage;
      product = product || stop.code == StopCode::PutIn;
      if (stop.extra >= 0) extras.insert(stop.extra);
      for (const double share : {0.5, 1.0}) {
        const GiftScene scene = strip.at(static_cast<double>(i) + share, kClosed);
        EXPECT_TRUE(product || scene.solids.empty()) << i;
        for (const int piece : piecesIn(scene)) {
          if (piece < 0) continue;
          const BuiltPiece& shown = built.pieces[static_cast<std::size_t>(piece)];
          const bool begun = folded[static_cast<std::size_t>(piece)] == shown.net.stageCount() ||
                             piece == stop.piece || stop.piece >= 0 ||
                             stop.code == StopCode::PutIn || stop.code == StopCode::LayInside;
          EXPECT_TRUE(begun) << i << ' ' << shown.name << " was never folded";
          EXPECT_TRUE(!shown.role || piece == stop.piece || extras.contains(shown.role->extra))
              << i;
        }
      }
    }
    const Dressed last = strip.at(strip.end() - 1e-9, kClosed).shown;
    const Dressed finished = Gift(built).at({}).shown;
    ASSERT_EQ(last.pose.size(), finished.pose.size());
    for (std::size_t i = 0; i < last.pose.size(); ++i)
      EXPECT_LT(distance(last.pose[i].apply(Point{}), finished.pose[i].apply(Point{})), 1e-3);
  }
}

struct Reach3 {
  Point3 low{1e9, 1e9, 1e9};
  Point3 high{-1e9, -1e9, -1e9};
  void take(Point3 p) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
  }
};

TEST(GiftStrip, ThePillowIsOpenedBeforeTheProductGoesIn) {
  const BuiltDesign built = giftFor("pillow-box", {}, "box:80x60x15mm");
  const GiftStrip strip(built, 0);
  const auto in = std::ranges::find(strip.stops(), StopCode::PutIn, &StripStop::code);
  ASSERT_NE(in, strip.stops().end());
  const auto before = static_cast<double>(in - strip.stops().begin());
  EXPECT_TRUE(strip.at(before, kClosed).solids.empty()) << "flat, and nothing on it";
  for (const double share : {1.0, 1.5, 2.0}) {
    const GiftScene scene = strip.at(std::min(before + share, strip.end() - 1e-6), kClosed);
    ASSERT_EQ(scene.solids.size(), 1U);
    Reach3 card;
    for (std::size_t i = 0; i < scene.shown.net.panels.size(); ++i)
      for (const Point& p : scene.shown.net.panels[i].outline)
        card.take(scene.shown.pose[i].apply(p));
    for (const auto& face : scene.solids[0].faces)
      for (const Point3& p : face) {
        EXPECT_GT(std::min({p.x - card.low.x, p.y - card.low.y, p.z - card.low.z}), 0) << share;
        EXPECT_GT(std::min({card.high.x - p.x, card.high.y - p.y, card.high.z - p.z}), 0) << share;
      }
  }
}

}  // namespace
}  // namespace creasewright
