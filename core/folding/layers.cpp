#include "folding/layers.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

struct Contact {
  int panel;
  int onto;
  double side;          // +1 on the target's inside, -1 on its outside
  const Polygon* part;  // of the panel that meets the target
};

std::vector<Contact> contacts(const Net& net, const Pose& pose) {
  std::vector<Contact> found;
  const int count = static_cast<int>(std::min(net.panels.size(), pose.size()));
  for (const Mate& mate : net.mates)
    if (mate.panel >= 0 && mate.onto >= 0 && mate.panel < count && mate.onto < count)
      found.push_back({mate.panel, mate.onto, mate.face == Face::Inside ? 1.0 : -1.0,
                       mate.patch.empty() ? &net.panels[mate.panel].outline : &mate.patch});
  for (const Crease& crease : net.creases) {
    if (dot(pose[crease.parent].normal(), pose[crease.child].normal()) > -1 + 1e-9) continue;
    const auto stated = [&](const Contact& c) {
      return (c.panel == crease.child && c.onto == crease.parent) ||
             (c.panel == crease.parent && c.onto == crease.child);
    };
    if (std::none_of(found.begin(), found.end(), stated))
      found.push_back({crease.child, crease.parent, crease.isValley() ? 1.0 : -1.0,
                       &net.panels[crease.child].outline});
  }
  return found;
}

/// Contacts in an order in which a target comes before the flaps that lie on it; rings of flaps
/// (a pleated closure) are cut at their first panel.
std::vector<Contact> targetsFirst(const std::vector<Contact>& all, std::size_t panelCount) {
  std::vector<Contact> ordered;
  std::vector<bool> entered(panelCount, false);
  const auto visit = [&](const auto& self, int panel) -> void {
    if (entered[panel]) return;
    entered[panel] = true;
    for (const Contact& contact : all) {
      if (contact.panel != panel) continue;
      self(self, contact.onto);
      ordered.push_back(contact);
    }
  };
  for (std::size_t panel = 0; panel < panelCount; ++panel) visit(visit, static_cast<int>(panel));
  return ordered;
}

}  // namespace

std::vector<Point3> layerOffsets(const Net& net, const Pose& pose, double caliper,
                                 double tolerance) {
  std::vector<Point3> offsets(net.panels.size());
  for (const Contact& contact : targetsFirst(contacts(net, pose), net.panels.size())) {
    const Transform& target = pose[contact.onto];
    const Point3 normal = target.normal() * contact.side;
    const Point3 origin = target.apply(Point{0, 0});
    double lowest = 0;
    bool home = true;
    bool first = true;
    for (const Point& corner : *contact.part) {
      const double height = dot(normal, pose[contact.panel].apply(corner) - origin);
      home = home && std::abs(height) <= tolerance;
      lowest = first ? height : std::min(lowest, height);
      first = false;
    }
    if (!home || first) continue;
    const double now = lowest + dot(normal, offsets[contact.panel] - offsets[contact.onto]);
    offsets[contact.panel] = offsets[contact.panel] + normal * std::max(0.0, caliper - now);
  }
  return offsets;
}

}  // namespace creasewright
