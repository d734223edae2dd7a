#include "panels/change_dressing.h"

#include <algorithm>

#include "commands/edits.h"
#include "document/with_punches.h"
#include "own_stock/stock_store.h"

namespace creasewright {

bool isPunched(const Extra& extra) {
  return extra.parameters.flag("punched") ||
         std::ranges::any_of(
             extra.layers,
             [](const ExtraLayer& layer) { return layer.parameters.flag("punched"); });
}

void changeDressing(DesignSession& session, std::vector<Extra> extras, const QString& words,
                    const QString& field) {
  if (std::ranges::any_of(extras, [](const Extra& extra) { return isPunched(extra); })) {
    const Result<std::vector<Punch>> punches = ownPunches();
    if (punches && !punches->empty()) {
      Design design = session.design();
      design.extras = std::move(extras);
      extras = withPunches(std::move(design), *punches).extras;
    }
  }
  changeExtras(session, std::move(extras), words, field);
}

}  // namespace creasewright
