#include "kits/trim_steps.h"

#include <algorithm>

namespace creasewright {

std::vector<TrimCut> trimSteps(const Layout& layout) {
  std::vector<TrimCut> cuts;
  eachNode(layout.sheet, [&](const CutNode& node) {
    if (node.kind != CutNode::Kind::Cut) return;
    TrimCut cut;
    cut.number = static_cast<int>(cuts.size()) + 1;
    cut.setting = node.at;
    cut.upright = node.upright;
    cut.x = node.upright ? node.x + node.at : node.x;
    cut.y = node.upright ? node.y : node.y + node.at;
    cut.length = node.upright ? node.height : node.width;
    cuts.push_back(cut);
  });
  return cuts;
}

std::vector<Offcut> offcutsOf(const Layout& layout, Length least) {
  std::vector<Offcut> offcuts;
  eachNode(layout.sheet, [&](const CutNode& node) {
    if (node.kind != CutNode::Kind::Offcut || std::min(node.width, node.height) < least) return;
    const auto same = std::ranges::find_if(offcuts, [&](const Offcut& other) {
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

}  // namespace creasewright
