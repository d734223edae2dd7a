#pragma once

#include "fit/product.h"

namespace creasewright {

/// Whether a product is round about its height: it fills a round opening to its bounds.
inline bool isRound(const Product& product) {
  return product.shape == ProductShape::Cylinder || product.shape == ProductShape::Sphere;
}

}  // namespace creasewright
