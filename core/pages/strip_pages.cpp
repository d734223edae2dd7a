#include "pages/strip_pages.h"

#include <algorithm>
#include <cstdint>
#include <optional>

#include "drawing/arrange.h"
#include "drawing/spread.h"
#include "pages/notes_room.h"
#include "pages/page_canvas.h"
#include "pages/part_packing.h"
#include "pages/score_strips.h"
#include "pages/score_text.h"

namespace creasewright {
namespace {

constexpr double kTickLong = 9;   // mm
constexpr double kTickShort = 5;  // mm
constexpr double kLeader = 11;    // mm above the sheet's edge: where numbers begin
constexpr double kNumber = 3.2;
constexpr double kStripTitle = 2.6;
constexpr double kTickSlack = 1e-6;

/// A strip, or a part of one, to be drawn.
struct StripPart {
  const TemplatePiece* piece = nullptr;
  ScoreStrip strip;
  double from = 0;
  double to = 0;
  std::size_t number = 0;  ///< of `parts`
  std::size_t parts = 1;
};

std::string numberWords(const StripTick& tick, const Wording& wording) {
  std::string words = wording({"reading", {tick.reading.at}, {}});
  const ScoreReading& reading = tick.reading;
  if (reading.run == ScoreRun::Full) return words;
  words += "  ";
  return words + (reading.toLine > 0
                      ? wording({"strip-to-line", {std::int64_t{reading.toLine}}, {}})
                      : wording({"strip-to", {reading.to}, {}}));
}

/// The title, the longest that has room.
std::string stripTitle(const StripPart& part, const Wording& wording, double width) {
  const FlatNet& flat = *part.piece->flat;
  std::string sides = part.strip.sides.size() == 4
                          ? wording({"strip-all-sides", {}, {}})
                          : wording(sidesHeading(part.strip.sides, flat.width, flat.height));
  if (sides.ends_with(':')) sides.pop_back();
  const std::string dot = " \u00B7 ";
  std::string title = part.piece->name + dot + sides;
  if (part.parts > 1)
    title +=
        dot +
        wording({"strip-part", {std::to_string(part.number + 1), std::to_string(part.parts)}, {}});
  const std::string use = dot + wording({"strip-edge", {}, {}});
  return textWidth(title + use, kStripTitle) < width ? title + use : title;
}

void addTick(Drawing& out, const StripTick& tick, double x, double number) {
  const ScoreReading& reading = tick.reading;
  const bool full = reading.run == ScoreRun::Full;
  const double top = full ? kTickLong : kTickShort;
  // Continuous, whatever the line: a tick is too short for dashes.
  out.paths.push_back({.role = Role::Legend, .rings = {{{x, 0}, {x, top}}}, .like = Role::Cut});
  PathItem signs{.role = Role::Legend, .rings = {{{x, top}, {number, kLeader - 0.6}}}};
  if (!full) signs.rings.push_back({{x - 1.4, kTickShort}, {x + 1.4, kTickShort}});
  // The end that the number counts from.
  const double way = tick.fromRight ? 1 : -1;
  constexpr double kArrow = 2.6;
  const double y = 1.6;
  signs.rings.push_back({{x + way * 0.5, y}, {x + way * kArrow, y}});
  signs.rings.push_back({{x + way * (kArrow - 0.8), y + 0.6},
                         {x + way * kArrow, y},
                         {x + way * (kArrow - 0.8), y - 0.6}});
  out.paths.push_back(std::move(signs));
}

Drawing drawStrip(const StripPart& part, const Wording& wording) {
  const double width = part.to - part.from;
  std::vector<const StripTick*> ticks;
  std::vector<double> places;
  double numbers = 12;
  for (const StripTick& tick : part.strip.ticks) {
    if (tick.at < part.from - kTickSlack || tick.at > part.to + kTickSlack) continue;
    ticks.push_back(&tick);
    places.push_back(tick.at - part.from);
    numbers = std::max(numbers, textWidth(numberWords(tick, wording), kNumber));
  }
  constexpr double kApart = 1.25 * kNumber;
  std::vector<double> spread = spreadApart(places, kApart);
  for (double& place : spread) place = std::clamp(place, 3.0, std::max(3.0, width - 2.0));
  Drawing out{width, kLeader + numbers + 6.5, {}, {}};
  const bool starts = part.number == 0;
  const bool ends = part.number + 1 == part.parts;
  out.paths.push_back({.role = Role::Cut,
                       .rings = {{{0, 0}, {width, 0}, {width, out.height}, {0, out.height}}},
                       .closed = true});
  for (std::size_t i = 0; i < ticks.size(); ++i) {
    addTick(out, *ticks[i], places[i], spread[i]);
    out.texts.push_back({.role = Role::Legend,
                         .label = Label::plain(numberWords(*ticks[i], wording)),
                         .at = {spread[i] + 0.36 * kNumber, kLeader},
                         .height = kNumber,
                         .turnDegrees = 90,
                         .bold = true});
  }
  out.texts.push_back({.role = Role::Legend,
                       .label = Label::plain(stripTitle(part, wording, width - 4)),
                       .at = {2, out.height - 3.8},
                       .height = kStripTitle,
                       .bold = true});
  // Two lines along an end that is butted to the next part.
  PathItem butts{.role = Role::Legend, .rings = {}};
  for (const double inside : {0.8, 1.6}) {
    if (!starts) butts.rings.push_back({{inside, 0}, {inside, kTickShort}});
    if (!ends) butts.rings.push_back({{width - inside, 0}, {width - inside, kTickShort}});
  }
  if (!butts.rings.empty()) out.paths.push_back(std::move(butts));
  return out;
}

class StripWriter {
 public:
  StripWriter(const std::vector<TemplatePiece>& pieces, const PageSetup& setup,
              const TemplateText& text, const Wording& wording)
      : pieces_(pieces), setup_(setup), text_(text), wording_(wording) {}

