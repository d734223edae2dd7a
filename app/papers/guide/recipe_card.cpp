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
constexpr FigureRoom kSmallPicture{60, 46};
constexpr double kLargePicture = 118;  // mm high
constexpr double kLeastWords = 60;     // mm, beside the picture
constexpr double kLeastNeeds = 48;     // mm, a column of what is needed
constexpr double kNarrowPicture = 46;  // mm, beside three columns, and such a column:
constexpr double kLeastThird = 38;
constexpr double kLeastPicture = 40;    // mm high, where the words need the room
constexpr double kPictureShare = 0.36;  // of the width, beside words in larger type
constexpr double kTableGap = 3;         // mm between columns
constexpr std::size_t kFewParts = 2;
constexpr double kLetter = 6;  // mm
constexpr double kGap = 6;     // mm between blocks
constexpr double kCompactGap = 3.5;
constexpr double kRowRule = 1;  // mm above a row

/// The styles of a card's words.
struct CardType {
  explicit CardType(const GuideType& type)
      : text{.height = type.step, .lead = type.lead},
        bold{.height = type.step, .bold = true, .lead = type.lead},
        heading{.height = type.heading, .bold = true, .lead = type.lead, .like = Role::Valley},
        title{.height = kTitleType, .bold = true, .lead = type.lead},
        small{.height = type.small, .lead = type.lead},
        care{.height = type.small, .bold = true, .lead = type.lead, .like = Role::Mountain} {}

  TypeStyle text;
  TypeStyle bold;
  TypeStyle heading;
  TypeStyle title;
  TypeStyle small;
  TypeStyle care;
};

Drawing titleBlock(const GuideWords& words, double width, const CardType& type) {
  TextBlock title(width);
  title.add(words.title, type.title);
  title.space(1);
  title.add(words.facts().join(QStringLiteral(" · ")), type.text);
  if (!words.notes.isEmpty()) title.add(words.notes, type.text);
  Drawing out = title.take();
  out.paths.push_back({.role = Role::Legend, .rings = {{{0, 0}, {width, 0}}}});
  return out;
}

/// Few parts have room beside the picture.
void addParts(TextBlock& block, const std::vector<PartWords>& parts, const CardType& type) {
  block.add(partsHeading(), type.heading);
  block.space(0.8);
  for (const PartWords& part : parts) {
    block.addMarked(QStringLiteral("%1 %2  %3").arg(part.count, part.size, part.name), part.letter,
                    type.bold, kLetter);
    block.add(part.card, type.text, kLetter);
  }
  block.space(2.5);
}

void addTools(TextBlock& block, const GuideWords& words, const CardType& type) {
  block.add(toolsHeading(), type.heading);
  block.space(0.8);
  block.add(words.tools.join(QStringLiteral(" · ")), type.text);
}

/// What is cut and what sticks, few parts as a list.
TextBlock materialBlock(const GuideWords& words, double width, const CardType& type) {
  TextBlock block(width);
  if (words.parts.size() <= kFewParts) addParts(block, words.parts, type);
  if (!words.sticking.isEmpty()) {
    block.add(suppliesHeading(), type.heading);
    block.space(0.8);
    block.addList(words.sticking, QStringLiteral("•"), type.text);
    block.space(2.5);
  }
  return block;
}

Drawing needsBlock(const GuideWords& words, double width, const CardType& type) {
  TextBlock block = materialBlock(words, width, type);
  addTools(block, words, type);
  return block.take();
}

Drawing partRow(const PartWords& part, const std::array<double, 5>& columns, const CardType& type) {
  std::vector<Drawing> cells;
  const auto cell = [&](std::size_t column, const QString& words, const TypeStyle& style) {
    TextBlock block(columns[column]);
    block.add(words, style);
    cells.push_back(block.take());
  };
  cell(0, part.letter, type.bold);
  cell(1, part.name, type.text);
  cell(2, part.count, type.text);
  cell(3, part.size, type.bold);
  cell(4, part.card, type.text);
  Drawing out;
  for (const Drawing& each : cells) out.height = std::max(out.height, each.height);
  for (const Drawing& each : cells) {
    append(out, moved(each, {out.width, out.height - each.height}));
    out.width += each.width + kTableGap;
  }
  return out;
}

