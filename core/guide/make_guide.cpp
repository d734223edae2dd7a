#include "guide/make_guide.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

#include "document/halves.h"
#include "document/with_punches.h"
#include "folding/cavity/outside.h"
#include "guide/cautions.h"
#include "guide/extra_steps.h"
#include "guide/fold_steps.h"
#include "guide/joined_folds.h"
#include "guide/piece_steps.h"
#include "guide/putting_in.h"
#include "guide/sheet_steps.h"
#include "styles/parameter_text.h"

namespace creasewright {
namespace {

GuidePiece describe(const BuiltPiece& built, double caliper) {
  GuidePiece piece{
      built.name, built.count, Length::mm(built.flat.width), Length::mm(built.flat.height), {},
      {},         {}};
  // What is not folded stands in another box and has no outside of its own.
  if (built.role || !built.cavity || built.net.creases.empty()) return piece;
  const CavitySize size = measureOutside(built.net, built.folded, *built.cavity, caliper);
  piece.outsideLength = Length::mm(size.length);
  piece.outsideWidth = Length::mm(size.width);
  piece.outsideHeight = Length::mm(size.height);
  return piece;
}

Supply& supplyOf(SupplyKind kind, Length width, Guide& guide) {
  for (Supply& known : guide.supplies)
    if (known.kind == kind && known.width == width) return known;
  return guide.supplies.emplace_back(Supply{kind, 0, -1, width, {}, {}, -1});
}

void addSupplies(const PiecePlans& plans, Guide& guide) {
  const GuidePiece& piece = guide.pieces[static_cast<std::size_t>(plans.index)];
  const Length rim = isPunched(plans.built) ? kPunchMargin * 2 : Length();
  guide.supplies.push_back(
      {SupplyKind::Card, piece.count, plans.index, piece.width + rim, piece.height + rim, {}, -1});
  for (const TapeUse& use : plans.adhesive.tapes) {
    Supply& tape = supplyOf(SupplyKind::Tape, use.width, guide);
    tape.quantity += use.strips * piece.count;
    tape.length += use.length * piece.count;
  }
  if (const std::optional<ExtraRole>& role = plans.built.role; role && role->layer)
    if (const LayerFacts& layer = *role->layer; layer.hold == LayerHold::Foam)
      supplyOf(SupplyKind::FoamDots, layer.foam, guide).quantity += layer.foamDots * piece.count;
  if (plans.adhesive.liquidSpots > 0)
    supplyOf(SupplyKind::LiquidGlue, Length(), guide).quantity +=
        plans.adhesive.liquidSpots * piece.count;
}

bool isCut(StepCode code) {
  constexpr std::array kCuts{StepCode::CutOpenings, StepCode::CutSlits,  StepCode::CutWaste,
                             StepCode::CutMitres,   StepCode::CutTapers, StepCode::CutNotches,
                             StepCode::CutCurves};
  return std::ranges::find(kCuts, code) != kCuts.end();
}

/// Tools and cautions as the steps need them.
void addCare(const BuiltDesign& built, Guide& guide) {
  const auto has = [&guide](auto test) { return std::ranges::any_of(guide.steps, test); };
  const auto code = [](StepCode wanted) {
    return [wanted](const Step& step) { return step.code == wanted; };
  };
  const bool boards = has(code(StepCode::ScoreSides)) || has(code(StepCode::ShortScores));
  guide.tools.push_back(ToolCode::Trimmer);
  if (std::ranges::any_of(built.pieces, isPunched)) guide.tools.push_back(ToolCode::Punch);
  if (boards) guide.tools.push_back(ToolCode::ScoringBoard);
  if (has(code(StepCode::ScoreFreely))) guide.tools.push_back(ToolCode::Stylus);
  if (has(code(StepCode::FoldAndBurnish))) guide.tools.push_back(ToolCode::BoneFolder);
  if (has([](const Step& step) { return isCut(step.code); }))
    for (const ToolCode tool : {ToolCode::Knife, ToolCode::CuttingMat, ToolCode::SafetyRuler})
      guide.tools.push_back(tool);
  guide.cautions = cautionsFor(built, guide);
}

ScorePlan scoresFor(Hand hand, const BuiltDesign& built, const BuiltPiece& piece) {
  if (hand == Hand::Right) return piece.scorePlan;
  return planScoresFor(hand, piece.net, piece.flat, built.design.grid, built.design.board);
}

/// Of the plans only the folds, without the bends that are looked for on their way.
PiecePlans foldsAlone(const BuiltDesign& built, std::size_t index) {
  const BuiltPiece& piece = built.pieces[index];
  return {static_cast<int>(index), piece, {}, {}, planFolds(piece.net, piece.flat), {}};
}

/// Whether a step belongs to what is done with scored and cut pieces.
bool isMaking(StepCode code) {
  constexpr std::array kMaking{StepCode::FoldStage, StepCode::GluePieces, StepCode::PutTogether,
                               StepCode::PutIn, StepCode::AddExtra};
  return std::ranges::find(kMaking, code) != kMaking.end();
}

PiecePlans plansOf(const BuiltDesign& built, std::size_t index, Hand hand) {
  const BuiltPiece& piece = built.pieces[index];
  const Net& net = piece.net;
  PiecePlans plans{static_cast<int>(index),
                   piece,
                   scoresFor(hand, built, piece),
                   planCuts(net, piece.flat, piece.waste),
                   foldPlan(piece),
                   {}};
  plans.adhesive = planAdhesive(net, piece.gluePlan, plans.folds, built.design.grid);
  return plans;
}

/// Writes the steps of one design in the order of doing.
class GuideWriter {
 public:
  /// `planned`: with the work at the sheets, what is needed, and folds that go together in one
  /// step.
  GuideWriter(const BuiltDesign& built, Hand hand, bool planned)
      : built_(built), planned_(planned) {
    guide_.hand = hand;
    guide_.title = built.design.title;
    guide_.styleId = built.design.styleId;
    guide_.level = built.style->traits.difficulty;
    if (planned)
      for (const BuiltPiece& piece : built.pieces)
        guide_.pieces.push_back(describe(asWhole(built, piece), piece.card.caliper.mm()));
    while (own_ < built.pieces.size() && !built.pieces[own_].role) ++own_;
    findHolder();
  }

