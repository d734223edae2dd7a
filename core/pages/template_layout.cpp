#include "pages/template_layout.h"

#include <algorithm>
#include <array>
#include <string>

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

class LayoutMaker {
 public:
  LayoutMaker(const std::vector<TiledSheet>& parts, const PageSetup& setup,
              const PageReserve& reserve, double gap, JointRule rule)
      : parts_(parts), setup_(setup), reserve_(reserve), gap_(gap), rule_(rule) {
    for (const bool sideways : {false, true}) {
      if (sideways ? setup.orientation == Orientation::Upright
                   : setup.orientation == Orientation::Sideways)
        continue;
      frames_.push_back({sideways, pageFrame(setup, sideways, reserve)});
    }
  }

  /// Nothing: the reserve leaves too little.
  std::optional<TemplateLayout> make() {
    out_.tilings.resize(parts_.size());
    std::vector<std::size_t> whole;
    for (std::size_t i = 0; i < parts_.size(); ++i)
      if (fitsWhole(parts_[i]))
        whole.push_back(i);
      else if (!tile(i))
        return std::nullopt;
    if (!pack(whole)) return std::nullopt;
    return std::move(out_);
  }

 private:
  struct Lying {
    bool sideways = false;
    PageFrame frame;
  };

  [[nodiscard]] bool fitsWhole(const TiledSheet& part) const {
    return std::ranges::any_of(
        frames_,
        [&](const Lying& each) {
          return fits(part, each.frame.cell, false) || fits(part, each.frame.cell, true);
        });
  }

  [[nodiscard]] const PageFrame& frameOf(bool sideways) const {
    for (const Lying& each : frames_)
      if (each.sideways == sideways) return each.frame;
    return frames_.front().frame;
  }

  bool tile(std::size_t part) {
    std::vector<TileCell> cells;
    for (const Lying& each : frames_)
      cells.push_back({each.sideways, each.frame.cell.width(), each.frame.cell.height()});
    std::optional<Tiling> tiling = planTiles(parts_[part], cells, setup_.overlap, rule_);
    if (!tiling) return false;
    // In the upper right corner: what room there is goes to the left and to the foot.
    const PageFrame& frame = frameOf(tiling->sideways);
    for (std::size_t i = 0; i < tiling->tiles.size(); ++i) {
      const Bounds& window = tiling->tiles[i].window;
      const Point at = frame.cell.high - Point{window.width(), window.height()};
      out_.pages.push_back({frame, {{part, tiling->turned, window, at, i}}});
      leaveHead(out_.pages.back());
    }
    out_.tilings[part] = std::move(tiling);
    return true;
  }

  /// Where nothing is kept for the head, what is free goes to it first.
  void leaveHead(LaidPage& page) const {
    if (reserve_.head > 0) return;
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

  [[nodiscard]] std::vector<PartPage> tilePages() const {
    std::vector<PartPage> pages;
    for (const LaidPage& page : out_.pages)
      pages.push_back({page.frame.cell, {boxAt(page.parts[0].at, page.parts[0].window)}});
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
          packParts(sizes(parts), tilePages(), each.frame.cell, gap_);
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
    if (page.parts.size() != 1) return leaveHead(page);
    const Bounds& cell = page.frame.cell;
    LaidPart& only = page.parts.front();
    only.at = cell.low + Point{(cell.width() - only.window.width()) / 2,
                               (cell.height() - only.window.height()) / 2};
  }

  const std::vector<TiledSheet>& parts_;
  const PageSetup& setup_;
  const PageReserve& reserve_;
  double gap_;
  JointRule rule_;
  std::vector<Lying> frames_;
  TemplateLayout out_;
};

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
  struct Comfort {
    PageReserve reserve;
    double gap;  // mm between parts: for their names above them
  };
  const double low = std::max(kBarRoom, foot.hints);
  const double high = std::max(kBarRoom + foot.legend, foot.hints);
  const std::array comforts{Comfort{{kBarRoom, kHeadRoom, high}, 13},
                            Comfort{{kBarRoom, kHeadRoom, high}, 8},
                            Comfort{{kBarRoom, kHeadRoom, low}, 8},
                            Comfort{{kBarRoom, kHeadRoom, low}, 6},
                            Comfort{{0, kHeadRoom, low}, 6},
                            Comfort{{kBarRoom, kHeadRoom, 0}, 6},
                            Comfort{{kBarRoom, 0, 0}, 6},
                            Comfort{{0, kHeadRoom, 0}, 6},
                            Comfort{{0, 0, 0}, 6}};
  std::vector<TemplateLayout> layouts;
  for (const auto& [reserve, gap] : comforts)
    for (const JointRule rule : {JointRule::FirstFull, JointRule::Even}) {
      std::optional<TemplateLayout> layout = LayoutMaker(parts, setup, reserve, gap, rule).make();
      if (!layout) continue;
      const bool tiled = std::ranges::any_of(layout->tilings,
                                             [](const auto& tiling) { return tiling.has_value(); });
      layouts.push_back(std::move(*layout));
      if (!tiled) break;
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
