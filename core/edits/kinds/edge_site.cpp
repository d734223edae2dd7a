#include "edits/kinds/edge_site.h"

#include "edits/kinds/panel_site.h"

namespace creasewright {

std::optional<EdgeSite> findEdge(const Net& net, int panel, std::string_view name) {
  const Panel& on = net.panels[static_cast<std::size_t>(panel)];
  const std::size_t corners = on.outline.size();
  std::optional<EdgeSite> longest;
  for (std::size_t i = 0; i < corners && i < on.edges.size(); ++i) {
    if (on.edges[i] != name) continue;
    const EdgeSite edge{i, on.outline[i], on.outline[(i + 1) % corners],
                        on.outline[(i + corners - 1) % corners], on.outline[(i + 2) % corners]};
    if (!longest || edge.length() > longest->length() + 1e-6) longest = edge;
  }
  if (!longest || longest->length() < 1e-6) return std::nullopt;
  const DrawnPanel drawn(net, panel);
  const Point way = drawn.drawn(longest->b) - drawn.drawn(longest->a);
  longest->turned = way.x < -1e-6 || (way.x < 1e-6 && way.y < 0);
  return longest;
}

void replaceEdge(Panel& panel, const EdgeSite& edge, const Polyline& run, std::string_view suffix,
                 bool keepEnds) {
  const std::string name = panel.edges[edge.index];
  const std::string changed = name + std::string(suffix);
  const auto at = static_cast<std::ptrdiff_t>(edge.index) + 1;
  panel.outline.insert(panel.outline.begin() + at, run.begin(), run.end());
  panel.edges[edge.index] = keepEnds ? name : changed;
  std::vector<std::string> names(run.size(), changed);
  if (keepEnds) names.back() = name;
  panel.edges.insert(panel.edges.begin() + at, names.begin(), names.end());
}

}  // namespace creasewright
