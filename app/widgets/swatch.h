#pragma once

#include <QBrush>
#include <QIcon>
#include <optional>

namespace creasewright {

/// A rounded square of `side` pixels filled as told, or one struck through for none.
QIcon swatchIcon(int side, double devicePixelRatio, const std::optional<QBrush>& fill);

}  // namespace creasewright