  Guide write() {
    addAll();
    showWhatIsThere();
    for (const RibbonNeed& ribbon : built_.ribbons) addRibbonSupplies(ribbon);
    trimTogether(guide_.steps);
    addCare(built_, guide_);
    for (Step& step : guide_.steps) step.figure.hand = guide_.hand;
    return std::move(guide_);
  }

  std::vector<Step> making() {
    addAll();
    std::erase_if(guide_.steps, [](const Step& step) { return !isMaking(step.code); });
    return std::move(guide_.steps);
  }

 private:
  void addAll() {
    addOwnPieces();
    finish();
    for (const int extra : extrasPlaced(built_, Placing::Round)) addLater(extra);
    addRibbons();
    for (const int extra : extrasPlaced(built_, Placing::Hanging)) addLater(extra);
  }

  [[nodiscard]] const BuiltPiece& piece(int index) const {
    return built_.pieces[static_cast<std::size_t>(index)];
  }

  /// A piece is planned once, however often its steps are asked for.
  const PiecePlans& plansFor(int index) {
    const auto known = plans_.find(index);
    if (known != plans_.end()) return known->second;
    const auto at = static_cast<std::size_t>(index);
    const auto made =
        plans_.emplace(index, planned_ ? plansOf(built_, at, guide_.hand) : foldsAlone(built_, at));
    return made.first->second;
  }

  /// The ribbon, and the tape by which its ends are held.
  void addRibbonSupplies(const RibbonNeed& ribbon) {
    guide_.supplies.push_back(
        {SupplyKind::Ribbon, 1, -1, ribbon.width, {}, ribbon.length, ribbon.extra});
    if (!ribbon.pull || !ribbon.pull->taped) return;
    const bool inches = unitOf(built_.design.grid) == Unit::Inch;
    const Length width = inches ? Length::inches(3, 8) : mm(9);
    const auto tape = std::ranges::find(guide_.supplies, SupplyKind::Tape, &Supply::kind);
    Supply& rolled =
        tape != guide_.supplies.end() ? *tape : supplyOf(SupplyKind::Tape, width, guide_);
    rolled.quantity += 2;
    rolled.length += Length::mm(2 * ribbon.pull->end);
  }

  void findHolder() {
    const auto holder = productHolder(built_);
    if (!holder) return;
    putting_ = holder->putting;
    holder_ = holder->piece;
  }

