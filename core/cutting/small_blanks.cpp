#include "cutting/small_blanks.h"

#include <algorithm>
#include <optional>

#include "cutting/cut_tree.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

int ceilDiv(std::int64_t a, std::int64_t b) { return static_cast<int>((a + b - 1) / b); }

/// Blanks of one size in rows and columns.
struct Grid {
  Length width;  ///< of a blank as it lies
  Length height;
  bool turned = false;
  int columns = 0;
  int rows = 0;

  [[nodiscard]] int blanks() const { return columns * rows; }
  [[nodiscard]] double area() const { return (width * columns).mm() * (height * rows).mm(); }
};

/// The grid of up to `wanted` blanks that fits a part, the smallest such; nothing where none that a
/// trimmer cuts off fits.
std::optional<Grid> gridIn(const CutNode& part, const BlankDemand& blank, bool mayTurn,
                           int wanted) {
  std::optional<Grid> best;
  for (const bool turned : {false, true}) {
    if (turned && !mayTurn) continue;
    Grid grid{turned ? blank.height : blank.width, turned ? blank.width : blank.height, turned};
    const auto mostColumns = static_cast<int>(part.width.nm() / grid.width.nm());
    const auto mostRows = static_cast<int>(part.height.nm() / grid.height.nm());
    const int leastRows = ceilDiv(kLeastStrip.nm(), grid.height.nm());
    grid.columns = ceilDiv(kLeastStrip.nm(), grid.width.nm());
    for (; grid.columns <= mostColumns; ++grid.columns) {
      grid.rows = std::min(mostRows, std::max(leastRows, ceilDiv(wanted, grid.columns)));
      if (grid.rows < leastRows) break;
      const int gives = std::min(grid.blanks(), wanted);
      const int before = best ? std::min(best->blanks(), wanted) : 0;
      if (!best || gives > before || (gives == before && grid.area() < best->area())) best = grid;
    }
  }
  return best;
}

/// The grid in the lower left of an offcut, such that the larger rest stays in one part. Of its
/// blanks no more than `most` are cut.
CutNode cutGrid(const CutNode& offcut, const Grid& grid, int demand, int most) {
  const Length width = grid.width * grid.columns;
  const Length height = grid.height * grid.rows;
  const auto area = [](Length w, Length h) { return w.mm() * h.mm(); };
  const bool strip =
      area(offcut.width - width, offcut.height) < area(offcut.width, offcut.height - height);
  CutNode node = offcut;
  CutNode* part = &node;
  for (const bool upright : {!strip, strip}) {
    const Length side = upright ? width : height;
    if (side == (upright ? part->width : part->height)) continue;
    *part = cutAt(*part, upright, side);
    part = part->parts.data();
  }
  for (int column = 0; column < grid.columns && most > 0; ++column) {
    CutNode* strips = part;
    if (column + 1 < grid.columns) {
      *part = cutAt(*part, true, grid.width);
      strips = part->parts.data();
      part = &part->parts[1];
    }
    for (int row = 0; row < grid.rows && most > 0; ++row, --most) {
      const bool last = strips->height == grid.height;
      if (!last) *strips = cutAt(*strips, false, grid.height);
      CutNode& blank = last ? *strips : strips->parts[0];
      blank = blankIn(blank, grid.width, grid.height, demand, grid.turned);
      if (!last) strips = &strips->parts[1];
    }
  }
  return node;
}

void eachOffcut(CutNode& node, const auto& visit) {
  if (node.kind == CutNode::Kind::Offcut) visit(node);
  for (CutNode& part : node.parts) eachOffcut(part, visit);
}

/// Where a grid would go.
struct GridPlace {
  Layout* layout = nullptr;
  CutNode* offcut = nullptr;
  Grid grid;
  std::int64_t gives = 0;
};

class Adding {
 public:
  Adding(std::vector<Layout>& layouts, const std::vector<CutSheet>& stock,
         const std::vector<BlankDemand>& demands, bool noExtras)
      : layouts_(layouts), stock_(stock), demands_(demands), noExtras_(noExtras) {}

  bool add(std::size_t d) {
    int needed = demands_[d].quantity;
    while (needed > 0) {
      std::optional<GridPlace> place = bestPlace(d, needed);
      if (!place) {
        if (!addSheet(d, needed)) return false;
        continue;
      }
      const int each = ceilDiv(needed, place->layout->count);
      const int most = noExtras_ ? std::min(each, needed / place->layout->count) : 1'000'000;
      const int cut = std::min(place->grid.blanks(), most);
      *place->offcut = cutGrid(*place->offcut, place->grid, static_cast<int>(d), cut);
      needed -= cut * place->layout->count;
    }
    return true;
  }

 private:
  [[nodiscard]] const CutSheet& sheetOf(const Layout& layout) const {
    return stock_[static_cast<std::size_t>(layout.stock)];
  }

  std::optional<GridPlace> bestPlace(std::size_t d, int needed) {
    std::optional<GridPlace> best;
    for (Layout& layout : layouts_) {
      if (noExtras_ && layout.count > needed) continue;
      const int each = ceilDiv(needed, layout.count);
      eachOffcut(layout.sheet, [&](CutNode& offcut) {
        const auto grid = gridIn(offcut, demands_[d], mayTurn(sheetOf(layout), demands_[d]), each);
        if (!grid) return;
        const std::int64_t gives =
            std::min<std::int64_t>(needed, std::int64_t{grid->blanks()} * layout.count);
        if (best &&
            (gives < best->gives || (gives == best->gives && layout.count >= best->layout->count)))
          return;
        best = GridPlace{&layout, &offcut, *grid, gives};
      });
    }
    return best;
  }

  /// As many new sheets as the rest takes, of the kind that costs least for it.
  bool addSheet(std::size_t d, int needed) {
    std::optional<Layout> best;
    std::int64_t least = 0;
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      CutNode whole;
      whole.width = stock_[s].width;
      whole.height = stock_[s].height;
      const auto grid = gridIn(whole, demands_[d], mayTurn(stock_[s], demands_[d]), needed);
      if (!grid) continue;
      const int most =
          std::max(1, noExtras_ ? needed / grid->blanks() : ceilDiv(needed, grid->blanks()));
      const std::int64_t cost = std::max<std::int64_t>(1, stock_[s].cost) * most;
      if (left(s) == 0 || (left(s) > 0 && most > left(s)) || (best && cost >= least)) continue;
      least = cost;
      best = Layout{static_cast<int>(s), most, std::move(whole)};
    }
    if (best) layouts_.push_back(*std::move(best));
    return best.has_value();
  }

  /// -1 = any number.
  [[nodiscard]] int left(std::size_t s) const {
    int left = stock_[s].atHand;
    for (const Layout& layout : layouts_)
      if (left >= 0 && static_cast<std::size_t>(layout.stock) == s)
        left = std::max(0, left - layout.count);
    return left;
  }

  std::vector<Layout>& layouts_;
  const std::vector<CutSheet>& stock_;
  const std::vector<BlankDemand>& demands_;
  bool noExtras_;
};

}  // namespace

bool isSmall(const BlankDemand& blank) { return std::min(blank.width, blank.height) < kLeastStrip; }

bool addSmallBlanks(std::vector<Layout>& layouts, const std::vector<CutSheet>& stock,
                    const std::vector<BlankDemand>& demands, bool noExtras) {
  Adding adding(layouts, stock, demands, noExtras);
  for (std::size_t d = 0; d < demands.size(); ++d)
    if (demands[d].quantity > 0 && isSmall(demands[d]) && !adding.add(d)) return false;
  return true;
}

}  // namespace creasewright
