#include "cutting/trim_steps.h"

#include <algorithm>
#include <span>

#include "cutting/cut_tree.h"

namespace creasewright {

namespace {

using Nodes = std::vector<const CutNode*>;

/// Parts that are cut alike and lie side by side: `members[i]` are those of the i-th of the parts
/// that are cut up together.
struct Group {
  std::vector<Nodes> members;
  [[nodiscard]] const CutNode& one() const { return *members.front().front(); }
  [[nodiscard]] int count() const { return static_cast<int>(members.front().size()); }
  [[nodiscard]] Nodes all() const {
    Nodes all;
    for (const Nodes& nodes : members) all.insert(all.end(), nodes.begin(), nodes.end());
    return all;
  }
};

/// The parts of each of several rectangles that are cut alike, alike ones together.
std::vector<Group> groupsOf(const Nodes& whole) {
  std::vector<Group> groups;
  std::vector<Nodes> parts;
  for (const CutNode* node : whole) parts.push_back(partsAlong(*node));
  for (std::size_t p = 0; p < parts.front().size(); ++p) {
    if (groups.empty() || !cutAlike(groups.back().one(), *parts.front()[p]))
      groups.push_back({std::vector<Nodes>(whole.size())});
    for (std::size_t i = 0; i < whole.size(); ++i) groups.back().members[i].push_back(parts[i][p]);
  }
  return groups;
}

Length widthOf(const Group& group, bool upright) {
  return upright ? group.one().width : group.one().height;
}

/// Groups that come off with one setting: alike parts, or strips that are equally wide.
using Run = std::span<const Group>;

std::vector<Run> runsOf(const std::vector<Group>& groups, bool upright) {
  std::vector<Run> runs;
  const auto isStrip = [](const Group& group) { return group.one().kind == CutNode::Kind::Cut; };
  for (std::size_t g = 0; g < groups.size(); ++g)
    if (!runs.empty() && isStrip(groups[g]) && isStrip(groups[g - 1]) &&
        widthOf(groups[g], upright) == widthOf(groups[g - 1], upright))
      runs.back() = Run(runs.back().data(), runs.back().size() + 1);
    else
      runs.emplace_back(&groups[g], 1);
  return runs;
}

int piecesOf(Run run) {
  int pieces = 0;
  for (const Group& group : run) pieces += group.count();
  return pieces;
}

/// The line on the far side of a part.
CutLine lineAfter(const CutNode& part, bool upright) {
  return upright ? CutLine{part.x + part.width, part.y, part.height}
                 : CutLine{part.x, part.y + part.height, part.width};
}

/// Strips that are still to be cut, and the step they come from.
struct Pending {
  Nodes nodes;
  int from = 0;
  bool rest = false;
};

class Trimming {
 public:
  std::vector<TrimStep> take(const CutNode& sheet) {
    if (sheet.kind == CutNode::Kind::Cut) cutUp({{&sheet}, 0, false});
    return std::move(steps_);
  }

 private:
  void cutUp(const Pending& whole) {
    const std::vector<Group> groups = groupsOf(whole.nodes);
    const std::vector<Run> runs = runsOf(groups, whole.nodes.front()->upright);
    std::vector<Pending> strips;
    for (std::size_t r = 0; r < runs.size(); ++r) {
      const Run run = runs[r];
      const bool last = r + 1 == runs.size();
      const CutNode& one = run.front().one();
      if (one.kind == CutNode::Kind::Offcut) continue;
      const bool left = last && piecesOf(run) == 1;
      if (!left) addStep(whole, run, r == 0, last);
      for (const Group& group : run)
        if (one.kind == CutNode::Kind::Cut)
          strips.push_back({group.all(), steps_.back().number, left});
        else if (left)
          steps_.back().restDemand = one.demand;
    }
    for (const Pending& strip : strips) cutUp(strip);
  }

  void addStep(const Pending& whole, Run run, bool first, bool last) {
    const CutNode& one = run.front().one();
    TrimStep step;
    step.upright = whole.nodes.front()->upright;
    step.number = static_cast<int>(steps_.size()) + 1;
    step.from = whole.from;
    step.rest = whole.rest;
    step.first = first;
    step.parts = static_cast<int>(whole.nodes.size());
    step.setting = widthOf(run.front(), step.upright);
    step.knife = std::min(one.width, one.height) < kLeastStrip;
    step.pieces = piecesOf(run);
    step.cuts = last ? step.pieces - 1 : step.pieces;
    if (one.kind == CutNode::Kind::Blank) step.demand = one.demand;
    for (std::size_t i = 0; i < whole.nodes.size(); ++i)
      for (const Group& group : run)
        for (const CutNode* part : group.members[i]) {
          if (last && &group == &run.back() && part == group.members[i].back()) continue;
          step.lines.push_back(lineAfter(*part, step.upright));
        }
    steps_.push_back(std::move(step));
  }

  std::vector<TrimStep> steps_;
};

}  // namespace

std::vector<TrimStep> trimSteps(const Layout& layout) { return Trimming().take(layout.sheet); }

int trimmingWork(const CutNode& sheet) {
  int work = 0;
  for (const TrimStep& step : trimSteps({0, 1, sheet}))
    work += kSettingWork + static_cast<int>(step.lines.size());
  return work;
}

std::vector<Offcut> offcutsOf(const Layout& layout, Length least) {
  std::vector<Offcut> offcuts;
  eachNode(
      layout.sheet,
      [&](const CutNode& node) {
        if (node.kind != CutNode::Kind::Offcut || std::min(node.width, node.height) < least) return;
        const auto same = std::ranges::find_if(
            offcuts,
            [&](const Offcut& other) {
              return other.width == node.width && other.height == node.height;
            });
        if (same != offcuts.end())
          ++same->count;
        else
          offcuts.push_back({node.width, node.height, 1});
      });
  std::ranges::stable_sort(offcuts, std::ranges::greater(), [](const Offcut& offcut) {
    return offcut.width.mm() * offcut.height.mm();
  });
  return offcuts;
}

std::vector<int> blanksOf(const Layout& layout, std::size_t demands) {
  std::vector<int> counts(demands, 0);
  eachNode(layout.sheet, [&](const CutNode& node) {
    if (node.kind == CutNode::Kind::Blank) ++counts[static_cast<std::size_t>(node.demand)];
  });
  return counts;
}

std::vector<int> leftOver(const CuttingPlan& plan, const std::vector<BlankDemand>& demands) {
  std::vector<int> over(demands.size(), 0);
  for (std::size_t d = 0; d < demands.size(); ++d) over[d] = -demands[d].quantity;
  for (const Layout& layout : plan.layouts) {
    const std::vector<int> cut = blanksOf(layout, demands.size());
    for (std::size_t d = 0; d < demands.size(); ++d) over[d] += cut[d] * layout.count;
  }
  return over;
}

}  // namespace creasewright
