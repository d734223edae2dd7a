#include "papers/guide/guide_cells.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "lettering/type_width.h"
#include "output/page_flow.h"
#include "pages/number_mark.h"

namespace creasewright {

namespace {

constexpr double kDisc = 3.1;            // mm, radius of a step's number
constexpr double kLeastNoteColumn = 60;  // mm
constexpr double kTitleAt = 8.6;         // mm from the left

/// The title's type, smaller where its longest word would not fit into the column.
double titleHeight(const QString& title, double column, const GuideType& type) {
  constexpr double kLeast = 0.7;
  double longest = 0;
  for (const QString& word : title.split(QLatin1Char(' ')))
    longest = std::max(longest, typeWidth(word.toStdString(), type.title, true));
  return longest <= column ? type.title : type.title * std::max(kLeast, column / longest);
}

}  // namespace

Drawing stepText(int number, const StepWords& words, double width, const GuideType& type) {
  TextBlock text(width);
  text.add(words.title,
           TypeStyle{titleHeight(words.title, width - kTitleAt, type), true, type.lead}, kTitleAt);
  text.space(1.2);
  for (const QString& paragraph : words.paragraphs()) {
    text.add(paragraph, TypeStyle{.height = type.step, .lead = type.lead});
    text.space(0.9);
  }
  if (!words.details.isEmpty()) {
    text.add(words.details.join(QLatin1Char(' ')),
             TypeStyle{.height = type.detail, .lead = type.lead, .like = Role::Dimension});
    text.space(0.6);
  }
  text.addList(words.checks, QStringLiteral("✓"),
               TypeStyle{.height = type.step, .lead = type.lead, .like = Role::Valley});
  Drawing out = text.take();
  const Point centre{kDisc, out.height - type.title * type.lead + type.title * 0.365};
  addNumberMark(out, number, centre, kDisc);
  return out;
}

Drawing stepCell(const Drawing& picture, double boxHeight, const Drawing& text, double width) {
  Drawing out{width, boxHeight + text.height, {}, {}};
  const double base = std::min(text.height + kUnderPicture, out.height - picture.height);
  append(out, moved(picture, {(width - picture.width) / 2, base}));
  append(out, text);
  return out;
}

Drawing noteBlock(const GuideNote& note, double width, const GuideType& type) {
  TextBlock heading(width);
  heading.add(
      note.heading,
      TypeStyle{.height = type.heading, .bold = true, .lead = type.lead, .like = Role::Valley});
  const double half = (width - kBlockGap) / 2;
  const qsizetype columns = half < kLeastNoteColumn ? 1 : 2;
  const double column = columns == 1 ? width : half;
  const qsizetype rows = (note.lines.size() + columns - 1) / columns;
  std::vector<Drawing> lists;
  for (qsizetype i = 0; i < columns; ++i) {
    TextBlock list(column);
    list.addList(note.lines.mid(i * rows, rows), QStringLiteral("•"),
                 TypeStyle{type.detail, false, type.lead});
    lists.push_back(list.take());
  }
  return stacked({heading.take(), inColumns(lists, column, kBlockGap)}, 1.5);
}

Drawing stacked(const std::vector<Drawing>& blocks, double gap) {
  Drawing out;
  for (const Drawing& block : blocks) {
    out.width = std::max(out.width, block.width);
    out.height += block.height + (&block == &blocks.front() ? 0 : gap);
  }
  double free = out.height;
  for (const Drawing& block : blocks) {
    append(out, moved(block, {0, free - block.height}));
    free -= block.height + gap;
  }
  return out;
}

Drawing inColumns(const std::vector<Drawing>& blocks, double column, double gap) {
  Drawing out;
  for (const Drawing& block : blocks) out.height = std::max(out.height, block.height);
  for (const Drawing& block : blocks) {
    append(out, moved(block, {out.width, out.height - block.height}));
    out.width += column + gap;
  }
  out.width = std::max(0.0, out.width - gap);
  return out;
}

}  // namespace creasewright
