#include <QFile>
#include <QFontMetricsF>
#include <QRectF>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>
#include <string_view>

#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "bridge/language.h"
#include "bridge/text.h"
#include "core/laws/random_design.h"
#include "document/design_file.h"
#include "guide/make_guide.h"
#include "papers/guide/guide_pages.h"
#include "styles/registry.h"

// The pages of a hand-out as a reader finds them: all texts are measured here in the font they are
// painted in, and not by what the pages were laid out with.
namespace creasewright {
namespace {

struct Form {
  const char* language;
  const char* paper;
  GuideUnits units;
  GuideSize size = GuideSize::Standard;
};
constexpr std::array kForms{
    Form{"en", "letter", GuideUnits::Inch}, Form{"en", "a4", GuideUnits::Both},
    Form{"de", "a4", GuideUnits::Millimetre}, Form{"de", "letter", GuideUnits::Inch}};

/// The smallest type of words that say something, and of marks in pictures, mm: 8.2, 12 and 18 pt
/// (large print from 18 pt on: common practice of its publishers, no published source at hand).
double leastType(GuideSize size) {
  switch (size) {
    case GuideSize::Standard:
      return 2.3;
    case GuideSize::Clear:
      return 12 * 25.4 / 72;
    case GuideSize::Large:
      return 18 * 25.4 / 72 - 0.01;
  }
  return 0;
}

/// By standard.
double times(GuideSize size) {
  return size == GuideSize::Large ? 18 / 10.5 : size == GuideSize::Clear ? 14 / 10.5 : 1;
}

constexpr double kMargin = 12;  // mm
constexpr double kFoot = 7;

struct Inked {
  QString words;
  QRectF ink;  // mm, y up
  TextItem item;
};

/// The room that the ink of a text takes on the page.
Inked inked(const TextItem& item, const Wording& wording) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(1000);
  font.setBold(item.bold);
  const QFontMetricsF metrics(font);
  const QString words = text(wording(item.label));
  const double size = item.height / 1000;
  const double width = metrics.horizontalAdvance(words) * size;
  const QRectF tight = metrics.tightBoundingRect(words);
  const double left = item.anchor == Anchor::Left     ? 0
                      : item.anchor == Anchor::Centre ? -width / 2
                                                      : -width;
  const QRectF level(left, -tight.bottom() * size, width, tight.height() * size);
  const bool turned = std::abs(item.turnDegrees - 90) < 1;
  const QRectF box =
      turned ? QRectF(-level.bottom(), level.left(), level.height(), level.width()) : level;
  return {words, box.translated(item.at.x, item.at.y), item};
}

std::vector<Inked> textsOf(const Drawing& page, const Wording& wording) {
  std::vector<Inked> texts;
  for (const TextItem& item : page.texts) {
    texts.push_back(inked(item, wording));
  }
  return texts;
}

/// Only the foot reaches into the margin, by what hangs below its line.
void expectReadable(const std::vector<Inked>& texts, const Drawing& page, double times) {
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const QRectF& ink = texts[i].ink;
    const QString& words = texts[i].words;
    EXPECT_TRUE(ink.left() > kMargin - 0.1 && ink.right() < page.width - kMargin + 0.1 &&
                ink.top() > kMargin - times && ink.bottom() < page.height - kMargin + 0.1)
        << words.toStdString() << ' ' << ink.left() << ".." << ink.right() << ", " << ink.top()
        << ".." << ink.bottom();
    // The letter on a small piece of waste is as small as the piece.
    EXPECT_GE(texts[i].item.height, words.size() == 1 ? 1.5 : 2.3) << words.toStdString();
    for (std::size_t k = i + 1; k < texts.size(); ++k) {
      const QRectF both = ink.intersected(texts[k].ink);
      EXPECT_FALSE(both.width() > 0.1 && both.height() > 0.1)
          << '"' << words.toStdString() << "\" over \"" << texts[k].words.toStdString() << '"';
    }
  }
}

/// Numbers on discs: those of the words are larger than those in pictures.
bool isNumberOf(const Inked& text, bool words, double times = 1) {
  return text.item.reversed && (text.item.height > 3.1 * times) == words;
}

