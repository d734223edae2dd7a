#include "cutting/fill_offcuts.h"

#include <algorithm>
#include <numeric>

#include "cutting/cut_tree.h"

namespace creasewright {
namespace {

using Kind = CutNode::Kind;

double area(Length width, Length height) { return width.mm() * height.mm(); }

/// The offcuts of a tree, to be cut further.
void gatherOffcuts(CutNode& node, std::vector<CutNode*>& offcuts) {
  if (node.kind == Kind::Offcut) offcuts.push_back(&node);
  for (CutNode& part : node.parts) gatherOffcuts(part, offcuts);
}

/// Sizes of the offcuts of a tree, in the order of gatherOffcuts.
std::vector<std::pair<Length, Length>> offcutSizes(const CutNode& sheet) {
  std::vector<std::pair<Length, Length>> sizes;
  eachNode(sheet, [&](const CutNode& node) {
    if (node.kind == Kind::Offcut) sizes.emplace_back(node.width, node.height);
  });
  return sizes;
}

/// Where a blank would go.
struct BlankPlace {
  std::size_t layout = 0;
  std::size_t offcut = 0;  ///< of its gatherOffcuts
  bool turned = false;
  double score = 0;  ///< smaller is better
};

/// Cuts a blank out of an offcut so that the larger rest stays in one part.
CutNode cutOut(const CutNode& offcut, Length width, Length height, int demand, bool turned) {
  const Length beside = offcut.width - width;
  const Length above = offcut.height - height;
  const bool strip = area(beside, offcut.height) < area(offcut.width, above);
  if (!strip || above == Length()) return blankIn(offcut, width, height, demand, turned);
  CutNode node = cutAt(offcut, false, height);
  node.parts[0] = blankIn(node.parts[0], width, height, demand, turned);
  return node;
}

class Filling {
 public:
  Filling(std::vector<Layout> layouts, const std::vector<CutSheet>& stock,
          const std::vector<BlankDemand>& demands, const FillRule& rule)
      : layouts_(std::move(layouts)), stock_(stock), demands_(demands), rule_(rule) {
    for (const CutSheet& sheet : stock) left_.push_back(sheet.atHand);
    for (const Layout& layout : layouts_) {
      use(layout.stock, layout.count);
      sizes_.push_back(offcutSizes(layout.sheet));
    }
  }

  std::optional<std::vector<Layout>> run(std::vector<int>& quantity, Work* work) {
    constexpr double kLayout = 40;  // steps
    for (const std::size_t d : largestFirst())
      while (quantity[d] > 0) {
        if (work != nullptr && !work->add(kLayout * static_cast<double>(layouts_.size())))
          return std::nullopt;
        const std::optional<BlankPlace> place = bestPlace(d);
        if (place)
          quantity[d] -= put(d, *place, quantity[d]);
        else if (!addSheet(d))
          return std::nullopt;
      }
    return std::move(layouts_);
  }

 private:
  [[nodiscard]] std::vector<std::size_t> largestFirst() const {
    std::vector<std::size_t> order(demands_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, std::ranges::greater(), [&](std::size_t d) {
      const BlankDemand& demand = demands_[d];
      return rule_.longestFirst ? std::max(demand.width, demand.height).mm()
                                : area(demand.width, demand.height);
    });
    return order;
  }

  [[nodiscard]] const CutSheet& sheetOf(const Layout& layout) const {
    return stock_[static_cast<std::size_t>(layout.stock)];
  }

  void use(int stock, int sheets) {
    int& left = left_[static_cast<std::size_t>(stock)];
    if (left >= 0) left -= sheets;
  }

  [[nodiscard]] double score(const std::pair<Length, Length>& offcut, Length width,
                             Length height) const {
    if (rule_.byArea) return area(offcut.first, offcut.second);
    return std::min((offcut.first - width).mm(), (offcut.second - height).mm());
  }

  std::optional<BlankPlace> bestPlace(std::size_t d) {
    const BlankDemand& demand = demands_[d];
    std::optional<BlankPlace> best;
    for (std::size_t l = 0; l < layouts_.size(); ++l) {
      const std::vector<std::pair<Length, Length>>& offcuts = sizes_[l];
      for (std::size_t o = 0; o < offcuts.size(); ++o)
        for (const bool turned : {false, true}) {
          if (turned && !mayTurn(sheetOf(layouts_[l]), demand)) continue;
          const Length width = turned ? demand.height : demand.width;
          const Length height = turned ? demand.width : demand.height;
          if (width > offcuts[o].first || height > offcuts[o].second) continue;
          const double rank = score(offcuts[o], width, height);
          if (!best || rank < best->score) best = BlankPlace{l, o, turned, rank};
        }
    }
    return best;
  }

  /// One blank from each sheet of a layout, or from as many as are needed; returns how many.
  int put(std::size_t d, const BlankPlace& place, int needed) {
    if (layouts_[place.layout].count > needed) {
      Layout rest = layouts_[place.layout];
      rest.count -= needed;
      layouts_[place.layout].count = needed;
      layouts_.push_back(std::move(rest));
      sizes_.push_back(sizes_[place.layout]);
    }
    Layout& layout = layouts_[place.layout];
    std::vector<CutNode*> offcuts;
    gatherOffcuts(layout.sheet, offcuts);
    const BlankDemand& demand = demands_[d];
    CutNode& offcut = *offcuts[place.offcut];
    offcut = cutOut(offcut, place.turned ? demand.height : demand.width,
                    place.turned ? demand.width : demand.height, static_cast<int>(d), place.turned);
    sizes_[place.layout] = offcutSizes(layout.sheet);
    return layout.count;
  }

  /// One new sheet that holds the blank.
  bool addSheet(std::size_t d) {
    const BlankDemand& demand = demands_[d];
    int cheapest = -1;
    double least = 0;
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      const CutSheet& sheet = stock_[s];
      const double cost =
          std::max<double>(1, static_cast<double>(sheet.cost)) / area(sheet.width, sheet.height);
      if (!holds(sheet, demand) || left_[s] == 0 || (cheapest >= 0 && cost >= least)) continue;
      cheapest = static_cast<int>(s);
      least = cost;
    }
    if (cheapest < 0) return false;
    const CutSheet& sheet = stock_[static_cast<std::size_t>(cheapest)];
    CutNode whole;
    whole.width = sheet.width;
    whole.height = sheet.height;
    layouts_.push_back({cheapest, 1, std::move(whole)});
    sizes_.push_back(offcutSizes(layouts_.back().sheet));
    use(cheapest, 1);
    return true;
  }

  std::vector<Layout> layouts_;
  std::vector<std::vector<std::pair<Length, Length>>> sizes_;  // of the offcuts of each
  const std::vector<CutSheet>& stock_;
  const std::vector<BlankDemand>& demands_;
  FillRule rule_;
  std::vector<int> left_;  // of each stock; -1 = any number
};

}  // namespace

std::optional<std::vector<Layout>> fillOffcuts(std::vector<Layout> layouts,
                                               const std::vector<CutSheet>& stock,
                                               const std::vector<BlankDemand>& demands,
                                               std::vector<int> quantity, const FillRule& rule,
                                               Work* work) {
  return Filling(std::move(layouts), stock, demands, rule).run(quantity, work);
}

}  // namespace creasewright
