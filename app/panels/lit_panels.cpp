#include "panels/lit_panels.h"

#include <algorithm>
#include <cmath>

#include "bridge/text.h"
#include "making/score_place.h"

namespace creasewright {

namespace {

constexpr double kSameLine = 0.02;  // mm
constexpr double kShortest = 0.2;   // mm of a line that two have in common

/// Whether two segments lie on one line and share a part of it.
bool overlap(const Segment& a, const Segment& b) {
  const Point along = unit(a.b - a.a);
  const Point across = turnLeft(along);
  if (std::abs(dot(b.a - a.a, across)) > kSameLine ||
      std::abs(dot(b.b - a.a, across)) > kSameLine) {
    return false;
  }
  const double from = dot(b.a - a.a, along);
  const double to = dot(b.b - a.a, along);
  const double length = dot(a.b - a.a, along);
  return std::min(length, std::max(from, to)) - std::max(0.0, std::min(from, to)) > kShortest;
}

bool touches(const Polygon& ring, const Segment& line) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (overlap(line, {ring[i], ring[(i + 1) % ring.size()]})) {
      return true;
    }
  }
  return false;
}

bool touches(const FlatNet& flat, std::size_t panel, const Segment& line) {
  return touches(flat.panels[panel], line) ||
         std::ranges::any_of(flat.openings[panel],
                             [&](const Polygon& hole) { return touches(hole, line); });
}

void addLine(const Polyline& line, std::vector<Segment>& lines) {
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    lines.push_back({line[i], line[i + 1]});
  }
}

/// The scores and cuts that a step makes.
std::vector<Segment> linesOf(const Step& step, const FlatNet& flat) {
  std::vector<Segment> lines;
  for (const ScoreSetup& setup : step.settings) {
    for (const SheetSide side : setup.sides) {
      for (const ScoreReading& reading : setup.readings) {
        lines.push_back(scoredLine(side, reading, flat.width, flat.height));
      }
    }
  }
  for (const FreeScore& score : step.freeScores) {
    lines.push_back(score.line);
  }
  for (const Cut& cut : step.cuts) {
    addLine(cut.line, lines);
    for (const CutRepeat repeat : cut.repeats) {
      addLine(repeated(cut.line, repeat, flat.width, flat.height), lines);
    }
  }
  return lines;
}

}  // namespace

QStringList panelsAlong(const BuiltPiece& piece, const std::vector<Segment>& lines) {
  QStringList ids;
  for (std::size_t i = 0; i < piece.flat.panels.size(); ++i) {
    const bool along = std::ranges::any_of(
        lines, [&](const Segment& line) { return touches(piece.flat, i, line); });
    if (along) {
      ids += text(piece.piece.net.panels[i].id);
    }
  }
  return ids;
}

QStringList panelsOfStep(const Step& step, const BuiltDesign& built) {
  const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(step.piece));
  QStringList ids = panelsAlong(piece, linesOf(step, piece.flat));
  const auto add = [&](int panel) {
    const QString id = text(piece.piece.net.panels.at(static_cast<std::size_t>(panel)).id);
    if (!ids.contains(id)) {
      ids += id;
    }
  };
  for (const Fold& fold : step.folds) {
    add(fold.child);
  }
  for (const Join& join : step.joins) {
    add(join.panel);
    add(join.onto);
  }
  for (const Adhesive& adhesive : step.adhesive) {
    add(adhesive.panel);
  }
  return ids;
}

}  // namespace creasewright