Drawing partsTable(const std::vector<PartWords>& parts, double width, const CardType& type) {
  const double free = width - 8 - 13 - 4 * kTableGap;
  const std::array<double, 5> columns{8, free * 0.3, 13, free * 0.3, free * 0.4};
  TextBlock heading(width);
  heading.add(partsHeading(), type.heading);
  std::vector<Drawing> rows{heading.take()};
  for (const PartWords& part : parts) {
    Drawing row = partRow(part, columns, type);
    row.height += kRowRule;
    row.paths.push_back(
        {.role = Role::Positions, .rings = {{{0, row.height}, {width, row.height}}}});
    rows.push_back(std::move(row));
  }
  return stacked(rows, 0.6);
}

Drawing cautionBlock(const GuideWords& words, double width, const CardType& type) {
  const double headingWidth = 22 * type.small.height / 3.0;
  TextBlock heading(headingWidth);
  heading.add(cautionsHeading(), type.care);
  TextBlock block(width - headingWidth - kTableGap);
  block.add(words.cautions.join(QLatin1Char(' ')), type.small);
  return beside(heading.take(), block.take(), headingWidth + kTableGap);
}

/// The same under a heading of its own.
Drawing narrowCautions(const GuideWords& words, double width, const CardType& type) {
  TextBlock block(width);
  block.add(cautionsHeading(), type.care);
  block.add(words.cautions.join(QLatin1Char(' ')), type.small);
  return block.take();
}

/// The finished piece, and its photo beside it, each in a half.
Drawing pictureRow(const BuiltDesign& built, const FigureRoom& room,
                   const std::optional<GuidePhoto>& photo, GuideSize size) {
  const double half = (room.width - kBlockGap) / 2;
  const Drawing picture = finishedFigure(built, {photo ? half : room.width, room.height});
  if (!photo) return moved(picture, {(room.width - picture.width) / 2, 0});
  const Drawing block = photoBlock(*photo, {half, room.height}, typeOf(size));
  Drawing row{room.width, std::max(picture.height, block.height), {}, {}};
  append(row, moved(picture, {(half - picture.width) / 2, (row.height - picture.height) / 2}));
  append(row, moved(block, {half + kBlockGap + (half - block.width) / 2,
                            (row.height - block.height) / 2}));
  return row;
}

/// Picture, then parts and what sticks, tools and cautions in columns; or the cautions below the
/// tools or below all: as it takes the least height.
Drawing compactCard(const GuideWords& words, const BuiltDesign& built, double width,
                    const CardType& type) {
  const Drawing title = titleBlock(words, width, type);
  const auto toolsIn = [&](double column) {
    TextBlock tools(column);
    addTools(tools, words, type);
    return tools.take();
  };
  const auto card = [&](const Drawing& needs, double pictureWidth, bool careBelow) {
    const double least = std::max(needs.height, kSmallPicture.height);
    const FigureRoom room{pictureWidth, std::min(least, kPicture.height)};
    const Drawing picture = finishedFigure(built, room);
    Drawing top = beside({0, picture.height, {}, {}}, needs, pictureWidth + kBlockGap);
    append(top,
           moved(picture, {(room.width - picture.width) / 2, (top.height - picture.height) / 2}));
    std::vector<Drawing> blocks{title, std::move(top)};
    if (words.parts.size() > kFewParts) blocks.push_back(partsTable(words.parts, width, type));
    if (careBelow) blocks.push_back(cautionBlock(words, width, type));
    return stacked(blocks, kCompactGap);
  };
  const double half = (width - kSmallPicture.width - 2 * kBlockGap) / 2;
  const double third = (width - kNarrowPicture - 3 * kBlockGap) / 3;
  const std::vector<Drawing> pair{materialBlock(words, half, type).take(), toolsIn(half)};
  std::vector<Drawing> cards{card(inColumns(pair, half, kBlockGap), kSmallPicture.width, true)};
  const Drawing right = stacked({pair[1], narrowCautions(words, half, type)}, kCompactGap);
  cards.push_back(card(inColumns({pair[0], right}, half, kBlockGap), kSmallPicture.width, false));
  if (third >= kLeastThird)
    cards.push_back(card(inColumns({materialBlock(words, third, type).take(), toolsIn(third),
                                    narrowCautions(words, third, type)},
                                   third, kBlockGap),
                         kNarrowPicture, false));
  return *std::ranges::min_element(cards, {}, &Drawing::height);
}

