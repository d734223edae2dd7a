#include "folding/motion/allowed_contacts.h"

#include <algorithm>

#include "folding/motion/crease_path.h"

namespace creasewright {

int meetingStage(const Net& net, int panel, int other) {
  int stage = 0;
  for (const int index : creasePath(net, panel, other)) {
    const Crease& crease = net.creases[static_cast<std::size_t>(index)];
    if (crease.moves() || !crease.driven) stage = std::max(stage, crease.stage);
  }
  return stage;
}

int meetingStage(const Net& net, const Mate& mate) {
  return mate.stage > 0 ? mate.stage : meetingStage(net, mate.panel, mate.onto);
}

std::vector<AllowedContact> allowedContacts(const Net& net) {
  std::vector<AllowedContact> allowed;
  for (const Mate& mate : net.mates) {
    if (mate.method != Method::Lock) continue;
    const int stage = meetingStage(net, mate);
    if (stage > 0) allowed.push_back({mate.panel, mate.onto, stage, "tongue-through-slit"});
  }
  return allowed;
}

}  // namespace creasewright
