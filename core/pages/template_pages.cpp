#include "pages/template_pages.h"

#include <algorithm>
#include <cstdint>
#include <functional>
#include <optional>

#include "drawing/arrange.h"
#include "drawing/net_drawing.h"
#include "pages/legend.h"
#include "pages/marks.h"
#include "pages/notes.h"
#include "pages/notes_room.h"
#include "pages/page_canvas.h"
#include "pages/score_text.h"
#include "pages/text_lines.h"
#include "pages/tiling.h"

namespace creasewright {
namespace {

constexpr double kBars = 11;  // two check bars above one another at the foot

/// Everything about one piece that its pages share.
struct PiecePlan {
  const TemplatePiece* piece = nullptr;
  Drawing lines;  // the net in blank coordinates, turned when the tiling says so
  Drawing legend;
  Tiling tiling;
  std::optional<PageFrame> bare;  // one page with the net on the whole printable area
  bool turned = false;            // lines against the blank
  std::vector<Drawing> notes;     // pages of their own
  PageFrame notesFrame;
  std::optional<std::size_t> notesTile;  // the page with the net that has room for all notes
  Drawing notesBeside;                   // on that page
};

class TemplateWriter {
 public:
  TemplateWriter(const PageSetup& setup, const TemplateText& text, const Wording& wording)
      : setup_(setup), text_(text), wording_(wording) {}

  Result<std::vector<Drawing>> write(const std::vector<TemplatePiece>& pieces) {
    std::vector<PiecePlan> plans;
    for (const TemplatePiece& piece : pieces) {
      Result<PiecePlan> planned = plan(piece);
      if (!planned) return planned.problem();
      plans.push_back(std::move(planned).value());
    }
    for (const PiecePlan& each : plans)
      total_ += (each.bare ? 1 : each.tiling.tiles.size()) + each.notes.size();
    for (const PiecePlan& each : plans) drawPiece(each);
    return std::move(pages_);
  }

 private:
  Result<PiecePlan> plan(const TemplatePiece& piece) {
    PiecePlan out;
    out.piece = &piece;
    std::vector<Polygon> glue;
    NetDrawingOptions options;
    options.sheet = false;
    for (const GlueArea& area : *piece.gluePlan)
      (area.flapFace == Face::Inside ? glue : options.glueBehind).push_back(area.area);
    out.lines = drawNetLines(*piece.net, *piece.flat, glue, options);
    // The blank's own border: cut it first to score on a board.
    const double width = piece.flat->width;
    const double height = piece.flat->height;
    out.lines.paths.push_back({.role = Role::Positions,
                               .rings = {{{0, 0}, {width, 0}, {width, height}, {0, height}}},
                               .closed = true});
    out.legend = drawLegend(legendRoles(out.lines), legendWidth(), wording_, glueFaces(piece));
    const double foot = kBars + out.legend.height + 2;
    Result<Tiling> tiling = planTiles(out.lines.width, out.lines.height, setup_, foot);
    if (!tiling) return tiling.problem();
    out.tiling = std::move(tiling).value();
    if (out.tiling.tiles.size() > 1) planBare(out);
    if (!out.bare && out.tiling.turned) {
      out.lines = turnedLeft(std::move(out.lines));
      out.turned = true;
    }
    out.notesFrame = pageFrame(setup_, setup_.orientation == Orientation::Sideways, foot);
    Bounds area = out.notesFrame.cell;
    area.low = area.low + Point{6, 3};
    area.high = area.high - Point{6, 4};
    // A mat or a label is only cut: there is nothing to note.
    const ScorePlan& scores = *piece.scorePlan;
    if (!piece.extra || !scores.setups.empty() || !scores.freeScores.empty())
      out.notes = setNotes(noteLines(piece), area);
    if (!out.notes.empty()) placeNotes(out);
    return out;
  }

  static GlueFaces glueFaces(const TemplatePiece& piece) {
    const auto on = [&piece](Face face) {
      return std::ranges::any_of(*piece.gluePlan,
                                 [face](const GlueArea& area) { return area.flapFace == face; });
    };
    return {on(Face::Inside), on(Face::Outside)};
  }

  [[nodiscard]] double legendWidth() const {
    const bool sideways = setup_.orientation == Orientation::Sideways;
    return (sideways ? setup_.paper.height : setup_.paper.width).mm() - 2 * setup_.margin;
  }

  /// Looks for a page that takes the whole net on its printable area and still has room for head
  /// and check bars.
  void planBare(PiecePlan& plan) {
    for (const bool turned : {false, true}) {
      const Drawing lines = turned ? turnedLeft(plan.lines) : plan.lines;
      for (const bool sideways : {false, true}) {
        if (sideways ? setup_.orientation == Orientation::Upright
                     : setup_.orientation == Orientation::Sideways)
          continue;
        const PageFrame frame = pageFrame(setup_, sideways, kBars);
        constexpr double kTolerance = 1e-6;
        if (lines.width > frame.printable.width() + kTolerance ||
            lines.height > frame.printable.height() + kTolerance)
          continue;
        PageCanvas canvas = bareCanvas(frame, lines);
        if (!canvas.placeBars() || !canvas.placeHead(sheetHead(plan, "999", ""))) continue;
        plan.bare = frame;
        plan.lines = lines;
        plan.turned = turned;
        return;
      }
    }
  }

