#pragma once

#include <QStringList>
#include <string_view>

#include "document/build.h"

namespace creasewright {

/// The places a measure is about: panels whose own outline changes when the parameter changes.
/// Found by building the design with a slightly different value.
class AffectedPanels {
 public:
  explicit AffectedPanels(const Design& design);
  /// Ids; none where the design cannot be built or has no such parameter.
  [[nodiscard]] QStringList of(std::string_view key) const;

 private:
  Design design_;  // off the grid: a flap that gives way would take the little change back
  Result<BuiltDesign> now_;
};

}  // namespace creasewright