/// What stands left of something on the same level is read before it.
std::vector<int> numbersInReadingOrder(std::vector<Inked> texts, double times) {
  std::erase_if(texts, [&](const Inked& each) { return !isNumberOf(each, true, times); });
  std::ranges::sort(texts, [](const Inked& a, const Inked& b) {
    const double step = b.item.at.y - a.item.at.y;
    return std::abs(step) > 1 ? step < 0 : a.item.at.x < b.item.at.x;
  });
  std::vector<int> numbers;
  for (const Inked& each : texts) {
    numbers.push_back(each.words.toInt());
  }
  return numbers;
}

QString together(QString words) { return words.remove(QLatin1Char(' ')); }

void expectAllSaid(const QString& told, const GuideWords& words) {
  qsizetype at = 0;
  for (const StepWords& step : words.steps) {
    for (const QString& sentence : QStringList{step.title} + step.told() + step.checks) {
      const qsizetype found = told.indexOf(together(sentence), at);
      EXPECT_GE(found, at) << sentence.toStdString();
      at = std::max(at, found);
    }
  }
}

/// The share of the page's height that is free above its foot.
double freeShare(const Drawing& page, const std::vector<Inked>& texts) {
  double low = page.height;
  const double foot = kMargin + kFoot;
  for (const Inked& each : texts) {
    if (each.item.at.y > foot - 0.1) {
      low = std::min(low, each.ink.top());
    }
  }
  for (const PathItem& path : page.paths) {
    for (const Polygon& ring : path.rings) {
      for (const Point& p : ring) {
        low = std::min(low, p.y);
      }
    }
  }
  return (low - foot) / (page.height - 2 * kMargin - kFoot);
}

/// Lines of the words, which are literal; pictures are labelled by codes or by numbers and letters.
void expectLargeEnough(const std::vector<Inked>& texts, const GuideWords& words, GuideSize size) {
  QString told;
  for (const StepWords& step : words.steps)
    told += together((QStringList{step.title} + step.told() + step.checks).join(QString()));
  for (const Inked& each : texts)
    if (each.words.size() > 12 && told.contains(together(each.words))) {
      EXPECT_GE(each.item.height, leastType(size)) << each.words.toStdString();
    }
}

struct Found {
  int pages = 0;
  double emptiest = 0;  // of all pages but the last
};

Found expectLaw(const BuiltDesign& built, const Form& form) {
  SCOPED_TRACE(std::string(form.language) + ' ' + form.paper);
  useLanguage(QString::fromLatin1(form.language));
  const Wording wording = wordingIn(firstUnit(form.units));
  const GuideWords words = wordGuide(makeGuide(built), built, form.units);
  const std::vector<Drawing> pages =
      guidePages(built, form.units, *findPaper(form.paper), {form.size, false});
  Found found{static_cast<int>(pages.size()), 0};
  std::vector<int> numbers;
  QString told;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    SCOPED_TRACE("page " + std::to_string(i + 1));
    const std::vector<Inked> texts = textsOf(pages[i], wording);
    expectReadable(texts, pages[i], times(form.size));
    expectLargeEnough(texts, words, form.size);
    const std::vector<int> here = numbersInReadingOrder(texts, times(form.size));
    numbers.insert(numbers.end(), here.begin(), here.end());
    for (const Inked& each : texts) {
      told += together(each.words);
    }
    if (i + 1 < pages.size()) {
      found.emptiest = std::max(found.emptiest, freeShare(pages[i], texts));
    }
  }
  useLanguage(QStringLiteral("en"));
  std::vector<int> all(words.steps.size());
  std::iota(all.begin(), all.end(), 1);
  EXPECT_EQ(numbers, all);
  expectAllSaid(told, words);
  return found;
}

