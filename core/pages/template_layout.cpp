#include "pages/template_layout.h"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>

#include "pages/part_packing.h"

namespace creasewright {
namespace {

constexpr int kMostTiles = 100;
constexpr double kFits = 1e-6;

bool fits(const TiledSheet& part, const Bounds& cell, bool turned) {
  return (turned ? part.height : part.width) <= cell.width() + kFits &&
         (turned ? part.width : part.height) <= cell.height() + kFits;
}

Bounds boxAt(Point low, const Bounds& window) {
  return {low, low + Point{window.width(), window.height()}};
}

/// How much a page keeps for what is not the net, and the mm between its parts: for their names.
struct Comfort {
  PageReserve reserve;
  double gap = 6;
};

/// Which of the comforts a page has at least that takes parts beside a tile.
constexpr std::size_t kShared = 3;

/// A page as it may lie.
struct Lying {
  bool sideways = false;
  PageFrame frame;
};

std::vector<Lying> lyings(const PageSetup& setup, const PageReserve& reserve) {
  std::vector<Lying> out;
  for (const bool sideways : {false, true}) {
    if (sideways ? setup.orientation == Orientation::Upright
                 : setup.orientation == Orientation::Sideways)
      continue;
    out.push_back({sideways, pageFrame(setup, sideways, reserve)});
  }
  return out;
}

/// Tilings that were found already: by part, comfort and rule.
using KnownTilings =
    std::map<std::tuple<std::size_t, std::size_t, JointRule>, std::optional<Tiling>>;

struct LayoutTask {
  const std::vector<TiledSheet>& parts;
  const PageSetup& setup;
  std::vector<Comfort> comforts;  // the most comfortable first
  KnownTilings known = {};
};

/// What one layout is made by.
struct LayoutWish {
  std::size_t comfort = 0;
  JointRule rule = JointRule::FirstFull;
  bool each = false;  ///< a part that needs fewer pages with less comfort has it
};

class LayoutMaker {
 public:
  LayoutMaker(LayoutTask& task, const LayoutWish& wish)
      : task_(task),
        parts_(task.parts),
        wish_(wish),
        gap_(task.comforts[wish.comfort].gap),
        frames_(lyings(task.setup, task.comforts[wish.comfort].reserve)) {}

  /// Nothing: the reserve leaves too little.
  std::optional<TemplateLayout> make() {
    out_.tilings.resize(parts_.size());
    std::vector<std::size_t> whole;
    for (std::size_t i = 0; i < parts_.size(); ++i)
      if (fitsWhole(parts_[i], frames_))
        whole.push_back(i);
      else if (!(wish_.each && putAlone(i)) && !tile(i))
        return std::nullopt;
    if (!pack(whole)) return std::nullopt;
    return std::move(out_);
  }

 private:
  static bool fitsWhole(const TiledSheet& part, const std::vector<Lying>& frames) {
    return std::ranges::any_of(
        frames,
        [&](const Lying& each) {
          return fits(part, each.frame.cell, false) || fits(part, each.frame.cell, true);
        });
  }

  /// On a page of its own that keeps less, where it then lies whole.
  bool putAlone(std::size_t part) {
    for (std::size_t comfort = wish_.comfort + 1; comfort < task_.comforts.size(); ++comfort) {
      const PageReserve& reserve = task_.comforts[comfort].reserve;
      for (const bool turned : {false, true})
        for (const Lying& each : lyings(task_.setup, reserve)) {
          const Bounds& cell = each.frame.cell;
          if (!fits(parts_[part], cell, turned)) continue;
          const Point size = turned ? Point{parts_[part].height, parts_[part].width}
                                    : Point{parts_[part].width, parts_[part].height};
          out_.pages.push_back(
              {each.frame, {{part, turned, {{0, 0}, size}, cell.high - size, std::nullopt}}});
          leaveHead(out_.pages.back(), reserve);
          return true;
        }
    }
    return false;
  }

  const std::optional<Tiling>& tilingAt(std::size_t part, std::size_t comfort) {
    const auto [found, fresh] = task_.known.try_emplace({part, comfort, wish_.rule});
    if (fresh) {
      std::vector<TileCell> cells;
      for (const Lying& each : lyings(task_.setup, task_.comforts[comfort].reserve))
        cells.push_back({each.sideways, each.frame.cell.width(), each.frame.cell.height()});
      found->second = planTiles(parts_[part], cells, task_.setup.overlap, wish_.rule);
    }
    return found->second;
  }

