#include "pages/template_layout.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/pages/template_parts.h"
#include "drawing/arrange.h"
#include "pages/part_packing.h"

// How many pages a design takes, against bounds that know nothing of how pages are laid out.
namespace creasewright {
namespace {

std::string typicalWords(const Label& label) {
  if (label.code.empty()) return label.literal;
  if (label.code == "reading") return "10 3/16";
  if (label.code == "inside-up") return "inside up";
  if (label.code == "page-of") return "page 10 of 12";
  if (label.code == "tile") return "tile B1";
  if (label.code.starts_with("legend")) return "score, fold towards you";
  return label.code.substr(0, label.code.find('-')) + " and as many words as this takes";
}

/// A style with all extras that fit, as it comes, smaller and larger, where its limits allow.
std::vector<BuiltDesign> sizesWithExtras(const Style& style) {
  std::vector<BuiltDesign> sizes;
  for (const double share : {1.0, 0.7, 1.4}) {
    Design design = testing::withItsExtras(style);
    for (const ParameterSpec& row : style.parameters)
      if (row.kind == ParameterKind::Length)
        design.parameters.set(row.key, Length::mm(design.parameters.mm(row.key) * share));
    if (!limitProblems(design).empty()) continue;
    auto built = build(design);
    if (built) sizes.push_back(std::move(*built));
  }
  return sizes;
}

struct Sheet {
  double width = 0;
  double height = 0;
};

/// The fewest tiles of `part` on `page`, by laying them one after the other, all ways round.
int enumeratedTiles(const Sheet& part, const Sheet& page) {
  const auto count = [](double blank, double side) {
    int tiles = 1;
    for (double reach = side; reach < blank - 1e-6; reach += side - 10) ++tiles;
    return tiles;
  };
  return std::min(count(part.width, page.width) * count(part.height, page.height),
                  count(part.height, page.width) * count(part.width, page.height));
}

bool together(const Sheet& a, const Sheet& b, const Sheet& page) {
  for (const bool turnA : {false, true})
    for (const bool turnB : {false, true}) {
      const double aw = turnA ? a.height : a.width;
      const double ah = turnA ? a.width : a.height;
      const double bw = turnB ? b.height : b.width;
      const double bh = turnB ? b.width : b.height;
      const bool beside = aw + 5 + bw <= page.width && std::max(ah, bh) <= page.height;
      const bool above = ah + 5 + bh <= page.height && std::max(aw, bw) <= page.width;
      if (beside || above) return true;
    }
  return false;
}

/// No template on this paper, 5 mm from its edges, takes fewer pages: parts that fit whole take at
/// least their area, and one page for each of a set of which no two go together; one that does not
/// fit takes its tiles. (Two large parts could share a page by parts of each: only the largest
/// counts.)
int fewestPages(const std::vector<TemplatePiece>& parts, const Sheet& page) {
  double whole = 0;
  int tiles = 0;
  std::vector<Sheet> alone;
  for (const TemplatePiece& part : parts) {
    const Sheet sheet{part.flat->width, part.flat->height};
    const int count = enumeratedTiles(sheet, page);
    if (count > 1) {
      tiles = std::max(tiles, count);
      continue;
    }
    whole += sheet.width * sheet.height;
    if (std::ranges::none_of(alone,
                             [&](const Sheet& other) { return together(sheet, other, page); }))
      alone.push_back(sheet);
  }
  const int area = static_cast<int>(std::ceil(whole / (page.width * page.height) - 1e-9));
  return std::max({tiles, area, static_cast<int>(alone.size())});
}

/// Every style with its extras at three sizes on letter and A4: never more than with
/// pages of their own, near the bound, and at most half as many again in all.
TEST(TemplateLayout, PagesAreAsFewAsTheBoundOrHardlyMore) {
  int pages = 0;
  int bound = 0;
  int pieces = 0;
  int judged = 0;
  for (const Style& style : styles())
    for (const BuiltDesign& built : sizesWithExtras(style))
      for (const char* paper : {"letter", "a4"}) {
        const PageSetup setup{.paper = *findPaper(paper)};
        const Sheet page{setup.paper.width.mm() - 10, setup.paper.height.mm() - 10};
        const std::vector<TemplatePiece> parts = testing::templateParts(built);
        const auto drawn = drawTemplate(parts, setup, {"A box", "", {}}, typicalWords);
        ASSERT_TRUE(drawn) << style.id;
        const int fewest = fewestPages(parts, page);
        const int taken = static_cast<int>(drawn->size());
        int large = 0;  // tiles of all parts that do not fit
        for (const TemplatePiece& part : parts) {
          const int tiles = enumeratedTiles({part.flat->width, part.flat->height}, page);
          if (tiles > 1) large += tiles;
        }
        // Never more than with pages of its own for each part, head and bars beside it.
        int apart = 0;
        for (const TemplatePiece& part : parts)
          apart += enumeratedTiles({part.flat->width, part.flat->height},
                                   {page.width - kBarRoom, page.height - kHeadRoom - 20});
        EXPECT_LE(taken, apart) << style.id << ' ' << paper;
        // Half a page of slack for each kind of extra.
        const int spare = static_cast<int>(extraKinds().size() + 1) / 2;
        EXPECT_LE(taken, std::max(fewest, large) + spare) << style.id << ' ' << paper;
        pages += taken;
        bound += fewest;
        pieces += static_cast<int>(parts.size());
        ++judged;
      }
  std::printf("%d pages of %d templates with %d parts, bound %d\n", pages, judged, pieces, bound);
  EXPECT_GT(judged, 150);
  // With a template of its own for each part it would be one page for each, and more for large
  // ones.
  EXPECT_LE(pages, bound + bound / 2 + judged / 20);
}

/// Parts that lie whole on a page.
std::vector<Bounds> blanksOn(const Drawing& page, const std::vector<TemplatePiece>& parts) {
  std::vector<Bounds> found;
  for (const PathItem& item : page.paths) {
    if (item.role != Role::Positions || !item.closed || item.like || item.rings.size() != 1)
      continue;
    const Bounds box = bounds(item.rings.front());
    const auto same = [&](double width, double height) {
      return std::abs(box.width() - width) < 1e-6 && std::abs(box.height() - height) < 1e-6;
    };
    if (std::ranges::any_of(parts, [&](const TemplatePiece& part) {
          return same(part.flat->width, part.flat->height) ||
                 same(part.flat->height, part.flat->width);
        }))
      found.push_back(box);
  }
  return found;
}

/// In true size, inside the margins, 5 mm from one another; every part has its name on its page.
TEST(TemplateLayout, PartsLieApartInsideTheMarginsInTrueSize) {
  int together = 0;
  for (const Style& style : styles()) {
    const auto built = build(testing::withItsExtras(style));
    if (!built) continue;
    const std::vector<TemplatePiece> parts = testing::templateParts(*built);
    for (const char* paper : {"letter", "a4", "a3"}) {
      const auto pages =
          drawTemplate(parts, {.paper = *findPaper(paper)}, {"A box", "", {}}, typicalWords);
      ASSERT_TRUE(pages) << style.id;
      std::size_t whole = 0;
      for (const Drawing& page : *pages) {
        const std::vector<Bounds> boxes = blanksOn(page, parts);
        whole += boxes.size();
        together += boxes.size() > 1 ? 1 : 0;
        for (std::size_t i = 0; i < boxes.size(); ++i) {
          EXPECT_GE(boxes[i].low.x, 5 - 1e-6);
          EXPECT_GE(boxes[i].low.y, 5 - 1e-6);
          EXPECT_LE(boxes[i].high.x, page.width - 5 + 1e-6);
          EXPECT_LE(boxes[i].high.y, page.height - 5 + 1e-6);
          for (std::size_t k = 0; k < i; ++k) {
            const double across =
                std::max(boxes[i].low.x - boxes[k].high.x, boxes[k].low.x - boxes[i].high.x);
            const double up =
                std::max(boxes[i].low.y - boxes[k].high.y, boxes[k].low.y - boxes[i].high.y);
            EXPECT_GE(std::max(across, up), 5 - 1e-6) << style.id << ' ' << paper;
          }
        }
      }
      std::size_t fitting = 0;
      for (const TemplatePiece& part : parts) {
        const bool tiled = enumeratedTiles({part.flat->width, part.flat->height},
                                           {findPaper(paper)->width.mm() - 10,
                                            findPaper(paper)->height.mm() - 10}) > 1;
        fitting += tiled ? 0 : 1;
        EXPECT_TRUE(std::ranges::any_of(
            *pages,
            [&](const Drawing& page) {
              return std::ranges::any_of(page.texts, [&](const TextItem& text) {
                return typicalWords(text.label).find(part.name) != std::string::npos;
              });
            }))
            << style.id << ' ' << part.name;
      }
      EXPECT_LE(whole, fitting) << style.id;
    }
  }
  EXPECT_GT(together, 50);
}

/// A tray with band, mats and label on three pages at most.
TEST(TemplateLayout, ASmallTrayWithItsDressingTakesThreePages) {
  Design design;
  design.styleId = "framed-tray";
  design.parameters = standardParameters(**findStyle("framed-tray"));
  for (const char* kind : {"belly-band", "mats", "label"})
    design.extras.push_back(standardExtra(**findExtraKind(kind), design.card));
  const auto built = build(design);
  ASSERT_TRUE(built);
  for (const char* paper : {"a4", "letter"}) {
    const auto pages = drawTemplate(testing::templateParts(*built), {.paper = *findPaper(paper)},
                                    {"Tray", "", {}}, typicalWords);
    ASSERT_TRUE(pages);
    EXPECT_LE(pages->size(), 3U) << paper;
  }
}

TEST(TemplateLayout, RefusesMoreThanAHundredTiles) {
  const TiledSheet sheet{5000, 5000, region({{0, 0}, {5000, 0}, {5000, 5000}, {0, 5000}}), {}};
  const auto planned = layOutTemplate({sheet}, {.paper = *findPaper("a4")}, {5, 15});
  ASSERT_FALSE(planned);
  EXPECT_EQ(planned.problem().code, ProblemCode::TooManyTiles);
}

/// Small cases against every place on a grid: four equal parts fit a page that is just large
/// enough, in every order.
TEST(PartPacking, FindsTheOnePageThatIsJustLargeEnough) {
  const Bounds room{{0, 0}, {106, 66}};
  const auto packing = packParts({{50, 30}, {30, 50}, {50, 30}, {50, 30}}, {}, room, 6);
  ASSERT_TRUE(packing);
  EXPECT_EQ(packing->newPages, 1U);
  EXPECT_EQ(packParts({{50, 30}, {50, 30}, {50, 30}, {50, 31}}, {}, room, 6)->newPages, 2U);
  EXPECT_FALSE(packParts({{107, 10}}, {}, room, 6).has_value());
}

TEST(PartPacking, FillsPagesThatAreThereBeforeNewOnes) {
  const Bounds room{{0, 0}, {100, 100}};
  const std::vector<PartPage> given{{room, {{{0, 40}, {100, 100}}}}};
  const auto packing = packParts({{90, 30}, {90, 30}}, given, room, 6);
  ASSERT_TRUE(packing);
  EXPECT_EQ(packing->newPages, 1U);
  EXPECT_EQ(
      std::ranges::count_if(packing->parts, [](const PackedPart& part) { return part.page == 0; }),
      1);
}

}  // namespace
}  // namespace creasewright
