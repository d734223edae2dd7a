#include "guide/make_guide.h"

#include <algorithm>
#include <array>

#include "folding/outside.h"
#include "guide/fold_steps.h"
#include "guide/sheet_steps.h"

namespace creasewright {
namespace {

GuidePiece describe(const BuiltPiece& built, double caliper) {
  GuidePiece piece{built.piece.name,
                   built.piece.count,
                   Length::mm(built.flat.width),
                   Length::mm(built.flat.height),
                   {},
                   {},
                   {}};
  // What is not folded stands in another box and has no outside of its own.
  if (built.role || !built.piece.cavity || built.piece.net.creases.empty()) return piece;
  const CavitySize size =
      measureOutside(built.piece.net, built.folded, *built.piece.cavity, caliper);
  piece.outsideLength = Length::mm(size.length);
  piece.outsideWidth = Length::mm(size.width);
  piece.outsideHeight = Length::mm(size.height);
  return piece;
}

void addSupplies(const PiecePlans& plans, Guide& guide) {
  const GuidePiece& piece = guide.pieces[static_cast<std::size_t>(plans.index)];
  guide.supplies.push_back(
      {SupplyKind::Card, piece.count, plans.index, piece.width, piece.height, {}});
  const auto supply = [&guide](SupplyKind kind, Length width) -> Supply& {
    for (Supply& known : guide.supplies)
      if (known.kind == kind && known.width == width) return known;
    guide.supplies.push_back({kind, 0, -1, width, {}, {}});
    return guide.supplies.back();
  };
  for (const TapeUse& use : plans.adhesive.tapes) {
    Supply& tape = supply(SupplyKind::Tape, use.width);
    tape.quantity += use.strips * piece.count;
    tape.length += use.length * piece.count;
  }
  if (plans.adhesive.liquidSpots > 0)
    supply(SupplyKind::LiquidGlue, Length()).quantity += plans.adhesive.liquidSpots * piece.count;
}

bool isCut(StepCode code) {
  constexpr std::array kCuts{StepCode::CutOpenings, StepCode::CutSlits,  StepCode::CutWaste,
                             StepCode::CutMitres,   StepCode::CutTapers, StepCode::CutNotches,
                             StepCode::CutCurves};
  return std::ranges::find(kCuts, code) != kCuts.end();
}

/// Tools and cautions as the steps need them.
void addCare(Guide& guide) {
  const auto has = [&guide](auto test) { return std::ranges::any_of(guide.steps, test); };
  const auto code = [](StepCode wanted) {
    return [wanted](const Step& step) { return step.code == wanted; };
  };
  const bool boards = has(code(StepCode::ScoreSides)) || has(code(StepCode::ShortScores));
  guide.tools.push_back(ToolCode::Trimmer);
  if (boards) guide.tools.push_back(ToolCode::ScoringBoard);
  if (has(code(StepCode::ScoreFreely))) guide.tools.push_back(ToolCode::Stylus);
  if (has(code(StepCode::FoldAndBurnish))) guide.tools.push_back(ToolCode::BoneFolder);
  if (has([](const Step& step) { return isCut(step.code); })) {
    for (const ToolCode tool : {ToolCode::Knife, ToolCode::CuttingMat, ToolCode::SafetyRuler})
      guide.tools.push_back(tool);
    guide.cautions.push_back(CautionCode::Knife);
  }
  for (const CautionCode caution :
       {CautionCode::FoodContact, CautionCode::SmallParts, CautionCode::Flames})
    guide.cautions.push_back(caution);
}

/// After the box's `own` pieces: they meet, and the whole is measured.
void finish(std::size_t own, Guide& guide) {
  for (const GuidePiece& piece : guide.pieces) {
    guide.finishedLength = std::max(guide.finishedLength, piece.outsideLength);
    guide.finishedWidth = std::max(guide.finishedWidth, piece.outsideWidth);
    guide.finishedHeight = std::max(guide.finishedHeight, piece.outsideHeight);
  }
  if (own > 1) {
    Step step;
    step.code = StepCode::PutTogether;
    for (std::size_t i = 0; i < own; ++i) step.pieces.push_back(static_cast<int>(i));
    step.figure.kind = FigureKind::Finished;
    step.figure.progressFrom = step.figure.progress = 1;
    guide.steps.push_back(std::move(step));
  }
  if (guide.steps.empty() || guide.finishedLength == Length()) return;
  CheckLine size;
  size.code = CheckCode::FinishedSize;
  size.a = guide.finishedLength;
  size.b = guide.finishedWidth;
  size.c = guide.finishedHeight;
  guide.steps.back().checks.push_back(size);
}

PiecePlans plansOf(const BuiltDesign& built, std::size_t index) {
  const BuiltPiece& piece = built.pieces[index];
  const Net& net = piece.piece.net;
  PiecePlans plans{static_cast<int>(index),
                   piece,
                   planCuts(net, piece.flat, piece.waste),
                   planFolds(net, piece.flat),
                   {}};
  plans.adhesive = planAdhesive(net, piece.gluePlan, plans.folds, built.design.grid);
  return plans;
}

void addSteps(std::vector<Step> steps, Guide& guide) {
  for (Step& step : steps) guide.steps.push_back(std::move(step));
}

/// The step in which an extra meets the box.
Step extraStep(const BuiltDesign& built, int extra) {
  Step step;
  step.code = StepCode::AddExtra;
  step.extra = extra;
  step.figure.kind = FigureKind::Finished;
  step.figure.progressFrom = step.figure.progress = 1;
  for (std::size_t i = 0; i < built.pieces.size(); ++i)
    if (built.pieces[i].role && built.pieces[i].role->extra == extra)
      step.pieces.push_back(static_cast<int>(i));
  return step;
}

/// Glued in while the box's piece still lies flat.
Step filmStep(const BuiltDesign& built, int extra, int onto) {
  Step step = extraStep(built, extra);
  step.piece = onto;
  step.figure.kind = FigureKind::Sheet;
  step.figure.scoresDone = step.figure.wasteGone = true;
  return step;
}

bool isFilmOf(const BuiltPiece& film, std::size_t piece) {
  return film.role && film.role->placing == Placing::InFace &&
         film.role->faces.front().piece == static_cast<int>(piece);
}

/// Its steps at the flat sheet.
void addSheet(const PiecePlans& plans, Guide& guide) {
  addSupplies(plans, guide);
  addSteps(sheetSteps(plans), guide);
}

void addOwnPiece(const BuiltDesign& built, std::size_t index, Guide& guide) {
  const PiecePlans plans = plansOf(built, index);
  addSheet(plans, guide);
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    if (!isFilmOf(built.pieces[i], index)) continue;
    addSheet(plansOf(built, i), guide);
    guide.steps.push_back(filmStep(built, built.pieces[i].role->extra, static_cast<int>(index)));
  }
  addSteps(foldSteps(plans), guide);
}

/// One after the other, each made and then put where it belongs.
void addExtraSteps(const BuiltDesign& built, Guide& guide) {
  for (std::size_t e = 0; e < built.design.extras.size(); ++e) {
    const int extra = static_cast<int>(e);
    if (built.design.extras[e].kind == "window") continue;
    const Step meeting = extraStep(built, extra);
    for (const int piece : meeting.pieces) {
      const PiecePlans plans = plansOf(built, static_cast<std::size_t>(piece));
      addSheet(plans, guide);
      addSteps(foldSteps(plans), guide);
    }
    const bool tied = std::ranges::count(built.ribbons, extra, &RibbonNeed::extra) > 0;
    if (tied || !meeting.pieces.empty()) guide.steps.push_back(meeting);
  }
}

}  // namespace

Guide makeGuide(const BuiltDesign& built) {
  Guide guide;
  guide.title = built.design.title;
  guide.styleId = built.design.styleId;
  guide.level = built.style->traits.difficulty;
  for (const BuiltPiece& piece : built.pieces)
    guide.pieces.push_back(describe(piece, piece.card.caliper.mm()));
  std::size_t own = 0;
  for (; own < built.pieces.size() && !built.pieces[own].role; ++own)
    addOwnPiece(built, own, guide);
  finish(own, guide);
  addExtraSteps(built, guide);
  for (const RibbonNeed& ribbon : built.ribbons)
    guide.supplies.push_back({SupplyKind::Ribbon, 1, -1, ribbon.width, {}, ribbon.length});
  addCare(guide);
  return guide;
}

}  // namespace creasewright