/// Pages of each style as it comes, in each of the forms, as counted: one that grows or shrinks is
/// seen. Boxes of one sheet take two; three where their outlines need many cuts, or maps of full
/// width one below the other.
using Pages = std::array<int, kForms.size()>;
const std::map<std::string, Pages, std::less<>> kPages{{"framed-tray", {3, 3, 3, 3}},
                                                       {"straight-tuck-box", {2, 2, 2, 2}},
                                                       {"reverse-tuck-box", {2, 2, 2, 2}},
                                                       {"hang-tab-tuck-box", {2, 3, 3, 3}},
                                                       {"snap-lock-bottom-box", {2, 2, 2, 2}},
                                                       {"crash-lock-bottom-box", {3, 3, 3, 3}},
                                                       {"two-piece-box", {3, 3, 3, 4}},
                                                       {"hinged-lid-box", {2, 2, 2, 2}},
                                                       {"drawer-box", {3, 3, 3, 3}},
                                                       {"rolled-wall-tray", {2, 2, 2, 2}},
                                                       {"partition-insert", {1, 1, 1, 1}},
                                                       {"platform-insert", {2, 2, 2, 2}},
                                                       {"wedge-box", {3, 3, 3, 3}},
                                                       {"pitched-roof-box", {3, 4, 3, 3}},
                                                       {"exploding-box", {4, 4, 4, 4}},
                                                       {"open-sleeve", {2, 2, 2, 2}},
                                                       {"belly-band", {1, 1, 1, 1}},
                                                       {"book-wrap", {2, 2, 2, 2}},
                                                       {"envelope", {2, 2, 2, 2}},
                                                       {"card-wallet", {2, 2, 2, 2}},
                                                       {"gusseted-bag", {3, 4, 3, 3}},
                                                       {"crossed-seam-pouch", {2, 2, 2, 2}},
                                                       {"pillow-box", {2, 2, 2, 2}},
                                                       {"treat-scoop", {2, 2, 2, 2}},
                                                       {"prism-box-with-lid", {4, 4, 4, 4}},
                                                       {"petal-prism-box", {2, 3, 2, 3}},
                                                       {"tapered-cup", {2, 3, 2, 3}},
                                                       {"pyramid-box", {2, 2, 2, 2}},
                                                       {"gable-box", {3, 3, 3, 3}},
                                                       {"milk-carton-top-box", {3, 3, 3, 3}},
                                                       {"tetrahedron", {2, 2, 2, 2}},
                                                       {"cube", {2, 2, 2, 2}},
                                                       {"octahedron", {2, 3, 2, 2}},
                                                       {"dodecahedron", {2, 2, 2, 2}},
                                                       {"icosahedron", {2, 2, 2, 2}}};

/// What lessons make most: two pages to readers of inches on letter and of millimetres on A4.
constexpr std::array<std::string_view, 10> kNormalBoxes{"straight-tuck-box",
                                                        "reverse-tuck-box",
                                                        "snap-lock-bottom-box",
                                                        "hinged-lid-box",
                                                        "rolled-wall-tray",
                                                        "pillow-box",
                                                        "envelope",
                                                        "card-wallet",
                                                        "open-sleeve",
                                                        "cube"};

/// No text is cut off or lies on another, each step stands once and in order with all its words,
/// and no page but the last leaves a third of itself empty.
TEST(GuidePagesLaw, EveryStyleReadsInOrderOnFullPages) {
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(testing::asItComes(style));
    ASSERT_TRUE(built);
    const auto known = kPages.find(style.id);
    ASSERT_NE(known, kPages.end());
    Pages pages{};
    for (std::size_t i = 0; i < kForms.size(); ++i) {
      const Form& form = kForms.at(i);
      const Found found = expectLaw(*built, form);
      pages.at(i) = found.pages;
      EXPECT_LT(found.emptiest, 1.0 / 3 + 0.005) << form.language << ' ' << form.paper;
    }
    if (std::ranges::find(kNormalBoxes, style.id) != kNormalBoxes.end()) {
      EXPECT_LE(std::max(pages[0], pages[2]), 2) << style.id;
    }
    EXPECT_EQ(pages, known->second) << style.id << " takes " << pages[0] << ", " << pages[1] << ", "
                                    << pages[2] << ", " << pages[3];
  }
}

/// The same laws in clear and in large type.
TEST(GuidePagesLaw, EveryStyleReadsInOrderInLargerType) {
  constexpr std::array kLarger{Form{"en", "letter", GuideUnits::Inch, GuideSize::Clear},
                               Form{"de", "a4", GuideUnits::Millimetre, GuideSize::Large},
                               Form{"de", "letter", GuideUnits::Inch, GuideSize::Clear},
                               Form{"en", "a4", GuideUnits::Millimetre, GuideSize::Large}};
  std::size_t turn = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(testing::asItComes(style));
    ASSERT_TRUE(built);
    for (int k = 0; k < 2; ++k) expectLaw(*built, kLarger.at(turn++ % kLarger.size()));
  }
}

