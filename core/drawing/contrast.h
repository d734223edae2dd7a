#pragma once

#include "drawing/role.h"

namespace creasewright {

/// Ratio of the lighter to the darker of two colours, 1 to 21 (WCAG 2.1: relative luminance of
/// linear sRGB, 0.05 of stray light).
double contrast(Colour a, Colour b);

/// `ink`, as much darker as it takes to stand out from a light `ground` by `least`; black where
/// nothing less does.
Colour darkened(Colour ink, Colour ground, double least);

}  // namespace creasewright
