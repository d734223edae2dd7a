#pragma once

#include <QString>
#include <vector>

#include "fit/product.h"

namespace creasewright {

/// A measure a person gives for a shape: a cylinder has a diameter, not a length and a width.
struct ProductField {
  QString label;
  std::vector<Length Product::*> members;  ///< all set to the same value
};

std::vector<ProductField> productFields(ProductShape shape);

QString shapeTitle(ProductShape shape);
/// Name of the shape's line icon.
QString shapeIcon(ProductShape shape);

/// The product in another shape, with the bounding sizes that shape allows.
Product reshaped(const Product& product, ProductShape shape);

}  // namespace creasewright
