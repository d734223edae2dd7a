#include "papers/guide/guide_parts.h"

#include "document/build.h"
#include "pages/score_map.h"
#include "pages/sheet_figure.h"

namespace creasewright {

namespace {

MapKind kindOf(const Step& step) {
  switch (step.code) {
    case StepCode::TrimBlank:
    case StepCode::ScoreSides:
    case StepCode::ShortScores:
    case StepCode::ScoreFreely:
    case StepCode::FoldAndBurnish:
      return MapKind::Scores;
    case StepCode::CutOpenings:
    case StepCode::CutSlits:
    case StepCode::CutWaste:
    case StepCode::CutMitres:
    case StepCode::CutTapers:
    case StepCode::CutNotches:
    case StepCode::CutCurves:
      return MapKind::Cuts;
    case StepCode::ApplyAdhesive:
    case StepCode::FoldStage:
    case StepCode::GluePieces:
    case StepCode::PutTogether:
    case StepCode::PutIn:
    case StepCode::AddExtra:
      break;
  }
  return MapKind::None;
}

}  // namespace

bool anyScores(const std::vector<Step>& steps, std::size_t from, std::size_t to) {
  for (std::size_t i = from; i < to; ++i)
    if (!steps[i].settings.empty() || !steps[i].freeScores.empty()) return true;
  return false;
}

std::vector<GuidePart> guideParts(const Guide& guide) {
  std::vector<GuidePart> parts;
  const std::vector<Step>& steps = guide.steps;
  for (std::size_t i = 0; i < steps.size();) {
    const MapKind kind = kindOf(steps[i]);
    std::size_t end = i + 1;
    while (kind != MapKind::None && end < steps.size() && kindOf(steps[end]) == kind &&
           steps[end].piece == steps[i].piece && steps[end].code != StepCode::TrimBlank)
      ++end;
    if (kind == MapKind::Scores && !anyScores(steps, i, end)) end = i + 1;
    parts.push_back({i, end - i, end - i > 1 ? kind : MapKind::None});
    i = end;
  }
  return parts;
}

Drawing partMap(const BuiltDesign& built, const Guide& guide, const GuidePart& part,
                const FigureRoom& room, const Wording& wording) {
  std::vector<const Step*> steps;
  for (std::size_t i = part.first; i < part.first + part.count; ++i)
    steps.push_back(&guide.steps[i]);
  const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(steps.front()->piece));
  if (part.map == MapKind::Scores) return scoreMap(piece, steps, room, wording);
  return cutMap(piece, steps, static_cast<int>(part.first) + 1, room);
}

}  // namespace creasewright
