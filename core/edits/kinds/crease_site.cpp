#include "edits/kinds/crease_site.h"

#include <algorithm>
#include <cmath>

#include "net/flat_net.h"

namespace creasewright {
namespace {

constexpr double kBeside = 1e-4;  // mm
constexpr double kShared = 1e-3;  // mm

/// How long two lines lie on one another, mm.
double shared(const Segment& a, const Segment& b) {
  const double whole = length(a);
  if (whole < kShared) return 0;
  const Point along = unit(a.b - a.a);
  if (std::abs(cross(along, b.a - a.a)) > kBeside || std::abs(cross(along, b.b - a.a)) > kBeside)
    return 0;
  const auto [low, high] = std::minmax({dot(along, b.a - a.a), dot(along, b.b - a.a)});
  return std::max(0.0, std::min(high, whole) - std::max(low, 0.0));
}

/// How long a fold lies on any edge of a panel that is called `edge`.
double sharedWith(const Panel& panel, std::string_view edge, const Segment& fold) {
  double sum = 0;
  for (std::size_t i = 0; i < panel.outline.size() && i < panel.edges.size(); ++i)
    if (panel.edges[i] == edge)
      sum += shared(fold, {panel.outline[i], panel.outline[(i + 1) % panel.outline.size()]});
  return sum;
}

std::vector<std::string> edgesThat(const Net& net, int panel, bool fold) {
  const Panel& on = net.panels[static_cast<std::size_t>(panel)];
  const std::vector<FoldOn> folds = foldsOn(net, panel);
  std::vector<std::string> names = edgeNames(on);
  std::erase_if(names, [&](const std::string& name) {
    const bool folded = std::ranges::any_of(
        folds, [&](const FoldOn& each) { return sharedWith(on, name, each.line) > kShared; });
    return folded != fold;
  });
  return names;
}

}  // namespace

std::vector<FoldOn> foldsOn(const Net& net, int panel) {
  std::vector<FoldOn> folds;
  std::optional<FlatNet> flat;  // for loops alone
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    if (crease.parent == panel) {
      folds.push_back({i, crease.onParent});
    } else if (crease.child == panel && !crease.loop) {
      folds.push_back({i, {{length(crease.onParent), 0}, {0, 0}}});
    } else if (crease.child == panel) {
      if (!flat) flat = layOut(net);
      const auto own = flat->frames[static_cast<std::size_t>(panel)].inverse();
      const Point3 a = own.apply(flat->creases[i].a);
      const Point3 b = own.apply(flat->creases[i].b);
      folds.push_back({i, {{a.x, a.y}, {b.x, b.y}}});
    }
  }
  return folds;
}

std::optional<FoldOn> findFold(const Net& net, int panel, std::string_view edge) {
  std::optional<FoldOn> found;
  double most = kShared;
  for (const FoldOn& fold : foldsOn(net, panel)) {
    const double length = sharedWith(net.panels[static_cast<std::size_t>(panel)], edge, fold.line);
    if (length < most + kShared) continue;
    most = length;
    found = fold;
  }
  return found;
}

std::vector<std::string> edgesWithFolds(const Net& net, int panel) {
  return edgesThat(net, panel, true);
}

std::vector<std::string> edgesWithoutFolds(const Net& net, int panel) {
  return edgesThat(net, panel, false);
}

std::vector<std::string> edgesFor(EditPlace place, const Net& net, int panel) {
  switch (place) {
    case EditPlace::Panel:
      return {};
    case EditPlace::Edge:
      return edgesWithoutFolds(net, panel);
    case EditPlace::Crease:
      return edgesWithFolds(net, panel);
  }
  return {};
}

}  // namespace creasewright
