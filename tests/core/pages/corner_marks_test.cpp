#include <algorithm>
#include <array>
#include <map>

#include <gtest/gtest.h>

#include "core/pages/template_parts.h"
#include "drawing/arrange.h"
#include "drawing/role.h"
#include "support/code_or_text.h"
#include "support/random.h"
#include "units/millimetres.h"
#include "units/paper.h"

// Corner marks and bleed of printed papers, measured on the pages.
namespace creasewright {
namespace {

using testing::codeOrText;
using testing::Random;

struct MarkSheet {
  Paper paper;
  double margin;
};

/// Lines of two points: 5 mm long where they are whole.
struct PageMarks {
  int whole = 0;
  int cut = 0;
};

PageMarks marksOn(const std::vector<Drawing>& pages) {
  PageMarks marks;
  for (const Drawing& page : pages)
    for (const PathItem& item : page.paths) {
      if (item.role != Role::Positions || item.like || item.filled) continue;
      for (const Polygon& ring : item.rings) {
        if (ring.size() != 2) continue;
        (distance(ring[0], ring[1]) > 4.99 ? marks.whole : marks.cut) += 1;
      }
    }
  return marks;
}

/// Nothing that is printed of parts reaches into the margin.
bool staysInside(const Drawing& page, double margin) {
  constexpr double kSlack = 1e-3;  // mm
  return std::ranges::all_of(page.paths, [&](const PathItem& item) {
    if (item.role != Role::Positions && item.role != Role::Face) return true;
    return std::ranges::all_of(item.rings, [&](const Polygon& ring) {
      return std::ranges::all_of(ring, [&](Point p) {
        return p.x > margin - kSlack && p.y > margin - kSlack &&
               p.x < page.width - margin + kSlack && p.y < page.height - margin + kSlack;
      });
    });
  });
}

/// Whether a blank has so much room all round it on a sheet, either way.
bool hasRoom(const FlatNet& flat, const MarkSheet& sheet, double round) {
  const double w = sheet.paper.width.mm() - 2 * sheet.margin - 2 * round;
  const double h = sheet.paper.height.mm() - 2 * sheet.margin - 2 * round;
  return (flat.width <= w && flat.height <= h) || (flat.height <= w && flat.width <= h);
}

std::vector<Drawing> printedOn(const MarkSheet& sheet, const std::vector<TemplatePiece>& parts,
                               const PrintedForm& form) {
  PageSetup setup{.paper = sheet.paper};
  setup.margin = sheet.margin;
  auto pages =
      drawTemplate(parts, setup, {"A box", "", {}}, codeOrText, TemplateKind::Printed, form);
  // Film is not printed; of some there are more tiles than are made.
  return pages ? std::move(*pages) : std::vector<Drawing>();
}

/// Whether no mark may be cut off: all parts lie whole and as many pages hold them where they are
/// so much larger that their marks lie within.
bool mustBeWhole(const MarkSheet& sheet, const std::vector<TemplatePiece>& parts,
                 const PrintedForm& form, std::size_t pages) {
  // Marks of 5 mm from the bleed, or from 3 mm on.
  const double reach = std::max(form.bleed, 3.0) + 5;
  return std::ranges::all_of(
             parts, [&](const TemplatePiece& part) { return hasRoom(*part.flat, sheet, reach); }) &&
         printedOn(sheet, parts, {reach, true, form.sides}).size() == pages;
}

// Law: marks and bleed lie inside the margin of every page; and where there is room for them none
// is cut off.
TEST(CornerMarks, LieInsideThePageOnAllSheets) {
  Random random(254);
  int whole = 0;
  int sheets = 0;
  for (const Style& style : styles()) {
    const auto built = testing::colouredDesign(style, "sage/cream");
    if (!built) continue;
    const std::vector<TemplatePiece> all = testing::templateParts(*built);
    const std::array judged{
        MarkSheet{*findPaper("letter"), 5}, MarkSheet{*findPaper("a4"), 5},
        MarkSheet{ownPaper(Length::mm(random.whole(180, 500)), Length::mm(random.whole(180, 500))),
                  random.between(3, 12)}};
    for (const MarkSheet& sheet : judged) {
      SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(sheet.paper.width.mm()));
      const PrintedForm form{random.between(0, 6), true,
                             random.whole(0, 3) > 0 ? PrintedSides::Face : PrintedSides::Both};
      const std::vector<Drawing> pages = printedOn(sheet, all, form);
      sheets += pages.empty() ? 0 : 1;
      for (const Drawing& page : pages) EXPECT_TRUE(staysInside(page, sheet.margin));
      if (pages.empty() || !mustBeWhole(sheet, all, form, pages.size())) continue;
      ++whole;
      EXPECT_GE(marksOn(pages).whole, 8);
      EXPECT_EQ(marksOn(pages).cut, 0);
    }
  }
  EXPECT_GT(sheets, 50);
  EXPECT_GT(whole, 20);
}

}  // namespace
}  // namespace creasewright
