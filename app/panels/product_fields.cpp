#include "panels/product_fields.h"

#include <QCoreApplication>

namespace creasewright {

namespace {

struct Say {
  Q_DECLARE_TR_FUNCTIONS(products)
};

}  // namespace

std::vector<ProductField> productFields(ProductShape shape) {
  const auto length = &Product::length;
  const auto width = &Product::width;
  const auto height = &Product::height;
  switch (shape) {
    case ProductShape::Box:
      return {{Say::tr("Length"), {length}},
              {Say::tr("Width"), {width}},
              {Say::tr("Height"), {height}}};
    case ProductShape::Cylinder:
      return {{Say::tr("Diameter"), {length, width}}, {Say::tr("Height"), {height}}};
    case ProductShape::Sphere:
      return {{Say::tr("Diameter"), {length, width, height}}};
    case ProductShape::Tube:
      return {{Say::tr("Crimp width"), {length}},
              {Say::tr("Body thickness"), {width}},
              {Say::tr("Length"), {height}}};
    case ProductShape::Card:
      return {{Say::tr("Width"), {length}},
              {Say::tr("Height"), {width}},
              {Say::tr("Thickness"), {height}}};
  }
  return {};
}

QString shapeTitle(ProductShape shape) {
  switch (shape) {
    case ProductShape::Box:
      return Say::tr("Box");
    case ProductShape::Cylinder:
      return Say::tr("Cylinder");
    case ProductShape::Sphere:
      return Say::tr("Ball");
    case ProductShape::Tube:
      return Say::tr("Tube");
    case ProductShape::Card:
      return Say::tr("Flat card");
  }
  return {};
}

QString shapeIcon(ProductShape shape) {
  switch (shape) {
    case ProductShape::Box:
      return QStringLiteral("product-box");
    case ProductShape::Cylinder:
      return QStringLiteral("product-cylinder");
    case ProductShape::Sphere:
      return QStringLiteral("product-sphere");
    case ProductShape::Tube:
      return QStringLiteral("product-tube");
    case ProductShape::Card:
      return QStringLiteral("product-card");
  }
  return {};
}

Product reshaped(const Product& product, ProductShape shape) {
  Product out = product;
  out.shape = shape;
  for (const ProductField& field : productFields(shape))
    for (const auto member : field.members) out.*member = product.*field.members.front();
  return out;
}

}  // namespace creasewright
