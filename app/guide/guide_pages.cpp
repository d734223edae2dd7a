#include "guide/guide_pages.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "guide/make_guide.h"
#include "pages/guide_figure.h"
#include "pages/text_lines.h"

namespace creasewright {

namespace {

constexpr double kMargin = 15;  // mm
constexpr double kFoot = 8;     // mm for the page's number
constexpr double kTitle = 7;    // type sizes, mm
constexpr double kHeading = 4.4;
constexpr double kBody = 3.2;
constexpr double kLead = 1.4;  // line pitch by type size
constexpr FigureRoom kFigure{76, 62};
constexpr double kGap = 6;  // mm between figure and text, and between blocks

/// Text running down from the top of a block of its own; `height` grows.
class TextBlock {
 public:
  explicit TextBlock(double width) : width_(width) {}

  void add(const QString& words, double type, Role role = Role::Legend, double indent = 0) {
    for (const std::string& line : wrapped(words.toStdString(), width_ - indent, type)) {
      down_ += type * kLead;
      lines_.push_back({role, Label::plain(line), {indent, -down_}, type, Anchor::Left, 0});
    }
  }
  void addList(const QStringList& lines, const QString& mark, double type) {
    for (const QString& line : lines) {
      const double at = down_;
      add(line, type, Role::Legend, 4);
      lines_.push_back({Role::Legend,
                        Label::plain(mark.toStdString()),
                        {0, -(at + type * kLead)},
                        type,
                        Anchor::Left,
                        0});
    }
  }
  void space(double mm) { down_ += mm; }

  [[nodiscard]] Drawing take() const {
    Drawing out{width_, down_ + 1, {}, lines_};
    return moved(std::move(out), {0, down_ + 1});
  }

 private:
  double width_;
  double down_ = 0;
  std::vector<TextItem> lines_;
};

/// Blocks one below the other on as many pages as they need.
class PageFlow {
 public:
  explicit PageFlow(const Paper& paper) : width_(paper.width.mm()), height_(paper.height.mm()) {
    newPage();
  }

  [[nodiscard]] double columnWidth() const { return width_ - 2 * kMargin; }
  [[nodiscard]] double columnHeight() const { return height_ - 2 * kMargin - kFoot; }

  void put(const Drawing& block) {
    if (free_ - block.height < kMargin + kFoot && free_ < height_ - kMargin) {
      newPage();
    }
    append(pages_.back(), moved(block, {kMargin, free_ - block.height}));
    free_ -= block.height + kGap;
  }

  std::vector<Drawing> take(const std::string& title) {
    for (std::size_t i = 0; i < pages_.size(); ++i) {
      const std::string short_ = shortened(title, columnWidth() - 40, kBody);
      pages_[i].texts.push_back(
          {Role::Legend, Label::plain(short_), {kMargin, kMargin}, kBody, Anchor::Left, 0});
      const Label number{
          "page-of",
          {static_cast<std::int64_t>(i + 1), static_cast<std::int64_t>(pages_.size())},
          {}};
      pages_[i].texts.push_back(
          {Role::Legend, number, {width_ - kMargin, kMargin}, kBody, Anchor::Right, 0});
    }
    return std::move(pages_);
  }

 private:
  void newPage() {
    pages_.push_back({width_, height_, {}, {}});
    free_ = height_ - kMargin;
  }

  double width_;
  double height_;
  double free_ = 0;  // everything below it is free
  std::vector<Drawing> pages_;
};

/// Two drawings side by side, level at the top.
Drawing beside(const Drawing& left, const Drawing& right, double rightAt) {
  Drawing out{rightAt + right.width, std::max(left.height, right.height), {}, {}};
  append(out, moved(left, {0, out.height - left.height}));
  append(out, moved(right, {rightAt, out.height - right.height}));
  return out;
}

Drawing headBlock(const GuideWords& words, const BuiltDesign& built, double width) {
  TextBlock title(width);
  title.add(words.title, kTitle);
  title.space(2);
  const double textWidth = width - kFigure.width - kGap;
  TextBlock facts(textWidth);
  for (const QString& fact : {words.style, words.size, words.level, words.time}) {
    if (!fact.isEmpty()) {
      facts.add(fact, kBody * 1.1);
    }
  }
  facts.space(3);
  facts.add(suppliesHeading(), kHeading);
  facts.addList(words.supplies, QStringLiteral("•"), kBody);
  facts.space(3);
  facts.add(toolsHeading(), kHeading);
  facts.addList(words.tools, QStringLiteral("•"), kBody);
  const Drawing below =
      beside(finishedFigure(built, {kFigure.width, 80}), facts.take(), kFigure.width + kGap);
  const Drawing top = title.take();
  Drawing out{width, top.height + below.height + 2, {}, {}};
  append(out, moved(top, {0, below.height + 2}));
  append(out, below);
  return out;
}

Drawing cautionBlock(const GuideWords& words, double width) {
  TextBlock block(width);
  block.add(cautionsHeading(), kHeading);
  block.addList(words.cautions, QStringLiteral("!"), kBody);
  return block.take();
}

Drawing stepText(int number, const StepWords& words, double width) {
  TextBlock text(width);
  text.add(QStringLiteral("%1  %2").arg(number).arg(words.title), kHeading);
  text.space(1.5);
  for (const QString& sentence : words.sentences) {
    text.add(sentence, kBody);
    text.space(1);
  }
  text.addList(words.checks, QStringLiteral("✓"), kBody);
  return text.take();
}

/// A thin rule above, the figure left, the words right.
Drawing stepBlock(int number, const StepWords& words, Drawing figure, const PageFlow& flow) {
  const double width = flow.columnWidth();
  Drawing text = stepText(number, words, width - kFigure.width - kGap);
  if (text.height > flow.columnHeight()) {
    text = fittedInto(std::move(text), {text.width, flow.columnHeight() - 4});
  }
  Drawing block = beside(figure, text, kFigure.width + kGap);
  block.height += 3;
  block.paths.push_back(
      {.role = Role::Positions, .rings = {{{0, block.height}, {width, block.height}}}});
  return block;
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
  return flow.take(words.title.toStdString());
}

}  // namespace creasewright
