#include "document/lies_on.h"

#include <nlohmann/json.hpp>

#include "core/extras/built_extras.h"
#include "document/net_json.h"
#include "extras/hosting.h"

// Hosts as files tell them, against the kinds that were asked for and the places of the pieces.
namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;

nlohmann::json toldExtras(const BuiltDesign& whole) {
  return nlohmann::json::parse(writeNetJson(whole))["extras"];
}

bool isMade(const BuiltDesign& whole, int extra) {
  return !testing::piecesOf(whole, extra).empty() ||
         std::ranges::any_of(whole.ribbons,
                             [&](const RibbonNeed& ribbon) { return ribbon.extra == extra; });
}

// Law: every kind on every kind that may carry it names it, on all styles.
TEST(LiesOn, EveryKindNamesTheHostThatItWasGiven) {
  std::map<std::pair<std::string, std::string>, int> judged;
  for (const Style& style : styles()) {
    const auto made = newDesign(style.id, *parseProduct("box:90x70x40mm"), *findCard("220gsm"),
                                Ease::Easy, ToolGrid::millimetre());
    if (!made) continue;
    for (const ExtraKind& host : extraKinds())
      for (const ExtraKind& guest : extraKinds()) {
        if (!mayCarry(host, guest)) continue;
        Design design = *made;
        design.extras = {extraOf(guest.id, design), extraOf(host.id, design)};
        design.extras[0].host = 1;
        const BuiltDesign whole = built(design);
        if (!isMade(whole, 0) || !isMade(whole, 1)) continue;
        const nlohmann::json extras = toldExtras(whole);
        EXPECT_EQ(extras[0]["host"], 1) << style.id << ' ' << guest.id << " on " << host.id;
        EXPECT_TRUE(extras[1]["host"].is_null()) << style.id << ' ' << host.id;
        ++judged[{std::string(host.id), std::string(guest.id)}];
      }
  }
  int pairs = 0;
  for (const ExtraKind& host : extraKinds())
    for (const ExtraKind& guest : extraKinds())
      if (mayCarry(host, guest)) {
        ++pairs;
        EXPECT_GT((judged[{std::string(host.id), std::string(guest.id)}]), 0)
            << guest.id << " on " << host.id;
      }
  EXPECT_GT(pairs, 5);
}

// Law: what is glued on over mats names them, and what lies on bare card names nothing. Judged by
// points along its outline, laid into the mats of its panel.
TEST(LiesOn, WhatIsGluedOntoMatsNamesThem) {
  int onMats = 0;
  int onCard = 0;
  for (const Style& style : styles())
    for (const std::string_view mats : {"mats", "photo-mats"})
      for (const std::string_view guest : {"label", "made-bow"}) {
        const auto made = newDesign(style.id, *parseProduct("box:90x70x40mm"), *findCard("220gsm"),
                                    Ease::Easy, ToolGrid::millimetre());
        if (!made) continue;
        Design design = *made;
        design.extras = {extraOf(mats, design), extraOf(guest, design)};
        const BuiltDesign whole = built(design);
        if (!isMade(whole, 0) || !isMade(whole, 1)) continue;
        const nlohmann::json extras = toldExtras(whole);
        EXPECT_TRUE(extras[0]["host"].is_null()) << style.id;
        // The place of the guest's middle on the box, and the mats of that panel.
        std::optional<FacePlace> at;
        Point middle;
        for (const RibbonNeed& ribbon : whole.ribbons)
          if (ribbon.extra == 1 && ribbon.shape) at = ribbon.shape->face;
        if (const auto pieces = testing::piecesOf(whole, 1); !pieces.empty()) {
          at = pieces.front()->role->faces.front();
          middle = centroid(pieces.front()->net.panels.front().outline);
        }
        if (!at) continue;
        const Point3 place = at->place.apply(middle);
        bool covered = false;
        for (const BuiltPiece* mat : testing::piecesOf(whole, 0)) {
          if (mat->role->placing != Placing::OnFace) continue;  // those on the inside carry nothing
          for (const FacePlace& face : mat->role->faces) {
            if (face.piece != at->piece || face.panel != at->panel) continue;
            const Point3 on = face.place.inverse().apply(place);
            covered =
                covered || locate({on.x, on.y}, mat->net.panels.front().outline) != Side::Outside;
          }
        }
        if (covered) {
          EXPECT_EQ(extras[1]["host"], 0) << style.id << ' ' << guest << " over " << mats;
        } else {
          EXPECT_TRUE(extras[1]["host"].is_null()) << style.id << ' ' << guest << " by " << mats;
        }
        (covered ? onMats : onCard) += 1;
      }
  EXPECT_GT(onMats, 20);
  EXPECT_GT(onCard, 20);
}

}  // namespace
}  // namespace creasewright
