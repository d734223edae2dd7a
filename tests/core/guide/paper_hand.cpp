#include "core/guide/paper_hand.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/guide/plane_faces.h"
#include "making/spans.h"

namespace creasewright::testing {
namespace {

constexpr double kSame = 5e-6;  // mm

bool upright(SheetSide side) { return side == SheetSide::Left || side == SheetSide::Right; }
bool far(SheetSide side) { return side == SheetSide::Right || side == SheetSide::Top; }

/// Whether the card hangs together along `part` of a fold: splinters at its ends hold nothing.
bool liesOn(const Segment& part, const Segment& whole) {
  constexpr double kSplinter = 1e-3;  // mm
  return length(part) > kSplinter && distanceToSegment((part.a + part.b) / 2, whole) <= kSame &&
         distanceToSegment(part.a, whole) <= kSame && distanceToSegment(part.b, whole) <= kSame;
}

/// Turns what lies left of the line towards the viewer.
Transform foldAbout(const Segment& line, Angle angle) {
  const Point along = unit(line.b - line.a);
  const Point left = turnLeft(along);
  const Transform frame =
      Transform::frame({line.a.x, line.a.y, 0}, {along.x, along.y, 0}, {left.x, left.y, 0});
  return frame.after(Transform::rotationX(angle)).after(frame.inverse());
}

}  // namespace

void PaperHand::score(const ScoreSetup& setup) {
  for (const SheetSide side : setup.sides) {
    for (const ScoreReading& reading : setup.readings) {
      const bool full = reading.run == ScoreRun::Full;
      const SheetSide measured = full ? side : reading.measuredFrom;
      const double across = upright(measured) ? width_ : height_;
      const double along = upright(measured) ? height_ : width_;
      const double at = far(measured) ? across - reading.at.mm() : reading.at.mm();
      const double low = full || !far(side) ? 0 : along - reading.to.mm();
      const double high = full || far(side) ? along : reading.to.mm();
      if (upright(measured))
        scores_.push_back({{at, low}, {at, high}});
      else
        scores_.push_back({{low, at}, {high, at}});
      if (full) fullSides_.push_back({side, at});
    }
  }
}

std::vector<double> PaperHand::fullScoresFrom(SheetSide side) const {
  std::vector<double> distances;
  for (const auto& [measured, at] : fullSides_) {
    if (upright(measured) != upright(side)) continue;
    distances.push_back(far(side) ? (upright(side) ? width_ : height_) - at : at);
  }
  std::ranges::sort(distances);
  const auto same = [](double a, double b) { return std::abs(a - b) <= kSame; };
  distances.erase(std::unique(distances.begin(), distances.end(), same), distances.end());
  return distances;
}

void PaperHand::trim(Length width, Length height) {
  width_ = width.mm();
  height_ = height.mm();
}

void PaperHand::perform(const Step& step) {
  if (step.code == StepCode::TrimBlank) trim(step.width, step.height);
  for (const ScoreSetup& setup : step.settings) score(setup);
  for (const FreeScore& free : step.freeScores) scores_.push_back(free.line);
  for (const Cut& cut : step.cuts) {
    cuts_.push_back(cut.line);
    for (const CutRepeat repeat : cut.repeats)
      cuts_.push_back(repeated(cut.line, repeat, width_, height_));
  }
  if (step.code != StepCode::FoldStage) return;
  for (const Fold& fold : step.folds)
    for (std::size_t i = 0; i < folds_.size(); ++i)
      if (folds_[i].line == fold.line) {
        folds_[i].angle = fold.angle;
        made_[i] = true;
      }
  foldParts();
}

bool PaperHand::isScored(const Segment& line, double tolerance) const {
  const double size = length(line);
  const Point along = (line.b - line.a) / size;
  std::vector<Span> spans;
  for (const Segment& score : scores_) {
    // Measured from the score, which may be much the longer.
    const Point run = unit(score.b - score.a);
    if (std::abs(cross(run, line.a - score.a)) > tolerance ||
        std::abs(cross(run, line.b - score.a)) > tolerance)
      continue;
    const double a = dot(along, score.a - line.a);
    const double b = dot(along, score.b - line.a);
    spans.push_back({std::min(a, b) - tolerance, std::max(a, b) + tolerance});
  }
  return std::ranges::any_of(joined(std::move(spans)),
                             [&](const Span& span) { return span.low <= 0 && span.high >= size; });
}

void PaperHand::release(Point hold, const std::vector<Fold>& folds) {
  folds_ = folds;
  made_.assign(folds.size(), false);
  std::vector<Segment> lines{{{0, 0}, {width_, 0}},
                             {{width_, 0}, {width_, height_}},
                             {{width_, height_}, {0, height_}},
                             {{0, height_}, {0, 0}}};
  for (const Polyline& cut : cuts_)
    for (std::size_t i = 0; i + 1 < cut.size(); ++i)
      if (distance(cut[i], cut[i + 1]) > kSame) lines.push_back({cut[i], cut[i + 1]});
  for (const Fold& fold : folds) lines.push_back(fold.line);
  const PlaneFaces faces = planeFaces(lines);

  const auto count = faces.outlines.size();
  std::vector<int> partOf(count, -1);
  std::vector<int> queue;
  const auto take = [&](int face) {
    partOf[static_cast<std::size_t>(face)] = static_cast<int>(parts_.size());
    parts_.push_back({faces.outlines[static_cast<std::size_t>(face)], {}});
    queue.push_back(face);
  };
  for (std::size_t i = 0; i < count && queue.empty(); ++i)
    if (signedArea(faces.outlines[i]) > 0 && locate(hold, faces.outlines[i]) == Side::Inside)
      take(static_cast<int>(i));
  for (std::size_t done = 0; done < queue.size(); ++done) {
    for (const FaceEdge& edge : faces.edges) {
      if (edge.across != queue[done] || edge.face == edge.across) continue;
      for (std::size_t f = 0; f < folds.size(); ++f) {
        if (!liesOn({edge.from, edge.to}, folds[f].line)) continue;
        if (partOf[static_cast<std::size_t>(edge.face)] >= 0) continue;
        take(edge.face);
        hinges_.push_back({partOf[static_cast<std::size_t>(edge.across)],
                           partOf[static_cast<std::size_t>(edge.face)],
                           {edge.from, edge.to},
                           static_cast<int>(f)});
      }
    }
  }
  for (const Part& part : parts_) cardArea_ += signedArea(part.outline);
  for (std::size_t i = 0; i < count; ++i) {
    const Polygon& outline = faces.outlines[i];
    const double size = signedArea(outline);
    if (size > 1e-4 && partOf[i] < 0) {
      const bool atRim = std::ranges::any_of(outline, [&](Point p) {
        return p.x <= kSame || p.y <= kSame || p.x >= width_ - kSame || p.y >= height_ - kSame;
      });
      if (atRim) offcuts_.push_back(outline);
    }
    // The outside of a group of lines inside a part is a hole in it.
    if (size < -1e-4 && partAt(outline.front()) >= 0 &&
        locate(outline.front(), parts_[static_cast<std::size_t>(partAt(outline.front()))].outline,
               kSame) == Side::Inside)
      cardArea_ += size;
  }
}

void PaperHand::foldParts() {
  for (const Hinge& hinge : hinges_) {
    const auto fold = static_cast<std::size_t>(hinge.fold);
    const Angle angle = made_[fold] ? folds_[fold].angle : Angle();
    // Fold about the whole line of the step: short edges would lose digits.
    Segment line = folds_[fold].line;
    if (dot(line.b - line.a, hinge.line.b - hinge.line.a) < 0) std::swap(line.a, line.b);
    parts_[static_cast<std::size_t>(hinge.to)].placed =
        parts_[static_cast<std::size_t>(hinge.from)].placed.after(foldAbout(line, angle));
  }
}

int PaperHand::partAt(Point p) const {
  for (std::size_t i = 0; i < parts_.size(); ++i)
    if (locate(p, parts_[i].outline) == Side::Inside) return static_cast<int>(i);
  return -1;
}

}  // namespace creasewright::testing
