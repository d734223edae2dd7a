#include "papers/guide/guide_pages.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <span>
#include <utility>

#include "bridge/label_text.h"
#include "drawing/arrange.h"
#include "guide/make_guide.h"
#include "output/page_flow.h"
#include "output/page_grid.h"
#include "pages/guide_figure.h"
#include "pages/score_map.h"
#include "pages/sheet_figure.h"
#include "papers/guide/guide_cells.h"
#include "papers/guide/guide_parts.h"
#include "papers/guide/guide_photos.h"
#include "papers/guide/recipe_card.h"

namespace creasewright {

namespace {

constexpr double kMapWidth = 122;  // mm, a map with its readings
constexpr std::array kScoreMapHeights{118.0, 108.0, 98.0, 88.0};
constexpr std::array kCutMapHeights{92.0, 84.0, 76.0, 70.0};
constexpr double kWholeMapHeight = 140;  // of a map over the whole width, all words below
constexpr std::size_t kMostColumns = 3;
constexpr double kBesideHeight = 42;  // mm, of the picture of a step that has a row of its own
/// Heights of pictures by CellWidth.
constexpr std::array kBoxes{42.0, 46.0, 46.0, 46.0};
constexpr double kMargin = 12;         // mm, of a page
constexpr double kBesideLeast = 40;    // mm, and at most:
constexpr double kBesideWidth = 64;    // mm, of the picture of a step that has a row of its own
constexpr double kBesideShare = 0.46;  // of the width, the same
constexpr double kWidestPicture = 92;  // mm, in a cell
constexpr double kLeastColumn = 40;    // mm of words
constexpr double kLeastMap = 60;       // mm high
constexpr double kLowPicture = 26;     // mm high, over words that fill a page
constexpr double kRule = 2.5;          // mm above each block
constexpr double kRowGap = 3;          // mm between blocks
constexpr double kTwoBeside = 52;      // mm, a column of two beside a map
constexpr FigureRoom kPhoto{66, 46};   // mm, of a photo under a step's words
constexpr double kPhotoGap = 2;        // mm above it
constexpr double kStepGap = 3;         // mm between steps that share a map

class GuidePages {
 public:
  GuidePages(const BuiltDesign& built, GuideUnits units, const Paper& paper, const GuideForm& form)
      : size_(form.size),
        type_(typeOf(size_)),
        built_(built),
        guide_(makeGuide(built, form.hand)),
        words_(wordGuide(guide_, built, units)),
        photos_(guide_, built),
        wording_(wordingIn(firstUnit(units))),
        flow_(smaller(paper, enlargement(size_)), kMargin / enlargement(size_), kRowGap) {
    for (const GuidePart& part : guideParts(guide_)) addPart(part);
  }

  std::vector<Drawing> write(const GuideNote& note) {
    const double width = flow_.columnWidth();
    const double height = flow_.columnHeight() - kRule;
    const auto head = [&](std::optional<double> high) {
      return recipeCard(words_, built_, width, high, size_, photos_.finished);
    };
    std::vector<std::vector<Drawing>> heads{{head(std::nullopt), head(height)}};
    constexpr double kRounding = 1e-6;  // mm: a card that fills its page fits on it
    const bool large = heads[0][1].height <= height + kRounding;
    if (!large && heads[0][0].height <= height) {
      heads[0].pop_back();
    } else if (!large) {
      heads.clear();
      for (Drawing& block : recipeInTwo(words_, built_, width, height, size_, photos_.finished))
        heads.push_back({std::move(block)});
    }
    heads_ = heads.size();
    std::vector<GridItem> items;
    for (std::vector<Drawing>& forms : heads) {
      GridItem& item = items.emplace_back();
      for (Drawing& form : forms) {
        form = items.size() == 1 ? fitted(std::move(form)) : ruled(std::move(form));
        item.alone.push_back(form.height);
      }
    }
    for (const GuidePart& part : parts_) items.push_back(measured(part));
    for (const GridRow& row : arrangeRows(items, flow_.columnHeight(), kRowGap)) {
      if (row.newPage) flow_.startPage();
      const RowHeights heights = rowHeights({items.data() + row.first, row.count}, row.shape);
      flow_.put(row.first < heads_ ? heads[row.first].at(row.form) : ruled(drawn(row, heights)));
    }
    if (!note.lines.isEmpty()) flow_.put(ruled(noteBlock(note, flow_.columnWidth(), type_)));
    std::vector<Drawing> pages = flow_.take(words_.title);
    if (size_ == GuideSize::Standard) return pages;
    for (Drawing& page : pages) {
      const double enlarged = enlargement(size_);
      page = fittedInto(std::move(page), {page.width * enlarged, page.height * enlarged});
    }
    return pages;
  }

