#include "edits/kinds/edit_kind.h"

#include <algorithm>
#include <array>
#include <set>

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
  const std::set<std::string> names(panel.edges.begin(), panel.edges.end());
  return {names.begin(), names.end()};
}

}  // namespace creasewright