  /// Adds a step; where its picture shows the sheet's other face, the sheet is turned before.
  void push(Step step) {
    if (step.figure.kind != FigureKind::Finished && step.code != StepCode::PutIn) {
      const bool turned = step.figure.turned;
      if (step.code != StepCode::TrimBlank) step.turn = turned_.contains(step.piece) != turned;
      if (turned)
        turned_.insert(step.piece);
      else
        turned_.erase(step.piece);
    }
    guide_.steps.push_back(std::move(step));
  }

  void push(std::vector<Step> steps) {
    for (Step& step : steps) push(std::move(step));
  }

  /// A piece of an extra from the stock sheet to its finished form, once.
  void make(int index) {
    if (!made_.insert(index).second) return;
    const PiecePlans& plans = plansFor(index);
    addSheet(plans);
    addFlatExtras(index);
    push(adhesiveSteps(plans));
    push(joined(plans.built.net, foldSteps(plans)));
  }

  void addSheet(const PiecePlans& plans) {
    if (!planned_) return;
    addSupplies(plans, guide_);
    if (!isPunched(plans.built)) push(sheetSteps(plans));
  }

  [[nodiscard]] std::vector<Step> joined(const Net& net, std::vector<Step> folds) const {
    return planned_ ? joinedFolds(net, std::move(folds)) : folds;
  }

  /// What is threaded through a piece or glued onto it while it lies flat.
  void addFlatExtras(int onto) {
    for (const int pull : pullsThrough(built_, onto)) push(pullStep(built_, pull));
    for (const int extra : flatExtrasOn(built_, onto)) {
      Step step = flatExtraStep(built_, extra, onto);
      for (const int part : step.pieces) make(part);
      push(std::move(step));
    }
  }

  /// Each own piece in its turn. One that is glued onto a later one waits flat for it: first they
  /// are glued, then all of them fold, the uppermost first.
  void addOwnPieces() {
    std::vector<int> flat;
    for (int index = 0; index < static_cast<int>(own_); ++index) {
      addOwnSheet(index);
      for (const int upper : flat)
        if (gluedOnto(built_, upper) == index) push(gluePiecesStep(built_, upper, index));
      flat.push_back(index);
      if (gluedOnto(built_, index)) continue;
      if (flat.size() == 2 && areHalves(piece(flat[0]), piece(flat[1])))
        foldHalves(flat[0], flat[1]);
      else
        for (const int waiting : flat) foldOwnPiece(waiting);
      flat.clear();
    }
  }

  void addOwnSheet(int index) {
    const PiecePlans& plans = plansFor(index);
    addSheet(plans);
    addFlatExtras(index);
    if (index == holder_)
      for (const int extra : extrasPlaced(built_, Placing::Inside))
        for (const int part : piecesOf(built_, extra)) make(part);
    push(adhesiveSteps(plans));
  }

  [[nodiscard]] std::vector<Step> foldsOf(int index) { return foldSteps(plansFor(index)); }

  /// What gets flaps ready is told with what closes over them, if nothing is put in between.
  void foldOwnPiece(int index) {
    const Net& net = piece(index).net;
    std::vector<Step> before = foldsOf(index);
    std::vector<Step> after;
    if (putsInto(index)) {
      const auto first = std::ranges::find_if(
          before, [&](const Step& step) { return stageBefore(step) >= putting_->after; });
      after.assign(std::move_iterator(first), std::move_iterator(before.end()));
      before.erase(first, before.end());
    }
    std::vector<Step> folds = joined(net, std::move(before));
    std::ranges::move(joined(net, std::move(after)), std::back_inserter(folds));
    fold(index, std::move(folds));
  }

  /// The halves of one blank are folded together, stage by stage.
  void foldHalves(int half, int other) {
    std::vector<Step> folds = foldsOf(half);
    std::ranges::move(foldsOf(other), std::back_inserter(folds));
    std::ranges::stable_sort(folds, {}, [](const Step& step) { return step.figure.progressFrom; });
    fold(half, std::move(folds));
  }

  /// Whether the product goes into the piece while it is folded.
  [[nodiscard]] bool putsInto(int index) const {
    return index == holder_ && (own_ == 1 || putting_->after < stages());
  }

  void fold(int index, std::vector<Step> folds) {
    bool done = !putsInto(index);
    for (Step& step : folds) {
      if (!done && stageBefore(step) >= putting_->after) {
        putIn(&step);
        done = true;
      }
      push(std::move(step));
    }
    if (!done) putIn(nullptr);
  }

