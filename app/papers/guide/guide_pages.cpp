#include "papers/guide/guide_pages.h"

#include "drawing/arrange.h"
#include "guide/make_guide.h"
#include "output/page_flow.h"
#include "pages/guide_figure.h"

namespace creasewright {

namespace {

constexpr FigureRoom kFigure{76, 62};

Drawing headBlock(const GuideWords& words, const BuiltDesign& built, double width) {
  TextBlock title(width);
  title.add(words.title, kTitleType);
  title.space(2);
  TextBlock facts(width - kFigure.width - kBlockGap);
  for (const QString& fact : {words.style, words.size, words.level, words.time}) {
    if (!fact.isEmpty()) {
      facts.add(fact, kBodyType * 1.1);
    }
  }
  facts.space(3);
  facts.add(suppliesHeading(), kHeadingType);
  facts.addList(words.supplies, QStringLiteral("•"), kBodyType);
  facts.space(3);
  facts.add(toolsHeading(), kHeadingType);
  facts.addList(words.tools, QStringLiteral("•"), kBodyType);
  const Drawing below =
      beside(finishedFigure(built, {kFigure.width, 80}), facts.take(), kFigure.width + kBlockGap);
  const Drawing top = title.take();
  Drawing out{width, top.height + below.height + 2, {}, {}};
  append(out, moved(top, {0, below.height + 2}));
  append(out, below);
  return out;
}

Drawing cautionBlock(const GuideWords& words, double width) {
  TextBlock block(width);
  block.add(cautionsHeading(), kHeadingType);
  block.addList(words.cautions, QStringLiteral("!"), kBodyType);
  return block.take();
}

Drawing stepText(int number, const StepWords& words, double width) {
  TextBlock text(width);
  text.add(QStringLiteral("%1  %2").arg(number).arg(words.title), kHeadingType);
  text.space(1.5);
  for (const QString& sentence : words.sentences) {
    text.add(sentence, kBodyType);
    text.space(1);
  }
  text.addList(words.checks, QStringLiteral("✓"), kBodyType);
  return text.take();
}

/// The figure left, the words right.
Drawing stepBlock(int number, const StepWords& words, const Drawing& figure, const PageFlow& flow) {
  const double width = flow.columnWidth();
  Drawing text = stepText(number, words, width - kFigure.width - kBlockGap);
  if (text.height > flow.columnHeight() - 4) {
    text = fittedInto(std::move(text), {text.width, flow.columnHeight() - 4});
  }
  return ruledAbove(beside(figure, text, kFigure.width + kBlockGap), width);
}

}  // namespace

std::vector<Drawing> guidePages(const BuiltDesign& built, GuideUnits units, const Paper& paper) {
  const Guide guide = makeGuide(built);
  const GuideWords words = wordGuide(guide, built, units);
  PageFlow flow(paper);
  flow.put(headBlock(words, built, flow.columnWidth()));
  flow.put(cautionBlock(words, flow.columnWidth()));
  for (std::size_t i = 0; i < words.steps.size(); ++i) {
    flow.put(stepBlock(static_cast<int>(i) + 1, words.steps[i],
                       guideFigure(built, guide.steps[i], kFigure), flow));
  }
  return flow.take(words.title);
}

}  // namespace creasewright