  bool tile(std::size_t part) {
    std::optional<std::size_t> best;
    const std::size_t last = wish_.each ? task_.comforts.size() : wish_.comfort + 1;
    for (std::size_t comfort = wish_.comfort; comfort < last; ++comfort) {
      const std::optional<Tiling>& tiling = tilingAt(part, comfort);
      if (tiling && (!best || tiling->count() < tilingAt(part, *best)->count())) best = comfort;
    }
    if (!best) return false;
    const Tiling& tiling = *tilingAt(part, *best);
    const PageReserve& reserve = task_.comforts[*best].reserve;
    // In the upper right corner: what room there is goes to the left and to the foot.
    const PageFrame frame = pageFrame(task_.setup, tiling.sideways, reserve);
    for (std::size_t i = 0; i < tiling.tiles.size(); ++i) {
      const Bounds& window = tiling.tiles[i].window;
      const Point at = frame.cell.high - Point{window.width(), window.height()};
      out_.pages.push_back({frame, {{part, tiling.turned, window, at, i}}});
      leaveHead(out_.pages.back(), reserve);
    }
    out_.tilings[part] = tiling;
    return true;
  }

  /// Where nothing is kept for the head, what is free goes to it first.
  static void leaveHead(LaidPage& page, const PageReserve& reserve) {
    if (reserve.head > 0) return;
    double free = kHeadRoom;
    for (const LaidPart& each : page.parts)
      free = std::min(free, each.at.y - page.frame.cell.low.y);
    for (LaidPart& each : page.parts) each.at.y -= free;
  }

  [[nodiscard]] LaidPart laid(std::size_t part, const PackedPart& packed) const {
    const TiledSheet& sheet = parts_[part];
    const Point size =
        packed.turned ? Point{sheet.height, sheet.width} : Point{sheet.width, sheet.height};
    return {part, packed.turned, {{0, 0}, size}, packed.box.low, std::nullopt};
  }

  /// What is put beside a tile leaves room for bars, head and hints, which the tile may take.
  [[nodiscard]] std::vector<PartPage> begunPages() const {
    const PageReserve& reserve = task_.comforts[wish_.each ? kShared : wish_.comfort].reserve;
    std::vector<PartPage> pages;
    for (const LaidPage& page : out_.pages) {
      const bool sideways = page.frame.width > page.frame.height;
      pages.push_back({pageFrame(task_.setup, sideways, reserve).cell,
                       {boxAt(page.parts[0].at, page.parts[0].window)}});
    }
    return pages;
  }

  [[nodiscard]] std::vector<PartSize> sizes(const std::vector<std::size_t>& parts) const {
    std::vector<PartSize> out;
    for (const std::size_t part : parts) out.push_back({parts_[part].width, parts_[part].height});
    return out;
  }

  bool pack(const std::vector<std::size_t>& parts) {
    if (parts.empty()) return true;
    std::optional<PartPacking> best;
    const Lying* lying = nullptr;
    for (const Lying& each : frames_) {
      std::optional<PartPacking> packing =
          packParts(sizes(parts), begunPages(), each.frame.cell, gap_);
      if (!packing) continue;
      if (best && (packing->newPages > best->newPages || (packing->newPages == best->newPages &&
                                                          packing->turnedArea >= best->turnedArea)))
        continue;
      best = std::move(packing);
      lying = &each;
    }
    if (!best) return false;
    const std::size_t given = out_.pages.size();
    out_.pages.resize(given + best->newPages, {lying->frame, {}});
    for (std::size_t i = 0; i < parts.size(); ++i)
      out_.pages[best->parts[i].page].parts.push_back(laid(parts[i], best->parts[i]));
    for (std::size_t page = given; page < out_.pages.size(); ++page) straighten(out_.pages[page]);
    return true;
  }

  /// The page the other way where fewer parts lie turned then; a single part in the middle.
  void straighten(LaidPage& page) const {
    std::vector<std::size_t> parts;
    double turned = 0;
    for (const LaidPart& each : page.parts) {
      parts.push_back(each.part);
      if (each.turned) turned += each.window.width() * each.window.height();
    }
    for (const Lying& each : frames_) {
      if (turned <= 0) break;
      const std::optional<PartPacking> packing = packParts(sizes(parts), {}, each.frame.cell, gap_);
      if (!packing || packing->newPages > 1 || packing->turnedArea >= turned) continue;
      turned = packing->turnedArea;
      page = {each.frame, {}};
      for (std::size_t i = 0; i < parts.size(); ++i)
        page.parts.push_back(laid(parts[i], packing->parts[i]));
    }
    if (page.parts.size() != 1) return leaveHead(page, task_.comforts[wish_.comfort].reserve);
    const Bounds& cell = page.frame.cell;
    LaidPart& only = page.parts.front();
    only.at = cell.low + Point{(cell.width() - only.window.width()) / 2,
                               (cell.height() - only.window.height()) / 2};
  }

