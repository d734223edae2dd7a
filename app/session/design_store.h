#pragma once

#include <QString>
#include <optional>

#include "document/design.h"

namespace creasewright {

/// Reads a `.cwdesign` file.
Result<Design> loadDesign(const QString& path);

/// Writes it atomically: the old file stays whole until the new one is complete.
std::optional<Problem> storeDesign(const QString& path, const Design& design);

}  // namespace creasewright
