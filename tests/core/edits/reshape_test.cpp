// Edits that change more than cuts: folds, flaps, whole panels.

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/design_file.h"
#include "drawing/net_drawing.h"
#include "edits/kinds/crease_site.h"
#include "edits/kinds/edge_site.h"
#include "edits/kinds/edit_kind.h"
#include "net/net_problems.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

constexpr const char* kProducts[] = {"box:60x35x120mm", "box:90x50x70mm", "box:40x25x150mm"};

using Measures = std::map<std::string, std::string, std::less<>>;

Design started(const char* style, const char* product) {
  return *newDesign(style, *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

BuiltDesign builtWith(Design design, std::vector<Edit> edits) {
  design.edits = std::move(edits);
  return *build(design);
}

const BuiltPiece& box(const BuiltDesign& built) { return built.pieces.front(); }

double panelArea(const BuiltDesign& built, const std::string& id) {
  const Net& net = box(built).net;
  return signedArea(net.panels[static_cast<std::size_t>(*net.find(id))].outline);
}

double cutBetweenPanels(const BuiltDesign& built) {
  double sum = 0;
  for (const Segment& parting : box(built).flat.partings) sum += length(parting);
  return sum;
}

const Crease& foldOf(const BuiltDesign& built, const std::string& panel) {
  return *box(built).net.creaseOf(*box(built).net.find(panel));
}

void expectSound(const BuiltDesign& built, const BuiltDesign& plain, const std::string& what) {
  EXPECT_TRUE(built.brokenEdits.empty()) << what;
  EXPECT_EQ(built.problems.size(), plain.problems.size()) << what;
}

// A trapezoid of 12 mm with 3 mm of taper at either end has the area (w + w - 6) / 2 * 12.
TEST(Flap, AFreeFlapIsATrapezoidOnItsEdgeForEverySize) {
  for (const char* product : kProducts) {
    const Design design = started("framed-tray", product);
    const BuiltDesign plain = *build(design);
    int made = 0;
    for (std::size_t i = 0; i < box(plain).net.panels.size(); ++i) {
      const Panel& panel = box(plain).net.panels[i];
      for (const std::string& edge : edgesWithoutFolds(box(plain).net, static_cast<int>(i))) {
        const BuiltDesign built =
            builtWith(design, {{"flap", {}, panel.id, edge, {{"angle", "30"}}, true}});
        if (!built.brokenEdits.empty()) continue;
        ++made;
        const double width = findEdge(box(plain).net, static_cast<int>(i), edge)->length();
        EXPECT_NEAR(panelArea(built, panel.id + "/flap"), (width - 3) * 12, 1e-6);
        EXPECT_NEAR(area(box(built).flat.outline) - area(box(plain).flat.outline), (width - 3) * 12,
                    0.02);
        EXPECT_DOUBLE_EQ(foldOf(built, panel.id + "/flap").angle.degrees(), 30);
        EXPECT_EQ(box(built).net.stages.front(), "added-first");
        expectSound(built, plain, panel.id + ' ' + edge);
      }
    }
    EXPECT_GT(made, 2) << product;
  }
}

// A box whose seam is taken away and put back by hand is held as before.
TEST(Flap, AGluedFlapFindsThePanelThatMeetsItsEdge) {
  for (const char* product : kProducts) {
    const Design design = started("straight-tuck-box", product);
    const BuiltDesign plain = *build(design);
    const Mate* seam = nullptr;
    for (const Mate& mate : box(plain).net.mates)
      if (mate.method == Method::Glue) seam = &mate;
    ASSERT_NE(seam, nullptr);
    const Net& net = box(plain).net;
    const std::string flap = net.panels[static_cast<std::size_t>(seam->panel)].id;
    const std::string wall = flap.substr(0, flap.rfind('/'));
    const std::string onto = net.panels[static_cast<std::size_t>(seam->onto)].id;
    const int host = *net.find(wall);
    std::string edge;
    for (const FoldOn& fold : foldsOn(net, host))
      for (const std::string& name : edgesWithFolds(net, host))
        if (net.creases[fold.crease].child == seam->panel &&
            findFold(net, host, name)->crease == fold.crease)
          edge = name;
    const Edit gone{"remove", {}, flap, {}, {}, true};
    const BuiltDesign open = builtWith(design, {gone});
    EXPECT_TRUE(open.brokenEdits.empty());
    EXPECT_EQ(box(open).net.panels.size(), net.panels.size() - 1);
    EXPECT_TRUE(box(open).gluePlan.empty());
    const Edit back{"flap", {}, wall, edge, {{"hold", "glued"}, {"depth", "11 mm"}}, true};
    const BuiltDesign built = builtWith(design, {gone, back});
    expectSound(built, plain, product);
    const Net& now = box(built).net;
    ASSERT_TRUE(now.find(wall + "/flap")) << product;
    const Mate& mate = now.mates.back();
    EXPECT_EQ(now.panels[static_cast<std::size_t>(mate.panel)].id, wall + "/flap");
    EXPECT_EQ(now.panels[static_cast<std::size_t>(mate.onto)].id, onto);
    EXPECT_NEAR(std::abs(foldOf(built, wall + "/flap").angle.degrees()), 90, 1e-6);
    EXPECT_FALSE(box(built).gluePlan.empty());
    for (const Problem& problem : pathProblems(box(built)))
      ADD_FAILURE() << codeName(problem.code) << ' ' << problem.where;
  }
}

TEST(Split, AScoreOfNoAngleMakesTwoPanelsAndKeepsTheBox) {
  int made = 0;
  for (const Style& style : styles()) {
    Result<Design> design = newDesign(style.id, *parseProduct("box:60x60x60mm"),
                                      *findCard("300gsm"), Ease::Easy, ToolGrid::none());
    if (!design || !build(*design)) continue;
    const BuiltDesign plain = *build(*design);
    for (const Panel& panel : box(plain).net.panels) {
      for (const char* direction : {"across", "up"}) {
        const Edit split{"split", box(plain).name, panel.id, {}, {{"direction", direction}}, true};
        const BuiltDesign built = builtWith(*design, {split});
        if (!built.brokenEdits.empty()) continue;
        ++made;
        const std::string what = std::string(style.id) + ' ' + panel.id + ' ' + direction;
        EXPECT_NEAR(panelArea(built, panel.id) + panelArea(built, panel.id + "/part"),
                    panelArea(plain, panel.id), 1e-6)
            << what;
        EXPECT_NEAR(area(box(built).flat.outline), area(box(plain).flat.outline), 0.02) << what;
        EXPECT_NEAR(box(built).flat.width, box(plain).flat.width, 1e-9) << what;
        ASSERT_EQ(box(built).cavitySize.has_value(), box(plain).cavitySize.has_value());
        if (box(built).cavitySize) {
          EXPECT_NEAR(box(built).cavitySize->height, box(plain).cavitySize->height, 1e-6) << what;
        }
        expectSound(built, plain, what);
        // And back: the two made one are the panel as it was.
        const Edit merge{"merge", box(plain).name, panel.id + "/part", "inner", {}, true};
        const BuiltDesign back = builtWith(*design, {split, merge});
        expectSound(back, plain, what + " back");
        EXPECT_EQ(box(back).net.panels.size(), box(plain).net.panels.size()) << what;
        EXPECT_NEAR(panelArea(back, panel.id), panelArea(plain, panel.id), 1e-6) << what;
      }
    }
  }
  std::cout << made << " panels split\n";
  EXPECT_GT(made, 100);
}

TEST(SlitLock, TheFoldIsShorterByBothSlitsAndNothingElseMoves) {
  for (const char* product : kProducts) {
    const Design design = started("straight-tuck-box", product);
    const BuiltDesign plain = *build(design);
    int made = 0;
    for (const Mate& mate : box(plain).net.mates) {
      if (mate.method != Method::Tuck) continue;
      const auto index = static_cast<std::size_t>(mate.panel);
      const std::string tuck = box(plain).net.panels[index].id;
      const Edit lock{"slit-lock", {}, tuck, "inner", {{"length", "5 mm"}}, true};
      const BuiltDesign built = builtWith(design, {lock});
      expectSound(built, plain, tuck);
      ++made;
      EXPECT_NEAR(length(foldOf(built, tuck).onParent), length(foldOf(plain, tuck).onParent) - 10,
                  1e-9);
      EXPECT_NEAR(cutBetweenPanels(built), cutBetweenPanels(plain) + 10, 1e-6);
      const Polygon& now = box(built).flat.panels[index];
      const Polygon& then = box(plain).flat.panels[index];
      ASSERT_EQ(now.size(), then.size());
      for (std::size_t i = 0; i < now.size(); ++i) EXPECT_LT(distance(now[i], then[i]), 1e-9);
      EXPECT_NEAR(area(box(built).flat.outline), area(box(plain).flat.outline), 0.02);
    }
    EXPECT_GT(made, 1) << product;
  }
}

TEST(ChangedFold, APerforationAndTheOtherWayAreWhatTheySay) {
  const Design design = started("straight-tuck-box", kProducts[0]);
  const BuiltDesign plain = *build(design);
  int perforated = 0;
  for (const Panel& panel : box(plain).net.panels) {
    if (box(plain).net.creaseOf(*box(plain).net.find(panel.id)) == nullptr) continue;
    const Crease& then = foldOf(plain, panel.id);
    const BuiltDesign torn =
        builtWith(design, {{"fold", {}, panel.id, "inner", {{"line", "perforation"}}, true}});
    expectSound(torn, plain, panel.id);
    EXPECT_EQ(foldOf(torn, panel.id).kind, CreaseKind::Perforated);
    ++perforated;
    // Every fold of this box is held by others: it closes one way alone.
    const BuiltDesign over =
        builtWith(design, {{"fold",
                            {},
                            panel.id,
                            "inner",
                            {{"fold", then.isValley() ? "mountain" : "valley"}},
                            true}});
    EXPECT_EQ(over.brokenEdits.at(0).code, ProblemCode::EditUnfit) << panel.id;
  }
  EXPECT_GT(perforated, 8);
  // A flap that is free goes any way.
  const Edit flap{"flap", {}, "front/left/back/seam", "left", {{"angle", "30"}}, true};
  const std::string added = "front/left/back/seam/flap";
  const auto foldWith = [&](Measures measures) {
    const BuiltDesign built =
        builtWith(design, {flap, {"fold", {}, added, "inner", std::move(measures), true}});
    EXPECT_TRUE(built.brokenEdits.empty());
    return foldOf(built, added);
  };
  EXPECT_DOUBLE_EQ(foldWith({{"fold", "mountain"}}).angle.degrees(), -30);
  EXPECT_DOUBLE_EQ(foldWith({{"turn", "by an angle"}, {"angle", "35"}}).angle.degrees(), 35);
  const Crease opened = foldWith({{"turn", "by an angle"}, {"angle", "0"}, {"fold", "mountain"}});
  EXPECT_DOUBLE_EQ(opened.angle.degrees(), 0);
  EXPECT_FALSE(opened.isValley());
  const std::string any = box(plain).net.panels.back().id;
  const BuiltDesign same = builtWith(design, {{"fold", {}, any, "inner", {}, true}});
  EXPECT_EQ(same.brokenEdits.at(0).code, ProblemCode::EditNoEffect);
}

TEST(Remove, APanelGoesWithAllThatHangsOnIt) {
  const Design design = started("straight-tuck-box", kProducts[0]);
  const BuiltDesign plain = *build(design);
  const Net& net = box(plain).net;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const std::string& id = net.panels[i].id;
    const BuiltDesign built = builtWith(design, {{"remove", {}, id, {}, {}, true}});
    if (!built.brokenEdits.empty()) {
      EXPECT_TRUE(i == 0 || built.pieces.front().cavity->panel.starts_with(id)) << id;
      continue;
    }
    std::size_t left = 0;
    double area = 0;
    for (const Panel& panel : net.panels) {
      const bool hangs = panel.id == id || panel.id.starts_with(id + "/");
      left += hangs ? 0 : 1;
      area += hangs ? 0 : signedArea(panel.outline);
    }
    EXPECT_EQ(box(built).net.panels.size(), left) << id;
    double now = 0;
    for (const Panel& panel : box(built).net.panels) now += signedArea(panel.outline);
    EXPECT_NEAR(now, area, 1e-6) << id;
    for (const Crease& crease : box(built).net.creases)
      EXPECT_LE(crease.stage, box(built).net.stageCount()) << id;
  }
}

TEST(Text, WordsAndMarksStandOnTheirPanelInEveryPicture) {
  const Design design = started("straight-tuck-box", kProducts[0]);
  const BuiltDesign built = builtWith(
      design, {{"text", {}, "front", {}, {{"words", "With love <3"}}, true},
               {"mark", {}, "front", {}, {{"y", "20 mm"}}, true},
               {"text", {}, "front", {}, {{"words", "Far too long a text to stand there"}}, true}});
  ASSERT_EQ(built.brokenEdits.size(), 1U);
  EXPECT_EQ(built.brokenEdits.at(2).code, ProblemCode::EditUnfit);
  const BuiltPiece& piece = box(built);
  ASSERT_EQ(piece.net.inscriptions.size(), 1U);
  ASSERT_EQ(piece.net.marks.size(), 2U);
  const auto front = static_cast<std::size_t>(*piece.net.find("front"));
  const Inscription& line = piece.net.inscriptions.front();
  EXPECT_EQ(locate(piece.flat.place(line.panel, line.at), piece.flat.panels[front]), Side::Inside);
  const Drawing drawing = drawNetLines(piece.net, piece.flat, {});
  EXPECT_TRUE(std::ranges::any_of(
      drawing.texts, [](const TextItem& text) { return text.label.literal == "With love <3"; }));
  EXPECT_TRUE(std::ranges::any_of(drawing.paths, [](const PathItem& path) {
    return path.role == Role::Positions && path.rings.size() == 2;
  }));
}

/// One of many edits that is at fault is found and told, the others are made; it may be any of
/// them.
TEST(Edits, TheOneThatIsAtFaultIsFoundAmongMany) {
  const Design design = started("straight-tuck-box", kProducts[0]);
  for (std::size_t faulty = 0; faulty < 7; ++faulty) {
    std::vector<Edit> edits;
    for (int i = 0; i < 6; ++i)
      edits.push_back({"holes",
                       {},
                       "front",
                       {},
                       {{"across", "4 mm"}, {"y", std::to_string(i * 8 - 20) + " mm"}},
                       true});
    // The tuck flap would stand away from the wall it is tucked behind.
    const BuiltDesign plain = *build(design);
    std::string tuck;
    for (const Mate& mate : box(plain).net.mates)
      if (mate.method == Method::Tuck)
        tuck = box(plain).net.panels[static_cast<std::size_t>(mate.panel)].id;
    edits.insert(edits.begin() + static_cast<std::ptrdiff_t>(faulty),
                 {"fold", {}, tuck, "inner", {{"turn", "by an angle"}, {"angle", "40"}}, true});
    const BuiltDesign built = builtWith(design, edits);
    ASSERT_EQ(built.brokenEdits.size(), 1U) << faulty;
    EXPECT_EQ(built.brokenEdits.begin()->first, static_cast<int>(faulty));
    const Net& net = box(built).net;
    EXPECT_EQ(net.panels[static_cast<std::size_t>(*net.find("front"))].openings.size(), 6U);
  }
}

// A glued flap as deep as the least that holds is made, a hair less is not.
TEST(Flap, TheLeastDepthThatHoldsIsEnough) {
  const Design design = started("framed-tray", kProducts[0]);
  const BuiltDesign plain = *build(design);
  const double least = minimumFlapWidth(design.card.caliper.mm());
  const auto unfit = [&](double depth, const std::string& panel, const std::string& edge) {
    Edit flap{"flap", {}, panel, edge, {}, true};
    flap.measures = {
        {"depth", std::to_string(depth) + " mm"}, {"hold", "glued"}, {"taper", "0 mm"}};
    const BuiltDesign built = builtWith(design, {flap});
    return built.brokenEdits.contains(0);
  };
  int fitting = 0;
  for (std::size_t i = 0; i < box(plain).net.panels.size(); ++i) {
    const std::string& panel = box(plain).net.panels[i].id;
    for (const std::string& edge : edgesWithoutFolds(box(plain).net, static_cast<int>(i))) {
      if (unfit(least + 0.01, panel, edge)) continue;  // its place holds none of that depth
      ++fitting;
      EXPECT_FALSE(unfit(least, panel, edge)) << panel << ' ' << edge;
      EXPECT_TRUE(unfit(least - 0.01, panel, edge)) << panel << ' ' << edge;
    }
  }
  EXPECT_GT(fitting, 0);
}

// A score from corner to corner goes through corners that are there: no edge of either part has no
// length, and two triangles are left of a rectangle.
TEST(Split, FromCornerToCornerNoCornerIsDoubled) {
  int made = 0;
  int triangles = 0;
  for (const Style& style : styles()) {
    Result<Design> design = newDesign(style.id, *parseProduct("box:60x50x40mm"),
                                      *findCard("300gsm"), Ease::Easy, ToolGrid::none());
    if (!design || !build(*design)) continue;
    const BuiltDesign plain = *build(*design);
    for (const Panel& panel : box(plain).net.panels) {
      const Edit split{"split",
                       box(plain).name,
                       panel.id,
                       {},
                       {{"from", "left or bottom"}, {"at", "0 mm"}, {"slant", "panel-height"}},
                       true};
      const BuiltDesign built = builtWith(*design, {split});
      if (!built.brokenEdits.empty()) continue;
      ++made;
      const bool rectangle =
          panel.outline.size() == 4 && panel.openings.empty() &&
          std::abs(std::abs(signedArea(panel.outline)) -
                   bounds(panel.outline).width() * bounds(panel.outline).height()) < 1e-6;
      for (const std::string& part : {panel.id, panel.id + "/part"}) {
        const Net& net = box(built).net;
        const Polygon& outline = net.panels[static_cast<std::size_t>(*net.find(part))].outline;
        for (std::size_t k = 0; k < outline.size(); ++k)
          EXPECT_GT(distance(outline[k], outline[(k + 1) % outline.size()]), 1e-3)
              << style.id << ' ' << part;
        if (!rectangle) continue;
        EXPECT_EQ(outline.size(), 3U) << style.id << ' ' << part;
        ++triangles;
      }
    }
  }
  EXPECT_GT(made, 20);
  EXPECT_GT(triangles, 10);
}

// "Left" is the left end of an edge as it is drawn, of an upright one the lower, whichever way its
// panel is turned; "right" the other; the end that is not named keeps its corner.
TEST(Corners, LeftAndRightAreThoseOfTheDrawing) {
  int cut = 0;
  for (const Style& style : styles()) {
    Result<Design> design = newDesign(style.id, *parseProduct("box:60x50x40mm"),
                                      *findCard("300gsm"), Ease::Easy, ToolGrid::none());
    if (!design || !build(*design)) continue;
    const BuiltDesign plain = *build(*design);
    const Net& net = box(plain).net;
    for (std::size_t i = 0; i < net.panels.size(); ++i) {
      const std::string& id = net.panels[i].id;
      for (const std::string& name : edgesWithoutFolds(net, static_cast<int>(i))) {
        const auto edge = findEdge(net, static_cast<int>(i), name);
        if (!edge) continue;
        const Polygon& drawn = box(plain).flat.panels[i];
        Point left = drawn[edge->index];
        Point right = drawn[(edge->index + 1) % drawn.size()];
        const bool upright = std::abs(left.x - right.x) < 1e-6;
        if (!upright && std::abs(left.y - right.y) > 1e-6) continue;  // slanting: turned upright
        if (upright ? left.y > right.y : left.x > right.x) std::swap(left, right);
        for (const bool atLeft : {true, false}) {
          const Edit corner{
              "corners",
              box(plain).name,
              id,
              name,
              {{"shape", "cut"}, {"size", "1 mm"}, {"ends", atLeft ? "left" : "right"}},
              true};
          const BuiltDesign built = builtWith(*design, {corner});
          if (!built.brokenEdits.empty()) continue;
          const FlatNet& flat = box(built).flat;
          if (std::abs(flat.width - box(plain).flat.width) > 1e-6 ||
              std::abs(flat.height - box(plain).flat.height) > 1e-6)
            continue;  // the blank lies elsewhere
          const auto has = [&](Point p) {
            return std::ranges::any_of(flat.panels[i],
                                       [&](Point q) { return distance(p, q) < 1e-6; });
          };
          EXPECT_FALSE(has(atLeft ? left : right)) << style.id << ' ' << id << ' ' << name;
          EXPECT_TRUE(has(atLeft ? right : left)) << style.id << ' ' << id << ' ' << name;
          ++cut;
        }
      }
    }
  }
  EXPECT_GT(cut, 200);
}

}  // namespace
}  // namespace creasewright
