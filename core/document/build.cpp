#include "document/build.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <optional>
#include <utility>

#include "document/build_extras.h"
#include "document/halves.h"
#include "document/making_warnings.h"
#include "document/room_advice.h"
#include "document/words_room.h"
#include "edits/kinds/apply_edits.h"
#include "edits/kinds/edit_judge.h"
#include "fit/blank_on_grid.h"
#include "fit/round_product.h"
#include "folding/cavity/outside.h"
#include "folding/motion/motion_check.h"
#include "folding/motion/needed_bends.h"
#include "styles/limits_search.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr double kSlack = 1e-6;  // mm

using Sizes = std::array<double, 3>;

Sizes asArray(const CavitySize& size) { return {size.length, size.width, size.height}; }

void checkCavity(const std::string& piece, const CavitySize& have, const Sizes& need,
                 Problems& problems) {
  constexpr std::array<std::string_view, 3> kAxes{"length", "width", "height"};
  const Sizes sizes = asArray(have);
  for (std::size_t i = 0; i < 3; ++i)
    if (sizes.at(i) < need.at(i) - kSlack)
      problems.push_back({ProblemCode::CavityTooSmall,
                          std::string(kAxes.at(i)),
                          {Length::mm(sizes.at(i)), Length::mm(need.at(i)), piece}});
}

/// The outside of the piece it goes over, with the promised ease; axes that do not count need none.
Sizes needOver(const GoesOver& over, const BuiltPiece& inner, double caliper) {
  const Sizes outside = asArray(measureOutside(inner.net, inner.folded, *inner.cavity, caliper));
  Sizes need{};
  for (std::size_t i = 0; i < 3; ++i)
    if (over.axes.at(i)) need.at(i) = outside.at(i) + over.ease.at(i).mm();
  return need;
}

/// What the cavity of `outer` must hold; nothing when nobody asks for anything.
std::optional<Sizes> neededRoom(const BuiltDesign& built, const BuiltPiece& outer, double caliper) {
  if (!outer.over) {
    if (!built.design.product) return std::nullopt;
    const Room room = roomFor(*built.design.product, *built.style, built.design.ease);
    return Sizes{room.eased(Axis::Length).mm(), room.eased(Axis::Width).mm(),
                 room.eased(Axis::Height).mm()};
  }
  for (const BuiltPiece& inner : built.pieces)
    if (inner.name == outer.over->piece && inner.cavity)
      return needOver(*outer.over, asWhole(built, inner), caliper);
  return std::nullopt;
}

/// Whether a round product that the free cuboid is too small for stands in the piece all the same.
bool standsRound(const BuiltDesign& built, const Whole& whole, BuiltPiece& piece, const Sizes& need,
                 double caliper) {
  if (piece.over || !built.design.product) return false;
  const Room room = roomFor(*built.design.product, *built.style, built.design.ease);
  if (!room.round) return false;
  const Sizes have = asArray(*piece.cavitySize);
  bool lacks = false;
  for (std::size_t i = 0; i < 3; ++i) lacks = lacks || have.at(i) < need.at(i) - kSlack;
  if (!lacks) return false;
  const RoundSize size{std::max(need[0], need[1]), need[2], room.ball};
  piece.roundRoom =
      roundRoom(whole.net, whole.folded, *piece.cavity, caliper, size, piece.cavityBox);
  return piece.roundRoom.has_value();
}

void measureCavities(BuiltDesign& built, double caliper) {
  for (BuiltPiece& piece : built.pieces) {
    if (!piece.cavity) continue;
    const std::optional<Sizes> need = neededRoom(built, piece, caliper);
    const std::optional<Product>& product = built.design.product;
    if (!product || !isRound(*product)) piece.cavity->round = false;
    const CavitySize wanted = need ? CavitySize{(*need)[0], (*need)[1], (*need)[2]} : CavitySize{};
    const Whole whole = wholeOf(built, piece).value_or(Whole{piece.net, piece.folded});
    piece.cavityBox = cavityBox(whole.net, whole.folded, *piece.cavity, caliper, wanted);
    piece.cavitySize = sizeAlong(*piece.cavity, piece.cavityBox);
    if (need && !standsRound(built, whole, piece, *need, caliper))
      checkCavity(piece.name, *piece.cavitySize, *need, built.problems);
  }
}

const BuiltPiece* pieceCalled(const BuiltDesign& built, const std::string& name) {
  for (const BuiltPiece& piece : built.pieces)
    if (piece.name == name) return &piece;
  return nullptr;
}

