#include "pages/template_page.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <numeric>

#include "drawing/arrange.h"
#include "pages/legend.h"
#include "pages/marks.h"
#include "pages/notes.h"
#include "pages/notes_room.h"
#include "pages/part_words.h"

namespace creasewright {
namespace {

constexpr const char* kDot = " \u00B7 ";
constexpr double kHint = 2.1;
constexpr double kFootLeft = 119;  // mm: the lying bars with their words

/// A part as it lies on this page.
struct LyingPart {
  const LaidPart* laid = nullptr;
  PartSheet sheet;  // turned as it lies
  const Tiling* tiling = nullptr;
  const Tile* tile = nullptr;

  [[nodiscard]] Point shift() const { return laid->at - laid->window.low; }
  [[nodiscard]] Bounds own() const { return tile != nullptr ? tile->own : laid->window; }
  [[nodiscard]] PartOnPage onPage() const {
    return {&sheet, shift(), {laid->window.low + shift(), laid->window.high + shift()}};
  }
};

std::vector<NoteLine> pageHints(const TemplateParts& parts, bool tiled, bool readings,
                                const Wording& wording) {
  std::vector<NoteLine> hints{{wording({"check-bar-hint", {}, {}}), kHint, 0, 0}};
  if (readings && !parts.text.readings.empty()) hints.push_back({parts.text.readings, kHint, 0, 0});
  if (parts.kind == TemplateKind::Printed) {
    const Length bleed = Length::mm(parts.printed.bleed);
    const Label hint =
        bleed > Length() ? Label{"printed-hint", {bleed}, {}} : Label{"printed-hint-bare", {}, {}};
    hints.push_back({wording(hint), kHint, 0, 0});
    if (!parts.outsideUp) hints.push_back({wording({"printed-back", {}, {}}), kHint, 0, 0});
  }
  if (parts.kind == TemplateKind::Tracing)
    hints.push_back({wording({"tracing-hint", {}, {}}), kHint, 0, 0});
  if (tiled) hints.push_back({wording({"trim", {}, {}}), kHint, 0, 0});
  return hints;
}

class PageFurnisher {
 public:
  PageFurnisher(const TemplateParts& parts, const TemplateLayout& layout, const LaidPage& page,
                const Wording& wording)
      : parts_(parts), wording_(wording), out_{PageCanvas(page.frame), true, false, false, {}} {
    for (const LaidPart& laid : page.parts) {
      const PartSheet& sheet = parts.sheets[laid.part];
      LyingPart lying{&laid, laid.turned ? turnedLeft(sheet) : sheet, nullptr, nullptr};
      if (laid.tile) {
        lying.tiling = &*layout.tilings[laid.part];
        lying.tile = &lying.tiling->tiles[*laid.tile];
      }
      lying_.push_back(std::move(lying));
    }
  }

  TemplatePage furnish(std::size_t number, std::size_t total) {
    for (const LyingPart& part : lying_) putPart(part);
    PageCanvas& canvas = out_.canvas;
    canvas.keepApart(0);
    for (const LyingPart& part : lying_) {
      if (part.tile == nullptr) continue;
      const Drawing marks =
          alignmentMarks(*part.tiling, *part.tile, part.shift(), wording_, canvas.lines());
      canvas.put(marks);
      for (const TextItem& text : marks.texts)
        canvas.block(bounds(textBox(text, wording_(text.label))));
    }
    for (const LyingPart& part : lying_)
      putEdgeReadings(canvas, part.onPage(), part.own(), wording_);
    canvas.keepApart(0.5);
    need(canvas.placeHead(head(number, total)));
    need(canvas.placeBars());
    noteDepth();
    for (const LyingPart& part : lying_) need(putPartLabel(canvas, part.onPage(), label(part)));
    canvas.takeDepth();
    need(putHints());
    need(putMap());
    noteDepth();
    putLegend();
    for (const LyingPart& part : lying_) putPanelNames(canvas, part.onPage(), wording_);
    return std::move(out_);
  }

 private:
  void noteDepth() {
    if (out_.canvas.takeDepth() == PageRoom::Card) out_.crowded = true;
  }
  void need(bool done) { out_.complete = out_.complete && done; }
  [[nodiscard]] const TemplatePiece& piece(const LyingPart& part) const {
    return (*parts_.pieces)[part.laid->part];
  }
  [[nodiscard]] bool alone() const { return lying_.size() == 1; }