 private:
  /// Where a map has no words beside it, it is shown anew for as many steps as have room under it.
  void addPart(const GuidePart& part) {
    if (part.map == MapKind::None || !mapHeights(part).empty()) {
      parts_.push_back(part);
      return;
    }
    const std::size_t end = part.first + part.count;
    for (std::size_t first = part.first; first < end;) {
      GuidePart next{first, end - first, part.map};
      while (next.count > 1 && leftForMap(next) < kLeastMap) --next.count;
      const bool empty =
          part.map == MapKind::Scores && !anyScores(guide_.steps, first, first + next.count);
      if (empty || leftForMap(next) < kLeastMap) next.map = MapKind::None;
      if (next.map == MapKind::None) next.count = 1;
      parts_.push_back(next);
      first += next.count;
    }
  }

  /// Height over a map's words on a page of their own.
  [[nodiscard]] double leftForMap(const GuidePart& part) const {
    const std::vector<Drawing> rows = textRows(part.first, part.first + part.count);
    return flow_.columnHeight() - kRule - stacked(rows, kStepGap).height - kStepGap;
  }

  [[nodiscard]] double column(std::size_t columns) const {
    const auto count = static_cast<double>(columns);
    return (flow_.columnWidth() - (count - 1) * kBlockGap) / count;
  }

  [[nodiscard]] Drawing fitted(Drawing block) const {
    const double room = flow_.columnHeight() - kRule;
    return block.height > room ? fittedInto(std::move(block), {flow_.columnWidth(), room}) : block;
  }

  [[nodiscard]] Drawing ruled(Drawing block) const {
    return ruledAbove(fitted(std::move(block)), flow_.columnWidth(), kRule);
  }

  [[nodiscard]] Drawing text(std::size_t step, double width) const {
    Drawing words = stepText(static_cast<int>(step) + 1, words_.steps[step], width, type_);
    const std::optional<GuidePhoto>& photo = photos_.steps[step];
    if (!photo) return words;
    const FigureRoom room{std::min(width, kPhoto.width), kPhoto.height};
    return stacked({words, photoBlock(*photo, room, type_)}, kPhotoGap);
  }

  [[nodiscard]] std::vector<Drawing> texts(const GuidePart& part, double width) const {
    std::vector<Drawing> all;
    for (std::size_t i = part.first; i < part.first + part.count; ++i)
      all.push_back(text(i, width));
    return all;
  }

  [[nodiscard]] GridItem measured(const GuidePart& part) const {
    GridItem item;
    const double room = flow_.columnHeight() - kRule;
    const auto high = [room](double height) { return std::min(height, room) + kRule; };
    if (part.map != MapKind::None) {
      for (std::size_t form = 0; form < forms(part); ++form)
        item.alone.push_back(high(mapBlock(part, form).height));
      return item;
    }
    item.alone = {high(aloneBlock(part.first).height)};
    for (std::size_t i = 0; i < kCellWidths; ++i) {
      const auto width = static_cast<CellWidth>(i);
      if (wide(width) < kLeastColumn) continue;
      if (guide_.steps[part.first].figure.adhesive && wide(width) < kGlueLegend) continue;
      if (width == CellWidth::Beside) {
        const double whole = besideBlock(part.first, wide(width)).height;
        if (whole <= room) item.cell[i] = {0, whole + kRule};
        continue;
      }
      const double picture = figure(part.first, width).height + kUnderPicture;
      const double words = text(part.first, wide(width)).height;
      if (words <= room - picture) item.cell[i] = {picture, words + kRule};
    }
    return item;
  }

