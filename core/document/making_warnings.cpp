#include "document/making_warnings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <optional>
#include <vector>

#include "document/covered_words.h"
#include "document/print_warnings.h"
#include "document/suggest.h"
#include "folding/edge_meetings.h"
#include "styles/blank_sheet.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

/// Parallel folds nearer than 4 mm or ten thicknesses may tear or not fold clean (common practice,
/// no published source).
constexpr double kClosestFolds = 4;
constexpr double kCalipersApart = 10;
/// Above it folds want a cut-score or two creases (advice of one board mill).
constexpr Length kThickestScored = mm(0.6);
constexpr double kSame = 1e-3;      // mm
constexpr double kParallel = 1e-3;  // sine of the angle between two folds

/// How far two parallel folds that run side by side are apart; nothing for others.
std::optional<double> apart(const Segment& a, const Segment& b) {
  const Point along = unit(a.b - a.a);
  if (std::abs(cross(along, unit(b.b - b.a))) > kParallel) return std::nullopt;
  const double start = dot(b.a - a.a, along);
  const double end = dot(b.b - a.a, along);
  const double beside =
      std::min(std::max(start, end), length(a)) - std::max(std::min(start, end), 0.0);
  if (beside < kSame) return std::nullopt;
  const double distance = std::abs(cross(along, b.a - a.a));
  return distance > kSame ? std::optional(distance) : std::nullopt;
}

bool isFold(const Crease& crease) { return crease.kind != CreaseKind::Flat; }

/// The nearest two folds on each panel.
void warnOfCloseFolds(const BuiltPiece& piece, Problems& found) {
  const Net& net = piece.net;
  const double limit = std::max(kClosestFolds, kCalipersApart * piece.card.caliper.mm());
  std::vector<std::vector<Segment>> folds(net.panels.size());
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    if (!isFold(net.creases[i])) continue;
    for (const int side : {net.creases[i].parent, net.creases[i].child})
      folds[static_cast<std::size_t>(side)].push_back(piece.flat.creases[i]);
  }
  for (std::size_t panel = 0; panel < net.panels.size(); ++panel) {
    double nearest = limit;
    const std::vector<Segment>& own = folds[panel];
    for (std::size_t i = 0; i < own.size(); ++i)
      for (std::size_t k = i + 1; k < own.size(); ++k)
        nearest = std::min(nearest, apart(own[i], own[k]).value_or(limit));
    if (nearest < limit - kSame)
      found.push_back({ProblemCode::FoldsClose,
                       net.panels[panel].id,
                       {Length::mm(nearest), Length::mm(limit)},
                       Severity::Warning});
  }
}

void warnOfThickCard(const BuiltPiece& piece, Problems& found) {
  const auto& creases = piece.net.creases;
  const bool scored = std::ranges::any_of(
      creases, [](const Crease& crease) { return crease.kind == CreaseKind::Score; });
  if (scored && piece.card.caliper > kThickestScored)
    found.push_back({ProblemCode::CardThick,
                     piece.name,
                     {piece.card.caliper, kThickestScored},
                     Severity::Warning});
}

void warnOfBoard(const BuiltPiece& piece, Length board, Problems& found) {
  const Length width = Length::mm(piece.flat.width);
  const Length height = Length::mm(piece.flat.height);
  if (board > Length() && std::max(width, height) > board)
    found.push_back(
        {ProblemCode::BlankOverBoard, piece.name, {width, height, board}, Severity::Warning});
}

/// What a box that is made by hand of a blank sheet still lacks.
void guideSheet(const BuiltPiece& piece, Problems& found) {
  const Net& net = piece.net;
  if (net.creases.empty()) {
    found.push_back({ProblemCode::SheetBare, net.panels.front().id, {}, Severity::Warning});
    return;
  }
  const auto id = [&net](int panel) { return net.panels[static_cast<std::size_t>(panel)].id; };
  for (const EdgeMeeting& m : looseEdges(net, piece.folded, piece.card.caliper.mm())) {
    const Problem problem{ProblemCode::EdgesNotHeld, id(m.panel), {id(m.other)}, Severity::Warning};
    if (std::ranges::find(found, problem) == found.end()) found.push_back(problem);
  }
}

void warnOfSize(const Design& design, Problems& found) {
  constexpr std::array<std::string_view, 3> kAxisNames{"length", "width", "height"};
  if (!design.ownStyle || !design.product) return;
  const OwnStyle& style = *design.ownStyle;
  const Product& product = *design.product;
  const std::array<Length, 3> sizes{product.length, product.width, product.height};
  for (const std::size_t axis : axesOutside(style, product))
    found.push_back(
        {ProblemCode::ProductOutsideStyle,
         std::string(kAxisNames.at(axis)),
         {style.title, sizes.at(axis), style.suits->least.at(axis), style.suits->most.at(axis)},
         Severity::Warning});
}

}  // namespace

Problems sheetWarnings(const BuiltDesign& built, std::span<const Paper> sheets) {
  Problems found;
  for (const BuiltPiece& piece : built.pieces) {
    const auto holds = [&](const Paper& sheet) {
      return fitOnSheet(sheet, piece.flat.width, piece.flat.height).fits;
    };
    if (!sheets.empty() && std::ranges::none_of(sheets, holds))
      found.push_back({ProblemCode::BlankOverSheets,
                       piece.name,
                       {Length::mm(piece.flat.width), Length::mm(piece.flat.height)},
                       Severity::Warning});
  }
  return found;
}

Problems makingWarnings(const BuiltDesign& built) {
  Problems found;
  warnOfSize(built.design, found);
  for (const BuiltPiece& piece : built.pieces) {
    if (built.style == &blankSheet() && !piece.role) guideSheet(piece, found);
    warnOfCloseFolds(piece, found);
    warnOfThickCard(piece, found);
    warnOfBoard(piece, built.design.board, found);
    for (Problem& problem : printWarnings(piece)) found.push_back(std::move(problem));
  }
  std::ranges::move(coveredWords(built), std::back_inserter(found));
  return found;
}

}  // namespace creasewright