  [[nodiscard]] int stages() const { return piece(holder_).net.stageCount(); }
  [[nodiscard]] int stageBefore(const Step& fold) const {
    return static_cast<int>(std::lround(fold.figure.progressFrom * stages()));
  }

  /// What goes under and round the product, and the product itself; `next` closes over it.
  void putIn(Step* next) {
    for (const int extra : extrasPlaced(built_, Placing::Inside)) {
      Step step = extraStep(built_, extra);
      step.piece = holder_;
      push(std::move(step));
    }
    if (next != nullptr && !putting_->holds) {
      next->putIn = true;
      return;
    }
    Step step;
    step.code = StepCode::PutIn;
    step.piece = holder_;
    step.through = putting_->through;
    step.onInsert = hasInsert();
    step.figure.kind = FigureKind::Folded;
    const int count = std::max(1, stages());
    step.figure.progressFrom = step.figure.progress =
        stages() == 0 ? 1 : static_cast<double>(putting_->after) / count;
    step.figure.way = {putting_->from, putting_->to};
    push(std::move(step));
  }

  [[nodiscard]] bool hasInsert() const {
    return std::ranges::any_of(
        extrasPlaced(built_, Placing::Inside),
        [this](int extra) { return kindOf(built_, extra).carriesProduct; });
  }

  /// After the box's own pieces: they meet, and the whole is measured.
  void finish() {
    for (const GuidePiece& piece : guide_.pieces) {
      guide_.finishedLength = std::max(guide_.finishedLength, piece.outsideLength);
      guide_.finishedWidth = std::max(guide_.finishedWidth, piece.outsideWidth);
      guide_.finishedHeight = std::max(guide_.finishedHeight, piece.outsideHeight);
    }
    const bool open = holder_ >= 0 && own_ > 1 && putting_->after >= stages();
    if (open && stages() > 0) putIn(nullptr);
    std::vector<int> apart;
    for (int i = 0; i < static_cast<int>(own_); ++i)
      if (!gluedOnto(built_, i)) apart.push_back(i);
    if (apart.size() > 1) {
      Step step;
      step.code = StepCode::PutTogether;
      step.pieces = std::move(apart);
      step.figure.kind = FigureKind::Finished;
      step.figure.progressFrom = step.figure.progress = 1;
      push(std::move(step));
    }
    measure();
    if (open && stages() == 0) putIn(nullptr);
  }

  void measure() {
    if (guide_.finishedLength == Length()) return;
    const auto last = std::find_if(guide_.steps.rbegin(), guide_.steps.rend(), [](const Step& s) {
      return s.code != StepCode::PutIn && s.code != StepCode::AddExtra;
    });
    if (last == guide_.steps.rend()) return;
    CheckLine size;
    size.code = CheckCode::FinishedSize;
    size.a = guide_.finishedLength;
    size.b = guide_.finishedWidth;
    size.c = guide_.finishedHeight;
    last->checks.push_back(size);
  }

  /// What goes round the closed box or hangs on it: made, then put there.
  void addLater(int extra) {
    const Step meeting = extraStep(built_, extra);
    for (const int part : meeting.pieces) make(part);
    push(meeting);
  }

  /// What goes round before the bows that are glued on.
  void addRibbons() {
    for (const bool bows : {false, true})
      for (const RibbonNeed& ribbon : built_.ribbons)
        if (!ribbon.pull && ribbon.shape.has_value() == bows &&
            piecesOf(built_, ribbon.extra).empty())
          push(extraStep(built_, ribbon.extra));
  }

  /// Each picture of the whole leaves out the extras of later steps.
  void showWhatIsThere() {
    std::set<int> later;
    for (auto step = guide_.steps.rbegin(); step != guide_.steps.rend(); ++step) {
      step->figure.without.assign(later.begin(), later.end());
      if (step->code == StepCode::AddExtra) later.insert(step->extra);
    }
  }

  const BuiltDesign& built_;
  bool planned_;
  Guide guide_;
  std::size_t own_ = 0;
  int holder_ = -1;
  std::optional<PuttingIn> putting_;
  std::map<int, PiecePlans> plans_;
  std::set<int> made_;
  std::set<int> turned_;  ///< pieces that lie with their outside up
};

}  // namespace

Guide makeGuide(const BuiltDesign& built, Hand hand) {
  return GuideWriter(built, hand, true).write();
}

std::vector<Step> makingSteps(const BuiltDesign& built) {
  return GuideWriter(built, Hand::Right, false).making();
}

}  // namespace creasewright
