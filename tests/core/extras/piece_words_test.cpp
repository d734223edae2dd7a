#include "extras/piece_words.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <gtest/gtest.h>

#include "document/build.h"
#include "document/print_warnings.h"
#include "drawing/set_words.h"
#include "extras/flat_piece.h"
#include "extras/label_shapes.h"
#include "lettering/type_width.h"
#include "support/random.h"

namespace creasewright {
namespace {

using testing::Random;
using Lines = std::vector<std::string>;

BuiltPiece label(LabelShape shape, double width, double height, const Lines& lines,
                 const WordsLook& look) {
  Problems problems;
  return buildPiece(flatPiece("label", {labelOutline(shape, width, height), {}}, lines, look),
                    cards().front(), {}, problems);
}

std::vector<WordsRun> runsOf(const Inscription& words) {
  return wordsRuns(textOf(words, words.at, words.turnDegrees), words.text);
}

/// Corners of the boxes of letters: their widths by the table, from descenders to capitals.
std::vector<Polygon> boxesOf(const Inscription& words) {
  std::vector<Polygon> boxes;
  for (const WordsRun& run : runsOf(words)) {
    const double width = typeWidth(run.words, words.height, words.face);
    const double from = run.anchor == Anchor::Left     ? 0
                        : run.anchor == Anchor::Centre ? -width / 2
                                                       : -width;
    Polygon box;
    for (const Point p : {Point{from, -0.25 * words.height},
                          {from + width, -0.25 * words.height},
                          {from + width, 0.95 * words.height},
                          {from, 0.95 * words.height}})
      box.push_back(run.place.apply(p));
    boxes.push_back(std::move(box));
  }
  return boxes;
}

bool told(const BuiltPiece& piece, ProblemCode code) {
  const Problems problems = printWarnings(piece);
  return std::ranges::any_of(problems, [&](const Problem& each) { return each.code == code; });
}

std::string randomLine(Random& random) {
  constexpr std::array kWords{"Plum",     "jam", "for",  "you",
                              "Lavender", "W",   "2026", "Gr\u00fc\u00dfe"};
  std::string line;
  for (int i = random.whole(1, 3); i > 0; --i)
    line += (line.empty() ? "" : " ") +
            std::string(kWords.at(static_cast<std::size_t>(random.whole(0, 7))));
  return line;
}

/// Law: in every shape, face, alignment and curve letters stay on their card, or it is told.
TEST(PieceWords, NoLetterLeavesItsCardUntold) {
  Random random(17);
  int judged = 0;
  int tooLarge = 0;
  for (int i = 0; i < 1500; ++i) {
    const auto shape = static_cast<LabelShape>(random.whole(0, 13));
    const double width = random.between(18, 90);
    const double height = isRound(shape) ? width : random.between(14, 70);
    const WordsLook look{static_cast<Typeface>(random.whole(0, 4)),
                         static_cast<WordsSide>(random.whole(0, 2)),
                         static_cast<WordsCurve>(random.whole(0, 3)),
                         random.whole(0, 5) == 0 ? random.whole(5, 30) : 0};
    Lines lines;
    for (int k = random.whole(1, 4); k > 0; --k) lines.push_back(randomLine(random));
    const BuiltPiece piece = label(shape, width, height, lines, look);
    const bool warned =
        told(piece, ProblemCode::TextTooLarge) || told(piece, ProblemCode::TextTooHigh);
    tooLarge += warned ? 1 : 0;
    if (warned) continue;
    for (const Inscription& words : piece.net.inscriptions)
      for (const Polygon& box : boxesOf(words))
        for (const Point corner : box) {
          ++judged;
          ASSERT_NE(locate(corner, piece.net.panels[0].outline, 0.02), Side::Outside)
              << "case " << i << ' ' << words.text << " shape " << static_cast<int>(shape) << ' '
              << width << " x " << height << " curve " << static_cast<int>(look.curve) << " side "
              << static_cast<int>(look.side) << " points " << look.points;
        }
  }
  EXPECT_GT(judged, 20000);
  EXPECT_GT(tooLarge, 20);
  EXPECT_LT(tooLarge, 900);
}

/// Bent lines of one label do not run into one another, nor into the lines between them.
TEST(PieceWords, LinesDoNotMeet) {
  Random random(18);
  int judged = 0;
  for (int i = 0; i < 300; ++i) {
    const double size = random.between(30, 90);
    const auto curve = static_cast<WordsCurve>(random.whole(0, 3));
    Lines lines;
    for (int k = random.whole(2, 4); k > 0; --k) lines.push_back(randomLine(random));
    const BuiltPiece piece = label(LabelShape::Circle, size, size, lines, {{}, {}, curve, 0});
    if (told(piece, ProblemCode::TextTooLarge) || told(piece, ProblemCode::TextTooHigh)) continue;
    const std::vector<Inscription>& all = piece.net.inscriptions;
    for (std::size_t a = 0; a < all.size(); ++a)
      for (std::size_t b = a + 1; b < all.size(); ++b)
        for (const Polygon& one : boxesOf(all[a]))
          for (const Polygon& other : boxesOf(all[b])) {
            ++judged;
            // Capitals and descenders of two lines share the gap between them.
            EXPECT_LT(area(intersect(region(one), region(other))), 1e-3)
                << all[a].text << " / " << all[b].text << ' ' << size << ' '
                << static_cast<int>(curve);
          }
  }
  EXPECT_GT(judged, 5000);
}

TEST(PieceWords, StraightLinesKeepToTheirSide) {
  const Lines lines{"Plum jam", "of our own"};
  const auto ends = [&](WordsSide side) {
    std::vector<std::pair<double, double>> out;
    const BuiltPiece piece =
        label(LabelShape::Rectangle, 60, 40, lines, {Typeface::Serif, side, {}, 0});
    for (const Inscription& words : piece.net.inscriptions) {
      const Bounds box = bounds(boxesOf(words).front());
      out.push_back({box.low.x, box.high.x});
    }
    return out;
  };
  const auto left = ends(WordsSide::Left);
  EXPECT_NEAR(left[0].first, left[1].first, 1e-9);
  EXPECT_LT(left[0].first, 10);
  EXPECT_GT(left[0].first, 1.9);
  const auto right = ends(WordsSide::Right);
  EXPECT_NEAR(right[0].second, right[1].second, 1e-9);
  EXPECT_NEAR(60 - right[0].second, left[0].first, 1e-6);
  const auto centred = ends(WordsSide::Centre);
  for (const auto& [low, high] : centred) EXPECT_NEAR(low + high, 60, 1e-6);
}

/// On a circle: over the middle with heads outwards, under it with feet outwards, read from left to
/// right, and as far inside the rim everywhere.
TEST(PieceWords, BentWordsRunInsideTheRim) {
  const double size = 60;
  const Point middle{30, 30};
  for (const bool lower : {false, true}) {
    const BuiltPiece piece =
        label(LabelShape::Circle, size, size, {"Lavender soap"},
              {Typeface::Plain, {}, lower ? WordsCurve::Lower : WordsCurve::Upper, 0});
    const Inscription& words = piece.net.inscriptions.at(0);
    const std::vector<WordsRun> runs = runsOf(words);
    ASSERT_EQ(runs.size(), 12U);  // no run for the space
    double last = -1e9;
    for (const WordsRun& run : runs) {
      const Point out = run.place.origin - middle;
      EXPECT_NEAR(norm(out), words.arc->radius, 1e-9);
      EXPECT_NEAR(dot(unit(out), run.place.y), lower ? -1 : 1, 1e-9);
      EXPECT_GT(run.place.origin.x, last);
      last = run.place.origin.x;
      EXPECT_GT(run.place.factor(), 0);
    }
    // Half the words to either side.
    EXPECT_NEAR(runs.front().place.origin.x + runs.back().place.origin.x, size, 3);
    const double rim = lower ? 30 - (words.arc->radius + 0.25 * words.height)
                             : 30 - (words.arc->radius + 0.95 * words.height);
    EXPECT_GT(rim, 0.9);
    EXPECT_LT(rim, 5);
  }
}

TEST(PieceWords, RoundSetsTheFirstLineOverAndTheLastUnder) {
  const BuiltPiece piece =
      label(LabelShape::ScallopedCircle, 70, 70, {"Plum jam", "No. 7", "from our garden"},
            {Typeface::Plain, {}, WordsCurve::Round, 0});
  ASSERT_EQ(piece.net.inscriptions.size(), 3U);
  const auto middleOf = [&](const char* words) {
    for (const Inscription& line : piece.net.inscriptions)
      if (line.text == words) return bounds(boxesOf(line)[boxesOf(line).size() / 2]);
    return Bounds{};
  };
  EXPECT_GT(middleOf("Plum jam").low.y, 45);
  EXPECT_LT(middleOf("from our garden").high.y, 25);
  EXPECT_NEAR((middleOf("No. 7").low.y + middleOf("No. 7").high.y) / 2, 35, 3);
}

/// A size that was chosen is kept, and told where it does not fit.
TEST(PieceWords, ATypeSizeIsKept) {
  const BuiltPiece small = label(LabelShape::Rectangle, 60, 40, {"Tea"}, {{}, {}, {}, 9});
  EXPECT_NEAR(small.net.inscriptions.at(0).height, 9 * 25.4 / 72, 1e-9);
  EXPECT_FALSE(told(small, ProblemCode::TextTooLarge));
  const BuiltPiece large =
      label(LabelShape::Rectangle, 60, 40, {"Lavender soap"}, {{}, {}, {}, 40});
  EXPECT_NEAR(large.net.inscriptions.at(0).height, 40 * 25.4 / 72, 1e-9);
  EXPECT_TRUE(told(large, ProblemCode::TextTooLarge));
}

}  // namespace
}  // namespace creasewright
