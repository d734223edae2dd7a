#pragma once

#include <QStringList>
#include <string_view>

#include "document/design.h"

namespace creasewright {

/// Ids of the panels whose own outline changes when parameter `key` changes: the places a measure
/// is about. Found by building the design with a slightly different value.
QStringList affectedPanels(const Design& design, std::string_view key);

}  // namespace creasewright
