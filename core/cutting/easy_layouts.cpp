#include "cutting/easy_layouts.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <set>

#include "cutting/cut_tree.h"
#include "cutting/fewer_settings.h"
#include "cutting/finish_layouts.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

constexpr std::size_t kMostLayouts = 700;  // of strips, of one kind of sheet
constexpr int kMostInTurn = 4;             // numbers of strips that are tried before the next size
constexpr double kLayoutTry = 3'000;       // steps
constexpr int kMostWholeSets = 12;         // whole sets of a sheet

/// A strip full of one blank across a sheet.
struct FullStrip {
  std::size_t demand = 0;
  Length across;
  Length along;
  bool turned = false;
  int blanks = 0;
};

/// So many blanks in strips.
struct FilledStrips {
  FullStrip strip;
  int blanks = 0;
};

CutNode stripOf(const CutNode& frame, bool upright, const FullStrip& strip, int blanks) {
  CutNode whole = frame;
  CutNode* rest = &whole;
  for (int i = 0; i < blanks; ++i) {
    const bool last = strip.along == (upright ? rest->height : rest->width);
    if (!last) *rest = cutAt(*rest, !upright, strip.along);
    CutNode& part = last ? *rest : rest->parts[0];
    part = blankIn(part, part.width, part.height, static_cast<int>(strip.demand), strip.turned);
    if (!last) rest = &rest->parts[1];
  }
  return whole;
}

CutNode sheetOf(const CutSheet& sheet, bool upright, const std::vector<FilledStrips>& all) {
  CutNode whole;
  whole.width = sheet.width;
  whole.height = sheet.height;
  CutNode* rest = &whole;
  for (const FilledStrips& strips : all)
    for (int left = strips.blanks; left > 0; left -= strips.strip.blanks) {
      const bool last = strips.strip.across == (upright ? rest->width : rest->height);
      if (!last) *rest = cutAt(*rest, upright, strips.strip.across);
      CutNode& part = last ? *rest : rest->parts[0];
      part = stripOf(part, upright, strips.strip, std::min(left, strips.strip.blanks));
      if (!last) rest = &rest->parts[1];
    }
  return tidied(whole);
}

class Gathering {
 public:
  Gathering(const std::vector<CutSheet>& stock, const std::vector<BlankDemand>& demands, Work& work)
      : stock_(stock), demands_(demands), work_(work) {}

  std::vector<EasyLayout> run(const std::vector<Layout>& others) {
    for (std::size_t s = 0; s < stock_.size(); ++s) addStrips(static_cast<int>(s), 1);
    for (const Layout& layout : others) addHard(layout.stock, countsOf(layout));
    for (std::size_t s = 0; s < stock_.size(); ++s) addSets(static_cast<int>(s));
    for (std::size_t sizes = 2; sizes <= 3; ++sizes)
      for (std::size_t s = 0; s < stock_.size(); ++s) addStrips(static_cast<int>(s), sizes);
    return std::move(layouts_);
  }

 private:
  [[nodiscard]] std::vector<int> countsOf(const Layout& layout) const {
    std::vector<int> counts = blanksOf(layout, demands_.size());
    for (std::size_t d = 0; d < counts.size(); ++d)
      if (demands_[d].quantity == 0) counts[d] = 0;
    return counts;
  }

  void add(int stock, std::vector<int> counts, CutNode sheet) {
    const int settings = trimEffort(sheet).settings;
    layouts_.push_back({stock, std::move(counts), settings, std::move(sheet)});
  }

  [[nodiscard]] bool isNew(int stock, const std::vector<int>& counts) {
    return std::ranges::any_of(
               counts, [](int n) { return n > 0; }) &&
           known_.insert({stock, counts}).second;
  }

  /// Other than strips of one size will do as well. False: the sheet does not hold them.
  bool addHard(int stock, const std::vector<int>& counts) {
    if (!isNew(stock, counts)) return true;
    std::optional<CutNode> found =
        leastWork(stock_[static_cast<std::size_t>(stock)], demands_, counts, std::nullopt, work_);
    if (found) add(stock, counts, *std::move(found));
    return found.has_value();
  }

