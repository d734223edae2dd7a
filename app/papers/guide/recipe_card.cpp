#include "papers/guide/recipe_card.h"

#include <algorithm>
#include <array>

#include "drawing/arrange.h"
#include "output/page_flow.h"
#include "pages/guide_figure.h"
#include "papers/guide/guide_cells.h"

namespace creasewright {

namespace {

constexpr FigureRoom kPicture{92, 64};
constexpr double kLargePicture = 118;  // mm high
constexpr double kSmallType = 3.0;
constexpr double kTableGap = 3;  // mm between columns
constexpr std::size_t kFewParts = 2;
constexpr double kLetter = 6;   // mm
constexpr double kRowRule = 1;  // mm above a row

const TypeStyle kText{.height = kStepType, .lead = kStepLead};
const TypeStyle kTextBold{.height = kStepType, .bold = true, .lead = kStepLead};
const TypeStyle kHeading{
    .height = kHeadingType, .bold = true, .lead = kStepLead, .like = Role::Valley};

Drawing titleBlock(const GuideWords& words, double width) {
  TextBlock title(width);
  title.add(words.title, TypeStyle{.height = kTitleType, .bold = true, .lead = kStepLead});
  QStringList facts;
  for (const QString& fact : {words.style, words.size, words.level, words.time})
    if (!fact.isEmpty()) facts.append(fact);
  title.space(1);
  title.add(facts.join(QStringLiteral(" · ")), kText);
  Drawing out = title.take();
  out.paths.push_back({.role = Role::Legend, .rings = {{{0, 0}, {width, 0}}}});
  return out;
}

/// Few parts have room beside the picture.
void addParts(TextBlock& block, const std::vector<PartWords>& parts) {
  block.add(partsHeading(), kHeading);
  block.space(0.8);
  for (const PartWords& part : parts) {
    block.add(QStringLiteral("%1 %2  %3").arg(part.count, part.size, part.name), kTextBold,
              kLetter);
    block.beside(part.letter, kTextBold);
    block.add(part.card, kText, kLetter);
  }
  block.space(2.5);
}

Drawing needsBlock(const GuideWords& words, double width) {
  TextBlock block(width);
  if (words.parts.size() <= kFewParts) addParts(block, words.parts);
  if (!words.sticking.isEmpty()) {
    block.add(suppliesHeading(), kHeading);
    block.space(0.8);
    block.addList(words.sticking, QStringLiteral("•"), kText);
    block.space(2.5);
  }
  block.add(toolsHeading(), kHeading);
  block.space(0.8);
  block.add(words.tools.join(QStringLiteral(" · ")), kText);
  return block.take();
}

Drawing partRow(const PartWords& part, const std::array<double, 5>& columns) {
  std::vector<Drawing> cells;
  const auto cell = [&](std::size_t column, const QString& words, const TypeStyle& type) {
    TextBlock block(columns[column]);
    block.add(words, type);
    cells.push_back(block.take());
  };
  cell(0, part.letter, kTextBold);
  cell(1, part.name, kText);
  cell(2, part.count, kText);
  cell(3, part.size, kTextBold);
  cell(4, part.card, kText);
  Drawing out;
  for (const Drawing& each : cells) out.height = std::max(out.height, each.height);
  for (const Drawing& each : cells) {
    append(out, moved(each, {out.width, out.height - each.height}));
    out.width += each.width + kTableGap;
  }
  return out;
}

Drawing partsTable(const std::vector<PartWords>& parts, double width) {
  const double free = width - 8 - 13 - 4 * kTableGap;
  const std::array<double, 5> columns{8, free * 0.3, 13, free * 0.3, free * 0.4};
  TextBlock heading(width);
  heading.add(partsHeading(), kHeading);
  std::vector<Drawing> rows{heading.take()};
  for (const PartWords& part : parts) {
    Drawing row = partRow(part, columns);
    row.height += kRowRule;
    row.paths.push_back(
        {.role = Role::Positions, .rings = {{{0, row.height}, {width, row.height}}}});
    rows.push_back(std::move(row));
  }
  return stacked(rows, 0.6);
}

Drawing cautionBlock(const GuideWords& words, double width) {
  constexpr double kHeadingWidth = 22;
  TextBlock heading(kHeadingWidth);
  heading.add(
      cautionsHeading(),
      TypeStyle{.height = kSmallType, .bold = true, .lead = kStepLead, .like = Role::Mountain});
  TextBlock block(width - kHeadingWidth - kTableGap);
  block.add(words.cautions.join(QLatin1Char(' ')),
            TypeStyle{.height = kSmallType, .lead = kStepLead});
  return beside(heading.take(), block.take(), kHeadingWidth + kTableGap);
}

}  // namespace

Drawing recipeCard(const GuideWords& words, const BuiltDesign& built, double width,
                   std::optional<double> height) {
  std::vector<Drawing> blocks;
  if (words.parts.size() > kFewParts) blocks.push_back(partsTable(words.parts, width));
  blocks.push_back(cautionBlock(words, width));
  const Drawing title = titleBlock(words, width);
  if (!height) {
    const double right = kPicture.width + kBlockGap;
    const Drawing picture = finishedFigure(built, kPicture);
    Drawing top = beside({0, picture.height, {}, {}}, needsBlock(words, width - right), right);
    append(top,
           moved(picture, {(kPicture.width - picture.width) / 2, top.height - picture.height}));
    blocks.insert(blocks.begin(), {title, top});
    return stacked(blocks, 3.5);
  }
  constexpr double kGap = 6;
  blocks.insert(blocks.begin(), {title, needsBlock(words, width)});
  const double room = *height - stacked(blocks, kGap).height - kGap;
  const Drawing picture =
      finishedFigure(built, {width, std::clamp(room, kPicture.height, kLargePicture)});
  blocks.insert(blocks.begin() + 1, moved(picture, {(width - picture.width) / 2, 0}));
  return stacked(blocks, kGap);
}

}  // namespace creasewright
