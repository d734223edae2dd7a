#include "session/kit_session.h"

#include <algorithm>

namespace creasewright {

const BuiltDesign* KitSession::builtOf(const Design& design) const {
  if (!built_) return nullptr;
  const auto item = std::ranges::find_if(
      built_->items, [&](const auto& each) { return each->design.design == design; });
  return item == built_->items.end() ? nullptr : &(*item)->design;
}

void KitSession::apply(const ClassKit& kit) {
  kit_ = kit;
  Result<BuiltKit> built = buildKit(kit_, this->built());
  problem_ = built ? std::nullopt : std::optional(built.problem());
  if (built) built_ = std::move(built).value();
  emit changed();
}

void KitSession::start(const ClassKit& kit) {
  history_.clear();
  apply(kit);
}

}  // namespace creasewright
