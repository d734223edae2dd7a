#include "papers/guide/guide_maps.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "drawing/arrange.h"
#include "output/page_flow.h"
#include "papers/guide/guide_cells.h"

namespace creasewright {

namespace {

constexpr double kMapWidth = 122;  // mm, a map with its readings
constexpr std::array kScoreMapHeights{118.0, 108.0, 98.0, 88.0, 78.0, 70.0, 62.0};
constexpr std::array kCutMapHeights{92.0, 84.0, 76.0, 70.0};
constexpr double kWholeMapHeight = 140;  // of a map over the whole width, all words below
constexpr std::size_t kMostColumns = 3;
constexpr FigureRoom kPhoto{66, 46};  // mm, of a photo under a step's words
constexpr double kPhotoGap = 2;       // mm above it
constexpr double kStepGap = 3;        // mm between steps that share a map
constexpr double kTwoBeside = 52;     // mm, a column of two beside a map

std::vector<Drawing> firstOf(const std::vector<Drawing>& all, std::size_t count) {
  return {all.begin(), all.begin() + static_cast<std::ptrdiff_t>(count)};
}

/// Two beside one another in each row.
Drawing inPairs(const std::vector<Drawing>& all, double column) {
  std::vector<Drawing> rows;
  for (std::size_t i = 0; i < all.size(); i += 2) {
    const std::vector<Drawing> pair(
        all.begin() + static_cast<std::ptrdiff_t>(i),
        all.begin() + static_cast<std::ptrdiff_t>(std::min(all.size(), i + 2)));
    rows.push_back(inColumns(pair, column, kBlockGap));
  }
  return stacked(rows, kStepGap);
}

}  // namespace

Drawing GuideMaps::text(std::size_t step, double width) const {
  Drawing words = stepText(static_cast<int>(step) + 1, of_.words.steps[step], width, of_.type);
  const std::optional<GuidePhoto>& photo = of_.photos.steps[step];
  if (!photo) return words;
  const FigureRoom room{std::min(width, kPhoto.width), kPhoto.height};
  return stacked({words, photoBlock(*photo, room, of_.type)}, kPhotoGap);
}

std::vector<Drawing> GuideMaps::texts(const GuidePart& part, double width) const {
  std::vector<Drawing> all;
  for (std::size_t i = part.first; i < part.first + part.count; ++i) all.push_back(text(i, width));
  return all;
}

/// Height over a map's words on a page of their own.
double GuideMaps::left(const GuidePart& part) const {
  const std::vector<Drawing> rows = textRows(part.first, part.first + part.count);
  return of_.height - stacked(rows, kStepGap).height - kStepGap;
}

double GuideMaps::column(std::size_t columns) const {
  const auto count = static_cast<double>(columns);
  return (of_.width - (count - 1) * kBlockGap) / count;
}

/// Of a map with words beside it; none where the page is too narrow for that.
std::span<const double> GuideMaps::heights(const GuidePart& part) const {
  if (of_.width - kMapWidth - kBlockGap < kLeastColumn) return {};
  if (part.map == MapKind::Scores) return kScoreMapHeights;
  return kCutMapHeights;
}

std::size_t GuideMaps::forms(const GuidePart& part) const { return heights(part).size() + 1; }

Drawing GuideMaps::map(const GuidePart& part, const FigureRoom& room) const {
  return partMap(of_.built, of_.guide, part, room, of_.wording);
}

Drawing GuideMaps::block(const GuidePart& part, std::size_t form) const {
  const std::span<const double> high = heights(part);
  if (form < high.size()) return besideWords(part, {kMapWidth, high[form]});
  const double width = of_.width;
  const double room =
      high.empty() ? std::clamp(left(part), kLeastMap, kWholeMapHeight) : kWholeMapHeight;
  // A map keeps the size of its readings, and may want a little more than it has.
  Drawing picture = map(part, {width, room});
  if (picture.height > room) picture = fittedInto(std::move(picture), {picture.width, room});
  std::vector<Drawing> blocks = textRows(part.first, part.first + part.count);
  blocks.insert(blocks.begin(), moved(picture, {(width - picture.width) / 2, 0}));
  return stacked(blocks, kStepGap);
}

/// The map left, the first steps' words at its right and the others below, as it takes the least
/// height.
Drawing GuideMaps::besideWords(const GuidePart& part, const FigureRoom& room) const {
  const Drawing picture = map(part, room);
  const double at = std::min(kMapWidth, picture.width) + kBlockGap;
  const double free = of_.width - at;
  const std::vector<Drawing> narrow = texts(part, free);
  const double half = (free - kBlockGap) / 2;
  const std::vector<Drawing> halves =
      half >= kTwoBeside ? texts(part, half) : std::vector<Drawing>();
  Drawing best;
  for (std::size_t k = 1; k <= part.count; ++k) {
    std::vector<Drawing> rights{stacked(firstOf(narrow, k), kStepGap)};
    if (!halves.empty() && k > 1) rights.push_back(inPairs(firstOf(halves, k), half));
    for (const Drawing& right : rights) {
      std::vector<Drawing> blocks = textRows(part.first + k, part.first + part.count);
      blocks.insert(blocks.begin(), beside(picture, right, at));
      Drawing block = stacked(blocks, kStepGap);
      if (best.height <= 0 || block.height <= best.height) best = std::move(block);
    }
  }
  return best;
}

/// The words of the steps from `from` to before `to`, up to three beside one another.
std::vector<Drawing> GuideMaps::textRows(std::size_t from, std::size_t to) const {
  std::vector<Drawing> rows;
  while (from < to) {
    std::size_t columns = std::min(to - from, kMostColumns);
    while (columns > 1 && column(columns) < kLeastColumn) --columns;
    rows.push_back(columns == 2 ? textPair(from) : textColumns(from, columns));
    from += columns;
  }
  return rows;
}

Drawing GuideMaps::textColumns(std::size_t from, std::size_t columns) const {
  std::vector<Drawing> row;
  for (std::size_t k = 0; k < columns; ++k) row.push_back(text(from + k, column(columns)));
  return inColumns(row, column(columns), kBlockGap);
}

/// Two steps, the longer one in two of three columns where that is lower.
Drawing GuideMaps::textPair(std::size_t from) const {
  Drawing best = textColumns(from, 2);
  const double narrow = column(3);
  const double wide = 2 * narrow + kBlockGap;
  if (narrow < kLeastColumn) return best;
  for (const double left : {narrow, wide}) {
    const double right = narrow + wide - left;
    Drawing pair = beside(text(from, left), text(from + 1, right), left + kBlockGap);
    if (pair.height < best.height - 2) best = std::move(pair);
  }
  return best;
}

}  // namespace creasewright
