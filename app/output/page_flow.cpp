#include "output/page_flow.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "pages/text_lines.h"

namespace creasewright {

namespace {

constexpr double kMargin = 15;  // mm
constexpr double kFoot = 8;     // mm for the page's number
constexpr double kLead = 1.4;   // line pitch by type size
constexpr double kIndent = 4;   // mm of a list, at least

}  // namespace

void TextBlock::add(const QString& words, double type, double indent) {
  for (const std::string& line : wrapped(words.toStdString(), width_ - indent, type)) {
    down_ += type * kLead;
    lines_.push_back({Role::Legend, Label::plain(line), {indent, -down_}, type, Anchor::Left, 0});
  }
}

void TextBlock::addList(const QStringList& lines, const QString& mark, double type) {
  for (const QString& line : lines) {
    const double at = down_ + type * kLead;
    add(line, type, std::max(kIndent, textWidth(mark.toStdString(), type) + 1));
    lines_.push_back(
        {Role::Legend, Label::plain(mark.toStdString()), {0, -at}, type, Anchor::Left, 0});
  }
}

Drawing TextBlock::take() const {
  Drawing out{width_, down_ + 1, {}, lines_};
  return moved(std::move(out), {0, down_ + 1});
}

PageFlow::PageFlow(const Paper& paper) : width_(paper.width.mm()), height_(paper.height.mm()) {
  newPage();
}

double PageFlow::columnWidth() const { return width_ - 2 * kMargin; }
double PageFlow::columnHeight() const { return height_ - 2 * kMargin - kFoot; }

void PageFlow::newPage() {
  pages_.push_back({width_, height_, {}, {}});
  free_ = height_ - kMargin;
}

void PageFlow::put(const Drawing& block) {
  if (free_ - block.height < kMargin + kFoot && free_ < height_ - kMargin) {
    newPage();
  }
  append(pages_.back(), moved(block, {kMargin, free_ - block.height}));
  free_ -= block.height + kBlockGap;
}

std::vector<Drawing> PageFlow::take(const QString& title) {
  const std::string words = shortened(title.toStdString(), columnWidth() - 40, kBodyType);
  for (std::size_t i = 0; i < pages_.size(); ++i) {
    pages_[i].texts.push_back(
        {Role::Legend, Label::plain(words), {kMargin, kMargin}, kBodyType, Anchor::Left, 0});
    const Label number{"page-of",
                       {static_cast<std::int64_t>(i + 1), static_cast<std::int64_t>(pages_.size())},
                       {}};
    pages_[i].texts.push_back(
        {Role::Legend, number, {width_ - kMargin, kMargin}, kBodyType, Anchor::Right, 0});
  }
  return std::move(pages_);
}

Drawing beside(const Drawing& left, const Drawing& right, double rightAt) {
  Drawing out{rightAt + right.width, std::max(left.height, right.height), {}, {}};
  append(out, moved(left, {0, out.height - left.height}));
  append(out, moved(right, {rightAt, out.height - right.height}));
  return out;
}

Drawing ruledAbove(Drawing block, double width) {
  block.height += 3;
  block.paths.push_back(
      {.role = Role::Positions, .rings = {{{0, block.height}, {width, block.height}}}});
  return block;
}

}  // namespace creasewright
