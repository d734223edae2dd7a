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
  if (!built.piece.cavity || built.piece.net.creases.empty()) return piece;
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

void finish(Guide& guide) {
  for (const GuidePiece& piece : guide.pieces) {
    guide.finishedLength = std::max(guide.finishedLength, piece.outsideLength);
    guide.finishedWidth = std::max(guide.finishedWidth, piece.outsideWidth);
    guide.finishedHeight = std::max(guide.finishedHeight, piece.outsideHeight);
  }
  if (guide.pieces.size() > 1) {
    Step step;
    step.code = StepCode::PutTogether;
    for (std::size_t i = 0; i < guide.pieces.size(); ++i)
      step.pieces.push_back(static_cast<int>(i));
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

}  // namespace

Guide makeGuide(const BuiltDesign& built) {
  Guide guide;
  guide.title = built.design.title;
  guide.styleId = built.design.styleId;
  guide.level = built.style->traits.difficulty;
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    const BuiltPiece& piece = built.pieces[i];
    const Net& net = piece.piece.net;
    guide.pieces.push_back(describe(piece, built.design.card.caliper.mm()));
    PiecePlans plans{static_cast<int>(i),
                     piece,
                     planCuts(net, piece.flat, piece.waste),
                     planFolds(net, piece.flat),
                     {}};
    plans.adhesive = planAdhesive(net, piece.gluePlan, plans.folds, built.design.grid);
    addSupplies(plans, guide);
    for (Step& step : sheetSteps(plans)) guide.steps.push_back(std::move(step));
    for (Step& step : foldSteps(plans)) guide.steps.push_back(std::move(step));
  }
  addCare(guide);
  finish(guide);
  return guide;
}

}  // namespace creasewright
