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
#include "papers/guide/guide_maps.h"
#include "papers/guide/guide_parts.h"
#include "papers/guide/guide_photos.h"
#include "papers/guide/recipe_card.h"

namespace creasewright {

namespace {

constexpr double kBesideHeight = 42;  // mm, of the picture of a step that has a row of its own
/// Heights of pictures by CellWidth.
constexpr std::array kBoxes{42.0, 46.0, 46.0, 46.0};
constexpr double kMargin = 12;         // mm, of a page
constexpr double kBesideLeast = 40;    // mm, and at most:
constexpr double kBesideWidth = 64;    // mm, of the picture of a step that has a row of its own
constexpr double kBesideShare = 0.46;  // of the width, the same
constexpr double kWidestPicture = 92;  // mm, in a cell
constexpr double kLowPicture = 26;     // mm high, over words that fill a page
constexpr double kRule = 2.5;          // mm above each block
constexpr double kRowGap = 3;          // mm between blocks

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
        flow_(smaller(paper, enlargement(size_)), kMargin / enlargement(size_), kRowGap),
        maps_({built_, guide_, words_, photos_, wording_, type_, flow_.columnWidth(),
               flow_.columnHeight() - kRule}) {
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
    if (part.map == MapKind::None || !maps_.heights(part).empty()) {
      parts_.push_back(part);
      return;
    }
    const std::size_t end = part.first + part.count;
    for (std::size_t first = part.first; first < end;) {
      GuidePart next{first, end - first, part.map};
      while (next.count > 1 && maps_.left(next) < kLeastMap) --next.count;
      const bool empty =
          part.map == MapKind::Scores && !anyScores(guide_.steps, first, first + next.count);
      if (empty || maps_.left(next) < kLeastMap) next.map = MapKind::None;
      if (next.map == MapKind::None) next.count = 1;
      parts_.push_back(next);
      first += next.count;
    }
  }

  [[nodiscard]] Drawing fitted(Drawing block) const {
    const double room = flow_.columnHeight() - kRule;
    return block.height > room ? fittedInto(std::move(block), {flow_.columnWidth(), room}) : block;
  }

  [[nodiscard]] Drawing ruled(Drawing block) const {
    return ruledAbove(fitted(std::move(block)), flow_.columnWidth(), kRule);
  }

  [[nodiscard]] GridItem measured(const GuidePart& part) const {
    GridItem item;
    const double room = flow_.columnHeight() - kRule;
    const auto high = [room](double height) { return std::min(height, room) + kRule; };
    if (part.map != MapKind::None) {
      for (std::size_t form = 0; form < maps_.forms(part); ++form)
        item.alone.push_back(high(maps_.block(part, form).height));
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
      const double words = maps_.text(part.first, wide(width)).height;
      if (words <= room - picture) item.cell[i] = {picture, words + kRule};
    }
    return item;
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
    const Drawing words = maps_.text(step, width - column - kBlockGap);
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
      block = stepCell(picture, picture.height + kUnderPicture, maps_.text(step, width), width);
    }
    return block;
  }

  [[nodiscard]] Drawing drawn(const GridRow& row, const RowHeights& heights) const {
    const std::size_t first = row.first - heads_;
    const GuidePart& part = parts_[first];
    if (part.map != MapKind::None) return maps_.block(part, row.form);
    if (row.shape.empty()) return aloneBlock(part.first);
    Drawing out{flow_.columnWidth(), heights.sum() - kRule, {}, {}};
    double at = 0;
    for (std::size_t k = 0; k < row.count; ++k) {
      const std::size_t step = parts_[first + k].first;
      const double width = wide(row.shape[k]);
      const Drawing cell = row.shape[k] == CellWidth::Beside
                               ? besideBlock(step, width)
                               : stepCell(figure(step, row.shape[k]), heights.picture,
                                          maps_.text(step, width), width);
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
  GuideMaps maps_;
  mutable std::map<std::pair<std::size_t, CellWidth>, Drawing> figures_;
  mutable std::map<std::size_t, StepFigure> pictures_;
};

}  // namespace

std::vector<Drawing> guidePages(const BuiltDesign& built, GuideUnits units, const Paper& paper,
                                const GuideForm& form, const GuideNote& note) {
  return GuidePages(built, units, paper, form).write(note);
}

}  // namespace creasewright
