#include "folding/bsp.h"

#include <algorithm>

#include "folding/split.h"

namespace creasewright {
namespace {

/// The sheet among a few candidates whose plane cuts the fewest others.
std::size_t chooseSplitter(const std::vector<Sheet>& sheets, double tolerance) {
  constexpr std::size_t kCandidates = 5;
  std::size_t best = 0;
  std::size_t fewest = sheets.size() + 1;
  const std::size_t step = std::max<std::size_t>(1, sheets.size() / kCandidates);
  for (std::size_t candidate = 0; candidate < sheets.size(); candidate += step) {
    const Plane plane = planeOf(sheets[candidate]);
    std::size_t cuts = 0;
    for (const Sheet& sheet : sheets)
      if (classify(sheet, plane, tolerance) == Where::Across) ++cuts;
    if (cuts < fewest) {
      fewest = cuts;
      best = candidate;
    }
    if (cuts == 0) break;
  }
  return best;
}

}  // namespace

Bsp::Bsp(std::vector<Sheet> sheets, double tolerance)
    : root_(build(std::move(sheets), tolerance)) {}

std::unique_ptr<Bsp::Node> Bsp::build(std::vector<Sheet> sheets, double tolerance) {
  std::erase_if(sheets, [](const Sheet& sheet) { return sheet.shape.empty(); });
  if (sheets.empty()) return nullptr;
  const std::size_t chosen = chooseSplitter(sheets, tolerance);
  const Plane plane = planeOf(sheets[chosen]);
  auto node = std::make_unique<Node>();
  node->normal = plane.normal;
  std::vector<Sheet> front;
  std::vector<Sheet> back;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const Where where = i == chosen ? Where::Coplanar : classify(sheets[i], plane, tolerance);
    if (where == Where::Coplanar) node->coplanar.push_back(std::move(sheets[i]));
    if (where == Where::Front) front.push_back(std::move(sheets[i]));
    if (where == Where::Back) back.push_back(std::move(sheets[i]));
    if (where != Where::Across) continue;
    SplitSheet parts = split(sheets[i], plane);
    front.push_back(std::move(parts.front));
    back.push_back(std::move(parts.back));
  }
  node->front = build(std::move(front), tolerance);
  node->back = build(std::move(back), tolerance);
  return node;
}

std::vector<const Sheet*> Bsp::backToFront(Point3 towardsEye) const {
  std::vector<const Sheet*> out;
  walk(root_.get(), towardsEye, out);
  return out;
}

void Bsp::walk(const Node* node, Point3 towardsEye, std::vector<const Sheet*>& out) {
  if (node == nullptr) return;
  const bool eyeInFront = dot(node->normal, towardsEye) > 0;
  walk(eyeInFront ? node->back.get() : node->front.get(), towardsEye, out);
  const std::size_t first = out.size();
  for (const Sheet& sheet : node->coplanar) out.push_back(&sheet);
  std::stable_sort(out.begin() + static_cast<std::ptrdiff_t>(first), out.end(),
                   [&](const Sheet* a, const Sheet* b) { return liesOver(*b, *a, towardsEye); });
  walk(eyeInFront ? node->front.get() : node->back.get(), towardsEye, out);
}

}  // namespace creasewright
