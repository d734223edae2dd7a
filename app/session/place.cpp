#include "session/place.h"

#include <algorithm>

namespace creasewright {

bool lights(const Place& selected, const Place& thing) {
  if (selected.piece >= 0 && thing.piece >= 0 && selected.piece != thing.piece) return false;
  if (!selected.measure.isEmpty() && !thing.measure.isEmpty())
    return selected.measure == thing.measure;
  // A fold is not its two panels; but a measure moves a fold by moving the panels at it.
  const bool folds = !selected.creases.empty() && thing.measure.isEmpty();
  if (folds) {
    return std::ranges::any_of(
        thing.creases,
        [&](int crease) {
          return std::ranges::find(selected.creases, crease) != selected.creases.end();
        });
  }
  return std::ranges::any_of(thing.panels,
                             [&](const QString& panel) { return selected.panels.contains(panel); });
}

}  // namespace creasewright
