#include "pages/template_pages.h"

#include <algorithm>
#include <optional>

#include "drawing/arrange.h"
#include "drawing/in_black.h"
#include "pages/calibration_page.h"
#include "pages/cased_lines.h"
#include "pages/notes_room.h"
#include "pages/print_correction.h"
#include "pages/printed_backs.h"
#include "pages/printed_part.h"
#include "pages/score_text.h"
#include "pages/strip_pages.h"
#include "pages/template_page.h"

namespace creasewright {
namespace {

class TemplateWriter {
 public:
  TemplateWriter(const std::vector<TemplatePiece>& pieces, const PageSetup& setup,
                 const TemplateText& text, const Wording& wording, TemplateKind kind,
                 const PrintedForm& printed)
      : setup_(setup), wording_(wording), parts_{&pieces, {}, text, kind, printed} {
    const bool prints = kind == TemplateKind::Printed;
    parts_.outsideUp = prints || kind == TemplateKind::Mirrored;
    for (const TemplatePiece& piece : pieces)
      if (!prints) parts_.sheets.push_back(partSheet(piece, kind));
  }

  Result<std::vector<Drawing>> write() {
    const Result<bool> laid = parts_.kind == TemplateKind::Printed ? layOutPrinted() : layOut();
    if (!laid) return laid.problem();
    if (parts_.kind == TemplateKind::CutAndScore || parts_.kind == TemplateKind::Coloured ||
        parts_.kind == TemplateKind::Mirrored)
      for (std::size_t part = 0; part < parts_.sheets.size(); ++part) putNotes(part);
    if (parts_.kind == TemplateKind::Printed && parts_.printed.sides != PrintedSides::Face)
      addBacks();
    std::vector<Drawing> drawings;
    for (TemplatePage& page : pages_) drawings.push_back(page.canvas.take());
    return drawings;
  }

 private:
  enum class Furnished { Not, Crowded, Well };

  Result<bool> layOut() {
    std::vector<TiledSheet> sheets;
    for (const PartSheet& part : parts_.sheets) sheets.push_back(part.sheet);
    Result<std::vector<TemplateLayout>> layouts =
        layOutTemplate(sheets, setup_, footRoom(parts_, setup_, wording_));
    if (!layouts) return layouts.problem();
    layouts_ = std::move(layouts).value();
    choose(layouts_);
    return true;
  }

  /// A layout of printed parts with its pages.
  struct Attempt {
    std::vector<PartSheet> sheets;
    std::vector<double> marksRoom;
    std::vector<TemplateLayout> layouts;
    const TemplateLayout* layout = nullptr;
    std::vector<TemplatePage> pages;
  };
  Attempt keepAttempt() {
    return {parts_.sheets, marksRoom_, std::move(layouts_), layout_, std::move(pages_)};
  }
  void take(Attempt attempt) {
    parts_.sheets = std::move(attempt.sheets);
    marksRoom_ = std::move(attempt.marksRoom);
    layouts_ = std::move(attempt.layouts);
    layout_ = attempt.layout;
    pages_ = std::move(attempt.pages);
  }

  /// Which parts keep room for their corner marks; of others the ends are cut off at the margin.
  enum class Marked { All, Whole, None };

  /// With room for the marks of all parts, or of those that lie whole on a page, where that takes
  /// no more pages than the bleed alone.
  Result<bool> layOutPrinted() {
    std::vector<PartSheet> printed;
    for (const TemplatePiece& piece : *parts_.pieces)
      printed.push_back(printedPart(piece, formFor(piece, setup_, parts_.printed), false));
    std::optional<Attempt> best;
    std::optional<Problem> why;
    for (const Marked marked : {Marked::All, Marked::None, Marked::Whole}) {
      keepRoom(printed, marked);
      const Result<bool> done = layOut();
      if (!done) {
        if (!why || marked == Marked::None) why = done.problem();
        continue;
      }
      const std::size_t fewest = best ? best->pages.size() : 0;
      // Between all and none there is something to look for only where none takes fewer pages.
      const bool asFew = marked == Marked::None && fewest == pages_.size();
      const bool better =
          !best || pages_.size() < fewest || (marked == Marked::Whole && pages_.size() == fewest);
      if (better) best = keepAttempt();
      if (asFew || best->pages.size() == 1) break;
    }
    if (!best) return *why;
    take(std::move(*best));
    return true;
  }

  void keepRoom(const std::vector<PartSheet>& printed, Marked marked) {
    parts_.sheets.clear();
    marksRoom_.clear();
    for (std::size_t part = 0; part < printed.size(); ++part) {
      const TemplatePiece& piece = (*parts_.pieces)[part];
      const PrintedForm form = formFor(piece, setup_, parts_.printed);
      const std::optional<double> whole = marksRoomFor(piece, setup_, form);
      const bool room = marked == Marked::All || (marked == Marked::Whole && whole);
      marksRoom_.push_back(room ? whole.value_or(marksReach(form.bleed)) : 0);
      parts_.sheets.push_back(bordered(printed[part], marksRoom_.back()));
    }
  }

  /// The first layout on whose pages all finds room beside the panels; where none of so few pages
  /// has that, the first on which only pages with a single part have something on its panels.
  void choose(const std::vector<TemplateLayout>& layouts) {
    std::optional<std::size_t> crowded;
    for (std::size_t i = 0; i < layouts.size(); ++i) {
      if (crowded && layouts[i].pages.size() > layouts[*crowded].pages.size()) break;
      const Furnished how = furnish(layouts[i], false);
      if (how == Furnished::Well) return;
      if (how == Furnished::Crowded && !crowded) crowded = i;
    }
    if (!crowded)
      for (std::size_t i = 0; i < layouts.size(); ++i)
        if (layouts[i].roomiest) crowded = i;
    furnish(layouts[crowded.value_or(0)], true);
  }