/// The face of a glued piece's panel that looks at the other piece's.
Face meetingFace(const BuiltPiece& piece, const BuiltPiece& other) {
  const Holding& held = *piece.held;
  const auto normal = [](const BuiltPiece& of, const std::string& panel) {
    const std::optional<int> index = of.net.find(panel);
    return of.folded[static_cast<std::size_t>(index.value_or(0))].normal();
  };
  const Point3 own = held.place.value_or(Transform()).turn(normal(piece, held.panel));
  const bool against = dot(own, normal(other, held.onto)) < 0;
  return against == (held.face == Face::Inside) ? Face::Inside : Face::Outside;
}

/// The flaps by which halves of a blank are glued take adhesive all over.
void glueHalves(BuiltDesign& built, const std::vector<PieceJoint>& joints) {
  const auto glue = [](BuiltPiece& piece, const Holding& held, bool against) {
    const std::optional<int> flap = piece.net.find(held.panel);
    if (!flap) return;
    const Face face = against == (held.face == Face::Inside) ? Face::Inside : Face::Outside;
    constexpr double kMargin = 1;  // mm, as on any flap
    for (Area& area : offset(region(piece.flat.panels[static_cast<std::size_t>(*flap)]), -kMargin))
      piece.gluePlan.push_back(
          {*flap, -1, held.face, face, std::move(area.outer), held.to, held.onto});
  };
  for (BuiltPiece& half : built.pieces) {
    const BuiltPiece* other = half.held ? pieceCalled(built, half.held->to) : nullptr;
    if (other == nullptr || !areHalves(half, *other)) continue;
    const Whole whole = *wholeOf(built, half);
    const auto normal = [&whole](const std::string& panel) {
      return whole.folded[static_cast<std::size_t>(whole.net.find(panel).value_or(0))].normal();
    };
    const auto against = [&](const Holding& held) {
      return dot(normal(held.panel), normal(held.onto)) < 0;
    };
    glue(half, *half.held, against(*half.held));
    for (const PieceJoint& joint : joints)
      for (BuiltPiece& piece : built.pieces)
        if (piece.name == joint.piece) glue(piece, joint.holding, against(joint.holding));
  }
}

/// What glues whole pieces to one another joins the glue plan of the one that takes the adhesive.
void glueToOneAnother(BuiltDesign& built) {
  for (BuiltPiece& piece : built.pieces) {
    const std::optional<Holding>& held = piece.held;
    const BuiltPiece* other =
        held && held->by == Hold::Glue ? pieceCalled(built, held->to) : nullptr;
    if (other == nullptr || areHalves(piece, *other)) continue;
    std::ranges::move(planPieceGlue(*held, piece.net, piece.flat, meetingFace(piece, *other)),
                      std::back_inserter(piece.gluePlan));
  }
}

/// What is wrong in the design's own style.
Problem ofOwnStyle(const OwnStyle& style, const Problem& inside) {
  Problem problem{ProblemCode::StylePieceBroken,
                  style.title,
                  {std::string(codeName(inside.code)), inside.where},
                  inside.severity};
  problem.values.insert(problem.values.end(), inside.values.begin(), inside.values.end());
  return problem;
}

/// Problems of edits count their number among all; it is told among those it stands with.
Problem numbered(Problem problem, std::size_t number) {
  const bool counts = problem.code == ProblemCode::EditPlaceGone ||
                      problem.code == ProblemCode::EditUnfit ||
                      problem.code == ProblemCode::EditNoEffect;
  if (counts) problem.values.at(0) = static_cast<std::int64_t>(number) + 1;
  return problem;
}

/// Parts what is told of all edits into that of the own style and that of the design.
void tellBroken(const std::map<int, Problem>& broken, BuiltDesign& built) {
  const std::optional<OwnStyle>& style = built.design.ownStyle;
  const int before = style ? static_cast<int>(style->edits.size()) : 0;
  for (const auto& [index, problem] : broken) {
    if (index < before) {
      built.brokenStyleEdits.emplace(index, problem);
      built.problems.push_back(ofOwnStyle(*style, problem));
      continue;
    }
    const int own = index - before;
    Problem told = numbered(problem, static_cast<std::size_t>(own));
    built.brokenEdits.emplace(own, told);
    built.problems.push_back(std::move(told));
  }
}

/// What is wrong in the rules of the own style; its sizes are a warning.
void judgeOwnStyle(BuiltDesign& built) {
  const std::optional<OwnStyle>& style = built.design.ownStyle;
  if (!style) return;
  const RuledMeasures ruled =
      ruledMeasures(*style, *built.style, built.design.parameters, benchOf(built.design));
  for (const Problem& problem : ruled.problems)
    built.problems.push_back(ofOwnStyle(*style, problem));
}

