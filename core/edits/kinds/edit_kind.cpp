#include "edits/kinds/edit_kind.h"

#include <algorithm>
#include <array>

#include "base/excerpt.h"
#include "edits/kinds/kinds.h"

namespace creasewright {

std::span<const EditKind> editKinds() {
  static const std::array kKinds{
      openingEdit(), notchEdit(),      slitEdit(), slitPairEdit(), hangingEdit(), holesEdit(),
      cornersEdit(), shapedEdgeEdit(), flapEdit(), splitEdit(),    foldEdit(),    slitLockEdit(),
      mergeEdit(),   removeEdit(),     textEdit(), markEdit(),     seamEdit()};
  return kKinds;
}

Result<const EditKind*> findEditKind(std::string_view id) {
  const auto found = std::ranges::find(editKinds(), id, &EditKind::id);
  if (found == editKinds().end()) return Problem{ProblemCode::EditUnknown, {}, {excerpt(id)}};
  return &*found;
}

std::vector<std::string> edgeNames(const Panel& panel) {
  std::vector<std::string> names = panel.edges;
  std::ranges::sort(names);
  const auto rest = std::ranges::unique(names);
  names.erase(rest.begin(), rest.end());
  return names;
}

}  // namespace creasewright