/// With bands, mats, labels and all else that fits together the laws are the same.
TEST(GuidePagesLaw, StylesWithTheirExtrasReadInOrderToo) {
  int extras = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const Design design = testing::withItsExtras(style);
    extras += static_cast<int>(design.extras.size());
    const auto built = build(design);
    ASSERT_TRUE(built);
    expectLaw(*built, extras % 2 == 0 ? kForms[0] : kForms[2]);
  }
  EXPECT_GT(extras, 60);
}

int pagesFor(const char* style, std::optional<Product> product, ToolGrid grid, const Form& form) {
  const auto design =
      newDesign(style, product, {"test", "test card", Length::mm(0.3), 0}, Ease::Easy, grid);
  const auto built = build(*design);
  return expectLaw(*built, form).pages;
}

/// A tray for a bar of soap on three pages, a plain box on two, to readers of inches and of
/// millimetres.
TEST(GuidePagesLaw, ATrayTakesThreePagesAndATuckBoxTwo) {
  const Product soap = *parseProduct("box:105x32x22mm");
  constexpr std::array kReaders{Form{"en", "letter", GuideUnits::Inch},
                                Form{"en", "a4", GuideUnits::Millimetre},
                                Form{"de", "a4", GuideUnits::Millimetre}};
  for (const Form& form : kReaders) {
    const ToolGrid grid =
        form.units == GuideUnits::Millimetre ? ToolGrid::millimetre() : ToolGrid::sixteenthInch();
    EXPECT_LE(pagesFor("framed-tray", soap, grid, form), 3) << form.language << ' ' << form.paper;
    EXPECT_LE(pagesFor("straight-tuck-box", std::nullopt, grid, form), 2)
        << form.language << ' ' << form.paper;
  }
}

/// The sample tray with its band and label: four pages of A4 for readers of millimetres and of
/// letter for readers of inches. German words take more.
TEST(GuidePagesLaw, TheSoapTrayWithBandAndLabelTakesFourPages) {
  loadResources();
  const auto pages = [](const char* units, const char* language, const char* paper) {
    QFile file(QStringLiteral(":/samples/%1/lavender-soap-tray.cwdesign").arg(units));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    const auto design = readDesign(file.readAll().toStdString(), "sample");
    EXPECT_EQ(design->extras.size(), 2U);
    const auto built = build(*design);
    useLanguage(QString::fromLatin1(language));
    const bool inches = std::string_view(units) == "inch";
    const std::size_t count =
        guidePages(*built, inches ? GuideUnits::Inch : GuideUnits::Millimetre, *findPaper(paper))
            .size();
    useLanguage(QStringLiteral("en"));
    return count;
  };
  EXPECT_EQ(pages("metric", "en", "a4"), 4U);
  EXPECT_EQ(pages("inch", "en", "letter"), 4U);
  EXPECT_LE(pages("metric", "de", "a4"), 5U);
}

/// Cuts of one piece share a picture, in which each step's number stands once.
TEST(GuidePagesLaw, CutsShareAPictureThatShowsEachOfTheirNumbers) {
  int shared = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto built = build(testing::asItComes(style));
    ASSERT_TRUE(built);
    const Guide guide = makeGuide(*built);
    std::vector<int> expected;
    for (std::size_t i = 0; i < guide.steps.size(); ++i) {
      const auto cuts = [&](std::size_t k) {
        return k < guide.steps.size() && !guide.steps[k].cuts.empty() &&
               guide.steps[k].piece == guide.steps[i].piece;
      };
      if (cuts(i) && (cuts(i + 1) || (i > 0 && cuts(i - 1)))) {
        expected.push_back(static_cast<int>(i) + 1);
      }
    }
    shared += static_cast<int>(expected.size());
    std::vector<int> marked;
    const Wording wording = wordingIn(Unit::Inch);
    for (const Drawing& page : guidePages(*built, GuideUnits::Inch, *findPaper("a4"))) {
      for (const Inked& each : textsOf(page, wording)) {
        if (isNumberOf(each, false)) {
          marked.push_back(each.words.toInt());
        }
      }
    }
    std::ranges::sort(marked);
    EXPECT_EQ(marked, expected);
  }
  EXPECT_GT(shared, 40);
}

}  // namespace
}  // namespace creasewright