/// What stands below picture and needs.
std::vector<Drawing> lastBlocks(const GuideWords& words, double width, const CardType& type) {
  std::vector<Drawing> blocks;
  if (words.parts.size() > kFewParts) blocks.push_back(partsTable(words.parts, width, type));
  blocks.push_back(cautionBlock(words, width, type));
  return blocks;
}

/// The blocks with the picture after the first, as large as `room` lets it be.
Drawing withPicture(std::vector<Drawing> blocks, const BuiltDesign& built, const FigureRoom& room,
                    GuideSize size, const std::optional<GuidePhoto>& photo) {
  const double left = room.height - stacked(blocks, kGap).height - kGap;
  const double least = size == GuideSize::Standard ? kPicture.height : kLeastPicture;
  const FigureRoom large{room.width, std::clamp(left, least, kLargePicture)};
  blocks.insert(blocks.begin() + 1, pictureRow(built, large, photo, size));
  return stacked(blocks, kGap);
}

}  // namespace

Drawing recipeHead(const GuideWords& words, const BuiltDesign& built, double width) {
  constexpr FigureRoom kSmall{70, 46};
  const CardType type(typeOf(GuideSize::Standard));
  const double right = kSmall.width + kBlockGap;
  const Drawing picture = finishedFigure(built, kSmall);
  TextBlock parts(width - right);
  addParts(parts, words.parts, type);
  parts.addList(words.sticking, QStringLiteral("•"), type.text);
  Drawing top = beside({0, picture.height, {}, {}}, parts.take(), right);
  append(top, moved(picture, {(kSmall.width - picture.width) / 2, top.height - picture.height}));
  return stacked({titleBlock(words, width, type), top}, 3);
}

Drawing recipeCard(const GuideWords& words, const BuiltDesign& built, double width,
                   std::optional<double> height, GuideSize size,
                   const std::optional<GuidePhoto>& photo) {
  const CardType type(typeOf(size));
  const std::vector<Drawing> last = lastBlocks(words, width, type);
  const Drawing title = titleBlock(words, width, type);
  const FigureRoom room =
      size == GuideSize::Standard ? kPicture : FigureRoom{width * kPictureShare, kLeastPicture};
  const double right = room.width + kBlockGap;
  std::vector<Drawing> blocks{title};
  if (!height && photo) {
    const double high = width < 2 * kPicture.width ? kLeastPicture : kPicture.height;
    blocks.push_back(pictureRow(built, {width, high}, photo, size));
    blocks.push_back(needsBlock(words, width, type));
    blocks.insert(blocks.end(), last.begin(), last.end());
    return stacked(blocks, kCompactGap);
  }
  if (!height && width - kSmallPicture.width - 2 * kBlockGap >= 2 * kLeastNeeds)
    return compactCard(words, built, width, type);
  if (!height && width - right >= kLeastWords) {
    const Drawing picture = finishedFigure(built, room);
    Drawing top =
        beside({0, picture.height, {}, {}}, needsBlock(words, width - right, type), right);
    append(top, moved(picture, {(room.width - picture.width) / 2, top.height - picture.height}));
    blocks.push_back(std::move(top));
    blocks.insert(blocks.end(), last.begin(), last.end());
    return stacked(blocks, kCompactGap);
  }
  blocks.push_back(needsBlock(words, width, type));
  blocks.insert(blocks.end(), last.begin(), last.end());
  return withPicture(std::move(blocks), built, {width, height.value_or(0)}, size, photo);
}

std::vector<Drawing> recipeInTwo(const GuideWords& words, const BuiltDesign& built, double width,
                                 double height, GuideSize size,
                                 const std::optional<GuidePhoto>& photo) {
  const CardType type(typeOf(size));
  const bool table = words.parts.size() > kFewParts;
  Drawing first = table ? needsBlock(words, width, type) : materialBlock(words, width, type).take();
  std::vector<Drawing> second = lastBlocks(words, width, type);
  if (!table) {
    TextBlock tools(width);
    addTools(tools, words, type);
    second.insert(second.begin(), tools.take());
  }
  return {withPicture({titleBlock(words, width, type), std::move(first)}, built, {width, height},
                      size, photo),
          stacked(second, kGap)};
}

}  // namespace creasewright
