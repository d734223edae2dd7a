#include <QRegularExpression>
#include <cmath>
#include <cstdlib>

#include <gtest/gtest.h>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "core/laws/random_design.h"
#include "styles/parameter_text.h"

namespace creasewright {
namespace {

/// How many designs are tried; CREASEWRIGHT_ADVICE=10000 is the soak.
int designsToTry() {
  const char* set = std::getenv("CREASEWRIGHT_ADVICE");
  return set == nullptr ? 350 : std::atoi(set);
}

Product randomProduct(testing::Random& random) {
  const auto side = [&](double low, double high) { return Length::mm(random.between(low, high)); };
  const Length across = side(5, 200);
  if (random.whole(0, 3) == 0) return {ProductShape::Sphere, across, across, across};
  if (random.whole(0, 3) == 0) return {ProductShape::Cylinder, across, across, side(5, 300)};
  return {ProductShape::Box, side(5, 400), side(5, 400), side(1, 400)};
}

/// A design with some of its measures set to anything from 0.5 to 600 mm.
Design disturbed(testing::Random& random, const Style& style) {
  Design design;
  design.styleId = style.id;
  design.card = {"test", "test card", Length::mm(random.between(0.1, 2)), 0};
  design.grid = testing::randomGrid(random);
  design.parameters = standardParameters(style);
  if (random.whole(0, 1) == 0) {
    design.product = randomProduct(random);
    if (random.whole(0, 1) == 0)
      design.parameters = newDesign(style.id, design.product, design.card, design.ease, design.grid)
                              .value()
                              .parameters;
  }
  for (int i = random.whole(0, 4); i > 0; --i) {
    const ParameterSpec& spec = style.parameters[static_cast<std::size_t>(
        random.whole(0, static_cast<int>(style.parameters.size()) - 1))];
    if (spec.kind == ParameterKind::Length)
      design.parameters.set(spec.key,
                            Length::mm(std::exp(random.between(std::log(0.5), std::log(600)))));
    else
      design.parameters.setCount(spec.key, random.whole(-1, 14));
  }
  return design;
}

/// What a person reads: the sentences of the errors.
QStringList sentences(const Design& design, Unit unit) {
  Problems problems = limitProblems(design);
  if (problems.empty()) {
    const auto built = build(design);
    problems = built ? built->problems : Problems{built.problem()};
  }
  QStringList words;
  for (const Problem& problem : problems)
    if (problem.severity == Severity::Error) words += problemSentence(problem, unit);
  return words;
}

bool saysUnsuited(const QStringList& sentences) {
  return sentences.join(QLatin1Char(' '))
      .contains(QRegularExpression("does not suit the product|cannot be made of this card"));
}

/// Carries out what the sentences say and nothing else: every `“Title” VALUE or more`, `“Title” is
/// …. Make it VALUE or less.` Returns how many measures it set.
int carryOut(const QStringList& sentences, const Style& style, Design& design) {
  static const QRegularExpression limit("^“([^”]+)” is .* Make it (.+) or (more|less)\\.$");
  static const QRegularExpression room("“([^”]+)” ([^“]+?) or more");
  int set = 0;
  const auto apply = [&](const QString& title, const QString& value) {
    for (const ParameterSpec& spec : style.parameters) {
      if (parameterTitle(spec) != title) continue;
      const auto raw = readRaw(spec.kind, value.toStdString(), unitOf(design.grid));
      ASSERT_TRUE(raw.has_value()) << value.toStdString();
      design.parameters.setCount(spec.key, *raw);
      ++set;
    }
  };
  for (const QString& sentence : sentences) {
    if (const auto match = limit.match(sentence); match.hasMatch()) {
      apply(match.captured(1), match.captured(2));
      continue;
    }
    for (auto match = room.globalMatch(sentence.section(QStringLiteral("Make "), 1));
         match.hasNext();) {
      const auto one = match.next();
      apply(one.captured(1), one.captured(2));
    }
  }
  return set;
}

/// Law: the worded advice of every failing design, carried out as printed, leads to a design
/// without problems in at most two steps, or the words say that style and product or card do not go
/// together.
TEST(Advice, LeadsToADesignThatHoldsOrSaysThatNoneDoes) {
  testing::Random random(311);
  const int wanted = designsToTry();
  int failing = 0;
  int unsuited = 0;
  for (int i = 0; failing < wanted; ++i) {
    const Style& style = styles()[static_cast<std::size_t>(i) % styles().size()];
    Design design = disturbed(random, style);
    const Unit unit = unitOf(design.grid);
    QStringList words = sentences(design, unit);
    if (words.isEmpty()) continue;
    ++failing;
    QStringList told;
    for (int step = 0; step < 2 && !words.isEmpty() && !saysUnsuited(words); ++step) {
      told += words;
      ASSERT_GT(carryOut(words, style, design), 0) << words.join(" / ").toStdString();
      words = sentences(design, unit);
    }
    if (saysUnsuited(words)) {
      ++unsuited;
      continue;
    }
    EXPECT_TRUE(words.isEmpty()) << style.id << " " << told.join(" / ").toStdString() << " => "
                                 << words.join(" / ").toStdString();
  }
  EXPECT_LT(unsuited, failing / 4);
  std::cout << failing << " failing designs, " << unsuited << " told unsuited\n";
}

}  // namespace
}  // namespace creasewright
