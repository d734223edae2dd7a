#include "document/build.h"

#include <utility>

#include "folding/fold_check.h"
#include "net/net_problems.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr double kSlack = 1e-6;  // mm

BuiltPiece buildPiece(Piece piece, const Making& making, Problems& problems) {
  const double caliper = making.caliper.mm();
  BuiltPiece built;
  built.flat = flatten(piece.net);
  built.folded = pose(piece.net, 1.0);
  for (Problem& problem : findProblems(piece.net, built.flat, caliper))
    problems.push_back(std::move(problem));
  for (Problem& problem : checkMates(piece.net, built.folded, caliper))
    problems.push_back(std::move(problem));
  built.scorePlan = planScores(piece.net, built.flat, making.grid);
  built.gluePlan = planGlue(piece.net, built.flat);
  built.waste = findWaste(built.flat);
  if (piece.cavity) built.cavity = measureCavity(piece.net, built.folded, *piece.cavity, caliper);
  built.piece = std::move(piece);
  return built;
}

void checkCavity(const CavitySize& have, const Room& room, Problems& problems) {
  const auto check = [&problems](const char* axis, double size, Length need) {
    if (size < need.mm() - kSlack)
      problems.push_back({ProblemCode::CavityTooSmall, axis, {Length::mm(size), need}});
  };
  check("length", have.length, room.eased(Axis::Length));
  check("width", have.width, room.eased(Axis::Width));
  check("height", have.height, room.eased(Axis::Height));
}

}  // namespace

Problems limitProblems(const Design& design) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return {style.problem()};
  return checkLimits(**style, design.parameters, {design.card.caliper, design.grid});
}

Result<BuiltDesign> build(const Design& design) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return style.problem();
  if (Problems limits = limitProblems(design); !limits.empty()) return std::move(limits.front());

  const Making making{design.card.caliper, design.grid};
  BuiltDesign built{design, *style, {}, {}, {}};
  for (Piece& piece : (*style)->build(design.parameters, making))
    built.pieces.push_back(buildPiece(std::move(piece), making, built.problems));
  if (design.product) {
    built.reasons = fit(**style, *design.product, design.ease, making).reasons;
    const Room room = roomFor(*design.product, **style, design.ease);
    for (const BuiltPiece& piece : built.pieces)
      if (piece.cavity) checkCavity(*piece.cavity, room, built.problems);
  }
  return built;
}

}  // namespace creasewright
