#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "core/laws/random_design.h"
#include "core/patterns/seen_colours.h"
#include "drawing/svg_writer.h"
#include "geometry/region.h"
#include "papers/template/template_print.h"

namespace creasewright {
namespace {

/// The pages without areas of the card's colours, as text.
std::vector<std::string> linesOnly(std::vector<Drawing> pages, Unit unit) {
  std::vector<std::string> out;
  for (Drawing& page : pages) {
    std::erase_if(page.paths, [](const PathItem& item) { return item.role == Role::Face; });
    out.push_back(writeSvg(page, "page", wordingIn(unit)));
  }
  return out;
}

Region regionOf(const PathItem& item) {
  std::vector<Polygon> outer;
  std::vector<Polygon> holes;
  for (const Polygon& ring : item.rings) (signedArea(ring) > 0 ? outer : holes).push_back(ring);
  return subtract(unite(outer), unite(holes));
}

double colouredArea(const std::vector<Drawing>& pages) {
  double sum = 0;
  for (const Drawing& page : pages) {
    Region covered;  // disjoint areas
    for (const PathItem& item : page.paths) {
      if (item.role != Role::Face || !item.filled) continue;
      const Region more = subtract(regionOf(item), covered);
      covered.insert(covered.end(), more.begin(), more.end());
    }
    sum += area(covered);
  }
  return sum;
}

// Law: a template in the colours of its card has the lines and words of the plain one on pages as
// many, and colour on all of the card and nothing else; one that saves ink has none.
TEST(ColouredTemplate, IsThePlainOneOverTheColoursOfItsCard) {
  std::size_t number = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(style.id);
    Design design = testing::asItComes(style);
    design.card.colours.face = Colour{0x55, 0x33, 0x66};
    design.card.colours.back = Colour{0x9A, 0xAF, 0x90};
    if (++number % 2 == 0) {
      design.card.colours.pattern = usualPaper(patterns()[number % patterns().size()]);
      design.card.colours.patternBehind = number % 4 == 0;
    }
    const auto built = build(design);
    ASSERT_TRUE(built);
    TemplateOptions options;
    options.unit = number % 3 == 0 ? Unit::Inch : Unit::Millimetre;
    options.setup.paper = *findPaper(number % 2 == 0 ? "a4" : "letter");
    const auto plain = templatePages(*built, options);
    ASSERT_TRUE(plain);
    EXPECT_EQ(colouredArea(*plain), 0);
    options.kind = TemplateKind::Coloured;
    const auto coloured = templatePages(*built, options);
    ASSERT_TRUE(coloured);
    EXPECT_EQ(linesOnly(*coloured, options.unit), linesOnly(*plain, options.unit));
    options.kind = TemplateKind::InkSaving;
    const auto saving = templatePages(*built, options);
    ASSERT_TRUE(saving);
    EXPECT_EQ(colouredArea(*saving), 0);
    // On paper that takes each piece whole.
    options.kind = TemplateKind::Coloured;
    options.setup.paper = {"large", "large", Length::mm(1200), Length::mm(1200)};
    const auto whole = templatePages(*built, options);
    ASSERT_TRUE(whole);
    double card = 0;
    for (const BuiltPiece& piece : built->pieces) card += area(piece.flat.outline);
    EXPECT_NEAR(colouredArea(*whole), card, card * 1e-3);
  }
}

}  // namespace
}  // namespace creasewright