  LayoutTask& task_;
  const std::vector<TiledSheet>& parts_;
  LayoutWish wish_;
  double gap_;
  std::vector<Lying> frames_;
  TemplateLayout out_;
};

/// Whether the parts lie alike; what the pages keep free does not matter.
bool alike(const TemplateLayout& a, const TemplateLayout& b) {
  return std::ranges::equal(
      a.pages, b.pages,
      [](const LaidPage& p, const LaidPage& q) {
        return p.frame.width == q.frame.width &&
               std::ranges::equal(
                   p.parts, q.parts,
                   [](const LaidPart& x, const LaidPart& y) {
                     return x.part == y.part && x.turned == y.turned && x.window == y.window &&
                            x.at == y.at && x.tile == y.tile;
                   });
      });
}

/// Every layout that differs from those that are there, from roomy to bare.
void addLayouts(std::vector<TemplateLayout>& layouts, LayoutTask task, bool main) {
  std::size_t first = task.comforts.size();  // the most room that can be kept at all
  for (std::size_t comfort = 0; comfort < task.comforts.size(); ++comfort)
    for (const bool each : {true, false})
      for (const JointRule rule : {JointRule::FirstFull, JointRule::Even}) {
        std::optional<TemplateLayout> layout = LayoutMaker(task, {comfort, rule, each}).make();
        if (!layout) continue;
        if (!each) first = std::min(first, comfort);
        const bool tiled = std::ranges::any_of(
            layout->tilings, [](const auto& tiling) { return tiling.has_value(); });
        layout->roomiest = main && !each && comfort == first;
        const auto known = std::ranges::find_if(
            layouts, [&](const TemplateLayout& other) { return alike(*layout, other); });
        if (known == layouts.end())
          layouts.push_back(std::move(*layout));
        else
          known->roomiest = known->roomiest || layout->roomiest;
        if (!tiled) break;
      }
}

Problem tooManyTiles(const PageSetup& setup, std::size_t count) {
  return {ProblemCode::TooManyTiles,
          std::string(setup.paper.id),
          {static_cast<std::int64_t>(count), std::int64_t{kMostTiles}}};
}

/// Tiles of all parts on the bare page, counted without laying them: beyond what is laid.
std::size_t roughTiles(const std::vector<TiledSheet>& parts, const PageSetup& setup) {
  const Bounds cell = pageFrame(setup, false, {}).cell;
  std::size_t most = 0;
  for (const TiledSheet& part : parts) {
    const auto count = [&](double width, double height) {
      return static_cast<std::size_t>(tilesNeeded(part.width, width, setup.overlap)) *
             static_cast<std::size_t>(tilesNeeded(part.height, height, setup.overlap));
    };
    most = std::max(
        most, std::min(count(cell.width(), cell.height()), count(cell.height(), cell.width())));
  }
  return most;
}

}  // namespace

Result<std::vector<TemplateLayout>> layOutTemplate(const std::vector<TiledSheet>& parts,
                                                   const PageSetup& setup, const FootRoom& foot) {
  if (const std::size_t rough = roughTiles(parts, setup); rough > 4 * kMostTiles)
    return tooManyTiles(setup, rough);
  const double low = std::max(kBarRoom, foot.hints);
  const double high = std::max(kBarRoom + foot.legend, foot.hints);
  const std::vector<Comfort> comforts{{{kBarRoom, kHeadRoom, high}, 13},
                                      {{kBarRoom, kHeadRoom, high}, 8},
                                      {{kBarRoom, kHeadRoom, low}, 8},
                                      {{kBarRoom, kHeadRoom, low}, 6},
                                      {{0, kHeadRoom, low}, 6},
                                      {{kBarRoom, kHeadRoom, 0}, 6},
                                      {{kBarRoom, 0, 0}, 6},
                                      {{0, kHeadRoom, 0}, 6},
                                      {{0, 0, 0}, 6}};
  std::vector<TemplateLayout> layouts;
  // What cuts through the least card may leave no strip for the bars where the other way does.
  std::vector<Orientation> ways{setup.orientation};
  if (setup.orientation == Orientation::Auto)
    ways.insert(ways.end(), {Orientation::Upright, Orientation::Sideways});
  for (const Orientation way : ways) {
    PageSetup lying = setup;
    lying.orientation = way;
    addLayouts(layouts, {parts, lying, comforts}, way == ways.front());
  }
  if (layouts.empty()) {
    return Problem{ProblemCode::MarginTooLarge,
                   "margin",
                   {Length::mm(setup.margin), std::string(setup.paper.name)}};
  }
  std::ranges::stable_sort(layouts, {},
                           [](const TemplateLayout& each) { return each.pages.size(); });
  for (const std::optional<Tiling>& tiling : layouts.front().tilings)
    if (tiling && tiling->tiles.size() > kMostTiles)
      return tooManyTiles(setup, tiling->tiles.size());
  return layouts;
}

}  // namespace creasewright