  /// Notes go where a page with the net has room for them, the last one first, and have a page of
  /// their own only if none has.
  void placeNotes(PiecePlan& plan) {
    constexpr std::size_t kTried = 3;
    const std::size_t pages = plan.bare ? 1 : plan.tiling.tiles.size();
    for (std::size_t tried = 0; tried < std::min(pages, kTried) && !plan.notesTile; ++tried) {
      const std::size_t tile = pages - 1 - tried;
      bool whole = true;
      PageCanvas canvas = plan.bare ? barePage(plan, "999", whole) : tilePage(plan, tile, "999");
      const PageFrame& frame = plan.bare ? *plan.bare : plan.tiling.frame;
      std::optional<Drawing> notes =
          notesInFreeRoom({scoreLines(*plan.piece), measureLines(*plan.piece)}, canvas.take(),
                          netOn(plan, tile), frame.printable, wording_);
      if (!notes || !whole) continue;
      plan.notesTile = tile;
      plan.notesBeside = std::move(*notes);
      plan.notes.clear();
    }
  }

  /// Where the net's lines lie on a page.
  static Point shift(const PiecePlan& plan, std::size_t tile) {
    if (plan.bare) return plan.bare->printable.high - Point{plan.lines.width, plan.lines.height};
    return plan.tiling.frame.cell.low - plan.tiling.tiles[tile].window.low;
  }

  /// The net's areas on a page.
  static std::vector<Polygon> netOn(const PiecePlan& plan, std::size_t tile) {
    const FlatNet& flat = *plan.piece->flat;
    std::vector<Polygon> rings;
    for (const Area& area : flat.outline) {
      Polygon ring;
      for (const Point& p : area.outer)
        ring.push_back((plan.turned ? Point{flat.height - p.y, p.x} : p) + shift(plan, tile));
      rings.push_back(std::move(ring));
    }
    return rings;
  }

  void putNotes(PageCanvas& canvas, const PiecePlan& plan, std::size_t tile) const {
    if (plan.notesTile != tile) return;
    canvas.put(plan.notesBeside);
    const Bounds box = textBounds(plan.notesBeside, wording_);
    canvas.avoid(box);
    canvas.space().block(box);
  }

  /// The net in the upper right corner of the printable area: what room there is goes to the left
  /// and to the foot, where bars and legend are looked for.
  template <typename Change = std::identity>
  static PageCanvas bareCanvas(const PageFrame& frame, const Drawing& lines, Change change = {}) {
    PageCanvas canvas(frame);
    const Point at = frame.printable.high - Point{lines.width, lines.height};
    canvas.put(change(moved(lines, at)));
    canvas.avoid({at, frame.printable.high});
    canvas.keepApart(1.5);
    return canvas;
  }

  [[nodiscard]] PageHead head(const PiecePlan& plan, const std::string& number,
                              const std::string& tile) const {
    const FlatNet& flat = *plan.piece->flat;
    const std::string dot = " \u00B7 ";
    PageHead out;
    out.title = text_.title.empty() ? plan.piece->name : text_.title + dot + plan.piece->name;
    out.details = wording_({"blank-size", {Length::mm(flat.width), Length::mm(flat.height)}, {}});
    if (!plan.piece->card.empty()) out.details += dot + plan.piece->card;
    if (!text_.date.empty()) out.details += dot + text_.date;
    out.page = wording_({"page-of", {number, std::to_string(total_)}, {}});
    if (!tile.empty()) out.page += dot + wording_({"tile", {tile}, {}});
    return out;
  }

  /// The same for a page with the net on it, which tells how it is used.
  [[nodiscard]] PageHead sheetHead(const PiecePlan& plan, const std::string& number,
                                   const std::string& tile) const {
    PageHead out = head(plan, number, tile);
    const TemplatePiece& piece = *plan.piece;
    if (piece.count > 1)
      out.notes.push_back(wording_({"make-count", {std::int64_t{piece.count}}, {}}));
    if (!piece.net->creases.empty()) out.notes.push_back(wording_({"drawn-face", {}, {}}));
    return out;
  }

  [[nodiscard]] std::vector<NoteLine> scoreLines(const TemplatePiece& piece) const {
    std::vector<NoteLine> lines{{wording_({"score-heading", {}, {}}), 4.2, 0, 0}};
    for (const ScoreSection& section :
         scoreText(*piece.scorePlan, piece.flat->width, piece.flat->height)) {
      const std::string words = wording_(section.heading);
      if (!words.empty()) lines.push_back({words, 3.4, 0, 2});
      for (const Label& line : section.lines) lines.push_back({wording_(line), 3.4, 5, 0.8});
    }
    return lines;
  }