  /// One set of all blanks, two, and so on while the sheet holds them.
  void addSets(int stock) {
    if (stock_[static_cast<std::size_t>(stock)].atHand == 0) return;
    int sets = 0;
    for (const BlankDemand& demand : demands_) sets = std::gcd(sets, demand.quantity);
    for (int n = 1; sets > 0 && n <= std::min(sets, kMostWholeSets); ++n) {
      std::vector<int> counts;
      for (const BlankDemand& demand : demands_) counts.push_back(demand.quantity / sets * n);
      if (!addHard(stock, counts)) return;
    }
  }

  [[nodiscard]] std::vector<FullStrip> stripsOf(const CutSheet& sheet, bool upright) const {
    const Length length = upright ? sheet.height : sheet.width;
    const Length width = upright ? sheet.width : sheet.height;
    std::vector<FullStrip> strips;
    for (std::size_t d = 0; d < demands_.size(); ++d)
      for (const bool turned : {false, true}) {
        const BlankDemand& demand = demands_[d];
        if (demand.quantity == 0 || (turned && !mayTurn(sheet, demand))) continue;
        const Length across = upright != turned ? demand.width : demand.height;
        const Length along = upright != turned ? demand.height : demand.width;
        if (across > width || along > length) continue;
        strips.push_back({d, across, along, turned, static_cast<int>(length.nm() / along.nm())});
      }
    return strips;
  }

  void addStrips(int stock, std::size_t sizes) {
    const CutSheet& sheet = stock_[static_cast<std::size_t>(stock)];
    if (sheet.atHand == 0) return;
    for (const bool upright : {false, true}) {
      upright_ = upright;
      strips_ = stripsOf(sheet, upright);
      last_ = layouts_.size() + kMostLayouts / (2 * sizes);
      fill(stock, upright ? sheet.width : sheet.height, {}, 0, sizes);
    }
  }

  [[nodiscard]] int stillWanted(std::size_t demand, const std::vector<FilledStrips>& filled) const {
    int wanted = demands_[demand].quantity;
    for (const FilledStrips& strips : filled)
      if (strips.strip.demand == demand) wanted -= strips.blanks;
    return wanted;
  }

  /// FilledStrips of `sizes` more kinds, of those from `first` on.
  void fill(int stock, Length room, const std::vector<FilledStrips>& filled, std::size_t first,
            std::size_t sizes) {
    if (sizes == 0) return addFilled(stock, filled);
    for (std::size_t k = first; k < strips_.size(); ++k) {
      const FullStrip& strip = strips_[k];
      const int wanted = stillWanted(strip.demand, filled);
      const int fit = static_cast<int>(room.nm() / strip.across.nm());
      const int most = std::min(fit, (wanted + strip.blanks - 1) / strip.blanks);
      for (int n = most; n > std::max(0, sizes == 1 ? most - 1 : most - kMostInTurn); --n) {
        if (layouts_.size() >= last_ || !work_.add(kLayoutTry)) return;
        std::vector<FilledStrips> more = filled;
        more.push_back({strip, std::min(n * strip.blanks, wanted)});
        fill(stock, room - strip.across * n, more, k + 1, sizes - 1);
      }
    }
  }

  void addFilled(int stock, const std::vector<FilledStrips>& filled) {
    std::vector<int> counts(demands_.size(), 0);
    for (const FilledStrips& strips : filled) counts[strips.strip.demand] += strips.blanks;
    if (isNew(stock, counts))
      add(stock, std::move(counts),
          sheetOf(stock_[static_cast<std::size_t>(stock)], upright_, filled));
  }

  const std::vector<CutSheet>& stock_;
  const std::vector<BlankDemand>& demands_;
  Work& work_;
  bool upright_ = false;
  std::vector<FullStrip> strips_;
  std::size_t last_ = 0;  // so many layouts are enough
  std::set<std::pair<int, std::vector<int>>> known_;
  std::vector<EasyLayout> layouts_;
};

}  // namespace

std::vector<EasyLayout> easyLayouts(const std::vector<CutSheet>& stock,
                                    const std::vector<BlankDemand>& demands,
                                    const std::vector<Layout>& others, Work& work) {
  return Gathering(stock, demands, work).run(others);
}

}  // namespace creasewright
