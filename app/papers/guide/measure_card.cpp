#include "papers/guide/measure_card.h"

#include <algorithm>
#include <span>

#include "bridge/label_text.h"
#include "bridge/style_text.h"
#include "drawing/arrange.h"
#include "guide/make_guide.h"
#include "output/page_flow.h"
#include "pages/figure_room.h"
#include "pages/score_map.h"
#include "pages/sheet_figure.h"
#include "papers/guide/guide_cells.h"
#include "papers/guide/recipe_card.h"

namespace creasewright {

namespace {

constexpr double kCardMargin = 12;           // mm
constexpr FigureRoom kCardMapRoom{118, 96};  // a map is drawn in, before it shrinks to its cell
constexpr double kCardGap = 4;               // mm
constexpr std::size_t kMostInOneColumn = 4;  // pieces
constexpr double kLeastFactor = 0.3;

/// The steps of one piece that a map shows.
struct PieceSteps {
  int piece = 0;
  std::vector<const Step*> scores;
  std::vector<const Step*> cuts;
  std::vector<std::size_t> cutSteps;  ///< of Guide::steps
};

std::vector<PieceSteps> stepsByPiece(const Guide& guide) {
  std::vector<PieceSteps> all;
  for (std::size_t i = 0; i < guide.steps.size(); ++i) {
    const Step& step = guide.steps[i];
    const bool scores = !step.settings.empty() || !step.freeScores.empty();
    if (!scores && step.cuts.empty()) continue;
    auto known = std::ranges::find(all, step.piece, &PieceSteps::piece);
    if (known == all.end()) known = all.insert(all.end(), {step.piece, {}, {}, {}});
    if (scores) known->scores.push_back(&step);
    if (step.cuts.empty()) continue;
    known->cuts.push_back(&step);
    known->cutSteps.push_back(i);
  }
  return all;
}

class MeasureCard {
 public:
  MeasureCard(const BuiltDesign& built, GuideUnits units, const Paper& paper, const GuideForm& form)
      : built_(built),
        guide_(makeGuide(built, form.hand)),
        words_(wordGuide(guide_, built, units)),
        wording_(wordingIn(firstUnit(units))),
        type_(typeOf(form.size)),
        flow_(paper, kCardMargin) {}

  Drawing draw(const GuideNote& note) {
    const double width = flow_.columnWidth();
    std::vector<Drawing> blocks{recipeHead(words_, built_, width)};
    double room = flow_.columnHeight() - blocks.front().height - kCardGap;
    Drawing last;
    if (!note.lines.isEmpty()) {
      last = ruledAbove(noteBlock(note, width, type_), width);
      room -= last.height + kCardGap;
    }
    for (Drawing& row : pieceRows(room)) blocks.push_back(std::move(row));
    if (!note.lines.isEmpty()) blocks.push_back(std::move(last));
    Drawing card = stacked(blocks, kCardGap);
    const FigureRoom page{width, flow_.columnHeight()};
    if (card.height > page.height) card = fittedInto(std::move(card), page);
    flow_.put(card);
    return flow_.take(words_.title).front();
  }

 private:
  /// What one piece shows.
  struct Block {
    Drawing name;
    std::vector<Drawing> maps;  ///< scores and cuts at one scale
    Drawing cuts;               ///< what the numbers on the cuts mean

    [[nodiscard]] double mapHeight() const {
      double high = 0;
      for (const Drawing& map : maps) high = std::max(high, map.height);
      return high;
    }
    [[nodiscard]] double wordsHeight() const { return name.height + cuts.height + kCardGap; }
  };

  /// All pieces in rows that fill `room` mm at the most; the maps give way, all by one factor.
  [[nodiscard]] std::vector<Drawing> pieceRows(double room) const {
    const std::vector<PieceSteps> pieces = stepsByPiece(guide_);
    const std::size_t columns = pieces.size() > kMostInOneColumn ? 2 : 1;
    const auto count = static_cast<double>(columns);
    const double cell = (flow_.columnWidth() - kCardGap * (count - 1)) / count;
    std::vector<Block> all;
    for (const PieceSteps& steps : pieces) all.push_back(blockOf(steps, cell));
    double words = 0;
    double maps = 0;
    for (std::size_t i = 0; i < all.size(); i += columns) {
      const auto row = std::span(all).subspan(i, std::min(columns, all.size() - i));
      words += kCardGap + std::ranges::max(row, {}, &Block::wordsHeight).wordsHeight();
      maps += std::ranges::max(row, {}, &Block::mapHeight).mapHeight();
    }
    const double factor = maps > 0 ? std::clamp((room - words) / maps, kLeastFactor, 1.0) : 1;
    std::vector<Drawing> rows;
    for (std::size_t i = 0; i < all.size(); i += columns) {
      std::vector<Drawing> row;
      for (std::size_t k = i; k < std::min(i + columns, all.size()); ++k)
        row.push_back(drawn(all[k], factor, cell));
      rows.push_back(inColumns(row, cell, kCardGap));
    }
    return rows;
  }

  [[nodiscard]] Block blockOf(const PieceSteps& steps, double width) const {
    const BuiltPiece& piece = built_.pieces.at(static_cast<std::size_t>(steps.piece));
    TextBlock name(width);
    name.add(pieceTitle(piece.name), TypeStyle{type_.title, true, type_.lead});
    TextBlock cuts(width);
    int number = 0;
    for (const std::size_t step : steps.cutSteps) {
      const StepWords& words = words_.steps[step];
      cuts.add(QStringLiteral("%1  %2: %3").arg(++number).arg(words.title, words.told().join(' ')),
               TypeStyle{type_.detail, false, type_.lead});
    }
    return {name.take(), mapsOf(piece, steps, (width - kCardGap) / 2), cuts.take()};
  }

  [[nodiscard]] std::vector<Drawing> mapsOf(const BuiltPiece& piece, const PieceSteps& steps,
                                            double width) const {
    std::vector<Drawing> maps;
    if (!steps.scores.empty())
      maps.push_back(scoreMap(piece, steps.scores, kCardMapRoom, wording_));
    if (!steps.cuts.empty()) maps.push_back(cutMap(piece, steps.cuts, 1, kCardMapRoom));
    double scale = 1;
    for (const Drawing& map : maps) scale = std::min(scale, width / map.width);
    for (Drawing& map : maps) map = shrunk(std::move(map), scale);
    return maps;
  }

  static Drawing shrunk(Drawing drawing, double factor) {
    const FigureRoom room{drawing.width * factor, drawing.height * factor};
    return fittedInto(std::move(drawing), room);
  }

  static Drawing drawn(const Block& block, double factor, double width) {
    std::vector<Drawing> maps;
    for (const Drawing& map : block.maps) maps.push_back(shrunk(map, factor));
    return stacked({block.name, inColumns(maps, (width - kCardGap) / 2, kCardGap), block.cuts},
                   kCardGap / 2);
  }

  const BuiltDesign& built_;
  Guide guide_;
  GuideWords words_;
  Wording wording_;
  GuideType type_;
  PageFlow flow_;
};

}  // namespace

Drawing measureCard(const BuiltDesign& built, GuideUnits units, const Paper& paper,
                    const GuideForm& form, const GuideNote& note) {
  return MeasureCard(built, units, paper, form).draw(note);
}

}  // namespace creasewright