  [[nodiscard]] std::vector<NoteLine> measureLines(const TemplatePiece& piece) const {
    std::vector<NoteLine> lines;
    if (piece.extra || text_.measures.empty()) return lines;
    lines.push_back({wording_({"measures-heading", {}, {}}), 4.2, 0, 6});
    for (const auto& [title, value] : text_.measures)
      lines.push_back({wording_({"parameter", {title, value}, {}}), 3.4, 0, 0.4});
    return lines;
  }

  [[nodiscard]] std::vector<NoteLine> noteLines(const TemplatePiece& piece) const {
    std::vector<NoteLine> lines = scoreLines(piece);
    const std::vector<NoteLine> measures = measureLines(piece);
    lines.insert(lines.end(), measures.begin(), measures.end());
    return lines;
  }

  void drawPiece(const PiecePlan& plan) {
    bool whole = true;
    if (plan.bare)
      pages_.push_back(barePage(plan, nextNumber(), whole).take());
    else
      for (std::size_t tile = 0; tile < plan.tiling.tiles.size(); ++tile)
        pages_.push_back(tilePage(plan, tile, nextNumber()).take());
    for (const Drawing& notes : plan.notes) {
      PageCanvas canvas(plan.notesFrame);
      canvas.put(notes);
      canvas.avoid(plan.notesFrame.cell);
      furnish(canvas, plan, head(plan, nextNumber(), ""), nullptr);
      pages_.push_back(canvas.take());
    }
  }

  std::string nextNumber() { return std::to_string(pages_.size() + 1); }

  /// Lines of the net on a page, without hatching under notes.
  [[nodiscard]] Drawing cleared(const PiecePlan& plan, std::size_t tile, Drawing lines) const {
    if (plan.notesTile != tile) return lines;
    return clearedOfHatching(std::move(lines), textBounds(plan.notesBeside, wording_));
  }

  /// `whole`: the legend found room too.
  [[nodiscard]] PageCanvas barePage(const PiecePlan& plan, const std::string& number,
                                    bool& whole) const {
    PageCanvas canvas = bareCanvas(
        *plan.bare, plan.lines, [&](Drawing lines) { return cleared(plan, 0, std::move(lines)); });
    putNotes(canvas, plan, 0);
    canvas.placeBars();
    canvas.placeHead(sheetHead(plan, number, ""));
    // A notes page repeats the legend, so here it may be left out for want of room.
    whole = canvas.place(drawLegend(legendRoles(plan.lines), 60, wording_, glueFaces(*plan.piece)),
                         plan.bare->printable.low);
    return canvas;
  }

  [[nodiscard]] PageCanvas tilePage(const PiecePlan& plan, std::size_t index,
                                    const std::string& number) const {
    const Tile& tile = plan.tiling.tiles[index];
    const Bounds& cell = plan.tiling.frame.cell;
    PageCanvas canvas(plan.tiling.frame);
    canvas.put(
        cleared(plan, index, moved(clipped(plan.lines, tile.window), cell.low - tile.window.low)));
    putNotes(canvas, plan, index);
    const bool many = plan.tiling.tiles.size() > 1;
    // Marks belong to the cell, so they come before the parts around it and look for room in it.
    if (many) {
      Drawing marks = alignmentMarks(plan.tiling, tile, wording_, canvas.space());
      canvas.put(marks);
    }
    canvas.avoid(cell);
    furnish(canvas, plan, sheetHead(plan, number, many ? tile.name : ""), many ? &tile : nullptr);
    return canvas;
  }

  /// Head, bars, legend, map and hints around the cell.
  void furnish(PageCanvas& canvas, const PiecePlan& plan, const PageHead& head,
               const Tile* tile) const {
    const PageFrame& frame = canvas.frame();
    const Bounds& all = frame.printable;
    canvas.placeHead(head);
    canvas.placeBars();
    canvas.place(plan.legend, {all.low.x, all.low.y + kBars});
    double right = all.high.x;
    if (tile != nullptr) {
      const Drawing map = pageMap(plan.tiling, *tile,
                                  {{0, 0}, {plan.lines.width, plan.lines.height}}, 26, kBars - 1);
      canvas.place(map, {right - map.width, all.low.y});
      right -= map.width + 3;
    }
    const double left = all.low.x + 120;
    std::vector<NoteLine> hints{{wording_({"check-bar-hint", {}, {}}), 2.2, 0, 0}};
    if (tile != nullptr) hints.push_back({wording_({"trim", {}, {}}), 2.2, 0, 0});
    if (right - left < 30) return;
    const std::vector<Drawing> set =
        setNotes(hints, {{left, all.low.y}, {right, all.low.y + kBars}});
    if (set.size() == 1) canvas.put(set.front());
  }

  const PageSetup& setup_;
  const TemplateText& text_;
  const Wording& wording_;
  std::size_t total_ = 0;
  std::vector<Drawing> pages_;
};

}  // namespace

Result<std::vector<Drawing>> drawTemplate(const std::vector<TemplatePiece>& pieces,
                                          const PageSetup& setup, const TemplateText& text,
                                          const Wording& wording) {
  const Result<PageSetup> checked = checkedSetup(setup);
  if (!checked) return checked.problem();
  return TemplateWriter(setup, text, wording).write(pieces);
}

}  // namespace creasewright
