#include "document/for_readers.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <utility>
#include <vector>

#include "document/design_units.h"
#include "extras/extra_kind.h"
#include "styles/registry.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

constexpr double kMostUnlike = 1.25;  // thickness by thickness

bool names(const Card& card, std::string_view word) {
  return card.id.find(word) != std::string::npos || card.name.find(word) != std::string::npos;
}

/// Card is sold by basis weight or points, or by grams; board by millimetres everywhere.
bool soldTo(const Card& card, Readers readers) {
  const bool inch = names(card, "lb") || names(card, "pt");
  return inch == (readers == Readers::Inch);
}

/// Metric weights that shops keep, beside the listed ones (common practice, no published source).
constexpr std::array kMetricWeights{"160gsm", "180gsm", "200gsm", "240gsm",
                                    "250gsm", "270gsm", "350gsm"};

std::vector<Card> cardsOf(Readers readers) {
  std::vector<Card> theirs;
  for (const Card& card : cards())
    if (soldTo(card, readers)) theirs.push_back(card);
  if (readers == Readers::Inch) return theirs;
  for (const char* weight : kMetricWeights)
    if (const Result<Card> card = findCard(weight)) theirs.push_back(*card);
  return theirs;
}

ToolGrid gridFor(const Design& design, Readers readers) {
  if (readers == Readers::Metric)
    return measuresInInches(design) || design.grid.isNone() ? ToolGrid::millimetre() : design.grid;
  return measuresInInches(design) ? design.grid : ToolGrid::sixteenthInch();
}

/// Widths in which ribbon is sold, in both units (a public ribbon width guide): no fraction of an
/// inch that is nearer to the millimetres.
struct RibbonWidth {
  Length metric;
  Length inch;
};
const std::array kRibbonWidths{
    RibbonWidth{mm(3), Length::inches(1, 8)},  RibbonWidth{mm(6), Length::inches(1, 4)},
    RibbonWidth{mm(9), Length::inches(3, 8)},  RibbonWidth{mm(10), Length::inches(3, 8)},
    RibbonWidth{mm(15), Length::inches(5, 8)}, RibbonWidth{mm(22), Length::inches(7, 8)},
    RibbonWidth{mm(38), Length::inches(3, 2)}, RibbonWidth{mm(50), Length::inches(2)}};

/// Ribbon of a width that is sold is of the one that is sold in its place.
void takeSoldRibbon(const Extra& own, Readers readers, Extra& extra) {
  const Result<const ExtraKind*> kind = findExtraKind(own.kind);
  if (!kind || (*kind)->ofCard) return;
  const bool inch = readers == Readers::Inch;
  const Length width = own.parameters.length("width");
  for (const RibbonWidth& each : kRibbonWidths)
    if (width == (inch ? each.metric : each.inch)) {
      extra.parameters.set("width", inch ? each.inch : each.metric);
      return;
    }
}

}  // namespace

Card cardFor(const Card& card, Readers readers) {
  if (soldTo(card, readers)) return card;
  const auto unlike = [&card](const Card& other) {
    return std::abs(std::log(other.caliper.mm() / card.caliper.mm()));
  };
  const std::vector<Card> theirs = cardsOf(readers);
  const auto best = std::ranges::min_element(theirs, {}, unlike);
  if (best == theirs.end() || unlike(*best) > std::log(kMostUnlike)) return card;
  Card like = *best;
  like.colours = card.colours;
  return like;
}

Design forReaders(Design design, Readers readers) {
  const Workbench before = benchOf(design);
  design.card = cardFor(design.card, readers);
  design.grid = gridFor(design, readers);
  const Workbench now = benchOf(design);
  for (Extra& extra : design.extras) {
    const Extra own = extra;
    extra.card = cardFor(extra.card, readers);
    for (ExtraLayer& layer : extra.layers) layer.card = cardFor(layer.card, readers);
    if (extra != own || before.grid != now.grid) extra = ontoGrid(std::move(extra), design.grid);
    if (before.grid != now.grid) takeSoldRibbon(own, readers, extra);
  }
  const bool same = before.caliper == now.caliper && before.grid == now.grid;
  const Result<const Style*> style = findStyle(design.styleId);
  if (same || !style) return design;
  Floors floors;
  if (design.product) {
    const auto fitOn = [&](const Workbench& bench) {
      return fit(**style, *design.product, design.ease, bench, design.parameters);
    };
    const Fitted was = fitOn(before);
    const Fitted is = fitOn(now);
    floors = floorsOf(is);
    for (std::size_t i = 0; i < is.reasons.size(); ++i)
      if (design.parameters.length(was.reasons[i].key) == was.reasons[i].chosen)
        design.parameters.set(is.reasons[i].key, is.reasons[i].chosen);
  }
  design.parameters = placedOnGrid((*style)->parameters, std::move(design.parameters), now, floors);
  return followingRules(std::move(design));
}

}  // namespace creasewright