  void putPart(const LyingPart& part) {
    const PartOnPage on = part.onPage();
    Drawing lines = glueLines(part.sheet);
    append(lines, part.sheet.lines);
    Drawing paper = part.sheet.paper;
    Region card = part.sheet.sheet.card;
    if (part.tile != nullptr) {
      const Bounds& w = part.laid->window;
      // Cuts along the blank's own edge are on the window's border, but for rounding.
      const Point hair{1e-7, 1e-7};
      lines = clipped(lines, {w.low - hair, w.high + hair});
      paper = clipped(paper, w);
      card = intersect(card, region({w.low, {w.high.x, w.low.y}, w.high, {w.low.x, w.high.y}}));
    }
    lines = moved(std::move(lines), on.shift);
    if (parts_.kind == TemplateKind::Printed) lines = clipped(lines, out_.canvas.frame().printable);
    out_.canvas.lay(moved(std::move(paper), on.shift));
    out_.canvas.put(lines);
    std::vector<Polygon> rings;
    for (Area& area : card) {
      for (Point& p : area.outer) p = p + on.shift;
      rings.push_back(std::move(area.outer));
    }
    out_.canvas.avoid(on.box, rings);
    out_.card.insert(out_.card.end(), rings.begin(), rings.end());
  }

  [[nodiscard]] std::string name(const LyingPart& part) const {
    std::string words = piece(part).name;
    if (piece(part).count > 1)
      words += kDot + wording_({"make-short", {std::int64_t{piece(part).count}}, {}});
    return words;
  }

  [[nodiscard]] std::string size(const LyingPart& part) const {
    const FlatNet& flat = *piece(part).flat;
    return wording_({"blank-size", {Length::mm(flat.width), Length::mm(flat.height)}, {}});
  }

  [[nodiscard]] bool oneCard() const {
    return std::ranges::all_of(
        lying_, [&](const LyingPart& each) { return piece(each).card == piece(lying_[0]).card; });
  }

  [[nodiscard]] bool folded() const {
    return std::ranges::any_of(
        lying_, [&](const LyingPart& each) { return !piece(each).net->creases.empty(); });
  }

  [[nodiscard]] bool worded() const {
    return std::ranges::any_of(
        lying_, [&](const LyingPart& each) { return !piece(each).net->inscriptions.empty(); });
  }

  [[nodiscard]] PageHead head(std::size_t number, std::size_t total) const {
    PageHead out;
    out.title = parts_.text.title;
    const auto add = [](std::string& words, const std::string& more) {
      if (!more.empty()) words += (words.empty() ? "" : kDot) + more;
    };
    if (alone()) {
      add(out.title, name(lying_[0]));
      add(out.details, size(lying_[0]));
    }
    // What is long comes last: a head that is too short for all cuts its end.
    add(out.details, parts_.text.date);
    if (oneCard()) add(out.details, piece(lying_[0]).card);
    add(out.details, parts_.text.corrected);
    out.page = wording_({"page-of", {std::to_string(number), std::to_string(total)}, {}});
    for (const LyingPart& part : lying_)
      if (part.tile != nullptr) out.page += kDot + wording_({"tile", {part.tile->name}, {}});
    if (folded()) {
      out.notes.push_back(
          wording_({parts_.outsideUp ? "drawn-face-behind" : "drawn-face", {}, {}}));
      if (!parts_.outsideUp && worded()) out.notes.push_back(wording_({"words-outside", {}, {}}));
    }
    out.notes.push_back(wording_({"print-scale", {}, {}}));
    return out;
  }

  [[nodiscard]] PartLabel label(const LyingPart& part) const {
    PartLabel out;
    if (!piece(part).net->creases.empty())
      out.lines.push_back(wording_({parts_.outsideUp ? "outside-up" : "inside-up", {}, {}}));
    if (alone()) return out;
    out.name = name(part);
    out.lines.push_back(size(part));
    if (!oneCard() && !piece(part).card.empty()) out.lines.push_back(piece(part).card);
    return out;
  }

