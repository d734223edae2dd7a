#include "session/places.h"

#include <algorithm>
#include <cmath>

#include "bridge/text.h"
#include "making/score_place.h"
#include "net/whole_panels.h"

namespace creasewright {

namespace {

constexpr double kSameLine = 0.02;  // mm
constexpr double kShortest = 0.2;   // mm of a line that two have in common

/// Whether two segments lie on one line and share a part of it.
bool overlap(const Segment& a, const Segment& b) {
  const Point along = unit(a.b - a.a);
  const Point across = turnLeft(along);
  if (std::abs(dot(b.a - a.a, across)) > kSameLine || std::abs(dot(b.b - a.a, across)) > kSameLine)
    return false;
  const double from = dot(b.a - a.a, along);
  const double to = dot(b.b - a.a, along);
  const double length = dot(a.b - a.a, along);
  return std::min(length, std::max(from, to)) - std::max(0.0, std::min(from, to)) > kShortest;
}

bool touches(const Polygon& ring, const Segment& line) {
  for (std::size_t i = 0; i < ring.size(); ++i)
    if (overlap(line, {ring[i], ring[(i + 1) % ring.size()]})) return true;
  return false;
}

bool touches(const FlatNet& flat, std::size_t panel, const Segment& line) {
  return touches(flat.panels[panel], line) ||
         std::ranges::any_of(
             flat.openings[panel], [&](const Polygon& hole) { return touches(hole, line); });
}

void addLine(const Polyline& line, std::vector<Segment>& lines) {
  for (std::size_t i = 0; i + 1 < line.size(); ++i) lines.push_back({line[i], line[i + 1]});
}

const BuiltPiece& pieceAt(const BuiltDesign& built, int piece) {
  return built.pieces.at(static_cast<std::size_t>(piece));
}

QString idOf(const BuiltPiece& piece, int panel) {
  return text(piece.net.panels.at(static_cast<std::size_t>(panel)).id);
}

void addOnce(QStringList& ids, const QString& id) {
  if (!ids.contains(id)) ids += id;
}

QStringList panelsAlong(const BuiltPiece& piece, const std::vector<Segment>& lines) {
  QStringList ids;
  for (std::size_t i = 0; i < piece.flat.panels.size(); ++i) {
    const bool along = std::ranges::any_of(
        lines, [&](const Segment& line) { return touches(piece.flat, i, line); });
    if (along) ids += text(piece.net.panels[i].id);
  }
  return ids;
}

std::vector<int> creasesAlong(const BuiltPiece& piece, const std::vector<Segment>& lines) {
  std::vector<int> found;
  for (std::size_t i = 0; i < piece.flat.creases.size(); ++i) {
    const bool along = std::ranges::any_of(
        lines, [&](const Segment& line) { return overlap(line, piece.flat.creases[i]); });
    if (along && piece.net.creases[i].kind != CreaseKind::Flat)
      found.push_back(static_cast<int>(i));
  }
  return found;
}

/// When the last of these folds is made.
double progressOf(const Net& net, const std::vector<int>& creases) {
  int stage = 0;
  for (const int crease : creases)
    stage = std::max(stage, net.creases[static_cast<std::size_t>(crease)].stage);
  return stage == 0 || net.stageCount() == 0 ? -1 : static_cast<double>(stage) / net.stageCount();
}

/// The scores and cuts that a step makes.
std::vector<Segment> linesOf(const Step& step, const FlatNet& flat) {
  std::vector<Segment> lines;
  for (const ScoreSetup& setup : step.settings) {
    for (const SheetSide side : setup.sides)
      for (const ScoreReading& reading : setup.readings)
        lines.push_back(scoredLine(side, reading, flat.width, flat.height));
  }
  for (const FreeScore& score : step.freeScores) lines.push_back(score.line);
  for (const Cut& cut : step.cuts) {
    addLine(cut.line, lines);
    for (const CutRepeat repeat : cut.repeats)
      addLine(repeated(cut.line, repeat, flat.width, flat.height), lines);
  }
  return lines;
}

}  // namespace

Place placeOfPanel(const BuiltDesign& built, int piece, int panel) {
  const Net& net = pieceAt(built, piece).net;
  const std::vector<int> whole = wholePanels(net);
  Place place{.piece = piece};
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    if (whole[i] == whole.at(static_cast<std::size_t>(panel)))
      place.panels += text(net.panels[i].id);
  return place;
}

Place placeOfCreases(const BuiltDesign& built, int piece, std::vector<int> creases) {
  const BuiltPiece& part = pieceAt(built, piece);
  Place place{.piece = piece};
  for (const int crease : creases) {
    const Crease& fold = part.net.creases.at(static_cast<std::size_t>(crease));
    addOnce(place.panels, idOf(part, fold.parent));
    addOnce(place.panels, idOf(part, fold.child));
    place.lines.push_back(part.flat.creases[static_cast<std::size_t>(crease)]);
  }
  place.progress = progressOf(part.net, creases);
  place.creases = std::move(creases);
  return place;
}

Place placeOfLines(const BuiltDesign& built, int piece, std::vector<Segment> lines) {
  const BuiltPiece& part = pieceAt(built, piece);
  Place place{.piece = piece, .panels = panelsAlong(part, lines)};
  place.creases = creasesAlong(part, lines);
  place.progress = progressOf(part.net, place.creases);
  place.lines = std::move(lines);
  return place;
}

Place placeOfStep(const BuiltDesign& built, const Step& step) {
  const BuiltPiece& piece = pieceAt(built, step.piece);
  std::vector<Segment> lines = linesOf(step, piece.flat);
  if (step.code == StepCode::TrimBlank) {
    const Point far{piece.flat.width, piece.flat.height};
    lines = {{{0, 0}, {far.x, 0}}, {{far.x, 0}, far}, {far, {0, far.y}}, {{0, far.y}, {0, 0}}};
  }
  Place place = placeOfLines(built, step.piece, std::move(lines));
  for (const Fold& fold : step.folds) {
    addOnce(place.panels, idOf(piece, fold.child));
    place.creases.push_back(fold.crease);
    place.lines.push_back(fold.line);
  }
  for (const Join& join : step.joins) {
    addOnce(place.panels, idOf(piece, join.panel));
    addOnce(place.panels, idOf(piece, join.onto));
  }
  for (const Adhesive& adhesive : step.adhesive) addOnce(place.panels, idOf(piece, adhesive.panel));
  // Work on the sheet is done while it lies flat.
  place.progress = step.figure.kind == FigureKind::Sheet    ? 0
                   : step.figure.kind == FigureKind::Folded ? step.figure.progress
                                                            : 1;
  return place;
}

Place placeOfGlue(const BuiltDesign& built, int piece, const GlueArea& glue) {
  const BuiltPiece& part = pieceAt(built, piece);
  Place place{.piece = piece, .panels = {idOf(part, glue.panel)}};
  place.panels += glue.onto < 0 ? text(glue.pieceOnto) : idOf(part, glue.onto);
  if (glue.onto < 0) place.piece = -1;  // the target is another piece's
  return place;
}

Place placeOfProblem(const BuiltDesign& built, const Problem& problem) {
  Place place;
  const auto add = [&](const std::string& name) {
    for (const BuiltPiece& piece : built.pieces) {
      if (piece.net.find(name)) {
        addOnce(place.panels, text(name));
        return;
      }
    }
  };
  add(problem.where);
  for (const ProblemValue& value : problem.values)
    if (const auto* name = std::get_if<std::string>(&value)) add(*name);
  if (problem.code == ProblemCode::CavityTooSmall && !built.pieces.empty() &&
      built.pieces.front().cavity)
    add(built.pieces.front().cavity->panel);
  return place;
}

Place placeOfMeasure(const AffectedPanels& affected, std::string_view key) {
  return {.panels = affected.of(key), .measure = text(key)};
}

Place placeAfterChange(const BuiltDesign& built, const Place& before) {
  if (!before.measure.isEmpty())
    return placeOfMeasure(AffectedPanels(built.design), before.measure.toStdString());
  if (before.piece >= static_cast<int>(built.pieces.size())) return {};
  if (before.piece < 0 || before.creases.empty()) {
    Place place = before;
    place.lines.clear();
    return place;
  }
  const std::size_t count = pieceAt(built, before.piece).net.creases.size();
  const bool there = std::ranges::all_of(
      before.creases, [&](int crease) { return static_cast<std::size_t>(crease) < count; });
  return there ? placeOfCreases(built, before.piece, before.creases) : Place();
}

}  // namespace creasewright