  std::vector<Drawing> write() {
    std::optional<Packed> best;
    for (const bool sideways : {true, false}) {
      if (sideways ? setup_.orientation == Orientation::Upright
                   : setup_.orientation == Orientation::Sideways)
        continue;
      std::optional<Packed> packed = pack(sideways);
      if (packed && (!best || packed->pages() < best->pages())) best = std::move(packed);
    }
    if (!best) return {};
    return draw(*best);
  }

 private:
  struct Packed {
    PageFrame frame;
    std::vector<Drawing> strips;
    PartPacking packing;

    [[nodiscard]] std::size_t pages() const { return std::max<std::size_t>(1, packing.newPages); }
  };

  [[nodiscard]] std::vector<StripPart> partsFor(double longest) const {
    std::vector<StripPart> out;
    for (const TemplatePiece& piece : pieces_)
      for (const ScoreStrip& strip :
           scoreStrips(*piece.scorePlan, piece.flat->width, piece.flat->height)) {
        std::vector<double> ends = stripJoints(strip, longest);
        ends.push_back(strip.length);
        double from = 0;
        for (std::size_t i = 0; i < ends.size(); ++i) {
          out.push_back({&piece, strip, from, ends[i], i, ends.size()});
          from = ends[i];
        }
      }
    return out;
  }

  [[nodiscard]] std::vector<NoteLine> hints() const {
    constexpr double kHintType = 2.1;
    std::vector<NoteLine> lines{{wording_({"check-bar-hint", {}, {}}), kHintType, 0, 0},
                                {wording_({"strip-hint", {}, {}}), kHintType, 0, 0}};
    if (std::ranges::any_of(pieces_, [](const TemplatePiece& piece) {
          return !piece.scorePlan->freeScores.empty();
        }))
      lines.push_back({wording_({"strip-free", {}, {}}), kHintType, 0, 0});
    return lines;
  }

  [[nodiscard]] std::optional<Packed> pack(bool sideways) const {
    constexpr double kFoot = 24;
    const PageFrame frame = pageFrame(setup_, sideways, {kBarRoom, kHeadRoom, kFoot});
    if (frame.cell.width() <= 0 || frame.cell.height() <= 0) return std::nullopt;
    Packed out{frame, {}, {}};
    std::vector<PartSize> sizes;
    for (const StripPart& part : partsFor(frame.cell.width())) {
      out.strips.push_back(drawStrip(part, wording_));
      sizes.push_back({out.strips.back().width, out.strips.back().height});
    }
    constexpr double kGap = 6;
    std::optional<PartPacking> packing = packParts(sizes, {}, frame.cell, kGap);
    if (!packing) return std::nullopt;
    out.packing = std::move(*packing);
    return out;
  }

  [[nodiscard]] std::vector<Drawing> draw(const Packed& packed) const {
    std::vector<Drawing> pages;
    for (std::size_t page = 0; page < packed.pages(); ++page) {
      PageCanvas canvas(packed.frame);
      for (std::size_t i = 0; i < packed.strips.size(); ++i) {
        const PackedPart& at = packed.packing.parts[i];
        if (at.page != page) continue;
        Drawing strip = at.turned ? turnedLeft(packed.strips[i]) : packed.strips[i];
        canvas.put(moved(std::move(strip), at.box.low));
        canvas.block(at.box);
      }
      furnish(canvas, page + 1, packed.pages());
      if (packed.strips.empty()) {
        Drawing none = noteBlock({{wording_({"score-empty", {}, {}}), 3.4, 0, 0}}, 100, wording_);
        canvas.place(none, canvas.frame().cell.high - Point{100, 20});
      }
      pages.push_back(canvas.take());
    }
    return pages;
  }

  void furnish(PageCanvas& canvas, std::size_t number, std::size_t total) const {
    PageHead head;
    const std::string strips = wording_({"strips-title", {}, {}});
    head.title = text_.title.empty() ? strips : text_.title + " \u00B7 " + strips;
    head.details = text_.readings;
    for (const std::string& more : {text_.date, text_.corrected})
      if (!more.empty()) head.details += (head.details.empty() ? "" : " \u00B7 ") + more;
    head.page = wording_({"page-of", {std::to_string(number), std::to_string(total)}, {}});
    head.notes = {wording_({"print-scale", {}, {}})};
    canvas.placeHead(head);
    canvas.placeBars();
    const Bounds& all = canvas.frame().printable;
    for (const double width : {all.width() - 122, 110.0, 70.0, 50.0}) {
      if (width < 40) continue;
      if (canvas.place(noteBlock(hints(), width, wording_), all.low + Point{120, 0})) break;
    }
  }

  const std::vector<TemplatePiece>& pieces_;
  const PageSetup& setup_;
  const TemplateText& text_;
  const Wording& wording_;
};

}  // namespace

Result<std::vector<Drawing>> drawScoreStrips(const std::vector<TemplatePiece>& pieces,
                                             const PageSetup& setup, const TemplateText& text,
                                             const Wording& wording) {
  const Result<PageSetup> checked = checkedSetup(setup);
  if (!checked) return checked.problem();
  std::vector<Drawing> pages = StripWriter(pieces, setup, text, wording).write();
  if (pages.empty()) {
    return Problem{ProblemCode::MarginTooLarge,
                   "margin",
                   {Length::mm(setup.margin), std::string(setup.paper.name)}};
  }
  return pages;
}

}  // namespace creasewright