  /// Of a map with words beside it; none where the page is too narrow for that.
  [[nodiscard]] std::span<const double> mapHeights(const GuidePart& part) const {
    if (flow_.columnWidth() - kMapWidth - kBlockGap < kLeastColumn) return {};
    if (part.map == MapKind::Scores) return kScoreMapHeights;
    return kCutMapHeights;
  }

  [[nodiscard]] std::size_t forms(const GuidePart& part) const {
    return mapHeights(part).size() + 1;
  }

  [[nodiscard]] Drawing map(const GuidePart& part, const FigureRoom& room) const {
    return partMap(built_, guide_, part, room, wording_);
  }

  [[nodiscard]] Drawing mapBlock(const GuidePart& part, std::size_t form) const {
    const std::span<const double> heights = mapHeights(part);
    if (form < heights.size()) return mapBesideWords(part, {kMapWidth, heights[form]});
    const double width = flow_.columnWidth();
    const double room = heights.empty() ? std::clamp(leftForMap(part), kLeastMap, kWholeMapHeight)
                                        : kWholeMapHeight;
    // A map keeps the size of its readings, and may want a little more than it has.
    Drawing picture = map(part, {width, room});
    if (picture.height > room) picture = fittedInto(std::move(picture), {picture.width, room});
    std::vector<Drawing> blocks = textRows(part.first, part.first + part.count);
    blocks.insert(blocks.begin(), moved(picture, {(width - picture.width) / 2, 0}));
    return stacked(blocks, kStepGap);
  }

