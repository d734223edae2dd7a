#include "output/page_flow.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "lettering/type_width.h"
#include "pages/text_lines.h"

namespace creasewright {

namespace {

constexpr double kFoot = 7;    // mm for the page's number
constexpr double kIndent = 4;  // mm of a list, at least

}  // namespace

void TextBlock::put(const QString& words, const TypeStyle& type, double at, double down) {
  lines_.push_back({.role = Role::Legend,
                    .label = Label::plain(words.toStdString()),
                    .at = {at, -down},
                    .height = type.height,
                    .bold = type.bold,
                    .like = type.like});
}

void TextBlock::add(const QString& words, const TypeStyle& type, double indent) {
  const auto measure = [&type](const std::string& line) {
    return typeWidth(line, type.height, type.bold);
  };
  for (const std::string& line : wrapped(words.toStdString(), width_ - indent, measure)) {
    down_ += type.height * type.lead;
    put(QString::fromStdString(line), type, indent, down_);
  }
}

void TextBlock::addList(const QStringList& lines, const QString& mark, const TypeStyle& type) {
  const double indent =
      std::max(kIndent, typeWidth(mark.toStdString(), type.height, type.bold) + 1);
  for (const QString& line : lines) addMarked(line, mark, type, indent);
}

Drawing TextBlock::take() const {
  Drawing out{width_, down_ + 1, {}, lines_};
  return moved(std::move(out), {0, down_ + 1});
}

PageFlow::PageFlow(const Paper& paper, double margin, double gap)
    : width_(paper.width.mm()), height_(paper.height.mm()), margin_(margin), gap_(gap) {
  newPage();
}

double PageFlow::columnWidth() const { return width_ - 2 * margin_; }
double PageFlow::columnHeight() const { return height_ - 2 * margin_ - kFoot; }

void PageFlow::newPage() {
  pages_.push_back({width_, height_, {}, {}});
  free_ = height_ - margin_;
}

bool PageFlow::empty() const { return free_ >= height_ - margin_; }

void PageFlow::startPage() {
  if (!empty()) newPage();
}

void PageFlow::put(const Drawing& block) {
  constexpr double kRounding = 1e-6;
  if (free_ - block.height < margin_ + kFoot - kRounding) startPage();
  append(pages_.back(), moved(block, {margin_, free_ - block.height}));
  free_ -= block.height + gap_;
}

std::vector<Drawing> PageFlow::take(const QString& title) {
  const std::string words = shortened(title.toStdString(), columnWidth() - 40, kBodyType);
  for (std::size_t i = 0; i < pages_.size(); ++i) {
    pages_[i].texts.push_back(
        {Role::Legend, Label::plain(words), {margin_, margin_}, kBodyType, Anchor::Left, 0});
    const Label number{"page-of",
                       {static_cast<std::int64_t>(i + 1), static_cast<std::int64_t>(pages_.size())},
                       {}};
    pages_[i].texts.push_back(
        {Role::Legend, number, {width_ - margin_, margin_}, kBodyType, Anchor::Right, 0});
  }
  return std::move(pages_);
}

Drawing beside(const Drawing& left, const Drawing& right, double rightAt) {
  Drawing out{rightAt + right.width, std::max(left.height, right.height), {}, {}};
  append(out, moved(left, {0, out.height - left.height}));
  append(out, moved(right, {rightAt, out.height - right.height}));
  return out;
}

Drawing ruledAbove(Drawing block, double width, double gap) {
  block.height += gap;
  block.paths.push_back(
      {.role = Role::Positions, .rings = {{{0, block.height}, {width, block.height}}}});
  return block;
}

}  // namespace creasewright