  bool putMap() {
    constexpr double kMapWidth = 26;
    bool done = true;
    for (const LyingPart& part : lying_) {
      if (part.tile == nullptr) continue;
      const Drawing map = pageMap(*part.tiling, *part.tile, kMapWidth, kBarRoom - 1);
      const Bounds& all = out_.canvas.frame().printable;
      done = out_.canvas.place(map, {all.high.x - map.width, all.low.y}) && done;
    }
    return done;
  }

  bool putHints() {
    const auto any = [&](auto test) { return std::ranges::any_of(lying_, test); };
    const std::vector<NoteLine> hints = pageHints(
        parts_, any([](const LyingPart& part) { return part.tile != nullptr; }),
        any([](const LyingPart& part) { return !part.sheet.readings.empty(); }), wording_);
    const Bounds& all = out_.canvas.frame().printable;
    const double beside = all.width() - kFootLeft;
    const Point wish{beside < 40 ? all.low.x : all.low.x + kFootLeft, all.low.y};
    for (const PageRoom most : {PageRoom::Margin, PageRoom::Waste, PageRoom::Card})
      for (const double width : {beside, 110.0, 62.0, 50.0, 150.0, 195.0}) {
        if (width < 40 || width > all.width()) continue;
        Drawing block = noteBlock(hints, width, wording_);
        if (out_.canvas.placeIn(most, block, wish) ||
            out_.canvas.placeIn(most, turnedLeft(std::move(block)), wish))
          return true;
      }
    return false;
  }

  void putLegend() {
    if (parts_.kind == TemplateKind::Printed) {
      out_.legend = true;  // it has none
      return;
    }
    std::vector<std::size_t> shown;
    for (const LyingPart& part : lying_) shown.push_back(part.laid->part);
    const Bounds& all = out_.canvas.frame().printable;
    for (const double width : {kFootLeft - 1, all.width(), 75.0, 60.0}) {
      const Drawing legend = partsLegend(parts_, shown, width, wording_);
      if (legend.width > all.width()) continue;
      if (out_.canvas.place(legend, all.low + Point{0, kBarRoom}, PageRoom::Waste) ||
          out_.canvas.place(turnedLeft(legend), all.low + Point{0, kBarRoom}, PageRoom::Waste)) {
        out_.legend = true;
        return;
      }
    }
  }

  const TemplateParts& parts_;
  const Wording& wording_;
  std::vector<LyingPart> lying_;
  TemplatePage out_;
};

}  // namespace

TemplatePage furnishedPage(const TemplateParts& parts, const TemplateLayout& layout,
                           const LaidPage& page, std::size_t number, std::size_t total,
                           const Wording& wording) {
  return PageFurnisher(parts, layout, page, wording).furnish(number, total);
}

FootRoom footRoom(const TemplateParts& parts, const PageSetup& setup, const Wording& wording) {
  constexpr double kApart = 2;
  const bool sideways = setup.orientation == Orientation::Sideways;
  const double width = (sideways ? setup.paper.height : setup.paper.width).mm() - 2 * setup.margin;
  std::vector<std::size_t> all(parts.sheets.size());
  std::iota(all.begin(), all.end(), 0U);
  FootRoom foot;
  foot.legend = partsLegend(parts, all, std::min(width, kFootLeft - 1), wording).height + kApart;
  if (width - kFootLeft >= 40)
    foot.hints =
        noteBlock(pageHints(parts, false, true, wording), width - kFootLeft, wording).height +
        kApart;
  return foot;
}

Drawing partsLegend(const TemplateParts& parts, const std::vector<std::size_t>& of, double width,
                    const Wording& wording) {
  if (parts.kind == TemplateKind::Printed) return {};  // its lines are cuts alone
  Drawing all;
  LegendForm form;
  form.glue = false;
  form.glueOutlined = parts.kind == TemplateKind::InkSaving;
  form.tint = !form.glueOutlined;
  form.prick = parts.kind == TemplateKind::Tracing;
  for (const std::size_t part : of) {
    append(all, parts.sheets[part].lines);
    append(all, glueLines(parts.sheets[part]));
    for (const PartGlue& glue : parts.sheets[part].glue)
      (glue.behind ? form.glueBehind : form.glue) = true;
  }
  return drawLegend(legendRoles(all), width, wording, form);
}

}  // namespace creasewright