/// Makes the design's edits; what stands against one is told.
EditsMade makeEdits(BuiltDesign& built, const Workbench& bench, std::vector<Piece>& pieces) {
  const Design& design = built.design;
  const std::vector<Edit> edits = allEdits(design);
  if (edits.empty()) return {};
  EditsMade made =
      applyEdits(edits, design.parameters, lengthKeys(built.style->parameters), bench, pieces);
  tellBroken(made.broken, built);
  return made;
}

BuiltPiece buildPiece(Piece piece, JudgedNet judged, const Card& card, const Design& design,
                      Problems& problems) {
  BuiltPiece built;
  fitWords(piece.net);
  built.flat = std::move(judged.flat);
  built.folded = std::move(judged.folded);
  std::ranges::move(judged.problems, std::back_inserter(problems));
  built.scorePlan = planScores(piece.net, built.flat, design.grid, design.board);
  built.gluePlan = planGlue(piece.net, built.flat);
  built.waste = findWaste(built.flat);
  built.card = card;
  static_cast<Piece&>(built) = std::move(piece);
  return built;
}

/// The box's own pieces; those that were judged when they were edited, and have no window since,
/// are not judged again.
void buildPieces(BuiltDesign& built, std::vector<Piece> pieces, const CutWindows& windows,
                 std::map<std::size_t, JudgedNet> judged) {
  for (const auto& [extra, parts] : windows)
    if (parts)
      for (const FaceOpening& opening : parts->openings)
        judged.erase(static_cast<std::size_t>(opening.piece));
  const Design& design = built.design;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const auto known = judged.find(i);
    built.pieces.push_back(
        known == judged.end()
            ? buildPiece(std::move(pieces[i]), design.card, design, built.problems)
            : buildPiece(std::move(pieces[i]), std::move(known->second), design.card, design,
                         built.problems));
  }
}

}  // namespace

BuiltPiece buildPiece(Piece piece, const Card& card, const Design& design, Problems& problems) {
  JudgedNet judged = judgeNet(piece.net, card.caliper.mm());
  return buildPiece(std::move(piece), std::move(judged), card, design, problems);
}

const Problems& pathProblems(const BuiltPiece& piece) {
  return piece.wayProblems.get([&] { return checkFoldPath(piece.net, piece.card.caliper.mm()); });
}

const FoldPlan& foldPlan(const BuiltPiece& piece) {
  return piece.folds.get([&] {
    Net net = piece.net;
    if (!net.bends.empty())
      net.bends = neededBends(net, piece.card.caliper.mm(), pathProblems(piece).size());
    return planFolds(net, piece.flat);
  });
}

Problems everyProblem(const BuiltDesign& built) {
  Problems problems = built.problems;
  for (const BuiltPiece& piece : built.pieces)
    std::ranges::copy(pathProblems(piece), std::back_inserter(problems));
  problems.insert(problems.end(), built.warnings.begin(), built.warnings.end());
  return problems;
}

Problems limitProblems(const Design& design) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return {style.problem()};
  const Workbench bench = benchOf(design);
  Problems found = checkLimits(**style, design.parameters, bench);
  if (!design.product || withinLimits((*style)->parameters, design.parameters, bench)) return found;
  // What the product lacks room for is said at once.
  std::erase_if(found, [](const Problem& p) { return p.code != ProblemCode::UnknownParameter; });
  const Fitted fitted = fit(**style, *design.product, design.ease, bench, design.parameters);
  std::ranges::move(adviceFor((*style)->parameters, design.parameters,
                              raisedTo(fitted, design.parameters), bench, floorsOf(fitted)),
                    std::back_inserter(found));
  return found;
}

Result<BuiltDesign> buildWithoutAdvice(const Design& design) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return style.problem();
  if (Problems limits = limitProblems(design); !limits.empty()) return std::move(limits.front());

  const Workbench bench = benchOf(design);
  BuiltDesign built;
  built.design = design;
  built.style = *style;
  std::vector<Piece> pieces =
      (*style)->build(blanksOnGrid(**style, design.parameters, bench), bench);
  judgeOwnStyle(built);
  EditsMade edits = makeEdits(built, bench, pieces);
  const CutWindows windows = cutWindows(design, pieces);
  buildPieces(built, std::move(pieces), windows, std::move(edits.judged));
  glueToOneAnother(built);
  if (!edits.joints.empty() || !allEdits(design).empty()) glueHalves(built, edits.joints);
  if (design.product)
    built.reasons = fit(**style, *design.product, design.ease, bench, design.parameters).reasons;
  measureCavities(built, bench.caliper.mm());
  addExtras(windows, built);
  built.warnings = makingWarnings(built);
  return built;
}

Result<BuiltDesign> build(const Design& design) {
  Result<BuiltDesign> result = buildWithoutAdvice(design);
  if (!result) return result;
  BuiltDesign built = std::move(result).value();
  adviseOnRoom(built);
  return built;
}

}  // namespace creasewright
