#include "papers/guide/talk_sheet.h"

#include <algorithm>

#include "bridge/label_text.h"
#include "drawing/arrange.h"
#include "guide/guide_time.h"
#include "guide/make_guide.h"
#include "output/page_flow.h"
#include "pages/figure_room.h"
#include "pages/guide_figure.h"
#include "pages/score_map.h"
#include "papers/guide/guide_cells.h"

namespace creasewright {

namespace {

constexpr double kTalkMargin = 12;          // mm
constexpr double kMinuteColumn = 15;        // mm: the column of minutes
constexpr FigureRoom kTalkPicture{54, 30};  // mm
constexpr double kTalkGap = 3;              // mm
constexpr double kRowGap = 3;               // mm above a row

QString clock(int minutes) {
  return QStringLiteral("%1:%2").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

class TalkSheet {
 public:
  TalkSheet(const BuiltDesign& built, GuideUnits units, const Paper& paper, const GuideForm& form)
      : built_(built),
        guide_(makeGuide(built, form.hand)),
        words_(wordGuide(guide_, built, units)),
        wording_(wordingIn(firstUnit(units))),
        type_(typeOf(form.size)),
        enlarged_(enlargement(form.size)),
        flow_(smaller(paper, enlarged_), kTalkMargin / enlarged_) {}

  std::vector<Drawing> write(const GuideNote& note) {
    const std::vector<int> starts = startMinutes(guide_);
    put(head());
    put(row(0, finished(), GuideTr::tr("Show the finished piece"),
            {GuideTr::tr("Let it go round. Say what goes in, and for whom it is made."),
             GuideTr::tr("Show how blades are handled before anybody takes one.")},
            {}));
    for (std::size_t i = 0; i < guide_.steps.size(); ++i) {
      const StepWords& step = words_.steps[i];
      put(row(kWelcomeMinutes + starts[i], figure(guide_.steps[i]),
              QStringLiteral("%1. %2").arg(i + 1).arg(step.title), step.sentences, step.checks));
    }
    put(row(kWelcomeMinutes + starts.back(), {}, GuideTr::tr("Tidy up"),
            {GuideTr::tr("Count the blades. Let everyone show what they made.")}, {}));
    if (!note.lines.isEmpty())
      put(ruledAbove(noteBlock(note, flow_.columnWidth(), type_), flow_.columnWidth()));
    std::vector<Drawing> pages = flow_.take(words_.title);
    for (Drawing& page : pages) {
      const FigureRoom whole{page.width * enlarged_, page.height * enlarged_};
      page = fittedInto(std::move(page), whole);
    }
    return pages;
  }

 private:
  /// Scores as a map, whose readings are large enough to shrink.
  [[nodiscard]] Drawing figure(const Step& step) const {
    if (step.settings.empty() && step.freeScores.empty())
      return StepFigure(built_, step).withoutLetters(kTalkPicture);
    constexpr FigureRoom kMapRoom{96, 72};
    const BuiltPiece& piece = built_.pieces.at(static_cast<std::size_t>(step.piece));
    return fittedInto(scoreMap(piece, {&step}, kMapRoom, wording_), kTalkPicture);
  }

  [[nodiscard]] Drawing finished() const { return finishedFigure(built_, kTalkPicture); }

  void put(const Drawing& block) {
    const double room = flow_.columnHeight();
    flow_.put(block.height > room ? fittedInto(block, {flow_.columnWidth(), room}) : block);
  }

  [[nodiscard]] Drawing head() const {
    TextBlock block(flow_.columnWidth());
    const TypeStyle text{type_.step, false, type_.lead};
    const TypeStyle heading{
        .height = type_.heading, .bold = true, .lead = type_.lead, .like = Role::Valley};
    block.add(GuideTr::tr("%1: talk sheet").arg(words_.title),
              TypeStyle{kTitleType, true, type_.lead});
    block.add(GuideTr::tr("%1 of talk and work")
                  .arg(clock(kWelcomeMinutes + startMinutes(guide_).back() + kWelcomeMinutes)),
              text);
    block.space(3);
    block.add(GuideTr::tr("Have ready"), heading);
    block.addList(
        {GuideTr::tr("One finished piece with its product."),
         GuideTr::tr("One set cut and scored, not folded: to show the folds."),
         GuideTr::tr(
             "One set with its adhesive on, folded and opened again: to show how it closes.")},
        QStringLiteral("•"), text);
    block.addList(words_.supplies, QStringLiteral("•"), text);
    block.add(words_.tools.join(QStringLiteral(" · ")), text);
    block.space(2);
    block.add(cautionsHeading(), heading);
    block.add(words_.cautions.join(QLatin1Char(' ')), TypeStyle{type_.small, false, type_.lead});
    return block.take();
  }

  /// Minute, picture, what is said and what is looked for.
  [[nodiscard]] Drawing row(int minute, const Drawing& picture, const QString& title,
                            const QStringList& says, const QStringList& checks) const {
    const double at = kMinuteColumn + kTalkPicture.width + 2 * kTalkGap;
    TextBlock words(flow_.columnWidth() - at);
    words.add(title, TypeStyle{type_.title, true, type_.lead});
    for (const QString& sentence : says)
      words.add(sentence, TypeStyle{type_.step, false, type_.lead});
    words.addList(checks, QStringLiteral("✓"),
                  TypeStyle{.height = type_.step, .lead = type_.lead, .like = Role::Valley});
    TextBlock time(kMinuteColumn);
    time.add(clock(minute), TypeStyle{type_.title, true, type_.lead});
    const Drawing left = time.take();
    const Drawing right = words.take();
    Drawing out{flow_.columnWidth(), std::max({left.height, right.height, picture.height}), {}, {}};
    append(out, moved(left, {0, out.height - left.height}));
    append(out, moved(picture, {kMinuteColumn + kTalkGap + (kTalkPicture.width - picture.width) / 2,
                                out.height - picture.height}));
    append(out, moved(right, {at, out.height - right.height}));
    out.height += kRowGap;
    out.paths.push_back(
        {.role = Role::Positions, .rings = {{{0, out.height}, {out.width, out.height}}}});
    return out;
  }

  static constexpr int kWelcomeMinutes = 5;

  const BuiltDesign& built_;
  Guide guide_;
  GuideWords words_;
  Wording wording_;
  GuideType type_;
  double enlarged_;
  PageFlow flow_;
};

}  // namespace

std::vector<Drawing> talkSheet(const BuiltDesign& built, GuideUnits units, const Paper& paper,
                               const GuideForm& form, const GuideNote& note) {
  return TalkSheet(built, units, paper, form).write(note);
}

}  // namespace creasewright
