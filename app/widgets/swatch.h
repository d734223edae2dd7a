#pragma once

#include <QBrush>
#include <QIcon>
#include <optional>

namespace creasewright {

/// Pixels between a swatch and its name on a button.
inline constexpr int kSwatchGap = 6;

/// A rounded square of `side` pixels filled as told, or one struck through for none; `gap` pixels
/// to its right are empty.
QIcon swatchIcon(int side, double devicePixelRatio, const std::optional<QBrush>& fill, int gap = 0);

}  // namespace creasewright
