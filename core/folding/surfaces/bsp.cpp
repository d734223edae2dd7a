#include "folding/surfaces/bsp.h"

#include <algorithm>

#include "folding/surfaces/split.h"

namespace creasewright {
namespace {

/// The plate among a few candidates whose plane cuts the fewest others.
std::size_t chooseSplitter(const std::vector<Plate>& plates, double tolerance) {
  constexpr std::size_t kCandidates = 5;
  std::size_t best = 0;
  std::size_t fewest = plates.size() + 1;
  const std::size_t step = std::max<std::size_t>(1, plates.size() / kCandidates);
  for (std::size_t candidate = 0; candidate < plates.size(); candidate += step) {
    const Plane plane = planeOf(plates[candidate]);
    std::size_t cuts = 0;
    for (const Plate& plate : plates)
      if (classify(plate, plane, tolerance) == Where::Across) ++cuts;
    if (cuts < fewest) {
      fewest = cuts;
      best = candidate;
    }
    if (cuts == 0) break;
  }
  return best;
}

}  // namespace

Bsp::Bsp(std::vector<Plate> plates, double tolerance)
    : root_(build(std::move(plates), tolerance)) {}

std::unique_ptr<Bsp::Node> Bsp::build(std::vector<Plate> plates, double tolerance) {
  std::erase_if(plates, [](const Plate& plate) { return plate.shape.empty(); });
  if (plates.empty()) return nullptr;
  const std::size_t chosen = chooseSplitter(plates, tolerance);
  const Plane plane = planeOf(plates[chosen]);
  auto node = std::make_unique<Node>();
  node->normal = plane.normal;
  std::vector<Plate> front;
  std::vector<Plate> back;
  for (std::size_t i = 0; i < plates.size(); ++i) {
    const Where where = i == chosen ? Where::Coplanar : classify(plates[i], plane, tolerance);
    if (where == Where::Coplanar) node->coplanar.push_back(std::move(plates[i]));
    if (where == Where::Front) front.push_back(std::move(plates[i]));
    if (where == Where::Back) back.push_back(std::move(plates[i]));
    if (where != Where::Across) continue;
    SplitSheet parts = split(plates[i], plane);
    front.push_back(std::move(parts.front));
    back.push_back(std::move(parts.back));
  }
  node->front = build(std::move(front), tolerance);
  node->back = build(std::move(back), tolerance);
  return node;
}

std::vector<const Plate*> Bsp::backToFront(Point3 towardsEye) const {
  std::vector<const Plate*> out;
  walk(root_.get(), towardsEye, out);
  return out;
}

void Bsp::walk(const Node* node, Point3 towardsEye, std::vector<const Plate*>& out) {
  if (node == nullptr) return;
  const bool eyeInFront = dot(node->normal, towardsEye) > 0;
  walk(eyeInFront ? node->back.get() : node->front.get(), towardsEye, out);
  const std::size_t first = out.size();
  for (const Plate& plate : node->coplanar) out.push_back(&plate);
  std::stable_sort(out.begin() + static_cast<std::ptrdiff_t>(first), out.end(),
                   [&](const Plate* a, const Plate* b) { return liesOver(*b, *a, towardsEye); });
  walk(eyeInFront ? node->front.get() : node->back.get(), towardsEye, out);
}

}  // namespace creasewright
