#include "keeping/suited_sizes_fields.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "units/millimetres.h"
#include "widgets/length_edit.h"

namespace creasewright {

namespace {

/// From half to twice the product in hand.
SuitedSizes sizesNear(const std::optional<Product>& product) {
  if (!product) return {{mm(30), mm(30), mm(10)}, {mm(150), mm(100), mm(150)}};
  const std::array<Length, 3> sides{product->length, product->width, product->height};
  SuitedSizes sizes;
  for (std::size_t i = 0; i < sides.size(); ++i) {
    sizes.least.at(i) = std::max(ToolGrid::millimetre().nearest(sides.at(i) / 2), mm(1));
    sizes.most.at(i) = ToolGrid::millimetre().roundUp(sides.at(i) * 2);
  }
  return sizes;
}

}  // namespace

SuitedSizesFields::SuitedSizesFields(const std::optional<SuitedSizes>& sizes,
                                     const std::optional<Product>& near, Unit unit, QWidget* parent)
    : QWidget(parent),
      only_(new QCheckBox(tr("Only for products of these sizes"), this)),
      grid_(new QWidget(this)) {
  const SuitedSizes shown = sizes.value_or(sizesNear(near));
  const std::array titles{tr("Length"), tr("Width"), tr("Height")};
  auto* grid = new QGridLayout(grid_);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->addWidget(new QLabel(tr("From"), grid_), 1, 0);
  grid->addWidget(new QLabel(tr("To"), grid_), 2, 0);
  for (std::size_t i = 0; i < titles.size(); ++i) {
    const int column = static_cast<int>(i) + 1;
    grid->addWidget(new QLabel(titles.at(i), grid_), 0, column);
    least_.at(i) = new LengthEdit(grid_);
    most_.at(i) = new LengthEdit(grid_);
    least_.at(i)->setAccessibleName(tr("%1, smallest").arg(titles.at(i)));
    most_.at(i)->setAccessibleName(tr("%1, largest").arg(titles.at(i)));
    for (LengthEdit* field : {least_.at(i), most_.at(i)}) field->setUnit(unit);
    least_.at(i)->setLength(shown.least.at(i));
    most_.at(i)->setLength(shown.most.at(i));
    grid->addWidget(least_.at(i), 1, column);
    grid->addWidget(most_.at(i), 2, column);
  }
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(only_);
  layout->addWidget(grid_);
  connect(only_, &QCheckBox::toggled, grid_, &QWidget::setVisible);
  only_->setChecked(sizes.has_value());
  grid_->setVisible(sizes.has_value());
}

std::optional<SuitedSizes> SuitedSizesFields::sizes(bool& well) {
  well = true;
  if (!only_->isChecked()) return std::nullopt;
  SuitedSizes sizes;
  for (std::size_t i = 0; i < 3; ++i) {
    well = well && least_.at(i)->requireWithin(mm(1), mm(1000), tr("From 1 mm to 1 m."));
    if (!well) return std::nullopt;
    sizes.least.at(i) = least_.at(i)->length();
    well = most_.at(i)->requireWithin(sizes.least.at(i), mm(1000),
                                      tr("At least as much as the smallest."));
    if (!well) return std::nullopt;
    sizes.most.at(i) = most_.at(i)->length();
  }
  return sizes;
}

}  // namespace creasewright