  /// The map left, the first steps' words at its right and the others below, as it takes the least
  /// height.
  [[nodiscard]] Drawing mapBesideWords(const GuidePart& part, const FigureRoom& room) const {
    const Drawing picture = map(part, room);
    const double at = std::min(kMapWidth, picture.width) + kBlockGap;
    const double free = flow_.columnWidth() - at;
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

  static std::vector<Drawing> firstOf(const std::vector<Drawing>& all, std::size_t count) {
    return {all.begin(), all.begin() + static_cast<std::ptrdiff_t>(count)};
  }

  /// Two beside one another in each row.
  static Drawing inPairs(const std::vector<Drawing>& all, double column) {
    std::vector<Drawing> rows;
    for (std::size_t i = 0; i < all.size(); i += 2) {
      const std::vector<Drawing> pair(
          all.begin() + static_cast<std::ptrdiff_t>(i),
          all.begin() + static_cast<std::ptrdiff_t>(std::min(all.size(), i + 2)));
      rows.push_back(inColumns(pair, column, kBlockGap));
    }
    return stacked(rows, kStepGap);
  }

  /// The words of the steps from `from` to before `to`, up to three beside one another.
  [[nodiscard]] std::vector<Drawing> textRows(std::size_t from, std::size_t to) const {
    std::vector<Drawing> rows;
    while (from < to) {
      std::size_t columns = std::min(to - from, kMostColumns);
      while (columns > 1 && column(columns) < kLeastColumn) --columns;
      rows.push_back(columns == 2 ? textPair(from) : textColumns(from, columns));
      from += columns;
    }
    return rows;
  }

  [[nodiscard]] Drawing textColumns(std::size_t from, std::size_t columns) const {
    std::vector<Drawing> row;
    for (std::size_t k = 0; k < columns; ++k) row.push_back(text(from + k, column(columns)));
    return inColumns(row, column(columns), kBlockGap);
  }

  /// Two steps, the longer one in two of three columns where that is lower.
  [[nodiscard]] Drawing textPair(std::size_t from) const {
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

  [[nodiscard]] double wide(CellWidth cell) const {
    return cellWidth(cell, flow_.columnWidth(), kBlockGap);
  }

  [[nodiscard]] const Drawing& figure(std::size_t step, CellWidth cell) const {
    Drawing& known = figures_[{step, cell}];
    if (known.width <= 0) {
      const double width = std::min(wide(cell), kWidestPicture);
      known = figureIn(step, {width, kBoxes[static_cast<std::size_t>(cell)]});
    }
    return known;
  }

  /// The same picture serves rooms of all sizes.
  [[nodiscard]] Drawing figureIn(std::size_t step, const FigureRoom& room) const {
    auto known = pictures_.find(step);
    if (known == pictures_.end())
      known = pictures_.emplace(step, StepFigure(built_, guide_.steps[step])).first;
    return known->second.in(room);
  }

  /// The picture left, the words right.
  [[nodiscard]] Drawing besideBlock(std::size_t step, double width) const {
    const double most = std::min(kBesideWidth, kBesideShare * width);
    const Drawing picture = figureIn(step, {most, kBesideHeight});
    const double column = std::max(picture.width, kBesideLeast);
    const Drawing words = text(step, width - column - kBlockGap);
    Drawing block = beside({column, picture.height, {}, {}}, words, column + kBlockGap);
    append(block, moved(picture, {(column - picture.width) / 2, block.height - picture.height}));
    return block;
  }

  /// The same; the words below over the whole width where they would not fit on a page else.
  [[nodiscard]] Drawing aloneBlock(std::size_t step) const {
    const double room = flow_.columnHeight() - kRule;
    const double width = flow_.columnWidth();
    Drawing block = besideBlock(step, width);
    for (const double height : {kBesideHeight, kLowPicture}) {
      if (block.height <= room) break;
      const Drawing picture = figureIn(step, {width, height});
      block = stepCell(picture, picture.height + kUnderPicture, text(step, width), width);
    }
    return block;
  }

  [[nodiscard]] Drawing drawn(const GridRow& row, const RowHeights& heights) const {
    const std::size_t first = row.first - heads_;
    const GuidePart& part = parts_[first];
    if (part.map != MapKind::None) return mapBlock(part, row.form);
    if (row.shape.empty()) return aloneBlock(part.first);
    Drawing out{flow_.columnWidth(), heights.sum() - kRule, {}, {}};
    double at = 0;
    for (std::size_t k = 0; k < row.count; ++k) {
      const std::size_t step = parts_[first + k].first;
      const double width = wide(row.shape[k]);
      const Drawing cell =
          row.shape[k] == CellWidth::Beside
              ? besideBlock(step, width)
              : stepCell(figure(step, row.shape[k]), heights.picture, text(step, width), width);
      append(out, moved(cell, {at, out.height - cell.height}));
      at += width + kBlockGap;
    }
    return out;
  }

  GuideSize size_;
  GuideType type_;
  const BuiltDesign& built_;
  Guide guide_;
  GuideWords words_;
  GuidePhotos photos_;
  Wording wording_;
  std::vector<GuidePart> parts_;
  std::size_t heads_ = 1;  ///< rows before those of the parts
  PageFlow flow_;
  mutable std::map<std::pair<std::size_t, CellWidth>, Drawing> figures_;
  mutable std::map<std::size_t, StepFigure> pictures_;
};

}  // namespace

std::vector<Drawing> guidePages(const BuiltDesign& built, GuideUnits units, const Paper& paper,
                                const GuideForm& form, const GuideNote& note) {
  return GuidePages(built, units, paper, form).write(note);
}

}  // namespace creasewright
