#include "pages/fold_ways.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "making/hand_folds.h"

namespace creasewright {
namespace {

Point3 middleOf(const Panel& panel, const Transform& placed) {
  Point sum;
  for (const Point& p : panel.outline) sum = sum + p;
  return placed.apply(sum / static_cast<double>(panel.outline.size()));
}

double areaOf(const Panel& panel) { return std::abs(signedArea(panel.outline)); }

bool touch(const Segment& a, const Segment& b) {
  constexpr double kTouch = 1e-2;  // mm
  return distance(a.a, b.a) <= kTouch || distance(a.a, b.b) <= kTouch ||
         distance(a.b, b.a) <= kTouch || distance(a.b, b.b) <= kTouch;
}

/// The flaps along a line that hang together: the runs of pieces that touch.
std::vector<std::vector<std::size_t>> runsOf(const std::vector<Fold>& folds,
                                             const std::vector<std::size_t>& line) {
  std::vector<std::vector<std::size_t>> runs;
  for (const std::size_t fold : line) {
    std::vector<std::size_t> run{fold};
    std::erase_if(runs, [&](const std::vector<std::size_t>& other) {
      const bool joins = std::ranges::any_of(
          other, [&](std::size_t k) { return touch(folds[k].line, folds[fold].line); });
      if (joins) run.insert(run.end(), other.begin(), other.end());
      return joins;
    });
    runs.push_back(std::move(run));
  }
  return runs;
}

/// A panel that moves against another.
struct Moving {
  std::size_t panel;
  std::size_t parent;
};

/// An arrow for each flap along each line the hand folds: on the largest panel that moves there.
std::vector<Moving> movingPanels(const Net& net, const std::vector<Fold>& folds) {
  std::vector<Moving> panels;
  for (const HandFold& line : handFolds(folds)) {
    if (folds[line.folds.front()].loop) continue;
    for (const std::vector<std::size_t>& run : runsOf(folds, line.folds)) {
      const auto largest = std::ranges::max_element(run, {}, [&](std::size_t fold) {
        return areaOf(net.panels[static_cast<std::size_t>(folds[fold].child)]);
      });
      const Fold& fold = folds[*largest];
      panels.push_back(
          {static_cast<std::size_t>(fold.child), static_cast<std::size_t>(fold.parent)});
    }
  }
  return panels;
}

}  // namespace

Pose StepPoses::at(double progress) {
  const Result<Pose> found = path_.pose(progress);
  return found ? *found : pose(net_, progress);
}

Pose StepPoses::atShare(double share) {
  const FigureSpec& spec = step_.figure;
  return at(spec.progressFrom + share * (spec.progress - spec.progressFrom));
}

std::vector<Polyline> waysOf(const Net& net, const Step& step, double shown, StepPoses& poses,
                             const Camera& eye) {
  constexpr int kSteps = 10;
  constexpr double kFirst = 0.3;
  const Pose there = poses.atShare(shown);
  const double progress =
      step.figure.progressFrom + shown * (step.figure.progress - step.figure.progressFrom);
  std::vector<Polyline> ways;
  for (const ToldStage& stage : step.stages) {
    const bool last = &stage == &step.stages.back();
    const double shownOf = (progress - stage.from) / (stage.to - stage.from);
    const double first = last ? std::clamp(shownOf, 0.0, kFirst) : kFirst;
    std::vector<Pose> moments;
    for (int k = 0; k <= kSteps; ++k) {
      const double share = first + (1 - first) * k / kSteps;
      moments.push_back(poses.at(stage.from + share * (stage.to - stage.from)));
    }
    for (const Moving& moving : movingPanels(net, stage.folds)) {
      Polyline way;
      for (const Pose& moment : moments) {
        Transform placed = moment[moving.panel];
        if (!last)
          placed = there[moving.parent].after(moment[moving.parent].inverse()).after(placed);
        way.push_back(eye.project(middleOf(net.panels[moving.panel], placed)));
      }
      ways.push_back(std::move(way));
    }
  }
  return ways;
}

bool closesBelow(const Net& net, const Step& step, const Pose& end, const Point3& up) {
  constexpr double kLowest = 0.25;  // of the height
  constexpr double kLevel = 0.9;    // cosine
  double low = std::numeric_limits<double>::infinity();
  double high = -low;
  for (std::size_t i = 0; i < net.panels.size(); ++i)
    for (const Point& p : net.panels[i].outline) {
      const double height = dot(end[i].apply(p), up);
      low = std::min(low, height);
      high = std::max(high, height);
    }
  double largest = 0;
  bool level = false;
  for (const ToldStage& stage : step.stages)
    for (const Moving& moving : movingPanels(net, stage.folds)) {
      const Panel& panel = net.panels[moving.panel];
      const double height = dot(middleOf(panel, end[moving.panel]), up);
      if (height > low + kLowest * (high - low)) return false;
      if (areaOf(panel) <= largest) continue;
      largest = areaOf(panel);
      level = std::abs(dot(end[moving.panel].normal(), up)) > kLevel * norm(up);
    }
  return level;
}

}  // namespace creasewright