  /// Stops at the first page that does not serve, unless the layout is wanted as it is.
  Furnished furnish(const TemplateLayout& layout, bool wanted) {
    layout_ = &layout;
    pages_.clear();
    const std::size_t total = layout.pages.size();
    bool complete = true;
    bool crowded = false;
    bool legend = false;
    for (const LaidPage& page : layout.pages) {
      pages_.push_back(furnishedPage(parts_, layout, page, pages_.size() + 1, total, wording_));
      const TemplatePage& made = pages_.back();
      complete = complete && made.complete && !(made.crowded && page.parts.size() > 1);
      crowded = crowded || made.crowded;
      legend = legend || made.legend;
      if (!complete && !wanted) return Furnished::Not;
    }
    if (!complete || !legend) return Furnished::Not;
    return crowded ? Furnished::Crowded : Furnished::Well;
  }

  [[nodiscard]] PartSheet backOf(std::size_t part) const {
    const TemplatePiece& piece = (*parts_.pieces)[part];
    return backPart(piece, formFor(piece, setup_, parts_.printed), marksRoom_[part],
                    isTurned(*layout_, part));
  }

  /// The backs of all pages, between their faces or in their place.
  void addBacks() {
    const TemplateLayout behind = turnedOver(*layout_);
    TemplateParts backs = parts_;
    backs.outsideUp = false;
    for (std::size_t i = 0; i < backs.sheets.size(); ++i) backs.sheets[i] = backOf(i);
    const bool both = parts_.printed.sides == PrintedSides::Both;
    const std::size_t total = behind.pages.size() * (both ? 2 : 1);
    std::vector<TemplatePage> pages;
    for (const LaidPage& page : behind.pages) {
      if (both)
        pages.push_back(furnishedPage(parts_, *layout_, layout_->pages[pages.size() / 2],
                                      pages.size() + 1, total, wording_));
      pages.push_back(furnishedPage(backs, behind, page, pages.size() + 1, total, wording_));
    }
    pages_ = std::move(pages);
  }

  /// Settings as sentences on the last page of the part that has room for them.
  void putNotes(std::size_t part) {
    const TemplatePiece& piece = (*parts_.pieces)[part];
    const ScorePlan& scores = *piece.scorePlan;
    // A mat or a label is only cut: there is nothing to note.
    if (piece.extra && scores.setups.empty() && scores.freeScores.empty()) return;
    for (std::size_t page = pages_.size(); page-- > 0;) {
      const std::vector<LaidPart>& laid = layout_->pages[page].parts;
      if (std::ranges::none_of(laid, [&](const LaidPart& each) { return each.part == part; }))
        continue;
      PageCanvas& canvas = pages_[page].canvas;
      const std::optional<Drawing> notes =
          notesInFreeRoom({scoreLines(piece, laid.size() > 1), measureLines(piece)},
                          canvas.drawing(), pages_[page].card, canvas.frame().printable, wording_);
      if (!notes) continue;
      canvas.put(*notes);
      return;
    }
  }

  [[nodiscard]] std::vector<NoteLine> scoreLines(const TemplatePiece& piece, bool named) const {
    std::string heading = wording_({"score-heading", {}, {}});
    if (named) heading = piece.name + " \u00B7 " + heading;
    std::vector<NoteLine> lines{{heading, 4.2, 0, 0}};
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
    if (piece.extra || parts_.text.measures.empty()) return lines;
    lines.push_back({wording_({"measures-heading", {}, {}}), 4.2, 0, 6});
    for (const auto& [title, value] : parts_.text.measures)
      lines.push_back({wording_({"parameter", {title, value}, {}}), 3.4, 0, 0.4});
    return lines;
  }

  const PageSetup& setup_;
  const Wording& wording_;
  TemplateParts parts_;
  std::vector<double> marksRoom_;  ///< mm, of printed parts
  std::vector<TemplateLayout> layouts_;
  const TemplateLayout* layout_ = nullptr;
  std::vector<TemplatePage> pages_;
};

}  // namespace

Result<std::vector<Drawing>> drawTemplate(const std::vector<TemplatePiece>& pieces,
                                          const PageSetup& setup, const TemplateText& text,
                                          const Wording& wording, TemplateKind kind,
                                          const PrintedForm& printed) {
  const PageSetup roomy = withRoomFor(setup.correction, setup);
  const Result<PageSetup> checked = checkedSetup(roomy);
  if (!checked) return checked.problem();
  if (kind == TemplateKind::Calibration)
    return std::vector<Drawing>{calibrationPage(setup, text.unit, wording).page};
  std::vector<TemplatePiece> copies;
  if (kind == TemplateKind::Printed) copies = printedCopies(pieces);
  if (kind == TemplateKind::Printed && copies.empty())
    return Problem{ProblemCode::NothingPrinted, {}, {}};
  Result<std::vector<Drawing>> pages =
      kind == TemplateKind::ScoreStrips
          ? drawScoreStrips(pieces, roomy, text, wording)
          : TemplateWriter(kind == TemplateKind::Printed ? copies : pieces, roomy, text, wording,
                           kind, printed)
                .write();
  const bool asIs = setup.correction == PrintCorrection{};
  if (!pages || (asIs && kind != TemplateKind::Printed)) return pages;
  std::vector<Drawing> out;
  for (Drawing page : *pages) {
    if (kind == TemplateKind::Printed) page = casedLines(std::move(page), wording);
    if (kind == TemplateKind::Printed && printed.black) page = inBlack(std::move(page));
    out.push_back(asIs ? std::move(page) : stretched(page, setup.correction));
  }
  return out;
}

}  // namespace creasewright
