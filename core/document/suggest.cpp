#include "document/suggest.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "base/in_parallel.h"
#include "fit/round_product.h"
#include "making/cut_plan.h"
#include "making/score_curves.h"
#include "styles/blank_sheet.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

int scoreLines(const ScorePlan& plan) {
  auto lines = drawnScores(plan.freeScores).count();
  for (const ScoreSetup& setup : plan.setups)
    for (const ScoreReading& reading : setup.readings)
      if (reading.purpose == ScorePurpose::Fold) lines += static_cast<int>(setup.sides.size());
  return lines;
}

/// Strokes of the knife as the guide counts them, after the four that trim the blank.
int cutCount(const BuiltPiece& piece) {
  int cuts = 4;
  for (const Cut& cut : planCuts(piece.net, piece.flat, piece.waste).cuts)
    cuts += 1 + static_cast<int>(cut.repeats.size());
  return cuts;
}

double longestExtent(const Polygon& area) {
  double longest = 0;
  for (std::size_t i = 0; i < area.size(); ++i)
    for (std::size_t k = i + 1; k < area.size(); ++k)
      longest = std::max(longest, distance(area[i], area[k]));
  return longest;
}

double glueLength(const std::vector<GlueArea>& plan) {
  double sum = 0;
  for (const GlueArea& area : plan) sum += longestExtent(area.area);
  return sum;
}

SheetFit fitAllOnSheet(const Paper& sheet, const BuiltDesign& built) {
  SheetFit all{sheet, true, false};
  for (const BuiltPiece& piece : built.pieces) {
    const SheetFit one = fitOnSheet(sheet, piece.flat.width, piece.flat.height);
    all.fits = all.fits && one.fits;
    all.turned = all.turned || one.turned;
  }
  return all;
}

Suggestion suggestionFrom(BuiltDesign built, std::span<const Paper> stock) {
  Suggestion suggestion;
  suggestion.style = built.style;
  double glue = 0;
  for (const BuiltPiece& piece : built.pieces) {
    const int count = piece.count;
    suggestion.cardArea += count * piece.flat.width * piece.flat.height;
    suggestion.scores += count * scoreLines(piece.scorePlan);
    suggestion.cuts += count * cutCount(piece);
    glue += count * glueLength(piece.gluePlan);
  }
  suggestion.glue = Length::mm(glue);
  for (const Paper& sheet : stock) suggestion.sheets.push_back(fitAllOnSheet(sheet, built));
  suggestion.built = std::move(built);
  return suggestion;
}

}  // namespace

SheetFit fitOnSheet(const Paper& sheet, double width, double height) {
  const double w = sheet.width.mm();
  const double h = sheet.height.mm();
  const auto within = [](double size, double room) { return size <= room + 1e-6; };
  if (within(width, w) && within(height, h)) return {sheet, true, false};
  const bool turned = within(width, h) && within(height, w);
  return {sheet, turned, turned};
}

bool Suggestion::fitsAnySheet() const {
  return std::ranges::any_of(
      sheets, [](const SheetFit& fit) { return fit.fits; });
}

bool Wish::meets(const Suggestion& suggestion) const {
  const Traits& traits = suggestion.style->traits;
  return (!onMySheet || suggestion.fitsAnySheet()) && (!noGlue || !suggestion.usesGlue()) &&
         (!showsProduct || traits.showsProduct) && (!forRound || traits.suitsRound);
}

namespace {

/// An insert holds its shape only inside another box: none of its pieces is joined to itself.
bool isInsert(const BuiltDesign& built) {
  return std::ranges::all_of(
      built.pieces, [](const BuiltPiece& piece) { return piece.net.mates.empty(); });
}

}  // namespace

std::vector<Suggestion> suggest(const std::optional<Product>& product, const Card& card, Ease ease,
                                ToolGrid grid, std::span<const Paper> stock,
                                std::span<const OwnStyle> own) {
  const auto madeFor = [&](const Result<Design>& design) -> std::optional<Suggestion> {
    if (!design) return std::nullopt;
    Result<BuiltDesign> built = build(*design);
    if (!built) return std::nullopt;
    return suggestionFrom(std::move(built).value(), stock);
  };
  const std::size_t ours = styles().size();
  std::vector<std::optional<Suggestion>> made(ours + own.size() + 1);
  inParallel(made.size(), [&](std::size_t i) {
    if (i < ours)
      made[i] = madeFor(newDesign(styles()[i].id, product, card, ease, grid));
    else if (i < ours + own.size())
      made[i] = madeFor(newDesign(own[i - ours], product, card, ease, grid));
    else
      made[i] = madeFor(newDesign(blankSheet().id, product, card, ease, grid));
  });
  std::optional<Suggestion> blank = std::move(made.back());
  made.pop_back();
  std::vector<Suggestion> all;
  for (std::optional<Suggestion>& one : made)
    if (one) all.push_back(std::move(*one));
  const bool round = product && isRound(*product);
  const auto rank = [&](const Suggestion& s) {
    const bool suitsShape = round && s.style->traits.suitsRound;
    const std::optional<OwnStyle>& style = s.built.design.ownStyle;
    const bool otherSize = style && product && !axesOutside(*style, *product).empty();
    return std::tuple(!s.holds(), otherSize, !s.fitsAnySheet(), !suitsShape, isInsert(s.built),
                      s.cardArea, s.style->traits.difficulty);
  };
  std::ranges::stable_sort(all, {}, rank);
  if (blank) all.push_back(std::move(*blank));
  return all;
}

}  // namespace creasewright
